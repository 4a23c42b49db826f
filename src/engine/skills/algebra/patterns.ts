// Patterns: repeating ones, skip counts, constant steps, and terms further on or back.
import { formatWhole } from '../../numbers/format.js';
import { add, multiply, rational, subtract } from '../../numbers/rational.js';
import { wholeAnswer, wordAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { lastUnit, partTemplates } from '../parts.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

const CORES = ['AB', 'AB', 'AAB', 'ABB', 'ABC'] as const;
type Core = (typeof CORES)[number];
const SHAPE_WORDS = ['circle', 'square', 'triangle', 'star', 'heart'] as const;
const COLOUR_WORDS = ['red', 'blue', 'green', 'yellow'] as const;

interface Repeating {
  readonly core: Core;
  readonly words: readonly string[];
  /** Items shown, always more than one and a half repeats. */
  readonly shown: number;
}

function repeatingItems({ core, words, shown }: Repeating): string[] {
  return Array.from(
    { length: shown + 1 },
    (_, i) => words['ABC'.indexOf(core[i % core.length] ?? 'A')] ?? '',
  );
}

function chooseRepeating(words: readonly string[], rng: Rng): Repeating {
  const core = rng.pick(CORES);
  return { core, words, shown: core.length === 2 ? rng.int(4, 6) : rng.int(5, 7) };
}

const repeatingWords = templateOf<Repeating>({
  id: 'repeat',
  free: (rng) => chooseRepeating(rng.shuffle(rng.chance(0.5) ? SHAPE_WORDS : COLOUR_WORDS), rng),
  draft: (chosen) => {
    const items = repeatingItems(chosen);
    const answer = items.at(-1) ?? '';
    const shown = items.slice(0, -1);
    return {
      text: `${shown.join(', ')}: what comes next?`,
      answer: wordAnswer(answer),
      expression: null,
      features: {
        size: chosen.core.length - 2,
        adjust: chosen.core === 'ABC' || chosen.core === 'AB' ? 0 : 0.3,
        drawn: true,
      },
      strategy: [
        `The part that repeats is: ${items.slice(0, chosen.core.length).join(', ')}`,
        `After ${shown.at(-1) ?? ''} comes ${answer}`,
      ],
      slips: [
        { misconception: 'pattern.last-again', answer: wordAnswer(shown.at(-1) ?? '') },
        { misconception: 'pattern.starts-over', answer: wordAnswer(shown[0] ?? '') },
        {
          misconception: 'pattern.step-missed',
          answer: wordAnswer(items[items.length % chosen.core.length] ?? ''),
        },
      ],
      figure: { kind: 'pattern', items: [...shown, '?'] },
    };
  },
});

const repeatingNumbers = templateOf<Repeating & { readonly day: number }>({
  id: 'repeat-numbers',
  free: (rng) => ({ ...chooseRepeating(rng.shuffle(['1', '2', '3', '5', '8']), rng), day: 0 }),
  on: onWhole(1, 20, (n, rng) => {
    const others = rng.shuffle([1, 2, 3, 4, 5, 6, 8].filter((m) => m !== n)).map(String);
    return { ...chooseRepeating([String(n), ...others], rng), day: n };
  }),
  draft: (chosen, { locale }) => {
    const items = repeatingItems(chosen);
    const shown = items.slice(0, -1);
    const answer = Number(items.at(-1));
    return {
      text: `${shown.join(', ')}: which number comes next?`,
      answer: wholeAnswer(answer, locale),
      expression: null,
      features: {
        size: chosen.core.length - 2,
        adjust: chosen.core === 'ABC' || chosen.core === 'AB' ? 0.1 : 0.4,
      },
      strategy: [
        `The part that repeats is: ${items.slice(0, chosen.core.length).join(', ')}`,
        `After ${shown.at(-1) ?? ''} comes ${answer}`,
      ],
      slips: wholeSlips(
        [
          ['pattern.last-again', Number(shown.at(-1))],
          ['pattern.adds-one', Number(shown.at(-1)) + 1],
          ['pattern.starts-over', Number(shown[0])],
        ],
        locale,
      ),
      figure: { kind: 'pattern', items: [...shown, '?'] },
      usesNumber: `repeats a pattern with ${chosen.day}`,
    };
  },
});

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
      const seen = hidden <= 1 ? ([2, 3] as const) : ([0, 1] as const);
      const a = terms[seen[0]] ?? 0;
      const b = terms[seen[1]] ?? 0;
      const crosses = Math.floor(answer / 100) !== Math.floor(neighbour / 100);
      return {
        text:
          hidden === 3
            ? `What comes next: ${shown.join(', ')}`
            : `Which number is missing: ${shown.join(', ')}`,
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
            ['pattern.wrong-way', hidden === 0 ? neighbour + step : neighbour - step],
            ['pattern.step-missed', answer + step],
            ['fact.one-out', answer + 1],
          ],
          locale,
        ),
        ...(terms.every((term) => term <= 999) ? { figure: { kind: 'pattern' as const, items: shown } } : {}),
        usesNumber: `continues a pattern ${start === day ? 'from' : 'through'} ${say(day)}`,
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

const constantStep = stepsTemplate(
  'step',
  (rng) => {
    const step = rng.pick([3, 4, 5, 6, 20, 25, 50]);
    const down = rng.chance(0.35);
    const start = rng.int(2, 40) + (down ? 3 * step : 0);
    return { start, step: down ? -step : step, hidden: rng.int(0, 3), day: 0 };
  },
  2,
  100_000,
  (n, rng) => {
    const step =
      n < 100
        ? rng.pick([3, 4, 5, 6, 9, 20, 25])
        : n < 1000
          ? rng.pick([5, 10, 20, 25, 50, 100])
          : rng.pick([50, 100, 200, 250, 500]);
    const hidden = rng.int(0, 3);
    const places = [0, 1, 2, 3].filter((place) => place !== hidden);
    const down = n >= 3 * step && rng.chance(0.35);
    const signed = down ? -step : step;
    const fitting = places.filter((place) => n - place * step >= 0 || down);
    const place = fitting.length > 0 ? rng.pick(fitting) : null;
    return place === null
      ? { start: n, step, hidden: 3, day: n }
      : { start: n - place * signed, step: signed, hidden, day: n };
  },
);

const ORDINALS = [
  'zeroth',
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
  on: onWhole(1, 100_000, (n, rng) => [
    n,
    n < 100 ? rng.int(3, 9) : n < 1000 ? rng.pick([4, 5, 10, 20, 25]) : rng.pick([20, 50, 100, 250]),
    rng.int(4, 10),
  ]),
  draft: ([start, step, position], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const jumps = position - 1;
    const value = start + jumps * step;
    return {
      text: `A pattern starts at ${say(start)} and goes up by ${step} each time: what is its ${ORDINALS[position] ?? ''} number?`,
      answer: wholeAnswer(value, locale),
      expression: `${start} + ${jumps} * ${step}`,
      features: {
        extraSteps: 1,
        size: (jumps - 3) / 4 + (step > 5 && step < 10 ? 0.5 : 0),
        fives: step % 5 === 0,
      },
      strategy: [
        `From the first to the ${ORDINALS[position] ?? ''} there are ${jumps} steps`,
        `${jumps} × ${step} = ${say(jumps * step)}`,
        `${say(start)} + ${say(jumps * step)} = ${say(value)}`,
      ],
      slips: wholeSlips(
        [
          ['pattern.step-missed', start + position * step],
          ['rule.one-step', position * step],
          ['pattern.adds-one', start + step],
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
    const name = ORDINALS[position] ?? '';
    return {
      text: `A pattern goes up by ${step} each time and its ${name} number is ${say(term)}: what is its first number?`,
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
        `${jumps} × ${step} = ${say(jumps * step)}`,
        `${say(term)} − ${say(jumps * step)} = ${say(first)}`,
      ],
      slips: wholeSlips(
        [
          ['pattern.step-missed', term - position * step],
          ['pattern.wrong-way', term + jumps * step],
          ['rule.one-step', term - step],
        ],
        locale,
      ),
      usesNumber: `has ${say(term)} as the ${name} number of a pattern`,
    };
  },
});

const countInParts = partTemplates(
  'count-parts',
  ({ value, form, text, rng, t, e }) => {
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
        ['pattern.adds-one', add(at(2), rational(1))],
        ['pattern.step-missed', at(4)],
        ['pattern.last-again', at(2)],
        [
          'place.no-rename',
          form === 'decimal' && next.d === 1 ? rational(Math.floor(value.n / value.d)) : null,
        ],
      ],
      uses: `counts on from ${text} in equal parts`,
    };
  },
  { places: 3 },
);

const stepInParts = partTemplates('part-steps', ({ value, form, text, rng, t, e }) => {
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
    text: hidden === 3 ? `What comes next: ${shown.join(', ')}` : `What is missing: ${shown.join(', ')}`,
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
      `Each step ${down ? 'takes' : 'adds'} ${t(step)}`,
      `${t(at(hidden - 1))} ${sign} ${t(step)} = ${t(answer)}`,
    ],
    slips: [
      ['pattern.wrong-way', down ? add(at(hidden - 1), step) : subtract(at(hidden - 1), step)],
      ['pattern.adds-one', down ? null : add(at(hidden - 1), rational(1))],
      ['pattern.last-again', at(hidden - 1)],
      ['fact.one-out', add(answer, unit)],
    ],
    uses: `continues a pattern from ${text}`,
  };
});

export const PATTERN_SKILLS: readonly Skill[] = [
  {
    id: 'alg.repeat',
    title: 'Continue a repeating pattern',
    year: 0,
    fluentYear: 1,
    strand: 'algebra',
    prerequisites: ['place.next.20'],
    codes: { ac9: ['AC9MFA01', 'AC9M1A02'], england: [], ccss: [] },
    templates: [repeatingWords, repeatingNumbers],
  },
  {
    id: 'alg.skip',
    title: 'Skip count in twos, fives and tens',
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
    id: 'alg.count-parts',
    title: 'Count on in decimal and fraction parts',
    year: 4,
    fluentYear: 5,
    strand: 'algebra',
    prerequisites: ['alg.step', 'place.part-neighbours'],
    codes: { ac9: ['AC9M4N04', 'AC9M4N01'], england: ['NC-Y4-fractions-2'], ccss: ['4.NF.B.3a'] },
    templates: countInParts,
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
  {
    id: 'alg.part-steps',
    title: 'Patterns that step in decimals, fractions or cents',
    year: 5,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.count-parts'],
    codes: { ac9: ['AC9M6A01'], england: ['NC-Y6-algebra-2'], ccss: ['5.NBT.B.7'] },
    templates: stepInParts,
  },
];
