// How much thinking a product of two quantities takes.
import { compare, toNumber } from '../../numbers/rational.js';
import { type Quantity, sizeOf } from '../measuring/quantity.js';

/** Thinking effort of a product: nothing for facts, more for several digits. */
export function productSize(a: Quantity, b: Quantity): number {
  return (
    (sizeOf(toNumber(a.value)) + sizeOf(toNumber(b.value))) * 0.5 + (a.value.d > 1 || b.value.d > 1 ? 0.7 : 0)
  );
}

/** The two sides of a rectangle as a figure labels them: the longer one, then the shorter one. */
export function longSideFirst(one: Quantity, other: Quantity): readonly [Quantity, Quantity] {
  return compare(one.value, other.value) < 0 ? [other, one] : [one, other];
}
