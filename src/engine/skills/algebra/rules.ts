// Rules forwards and backwards, and missing numbers in times and division.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { addSteps } from '../../questions/strategies/adding.js';
import { subtractSteps } from '../../questions/strategies/subtracting.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';
import { onWhole, templateOf } from '../template-of.js';
import { unlessGiven } from './given.js';

const thinkOne = templateOf<readonly [result: number, change: number]>({
  id: 'think-one',
  free: (rng) => [rng.int(30, 90), rng.pick([-1, 1]) * rng.int(6, 25)],
  on: onWhole(9, 1_000_000, (n, rng) => {
    const size =
      n < 40
        ? rng.int(3, 8)
        : n < 1000
          ? rng.int(6, 29)
          : (n < 10_000 ? 10 : n < 100_000 ? 100 : 1000) * rng.int(6, 29);
    return [n, rng.pick([-1, 1]) * size];
  }),
  draft: ([result, change], { locale, rng }) => {
    const say = (n: number) => formatWhole(n, locale);
    const start = result - change;
    const size = Math.abs(change);
    return {
      text: `${storyName(rng.fork(result))} thinks of a number, ${change > 0 ? `adds ${say(size)}` : `takes away ${say(size)}`} and gets ${say(result)}. What was it?`,
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
          // Counting the first number too stops a step early: above the answer on the way down, below it on the way up.
          // Nobody counts hundreds of steps.
          ['count.off-by-one', size > 20 ? null : unlessGiven(change > 0 ? start + 1 : start - 1, size)],
          ['fact.one-out', unlessGiven(change > 0 ? start - 1 : start + 1, size)],
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
      text: `${storyName(rng.fork(result))} multiplies a number by ${factor}, adds ${plus} and gets ${say(result)}. What was it?`,
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
  3: 'multiply by 3',
  4: 'multiply by 4',
  5: 'multiply by 5',
  10: 'multiply by 10',
};

const rule = templateOf<readonly [input: number, factor: number, change: number]>({
  id: 'rule',
  free: (rng) => [rng.int(4, 25), rng.pick([2, 2, 3, 5, 10]), rng.pick([-1, 1]) * rng.int(1, 6)],
  on: onWhole(2, 1_000_000, (n, rng) => [
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
      text: `Start with ${say(input)}, ${RULE_WORDS[factor] ?? ''}, then ${then}. What do you get?`,
      answer: wholeAnswer(output, locale),
      expression: `${input} * ${factor} ${change > 0 ? '+' : '-'} ${size}`,
      features: {
        size: factor === 10 ? 0 : factor === 2 ? (input > 12 ? 0.5 : 0) : input > 12 ? 1.5 : 0.7,
        carries: change < 0 ? 0.5 : 0,
        adjust: input > 9999 ? 0.8 : input > 99 ? 0.3 : 0,
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
          ['rule.one-step', input + change],
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
            ['times.as-plus', known + factor],
            ['fact.one-out', unlessGiven(product - factor, known, factor)],
          ],
          locale,
        ),
        usesNumber: `finds what is divided to give ${say(known)}`,
      };
    return {
      text: form === 'times' ? `${say(known)} × ? = ${say(product)}` : `${say(product)} ÷ ? = ${say(known)}`,
      answer: wholeAnswer(factor, locale),
      expression: `${product} / ${known}`,
      features,
      strategy: [
        `How many groups of ${say(known)} make ${say(product)}?`,
        `${factor} × ${say(known)} = ${say(product)}`,
      ],
      slips: wholeSlips(
        [
          [
            form === 'times' ? 'missing.same-operation' : 'divide.as-times',
            known < 100 ? product * known : null,
          ],
          ['divide.as-minus', product - known],
          ['fact.one-out', unlessGiven(factor + 1, known, product)],
          ['fact.one-out', unlessGiven(factor - 1, known, product)],
        ],
        locale,
      ),
      usesNumber: `finds how many times ${say(known)} goes into ${say(product)}`,
    };
  },
});

export const RULE_SKILLS: readonly Skill[] = [
  {
    id: 'alg.think',
    title: 'Work back to the number thought of',
    year: 4,
    fluentYear: 5,
    strand: 'algebra',
    prerequisites: ['alg.missing'],
    codes: {
      ac9: ['AC9M4A01', 'AC9M5A02'],
      england: ['NC-Y4-addsub-2', 'NC-Y6-fourops-8'],
      ccss: ['3.OA.D.8'],
    },
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
    family: 'missing factor',
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
];
