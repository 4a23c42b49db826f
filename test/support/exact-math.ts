// The outside judge of arithmetic, mathjs, set up once for all tests.
import { all, create, type MathJsInstance } from 'mathjs';

// mathjs types its full set of functions as possibly absent, which it never is.
const everything = all ?? {};

/** mathjs computing with exact fractions. */
export const fractionMath: MathJsInstance = create(everything, { number: 'Fraction' });

/** mathjs computing with decimals of 64 digits, for the few functions that it does not define on fractions. */
export const decimalMath: MathJsInstance = create(everything, { number: 'BigNumber' });
