// Random moments and choices that a seed repeats.
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A random whole number from 0 to most, both included. */
export type Random = (most: number) => number;

export function randomFrom(seed: number): Random {
  const generator = xoroshiro128plus(seed);
  return (most) => (generator.next() >>> 0) % (most + 1);
}
