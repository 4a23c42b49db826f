// Estimating and judging: is an answer sensible, about how much is a product or a quotient.
import { formatWhole } from '../../numbers/format.js';
import { choiceAnswer, wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { roughTimesStory, withStory } from '../retold.js';

const nearest = (n: number, unit: number) => Math.round(n / unit) * unit;

const product = templateOf<readonly [a: number, b: number]>({
  id: 'product',
  free: (rng) => {
    const a = rng.int(2, 9) * 10 + rng.pick([-3, -2, -1, 1, 2, 3]);
    return [a, rng.int(3, 9)];
  },
  on: onWhole(16, 94, (n, rng) => (n % 10 === 5 || n % 10 === 0 ? null : [n, rng.int(3, 9)])),
  draft: ([a, b], { locale }) => {
    const round = nearest(a, 10);
    return {
      text: `What is ${a} × ${b} if you round ${a} to the nearest ten first?`,
      answer: wholeAnswer(round * b, locale),
      expression: `${round} * ${b}`,
      features: { size: (round * b) / 400, extraSteps: 1 },
      strategy: [`${a} is near ${round}`, `${round} × ${b} = ${round * b}`],
      slips: wholeSlips(
        [
          ['estimate.exact', a * b],
          ['estimate.one-place-out', (round / 10) * b],
          round > a ? ['round.cut-off', (round - 10) * b] : ['round.always-up', (round + 10) * b],
        ],
        locale,
      ),
      usesNumber: `estimates with ${a}`,
    };
  },
});

const quotient = templateOf<readonly [answer: number, divisor: number, off: number]>({
  id: 'quotient',
  free: (rng) => [rng.int(2, 9) * 10, rng.int(3, 9), rng.pick([-2, -1, 1, 2])],
  draft: ([answer, divisor, off], { locale }) => {
    const total = answer * divisor + off;
    return {
      text: `Which multiple of ten is ${total} ÷ ${divisor} nearest to?`,
      answer: wholeAnswer(answer, locale),
      expression: `(${total} ${off > 0 ? '-' : '+'} ${Math.abs(off)}) / ${divisor}`,
      features: { size: total / 300, extraSteps: 1 },
      strategy: [`${total} is near ${total - off}`, `${total - off} ÷ ${divisor} = ${answer}`],
      slips: wholeSlips(
        [
          ['estimate.one-place-out', answer / 10],
          // The exact quotient lies just above the answer or just below it.
          off > 0 ? ['round.always-up', answer + 10] : ['round.cut-off', answer - 10],
        ],
        locale,
      ),
    };
  },
});

const sensible = templateOf<readonly [a: number, b: number, kind: 'right' | 'tenfold' | 'units']>({
  id: 'sensible-sum',
  free: (rng) => [rng.int(21, 79), rng.int(21, 79), rng.pick(['right', 'right', 'tenfold', 'units'])],
  on: onWhole(21, 900, (n, rng) => [n, rng.int(21, 79), rng.pick(['right', 'tenfold', 'units'])]),
  draft: ([a, b, kind], { rng, locale }) => {
    const sum = a + b;
    const shown = kind === 'right' ? sum : kind === 'tenfold' ? sum * 10 : sum + rng.pick([1, -1]);
    const isRight = shown === sum;
    const reason =
      kind === 'units'
        ? [`The ones give ${a % 10} + ${b % 10} = ${(a % 10) + (b % 10)}, so the answer ends in ${sum % 10}`]
        : kind === 'tenfold'
          ? [
              `${nearest(a, 10)} + ${nearest(b, 10)} = ${nearest(a, 10) + nearest(b, 10)}, far from ${formatWhole(shown, locale)}`,
            ]
          : [`${a} + ${b} = ${sum}`];
    return {
      text: `Can ${a} + ${b} = ${formatWhole(shown, locale)} be right, yes or no?`,
      answer: choiceAnswer(isRight ? 'yes' : 'no'),
      expression: null,
      features: { fewChoices: true, size: a > 99 ? 1 : 0, extraSteps: kind === 'tenfold' ? 0 : 1 },
      strategy: reason,
      slips: [
        {
          misconception: kind === 'tenfold' ? 'estimate.one-place-out' : 'fact.one-out',
          answer: choiceAnswer(isRight ? 'no' : 'yes'),
        },
      ],
      usesNumber: `judges a sum with ${a}`,
    };
  },
});

const about = templateOf<readonly [a: number, b: number]>({
  id: 'about',
  free: (rng) => [
    rng.int(2, 8) * 10 + rng.pick([-2, -1, 1, 2]),
    rng.int(2, 8) * 10 + rng.pick([-2, -1, 1, 2]),
  ],
  draft: ([a, b], { locale }) => {
    const [roundA, roundB] = [nearest(a, 10), nearest(b, 10)];
    return {
      text: `What is ${a} + ${b} if you round both to the nearest ten first?`,
      answer: wholeAnswer(roundA + roundB, locale),
      expression: `${roundA} + ${roundB}`,
      features: { extraSteps: 1, carries: roundA + roundB > 100 ? 1 : 0 },
      strategy: [
        `${a} is near ${roundA} and ${b} is near ${roundB}`,
        `${roundA} + ${roundB} = ${roundA + roundB}`,
      ],
      slips: wholeSlips(
        [
          ['estimate.exact', a + b],
          ['round.cut-off', Math.floor(a / 10) * 10 + Math.floor(b / 10) * 10],
          ['estimate.one-place-out', (roundA + roundB) / 10],
        ],
        locale,
      ),
    };
  },
});

const collection = templateOf<readonly [each: number, rows: number]>({
  id: 'collection',
  free: (rng) => [rng.int(4, 12), rng.int(3, 10)],
  draft: ([each, rows], { rng, locale }) => {
    const things = rng.pick(['seedlings', 'chairs', 'stickers', 'tiles']);
    return {
      // Without the number to count with, 30 would be as good an estimate of 3 rows of 9 as 27.
      text: `There are ${rows} rows of about ${each} ${things}. Count each row as ${each}. About how many ${things} is that?`,
      answer: wholeAnswer(each * rows, locale),
      // Rows first, so that the dots drawn for it stand in the rows of the story.
      expression: `${rows} * ${each}`,
      features: { story: true, size: (each * rows) / 80 },
      strategy: [`${rows} rows of about ${each}: ${rows} × ${each} = ${each * rows}`],
      slips: wholeSlips(
        [
          ['times.as-plus', each + rows],
          ['estimate.one-place-out', each * rows * 10],
        ],
        locale,
      ),
    };
  },
});

export const ESTIMATE_SKILLS: readonly Skill[] = [
  {
    id: 'add.sensible',
    title: 'Judge whether a sum can be right',
    year: 3,
    fluentYear: 4,
    strand: 'addition',
    prerequisites: ['add.2d2d', 'place.next-ten'],
    codes: {
      ac9: ['AC9M3N05', 'AC9M4N07'],
      england: ['NC-Y3-addsub-3', 'NC-Y4-addsub-2'],
      ccss: ['3.OA.D.8', '4.OA.A.3'],
    },
    templates: [sensible, about],
  },
  {
    id: 'mult.collection',
    title: 'Estimate how many in rows',
    year: 3,
    fluentYear: 4,
    strand: 'multiplication',
    prerequisites: ['mult.groups', 'mult.table.5'],
    codes: { ac9: ['AC9M3N05'], england: ['NC-Y3-place-4'], ccss: ['3.OA.D.8'] },
    templates: [collection],
  },
  {
    id: 'mult.estimate',
    title: 'Estimate a product',
    year: 5,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.tens', 'place.round.10-100'],
    codes: {
      ac9: ['AC9M5N06', 'AC9M5N08'],
      england: ['NC-Y6-fourops-9', 'NC-Y5-addsub-3'],
      ccss: ['4.OA.A.3'],
    },
    templates: withStory(roughTimesStory, [product]),
  },
  {
    id: 'div.estimate',
    title: 'Estimate a quotient',
    year: 5,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.table.69', 'mult.estimate', 'div.by10'],
    codes: { ac9: ['AC9M5N08'], england: ['NC-Y6-fourops-9', 'NC-Y6-fractions-10'], ccss: ['4.OA.A.3'] },
    templates: [quotient],
  },
];
