// Products that are ten times too large or too small.
import { divide, multiply, type Rational, rational } from '../../numbers/rational.js';
import type { SketchSlip, Subject } from '../sketch.js';

const TEN = rational(10);

/**
 * The product with one zero too many or too few; for an amount with a point, the product with its digits one place off.
 * A whole number that ends in no zero has none to lose.
 */
export function tenTimesOff(x: Subject, product: Rational, way: 'more' | 'less'): SketchSlip {
  const wrong = way === 'more' ? multiply(product, TEN) : divide(product, TEN);
  if (x.d === 1 && wrong.d === 1) return ['times.zero-count', wrong];
  return ['decimals.place-missed', x.form === 'whole' ? null : wrong];
}
