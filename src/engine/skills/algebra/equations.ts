// Missing numbers, balance, rules and the order of operations.
import { formatWhole } from '../../numbers/format.js';
import { add, floor, multiply, rational, subtract } from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
import { carriesOf } from '../../questions/slips/column-addition.js';
import { columnSubtract } from '../../questions/slips/column-subtraction.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { addSteps, countUpSteps } from '../../questions/strategies/adding.js';
import { subtractSteps } from '../../questions/strategies/subtracting.js';
import type { Rng } from '../../random/rng.js';
import { freePart, partTemplates } from '../parts.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';
import { onWhole, templateOf } from '../template-of.js';

const FORMS = ['a+?', '?+a', 'w-?', '?-a'] as const;
type Form = (typeof FORMS)[number];

const missing = templateOf<readonly [known: number, other: number, form: Form]>({
  id: 'missing',
  free: (rng) => [rng.int(12, 68), rng.int(11, 79), rng.pick(FORMS)],
  on: onWhole(4, 9000, (n, rng) => [
    n,
    n < 30 ? rng.int(6, 39) : n < 100 ? rng.int(11, 79) : n < 1000 ? 5 * rng.int(5, 80) : 50 * rng.int(5, 60),
    rng.pick(FORMS),
  ]),
  draft: ([known, other, form], { locale }) => {
    const say = (n: number) => formatWhole(n, locale);
    const whole = known + other;
    const features = {
      carries: carriesOf(known, other) - 1,
      size: known > 999 ? 1 : known > 99 ? 0.7 : 0,
      extraSteps: form === '?-a' ? 0.5 : form === 'w-?' ? 0.7 : 0,
    };
    if (form === '?-a')
      return {
        text: `? − ${say(other)} = ${say(known)}`,
        answer: wholeAnswer(whole, locale),
        expression: `${known} + ${other}`,
        features,
        strategy: ['Put back what was taken away', ...addSteps(known, other, say)],
        slips: wholeSlips(
          [
            ['missing.same-operation', Math.abs(known - other)],
            ['carry.dropped', carriesOf(known, other) > 0 ? whole - 10 : null],
            ['fact.one-out', whole - 1],
          ],
          locale,
        ),
        usesNumber: `finds what was there before ${say(known)} was left`,
      };
    const text =
      form === 'a+?'
        ? `${say(known)} + ? = ${say(whole)}`
        : form === '?+a'
          ? `? + ${say(known)} = ${say(whole)}`
          : `${say(whole)} − ? = ${say(known)}`;
    return {
      text,
      answer: wholeAnswer(other, locale),
      expression: `${whole} - ${known}`,
      features,
      strategy: [
        `Think of the gap between ${say(known)} and ${say(whole)}`,
        ...countUpSteps(known, whole, say),
      ],
      slips: wholeSlips(
        [
          ['missing.adds-all', whole + known],
          ['borrow.smaller-from-larger', columnSubtract(whole, known, 'smaller-from-larger')],
          ['complement.extra-ten', other + 10],
        ],
        locale,
      ),
      usesNumber: `finds the number missing beside ${say(known)}`,
    };
  },
});

/** a + b = c + ? */
const balance = (
  id: string,
  free: (rng: Rng) => readonly [number, number, number],
  from: number,
  to: number,
  on: (n: number, rng: Rng) => readonly [number, number, number] | null,
  plainSize: number,
) =>
  templateOf<readonly [a: number, b: number, c: number]>({
    id,
    free,
    on: onWhole(from, to, on),
    draft: ([a, b, c], { locale, rng }) => {
      const say = (n: number) => formatWhole(n, locale);
      const answer = a + b - c;
      const change = Math.abs(c - a);
      const [left, right] = rng.chance(0.7) ? [say(c), '?'] : ['?', say(c)];
      return {
        text: `${say(a)} + ${say(b)} = ${left} + ${right}`,
        answer: wholeAnswer(answer, locale),
        expression: `${a} + ${b} - ${c}`,
        features: {
          size: Math.max(0, (change - plainSize) / 6) + (a > 99 ? 0.5 : 0),
          tie: c === b,
          rule: c === b,
          carries: carriesOf(a, b) > 0 ? 0.5 : 0,
        },
        strategy:
          c === b
            ? [
                `The same two numbers in the other order: ${say(b)} + ${say(a)} = ${say(a + b)}`,
                `${say(a)} + ${say(b)} = ${say(a + b)}`,
              ]
            : [
                `${say(c)} is ${say(change)} ${c > a ? 'more' : 'less'} than ${say(a)}, so the other number is ${say(change)} ${c > a ? 'less' : 'more'} than ${say(b)}`,
                `${say(b)} ${c > a ? '−' : '+'} ${say(change)} = ${say(answer)}`,
              ],
        slips: wholeSlips(
          [
            ['equals.answer-next', a + b],
            ['equals.carries-on', a + b + c],
            ['equals.wrong-way', b + (c - a)],
          ],
          locale,
        ),
        usesNumber: `balances ${say(a)} + ${say(b)} with another sum`,
      };
    },
  });

const smallBalance = balance(
  'balance',
  (rng) => {
    const a = rng.int(3, 9);
    const b = rng.int(2, 9);
    return [
      a,
      b,
      rng.chance(0.25) && a !== b ? b : a > 3 && rng.chance(0.5) ? a - 1 : Math.min(a + b, a + rng.int(1, 2)),
    ];
  },
  2,
  18,
  (n, rng) => {
    const b = rng.int(2, Math.max(2, Math.min(9, 20 - n)));
    return [n, b, rng.chance(0.25) && n !== b ? b : rng.chance(0.5) ? n - 1 : n + rng.int(1, Math.min(2, b))];
  },
  1,
);

const largeBalance = balance(
  'balance',
  (rng) => {
    const a = 10 * rng.int(1, 8) + rng.int(6, 9);
    const c = rng.chance(0.6) ? 10 * Math.ceil(a / 10) : a - rng.int(2, 6);
    return [a, rng.int(15, 68), c];
  },
  12,
  9000,
  (n, rng) => {
    const unit = n < 100 ? 10 : n < 1000 ? 50 : 500;
    const b = n < 100 ? rng.int(15, 68) : n < 1000 ? rng.int(55, 180) : 10 * rng.int(55, 180);
    const up = unit * Math.ceil((n + 1) / unit);
    return [n, b, rng.chance(0.5) ? up : rng.chance(0.5) ? n - rng.int(2, 9) : n + rng.int(2, 9)];
  },
  3,
);

const takeBalance = templateOf<readonly [a: number, b: number, c: number]>({
  id: 'balance-take',
  free: (rng) => {
    const a = rng.int(32, 88);
    return [a, rng.int(12, 29), a + rng.int(1, 5)];
  },
  on: onWhole(25, 999, (n, rng) => [n, rng.int(8, 19), n + rng.int(1, 6)]),
  draft: ([a, b, c], { locale }) => {
    const change = c - a;
    return {
      text: `${a} − ${b} = ${c} − ?`,
      answer: wholeAnswer(b + change, locale),
      expression: `${c} - (${a} - ${b})`,
      features: { extraSteps: 1, size: change > 2 ? 0.6 : 0, carries: a % 10 < b % 10 ? 0.5 : 0 },
      strategy: [
        `${c} is ${change} more than ${a}, so ${change} more must be taken`,
        `${b} + ${change} = ${b + change}`,
        `${a} − ${b} = ${a - b}`,
        `${c} − ${b + change} = ${a - b}`,
      ],
      slips: wholeSlips(
        [
          ['equals.answer-next', a - b],
          ['equals.wrong-way', b - change],
          ['equals.carries-on', c - (a - b) + a],
        ],
        locale,
      ),
      usesNumber: `balances ${a} − ${b} with another subtraction`,
    };
  },
});

const thinkOne = templateOf<readonly [result: number, change: number]>({
  id: 'think-one',
  free: (rng) => [rng.int(20, 90), rng.pick([-1, 1]) * rng.int(6, 25)],
  on: onWhole(9, 9999, (n, rng) => {
    const size = n < 40 ? rng.int(3, 8) : n < 1000 ? rng.int(6, 29) : 10 * rng.int(6, 29);
    return [n, rng.pick([-1, 1]) * size];
  }),
  draft: ([result, change], { locale, rng }) => {
    const say = (n: number) => formatWhole(n, locale);
    const start = result - change;
    const size = Math.abs(change);
    return {
      text: `${storyName(rng)} thinks of a number, ${change > 0 ? `adds ${say(size)}` : `takes away ${say(size)}`} and gets ${say(result)}: what was the number?`,
      answer: wholeAnswer(start, locale),
      expression: `${result} ${change > 0 ? '-' : '+'} ${size}`,
      features: { size: (size > 10 ? 0.5 : 0) + (change < 0 ? 0.3 : 0), adjust: -0.3 },
      strategy: [
        'Work backwards: undo the step',
        ...(change > 0 ? subtractSteps(result, size, say) : addSteps(result, size, say)),
      ],
      slips: wholeSlips(
        [
          ['missing.same-operation', result + change],
          ['fact.one-out', start + 1],
          ['count.off-by-one', start - 1],
        ],
        locale,
      ),
      usesNumber: `works back from ${say(result)}`,
    };
  },
});

const thinkTwo = templateOf<readonly [result: number, factor: number, plus: number]>({
  id: 'think-two',
  free: (rng) => {
    const factor = rng.int(2, 5);
    const plus = rng.int(1, 9);
    return [factor * rng.int(3, 12) + plus, factor, plus];
  },
  on: onWhole(13, 3000, (n, rng) => {
    const factor = rng.pick(n < 200 ? [2, 3, 4, 5] : [2, 2, 5, 10]);
    const rest = n % factor;
    return [n, factor, rest === 0 ? factor : rest];
  }),
  draft: ([result, factor, plus], { locale, rng }) => {
    const say = (n: number) => formatWhole(n, locale);
    const product = result - plus;
    const start = product / factor;
    return {
      text: `${storyName(rng)} thinks of a number, multiplies it by ${factor}, adds ${plus} and gets ${say(result)}: what was the number?`,
      answer: wholeAnswer(start, locale),
      expression: `(${result} - ${plus}) / ${factor}`,
      features: {
        extraSteps: 1.5,
        size: start > 12 ? 1 : 0,
        fives: factor === 5,
        adjust: factor === 2 || factor === 10 ? 0 : 0.3,
      },
      strategy: [
        'Work backwards: undo the last step first',
        `${say(result)} − ${plus} = ${say(product)}`,
        `${say(product)} ÷ ${factor} = ${say(start)}`,
      ],
      slips: wholeSlips(
        [
          ['rule.one-step', product],
          ['missing.same-operation', result * factor + plus],
          ['rule.steps-swapped', result % factor === 0 ? result / factor - plus : null],
          ['missing.same-operation', (result + plus) / factor],
        ],
        locale,
      ),
      usesNumber: `works back from ${say(result)} in two steps`,
    };
  },
});

const RULE_WORDS: Readonly<Record<number, string>> = {
  2: 'double it',
  3: 'multiply it by 3',
  4: 'multiply it by 4',
  5: 'multiply it by 5',
  10: 'multiply it by 10',
};

const rule = templateOf<readonly [input: number, factor: number, change: number]>({
  id: 'rule',
  free: (rng) => [rng.int(4, 25), rng.pick([2, 2, 3, 5, 10]), rng.pick([-1, 1]) * rng.int(1, 6)],
  on: onWhole(2, 5000, (n, rng) => [
    n,
    rng.pick(n < 13 ? [2, 3, 4, 5, 10] : n < 100 ? [2, 2, 3, 10] : [2, 10]),
    n < 4 ? rng.int(1, 6) : rng.pick([-1, 1]) * rng.int(1, 6),
  ]),
  draft: ([input, factor, change], { locale }) => {
    const say = (n: number) => formatWhole(n, locale);
    const product = input * factor;
    const output = product + change;
    const size = Math.abs(change);
    const then = change > 0 ? `add ${size}` : `take away ${size}`;
    return {
      text: `Start with ${say(input)}, ${RULE_WORDS[factor] ?? ''}, then ${then}: what do you get?`,
      answer: wholeAnswer(output, locale),
      expression: `${input} * ${factor} ${change > 0 ? '+' : '-'} ${size}`,
      features: {
        size: factor === 10 ? 0 : factor === 2 ? (input > 12 ? 0.5 : 0) : input > 12 ? 1.5 : 0.7,
        carries: change < 0 ? 0.5 : 0,
        adjust: input > 99 ? 0.3 : 0,
      },
      strategy: [
        `${say(input)} × ${factor} = ${say(product)}`,
        `${say(product)} ${change > 0 ? '+' : '−'} ${size} = ${say(output)}`,
      ],
      slips: wholeSlips(
        [
          ['rule.one-step', product],
          ['rule.steps-swapped', (input + change) * factor],
          ['operation.swapped', product - change],
          ['addend.left-out', input + change],
        ],
        locale,
      ),
      usesNumber: `puts ${say(input)} through a two-step rule`,
    };
  },
});

const missingTimes = templateOf<readonly [known: number, factor: number, form: 'times' | 'divide' | 'by']>({
  id: 'missing-times',
  free: (rng) => [rng.int(3, 15), rng.int(3, 9), rng.pick(['times', 'divide', 'by'] as const)],
  on: onWhole(2, 5000, (n, rng) => [
    n,
    rng.pick(n <= 12 ? [3, 4, 6, 7, 8, 9] : n < 100 ? [2, 3, 4, 5, 10, 20] : [2, 4, 5, 10, 100]),
    rng.pick(['times', 'divide', 'by'] as const),
  ]),
  draft: ([known, factor, form], { locale }) => {
    const say = (n: number) => formatWhole(n, locale);
    const product = known * factor;
    const features = {
      rule: factor === 10 || factor === 100,
      size: (known > 12 ? 0.8 : 0) + (known > 99 ? 0.4 : 0),
      fives: factor === 5,
      extraSteps: form === 'times' ? 0 : 0.5,
    };
    if (form === 'divide')
      return {
        text: `? ÷ ${factor} = ${say(known)}`,
        answer: wholeAnswer(product, locale),
        expression: `${known} * ${factor}`,
        features,
        strategy: ['Undo the division: multiply', `${say(known)} × ${factor} = ${say(product)}`],
        slips: wholeSlips(
          [
            ['missing.same-operation', known / factor],
            ['operation.swapped', known + factor],
            ['fact.one-out', product - factor],
          ],
          locale,
        ),
        usesNumber: `finds what divides to give ${say(known)}`,
      };
    return {
      text: form === 'times' ? `${say(known)} × ? = ${say(product)}` : `${say(product)} ÷ ? = ${say(known)}`,
      answer: wholeAnswer(factor, locale),
      expression: `${product} / ${known}`,
      features,
      strategy: [
        `How many lots of ${say(known)} make ${say(product)}?`,
        `${factor} × ${say(known)} = ${say(product)}`,
      ],
      slips: wholeSlips(
        [
          ['missing.same-operation', known < 100 ? product * known : null],
          ['operation.swapped', product - known],
          ['fact.one-out', factor + 1],
          ['fact.one-out', factor - 1],
        ],
        locale,
      ),
      usesNumber: `finds how many times ${say(known)} goes into ${say(product)}`,
    };
  },
});

const ORDER_FORMS = ['n+b*c', 'b*c+n', 'n-b*c', '(n+b)*c', 'b*n-c', 'n+b/c'] as const;
type OrderForm = (typeof ORDER_FORMS)[number];

const order = templateOf<readonly [n: number, b: number, c: number, form: OrderForm]>({
  id: 'order',
  free: (rng) => [rng.int(12, 40), rng.int(2, 6), rng.int(2, 5), rng.pick(ORDER_FORMS)],
  on: onWhole(3, 5000, (n, rng) => {
    const b = rng.int(2, n < 100 ? 9 : 5);
    const c = rng.int(2, 5);
    const form = rng.pick(ORDER_FORMS);
    if (form === '(n+b)*c')
      return [n, n < 100 && n % 10 !== 0 && rng.chance(0.5) ? 10 - (n % 10) : b, n > 60 ? 2 : c, form];
    if (form === 'n-b*c' && n < b * c) return [n, b, c, 'n+b*c'];
    return [n, b, c, form];
  }),
  draft: ([n, b, c, form], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const product = b * c;
    const plans = {
      'n+b*c': {
        text: `${say(n)} + ${b} × ${c}`,
        expression: `${n} + ${b} * ${c}`,
        value: n + product,
        first: `${b} × ${c} = ${product}`,
        second: `${say(n)} + ${product} = ${say(n + product)}`,
        wrong: (n + b) * c,
      },
      'b*c+n': {
        text: `${b} × ${c} + ${say(n)}`,
        expression: `${b} * ${c} + ${n}`,
        value: n + product,
        first: `${b} × ${c} = ${product}`,
        second: `${product} + ${say(n)} = ${say(n + product)}`,
        wrong: b * (c + n),
      },
      'n-b*c': {
        text: `${say(n)} − ${b} × ${c}`,
        expression: `${n} - ${b} * ${c}`,
        value: n - product,
        first: `${b} × ${c} = ${product}`,
        second: `${say(n)} − ${product} = ${say(n - product)}`,
        wrong: (n - b) * c,
      },
      '(n+b)*c': {
        text: `(${say(n)} + ${b}) × ${c}`,
        expression: `(${n} + ${b}) * ${c}`,
        value: (n + b) * c,
        first: `${say(n)} + ${b} = ${say(n + b)}`,
        second: `${say(n + b)} × ${c} = ${say((n + b) * c)}`,
        wrong: n + product,
      },
      'b*n-c': {
        text: `${b} × ${say(n)} − ${c}`,
        expression: `${b} * ${n} - ${c}`,
        value: b * n - c,
        first: `${b} × ${say(n)} = ${say(b * n)}`,
        second: `${say(b * n)} − ${c} = ${say(b * n - c)}`,
        wrong: b * (n - c),
      },
      'n+b/c': {
        text: `${say(n)} + ${product} ÷ ${c}`,
        expression: `${n} + ${product} / ${c}`,
        value: n + b,
        first: `${product} ÷ ${c} = ${b}`,
        second: `${say(n)} + ${b} = ${say(n + b)}`,
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
          ? `Brackets first: ${plan.first}`
          : `${form === 'n+b/c' ? 'Division' : 'Multiplication'} first: ${plan.first}`,
        plan.second,
      ],
      slips: wholeSlips(
        [
          [
            brackets ? 'order.brackets-ignored' : natural ? 'rule.steps-swapped' : 'order.left-to-right',
            plan.wrong,
          ],
          ['rule.one-step', form === 'b*n-c' ? b * n : brackets ? n + b : product],
          ['fact.one-out', plan.value + (brackets ? c : form === 'b*n-c' ? n : form === 'n+b/c' ? 1 : b)],
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
        ? `${factor} × n ${sign} ${size} = ${say(result)}: what is n?`
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
          ['fact.one-out', value + 1],
          ['rule.one-step', result / factor],
        ],
        locale,
      ),
      usesNumber: `solves an equation that equals ${say(result)}`,
    };
  },
});

const substitute = templateOf<readonly [n: number, factor: number, plus: number]>({
  id: 'substitute',
  free: (rng) => [rng.int(3, 15), rng.int(2, 6), rng.pick([-1, 1]) * rng.int(1, 9)],
  on: onWhole(2, 5000, (n, rng) => [
    n,
    n < 13 ? rng.int(2, 9) : rng.pick([2, 3, 4, 5, 10]),
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
          ['operation.swapped', factor + n + plus],
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

const missingPart = partTemplates('missing-part', ({ value, form, text, expr, rng, t, e }) => {
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
      ['exact.one-too-many', undo ? (carry ? subtract(whole, rational(1)) : null) : add(other, rational(1))],
      ['exact.part-kept', undo ? rational(floor(whole)) : null],
      ['fact.one-out', undo ? add(whole, rational(1, value.d)) : null],
    ],
    uses: `finds the number missing beside ${text}`,
  };
});

export const EQUATION_SKILLS: readonly Skill[] = [
  {
    id: 'alg.equal',
    title: 'Both sides of the equals sign, within 20',
    year: 1,
    fluentYear: 2,
    strand: 'algebra',
    prerequisites: ['add.bonds10'],
    codes: { ac9: ['AC9M1N04'], england: ['NC-Y1-addsub-1'], ccss: ['1.OA.D.7', '1.OA.D.8'] },
    shift: 0.6,
    templates: [smallBalance],
  },
  {
    id: 'alg.missing',
    title: 'Find the missing number by the inverse',
    year: 3,
    fluentYear: 4,
    strand: 'algebra',
    prerequisites: ['add.2d2d.carry', 'sub.difference'],
    codes: {
      ac9: ['AC9M3A01', 'AC9M4A01'],
      england: ['NC-Y2-addsub-5', 'NC-Y3-addsub-4', '3AS-3'],
      ccss: ['2.OA.A.1'],
    },
    shift: 0.5,
    templates: [missing],
  },
  {
    id: 'alg.balance',
    title: 'Balance both sides of an equation',
    year: 4,
    fluentYear: 5,
    strand: 'algebra',
    prerequisites: ['alg.equal', 'alg.missing'],
    codes: { ac9: ['AC9M4A01'], england: ['3AS-3', 'NC-Y5-multdiv-10'], ccss: ['1.OA.D.7'] },
    shift: 0.4,
    templates: [largeBalance, takeBalance],
  },
  {
    id: 'alg.think',
    title: 'Work back to the number thought of',
    year: 4,
    fluentYear: 5,
    strand: 'algebra',
    prerequisites: ['alg.missing'],
    codes: { ac9: ['AC9M4A01', 'AC9M5A02'], england: ['NC-Y4-addsub-2'], ccss: ['3.OA.D.8'] },
    templates: [thinkOne, thinkTwo],
  },
  {
    id: 'alg.rule',
    title: 'Follow a two-step rule',
    year: 4,
    fluentYear: 5,
    strand: 'algebra',
    prerequisites: ['alg.step', 'add.doubles'],
    codes: { ac9: ['AC9M4N09'], england: ['NC-Y4-multdiv-5'], ccss: ['4.OA.C.5'] },
    templates: [rule],
  },
  {
    id: 'alg.missing.times',
    title: 'Missing numbers in times and division',
    year: 5,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.missing'],
    codes: {
      ac9: ['AC9M5A02', 'AC9M5A01'],
      england: ['NC-Y5-multdiv-5', '6AS/MD-2'],
      ccss: ['3.OA.A.4', '3.OA.B.6'],
    },
    shift: -0.2,
    templates: [missingTimes],
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
    id: 'alg.order',
    title: 'Order of operations and brackets',
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
