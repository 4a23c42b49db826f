// The only source of chance in the engine: a seeded generator, handed down as an argument.
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';

/** Hashes text to an unsigned 32-bit integer (FNV-1a); stable for ever, so that seeds keep their meaning. */
export function hashText(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    hash ^= text.charCodeAt(i);
    hash = Math.imul(hash, 0x01000193);
  }
  return hash >>> 0;
}

/** A seeded stream of choices. Two streams from the same seed give the same choices on every machine. */
export class Rng {
  readonly #source: RandomGenerator;
  readonly #seed: number;

  constructor(seed: number) {
    this.#seed = seed | 0;
    this.#source = xoroshiro128plus(this.#seed);
  }

  /** A stream named by a label, independent of how much of this one has been used. */
  fork(label: string | number): Rng {
    return new Rng(hashText(`${this.#seed}/${label}`) | 0);
  }

  /** A whole number from `low` to `high`, both included. */
  int(low: number, high: number): number {
    if (high < low) throw new RangeError(`empty range ${low}..${high}`);
    return uniformInt(this.#source, low, high);
  }

  /** True with the given probability (0 to 1). */
  chance(probability: number): boolean {
    return this.unit() < probability;
  }

  /** A number from 0 (included) to 1 (excluded), in steps of 2^-30. */
  unit(): number {
    return uniformInt(this.#source, 0, 0x3fffffff) / 0x40000000;
  }

  /** One item of a list that must not be empty. */
  pick<T>(items: readonly T[]): T {
    if (items.length === 0) throw new RangeError('cannot pick from an empty list');
    return items[this.int(0, items.length - 1)] as T;
  }

  /** A new list with the same items in random order (Fisher-Yates). */
  shuffle<T>(items: readonly T[]): T[] {
    const out = [...items];
    for (let i = out.length - 1; i > 0; i--) {
      const j = this.int(0, i);
      [out[i], out[j]] = [out[j] as T, out[i] as T];
    }
    return out;
  }
}
