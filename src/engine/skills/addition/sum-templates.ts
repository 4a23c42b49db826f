// The three ways most addition skills ask: a bare sum, a missing number, a one-sentence story.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Features } from '../../questions/difficulty.js';
import type { Template } from '../../questions/draft.js';
import type { MisconceptionId } from '../../questions/misconceptions.js';
import type { FigureSpec } from '../../figures/figure.js';
import type { Rng } from '../../random/rng.js';
import {
  addDroppingCarries,
  addLeftAligned,
  addWritingCarries,
  carriesOf,
  complementWithExtraTen,
  smallestPlace,
} from '../../questions/slips/column-addition.js';
import { tellingSlips } from '../../questions/slips/whole-slips.js';
import { addSteps, countUpSteps, roundJustAbove } from '../../questions/strategies/adding.js';
import { countables, countOf, storyName } from '../story.js';
import { onWhole, templateOf } from '../template-of.js';

/** Two numbers to add; the day's number, if any, comes first. */
export type Pair = readonly [a: number, b: number];

/** How a skill chooses its numbers and judges them. */
export interface SumSpec {
  readonly free: (rng: Rng) => Pair;
  /** Whole numbers of the day that suit, both ends included. */
  readonly from: number;
  readonly to: number;
  readonly on: (n: number, rng: Rng) => Pair | null;
  /** Carries of the skill's plain case, which cost nothing extra. */
  readonly plainCarries?: number;
  /** Steps of size beyond the plain case; 0 when left out. */
  readonly size?: (a: number, b: number) => number;
  readonly adjust?: number;
  readonly figure?: (a: number, b: number) => FigureSpec;
}

function sumFeatures(spec: SumSpec, a: number, b: number): Features {
  return {
    size: Math.min(4, Math.max(0, spec.size?.(a, b) ?? 0)),
    carries: carriesOf(a, b) - (spec.plainCarries ?? 0),
    tie: a === b,
    rule: b <= 1,
    adjust: spec.adjust ?? 0,
  };
}

/** Typical wrong sums of a + b, most telling first. */
export function sumSlips(a: number, b: number): (readonly [MisconceptionId, number | null])[] {
  const total = a + b;
  const unit = smallestPlace(a, b);
  const round = b > 8 ? roundJustAbove(b) : null;
  return [
    ['carry.dropped', addDroppingCarries(a, b)],
    ['place.misaligned', Math.min(a, b) < 10 && Math.max(a, b) < 100 ? addLeftAligned(a, b) : null],
    ['carry.written', a < 100 && b < 100 ? addWritingCarries(a, b) : null],
    ['compensate.wrong-way', round === null ? null : a + round + (round - b)],
    ['compensate.forgotten', round === null ? null : a + round],
    ['carry.extra', carriesOf(a, b) === 0 && b >= 10 ? total + 10 * unit : null],
    ['operation.swapped', Math.abs(a - b)],
    ['count.off-by-one', Math.min(a, b) < 10 ? total - 1 : null],
    ['fact.one-out', total + unit],
    ['fact.one-out', total - unit],
  ];
}

/** "47 + 38" */
export function bareSum(spec: SumSpec): Template {
  return templateOf<Pair>({
    id: 'sum',
    free: spec.free,
    on: onWhole(spec.from, spec.to, spec.on),
    draft: ([a, b], { locale, rng }) => {
      const say = (n: number) => formatWhole(n, locale);
      const [first, second] = rng.chance(0.25) ? [b, a] : [a, b];
      const figure = spec.figure?.(first, second);
      // Slips adjust the number that the steps adjust.
      const adjusted: Pair = second > 9 && roundJustAbove(second) !== null ? [first, second] : [a, b];
      return {
        text: `${say(first)} + ${say(second)}`,
        answer: wholeAnswer(a + b, locale),
        expression: `${first} + ${second}`,
        features: sumFeatures(spec, a, b),
        strategy: addSteps(first, second, say),
        slips: tellingSlips(a + b, sumSlips(...adjusted), locale, 4),
        usesNumber: `adds ${say(b)} to ${say(a)}`,
        ...(figure ? { figure } : {}),
      };
    },
  });
}

/** "47 + ? = 85" or "? + 47 = 85" */
export function missingAddend(spec: SumSpec): Template {
  return templateOf<Pair>({
    id: 'missing',
    free: spec.free,
    on: onWhole(spec.from, spec.to, spec.on),
    draft: ([a, b], { locale, rng }) => {
      const say = (n: number) => formatWhole(n, locale);
      const whole = a + b;
      const inTens = b % 10 === 0 && b < 100;
      const direct = inTens || a + b <= 10 || b < 10 - (a % 10);
      const steps = direct ? [`${say(a)} + ${say(b)} = ${say(whole)}`] : countUpSteps(a, whole, say);
      return {
        text: rng.chance(0.7) ? `${say(a)} + ? = ${say(whole)}` : `? + ${say(a)} = ${say(whole)}`,
        answer: wholeAnswer(b, locale),
        expression: `${whole} - ${a}`,
        features: { ...sumFeatures(spec, a, b), unknownInside: true },
        strategy:
          direct || steps.length > 1
            ? [
                `Count up${inTens ? ` ${locale.countsWith} tens` : ''} from ${say(a)} to ${say(whole)}`,
                ...steps,
              ]
            : steps,
        slips: tellingSlips(
          b,
          [
            ['missing.adds-all', whole + a],
            ['complement.extra-ten', whole >= 20 ? complementWithExtraTen(a, b) : null],
            // A tenth is a count of tens only while the answer is tens; in a larger number it is a zero left out.
            ['place.value-for-count', inTens ? b / 10 : null],
            ['place.zero-lost', b % 10 === 0 && !inTens ? b / 10 : null],
            ['fact.one-out', b + smallestPlace(a, b)],
            ['fact.one-out', b - smallestPlace(a, b)],
          ],
          locale,
          3,
        ),
        figure: { kind: 'part-whole', whole: say(whole), parts: [say(a), '?'] },
        usesNumber: `finds what makes ${say(a)} up to ${say(whole)}`,
      };
    },
  });
}

/** What people call a place of so many people. */
const townOrCity = (people: number) => (people < 50_000 ? 'town' : 'city');

/** Tells a + b as a story, as one sentence and its question. */
function sumStory(a: number, b: number, say: (n: number) => string, rng: Rng): string {
  const total = a + b;
  const name = storyName(rng);
  if (total <= 200) {
    const things = countables(total, rng);
    const shown = countOf(a, things, say(a));
    return rng.pick([
      `${name} has ${shown} and gets ${say(b)} more. How many in all?`,
      `One box holds ${shown}, another holds ${say(b)}. How many in all?`,
      `${name} counts ${shown}, then ${say(b)} more. How many in all?`,
    ]);
  }
  if (total <= 2000)
    return rng.pick([
      // A library of 24 books does not buy 300 more.
      a < 200
        ? `A library has ${say(a)} new books and ${say(b)} old ones. How many in all?`
        : `A library has ${say(a)} books and buys ${say(b)} more. How many in all?`,
      `${name} walks ${say(a)} steps, then ${say(b)} more. How many in all?`,
      `A hall has ${say(a)} red seats and ${say(b)} blue seats. How many in all?`,
    ]);
  // Beside a number far smaller two fairs, harvests or towns would not be told of in one breath.
  if (10 * b < a)
    return rng.pick([
      `A museum has counted ${say(a)} visitors, and ${say(b)} more come in. How many visitors now?`,
      `A farm has ${say(a)} apples and picks ${say(b)} more. How many apples now?`,
      `A ${townOrCity(a)} has ${say(a)} people and ${say(b)} more move in. How many people now?`,
    ]);
  if (10 * a < b)
    return rng.pick([
      `A farm picks ${say(a)} apples on the first day, then ${say(b)} more. How many in all?`,
      `A small town has ${say(a)} people and a larger one has ${say(b)}. How many in all?`,
    ]);
  return rng.pick([
    `A fair has ${say(a)} visitors, then ${say(b)} more. How many in all?`,
    `A farm picks ${say(a)} apples, then ${say(b)} more. How many in all?`,
    `One ${townOrCity(Math.min(a, b))} has ${say(a)} people, another has ${say(b)}. How many in all?`,
  ]);
}

/** "Mei has 47 cards and gets 38 more. How many in all?" */
export function storySum(spec: SumSpec): Template {
  return templateOf<Pair>({
    id: 'story',
    free: spec.free,
    on: onWhole(spec.from, spec.to, spec.on),
    draft: ([a, b], { locale, rng }) => {
      const say = (n: number) => formatWhole(n, locale);
      return {
        // Same numbers, same story: told by another child it would not be a new question.
        text: sumStory(a, b, say, rng.fork(`${a}+${b}`)),
        answer: wholeAnswer(a + b, locale),
        expression: `${a} + ${b}`,
        features: { ...sumFeatures(spec, a, b), story: true },
        strategy: addSteps(a, b, say),
        slips: tellingSlips(a + b, [['operation.swapped', Math.abs(a - b)], ...sumSlips(a, b)], locale, 4),
        figure: { kind: 'bar-model', whole: '?', parts: [say(a), say(b)] },
        usesNumber: `adds ${say(b)} to ${say(a)} in a story`,
      };
    },
  });
}
