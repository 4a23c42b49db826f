// Expressions with letters: reading and writing them, tidying them up, and simple conditions.
import { formatWhole } from '../../numbers/format.js';
import { floor, toNumber } from '../../numbers/rational.js';
import { choiceAnswer, wholeAnswer } from '../../questions/answer.js';
import type { MisconceptionId } from '../../questions/misconceptions.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { partTemplates } from '../parts.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

interface Wording {
  /** Why a child would choose the wrong expression. */
  readonly slip: MisconceptionId;
  readonly words: (k: number) => string;
  readonly right: (k: number) => string;
  readonly wrong: (k: number) => string;
}

const WORDINGS: readonly Wording[] = [
  {
    words: (k) => `${k} more than n`,
    right: (k) => `n + ${k}`,
    wrong: (k) => `${k}n`,
    slip: 'letter.joined',
  },
  {
    words: (k) => `${k} less than n`,
    right: (k) => `n − ${k}`,
    wrong: (k) => `${k} − n`,
    slip: 'letter.sides-swapped',
  },
  { words: (k) => `${k} times n`, right: (k) => `${k}n`, wrong: (k) => `n + ${k}`, slip: 'times.as-plus' },
  {
    words: (k) => `n shared equally among ${k}`,
    right: (k) => `n ÷ ${k}`,
    wrong: (k) => `${k} ÷ n`,
    slip: 'letter.sides-swapped',
  },
  {
    words: (k) => `${k} more than double n`,
    right: (k) => `2n + ${k}`,
    wrong: (k) => `2(n + ${k})`,
    slip: 'rule.steps-swapped',
  },
  {
    words: (k) => `double the sum of n and ${k}`,
    right: (k) => `2(n + ${k})`,
    wrong: (k) => `2n + ${k}`,
    slip: 'rule.steps-swapped',
  },
];

const write = templateOf<readonly [which: number, k: number, firstRight: boolean]>({
  id: 'which',
  free: (rng) => [rng.int(0, WORDINGS.length - 1), rng.int(3, 12), rng.chance(0.5)],
  on: onWhole(3, 99, (n, rng) => [rng.int(0, WORDINGS.length - 1), n, rng.chance(0.5)]),
  draft: ([which, k, firstRight]) => {
    const { words, right, wrong, slip } = WORDINGS[which] ?? (WORDINGS[0] as Wording);
    const [one, other] = firstRight ? [right(k), wrong(k)] : [wrong(k), right(k)];
    return {
      text: `Which stands for “${words(k)}”: ${one} or ${other}?`,
      answer: choiceAnswer(right(k)),
      expression: null,
      features: { fewChoices: true, extraSteps: which > 3 ? 1 : 0 },
      strategy: [`Read ${right(k)} aloud: ${words(k)}`],
      slips: [{ misconception: slip, answer: choiceAnswer(wrong(k)) }],
      usesNumber: `writes ${k} in an expression with a letter`,
    };
  },
});

const valueOf = templateOf<readonly [which: number, k: number, n: number]>({
  id: 'value',
  free: (rng) => [rng.pick([0, 1, 2, 4, 5]), rng.int(2, 9), rng.int(10, 20)],
  on: onWhole(10, 200, (n, rng) => [rng.pick([0, 1, 2, 4, 5]), rng.int(2, 9), n]),
  draft: ([which, k, n], { locale }) => {
    const { words } = WORDINGS[which] ?? (WORDINGS[0] as Wording);
    const forms: Readonly<Record<number, readonly [expression: string, steps: string, value: number]>> = {
      0: [`${n} + ${k}`, `${n} + ${k}`, n + k],
      1: [`${n} - ${k}`, `${n} − ${k}`, n - k],
      2: [`${k} * ${n}`, `${k} × ${n}`, k * n],
      4: [`2 * ${n} + ${k}`, `2 × ${n} + ${k}`, 2 * n + k],
      5: [`2 * (${n} + ${k})`, `2 × (${n} + ${k})`, 2 * (n + k)],
    };
    const [expression, steps, value] = forms[which] ?? ['0', '0', 0];
    return {
      text: `n is ${n}. What is ${words(k)}?`,
      answer: wholeAnswer(value, locale),
      expression,
      features: { size: Math.min(2, value / 60), extraSteps: which > 3 ? 1 : 0 },
      strategy: [`${steps} = ${value}`],
      slips: wholeSlips(
        [
          ['plus.as-times', which === 0 ? k * n : null],
          ['times.as-plus', which === 2 ? k + n : null],
          ['rule.steps-swapped', which === 4 ? 2 * (n + k) : which === 5 ? 2 * n + k : null],
          [
            'operation.swapped',
            which === 1
              ? n + k
              : which === 0
                ? n - k
                : which === 4
                  ? 2 * n - k
                  : which === 5
                    ? 2 * (n - k)
                    : null,
          ],
        ],
        locale,
      ),
      usesNumber: `puts ${n} in place of a letter`,
    };
  },
});

const like = templateOf<readonly [a: number, b: number, c: number]>({
  id: 'like-terms',
  free: (rng) => [rng.int(2, 9), rng.int(1, 9), rng.chance(0.5) ? 0 : rng.int(2, 9)],
  draft: ([a, b, c], { locale }) => {
    const coefficient = b === 1 ? '' : String(b);
    return {
      text: `${a}n + ${coefficient}n${c > 0 ? ` + ${c}` : ''} = ?n${c > 0 ? ` + ${c}` : ''}`,
      answer: wholeAnswer(a + b, locale),
      expression: `${a} + ${b}`,
      features: { extraSteps: c > 0 ? 1 : 0, adjust: b === 1 ? 0.4 : 0 },
      strategy: [`${a} groups of n and ${b} more: ${a} + ${b} = ${a + b}`],
      slips: wholeSlips(
        [
          ['letter.lone-not-counted', b === 1 ? a : null],
          ['letter.coefficient-lost', 2],
          ['letter.joined', c > 0 ? a + b + c : null],
          ['plus.as-times', b === 1 ? null : a * b],
        ],
        locale,
      ),
    };
  },
});

const expand = templateOf<readonly [a: number, k: number]>({
  id: 'brackets',
  free: (rng) => [rng.int(2, 6), rng.int(2, 9)],
  draft: ([a, k], { locale }) => ({
    text: `${a}(n + ${k}) = ${a}n + ?`,
    answer: wholeAnswer(a * k, locale),
    expression: `${a} * ${k}`,
    features: { size: Math.min(2, (a * k) / 40), adjust: 0.3 },
    strategy: [`${a} groups of n and ${a} groups of ${k}: ${a} × ${k} = ${a * k}`],
    slips: wholeSlips(
      [
        ['letter.first-in-brackets', k],
        ['times.as-plus', a + k],
      ],
      locale,
    ),
  }),
});

const PARTS: readonly (readonly [name: string, answer: (a: number, b: number) => number])[] = [
  ['the number that n is multiplied by', (a) => a],
  ['the number that is added', (_, b) => b],
];

const nameParts = templateOf<readonly [a: number, b: number, which: number]>({
  id: 'parts',
  free: (rng) => [rng.int(2, 9), rng.int(10, 20), rng.int(0, 1)],
  draft: ([a, b, which], { locale }) => {
    const [name, pick] = PARTS[which] ?? (PARTS[0] as (typeof PARTS)[number]);
    return {
      text: `In ${a}n + ${b}, what is ${name}?`,
      answer: wholeAnswer(pick(a, b), locale),
      expression: String(pick(a, b)),
      features: { adjust: which === 0 ? 0 : -0.4 },
      strategy: [`${a}n means ${a} times n, then ${b} is added`],
      slips: wholeSlips(
        [
          ['part.rest-given', pick(b, a)],
          ['letter.joined', a + b],
        ],
        locale,
      ),
    };
  },
});

const smallest = templateOf<readonly [a: number, greater: boolean, including: boolean]>({
  id: 'condition',
  free: (rng) => [rng.int(3, 40), rng.chance(0.5), rng.chance(0.3)],
  on: onWhole(2, 1_000_000, (n, rng) => [n, rng.chance(0.5), rng.chance(0.3)]),
  draft: ([a, greater, including], { locale }) => {
    const say = (n: number) => formatWhole(n, locale);
    const sign = greater ? (including ? '≥' : '>') : including ? '≤' : '<';
    const value = including ? a : greater ? a + 1 : a - 1;
    return {
      text: `x is a whole number and x ${sign} ${say(a)}. What is the ${greater ? 'smallest' : 'largest'} number x can be?`,
      answer: wholeAnswer(value, locale),
      expression: including ? String(a) : `${a} ${greater ? '+' : '-'} 1`,
      features: { adjust: including ? 0 : -0.3 },
      strategy: [
        including
          ? `${sign} lets the end count, so x can be ${say(a)} itself`
          : `${sign} leaves ${say(a)} out, so go to ${say(value)}`,
      ],
      slips: wholeSlips(
        [
          including ? ['inequality.end-left-out', greater ? a + 1 : a - 1] : ['inequality.end-included', a],
          // Where the end counts there is nothing to count along.
          ['count.wrong-way', including ? null : greater ? a - 1 : a + 1],
        ],
        locale,
      ),
      usesNumber: `looks for whole numbers near ${say(a)}`,
    };
  },
});

const table = templateOf<readonly [times: number, plus: number, x: number]>({
  id: 'table',
  free: (rng) => [rng.int(2, 6), rng.int(1, 9), rng.int(5, 12)],
  draft: ([times, plus, x], { locale }) => {
    const ys = [1, 2, 3].map((one) => times * one + plus);
    const y = times * x + plus;
    return {
      text: `When x is 1, 2, 3, y is ${ys.join(', ')}. What is y when x is ${x}?`,
      answer: wholeAnswer(y, locale),
      expression: `${times} * ${x} + ${plus}`,
      features: { size: Math.min(2, y / 50), extraSteps: 2 },
      strategy: [
        `y grows by ${times} each time, so it is ${times} × x and ${plus} more`,
        `${times} × ${x} + ${plus} = ${y}`,
      ],
      slips: wholeSlips(
        [
          ['rule.one-step', times * x],
          ['pattern.one-step-only', (ys[2] ?? 0) + times],
          ['pattern.adds-one', (ys[2] ?? 0) + x - 3],
        ],
        locale,
      ),
      figure: {
        kind: 'table',
        rows: [
          ['x', '1', '2', '3', String(x)],
          ['y', ...ys.map(String), '?'],
        ],
        heads: 'column',
      },
    };
  },
});

const twoRules = templateOf<readonly [a: number, factor: number, position: number]>({
  id: 'two-rules',
  free: (rng) => [rng.int(2, 5), rng.int(2, 4), rng.int(5, 10)],
  draft: ([a, factor, position], { locale }) => {
    const b = a * factor;
    return {
      text: `One pattern counts ${locale.countsWith} ${a}s from 0 and another ${locale.countsWith} ${b}s from 0. When the first shows ${a * position}, what does the second show?`,
      answer: wholeAnswer(b * position, locale),
      expression: `${a * position} * ${factor}`,
      features: { size: Math.min(2, (b * position) / 60), extraSteps: 1 },
      strategy: [
        `The second is always ${factor} times the first`,
        `${factor} × ${a * position} = ${b * position}`,
      ],
      slips: wholeSlips(
        [
          ['ratio.adds', a * position + b - a],
          ['pattern.step-missed', b * (position - 1)],
        ],
        locale,
      ),
    };
  },
});

const [decimalCondition, , fractionCondition] = partTemplates(
  'condition-part',
  ({ value, text, expr, rng }) => {
    const above = toNumber(value) < 1 || rng.chance(0.5);
    const right = above ? floor(value) + 1 : floor(value);
    return {
      text: `x is a whole number and x ${above ? '>' : '<'} ${text}. What is the ${above ? 'smallest' : 'largest'} number x can be?`,
      value: right,
      form: 'whole',
      expression: above ? `floor(${expr}) + 1` : `floor(${expr})`,
      features: { extraSteps: 0.5, adjust: -0.3 },
      strategy: [`${text} lies between ${floor(value)} and ${floor(value) + 1}`, `So x can be ${right}`],
      slips: [
        ['count.wrong-way', above ? floor(value) : floor(value) + 1],
        ['pattern.step-missed', above ? right + 1 : right - 1],
      ],
      uses: `looks for whole numbers beside ${text}`,
    };
  },
);

export const EXPRESSION_SKILLS: readonly Skill[] = [
  {
    id: 'alg.expression',
    title: 'Words into symbols',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.substitute', 'alg.order'],
    codes: {
      ac9: ['AC9M6A02'],
      england: ['NC-Y6-algebra-3'],
      ccss: ['5.OA.A.2', '6.EE.A.2', '6.EE.A.2a', '6.EE.A.2b', '6.EE.B.6'],
    },
    templates: [write, valueOf, nameParts],
  },
  {
    id: 'alg.like-terms',
    title: 'Write an expression more simply',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.expression'],
    codes: { ac9: ['AC9M6A02'], england: ['NC-Y6-algebra-1'], ccss: ['6.EE.A.3', '6.EE.A.4'] },
    templates: [like, expand],
  },
  {
    id: 'alg.condition',
    title: 'Numbers that meet a condition',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.substitute', 'place.compare.large'],
    codes: { ac9: ['AC9M6A02'], england: ['NC-Y6-algebra-3'], ccss: ['6.EE.B.5', '6.EE.B.8', '6.EE.B.6'] },
    templates: [smallest, decimalCondition, fractionCondition],
  },
  {
    id: 'alg.table',
    title: 'Two amounts that grow together',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.rule', 'alg.terms'],
    codes: { ac9: ['AC9M6A01', 'AC9M6A03'], england: ['NC-Y6-algebra-2'], ccss: ['5.OA.B.3', '6.EE.C.9'] },
    templates: [table, twoRules],
  },
];
