// Templates around one number: total, silent about the day's number when free, null outside their range.
import { describe, expect, it } from 'vitest';
import { parseDayNumber } from '../numbers/day-number.js';
import { localeOf } from '../numbers/locale.js';
import { rational } from '../numbers/rational.js';
import { Rng } from '../random/rng.js';
import { numericTemplate, wholeWithin } from './sketch.js';

const locale = localeOf('en-AU');

function day(text: string) {
  const parsed = parseDayNumber(text, locale);
  if (!parsed.ok) throw new Error(parsed.error.message);
  return parsed.value;
}

const thirds = numericTemplate({
  id: 'thirds',
  kinds: ['whole', 'money'],
  free: (rng) => 3 * rng.int(1, 9),
  suits: (value) => value.n <= 100 * value.d,
  make: (x) => ({
    text: `${x.text} ÷ 3`,
    value: rational(x.n, x.d * 3),
    expression: `${x.expr} / 3`,
    features: {},
    strategy: [`3 × ${x.t(rational(x.n, x.d * 3))} = ${x.text}`],
    slips: [['divide.as-minus', x.n > 3 * x.d ? rational(x.n - 3 * x.d, x.d) : null]],
    uses: `divides ${x.text} by three`,
  }),
});

describe('a template around a number', () => {
  it('says how it uses the day’s number, and only then', () => {
    const context = { rng: new Rng(1), locale };
    expect(thirds.ask(context).usesNumber).toBeUndefined();
    expect(thirds.askOn?.(day('48'), context)?.usesNumber).toBe('divides 48 by three');
  });

  it('gives null for kinds, ranges and forms that do not suit', () => {
    const context = { rng: new Rng(1), locale };
    expect(thirds.askOn?.(day('3/4'), context)).toBeNull();
    expect(thirds.askOn?.(day('305'), context)).toBeNull();
    expect(thirds.askOn?.(day('$4.85'), context)).toBeNull();
    expect(thirds.askOn?.(day('$4.80'), context)?.answer.text).toBe('$1.60');
  });

  it('leaves out wrong answers that have no value', () => {
    const context = { rng: new Rng(1), locale };
    expect(thirds.askOn?.(day('3'), context)?.slips).toEqual([]);
    expect(thirds.askOn?.(day('48'), context)?.slips.map((slip) => slip.answer.text)).toEqual(['45']);
  });

  it('passes on faults of its own', () => {
    const broken = numericTemplate({
      id: 'broken',
      kinds: ['whole'],
      free: () => 1,
      suits: wholeWithin(1, 9),
      make: () => {
        throw new TypeError('a bug');
      },
    });
    expect(() => broken.ask({ rng: new Rng(1), locale })).toThrow(TypeError);
  });
});
