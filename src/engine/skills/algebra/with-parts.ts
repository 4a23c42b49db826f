// Patterns and equations with decimals, fractions and amounts of money.
import { add, floor, multiply, rational, subtract } from '../../numbers/rational.js';
import { freePart, lastUnit, partOf, partTemplates, writtenOne } from '../parts.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';
import { unlessGiven } from './given.js';

const countInParts = partTemplates('count-parts', ({ value, form, text, rng, t, e }) => {
  const unit = form === 'money' ? rational(rng.pick([5, 10, 20, 50]), 100) : lastUnit(value, form);
  const at = (k: number) => add(value, multiply(unit, rational(k)));
  const next = at(3);
  return {
    text: `What comes next: ${text}, ${t(at(1))}, ${t(at(2))}, ?`,
    value: next,
    expression: `${e(at(2))} + ${e(unit)}`,
    features: {
      rule: form !== 'fraction' && Math.floor(at(0).n / at(0).d) === Math.floor(next.n / next.d),
      size: (form === 'fraction' ? 0.7 : 0) + (value.d > 10 ? 0.5 : 0),
    },
    strategy: [`Each step adds ${t(unit)}`, `${t(at(2))} + ${t(unit)} = ${t(next)}`],
    slips: [
      ['pattern.adds-one', add(at(2), writtenOne(at(2), form))],
      ['pattern.step-missed', at(4)],
      ['pattern.last-again', at(2)],
      [
        'place.no-rename',
        form === 'decimal' && next.d === 1 ? rational(Math.floor(value.n / value.d)) : null,
      ],
    ],
    uses: `counts on from ${text} in equal steps`,
  };
});

const stepInParts = partTemplates(
  'part-steps',
  ({ value, form, text, rng, t, e }) => {
    const unit = lastUnit(value, form);
    const times =
      form === 'money'
        ? rng.pick([15, 25, 50, 75, 125])
        : form === 'fraction'
          ? rng.int(2, 5)
          : rng.pick([2, 3, 4, 5, 6, 8]);
    const step = multiply(unit, rational(times));
    const down = value.n * step.d > 3 * step.n * value.d && rng.chance(0.4);
    const at = (k: number) =>
      down ? subtract(value, multiply(step, rational(k))) : add(value, multiply(step, rational(k)));
    const hidden = rng.chance(0.6) ? 3 : 2;
    const shown = [text, t(at(1)), hidden === 2 ? '?' : t(at(2)), hidden === 3 ? '?' : t(at(3))];
    const answer = at(hidden);
    const sign = down ? '−' : '+';
    return {
      text: hidden === 3 ? `What comes next: ${shown.join(', ')}` : `What is missing in ${shown.join(', ')}?`,
      value: answer,
      expression: `${e(at(hidden - 1))} ${down ? '-' : '+'} ${e(step)}`,
      features: {
        size:
          (down ? 0.7 : 0) +
          (hidden === 2 ? 0.4 : 0) +
          (form === 'fraction' ? 0.6 : 0) +
          (value.d > 10 && form === 'decimal' ? 0.4 : 0),
      },
      strategy: [
        `Each step ${down ? 'takes away' : 'adds'} ${t(step)}`,
        `${t(at(hidden - 1))} ${sign} ${t(step)} = ${t(answer)}`,
      ],
      slips: [
        // In a gap nobody writes a number that stands before it or after it already.
        ['pattern.wrong-way', hidden === 2 ? null : down ? add(at(2), step) : subtract(at(2), step)],
        [
          'pattern.adds-one',
          down
            ? null
            : unlessGiven(
                add(at(hidden - 1), writtenOne(at(hidden - 1), form)),
                ...(hidden === 2 ? [at(3)] : []),
              ),
        ],
        ['pattern.last-again', at(hidden - 1)],
        [
          'fact.one-out',
          // A whole step leaves the part as it is.
          unlessGiven(add(answer, step.d === 1 ? rational(1) : unit), ...[0, 1, 2, 3].map(at)),
        ],
      ],
      uses: `${hidden === 3 ? 'continues' : 'fills a gap in'} a pattern from ${text}`,
    };
  },
  { wholeMoney: true },
);

const missingPart = partTemplates(
  'missing-part',
  ({ value, form, text, expr, rng, t, e }) => {
    const other =
      form === 'fraction'
        ? rational(rng.int(1, 3) * value.d + rng.int(1, value.d - 1), value.d)
        : freePart(form === 'money' ? 'money' : 'decimal', rng);
    const whole = add(value, other);
    const kind = rng.pick(['a+?', '?+a', '?-a', 'w-?'] as const);
    const undo = kind === '?-a';
    const texts = {
      'a+?': `${text} + ? = ${t(whole)}`,
      '?+a': `? + ${text} = ${t(whole)}`,
      '?-a': `? − ${t(other)} = ${text}`,
      'w-?': `${t(whole)} − ? = ${text}`,
    };
    const carry = floor(value) + floor(other) < floor(whole);
    return {
      text: texts[kind],
      value: undo ? whole : other,
      expression: undo ? `${expr} + ${e(other)}` : `${e(whole)} - ${expr}`,
      features: {
        carries: carry ? 1 : 0,
        extraSteps: kind === 'w-?' || undo ? 0.5 : 0,
        adjust: (value.d > 10 && form === 'decimal' ? 0.4 : 0) + (form === 'money' ? -0.2 : 0),
      },
      strategy: undo
        ? ['Put back what was taken away', `${text} + ${t(other)} = ${t(whole)}`]
        : [`Think of the gap between ${text} and ${t(whole)}`, `${t(whole)} − ${text} = ${t(other)}`],
      slips: [
        ['missing.adds-all', undo ? null : add(whole, value)],
        ['missing.same-operation', undo ? subtract(value, other) : null],
        // Making up part and whole apart goes wrong only where the part of the known number is the larger.
        ['exact.one-too-many', carry && !undo ? add(other, rational(1)) : null],
        // Nobody takes something from nothing.
        ['exact.whole-not-carried', carry && undo && whole.n > whole.d ? subtract(whole, rational(1)) : null],
        [
          'exact.part-dropped',
          undo && floor(value) + floor(other) > 0 ? rational(floor(value) + floor(other)) : null,
        ],
        [
          'fact.one-out',
          undo ? add(whole, rational(1)) : unlessGiven(add(other, lastUnit(value, form)), value, whole),
        ],
      ],
      uses: `finds the number missing beside ${text}`,
    };
  },
  { wholeMoney: true },
);

const doubledThen = partTemplates(
  'rule',
  ({ value, form, text, expr, rng, t, e }) => {
    const factor = form === 'fraction' ? 2 : rng.pick([2, 2, 10]);
    const plus = rng.int(1, 5);
    const product = multiply(value, rational(factor));
    const result = add(product, rational(plus));
    return {
      text: `Start with ${text}, ${factor === 2 ? 'double it' : 'multiply by 10'}, then add ${t(plus)}. What do you get?`,
      value: result,
      expression: `${expr} * ${factor} + ${e(plus)}`,
      features: {
        size: (factor === 10 ? 0.3 : 0) + (floor(product) > factor * floor(value) ? 0.7 : 0),
        adjust: form === 'fraction' ? 0.2 : 0,
      },
      strategy: [`${text} × ${factor} = ${t(product)}`, `${t(product)} + ${t(plus)} = ${t(result)}`],
      slips: [
        ['rule.one-step', product],
        ['rule.steps-swapped', multiply(add(value, rational(plus)), rational(factor))],
        ['exact.part-kept', factor === 2 ? add(rational(2 * floor(value) + plus), partOf(value)) : null],
        ['rule.one-step', add(value, rational(plus))],
      ],
      uses: `puts ${text} through a two-step rule`,
    };
  },
  { wholeMoney: true },
);

const thoughtOf = partTemplates(
  'think-part',
  ({ value, form, text, expr, rng, t, e }) => {
    const adds = floor(value) > 0 && rng.chance(0.6);
    const change = rational(adds ? rng.int(1, Math.min(9, floor(value))) : rng.int(1, 9));
    const start = adds ? subtract(value, change) : add(value, change);
    const name = storyName(rng.fork(text));
    return {
      text: `${name} thinks of ${form === 'money' ? 'an amount' : 'a number'}, ${adds ? 'adds' : 'takes away'} ${t(change)} and gets ${text}. What was it?`,
      value: start,
      expression: `${expr} ${adds ? '-' : '+'} ${e(change)}`,
      features: { size: adds ? 0.4 : 0, adjust: -0.4 },
      strategy: ['Work backwards: undo the step', `${text} ${adds ? '−' : '+'} ${t(change)} = ${t(start)}`],
      slips: [
        [
          'missing.same-operation',
          adds ? add(value, change) : floor(value) >= floor(change) ? subtract(value, change) : null,
        ],
        ['exact.part-dropped', rational(floor(start))],
        ['fact.one-out', unlessGiven(add(start, rational(1)), value, change)],
      ],
      uses: `works back from ${text}`,
    };
  },
  { wholeMoney: true },
);

const balanceOfParts = partTemplates(
  'balance-part',
  ({ value, form, text, expr, rng, t, e }) => {
    const b = rng.int(2, 9);
    const c =
      b > 2 && rng.chance(0.6)
        ? b - rng.int(1, Math.min(3, b - 1))
        : b + rng.int(1, Math.max(1, Math.min(3, floor(value))));
    const other = subtract(add(value, rational(b)), rational(c));
    const sum = add(value, rational(b));
    return {
      text: `${text} + ${t(b)} = ${t(c)} + ?`,
      value: other,
      expression: `${expr} + ${e(b)} - ${e(c)}`,
      features: { size: c > b ? 0.6 : 0, adjust: form === 'money' ? -0.3 : 0 },
      strategy: [
        `${t(c)} is ${t(Math.abs(c - b))} ${c > b ? 'more' : 'less'} than ${t(b)}, so the other number is ${t(Math.abs(c - b))} ${c > b ? 'less' : 'more'} than ${text}`,
        `${text} ${c > b ? '−' : '+'} ${t(Math.abs(c - b))} = ${t(other)}`,
      ],
      slips: [
        ['equals.answer-next', sum],
        ['equals.carries-on', add(sum, rational(c))],
        [
          'equals.wrong-way',
          c > b
            ? add(value, rational(c - b))
            : value.n > (b - c) * value.d
              ? subtract(value, rational(b - c))
              : null,
        ],
      ],
      uses: `balances ${text} + ${t(b)} with another sum`,
    };
  },
  { wholeMoney: true },
);

export const PART_ALGEBRA_SKILLS: readonly Skill[] = [
  {
    id: 'alg.count-parts',
    family: 'what comes next',
    title: 'Count on in decimal and fraction parts',
    year: 4,
    fluentYear: 5,
    strand: 'algebra',
    prerequisites: ['alg.step', 'place.part-neighbours'],
    codes: { ac9: ['AC9M4N04', 'AC9M4N01'], england: ['NC-Y4-fractions-2'], ccss: ['4.NF.B.3a'] },
    templates: countInParts,
  },
  {
    id: 'alg.part-steps',
    family: 'what comes next',
    title: 'Patterns that step in decimals, fractions or money',
    year: 5,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.count-parts'],
    codes: { ac9: ['AC9M6A01'], england: ['NC-Y6-algebra-2'], ccss: ['5.NBT.B.7'] },
    templates: stepInParts,
  },
  {
    id: 'alg.missing.part',
    title: 'Missing decimals, fractions and amounts',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.missing', 'add.make-whole'],
    codes: {
      ac9: ['AC9M6N04', 'AC9M6N05'],
      england: ['NC-Y6-algebra-3', 'NC-Y5-fractions-10'],
      ccss: ['6.EE.B.7'],
    },
    templates: missingPart,
  },
  {
    id: 'alg.rule.parts',
    title: 'Follow a rule with decimals, fractions or money',
    year: 5,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.rule', 'add.whole-to-part'],
    codes: {
      ac9: ['AC9M6A01', 'AC9M6A03'],
      england: ['NC-Y5-multdiv-7', 'NC-Y6-algebra-1'],
      ccss: ['5.NBT.B.7'],
    },
    shift: 0.2,
    templates: doubledThen,
  },
  {
    id: 'alg.think.parts',
    title: 'Work back to a decimal, a fraction or an amount',
    year: 5,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.think', 'sub.whole-from-part'],
    codes: { ac9: ['AC9M4A01', 'AC9M6N04'], england: ['NC-Y5-fractions-10'], ccss: ['5.NBT.B.7'] },
    templates: thoughtOf,
  },
  {
    id: 'alg.balance.parts',
    family: 'both sides',
    title: 'Balance both sides with decimals, fractions or money',
    year: 5,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.balance', 'add.whole-to-part'],
    codes: { ac9: ['AC9M4A01', 'AC9M6N04'], england: ['NC-Y5-multdiv-10'], ccss: ['5.NBT.B.7'] },
    templates: balanceOfParts,
  },
];
