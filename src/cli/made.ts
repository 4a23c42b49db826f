// What every "make" verb does once its wish is read: one composed thing, or several with derived seeds, as JSON or as text.
import { Rng } from '#engine/random/rng.js';
import { valueOf } from './failure.js';
import { readWhole } from './options.js';
import { printJson } from './output.js';

/** Seeds are whole numbers that fit in 32 bits with their sign. */
export const LARGEST_SEED = 2_147_483_647;

export interface MadeOptions {
  readonly seed: string;
  readonly count?: string;
  readonly json?: boolean;
}

interface Making<T> {
  /** Names the stream of derived seeds; part of what a seed means, so it never changes. */
  readonly stream: string;
  /** Most that `--count` may ask for. */
  readonly most: number;
  readonly compose: (
    seed: number,
  ) => { ok: true; value: T } | { ok: false; error: { message: string; hint: string } };
  readonly show: (made: T) => void;
}

/** Composes and prints what the options ask for; ends the command with one sentence when it cannot be made. */
export function printMade<T>(options: MadeOptions, { stream, most, compose, show }: Making<T>): void {
  const seed = readWhole('--seed', options.seed, 0, LARGEST_SEED);
  if (options.count === undefined) {
    const made = valueOf(compose(seed));
    if (options.json) printJson(made);
    else show(made);
    return;
  }
  const count = readWhole('--count', options.count, 1, most);
  const rng = new Rng(seed).fork(stream);
  const items = Array.from({ length: count }, () => valueOf(compose(rng.int(0, LARGEST_SEED))));
  if (options.json) printJson({ items });
  else for (const made of items) show(made);
}
