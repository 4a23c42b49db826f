// The order of operations, two-step equations and letters for numbers.
import { formatWhole } from '../../numbers/format.js';
import { add, floor, multiply, rational, subtract } from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { partTemplates } from '../parts.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { unlessGiven } from './given.js';

const ORDER_FORMS = ['n+b*c', 'b*c+n', 'n-b*c', '(n+b)*c', 'b*n-c', 'n+b/c'] as const;

type OrderForm = (typeof ORDER_FORMS)[number];

const order = templateOf<readonly [n: number, b: number, c: number, form: OrderForm]>({
  id: 'order',
  free: (rng) => [rng.int(30, 60), rng.int(2, 6), rng.int(2, 5), rng.pick(ORDER_FORMS)],
  on: onWhole(3, 1_000_000, (n, rng) => {
    const b = rng.int(2, n < 100 ? 9 : 5) * (n < 5000 ? 1 : n < 50_000 ? 100 : 1000);
    const c = rng.int(2, 5);
    const form = rng.pick(ORDER_FORMS);
    if (form === '(n+b)*c')
      return [n, n < 100 && n % 10 !== 0 && rng.chance(0.5) ? 10 - (n % 10) : b, n > 60 ? 2 : c, form];
    if (form === 'n-b*c' && n < b * c) return [n, b, c, 'n+b*c'];
    // Nobody multiplies 7384 by 5 in the head.
    if (form === 'b*n-c' && n >= 1000) return [n, b, c, 'n+b*c'];
    return [n, b, c, form];
  }),
  draft: ([n, b, c, form], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const product = b * c;
    const plans = {
      'n+b*c': {
        text: `${say(n)} + ${say(b)} × ${c}`,
        expression: `${n} + ${b} * ${c}`,
        value: n + product,
        first: `${say(b)} × ${c} = ${say(product)}`,
        second: `${say(n)} + ${say(product)} = ${say(n + product)}`,
        wrong: (n + b) * c,
      },
      'b*c+n': {
        text: `${say(b)} × ${c} + ${say(n)}`,
        expression: `${b} * ${c} + ${n}`,
        value: n + product,
        first: `${say(b)} × ${c} = ${say(product)}`,
        second: `${say(product)} + ${say(n)} = ${say(n + product)}`,
        wrong: b * (c + n),
      },
      'n-b*c': {
        text: `${say(n)} − ${say(b)} × ${c}`,
        expression: `${n} - ${b} * ${c}`,
        value: n - product,
        first: `${say(b)} × ${c} = ${say(product)}`,
        second: `${say(n)} − ${say(product)} = ${say(n - product)}`,
        wrong: (n - b) * c,
      },
      '(n+b)*c': {
        text: `(${say(n)} + ${say(b)}) × ${c}`,
        expression: `(${n} + ${b}) * ${c}`,
        value: (n + b) * c,
        first: `${say(n)} + ${say(b)} = ${say(n + b)}`,
        second: `${say(n + b)} × ${c} = ${say((n + b) * c)}`,
        wrong: n + product,
      },
      'b*n-c': {
        text: `${say(b)} × ${say(n)} − ${c}`,
        expression: `${b} * ${n} - ${c}`,
        value: b * n - c,
        first: `${say(b)} × ${say(n)} = ${say(b * n)}`,
        second: `${say(b * n)} − ${c} = ${say(b * n - c)}`,
        wrong: b * (n - c),
      },
      'n+b/c': {
        text: `${say(n)} + ${say(product)} ÷ ${c}`,
        expression: `${n} + ${product} / ${c}`,
        value: n + b,
        first: `${say(product)} ÷ ${c} = ${say(b)}`,
        second: `${say(n)} + ${say(b)} = ${say(n + b)}`,
        wrong: (n + product) / c,
      },
    } as const;
    const plan = plans[form];
    const brackets = form === '(n+b)*c';
    const natural = form === 'b*c+n' || form === 'b*n-c';
    return {
      text: plan.text,
      answer: wholeAnswer(plan.value, locale),
      expression: plan.expression,
      features: {
        rule: form === 'b*c+n',
        extraSteps: natural ? 0 : 1,
        size: (brackets || form === 'b*n-c') && n > 12 ? 0.8 : 0,
        carries: form === 'n-b*c' && n % 10 < product % 10 ? 0.7 : 0,
        adjust: n > 99 ? 0.2 : 0,
      },
      strategy: [
        brackets
          ? `${locale.id === 'en-US' ? 'Parentheses' : 'Brackets'} first: ${plan.first}`
          : `${form === 'n+b/c' ? 'Division' : 'Multiplication'} first: ${plan.first}`,
        plan.second,
      ],
      slips: wholeSlips(
        [
          [
            brackets ? 'order.brackets-ignored' : natural ? 'rule.steps-swapped' : 'order.left-to-right',
            // No child follows a wrong way into the thousands of millions.
            plan.wrong < 10_000_000 ? plan.wrong : null,
          ],
          ['rule.one-step', form === 'b*n-c' ? b * n : brackets ? n + b : form === 'n+b/c' ? b : product],
          [
            // 2 × 41 is no basic fact.
            form === 'b*n-c' && n > 12 ? 'times.neighbour' : 'fact.one-out',
            unlessGiven(
              plan.value + (brackets ? c : form === 'b*n-c' ? n : form === 'n+b/c' ? 1 : b),
              form === 'n+b/c' ? product : b,
              c,
            ),
          ],
        ],
        locale,
      ),
      usesNumber: `puts ${say(n)} into a mixed calculation`,
    };
  },
});

const equation = templateOf<readonly [result: number, factor: number, plus: number]>({
  id: 'equation',
  free: (rng) => {
    const factor = rng.int(2, 9);
    const plus = rng.pick([-1, 1]) * rng.int(1, 12);
    return [factor * rng.int(4, 12) + plus, factor, plus];
  },
  on: onWhole(14, 4000, (n, rng) => {
    const factor = rng.int(2, n < 30 ? 4 : 9);
    const rest = n % factor;
    return [n, factor, rest === 0 ? factor : rng.chance(0.5) ? rest : rest - factor];
  }),
  draft: ([result, factor, plus], { locale, rng }) => {
    const say = (n: number) => formatWhole(n, locale);
    const product = result - plus;
    const value = product / factor;
    const size = Math.abs(plus);
    const letter = rng.chance(0.4);
    const sign = plus > 0 ? '+' : '−';
    return {
      text: letter
        ? `If ${factor} × n ${sign} ${size} = ${say(result)}, what is n?`
        : `${factor} × ? ${sign} ${size} = ${say(result)}`,
      answer: wholeAnswer(value, locale),
      expression: `(${result} ${plus > 0 ? '-' : '+'} ${size}) / ${factor}`,
      features: {
        extraSteps: 1,
        size: (value > 12 ? 0.8 : 0) + (value > 99 ? 0.5 : 0) + (plus < 0 ? 0.3 : 0),
        fives: factor === 5,
        rule: false,
      },
      strategy: [
        `${say(result)} ${plus > 0 ? '−' : '+'} ${size} = ${say(product)}`,
        `${say(product)} ÷ ${factor} = ${say(value)}`,
      ],
      slips: wholeSlips(
        [
          ['rule.one-step', product],
          ['missing.same-operation', (result + plus) / factor],
          ['fact.one-out', unlessGiven(value + 1, result, factor, size)],
          ['rule.one-step', result / factor],
        ],
        locale,
      ),
      usesNumber: `solves an equation with ${say(result)} on one side`,
    };
  },
});

const substitute = templateOf<readonly [n: number, factor: number, plus: number]>({
  id: 'substitute',
  free: (rng) => [rng.int(5, 15), rng.int(2, 6), rng.pick([-1, 1]) * rng.int(1, 9)],
  on: onWhole(2, 1_000_000, (n, rng) => [
    n,
    n < 13 ? rng.int(2, 9) : n < 5000 ? rng.pick([2, 3, 4, 5, 10]) : rng.pick([2, 10]),
    n < 6 ? rng.int(1, 9) : rng.pick([-1, 1]) * rng.int(1, 9),
  ]),
  draft: ([n, factor, plus], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const product = factor * n;
    const size = Math.abs(plus);
    const sign = plus > 0 ? '+' : '−';
    return {
      text: `If n = ${say(n)}, what is ${factor} × n ${sign} ${size}?`,
      answer: wholeAnswer(product + plus, locale),
      expression: `${factor} * ${n} ${plus > 0 ? '+' : '-'} ${size}`,
      features: {
        size: (n > 12 ? 0.7 : 0) + (factor > 2 && factor < 10 && factor !== 5 ? 0.5 : 0),
        rule: factor === 10,
        carries: plus < 0 ? 0.3 : 0,
      },
      strategy: [
        `Write ${say(n)} for n: ${factor} × ${say(n)} = ${say(product)}`,
        `${say(product)} ${sign} ${size} = ${say(product + plus)}`,
      ],
      slips: wholeSlips(
        [
          ['letter.side-by-side', n < 100 ? Number(`${factor}${n}`) + plus : null],
          ['rule.one-step', product],
          ['rule.steps-swapped', factor * (n + plus)],
          ['times.as-plus', factor + n + plus],
        ],
        locale,
      ),
      usesNumber: `puts ${say(n)} in place of n`,
    };
  },
});

const [substituteDecimal, , substituteFraction] = partTemplates(
  'substitute',
  ({ value, text, expr, rng, t, e }) => {
    const factor = rng.pick([2, 2, 3, 4, 10]);
    const plus = rng.int(1, 6);
    const product = multiply(value, rational(factor));
    const result = add(product, rational(plus));
    return {
      text: `If n = ${text}, what is ${factor} × n + ${plus}?`,
      value: result,
      expression: `${factor} * ${expr} + ${e(plus)}`,
      features: {
        extraSteps: 0.5,
        size: (factor === 2 || factor === 10 ? 0 : 0.7) + (value.d > 10 ? 0.6 : 0),
      },
      strategy: [
        `Write ${text} for n: ${factor} × ${text} = ${t(product)}`,
        `${t(product)} + ${plus} = ${t(result)}`,
      ],
      slips: [
        ['rule.one-step', product],
        ['rule.steps-swapped', multiply(rational(factor), add(value, rational(plus)))],
        [
          'exact.part-kept',
          add(rational(factor * floor(value) + plus), subtract(value, rational(floor(value)))),
        ],
      ],
      uses: `puts ${text} in place of n`,
    };
  },
);

export const LETTER_SKILLS: readonly Skill[] = [
  {
    id: 'alg.order',
    title: 'Order of operations',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.rule'],
    codes: { ac9: ['AC9M6A02'], england: ['NC-Y6-fourops-6', 'NC-Y6-fourops-4'], ccss: ['5.OA.A.1'] },
    templates: [order],
  },
  {
    id: 'alg.equation',
    title: 'Solve a two-step equation',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.think', 'alg.missing.times'],
    codes: { ac9: ['AC9M6A02'], england: ['NC-Y6-algebra-3'], ccss: ['6.EE.B.5'] },
    shift: 0.2,
    templates: [equation],
  },
  {
    id: 'alg.substitute',
    title: 'Put a number in place of a letter',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.rule'],
    codes: { ac9: ['AC9M6A02', 'AC9M6A03'], england: ['NC-Y6-algebra-1'], ccss: ['6.EE.A.2c'] },
    templates: [substitute, substituteDecimal, substituteFraction],
  },
];
