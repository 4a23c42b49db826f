// Taking whole numbers from decimals, mixed numbers and money, and taking those from a whole.
import { add, equals, floor, rational, subtract } from '../../numbers/rational.js';
import { smallestCoin } from '../measuring/quantity.js';
import { lastUnit, oneUnitMore, partOf, partTemplates, withParts } from '../parts.js';
import type { Skill } from '../skill.js';

const wholeFromPart = partTemplates(
  'minus-whole',
  ({ value, form, text, expr, rng, t, e, locale }) => {
    const whole = floor(value);
    const k = rng.int(1, Math.min(9, whole));
    const left = subtract(value, rational(k));
    const unit = lastUnit(value, form);
    // Money in hand can be paid with the country's coins.
    const isCash = ((100 * value.n) / value.d) % smallestCoin(locale) === 0;
    const story = form === 'money' && rng.chance(0.4) && isCash;
    return {
      text: story
        ? `You have ${text} and spend ${t(k)}. How much is left?`
        : rng.chance(0.6)
          ? `${text} − ${t(k)}`
          : `What is ${t(k)} less than ${text}?`,
      value: left,
      expression: `${expr} - ${e(k)}`,
      features: {
        rule: k === 1,
        size: k === whole ? 0.5 : k > 4 ? 0.5 : 0,
        story,
        adjust: form === 'money' ? -0.4 : 0,
      },
      strategy:
        value.d === 1
          ? [`${text} − ${t(k)} = ${t(left)}`]
          : [
              `Only the whole part changes: ${t(whole)} − ${t(k)} = ${t(whole - k)}`,
              k === whole ? `Only ${t(left)} is left` : `${t(whole - k)} + ${t(partOf(value))} = ${t(left)}`,
            ],
      slips: [
        [
          form === 'fraction' ? 'exact.whole-to-top' : 'exact.point-ignored',
          value.d === 1
            ? null
            : form !== 'fraction'
              ? subtract(value, rational(k * unit.n, unit.d))
              : // Nobody leaves a fraction of no parts.
                partOf(value).n > k
                ? withParts(value, -k)
                : null,
        ],
        ['operation.swapped', add(value, rational(k))],
        ['exact.part-dropped', whole === k ? null : rational(whole - k)],
      ],
      uses: `takes ${t(k)} from ${text}`,
    };
  },
  { from: 1, wholeMoney: true },
);

const partFromWhole = partTemplates(
  'from-whole',
  ({ value, form, text, expr, rng, t, e }) => {
    const next = floor(value) + 1;
    const from = rng.pick([next, next + 1, 10 * Math.ceil(next / 10), 10 * Math.ceil(next / 10) + 10]);
    const left = subtract(rational(from), value);
    const afterWhole = from - floor(value);
    return {
      text: `${t(from)} − ${text}`,
      value: left,
      expression: `${e(from)} - ${expr}`,
      features: {
        size: (from === next ? 0 : 0.8) + (from >= 20 ? 0.4 : 0),
        rule: from === 1,
        adjust: (value.d > 10 && form === 'decimal' ? 0.5 : 0) + (form === 'money' ? -0.2 : 0),
      },
      strategy:
        floor(value) === 0
          ? [
              `${t(1)} − ${text} = ${t(subtract(rational(1), value))}`,
              ...(from > 1 ? [`${t(from - 1)} + ${t(subtract(rational(1), value))} = ${t(left)}`] : []),
            ]
          : [
              `${t(from)} − ${t(floor(value))} = ${t(afterWhole)}`,
              ...(value.d === 1 ? [] : [`${t(afterWhole)} − ${t(partOf(value))} = ${t(left)}`]),
            ],
      slips: [
        ['exact.one-too-many', add(left, rational(1))],
        ['exact.part-kept', add(rational(afterWhole), partOf(value))],
        // With a part of one unit (6 − 4 1/2) this is also one unit too many, but leaving it out is what happens.
        ['exact.part-dropped', floor(value) > 0 ? rational(afterWhole) : null],
        [
          'fact.one-out',
          equals(partOf(value), lastUnit(value, form)) ? null : oneUnitMore(left, value, form),
        ],
      ],
      uses: `takes ${text} from ${t(from)}`,
    };
  },
  { wholeMoney: true },
);

export const PART_TAKE_SKILLS: readonly Skill[] = [
  {
    id: 'sub.whole-from-part',
    family: 'take from a part',
    title: 'Take a whole number from a decimal, a mixed number or an amount of money',
    year: 4,
    fluentYear: 5,
    strand: 'subtraction',
    prerequisites: ['add.whole-to-part', 'sub.within20'],
    codes: { ac9: ['AC9M4N01', 'AC9M4N04'], england: ['NC-Y4-fractions-10'], ccss: ['4.NF.B.3c'] },
    shift: 0.1,
    templates: wholeFromPart,
  },
  {
    id: 'sub.part-from-whole',
    family: 'make up to a whole',
    title: 'Take a decimal, a fraction or an amount of money from a whole',
    year: 5,
    fluentYear: 6,
    strand: 'subtraction',
    prerequisites: ['add.make-whole', 'sub.whole-from-part'],
    codes: { ac9: ['AC9M5N09', 'AC9M6N04'], england: ['5NF-2', 'NC-Y5-fractions-10'], ccss: ['5.NBT.B.7'] },
    shift: 0.2,
    templates: partFromWhole,
  },
];
