// Addition from Year 4 on: four digits and more, estimating, and two steps.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { carriesOf, smallestPlace } from '../../questions/slips/column-addition.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { addOnSteps, countUpSteps } from '../../questions/strategies/adding.js';
import { subtractSteps } from '../../questions/strategies/subtracting.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';
import { onWhole, templateOf } from '../template-of.js';
import { bareSum, missingAddend, storySum, type SumSpec } from './sum-templates.js';

const FOUR_DIGIT: SumSpec = {
  free: (rng) => [rng.int(1050, 7900), rng.chance(0.5) ? 10 * rng.int(12, 150) : rng.int(125, 1999)],
  from: 101,
  to: 8900,
  on: (n, rng) => {
    if (n < 1000) return [n, rng.chance(0.5) ? 100 * rng.int(10, 89) : rng.int(1010, 8900)];
    return [n, rng.chance(0.4) ? 100 * rng.int(1, 10) : rng.int(105, 1099)];
  },
  plainCarries: 1,
  size: (a, b) => (b % 100 === 0 || a % 100 === 0 ? 0 : b % 10 === 0 ? 0.7 : 1.5),
};

const LARGE: SumSpec = {
  free: (rng) => [500 * rng.int(20, 150), 100 * rng.int(15, 400)],
  from: 300,
  to: 900_000,
  on: (n, rng) => {
    if (n < 1000) return [n, 100 * rng.int(100, 500)];
    const unit = n < 10_000 ? 100 : n < 100_000 ? 500 : 5000;
    return [n, rng.chance(0.3) ? unit * 10 * rng.int(1, 9) : unit * rng.int(11, 90)];
  },
  plainCarries: 1,
  size: (a, b) => (a % 1000 === 0 ? 0 : 0.6) + (b % 1000 === 0 ? 0 : 0.6) + (a % 100 === 0 ? 0 : 0.8),
};

/** The places that receive one when each place of a is filled up to ten, from the smallest: of 242 the tens and hundreds. */
function placesMovedOnTo(a: number): number[] {
  const places: number[] = [];
  for (let place = 10; place <= a; place *= 10) if (a % place !== 0) places.push(place);
  return places;
}

const toThousand = templateOf<readonly [a: number, whole: number]>({
  id: 'to-1000',
  free: (rng) => [rng.chance(0.4) ? 10 * rng.int(11, 98) : rng.int(105, 985), 1000],
  on: onWhole(15, 999_985, (n, rng) => {
    const unit = n >= 10_000 && n < 100_000 ? 10_000 : 1000;
    if (n % unit === 0) return null;
    return [n, n < 100 ? rng.pick([200, 300, 500, 1000]) : unit * Math.ceil(n / unit)];
  }),
  draft: ([a, whole], { locale, rng }) => {
    const say = (n: number) => formatWhole(n, locale);
    const b = whole - a;
    const moving = placesMovedOnTo(a);
    return {
      text: rng.pick([
        `${say(a)} + ? = ${say(whole)}`,
        `What must be added to ${say(a)} to make ${say(whole)}?`,
        `How far is it from ${say(a)} to ${say(whole)} on the number line?`,
      ]),
      answer: wholeAnswer(b, locale),
      expression: `${whole} - ${a}`,
      features: {
        rule: a % 100 === 0 && whole <= 1000,
        size: a % 10 === 0 ? 0 : a % 5 === 0 ? 0.7 : 1.2,
        adjust: a > 1000 ? 0.2 : 0,
      },
      strategy: countUpSteps(a, whole, say),
      slips: wholeSlips(
        [
          ['complement.extra-ten', b + moving.reduce((sum, place) => sum + place, 0)],
          ['complement.extra-ten', b + (moving[0] ?? 0)],
          ['fact.one-out', b - smallestPlace(a, b)],
          ['missing.adds-all', whole + a],
        ],
        locale,
      ),
      usesNumber: `finds what makes ${say(a)} up to ${say(whole)}`,
    };
  },
});

const ROUND_NAMES: readonly (readonly [unit: number, name: string])[] = [
  [10, 'ten'],
  [100, 'hundred'],
  [1000, 'thousand'],
  [10_000, 'ten thousand'],
  [100_000, 'hundred thousand'],
];

/** A number to estimate with: not itself a multiple of the unit, a few units large. */
function unroundNumber(unit: number, rng: Rng): number {
  return unit * rng.int(1, 9) + (unit / 10) * rng.int(1, 9) + (unit > 10 ? rng.int(1, 9) : 0);
}

/** Equal numbers would be rounded once and doubled: another one to add to a. */
function unlike(a: number, unit: number, rng: Rng): number {
  for (;;) {
    const b = unroundNumber(unit, rng);
    // Where the roundings cancel, 71 + 19, the estimate would be the exact sum.
    if (b !== a && (a + b) % unit !== 0) return b;
  }
}

const estimate = templateOf<readonly [a: number, b: number, unit: number]>({
  id: 'estimate',
  free: (rng) => {
    const unit = rng.pick([10, 100]);
    const a = unroundNumber(unit, rng);
    return [a, unlike(a, unit, rng), unit];
  },
  on: onWhole(11, 999_000, (n, rng) => {
    const units = [10, 100, 1000, 10_000, 100_000].filter(
      (unit) => n > unit && n < 100 * unit && n % unit !== 0,
    );
    if (units.length === 0) return null;
    const unit = rng.pick(units);
    return [n, unlike(n, unit, rng), unit];
  }),
  draft: ([a, b, unit], { locale }) => {
    const say = (n: number) => formatWhole(n, locale);
    const round = (n: number) => Math.floor((n + unit / 2) / unit) * unit;
    const down = (n: number) => Math.floor(n / unit) * unit;
    const isHalfway = (n: number) => 2 * (n % unit) === unit;
    const rounded = (n: number) =>
      isHalfway(n)
        ? `${say(n)} is halfway between ${say(down(n))} and ${say(round(n))}, so it goes up to ${say(round(n))}`
        : `${say(n)} is close to ${say(round(n))}`;
    const name = ROUND_NAMES.find(([size]) => size === unit)?.[1] ?? 'ten';
    return {
      text: `What is ${say(a)} + ${say(b)} if you round both to the nearest ${name} first?`,
      answer: wholeAnswer(round(a) + round(b), locale),
      expression: `${round(a)} + ${round(b)}`,
      features: {
        extraSteps: 1,
        carries: carriesOf(round(a), round(b)),
        size: Math.abs((a % unit) - unit / 2) < unit / 5 ? 0.7 : 0,
        adjust: a > 10 * unit ? 0.2 : -0.2,
      },
      strategy: [
        ...(isHalfway(a) || isHalfway(b) ? [rounded(a), rounded(b)] : [`${rounded(a)} and ${rounded(b)}`]),
        `${say(round(a))} + ${say(round(b))} = ${say(round(a) + round(b))}`,
      ],
      slips: wholeSlips(
        [
          ['estimate.exact', a + b],
          ['round.cut-off', down(a) + down(b)],
          ['round.always-up', down(a) + down(b) + (a % unit ? unit : 0) + (b % unit ? unit : 0)],
        ],
        locale,
      ),
      usesNumber: `rounds ${say(a)} and adds`,
    };
  },
});

/** Equal steps would lead back to the start and tell the answer away. */
function differentSteps(
  start: number,
  off: number,
  on: number,
): readonly [a: number, off: number, on: number] {
  return [start, off, on === off ? on + 1 : on];
}

const busStory = templateOf<readonly [a: number, off: number, on: number]>({
  id: 'two-step',
  free: (rng) => {
    const a = rng.int(24, 68);
    return differentSteps(a, rng.int(7, a - 10), rng.int(6, 29));
  },
  on: onWhole(15, 400, (n, rng) => differentSteps(n, rng.int(5, Math.min(n - 10, 38)), rng.int(4, 29))),
  draft: ([a, off, on], { locale, rng }) => {
    const say = (n: number) => formatWhole(n, locale);
    const left = a - off;
    const telling = rng.fork(`${a}-${off}+${on}`);
    const name = storyName(telling);
    return {
      text: telling.pick([
        `A train has ${say(a)} people. ${off} get off and ${on} get on. How many now?`,
        `${name} has ${say(a)} stickers, gives away ${off} and gets ${on}. How many now?`,
        `A shelf has ${say(a)} books. ${off} are taken out and ${on} are put in. How many now?`,
      ]),
      answer: wholeAnswer(left + on, locale),
      expression: `${a} - ${off} + ${on}`,
      features: {
        story: true,
        extraSteps: 1,
        carries: carriesOf(left, on) + carriesOf(left, off) - 1,
        size: a > 99 ? 0.7 : 0,
      },
      strategy: [...subtractSteps(a, off, say), ...addOnSteps(left, on, say)],
      slips: wholeSlips(
        [
          ['rule.one-step', left],
          ['operation.swapped', a + off + on],
          ['operation.swapped', a + off - on],
          ['addend.left-out', a + on],
        ],
        locale,
      ),
      usesNumber: `tells a two-step story that starts with ${say(a)}`,
    };
  },
});

export const LARGER_ADDITION_SKILLS: readonly Skill[] = [
  {
    id: 'add.to1000',
    family: 'make up to a whole',
    title: 'Make up to a thousand or ten thousand',
    year: 4,
    fluentYear: 5,
    strand: 'addition',
    prerequisites: ['add.to100'],
    codes: { ac9: ['AC9M4A01'], england: ['4NF-3', 'NC-Y4-addsub-2'], ccss: ['3.NBT.A.2'] },
    templates: [toThousand],
  },
  {
    id: 'add.4d',
    title: 'Add with four-digit numbers',
    year: 4,
    fluentYear: 5,
    strand: 'addition',
    prerequisites: ['add.3d'],
    codes: { ac9: ['AC9M4N06'], england: ['NC-Y4-addsub-1'], ccss: ['4.NBT.B.4'] },
    templates: [bareSum(FOUR_DIGIT), storySum(FOUR_DIGIT)],
  },
  {
    id: 'add.estimate',
    title: 'Estimate a sum by rounding',
    year: 4,
    fluentYear: 5,
    strand: 'addition',
    prerequisites: ['place.round.10-100', 'add.3d'],
    codes: { ac9: ['AC9M4N07'], england: ['NC-Y4-addsub-2'], ccss: ['4.OA.A.3'] },
    templates: [estimate],
  },
  {
    id: 'add.two-step',
    title: 'Two-step adding and taking stories',
    year: 4,
    fluentYear: 5,
    strand: 'addition',
    prerequisites: ['add.2d2d.carry', 'sub.2d2d.borrow'],
    codes: {
      ac9: ['AC9M4N08'],
      england: ['NC-Y4-addsub-3', 'NC-Y5-addsub-4', 'NC-Y6-fourops-7'],
      ccss: ['2.OA.A.1'],
    },
    templates: [busStory],
  },
  {
    id: 'add.large',
    title: 'Add large numbers in the head',
    year: 5,
    fluentYear: 6,
    strand: 'addition',
    prerequisites: ['add.4d', 'place.million'],
    codes: { ac9: ['AC9M5N09'], england: ['NC-Y5-addsub-2', 'NC-Y5-addsub-1'], ccss: ['4.NBT.B.4'] },
    templates: [bareSum(LARGE), missingAddend(LARGE), storySum(LARGE)],
  },
];
