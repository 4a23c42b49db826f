// Decimals place by place: what a digit is worth, thousandths, words and digits.
import { formatDecimal } from '../../numbers/format.js';
import { add, compare, equals, rational, type Rational } from '../../numbers/rational.js';
import { decimalToWords, partName } from '../../numbers/words.js';
import { decimalAnswer, wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';

const PLACES = ['tenth', 'hundredth', 'thousandth'] as const;

/** Digits after the point, at least two of them different and none zero unless allowed. */
function digits(rng: Rng, count: number): number[] {
  const out: number[] = [];
  while (out.length < count) {
    const digit = rng.int(1, 9);
    if (!out.includes(digit)) out.push(digit);
  }
  return out;
}

function decimalOf(whole: number, after: readonly number[]): Rational {
  return rational(Number(`${whole}${after.join('')}`), 10 ** after.length);
}

const digitWorth = templateOf<readonly [value: Rational, digit: number, place: number]>({
  id: 'worth',
  kinds: ['decimal'],
  free: (rng) => {
    const after = digits(rng, rng.int(2, 3));
    const whole = rng.int(0, 9);
    const usable = after.map((_, i) => i).filter((i) => after[i] !== whole);
    const place = rng.pick(usable);
    return [decimalOf(whole, after), after[place] ?? 1, place];
  },
  on: (day, rng) => {
    if (day.kind !== 'decimal') return null;
    const text = formatText(day.value);
    const after = text.split('.')[1] ?? '';
    const usable = [...after]
      .map((_, i) => i)
      .filter((i) => {
        const digit = after[i] ?? '0';
        return digit !== '0' && [...text].filter((other) => other === digit).length === 1;
      });
    if (usable.length === 0 || after.length > 3) return null;
    const place = rng.pick(usable);
    const digit = Number(after[place]);
    // In 0.7 the digit is worth the number itself.
    return equals(day.value, rational(digit, 10 ** (place + 1))) ? null : [day.value, digit, place];
  },
  draft: ([value, digit, place], { locale }) => {
    const say = (x: Rational) => formatDecimal(x, locale);
    const worth = rational(digit, 10 ** (place + 1));
    const named = `${digit} ${PLACES[place]}${digit === 1 ? '' : 's'}`;
    return {
      text: `In ${say(value)}, what is the digit ${digit} worth?`,
      answer: decimalAnswer(worth, locale),
      accepts: [named],
      expression: `${digit} / ${10 ** (place + 1)}`,
      features: { size: place * 0.7 },
      strategy: [
        `The ${place === 0 ? 'first place' : 'places'} after the point: ${PLACES.slice(0, place + 1)
          .map((name) => `${name}s`)
          .join(', ')}`,
        `${named} is ${say(worth)}`,
      ],
      slips: [
        { misconception: 'place.face-value', answer: wholeAnswer(digit, locale) },
        {
          misconception: 'place.neighbour',
          answer: decimalAnswer(rational(digit, 10 ** (place + 2)), locale),
        },
        ...(place > 0
          ? [
              {
                misconception: 'decimals.place-missed' as const,
                answer: decimalAnswer(rational(digit, 10 ** place), locale),
              },
            ]
          : []),
      ],
      usesNumber: `reads a digit of ${say(value)}`,
    };
  },
});

function formatText(value: Rational): string {
  let d = 1;
  while ((value.n * d) % value.d !== 0 && d < 10_000) d *= 10;
  const scaled = String((value.n * d) / value.d).padStart(String(d).length, '0');
  const places = String(d).length - 1;
  return places === 0 ? scaled : `${scaled.slice(0, -places)}.${scaled.slice(-places)}`;
}

const fromParts = templateOf<readonly [parts: readonly number[], whole: number]>({
  id: 'from-parts',
  free: (rng) => {
    const [a = 1, b = 2] = digits(rng, 2);
    return [
      rng.pick([
        [a, 0, b],
        [0, a, b],
        [a, b],
        [0, a],
      ]),
      rng.pick([0, 0, rng.int(1, 9)]),
    ];
  },
  draft: ([parts, whole], { locale }) => {
    const say = (x: Rational) => formatDecimal(x, locale);
    const named = parts.flatMap((digit, place) =>
      digit === 0 ? [] : [`${digit} ${PLACES[place]}${digit === 1 ? '' : 's'}`],
    );
    const total = parts.reduce<Rational>(
      (sum, digit, place) => add(sum, rational(digit, 10 ** (place + 1))),
      rational(whole),
    );
    const packed = parts.filter((digit) => digit !== 0);
    // Only the digits that are said change places: a zero that holds a place stays where it is.
    const turned = [...packed].reverse();
    const swapped = parts.map((digit) => (digit === 0 ? 0 : (turned.shift() ?? 0)));
    const list = [...(whole > 0 ? [`${whole} ${whole === 1 ? 'one' : 'ones'}`] : []), ...named];
    return {
      text: `What is ${list.length > 1 ? `${list.slice(0, -1).join(', ')} and ${list.at(-1)}` : list[0]} as a decimal?`,
      answer: decimalAnswer(total, locale),
      expression: `${whole} + ${parts.map((digit, place) => `${digit} / ${10 ** (place + 1)}`).join(' + ')}`,
      features: { size: parts.length > 2 ? 1 : 0, extraSteps: parts.includes(0) ? 0.7 : 0 },
      strategy: [
        ...parts.flatMap((digit, place) =>
          digit === 0 ? [`No ${PLACES[place]}s, so a 0 holds that place`] : [],
        ),
        `In a row: ${say(total)}`,
      ],
      slips: [
        { misconception: 'place.zero-lost', answer: decimalAnswer(decimalOf(whole, packed), locale) },
        {
          misconception: 'decimals.place-missed',
          answer: decimalAnswer(decimalOf(whole, [0, ...parts]), locale),
        },
        ...(packed.length > 1
          ? [
              {
                misconception: 'place.reversed' as const,
                answer: decimalAnswer(decimalOf(whole, swapped), locale),
              },
            ]
          : []),
      ],
    };
  },
});

const wordsToDigits = templateOf<readonly [count: number, place: number]>({
  id: 'words',
  free: (rng) => {
    const place = rng.int(1, 2);
    const count = place === 1 ? rng.int(3, 99) : rng.int(3, 480);
    return [count % 10 === 0 ? count + 1 : count, place];
  },
  draft: ([count, place], { locale }) => {
    const bottom = 10 ** (place + 1);
    const value = rational(count, bottom);
    const name = partName(bottom, 2, locale);
    const say = (x: Rational) => formatDecimal(x, locale);
    return {
      text: `What is ${count} ${name} as a decimal?`,
      answer: decimalAnswer(value, locale),
      expression: `${count} / ${bottom}`,
      features: { size: place - 1 + (count < bottom / 10 ? 0.7 : 0) },
      strategy: [`${count}/${bottom} has ${place + 1} places after the point: ${say(value)}`],
      slips: [
        {
          misconception: 'place.zero-lost',
          answer: decimalAnswer(rational(count, 10 ** String(count).length), locale),
        },
        {
          misconception: 'decimals.place-missed',
          answer: decimalAnswer(rational(count, bottom / 10), locale),
        },
        { misconception: 'decimals.point-forgotten', answer: wholeAnswer(count, locale) },
      ],
    };
  },
});

/** "three point zero seven" in digits; not on a day of that number, which then stands on the board. */
const spoken = templateOf<Rational>({
  id: 'spoken',
  free: (rng) =>
    decimalOf(
      rng.int(0, 20),
      rng.pick([[0, rng.int(1, 9)], digits(rng, 2), [rng.int(1, 9), 0, rng.int(1, 9)]]),
    ),
  draft: (value, { locale }) => {
    const say = formatDecimal(value, locale);
    const [, after = ''] = formatText(value).split('.');
    const short = after.replaceAll('0', '');
    const lost = short === after || short === '' ? null : `${formatText(value).split('.')[0]}.${short}`;
    return {
      text: `How is ${decimalToWords(value, locale)} written in digits?`,
      answer: decimalAnswer(value, locale),
      expression: formatText(value),
      features: { size: after.length > 2 ? 0.5 : 0, extraSteps: after.includes('0') ? 0.5 : 0, adjust: -0.3 },
      strategy: [`Each word after “point” is one digit: ${say}`],
      slips: [
        ...(lost
          ? [
              {
                misconception: 'place.zero-lost' as const,
                answer: decimalAnswer(decimalOf(Number(lost.split('.')[0]), [...short].map(Number)), locale),
              },
            ]
          : []),
        {
          misconception: 'decimals.place-missed',
          answer: decimalAnswer(
            decimalOf(Math.floor(value.n / value.d), [0, ...[...after].map(Number)]),
            locale,
          ),
        },
      ],
    };
  },
});

/** The same digit twice: how the number is written, and how many places lie between. */
const TWICE: readonly (readonly [write: (digit: number, other: number) => string, steps: 1 | 2])[] = [
  [(digit, other) => `${digit}${digit}.${other}`, 1],
  [(digit) => `${digit}.${digit}`, 1],
  [(digit, other) => `${other}.${digit}${digit}`, 1],
  [(digit) => `0.${digit}${digit}`, 1],
  [(digit, other) => `${digit}${other}.${digit}`, 2],
  [(digit, other) => `${digit}.${other}${digit}`, 2],
];

const timesNeighbour = templateOf<readonly [form: (typeof TWICE)[number], digit: number, other: number]>({
  id: 'times-neighbour',
  free: (rng) => {
    const [digit = 2, other = 3] = digits(rng, 2);
    return [rng.pick(TWICE), digit, other];
  },
  draft: ([[write, steps], digit, other], { locale }) => ({
    text: `In ${write(digit, other)}, the first ${digit} is worth how many times the second ${digit}?`,
    answer: wholeAnswer(10 ** steps, locale),
    expression: `10 ^ ${steps}`,
    features: { extraSteps: steps - 1, adjust: 0.2 },
    strategy: [
      'Each place is worth 10 times the place to its right',
      ...(steps > 1 ? ['Two places: 10 × 10 = 100'] : []),
    ],
    slips: wholeSlips(
      [
        ['place.face-value', 1],
        ['times.zero-count', steps === 1 ? 100 : 10],
        ['times.as-plus', steps === 1 ? null : 20],
      ],
      locale,
    ),
  }),
});

const greaterThousandth = templateOf<readonly [a: Rational, b: Rational, more: boolean]>({
  id: 'which-greater',
  free: (rng) => {
    const whole = rng.int(0, 4);
    const [a = 1, b = 2, c = 3] = digits(rng, 3);
    const pair = rng.pick([
      [decimalOf(whole, [a, b]), decimalOf(whole, [a, b - 1, c])],
      [decimalOf(whole, [a]), decimalOf(whole, [a - 1, b, c])],
      [decimalOf(whole, [0, a, b]), decimalOf(whole, [0, b])],
    ] as const);
    return rng.chance(0.5) ? [pair[0], pair[1], rng.chance(0.6)] : [pair[1], pair[0], rng.chance(0.6)];
  },
  draft: ([a, b, more], { locale }) => {
    const say = (x: Rational) => formatDecimal(x, locale);
    const isFirst = compare(a, b) > 0 === more;
    const [right, wrong] = isFirst ? [a, b] : [b, a];
    const longerRight = say(right).length > say(wrong).length;
    return {
      text: `Which is ${more ? 'greater' : 'less'}: ${say(a)} or ${say(b)}?`,
      answer: decimalAnswer(right, locale),
      expression: `${more ? 'max' : 'min'}(${formatText(a)}, ${formatText(b)})`,
      features: { fewChoices: true, unlike: true, size: /\.0/.test(formatText(a)) ? 0.5 : 0 },
      strategy: [
        `Write both with three places: ${formatDecimal(a, locale, 3)} and ${formatDecimal(b, locale, 3)}`,
        `So ${say(right)} is ${more ? 'greater' : 'less'}`,
      ],
      slips: [
        {
          misconception: longerRight === more ? 'decimals.shorter-larger' : 'decimals.longer-larger',
          answer: decimalAnswer(wrong, locale),
        },
      ],
    };
  },
});

export const DECIMAL_PLACE_SKILLS: readonly Skill[] = [
  {
    id: 'dec.digit',
    title: 'Say what a decimal digit is worth',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.parts', 'place.thousands'],
    codes: {
      ac9: ['AC9M5N01'],
      england: ['NC-Y6-fractions-7', '6NPV-2', 'NC-Y5-fractions-7'],
      ccss: ['5.NBT.A.1', '5.NBT.A.3'],
    },
    templates: [digitWorth, timesNeighbour],
  },
  {
    id: 'dec.words',
    title: 'Write tenths, hundredths and thousandths as decimals',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.digit', 'place.words.1000'],
    codes: {
      ac9: ['AC9M5N01'],
      england: ['NC-Y5-fractions-7'],
      ccss: ['5.NBT.A.3a', '4.NF.C.6'],
    },
    templates: [wordsToDigits, fromParts, spoken],
  },
  {
    id: 'dec.compare.thousandths',
    title: 'Compare decimals to thousandths',
    family: 'which is greater',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.compare.ragged', 'dec.digit'],
    codes: { ac9: ['AC9M5N01'], england: ['NC-Y5-fractions-9'], ccss: ['5.NBT.A.3b'] },
    templates: [greaterThousandth],
  },
];
