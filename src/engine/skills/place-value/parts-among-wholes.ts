// Where decimals, mixed numbers and amounts of money lie among the whole numbers.
import { add, compare, equals, floor, multiply, rational } from '../../numbers/rational.js';
import { lastUnit, oneUnitMore, partOf, partTemplates } from '../parts.js';
import type { Skill } from '../skill.js';

const neighbours = partTemplates('neighbour', ({ value, form, text, expr, rng, t, locale }) => {
  const up = floor(value) === 0 || rng.chance(0.6);
  const whole = floor(value) + (up ? 1 : 0);
  const unit = form === 'money' ? `whole ${locale.currency.mainName[0]} amount` : 'whole number';
  return {
    text: up ? `What is the next ${unit} after ${text}?` : `What is the last ${unit} before ${text}?`,
    value: rational(whole),
    expression: `${up ? 'ceil' : 'floor'}(${expr})`,
    features: {
      rule: true,
      size: (up ? 0 : 0.4) + (floor(value) % 10 === 9 && up ? 0.7 : 0),
      adjust: form === 'money' ? -0.3 : 0.2,
    },
    strategy: [
      `${text} lies between ${t(floor(value))} and ${t(floor(value) + 1)}`,
      `The one just ${up ? 'after' : 'before'} is ${t(whole)}`,
    ],
    slips: [
      ['count.wrong-way', up ? rational(floor(value)) : rational(whole + 1)],
      ['count.too-far', up ? rational(whole + 1) : whole > 0 ? rational(whole - 1) : null],
    ],
    uses: `finds the ${unit} just ${up ? 'after' : 'before'} ${text}`,
    ...(value.n < 20 * value.d
      ? {
          figure: {
            kind: 'number-line' as const,
            from: floor(value),
            to: floor(value) + 1,
            step: 1,
            labels: [floor(value), floor(value) + 1],
            mark: value.n / value.d,
          },
        }
      : {}),
  };
});

const greaterThanWhole = partTemplates('greater', ({ value, form, text, expr, rng, t, e }) => {
  const whole = floor(value) + rng.int(floor(value) === 0 ? 1 : 0, 2);
  const greatest = rng.chance(0.6);
  const first = rng.chance(0.5);
  const valueWins = compare(value, rational(whole)) > 0 === greatest;
  const pair = first ? [text, t(whole)] : [t(whole), text];
  return {
    text: `Which is ${greatest ? 'greater' : 'less'}: ${pair.join(' or ')}?`,
    value: valueWins ? value : rational(whole),
    expression: `${greatest ? 'max' : 'min'}(${expr}, ${e(whole)})`,
    features: {
      fewChoices: true,
      size: whole === floor(value) || whole === floor(value) + 1 ? 0.7 : 0,
      adjust: form === 'money' ? -0.4 : form === 'fraction' ? 0.2 : 0,
    },
    strategy: [
      `${text} lies between ${t(floor(value))} and ${t(floor(value) + 1)}`,
      `So ${text} is ${compare(value, rational(whole)) > 0 ? 'greater' : 'less'} than ${t(whole)}`,
    ],
    slips: [['compare.reversed', valueWins ? rational(whole) : value]],
    uses: `compares ${text} with ${t(whole)}`,
  };
});

const farFromWhole = partTemplates('far', ({ value, form, text, expr, rng, t, e }) => {
  const whole = 10 * (Math.floor(value.n / value.d / 10) + rng.int(2, 4));
  const greatest = rng.chance(0.5);
  const pair = rng.chance(0.5) ? [text, t(whole)] : [t(whole), text];
  return {
    text: `Which is ${greatest ? 'greater' : 'less'}: ${pair.join(' or ')}?`,
    value: greatest ? rational(whole) : value,
    expression: `${greatest ? 'max' : 'min'}(${expr}, ${e(whole)})`,
    // Far apart: any sense of size answers it.
    features: { fewChoices: true, rule: true, adjust: form === 'money' ? -1.4 : -1 },
    strategy: [`${text} is less than ${t(floor(value) + 1)}, and ${t(whole)} is much more`],
    slips: [['compare.reversed', greatest ? value : rational(whole)]],
    uses: `compares ${text} with ${t(whole)}`,
  };
});

const wholesIn = partTemplates(
  'wholes',
  ({ value, form, text, expr, t, locale }) => {
    const whole = floor(value);
    const name = form === 'money' ? locale.currency.mainName[1] : 'wholes';
    return {
      text: `How many ${form === 'money' ? `whole ${name}` : name} are there in ${text}?`,
      value: rational(whole),
      form: 'whole',
      expression: `floor(${expr})`,
      // The answer stands before the point or beside the fraction.
      features: { rule: true, adjust: form === 'money' ? -1.2 : -0.8 },
      strategy: [`${text} is ${t(whole)} and ${t(partOf(value))} more`],
      slips: [
        ['round.always-up', rational(whole + 1)],
        [
          'place.neighbour',
          form === 'fraction'
            ? rational(value.n - whole * value.d)
            : rational(Math.floor((value.n * 10) / value.d) % 10),
        ],
      ],
      uses: `counts the ${name} in ${text}`,
    };
  },
  { from: 1 },
);

const halfwayOfParts = partTemplates(
  'halfway-parts',
  ({ value, form, text, expr, rng, t, e }) => {
    const unit = form === 'money' ? rational(1, 10) : lastUnit(value, form);
    const half = multiply(
      unit,
      rational(form === 'fraction' ? rng.int(1, value.d) : rng.pick([1, 2, 3, 4, 5])),
    );
    const high = add(value, add(half, half));
    const middle = add(value, half);
    return {
      text: `What is halfway between ${text} and ${t(high)}?`,
      value: middle,
      expression: `(${expr} + ${e(high)}) / 2`,
      features: {
        size: form === 'fraction' ? 0.8 : value.d > 10 && form === 'decimal' ? 0.5 : 0,
        carries: floor(middle) > floor(value) ? 0.7 : 0,
      },
      strategy: [
        `${t(high)} − ${text} = ${t(add(half, half))}`,
        `Half of ${t(add(half, half))} is ${t(half)}`,
        `${text} + ${t(half)} = ${t(middle)}`,
      ],
      slips: [
        ['halfway.gap', half],
        ['halfway.end', add(high, half)],
        // One unit beyond a middle that is one unit from the ends is an end itself, which nobody gives for the middle.
        [
          'fact.one-out',
          equals(half, unit) ? null : form === 'money' ? add(middle, unit) : oneUnitMore(middle, value, form),
        ],
      ],
      uses: `finds the middle between ${text} and ${t(high)}`,
    };
  },
  { wholeMoney: true },
);

export const PART_PLACE_SKILLS: readonly Skill[] = [
  {
    id: 'place.part-neighbours',
    family: 'which is greater',
    title: 'Place decimals, mixed numbers and money among whole numbers',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.compare.1000'],
    codes: { ac9: ['AC9M4N01', 'AC9M4N04'], england: ['NC-Y4-fractions-9', '5NPV-3'], ccss: ['4.NF.C.7'] },
    templates: [...neighbours, ...greaterThanWhole, ...farFromWhole, ...wholesIn],
  },
  {
    id: 'place.halfway.parts',
    title: 'Find what is halfway between decimals, fractions or amounts',
    year: 5,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.halfway', 'place.part-neighbours'],
    codes: { ac9: ['AC9M5N01'], england: ['5NPV-3', '5NPV-4'], ccss: ['5.NBT.B.7'] },
    shift: 0.3,
    templates: halfwayOfParts,
  },
];
