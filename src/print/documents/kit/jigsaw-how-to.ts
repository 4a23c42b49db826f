// How a child works with a jigsaw, in words that bag, mat and pupil's sheet share.
import type { Jigsaw, RowRule } from '#engine/activities/jigsaw/jigsaw.js';

/** What makes a row right, as part of a question. */
const RIGHT_ROW: Readonly<Record<RowRule, string>> = {
  sentences: 'is every row true',
  steps: 'does every row grow or shrink by the same step',
  repeats: 'does every row repeat its pattern',
};

/** Two or three short sentences. */
export function jigsawHowTo({ pieces, rowRule }: Jigsaw): string {
  return `Lay the pieces on the mat, arrows up. Are all ${pieces.length} pieces used, is no place empty, and ${RIGHT_ROW[rowRule]}? Then the jigsaw is right.`;
}
