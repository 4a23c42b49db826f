// The digits of a number one by one: their sum, and a number taken apart after its leading places.
import { add, decimalPlaces, type Rational, rational, subtract } from '../../numbers/rational.js';
import { type NumericTemplate, numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';

const digitsOf = (text: string): number[] => [...text.replace(/[^\d]/g, '')].map(Number);

const wholeOrDecimal: Pick<NumericTemplate, 'kinds' | 'suits'> = {
  kinds: ['whole', 'decimal', 'money'],
  suits: (value) => (decimalPlaces(value) ?? 9) <= 3 && value.n < 10_000_000 * value.d,
};

const digitSum = numericTemplate({
  ...wholeOrDecimal,
  id: 'digit-sum',
  free: (rng) => rng.int(101, 9999),
  make: (x) => {
    const digits = digitsOf(x.text).filter((digit) => digit > 0);
    const sum = digits.reduce((all, digit) => all + digit, 0);
    if (digits.length < 2) return null;
    const largest = Math.max(...digits);
    return {
      text: `What do the digits of ${x.text} add up to?`,
      value: sum,
      form: 'whole',
      expression: digits.join(' + '),
      features: { size: Math.min(2, (digits.length - 2) / 2), carries: sum > 10 ? 0.5 : 0, adjust: -0.3 },
      strategy: [`${digits.join(' + ')} = ${sum}`],
      slips: [
        ['addend.left-out', sum - largest],
        ['fact.one-out', sum + 1],
        ['count.off-by-one', sum - 1],
      ],
      uses: `adds the digits of ${x.text}`,
    };
  },
});

/** A value cut after a place: 546 902 after its thousands, 57.49 after its tenths. */
function cutAt(value: Rational, unit: Rational): Rational {
  const count = Math.floor((value.n * unit.d) / (value.d * unit.n));
  return rational(count * unit.n, unit.d);
}

const UNITS = [100_000, 10_000, 1000, 100, 10, 1].map((n) => rational(n));
const SMALL_UNITS = [rational(1, 10), rational(1, 100)];

const partition = numericTemplate({
  ...wholeOrDecimal,
  id: 'partition',
  free: (rng) => rng.int(1101, 9989),
  make: (x) => {
    // Money is cut at whole dollars or higher.
    const units = x.form === 'money' ? UNITS : [...UNITS, ...SMALL_UNITS];
    const cuts = units
      .map((unit) => cutAt(x.value, unit))
      .filter((cut, i, all) => {
        const rest = subtract(x.value, cut);
        return (
          cut.n > 0 && rest.n > 0 && all.findIndex((other) => other.n === cut.n && other.d === cut.d) === i
        );
      });
    const cut = x.pick(cuts);
    const rest = subtract(x.value, cut);
    const asksRest = x.rng.chance(0.6);
    const wanted = asksRest ? rest : cut;
    const digits = digitsOf(x.t(wanted)).filter((digit) => digit > 0);
    const restDigits = digitsOf(x.t(rest)).filter((digit) => digit > 0).length;
    return {
      text: asksRest ? `${x.text} = ${x.t(cut)} + ?` : `${x.text} = ? + ${x.t(rest)}`,
      value: wanted,
      expression: asksRest ? `${x.expr} - ${x.e(cut)}` : `${x.expr} - ${x.e(rest)}`,
      features: { unknownInside: true, size: restDigits > 2 ? 0.6 : 0, adjust: -0.5 },
      strategy: [`${x.t(cut)} + ${x.t(rest)} = ${x.text}`],
      slips: [
        ['missing.adds-all', add(x.value, asksRest ? cut : rest)],
        ['place.face-value', digits.length === 1 ? (digits[0] ?? null) : null],
        ['place.value-for-count', wanted.d === 1 ? Number(String(wanted.n).replace(/0+$/, '')) : null],
        ['place.zero-lost', wanted.d === 1 ? Number(String(wanted.n).replace(/0+(?=[1-9])/g, '')) : null],
      ],
      uses: `takes ${x.text} apart`,
    };
  },
});

export const DIGIT_SKILLS: readonly Skill[] = [
  {
    id: 'place.digit-sum',
    title: 'Add the digits of a number',
    year: 3,
    fluentYear: 4,
    strand: 'place-value',
    prerequisites: ['add.three', 'place.three-digit'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y3-place-3'], ccss: ['2.NBT.A.1'] },
    templates: [digitSum],
  },
  {
    id: 'place.partition',
    title: 'Take a number apart after any place',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.thousands', 'dec.parts'],
    codes: { ac9: ['AC9M4N01'], england: ['4NPV-2', '5NPV-2', '6NPV-2'], ccss: ['4.NBT.A.2'] },
    templates: [partition],
  },
];
