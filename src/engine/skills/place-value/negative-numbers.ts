// Negative numbers: counting through zero, order, opposites and distance from zero.
import type { FigureSpec } from '../../figures/figure.js';
import { formatWhole } from '../../numbers/format.js';
import { rational } from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { quantityAnswer } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

const operand = (n: number) => (n < 0 ? `(${n})` : String(n));

const line = (mark: number | null): FigureSpec => ({
  kind: 'number-line',
  from: -10,
  to: 10,
  step: 1,
  labels: [-10, -5, 0, 5, 10],
  ...(mark === null ? {} : { mark }),
});

const countThrough = templateOf<readonly [start: number, step: number, up: boolean]>({
  id: 'count-through',
  free: (rng) => {
    const step = rng.pick([1, 1, 2, 2, 3, 5, 10]);
    const up = rng.chance(0.4);
    const start = rng.int(0, 2) * step + (rng.chance(0.3) ? rng.int(0, step - 1) : 0);
    return [up ? -start - step : start, step, up];
  },
  draft: ([start, step, up], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const way = up ? step : -step;
    const last = start + 2 * way;
    const shown = [start, start + way, last];
    const next = last + way;
    return {
      text: `What comes next: ${shown.map(say).join(', ')}, ?`,
      answer: wholeAnswer(next, locale),
      expression: `${operand(last)} ${up ? '+' : '-'} ${step}`,
      features: { size: step === 1 ? 0 : 0.5, adjust: start % step === 0 ? 0 : 0.4 },
      strategy: [
        `The step is ${step} ${up ? 'up' : 'down'}`,
        // Above zero the next number is worked out, so that the drawing jumps from where the pattern stands.
        up && last > 0 ? `${say(last)} + ${step} = ${say(next)}` : `After ${say(last)} comes ${say(next)}`,
      ],
      slips: wholeSlips(
        [
          ['negative.sign-lost', next < 0 ? -next : null],
          ['pattern.wrong-way', last - way],
          // Zero at an end of the step is not crossed; there it is the first of several steps that may be miscounted.
          [
            last * next < 0 ? 'negative.zero-counted' : 'count.off-by-one',
            last * next < 0 || (last * next === 0 && step > 1) ? next - Math.sign(way) : null,
          ],
        ],
        locale,
        true,
      ),
      ...([...shown, next].every((value) => Math.abs(value) <= 10) ? { figure: line(null) } : {}),
    };
  },
});

/** Three different numbers, two of them below zero. */
function threeMixed(rng: Rng): readonly [number, number, number] {
  const low = -rng.int(5, 20);
  return [low, low + rng.int(1, 4), rng.int(0, 12)];
}

const extreme = templateOf<
  readonly [numbers: readonly [number, number, number], cold: boolean, turn: number]
>({
  id: 'coldest',
  free: (rng) => [threeMixed(rng), rng.chance(0.5), rng.int(0, 2)],
  draft: ([numbers, cold, turn], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const [low, mid, high] = numbers;
    const degrees = (n: number) => quantityAnswer(rational(n), 'decimal', locale, locale.degrees);
    const [first, second, third] = numbers.map((_, i) => degrees(numbers[(i + turn) % 3] ?? 0).text);
    const answer = cold ? degrees : (n: number) => wholeAnswer(n, locale);
    return {
      text: cold
        ? `Which is the coldest: ${first}, ${second} or ${third}?`
        : `Which number is greater: ${say(turn === 0 ? low : mid)} or ${say(turn === 0 ? mid : low)}?`,
      answer: answer(cold ? low : mid),
      expression: cold ? `min(${low}, ${mid}, ${high})` : `max(${low}, ${mid})`,
      features: { fewChoices: true, extraSteps: 1, story: cold },
      strategy: [
        cold
          ? `On a number line ${degrees(low).text} lies farthest to the left, so ${degrees(low).text} is the coldest`
          : `On a number line ${say(mid)} lies to the right of ${say(low)}, so ${say(mid)} is greater`,
      ],
      slips: [
        { misconception: 'negative.size-not-order', answer: answer(cold ? mid : low) },
        ...(cold ? [{ misconception: 'compare.reversed' as const, answer: answer(high) }] : []),
      ],
    };
  },
});

const opposite = templateOf<readonly [n: number, negative: boolean]>({
  id: 'opposite',
  free: (rng) => [rng.int(2, 40), rng.chance(0.5)],
  // The opposite of −7 stands on the board of a day of 7.
  on: onWhole(1, 1_000_000, (n) => [n, false]),
  draft: ([n, negative], { locale }) => {
    const shown = negative ? -n : n;
    return {
      text: `Which number is the opposite of ${formatWhole(shown, locale)}?`,
      answer: wholeAnswer(-shown, locale),
      expression: `-1 * ${operand(shown)}`,
      features: { adjust: negative ? 0.1 : -0.3 },
      strategy: [`It is as far from 0 on the other side: ${formatWhole(-shown, locale)}`],
      slips: wholeSlips(
        [
          ['negative.same-number', shown],
          ['negative.opposite-is-double', 2 * shown],
        ],
        locale,
        true,
      ),
      ...(n <= 10 ? { figure: line(shown) } : {}),
      usesNumber: `finds the opposite of ${formatWhole(shown, locale)}`,
    };
  },
});

const distance = templateOf<readonly [low: number, high: number]>({
  id: 'distance',
  free: (rng) => [-rng.int(2, 20), rng.int(1, 20)],
  on: onWhole(2, 500, (n, rng) => [-rng.int(2, 20), n]),
  draft: ([low, high], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    return {
      text: `How far apart are ${say(low)} and ${say(high)} on a number line?`,
      answer: wholeAnswer(high - low, locale),
      expression: `${high} - (${low})`,
      features: { size: Math.min(3, (high - low) / 20), extraSteps: 1 },
      strategy: [
        `From ${say(low)} to 0: ${-low}`,
        `From 0 to ${say(high)}: ${say(high)}`,
        `${-low} + ${say(high)} = ${say(high - low)}`,
      ],
      slips: wholeSlips(
        [
          ['meas.zero-not-crossed', Math.abs(high + low)],
          ['negative.zero-counted', high - low + 1],
        ],
        locale,
      ),
      usesNumber: `finds how far ${say(high)} is from a number below zero`,
    };
  },
});

export const NEGATIVE_SKILLS: readonly Skill[] = [
  {
    id: 'place.below-zero',
    title: 'Count through zero',
    year: 4,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.thousand-more', 'alg.step'],
    codes: { ac9: ['AC9M6N01'], england: ['NC-Y4-place-3', 'NC-Y5-place-3'], ccss: ['6.NS.C.5', '6.NS.C.6'] },
    templates: [countThrough],
  },
  {
    id: 'place.negative.order',
    title: 'Order numbers below zero',
    year: 6,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.below-zero', 'place.compare.large'],
    codes: {
      ac9: ['AC9M6N01'],
      england: ['NC-Y6-place-3'],
      ccss: ['6.NS.C.7', '6.NS.C.7a', '6.NS.C.7b', '6.NS.C.6c'],
    },
    templates: [extreme],
  },
  {
    id: 'place.opposite',
    title: 'Opposite numbers and distance across zero',
    year: 6,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.negative.order'],
    codes: { ac9: ['AC9M6N01'], england: ['NC-Y6-place-3'], ccss: ['6.NS.C.6a', '6.NS.C.7c', '6.NS.C.6'] },
    templates: [opposite, distance],
  },
];
