// Twenty-five invented slips of a board with 80 % right, and the keys by which a teacher enters them.
import { Rng } from '#engine/random/rng.js';
import type { Board } from '#engine/activities/board/board.js';

/** What one child wrote: rung -> wrong answer as typed, "x" for a wrong one not worth typing, "" for a blank. */
export type Slip = ReadonlyMap<number, string>;

const WRONG = 60;

/** Slips for `count` children with exactly 60 cells of 300 not right, most of them on the last rungs. */
export function inventSlips(board: Board, count: number): Slip[] {
  const rng = new Rng(2026);
  const slips = Array.from({ length: count }, () => new Map<number, string>());
  let left = WRONG;
  while (left > 0) {
    const slip = slips[rng.int(0, count - 1)] as Map<number, string>;
    // Two of three on the hardest third, the rest anywhere.
    const rung = rng.chance(0.67) ? rng.int(9, 12) : rng.int(3, 12);
    if (slip.has(rung)) continue;
    slip.set(rung, wrongAnswer(board, rung, rng));
    left--;
  }
  return slips;
}

/** A typical wrong answer that a number key starts, for half of the wrong cells; else just "wrong" or a blank. */
function wrongAnswer(board: Board, rung: number, rng: Rng): string {
  const slip = board.rungs
    .find((one) => one.rung === rung)
    ?.question.slips.find(({ text }) => /^\d{1,4}$/.test(text));
  if (slip && rng.chance(0.5)) return slip.text;
  return rng.chance(0.5) ? 'x' : '';
}

/** The key presses for a slip, from the last question back; the final Enter makes every open rung right. */
export function keysFor(slip: Slip, rungs: number): string[] {
  const keys: string[] = [];
  let at = rungs;
  for (const rung of [...slip.keys()].sort((a, b) => b - a)) {
    for (; at > rung; at--) keys.push('ArrowLeft');
    const written = slip.get(rung) ?? '';
    if (written === '') keys.push(',');
    else if (written === 'x') keys.push('x');
    else keys.push(...written, 'Enter');
    at--;
  }
  keys.push('Enter');
  return keys;
}
