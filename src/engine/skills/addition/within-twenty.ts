// Addition with totals to 20: bonds of ten, first sums, doubles and bridging ten.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { addSteps } from '../../questions/strategies/adding.js';
import type { Skill } from '../skill.js';
import { countables, countOf, storyName } from '../story.js';
import { onWhole, templateOf } from '../template-of.js';

const sumTo20 = templateOf<readonly [a: number, b: number]>({
  id: 'sum',
  free: (rng) => {
    const a = rng.int(4, 9);
    return rng.chance(0.25) ? [rng.int(10, 16), rng.int(1, 4)] : [a, rng.int(Math.max(2, 11 - a), 9)];
  },
  on: onWhole(3, 17, (n, rng) => [n, rng.int(Math.min(2, 20 - n), Math.min(9, 20 - n))]),
  draft: ([a, b], { locale }) => ({
    text: `${a} + ${b}`,
    answer: wholeAnswer(a + b, locale),
    expression: `${a} + ${b}`,
    features: {
      size: Math.max(0, a + b - 11) / 3,
      tie: a === b,
      carries: a < 10 && a + b > 10 ? 0.5 : 0,
      rule: b === 1,
    },
    strategy: addSteps(a, b, (n) => formatWhole(n, locale)),
    slips: wholeSlips(
      [
        ['count.off-by-one', a + b - 1],
        ['operation.swapped', Math.abs(a - b)],
        ['fact.one-out', a + b + 1],
      ],
      locale,
    ),
    figure: { kind: 'ten-frame', filled: a, second: b, frames: 2 },
    usesNumber: `adds ${b} to ${a}`,
  }),
});

const storyTo20 = templateOf<readonly [a: number, b: number]>({
  id: 'story',
  free: (rng) => {
    const a = rng.int(3, 9);
    return [a, rng.int(Math.max(2, 11 - a), 9)];
  },
  on: onWhole(3, 17, (n, rng) => [n, rng.int(Math.min(2, 20 - n), Math.min(9, 20 - n))]),
  draft: ([a, b], { locale, rng }) => {
    const things = countables(a + b, rng);
    return {
      text: `${storyName(rng)} has ${countOf(a, things)} and finds ${b} more. How many ${things} is that now?`,
      answer: wholeAnswer(a + b, locale),
      expression: `${a} + ${b}`,
      features: {
        size: Math.max(0, a + b - 11) / 3,
        tie: a === b,
        carries: a < 10 && a + b > 10 ? 0.5 : 0,
        story: true,
      },
      strategy: addSteps(a, b, (n) => formatWhole(n, locale)),
      slips: wholeSlips(
        [
          ['operation.swapped', Math.abs(a - b)],
          ['count.off-by-one', a + b - 1],
          ['addend.left-out', b],
        ],
        locale,
      ),
      usesNumber: `tells a story that adds ${b} to ${a}`,
    };
  },
});

const missingTo20 = templateOf<readonly [a: number, whole: number]>({
  id: 'missing',
  free: (rng) => {
    const a = rng.int(4, 9);
    return [a, a + rng.int(Math.max(2, 11 - a), 9)];
  },
  on: onWhole(2, 17, (n, rng) => [n, n + rng.int(Math.min(2, 20 - n), Math.min(9, 20 - n))]),
  draft: ([a, whole], { locale }) => ({
    text: `${a} + ? = ${whole}`,
    answer: wholeAnswer(whole - a, locale),
    expression: `${whole} - ${a}`,
    features: {
      size: Math.max(0, whole - 11) / 3,
      unknownInside: true,
      carries: a < 10 && whole > 10 ? 0.5 : 0,
    },
    strategy: [
      `Count up from ${a} to ${whole}`,
      ...(a < 10 && whole > 10 ? [`${a} + ${10 - a} = 10`, `10 + ${whole - 10} = ${whole}`] : []),
      `${a} + ${whole - a} = ${whole}`,
    ],
    slips: wholeSlips(
      [
        ['missing.adds-all', whole + a],
        ['count.off-by-one', whole - a + 1],
        ['fact.one-out', whole - a - 1],
      ],
      locale,
    ),
    figure: { kind: 'part-whole', whole: String(whole), parts: [String(a), '?'] },
    usesNumber: `finds what makes ${a} up to ${whole}`,
  }),
});

export const WITHIN_TWENTY_SKILLS: readonly Skill[] = [
  {
    id: 'add.within20',
    title: 'Add within 20',
    year: 1,
    fluentYear: 2,
    strand: 'addition',
    prerequisites: [],
    codes: { ac9: ['AC9M1N04'], england: ['NC-Y1-addsub-3', '2AS-1'], ccss: ['1.OA.C.6'] },
    templates: [sumTo20, storyTo20, missingTo20],
  },
];
