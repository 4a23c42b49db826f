// Letters on strips: an adult who holds the key compares them at a glance; nobody else can read an order in them.
import type { Rng } from '../../random/rng.js';

/** Consonants only, so that no word comes out, and none that reads as another upside down (M and W) or as a digit. */
const LETTERS = [...'BCDGHJLMNPRSTVXZ'] as const;

/** `count` different letters in random order. */
export function chainLabels(count: number, rng: Rng): string[] {
  return rng.shuffle(LETTERS).slice(0, count);
}

/** The letters of a chain from start to finish in groups of three: "TGB XHL N". */
export function labelLine(labels: readonly string[]): string {
  const line = labels.join('');
  return (line.match(/.{1,3}/g) ?? []).join(' ');
}
