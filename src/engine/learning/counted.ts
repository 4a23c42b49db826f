// Which cells of one child's board say something about the child, and what.
import type { Rung } from '../activities/board/board.js';

export interface CellMark {
  readonly rung: number;
  readonly state: 'right' | 'wrong' | 'blank';
}

/** Rungs that everyone is asked to try; a blank among them counts. Common practice. */
export const MINIMUM_RUNGS = 5;

/**
 * The cells that count as answers: every right and wrong one, a blank within the minimum, and a blank that the child
 * passed over on the way to a later answer. Blanks after the last answer were most likely not reached, so they say nothing.
 */
export function countedCells<M extends CellMark>(
  marks: readonly M[],
  rungs: readonly Pick<Rung, 'rung'>[],
): M[] {
  const known = new Set(rungs.map(({ rung }) => rung));
  const answered = marks.filter(({ state }) => state !== 'blank').map(({ rung }) => rung);
  const lastAnswered = Math.max(0, ...answered);
  if (lastAnswered === 0) return [];
  return marks.filter(
    ({ rung, state }) =>
      known.has(rung) && (state !== 'blank' || rung <= MINIMUM_RUNGS || rung < lastAnswered),
  );
}
