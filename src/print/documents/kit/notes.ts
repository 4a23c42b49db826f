// The small print around sheets that are cut: how to print them, and the usual caution.
import type { KitSet } from '../../kit-request.js';

/** A hint for laminating, with the usual caution about blades and small parts (common practice). */
export const CAUTION = 'Adults laminate whole sheets, then cut. Not for children under three.';

/** No text comes closer to a cut. */
export const SAFE_MM = 3;

/** How to print a sheet that keeps its size, one-sided or two-sided. */
export function printHint(hasBacks: boolean): string {
  return hasBacks ? 'Print at 100 %, two-sided on the long edge.' : 'Print at 100 %, one-sided.';
}

/** From what a set can be made again. */
export function seedNote({ activity }: KitSet<{ readonly seed: number }>): string {
  return `seed ${activity.seed}`;
}
