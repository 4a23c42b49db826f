// Order of operations, turned sums, growing patterns and near undoing with decimals, fractions and money; the last also
// with whole numbers of any size.
import { formatWhole } from '../../numbers/format.js';
import { add, multiply, rational, subtract, toNumber } from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { partTemplates } from '../parts.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { boatStory, withStory } from '../retold.js';

const orderOfParts = partTemplates(
  'order-part',
  ({ value, form, text, expr, rng, t, e }) => {
    const b = rng.int(2, 5);
    const c = rng.int(2, 6);
    const product = b * c;
    const total = add(value, rational(product));
    const first = rng.chance(0.5);
    return {
      text: first ? `${b} × ${t(c)} + ${text}` : `${text} + ${b} × ${t(c)}`,
      value: total,
      expression: first ? `${b} * ${e(c)} + ${expr}` : `${expr} + ${b} * ${e(c)}`,
      features: { extraSteps: first ? 0.5 : 1, size: product > 12 ? 0.4 : 0 },
      strategy: [
        `Multiplication first: ${b} × ${t(c)} = ${t(product)}`,
        `${text} + ${t(product)} = ${t(total)}`,
      ],
      slips: [
        [
          'order.left-to-right',
          // A plain number added to cents makes cents, not dollars.
          first || (form === 'money' && value.n < value.d)
            ? null
            : multiply(add(value, rational(b)), rational(c)),
        ],
        ['rule.one-step', rational(product)],
        ['addend.left-out', add(value, rational(c))],
      ],
      uses: `puts ${text} into a mixed calculation`,
    };
  },
  { wholeMoney: true },
);

const turnedParts = partTemplates(
  'turn-part',
  ({ value, text, expr, rng, t, e }) => {
    const k = rng.int(2, 19);
    const sum = add(value, rational(k));
    return {
      text: `${text} + ${t(k)} = ? + ${text}`,
      value: k,
      expression: `${expr} + ${e(k)} - ${expr}`,
      features: { size: k > 9 ? 0.3 : 0, adjust: -0.6 },
      strategy: [`Turned around, a sum stays the same: ${text} + ${t(k)} = ${t(k)} + ${text}`],
      slips: [
        ['equals.answer-next', sum],
        ['equals.carries-on', add(sum, value)],
      ],
      uses: `turns a sum with ${text} around`,
    };
  },
  { wholeMoney: true },
);

const PLACES = ['third', 'fourth', 'fifth'] as const;

const growingParts = partTemplates(
  'term-part',
  ({ value, form, text, expr, rng, t, e }) => {
    const step = rng.int(2, 9);
    const jumps = rng.int(2, 4);
    const end = add(value, rational(step * jumps));
    const place = PLACES[jumps - 2] ?? 'third';
    return {
      text: `A pattern starts at ${text} and goes up by ${t(step)}. What is its ${place} ${form === 'money' ? 'amount' : 'number'}?`,
      value: end,
      expression: `${expr} + ${jumps} * ${e(step)}`,
      features: { extraSteps: 1, size: jumps / 4 },
      strategy: [
        `From the first to the ${place} there are ${jumps} steps: ${jumps} × ${t(step)} = ${t(step * jumps)}`,
        `${text} + ${t(step * jumps)} = ${t(end)}`,
      ],
      slips: [
        ['pattern.step-missed', add(end, rational(step))],
        ['pattern.one-step-only', add(value, rational(step))],
      ],
      uses: `starts a growing pattern at ${text}`,
    };
  },
  { wholeMoney: true },
);

const nearUndo = partTemplates(
  'near-undo-part',
  ({ value, text, expr, rng, t, e }) => {
    const k = rng.int(4, 19);
    const more = rng.int(1, 2);
    // Adding first never goes below zero; taking first needs enough.
    const adds = toNumber(value) < k + more || rng.chance(0.5);
    const [first, second] = adds ? [k + more, k] : [k, k + more];
    const result = add(value, rational(more));
    return {
      text: adds ? `${text} + ${t(first)} − ${t(second)}` : `${text} − ${t(first)} + ${t(second)}`,
      value: result,
      expression: adds ? `${expr} + ${e(first)} - ${e(second)}` : `${expr} - ${e(first)} + ${e(second)}`,
      features: { extraSteps: 0.5, size: adds ? 0 : 0.4, adjust: -0.3 },
      strategy: [
        `That is ${t(more)} more in all: ${t(Math.max(first, second))} − ${t(Math.min(first, second))} = ${t(more)}`,
        `${text} + ${t(more)} = ${t(result)}`,
      ],
      slips: [
        ['compensate.wrong-way', toNumber(value) >= more ? subtract(value, rational(more)) : null],
        ['rule.one-step', adds ? add(value, rational(first)) : subtract(value, rational(first))],
        ['operation.swapped', add(value, rational(first + second))],
      ],
      uses: `adds to ${text} and takes away nearly the same`,
    };
  },
  { wholeMoney: true },
);

const nearUndoWhole = templateOf<readonly [n: number, add: number, take: number]>({
  id: 'near-undo',
  free: (rng) => {
    const k = rng.int(15, 58);
    return rng.chance(0.5)
      ? [rng.int(60, 99), k, k + rng.int(1, 3)]
      : [rng.int(60, 99), k + rng.int(1, 3), k];
  },
  on: onWhole(20, 1_000_000, (n, rng) => {
    const k = n < 100 ? rng.int(5, 15) : rng.int(15, 95);
    return rng.chance(0.5) ? [n, k, k + rng.int(1, 3)] : [n, k + rng.int(1, 3), k];
  }),
  draft: ([n, plus, minus], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const change = plus - minus;
    const result = n + change;
    return {
      text: `${say(n)} + ${plus} − ${minus}`,
      answer: wholeAnswer(result, locale),
      expression: `${n} + ${plus} - ${minus}`,
      features: { extraSteps: 0.5, size: n > 999 ? 0.5 : 0, adjust: change < 0 ? 0 : -0.2 },
      strategy: [
        `Adding ${plus} and taking away ${minus} is ${Math.abs(change)} ${change < 0 ? 'less' : 'more'} in all`,
        `${say(n)} ${change < 0 ? '−' : '+'} ${Math.abs(change)} = ${say(result)}`,
      ],
      slips: wholeSlips(
        [
          ['compensate.wrong-way', n - change],
          ['rule.one-step', n + plus],
          ['operation.swapped', n + plus + minus],
        ],
        locale,
      ),
      usesNumber: `adds to ${say(n)} and takes away nearly the same`,
    };
  },
});

export const PARTS_IN_ORDER_SKILLS: readonly Skill[] = [
  {
    id: 'alg.near-undo',
    title: 'Add and take away nearly the same',
    year: 3,
    fluentYear: 4,
    strand: 'algebra',
    prerequisites: ['alg.turn-round', 'add.2d2d', 'sub.2d2d'],
    codes: { ac9: ['AC9M3A01', 'AC9M3A02'], england: ['NC-Y2-addsub-5'], ccss: ['2.OA.A.1'] },
    templates: withStory(boatStory, [nearUndoWhole]),
  },
  {
    id: 'alg.near-undo.parts',
    title: 'Add to a part and take away nearly the same',
    year: 5,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.near-undo', 'add.whole-to-part'],
    codes: { ac9: ['AC9M5A02'], england: ['NC-Y5-fractions-12'], ccss: ['5.NBT.B.7'] },
    templates: nearUndo,
  },
  {
    id: 'alg.turn-round.parts',
    title: 'Turn sums of decimals, fractions and money around',
    year: 5,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.turn-round', 'add.whole-to-part'],
    codes: { ac9: ['AC9M5A02'], england: ['NC-Y5-fractions-12'], ccss: ['5.NBT.B.7'] },
    templates: turnedParts,
  },
  {
    id: 'alg.terms.parts',
    title: 'Find terms of a pattern that starts at a part',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.terms', 'alg.part-steps'],
    codes: { ac9: ['AC9M6A01'], england: ['NC-Y6-algebra-2'], ccss: ['5.OA.B.3'] },
    templates: growingParts,
  },
  {
    id: 'alg.order.parts',
    title: 'Order of operations with decimals, fractions and money',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.order', 'add.whole-to-part'],
    codes: { ac9: ['AC9M6A02'], england: ['NC-Y6-fourops-6'], ccss: ['5.OA.A.1'] },
    templates: orderOfParts,
  },
];
