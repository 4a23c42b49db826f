// The trail's key: every mat with its tiles laid, and the answers in a list.
import { cellName, drawSolved } from '#engine/activities/trail/draw/draw-mat.js';
import type { Trail } from '#engine/activities/trail/trail.js';
import { textPieces } from '../../text/rich-text.js';
import { type PartData, paperData } from '../page-data.js';
import { type KitComposer, setsInWords } from './activity-kit.js';
import { seedNote } from './notes.js';
import { drawingData } from './trail-tiles.js';

const SETS_A_PAGE = 2;
/** A job of many sets is typeset in parts of so many. */
const SETS_A_PART = 20;

/** Two sets to a page. */
export function* trailKeyParts({ sets, paper, options }: KitComposer<Trail>): Generator<PartData> {
  for (let from = 0; from < sets.length; from += SETS_A_PART) {
    const some = sets.slice(from, from + SETS_A_PART);
    yield {
      kind: 'trail-key',
      pages: Math.ceil(some.length / SETS_A_PAGE),
      paper: paperData(paper),
      large: options.largePrint ?? false,
      heading: 'Trail: the mats laid',
      lead: 'One look tells: does one path run from the top picture to the bottom one? If not, ask about a tile beside the gap.',
      foot: setsInWords(some),
      sets: some.map((set) => ({
        set: String(set.number),
        note: [set.label, seedNote(set)].filter(Boolean).join(', '),
        laid: drawingData(drawSolved(set.activity)),
        answers: set.activity.cells.map(({ question }, cell) => ({
          cell: cellName(set.activity, cell),
          answer: textPieces(question.answer.text),
          question: textPieces(question.text),
        })),
      })),
    };
  }
}
