// Number riddles: a number from what is said about its digits, and the greatest or least number from given digits.
import { formatWhole } from '../../numbers/format.js';
import { wholeToWords } from '../../numbers/words.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

function differentDigits(rng: Rng, count: number): number[] {
  return rng.shuffle([1, 2, 3, 4, 5, 6, 7, 8, 9]).slice(0, count);
}

const joined = (digits: readonly number[]) => Number(digits.join(''));
const spoken = (digits: readonly (number | string)[]) =>
  `${digits.slice(0, -1).join(', ')} and ${digits.at(-1)}`;

type Ask = 'greatest' | 'least' | 'greatest even' | 'least odd' | 'greatest odd' | 'least even';

/** The answer by trying every order; null when no order fits. */
function arranged(digits: readonly number[], ask: Ask): number | null {
  const fits = (n: number) => (ask.includes('even') ? n % 2 === 0 : ask.includes('odd') ? n % 2 === 1 : true);
  const all = orders(digits).map(joined).filter(fits);
  if (all.length === 0) return null;
  return ask.startsWith('greatest') ? Math.max(...all) : Math.min(...all);
}

function orders(digits: readonly number[]): number[][] {
  if (digits.length < 2) return [[...digits]];
  return digits.flatMap((digit, i) =>
    orders(digits.filter((_, j) => j !== i)).map((rest) => [digit, ...rest]),
  );
}

function fromDigits(count: number, asks: readonly Ask[]) {
  return templateOf<readonly [digits: readonly number[], ask: Ask]>({
    id: 'from-digits',
    free: (rng) => {
      for (;;) {
        const digits = differentDigits(rng, count);
        const ask = rng.pick(asks);
        if (arranged(digits, ask) !== null) return [digits, ask];
      }
    },
    draft: ([digits, ask], { locale }) => {
      const right = arranged(digits, ask) ?? 0;
      const down = joined([...digits].sort((a, b) => b - a));
      const up = joined([...digits].sort((a, b) => a - b));
      const isGreatest = ask.startsWith('greatest');
      const plain = isGreatest ? down : up;
      const kind = ask.split(' ')[1];
      return {
        text: `What is the ${ask} ${wholeToWords(count, locale)}-digit number made of ${spoken(digits)}, once each?`,
        answer: wholeAnswer(right, locale),
        expression: digits.map((digit) => `${digit} * ${placeOf(right, digit)}`).join(' + '),
        features: { extraSteps: kind ? 1 : 0, size: (count - 2) / 2 },
        strategy: [
          `${firstDigits(count, isGreatest)} first: ${formatWhole(plain, locale)}`,
          ...(kind && plain !== right
            ? [`It must end in an ${kind} digit: ${formatWhole(right, locale)}`]
            : kind
              ? [`It ends in an ${kind} digit already`]
              : []),
        ],
        slips: wholeSlips(
          [
            ['place.arranged-upward', isGreatest ? up : down],
            ['rule.one-step', kind ? plain : null],
            ['place.arranged-as-given', joined(digits)],
          ],
          locale,
        ),
      };
    },
  });
}

/** "The smaller digit comes" of two, "The smallest digits come" of more. */
function firstDigits(count: number, isGreatest: boolean): string {
  if (count === 2) return `The ${isGreatest ? 'larger' : 'smaller'} digit comes`;
  return `The ${isGreatest ? 'largest' : 'smallest'} digits come`;
}

/** The worth of the place where a digit stands in a number whose digits all differ. */
function placeOf(n: number, digit: number): number {
  const text = String(n);
  return 10 ** (text.length - 1 - text.indexOf(String(digit)));
}

const SIZES: Readonly<Record<number, string>> = { 2: 'two', 3: 'three', 4: 'four' };
const PLACE_NAMES = ['ones', 'tens', 'hundreds', 'thousands', 'ten thousands'] as const;

interface Clue {
  readonly text: string;
  readonly value: (other: number) => number;
}

const CLUES: readonly Clue[] = [
  { text: 'twice', value: (n) => 2 * n },
  { text: '1 more than', value: (n) => n + 1 },
  { text: '2 more than', value: (n) => n + 2 },
  { text: '3 less than', value: (n) => n - 3 },
  { text: '1 less than', value: (n) => n - 1 },
];

function riddle(places: number) {
  return templateOf<readonly [digits: readonly number[], clue: Clue]>({
    id: 'riddle',
    free: (rng) => {
      for (;;) {
        const clue = rng.pick(CLUES);
        const tens = rng.int(1, 8);
        const ones = clue.value(tens);
        const upper = Array.from({ length: places - 2 }, (_, i) => rng.int(i === 0 ? 1 : 0, 9));
        if (ones >= 0 && ones <= 9 && ones !== tens) return [[...upper, tens, ones], clue];
      }
    },
    draft: ([digits, clue], { locale }) => {
      const n = joined(digits);
      const named = digits
        .slice(0, -1)
        .map(
          (digit, i) =>
            `${digit} ${digit === 1 ? (PLACE_NAMES[digits.length - 1 - i] ?? '').slice(0, -1) : PLACE_NAMES[digits.length - 1 - i]}`,
        );
      const tens = digits.at(-2) ?? 0;
      const ones = digits.at(-1) ?? 0;
      return {
        text: `A ${SIZES[places]}-digit number has ${named.length > 1 ? spoken(named) : named[0]}. Its ones digit is ${clue.text} its tens digit. What is it?`,
        answer: wholeAnswer(n, locale),
        expression: digits.map((digit, i) => `${digit} * ${10 ** (digits.length - 1 - i)}`).join(' + '),
        features: { extraSteps: 1, size: (places - 2) / 2 },
        strategy: [
          `The tens digit is ${tens}, so the ones digit is ${ones}`,
          `Put the digits in their places: ${formatWhole(n, locale)}`,
        ],
        slips: wholeSlips(
          [
            [
              'place.reversed',
              places === 2 && ones === 0 ? null : joined([...digits.slice(0, -2), ones, tens]),
            ],
            ['rule.one-step', joined([...digits.slice(0, -1), tens])],
            ['fact.one-out', ones === 9 ? n - 1 : n + 1],
          ],
          locale,
        ),
      };
    },
  });
}

const UNITS = [
  [10, 'ten'],
  [100, 'hundred'],
  [1000, 'thousand'],
  [10_000, 'ten thousand'],
] as const;

interface Rounded {
  readonly target: number;
  readonly unit: (typeof UNITS)[number];
  readonly least: boolean;
}

const roundsTo = templateOf<Rounded>({
  id: 'rounds-to',
  free: (rng) => {
    const unit = rng.pick(UNITS);
    return { unit, target: unit[0] * rng.int(2, 90), least: rng.chance(0.5) };
  },
  on: onWhole(20, 1_000_000, (n, rng) => {
    const fitting = UNITS.filter(([unit]) => n % unit === 0);
    return fitting.length === 0 ? null : { unit: rng.pick(fitting), target: n, least: rng.chance(0.5) };
  }),
  draft: ({ target, unit: [unit, name], least }, { locale }) => {
    const say = (n: number) => formatWhole(n, locale);
    const right = least ? target - unit / 2 : target + unit / 2 - 1;
    return {
      text: `What is the ${least ? 'least' : 'greatest'} whole number that rounds to ${say(target)} to the nearest ${name}?`,
      answer: wholeAnswer(right, locale),
      expression: least ? `${target} - ${unit} / 2` : `${target} + ${unit} / 2 - 1`,
      features: { extraSteps: least ? 1 : 1.5, size: Math.log10(unit) / 4 },
      strategy: [
        `Halfway ${least ? 'below' : 'above'} is ${say(least ? right : right + 1)}`,
        least
          ? `Halfway rounds up, so ${say(right)} is the least`
          : `${say(right + 1)} itself rounds up to the next ${name}, so the greatest is one less: ${say(right)}`,
      ],
      slips: wholeSlips(
        [
          ['round.halfway-down', right + 1],
          ['round.cut-off', least ? target : target + unit - 1],
          ['round.wrong-place', least ? target - unit / 20 : null],
        ],
        locale,
      ),
      usesNumber: `finds what rounds to ${say(target)}`,
    };
  },
});

export const RIDDLE_SKILLS: readonly Skill[] = [
  {
    id: 'place.riddle.2d',
    title: 'Two-digit number riddles',
    year: 2,
    fluentYear: 3,
    strand: 'place-value',
    prerequisites: ['place.tens-ones', 'place.odd-even'],
    codes: { ac9: ['AC9M2N01'], england: ['NC-Y2-place-6', 'NC-Y2-place-2'], ccss: ['1.NBT.B.2'] },
    templates: [fromDigits(2, ['greatest', 'least']), riddle(2)],
  },
  {
    id: 'place.riddle.3d',
    title: 'Three-digit number riddles',
    year: 3,
    fluentYear: 4,
    strand: 'place-value',
    prerequisites: ['place.riddle.2d', 'place.three-digit'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y3-place-6'], ccss: ['2.NBT.A.1'] },
    templates: [fromDigits(3, ['greatest', 'least', 'greatest even', 'least odd']), riddle(3)],
  },
  {
    id: 'place.riddle.4d',
    title: 'Four-digit number riddles',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.riddle.3d', 'place.thousands'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y4-place-8'], ccss: ['4.NBT.A.2'] },
    templates: [
      fromDigits(4, ['greatest', 'least', 'greatest even', 'least even', 'greatest odd', 'least odd']),
      riddle(4),
    ],
  },
  {
    id: 'place.round.back',
    title: 'Find the numbers that round to a given one',
    year: 5,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.round.10-100', 'place.riddle.3d'],
    codes: {
      ac9: ['AC9M4N07'],
      england: ['NC-Y5-place-5', 'NC-Y6-place-2', 'NC-Y6-place-4'],
      ccss: ['4.NBT.A.3'],
    },
    templates: [roundsTo],
  },
];
