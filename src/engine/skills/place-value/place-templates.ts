// Ways to ask what the places of a whole number hold, shared by the place-value skills of all years.
import type { FigureSpec } from '../../figures/figure.js';
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Template } from '../../questions/draft.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { placeParts } from '../../questions/strategies/adding.js';
import type { Rng } from '../../random/rng.js';
import { onWhole, templateOf } from '../template-of.js';

/** The numbers a skill meets: how to draw one, and which of the day's numbers suit. */
export interface NumberRange {
  readonly free: (rng: Rng) => number;
  readonly from: number;
  readonly to: number;
}

const PLACE_NAMES: Readonly<Record<number, readonly [one: string, many: string]>> = {
  1: ['one', 'ones'],
  10: ['ten', 'tens'],
  100: ['hundred', 'hundreds'],
  1000: ['thousand', 'thousands'],
  10_000: ['ten thousand', 'ten thousands'],
  100_000: ['hundred thousand', 'hundred thousands'],
  1_000_000: ['million', 'millions'],
};

/** "3 tens", "1 hundred" */
export function placeCount(count: number, place: number): string {
  const [one, many] = PLACE_NAMES[place] ?? ['', ''];
  return `${count} ${count === 1 ? one : many}`;
}

/** "hundred": the place's name in the singular. */
export function placeName(place: number): string {
  return PLACE_NAMES[place]?.[0] ?? '';
}

/** "Count in tens: 10, 20, 30": how classes find what some tens or hundreds are worth before they multiply. */
export function countInPlaces(count: number, place: number, locale: Locale): string {
  const stops = Array.from({ length: count }, (_, i) => formatWhole((i + 1) * place, locale));
  return `Count ${locale.countsWith} ${PLACE_NAMES[place]?.[1]}: ${stops.join(', ')}`;
}

/** "3 hundreds, 2 tens and 5 ones" */
function listOf(phrases: readonly string[]): string {
  const last = phrases.at(-1) ?? '';
  return phrases.length < 2 ? last : `${phrases.slice(0, -1).join(', ')} and ${last}`;
}

function baseTen(n: number): FigureSpec | null {
  if (n > 999) return null;
  return { kind: 'base-ten', hundreds: Math.floor(n / 100), tens: Math.floor(n / 10) % 10, ones: n % 10 };
}

function withBlocks(n: number): { figure?: FigureSpec } {
  const figure = baseTen(n);
  return figure ? { figure } : {};
}

/**
 * Places whose digit is not 0 and appears only once, so that "the digit 3" means one digit; none where that digit is worth
 * the number itself, as in 300.
 */
function tellingPlaces(n: number): number[] {
  const digits = String(n);
  return placeParts(n)
    .filter((part) => part !== n)
    .map((part) => 10 ** (String(part).length - 1))
    .filter((place) => digits.split(String(Math.floor(n / place) % 10)).length === 2);
}

/** "In 305, what is the digit 3 worth?" */
export function digitWorth(range: NumberRange): Template {
  type Chosen = readonly [n: number, place: number];
  const choose = (n: number, rng: Rng): Chosen | null => {
    const places = tellingPlaces(n);
    return places.length === 0 ? null : [n, rng.pick(places)];
  };
  return templateOf<Chosen>({
    id: 'worth',
    free: (rng) => {
      for (;;) {
        const chosen = choose(range.free(rng), rng);
        if (chosen !== null) return chosen;
      }
    },
    on: onWhole(range.from, range.to, choose),
    draft: ([n, place], { locale }) => {
      const digit = Math.floor(n / place) % 10;
      const say = (value: number) => formatWhole(value, locale);
      const places = String(n).length;
      const rank = String(place).length;
      return {
        text: `In ${say(n)}, what is the digit ${digit} worth?`,
        answer: wholeAnswer(digit * place, locale),
        expression: `${digit} * ${place}`,
        features: {
          rule: place === 1,
          size: Math.max(0, places - rank) === 0 ? 0 : 0.6,
          adjust: 0.15 * (places - 2),
        },
        strategy: [
          `The ${digit} stands for ${placeCount(digit, place)}`,
          n < 1000 && place > 1 && digit > 1
            ? countInPlaces(digit, place, locale)
            : `${placeCount(digit, place)} ${digit === 1 ? 'is' : 'are'} ${say(digit * place)}`,
        ],
        slips: wholeSlips(
          [
            ['place.face-value', digit],
            ['place.neighbour', digit * place * 10],
            ['place.neighbour', place > 1 ? (digit * place) / 10 : null],
          ],
          locale,
        ),
        ...withBlocks(n),
        usesNumber: `finds what a digit of ${say(n)} is worth`,
      };
    },
  });
}

/** "How many tens are there in 47?" or, counting through larger places, "How many tens are there altogether in 305?" */
export function howMany(range: NumberRange): Template {
  type Chosen = readonly [n: number, place: number];
  const choose = (n: number, rng: Rng): Chosen => {
    const top = 10 ** (String(n).length - 1);
    const places = [1000, 100, 10].filter((place) => place <= top && n / place < 1000);
    return [n, rng.pick(places.length > 0 ? places : [10])];
  };
  return templateOf<Chosen>({
    id: 'how-many',
    free: (rng) => choose(range.free(rng), rng),
    on: onWhole(Math.max(10, range.from), range.to, choose),
    draft: ([n, place], { locale }) => {
      const say = (value: number) => formatWhole(value, locale);
      const count = Math.floor(n / place);
      const single = count < 10;
      const many = PLACE_NAMES[place]?.[1] ?? '';
      return {
        text: single
          ? `How many ${many} are there in ${say(n)}?`
          : `How many whole ${many} are there in ${say(n)}?`,
        answer: wholeAnswer(count, locale),
        expression: n % place === 0 ? `${n} / ${place}` : `floor(${n} / ${place})`,
        features: { size: single ? 0 : 1, adjust: single ? -0.2 : count > 99 ? 0.4 : 0 },
        strategy: single
          ? [
              `${say(n)} is ${listOf(placeParts(n).map((part) => placeCount(Number(String(part)[0]), 10 ** (String(part).length - 1))))}`,
            ]
          : [
              `Cover the digits after the ${many}: ${say(count)} is left`,
              `${say(count)} ${many} are ${say(count * place)}`,
              ...(n % place ? [`${say(count * place)} + ${say(n % place)} = ${say(n)}`] : []),
            ],
        slips: wholeSlips(
          [
            ['place.only-the-digit', single ? null : count % 10],
            ['place.value-for-count', count * place],
            ['place.neighbour', place >= 10 ? Math.floor(n / (place / 10)) % 10 : null],
          ],
          locale,
        ),
        ...withBlocks(n),
        usesNumber: `counts the ${many} in ${say(n)}`,
      };
    },
  });
}

/** "What number is 3 hundreds and 5 ones?" Not on a day of that number, which then stands on the board. */
export function compose(range: NumberRange): Template {
  return templateOf<number>({
    id: 'compose',
    free: (rng) => {
      for (;;) {
        const n = range.free(rng);
        if (placeParts(n).length > 1) return n;
      }
    },
    draft: (n, { locale, rng }) => {
      const say = (value: number) => formatWhole(value, locale);
      const parts = placeParts(n);
      const counts = parts.map((part) => ({
        count: Number(String(part)[0]),
        place: 10 ** (String(part).length - 1),
        part,
      }));
      const inOrder = rng.chance(0.7);
      const told = inOrder ? counts : [...counts].reverse();
      const phrases = told.map(({ count, place }) => placeCount(count, place));
      const hasGap = parts.length < String(n).replace(/0+$/, '').length || (n % 10 === 0 && n > 99);
      return {
        text: `What number is ${listOf(phrases)}?`,
        answer: wholeAnswer(n, locale),
        expression: told.map(({ count, place }) => `${count} * ${place}`).join(' + '),
        features: { size: parts.length > 2 ? 0.5 : 0, unlike: hasGap, adjust: inOrder ? -0.2 : 0.3 },
        strategy: [parts.length > 1 ? `${parts.map(say).join(' + ')} = ${say(n)}` : `It is ${say(n)}`],
        slips: wholeSlips(
          [
            ['place.zero-lost', Number(counts.map(({ count }) => count).join(''))],
            ['place.reversed', n % 10 === 0 ? null : Number(String(n).split('').reverse().join(''))],
            ['place.written-as-heard', n < 1000 ? Number(told.map(({ part }) => part).join('')) : null],
          ],
          locale,
        ),
        ...withBlocks(n),
      };
    },
  });
}

/** "305 = 300 + ?" */
export function restOf(range: NumberRange): Template {
  type Chosen = readonly [n: number, part: number];
  const choose = (n: number, rng: Rng): Chosen | null => {
    const parts = placeParts(n);
    return parts.length < 2 ? null : [n, rng.pick(parts)];
  };
  return templateOf<Chosen>({
    id: 'rest',
    free: (rng) => {
      for (;;) {
        const chosen = choose(range.free(rng), rng);
        if (chosen !== null) return chosen;
      }
    },
    on: onWhole(Math.max(11, range.from), range.to, choose),
    draft: ([n, part], { locale }) => {
      const say = (value: number) => formatWhole(value, locale);
      const rest = n - part;
      const single = placeParts(rest).length === 1;
      const isTop = String(part).length === String(n).length;
      return {
        text: `${say(n)} = ${say(part)} + ?`,
        answer: wholeAnswer(rest, locale),
        expression: `${n} - ${part}`,
        features: { unknownInside: true, size: isTop ? 0 : 0.6, adjust: -0.4 },
        strategy: [`Take the ${say(part)} out of ${say(n)}`, `${say(n)} − ${say(part)} = ${say(rest)}`],
        slips: wholeSlips(
          [
            ['missing.adds-all', n + part],
            ['place.face-value', single ? Number(String(rest)[0]) : null],
            ['place.neighbour', single ? rest * 10 : null],
            ['place.zero-lost', Number(String(rest).replace(/0+(?=[1-9])/g, ''))],
          ],
          locale,
        ),
        figure: { kind: 'part-whole', whole: say(n), parts: [say(part), '?'] },
        usesNumber: `splits ${say(n)} by place`,
      };
    },
  });
}
