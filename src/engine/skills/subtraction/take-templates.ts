// The ways most subtraction skills ask: a bare difference, a missing number, a one-sentence story, "how much more".
import type { FigureSpec } from '../../figures/figure.js';
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Features } from '../../questions/difficulty.js';
import type { Template } from '../../questions/draft.js';
import type { MisconceptionId } from '../../questions/misconceptions.js';
import { smallestPlace } from '../../questions/slips/column-addition.js';
import { borrowsOf, columnSubtract } from '../../questions/slips/column-subtraction.js';
import { tellingSlips, wholeSlips } from '../../questions/slips/whole-slips.js';
import { addSteps, countUpSteps, roundJustAbove } from '../../questions/strategies/adding.js';
import { subtractSteps } from '../../questions/strategies/subtracting.js';
import type { Rng } from '../../random/rng.js';
import { countables, countOf, storyName, twoNames } from '../story.js';
import { onWhole, templateOf } from '../template-of.js';

/** a − b with a >= b; the day's number, if any, is one of the two. */
export type Take = readonly [a: number, b: number];

/** How a skill chooses its numbers and judges them. */
export interface TakeSpec {
  readonly free: (rng: Rng) => Take;
  /** Whole numbers of the day that suit, both ends included. */
  readonly from: number;
  readonly to: number;
  readonly on: (n: number, rng: Rng) => Take | null;
  /** Borrows of the skill's plain case, which cost nothing extra. */
  readonly plainBorrows?: number;
  readonly size?: (a: number, b: number) => number;
  readonly adjust?: number;
  readonly figure?: (a: number, b: number) => FigureSpec;
}

/** The skill's numbers where something is taken and something stays: a story of nothing is no story, and 50 − ? = 50 no riddle. */
function ofSomething({ free, on }: TakeSpec): Pick<TakeSpec, 'free' | 'on'> {
  const isSomething = ([a, b]: Take) => b > 0 && a > b;
  return {
    free: (rng) => {
      for (;;) {
        const take = free(rng);
        if (isSomething(take)) return take;
      }
    },
    on: (n, rng) => {
      const take = on(n, rng);
      return take !== null && isSomething(take) ? take : null;
    },
  };
}

function takeFeatures(spec: TakeSpec, a: number, b: number): Features {
  const { borrows, acrossZero } = borrowsOf(a, b);
  return {
    size: Math.min(4, Math.max(0, spec.size?.(a, b) ?? 0)),
    carries: borrows - (spec.plainBorrows ?? 0),
    acrossZero,
    rule: b <= 1 || a === b,
    adjust: spec.adjust ?? 0,
  };
}

/** Typical wrong differences for a − b, most telling first. */
export function takeSlips(a: number, b: number): (readonly [MisconceptionId, number | null])[] {
  const round = b > 8 ? roundJustAbove(b) : null;
  const unit = smallestPlace(a, b);
  const borrows = borrowsOf(a, b).borrows;
  const columns = a >= 20 && borrows > 0;
  return [
    ['borrow.smaller-from-larger', columns ? columnSubtract(a, b, 'smaller-from-larger') : null],
    ['borrow.no-decrement', columns ? columnSubtract(a, b, 'borrow-no-decrement') : null],
    ['borrow.from-zero', columns ? columnSubtract(a, b, 'borrow-from-zero') : null],
    ['borrow.across-zero', columns ? columnSubtract(a, b, 'borrow-across-zero') : null],
    ['borrow.zero-minus-n', columns ? columnSubtract(a, b, 'zero-minus-n-is-n') : null],
    ['borrow.zero-minus-n-is-zero', columns ? columnSubtract(a, b, 'zero-minus-n-is-zero') : null],
    ['compensate.wrong-way', round === null || round > a ? null : a - round - (round - b)],
    ['compensate.forgotten', round === null || round > a ? null : a - round],
    ['borrow.needless', borrows === 0 && b >= 10 && a - b >= 10 * unit ? a - b - 10 * unit : null],
    ['operation.swapped', a + b],
    ['count.off-by-one', b < 10 ? a - b + 1 : null],
    ['fact.one-out', a - b - unit],
    ['fact.one-out', a - b + unit],
  ];
}

/** "83 − 47" */
export function bareTake(spec: TakeSpec): Template {
  return templateOf<Take>({
    id: 'take',
    free: spec.free,
    on: onWhole(spec.from, spec.to, spec.on),
    draft: ([a, b], { locale }) => {
      const say = (n: number) => formatWhole(n, locale);
      const figure = spec.figure?.(a, b);
      return {
        text: `${say(a)} − ${say(b)}`,
        answer: wholeAnswer(a - b, locale),
        expression: `${a} - ${b}`,
        features: takeFeatures(spec, a, b),
        strategy: subtractSteps(a, b, say),
        slips: tellingSlips(a - b, takeSlips(a, b), locale, 6),
        usesNumber: `takes ${say(b)} from ${say(a)}`,
        ...(figure ? { figure } : {}),
      };
    },
  });
}

/** "83 − ? = 47" or "? − 47 = 36" */
export function missingTake(spec: TakeSpec): Template {
  const numbers = ofSomething(spec);
  return templateOf<readonly [a: number, b: number, start: boolean]>({
    id: 'missing',
    free: (rng) => [...numbers.free(rng), rng.chance(0.35)],
    on: onWhole(spec.from, spec.to, (n, rng) => {
      const take = numbers.on(n, rng);
      if (take === null) return null;
      // The day's number must be seen: when it is what is taken away, it moves to what is left.
      if (!rng.chance(0.35)) return [take[0], take[1] === n ? take[0] - n : take[1], false];
      // The unknown stands first, so the day's number becomes what is left.
      const [a, b] = take;
      return a === n ? [n + b, b, true] : [a, b, true];
    }),
    draft: ([a, b, start], { locale }) => {
      const say = (n: number) => formatWhole(n, locale);
      const left = a - b;
      const known = start
        ? {
            text: `? − ${say(b)} = ${say(left)}`,
            answer: wholeAnswer(a, locale),
            expression: `${left} + ${b}`,
            strategy: ['Undo the taking away: put it back', ...addSteps(left, b, say)],
            slips: wholeSlips(
              [
                ['missing.same-operation', Math.abs(left - b)],
                ['fact.one-out', a - smallestPlace(a, b)],
                ['fact.one-out', a + smallestPlace(a, b)],
              ],
              locale,
            ),
          }
        : {
            text: `${say(a)} − ? = ${say(left)}`,
            answer: wholeAnswer(b, locale),
            expression: `${a} - ${left}`,
            strategy: [
              `How far is it from ${say(left)} to ${say(a)}?`,
              ...(left === 0 || (b % 10 === 0 && b < 100)
                ? [`${say(a)} − ${say(b)} = ${say(left)}`]
                : countUpSteps(left, a, say)),
            ],
            slips: wholeSlips(
              [
                ['missing.adds-all', a + left],
                [
                  'borrow.smaller-from-larger',
                  a >= 20 ? columnSubtract(a, left, 'smaller-from-larger') : null,
                ],
                ['count.off-by-one', b < 10 ? b + 1 : null],
                ['fact.one-out', b + smallestPlace(a, b)],
              ],
              locale,
            ),
          };
      return {
        ...known,
        features: { ...takeFeatures(spec, a, b), unknownInside: true },
        figure: {
          kind: 'part-whole',
          whole: start ? '?' : say(a),
          parts: start ? [say(b), say(left)] : ['?', say(left)],
        },
        usesNumber: start
          ? `undoes taking ${say(b)} away, when ${say(left)} is left`
          : `finds what was taken from ${say(a)} to leave ${say(left)}`,
      };
    },
  });
}

function takeStory(a: number, b: number, say: (n: number) => string, rng: Rng): string {
  const name = storyName(rng);
  if (a <= 200) {
    const things = countables(a, rng);
    return rng.pick([
      `${name} has ${countOf(a, things, say(a))} and gives away ${say(b)}. How many are left?`,
      `A box has ${countOf(a, things, say(a))}. You take out ${say(b)}. How many are left?`,
      `${name} needs ${countOf(a, things, say(a))} and has ${say(b)}. How many are missing?`,
    ]);
  }
  if (a <= 20_000)
    return rng.pick([
      `A ${a > 2000 ? 'stadium' : 'hall'} has ${say(a)} seats and ${say(b)} are taken. How many are free?`,
      `${name} aims for ${say(a)} steps and has walked ${say(b)}. How many are left?`,
      `A farm has ${say(a)} apples and sells ${say(b)}. How many are left?`,
    ]);
  return rng.pick([
    `A farm has ${say(a)} apples and sells ${say(b)}. How many are left?`,
    `A city has ${say(a)} people and ${say(b)} move away. How many are left?`,
    `A fair has ${say(a)} tickets and sells ${say(b)}. How many are left?`,
  ]);
}

/** "Mei has 83 cards and gives away 47. How many are left?" */
export function storyTake(spec: TakeSpec): Template {
  const numbers = ofSomething(spec);
  return templateOf<Take>({
    id: 'story',
    free: numbers.free,
    on: onWhole(spec.from, spec.to, numbers.on),
    draft: ([a, b], { locale, rng }) => {
      const say = (n: number) => formatWhole(n, locale);
      return {
        // Same numbers, same story: told by another child it would not be a new question.
        text: takeStory(a, b, say, rng.fork(`${a}-${b}`)),
        answer: wholeAnswer(a - b, locale),
        expression: `${a} - ${b}`,
        features: { ...takeFeatures(spec, a, b), story: true },
        strategy: subtractSteps(a, b, say),
        slips: tellingSlips(a - b, [['operation.swapped', a + b], ...takeSlips(a, b)], locale, 5),
        figure: { kind: 'bar-model', whole: say(a), parts: [say(b), '?'] },
        usesNumber: `takes ${say(b)} from ${say(a)} in a story`,
      };
    },
  });
}

/** "How much more is 83 than 47?" */
export function compareTake(spec: TakeSpec): Template {
  return templateOf<Take>({
    id: 'compare',
    free: spec.free,
    on: onWhole(spec.from, spec.to, spec.on),
    draft: ([a, b], { locale, rng }) => {
      const say = (n: number) => formatWhole(n, locale);
      const telling = rng.fork(`${a}-${b}`);
      const [first, second] = twoNames(telling);
      const story = rng.chance(0.4) && a <= 200;
      return {
        text: story
          ? `${first} has ${say(a)} cards and ${second} has ${say(b)}. What is the difference?`
          : rng.pick([
              `How much more is ${say(a)} than ${say(b)}?`,
              `What is the difference between ${say(b)} and ${say(a)}?`,
            ]),
        answer: wholeAnswer(a - b, locale),
        expression: `${a} - ${b}`,
        features: { ...takeFeatures(spec, a, b), story },
        strategy:
          b === 0
            ? [`${say(a)} − ${say(b)} = ${say(a - b)}`]
            : (a - b) % 10 === 0 && a - b < 100
              ? [`${say(b)} + ${say(a - b)} = ${say(a)}`]
              : countUpSteps(b, a, say),
        slips: wholeSlips(
          [
            ['difference.adds', a + b],
            ['borrow.smaller-from-larger', columnSubtract(a, b, 'smaller-from-larger')],
            ['count.off-by-one', a - b + 1],
            ['fact.one-out', a - b - 1],
          ],
          locale,
        ),
        figure: { kind: 'bar-model', whole: say(a), parts: [say(b), '?'] },
        usesNumber: `finds the difference between ${say(b)} and ${say(a)}`,
      };
    },
  });
}
