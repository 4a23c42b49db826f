// Typical wrong methods for fractions, as algorithms on written tops and bottoms.
import { type Rational, rational } from '../../numbers/rational.js';

/** A fraction as written, not in lowest terms; `whole` stands before it in a mixed number. */
export interface Written {
  readonly top: number;
  readonly bottom: number;
  readonly whole?: number;
}

/** Tops added and bottoms added: 3/4 + 7/8 is written 10/12. */
export function addTopsAndBottoms(a: Written, b: Written): Written {
  return { top: a.top + b.top, bottom: a.bottom + b.bottom };
}

/** Tops subtracted and bottoms subtracted: 5/6 − 1/3 is written 4/3. Null when the bottoms are equal. */
export function subtractTopsAndBottoms(a: Written, b: Written): Written | null {
  const bottom = a.bottom - b.bottom;
  return bottom === 0 ? null : { top: Math.abs(a.top - b.top), bottom: Math.abs(bottom) };
}

/** Top and bottom both multiplied by the whole number: 3 × 2/5 is written 6/15. */
export function multiplyBoth(fraction: Written, times: number): Written {
  return { top: fraction.top * times, bottom: fraction.bottom * times };
}

/** Tops added over the larger bottom, nothing renamed: 3/4 + 1/8 is written 4/8. */
export function addOverLargerBottom(a: Written, b: Written): Written {
  return { top: a.top + b.top, bottom: Math.max(a.bottom, b.bottom) };
}

/** The value of what was written. */
export function writtenValue({ top, bottom, whole = 0 }: Written): Rational {
  return rational(whole * bottom + top, bottom);
}
