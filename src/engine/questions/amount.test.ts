// Quantities in the form of the day's number: exact, or refused when the form cannot show them.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fractionMath as math } from '../../../test/support/exact-math.js';
import { localeOf } from '../numbers/locale.js';
import { rational, toValue } from '../numbers/rational.js';
import { amountAnswer, amountExpression, amountText } from './amount.js';

const locale = localeOf('en-AU');

describe('amounts', () => {
  it('are written in the wanted form', () => {
    expect(amountText(47, 'whole', locale)).toBe('47');
    expect(amountText(rational(47, 2), 'whole', locale)).toBe('23.5');
    expect(amountText(rational(47, 3), 'whole', locale)).toBe('15 2/3');
    expect(amountText(rational(7, 4), 'fraction', locale)).toBe('1 3/4');
    expect(amountText(rational(97, 20), 'money', locale)).toBe('$4.85');
    expect(amountText(12_500, 'fraction', locale)).toBe('12\u00a0500');
  });

  it('are refused when the form cannot show them', () => {
    expect(amountText(rational(97, 40), 'money', locale)).toBeNull();
    expect(amountAnswer(rational(97, 40), 'money', locale)).toBeNull();
    expect(amountText(rational(1, 3), 'decimal', locale)).toBeNull();
    expect(amountAnswer(rational(-1, 4), 'fraction', locale)).toBeNull();
  });

  it('have expressions that mathjs evaluates to the same value', () => {
    const value = fc.tuple(fc.integer({ min: -5000, max: 5000 }), fc.integer({ min: 1, max: 120 }));
    fc.assert(
      fc.property(value, ([n, d]) => {
        const exact = rational(n, d);
        const judged = math.fraction(String(math.evaluate(`1 * ${amountExpression(exact)}`)));
        expect(judged.toFraction()).toBe(toValue(exact));
      }),
    );
  });
});
