// The jigsaw's key: every finished jigsaw at a glance, then for each the way there, piece by piece.
import { drawJigsawMat } from '#engine/activities/jigsaw/draw.js';
import { explainJigsaw } from '#engine/activities/jigsaw/explain.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import type { KitSet } from '../../kit-request.js';
import { textPieces } from '../../text/rich-text.js';
import { type PartData, paperData } from '../page-data.js';
import { type KitComposer, lowerFirst, setsInWords } from './activity-kit.js';
import { seedNote } from './notes.js';

/** Small jigsaws stand two and two, wide ones alone in their row, so that letters stay readable. */
const WIDE_COLUMNS = 8;
const CELL_MM = { narrow: 12, wide: 11 } as const;
/** Sets to a part, so that many long explanations are set in pieces. */
const SETS_A_PART = 10;

/** Parts of up to ten sets; each runs on from page to page. */
export function* jigsawKeyParts({ sets, paper, options }: KitComposer<Jigsaw>): Generator<PartData> {
  for (let i = 0; i < sets.length; i += SETS_A_PART) {
    const some = sets.slice(i, i + SETS_A_PART);
    yield {
      kind: 'jigsaw-key',
      pages: 2 + some.length,
      paper: paperData(paper),
      size: options.largePrint ? 12 : 9,
      heading: `Jigsaw: the finished ${some.length > 1 ? 'jigsaws' : 'jigsaw'} of ${lowerFirst(setsInWords(some))}`,
      lead: 'A gap, a piece left over or a row that is not true: ask which row the child is sure of, and begin there. The letters stand on the pieces.',
      foot: setsInWords(some),
      glanceColumns: some.some(({ activity }) => activity.columns >= WIDE_COLUMNS) ? 1 : 2,
      sets: some.map(setKey),
    };
  }
}

function setKey(set: KitSet<Jigsaw>): object {
  const jigsaw = set.activity;
  const cell = jigsaw.columns >= WIDE_COLUMNS ? CELL_MM.wide : CELL_MM.narrow;
  const { svg, widthMm, heightMm, alt } = drawJigsawMat(jigsaw, cell, { isSolved: true });
  return {
    set: String(set.number),
    note: [set.label, seedNote(set)].filter(Boolean).join(', '),
    picture: { svg, width: widthMm, height: heightMm, alt },
    steps: explainJigsaw(jigsaw).map(({ name, text }) => ({ name, text: textPieces(text) })),
  };
}
