// Amounts with a part beyond the whole: decimals, money and fractions, one template for each from a shared drafting function.
import type { DayKind } from '../numbers/day-number.js';
import { add, decimalPlaces, floor, type Rational, rational, subtract } from '../numbers/rational.js';
import type { Template } from '../questions/draft.js';
import type { Written } from '../questions/slips/fraction-operations.js';
import type { Rng } from '../random/rng.js';
import { type NumericTemplate, numericTemplate } from './sketch.js';

const PART_KINDS = ['decimal', 'money', 'fraction'] as const;
export type PartKind = (typeof PART_KINDS)[number];

/** An everyday amount of the kind that is not whole: 3.6, $4.85, 1 3/4. */
export function freePart(kind: PartKind, rng: Rng): Rational {
  const whole = rng.int(0, 8);
  if (kind === 'money') return rational(100 * whole + 5 * rng.int(1, 19), 100);
  if (kind === 'decimal') return rational(10 * whole + rng.int(1, 9), 10);
  const d = rng.pick([2, 3, 4, 5, 8, 10]);
  return rational(Math.min(4, whole) * d + rng.int(1, d - 1), d);
}

/** The part beyond the whole: 0.6 of 3.6. */
export function partOf(value: Rational): Rational {
  return subtract(value, rational(floor(value)));
}

/** The worth of one in the last written place: 0.1 for 3.6, a cent for $4.85, a quarter for 3/4. */
export function lastUnit(value: Rational, kind: DayKind): Rational {
  if (kind === 'money') return rational(1, 100);
  const places = decimalPlaces(value);
  return kind === 'decimal' && places !== null ? rational(1, 10 ** places) : rational(1, value.d);
}

/** An amount with `more` parts added to its own, as children write it: 2 over 1/3 is 3/3, and 5 over 1 1/4 is 1 6/4. */
export function withParts(amount: Rational, more: number, bottom = amount.d): Written {
  const part = partOf(amount);
  return { whole: floor(amount), top: part.n * (bottom / part.d) + more, bottom };
}

/** One more in the last written place of the question's number, whose bottom number a fraction keeps: 6/8 for 5/8. */
export function oneUnitMore(amount: Rational, asked: Rational, kind: DayKind): Rational | Written {
  const more = add(amount, lastUnit(asked, kind));
  return kind === 'fraction' && more.d > 1 ? withParts(amount, 1, asked.d) : more;
}

/** What "one" is beside a written amount: a cent where it is in cents ("60c"), a dollar or a one elsewhere. */
export function writtenOne(value: Rational, kind: DayKind): Rational {
  return kind === 'money' && value.n < value.d ? rational(1, 100) : rational(1);
}

/** One template a kind, all from the same drafting function; fractions with denominators to 100, decimals to `places`;
 * whole amounts of money only where `wholeMoney` allows them. */
export function partTemplates(
  id: string,
  make: NumericTemplate['make'],
  {
    from = 0,
    to = 1_000_000,
    places = 3,
    wholeMoney = false,
  }: { from?: number; to?: number; places?: number; wholeMoney?: boolean } = {},
): [Template, Template, Template] {
  const template = (kind: PartKind): Template =>
    numericTemplate({
      id: `${id}.${kind}`,
      kinds: [kind],
      free: (rng) => freePart(kind, rng),
      suits: (value) => {
        if (value.n < from * value.d || value.n > to * value.d) return false;
        if (value.d === 1) return wholeMoney && kind === 'money';
        return kind === 'fraction' ? value.d <= 100 : (decimalPlaces(value) ?? 99) <= places;
      },
      make,
    });
  return [template('decimal'), template('money'), template('fraction')];
}
