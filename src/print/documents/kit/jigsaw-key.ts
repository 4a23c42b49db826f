// The jigsaw's key: every finished jigsaw at a glance, then for each the way there, piece by piece.
import { drawJigsawMat } from '#engine/activities/jigsaw/draw.js';
import { explainJigsaw } from '#engine/activities/jigsaw/explain.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import type { KitSet } from '../../kit-request.js';
import { textPieces } from '../../text/rich-text.js';
import { type PartData, paperData } from '../page-data.js';
import { type KitComposer, lowerFirst, setsInWords } from './activity-kit.js';
import { seedNote } from './notes.js';

/** Half the width between the margins of A4. */
const GLANCE_WIDTH_MM = 84;
const LARGEST_CELL_MM = 13;
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
      sets: some.map(setKey),
    };
  }
}

function setKey(set: KitSet<Jigsaw>): object {
  const jigsaw = set.activity;
  const cell = Math.min(LARGEST_CELL_MM, GLANCE_WIDTH_MM / jigsaw.columns);
  const { svg, widthMm, heightMm, alt } = drawJigsawMat(jigsaw, cell, { isSolved: true });
  return {
    set: String(set.number),
    note: [set.label, seedNote(set)].filter(Boolean).join(', '),
    picture: { svg, width: widthMm, height: heightMm, alt },
    steps: explainJigsaw(jigsaw).map(({ name, text }) => ({ name, text: textPieces(text) })),
  };
}
