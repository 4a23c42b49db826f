// From wrong tries to a level. Easy needs none: at every step there is something a careful child can be sure of. The other
// bounds are a judgement, to be tuned with children; above the last one a jigsaw is not printed without help in the frame.
import type { JigsawLevel, RowRule } from './jigsaw.js';

/** The fewest and the most wrong tries of a level, both included. */
export interface TryRange {
  readonly least: number;
  readonly most: number;
}

const MOST_TRIES = 40;
/** From so many wrong tries on a jigsaw of many pieces is hard. */
const HARD_FROM = 5;
const PIECES_A_TRY = 3;

/**
 * The wrong tries that a level asks for: easy 0, middle from 1, hard from a third of the number of pieces, at least 2 and at
 * most 5, up to 40. In rows of steps two cells tell all others, so that 2 wrong tries are much: hard begins there.
 */
export function tryRange(level: JigsawLevel, pieces: number, rule: RowRule): TryRange {
  if (level === 'easy') return { least: 0, most: 0 };
  const hard = hardFrom(pieces, rule);
  return level === 'middle' ? { least: 1, most: hard - 1 } : { least: hard, most: MOST_TRIES };
}

function hardFrom(pieces: number, rule: RowRule): number {
  return rule === 'steps' ? 2 : Math.max(2, Math.min(HARD_FROM, Math.round(pieces / PIECES_A_TRY)));
}

/** The level of so many wrong tries; whatever is above middle is hard. */
export function levelOf(wrongTries: number, pieces: number, rule: RowRule): JigsawLevel {
  if (wrongTries === 0) return 'easy';
  return wrongTries < hardFrom(pieces, rule) ? 'middle' : 'hard';
}
