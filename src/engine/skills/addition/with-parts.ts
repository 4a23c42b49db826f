// Adding whole numbers to decimals, mixed numbers and money, and making them up to a whole.
import { add, compare, equals, floor, rational, subtract } from '../../numbers/rational.js';
import { lastUnit, oneUnitMore, partOf, partTemplates, withParts } from '../parts.js';
import type { Skill } from '../skill.js';

const wholeToPart = partTemplates(
  'plus-whole',
  ({ value, form, text, expr, rng, t, e }) => {
    const k = rng.chance(0.3) ? 10 * rng.int(1, 4) : rng.int(1, 9);
    const total = add(value, rational(k));
    const whole = floor(value);
    const unit = lastUnit(value, form);
    return {
      text: rng.chance(0.6) ? `${text} + ${t(k)}` : `What is ${t(k)} more than ${text}?`,
      value: total,
      expression: `${expr} + ${e(k)}`,
      features: {
        rule: k === 1 || whole === 0,
        size: (whole + k > 9 ? 0.6 : 0) + (k >= 10 ? 0.3 : 0),
        adjust: form === 'money' ? -0.4 : 0,
      },
      strategy:
        whole === 0
          ? [`${t(k)} and ${text} more: ${t(total)}`]
          : [
              `${value.d === 1 ? '' : 'Only the whole part changes: '}${t(whole)} + ${t(k)} = ${t(whole + k)}`,
              ...(value.d === 1 ? [] : [`${t(whole + k)} + ${t(partOf(value))} = ${t(total)}`]),
            ],
      slips: [
        [
          // An amount written in the small unit alone (85c) has no point to overlook.
          form === 'fraction'
            ? 'exact.whole-to-top'
            : form === 'money' && whole === 0
              ? 'money.unit-ignored'
              : 'exact.point-ignored',
          value.d === 1
            ? null
            : form === 'fraction'
              ? withParts(value, k)
              : add(value, rational(k * unit.n, unit.d)),
        ],
        ['operation.swapped', compare(value, rational(k)) >= 0 ? subtract(value, rational(k)) : null],
        ['exact.part-dropped', whole === 0 ? null : rational(whole + k)],
        ['fact.one-out', add(total, rational(1))],
      ],
      uses: `adds ${t(k)} to ${text}`,
    };
  },
  { wholeMoney: true },
);

const makeWhole = partTemplates('make-whole', ({ value, form, text, expr, rng, t, e }) => {
  const next = floor(value) + 1;
  const round =
    next <= 5
      ? [next, next + 1, 5, 10]
      : [next, next + 1, 10 * Math.ceil(next / 10), 10 * Math.ceil(next / 10) + 10];
  const target = rng.pick(round);
  const gap = subtract(rational(target), value);
  const toNext = subtract(rational(next), value);
  return {
    text: rng.pick([`${text} + ? = ${t(target)}`, `What must be added to ${text} to make ${t(target)}?`]),
    value: gap,
    expression: `${e(target)} - ${expr}`,
    features: {
      size: (target === next ? 0 : 1) + (target >= 20 ? 0.4 : 0),
      rule: target === 1,
      adjust: (value.d > 10 && form === 'decimal' ? 0.5 : 0) + (form === 'money' ? -0.2 : 0),
    },
    strategy:
      target === next
        ? [`${text} + ${t(toNext)} = ${t(next)}`]
        : [
            `${text} + ${t(toNext)} = ${t(next)}`,
            `${t(next)} + ${t(target - next)} = ${t(target)}`,
            `${t(toNext)} + ${t(target - next)} = ${t(gap)}`,
          ],
    slips: [
      ['exact.one-too-many', add(gap, rational(1))],
      ['exact.part-kept', value.n > value.d ? add(rational(target - floor(value)), partOf(value)) : null],
      // With a part of one unit (1 1/3 up to 5) this is also one unit too many, but leaving it out is what happens.
      ['exact.part-dropped', value.n > value.d ? rational(target - floor(value)) : null],
      ['fact.one-out', equals(partOf(value), lastUnit(value, form)) ? null : oneUnitMore(gap, value, form)],
    ],
    uses: `finds what makes ${text} up to ${t(target)}`,
  };
});

export const PART_ADDITION_SKILLS: readonly Skill[] = [
  {
    id: 'add.whole-to-part',
    family: 'add to a part',
    title: 'Add a whole number to a decimal, a mixed number or an amount of money',
    year: 4,
    fluentYear: 5,
    strand: 'addition',
    prerequisites: ['add.within20', 'place.part-neighbours'],
    codes: { ac9: ['AC9M4N01', 'AC9M4N04'], england: ['NC-Y4-fractions-10'], ccss: ['4.NF.B.3c'] },
    templates: wholeToPart,
  },
  {
    id: 'add.make-whole',
    family: 'make up to a whole',
    title: 'Make up a decimal, a fraction or an amount of money to a whole',
    year: 5,
    fluentYear: 6,
    strand: 'addition',
    prerequisites: ['add.whole-to-part', 'add.to100'],
    codes: { ac9: ['AC9M5N09', 'AC9M6N04'], england: ['5NF-2', 'NC-Y5-fractions-10'], ccss: ['5.NBT.B.7'] },
    templates: makeWhole,
  },
];
