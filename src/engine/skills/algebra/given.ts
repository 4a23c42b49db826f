// Wrong numbers that stand in the question already.
import { equals, type Rational } from '../../numbers/rational.js';
import { exact } from '../../questions/amount.js';

/** The wrong number, or null where the question gives it: there it reads as a number repeated, not as one off by one. */
export function unlessGiven<N extends number | Rational>(wrong: N, ...given: readonly N[]): N | null {
  return given.some((one) => equals(exact(one), exact(wrong))) ? null : wrong;
}
