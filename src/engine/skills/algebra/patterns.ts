// Patterns of whole numbers: skip counts, constant steps, and terms further on or back.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { unlessGiven } from './given.js';

/** Four terms with a constant step and one of them hidden. */
interface Steps {
  readonly start: number;
  readonly step: number;
  readonly hidden: number;
  readonly day: number;
}

function stepsTemplate(
  id: string,
  free: (rng: Rng) => Steps,
  from: number,
  to: number,
  on: (n: number, rng: Rng) => Steps,
) {
  return templateOf<Steps>({
    id,
    free,
    on: onWhole(from, to, on),
    draft: ({ start, step, hidden, day }, { locale }) => {
      const say = (value: number) => formatWhole(value, locale);
      const terms = [0, 1, 2, 3].map((i) => start + i * step);
      const answer = terms[hidden] ?? 0;
      const up = step > 0;
      const size = Math.abs(step);
      const sign = up ? '+' : '−';
      const known = hidden === 0 ? 1 : hidden - 1;
      const neighbour = terms[known] ?? 0;
      const shown = terms.map((term, i) => (i === hidden ? '?' : say(term)));
      const unlessShown = (wrong: number) => (hidden === 3 ? wrong : unlessGiven(wrong, ...terms));
      const seen = hidden <= 1 ? ([2, 3] as const) : ([0, 1] as const);
      const a = terms[seen[0]] ?? 0;
      const b = terms[seen[1]] ?? 0;
      const crosses = Math.floor(answer / 100) !== Math.floor(neighbour / 100);
      return {
        text:
          hidden === 3 ? `What comes next: ${shown.join(', ')}` : `What is missing in ${shown.join(', ')}?`,
        answer: wholeAnswer(answer, locale),
        expression:
          hidden === 0 ? `${neighbour} ${up ? '-' : '+'} ${size}` : `${neighbour} ${up ? '+' : '-'} ${size}`,
        features: {
          rule: size === 1 || size === 10 || size === 100,
          fives: size === 5 || size === 50,
          unknownInside: hidden === 0,
          size: (up ? 0 : 0.7) + ([3, 4, 6, 7, 8, 9].includes(size) ? 0.7 : 0) + (hidden === 3 ? 0 : 0.4),
          carries: crosses ? 0.7 : 0,
        },
        strategy: [
          up
            ? `The numbers go up in steps of ${say(size)}: ${say(b)} − ${say(a)} = ${say(size)}`
            : `The numbers go down in steps of ${say(size)}: ${say(a)} − ${say(b)} = ${say(size)}`,
          hidden === 0
            ? `Go back one step: ${say(neighbour)} ${up ? '−' : '+'} ${say(size)} = ${say(answer)}`
            : `${say(neighbour)} ${sign} ${say(size)} = ${say(answer)}`,
        ],
        slips: wholeSlips(
          [
            ['pattern.adds-one', hidden === 0 ? null : neighbour + Math.sign(step)],
            // In a gap nobody writes a number that stands in the pattern already.
            ['pattern.wrong-way', hidden === 0 ? null : unlessShown(neighbour - step)],
            ['pattern.step-missed', hidden === 0 ? answer - step : unlessShown(answer + step)],
            ['fact.one-out', answer + 1],
            ['fact.one-out', hidden === 3 ? null : answer - 1],
          ],
          locale,
        ),
        ...(terms.every((term) => term <= 999) ? { figure: { kind: 'pattern' as const, items: shown } } : {}),
        usesNumber: `${hidden === 3 ? 'continues' : 'fills a gap in'} a pattern ${start === day ? 'from' : terms[3] === day ? (up ? 'up to' : 'down to') : 'through'} ${say(day)}`,
      };
    },
  });
}

const skipCount = stepsTemplate(
  'skip',
  (rng) => {
    const step = rng.pick([2, 5, 10, 10]);
    return { start: step === 10 ? rng.int(3, 60) : step * rng.int(1, 10), step, hidden: 3, day: 0 };
  },
  1,
  100,
  (n, rng) => {
    const step = rng.pick(n % 5 === 0 ? [2, 5, 10] : [2, 10]);
    const back = n > 3 * step && rng.chance(0.25);
    return { start: n, step: back ? -step : step, hidden: 3, day: n };
  },
);

/** Four terms through n with one of `sizes` as the step; n itself is never the hidden one. */
function stepsThrough(n: number, sizes: readonly number[], rng: Rng): Steps {
  const step = rng.pick(sizes);
  const hidden = rng.int(0, 3);
  const down = n >= 3 * step && rng.chance(0.35);
  const signed = down ? -step : step;
  const fitting = [0, 1, 2, 3].filter((place) => place !== hidden && n - place * signed >= 0);
  if (fitting.length === 0) return { start: n, step, hidden: 3, day: n };
  return { start: n - rng.pick(fitting) * signed, step: signed, hidden, day: n };
}

const constantStep = stepsTemplate(
  'step',
  (rng) => stepsThrough(rng.int(8, 120), [3, 4, 5, 6, 20, 25], rng),
  2,
  900,
  (n, rng) => stepsThrough(n, n < 100 ? [3, 4, 5, 6, 9, 20, 25] : [5, 10, 20, 25, 50, 100], rng),
);

const largeStep = stepsTemplate(
  'large-step',
  (rng) => stepsThrough(50 * rng.int(21, 180), [50, 100, 200, 250, 1000], rng),
  100,
  1_000_000,
  (n, rng) => {
    if (n < 1000) return stepsThrough(n, [9, 25, 75, 250, 1000], rng);
    return stepsThrough(n, n < 10_000 ? [50, 100, 200, 250, 1000] : [100, 250, 500, 1000, 2000, 10_000], rng);
  },
);

const ORDINALS = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
] as const;

const farTerm = templateOf<readonly [start: number, step: number, position: number]>({
  id: 'far-term',
  free: (rng) => [rng.int(2, 30), rng.int(3, 9), rng.int(5, 10)],
  on: onWhole(1, 1_000_000, (n, rng) => [
    n,
    n < 100
      ? rng.int(3, 9)
      : n < 1000
        ? rng.pick([4, 5, 10, 20, 25])
        : rng.pick(n < 100_000 ? [20, 50, 100, 250] : [500, 1000, 5000]),
    rng.int(4, 10),
  ]),
  draft: ([start, step, position], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const jumps = position - 1;
    const value = start + jumps * step;
    return {
      text: `A pattern starts at ${say(start)} and goes up ${locale.countsWith} ${say(step)}s. What is its ${ORDINALS[position - 1] ?? ''} number?`,
      answer: wholeAnswer(value, locale),
      expression: `${start} + ${jumps} * ${step}`,
      features: {
        extraSteps: 1,
        size: (jumps - 3) / 4 + (step > 5 && step < 10 ? 0.5 : 0),
        fives: step % 5 === 0,
      },
      strategy: [
        `From the first to the ${ORDINALS[position - 1] ?? ''} there are ${jumps} steps`,
        `${jumps} × ${say(step)} = ${say(jumps * step)}`,
        `${say(start)} + ${say(jumps * step)} = ${say(value)}`,
      ],
      slips: wholeSlips(
        [
          ['pattern.step-missed', start + position * step],
          ['pattern.start-left-out', position * step],
          ['pattern.one-step-only', start + step],
        ],
        locale,
      ),
      usesNumber: `starts a growing pattern at ${say(start)}`,
    };
  },
});

const firstTerm = templateOf<readonly [term: number, step: number, position: number]>({
  id: 'first-term',
  free: (rng) => {
    const step = rng.int(3, 9);
    return [rng.int(2, 30) + 2 * step, step, 3];
  },
  on: onWhole(8, 100_000, (n, rng) => {
    const position = n > 60 ? rng.int(3, 5) : 3;
    const most = Math.floor((n - 1) / (position - 1));
    return [
      n,
      n < 200
        ? rng.int(Math.min(3, most), Math.min(9, most))
        : n < 2000
          ? rng.pick([10, 15, 20, 25])
          : rng.pick([50, 100, 150, 250]),
      position,
    ];
  }),
  draft: ([term, step, position], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const jumps = position - 1;
    const first = term - jumps * step;
    const name = ORDINALS[position - 1] ?? '';
    return {
      text: `A pattern goes up ${locale.countsWith} ${say(step)}s and its ${name} number is ${say(term)}. What is its first?`,
      answer: wholeAnswer(first, locale),
      expression: `${term} - ${jumps} * ${step}`,
      features: {
        extraSteps: 1,
        unknownInside: true,
        size: (jumps - 2) / 2 + (step > 5 && step < 10 ? 0.5 : 0),
        fives: step % 5 === 0,
      },
      strategy: [
        `From the ${name} back to the first there are ${jumps} steps`,
        `${jumps} × ${say(step)} = ${say(jumps * step)}`,
        `${say(term)} − ${say(jumps * step)} = ${say(first)}`,
      ],
      slips: wholeSlips(
        [
          ['pattern.step-missed', term - position * step],
          ['pattern.wrong-way', term + jumps * step],
          ['pattern.one-step-only', term - step],
        ],
        locale,
      ),
      usesNumber: `has ${say(term)} as the ${name} number of a pattern`,
    };
  },
});

export const PATTERN_SKILLS: readonly Skill[] = [
  {
    id: 'alg.skip',
    family: 'what comes next',
    title: 'Skip count by twos, fives and tens',
    year: 1,
    fluentYear: 2,
    strand: 'algebra',
    prerequisites: ['place.ten-more'],
    codes: { ac9: ['AC9M1A01'], england: ['NC-Y1-place-2', '1NF-2'], ccss: ['2.NBT.A.2'] },
    shift: 0.4,
    templates: [skipCount],
  },
  {
    id: 'alg.step',
    family: 'what comes next',
    title: 'Patterns with a constant step',
    year: 2,
    fluentYear: 3,
    strand: 'algebra',
    prerequisites: ['alg.skip', 'add.2d1d'],
    codes: { ac9: ['AC9M2A01'], england: ['NC-Y2-place-1', 'NC-Y3-place-1'], ccss: ['2.NBT.A.2'] },
    shift: 0.2,
    templates: [constantStep],
  },
  {
    id: 'alg.step.large',
    family: 'what comes next',
    title: 'Patterns of larger numbers with a constant step',
    year: 4,
    fluentYear: 5,
    strand: 'algebra',
    prerequisites: ['alg.step', 'place.thousands'],
    codes: { ac9: ['AC9M4N09'], england: ['NC-Y4-place-1', 'NC-Y5-place-2'], ccss: ['4.OA.C.5'] },
    templates: [largeStep],
  },
  {
    id: 'alg.terms',
    title: 'Find terms further along a pattern',
    year: 4,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.step'],
    codes: { ac9: ['AC9M4N09'], england: ['NC-Y6-algebra-2'], ccss: ['4.OA.C.5'] },
    shift: 0.3,
    templates: [farTerm, firstTerm],
  },
];
