// Ways to ask about places, steps, order and rounding, shared by the place-value skills of all years.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Features } from '../../questions/difficulty.js';
import type { Template } from '../../questions/draft.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { placeParts } from '../../questions/strategies/adding.js';
import type { FigureSpec } from '../../figures/figure.js';
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

/** Places whose digit is not 0 and appears only once, so that "the digit 3" means one digit. */
function tellingPlaces(n: number): number[] {
  const digits = String(n);
  return placeParts(n)
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
          `${digit} × ${say(place)} = ${say(digit * place)}`,
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
          : `How many whole ${many} are there altogether in ${say(n)}?`,
        answer: wholeAnswer(count, locale),
        expression: n % place === 0 ? `${n} / ${place}` : `floor(${n} / ${place})`,
        features: { size: single ? 0 : 1, adjust: single ? -0.2 : count > 99 ? 0.4 : 0 },
        strategy: single
          ? [
              `${say(n)} is ${listOf(placeParts(n).map((part) => placeCount(Number(String(part)[0]), 10 ** (String(part).length - 1))))}`,
            ]
          : [
              `Cover the digits after the ${many}: ${say(count)} is left`,
              `${say(count)} × ${say(place)} = ${say(count * place)}`,
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

/** "What number is 3 hundreds and 5 ones?" */
export function compose(range: NumberRange): Template {
  return templateOf<number>({
    id: 'compose',
    free: (rng) => {
      for (;;) {
        const n = range.free(rng);
        if (placeParts(n).length > 1) return n;
      }
    },
    on: onWhole(Math.max(11, range.from), range.to, (n) => (placeParts(n).length < 2 ? null : n)),
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
            ['place.reversed', Number(String(n).split('').reverse().join(''))],
            ['place.written-as-heard', n < 1000 ? Number(parts.join('')) : null],
          ],
          locale,
        ),
        ...withBlocks(n),
        usesNumber: `builds ${say(n)} from its places`,
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
            ['place.face-value', Number(String(rest)[0]) === rest ? null : Number(String(rest)[0])],
            ['place.neighbour', rest * 10],
          ],
          locale,
        ),
        figure: { kind: 'part-whole', whole: say(n), parts: [say(part), '?'] },
        usesNumber: `splits ${say(n)} by place`,
      };
    },
  });
}

/** "What is 10 more than 47?": steps of the given places, up or down. */
export function moreOrLess(range: NumberRange, steps: readonly number[], features: Features = {}): Template {
  type Chosen = readonly [n: number, step: number];
  const choose = (n: number, rng: Rng): Chosen => {
    const signed = steps.flatMap((step) => (n >= step ? [step, -step] : [step]));
    return [n, rng.pick(signed)];
  };
  return templateOf<Chosen>({
    id: `step-${steps.join('-')}`,
    free: (rng) => choose(range.free(rng), rng),
    on: onWhole(range.from, range.to, choose),
    draft: ([n, step], { locale, rng }) => {
      const say = (value: number) => formatWhole(value, locale);
      const size = Math.abs(step);
      const up = step > 0;
      const digit = Math.floor(n / size) % 10;
      const crosses = digit === (up ? 9 : 0) && n >= size;
      const oneAway = up ? 'What number comes just after' : 'What number comes just before';
      const wrongPlace = size === 1 ? 10 : size / 10;
      return {
        text:
          size === 1 && rng.chance(0.5)
            ? `${oneAway} ${say(n)}?`
            : `What is ${say(size)} ${up ? 'more' : 'less'} than ${say(n)}?`,
        answer: wholeAnswer(n + step, locale),
        expression: `${n} ${up ? '+' : '-'} ${size}`,
        features: {
          ...features,
          rule: size === 1,
          carries: crosses ? 1.5 : 0,
          size: (up ? 0 : 0.5) + (features.size ?? 0),
          adjust: (features.adjust ?? 0) + (size > 10 ? 0.2 : 0),
        },
        strategy: crosses
          ? [
              `The ${placeCount(2, size).slice(2)} run ${up ? 'past 9' : 'below 0'}, so the next place changes too`,
              `${say(n)} ${up ? '+' : '−'} ${say(size)} = ${say(n + step)}`,
            ]
          : [
              `Only the ${placeCount(2, size).slice(2)} change: ${say(n)} ${up ? '+' : '−'} ${say(size)} = ${say(n + step)}`,
            ],
        slips: wholeSlips(
          [
            ['place.no-rename', crosses && up ? n - digit * size : null],
            ['count.wrong-way', n - step],
            ['place.wrong-step', up ? n + wrongPlace : n - wrongPlace],
            ['count.off-by-one', size === 1 ? n + 2 * step : null],
          ],
          locale,
        ),
        ...(n <= 20 && size === 1
          ? {
              figure: {
                kind: 'number-line' as const,
                from: 0,
                to: 21,
                step: 1,
                labels: [0, 5, 10, 15, 20],
                mark: n,
              },
            }
          : {}),
        usesNumber: `finds ${say(size)} ${up ? 'more' : 'less'} than ${say(n)}`,
      };
    },
  });
}

/** Numbers easily mistaken for n: digits swapped, a place changed, neighbours; all positive, none equal to n. */
function lookalikes(n: number, limit: number): number[] {
  const digits = String(n).split('');
  const out = new Set<number>();
  for (let i = 0; i + 1 < digits.length; i++) {
    const swapped = [...digits];
    [swapped[i], swapped[i + 1]] = [swapped[i + 1] as string, swapped[i] as string];
    out.add(Number(swapped.join('')));
  }
  out.add(Number([...digits].reverse().join('')));
  const top = 10 ** (digits.length - 1);
  for (const change of [1, top, Math.max(1, top / 10), 2]) {
    out.add(n + change);
    out.add(n - change);
  }
  return [...out].filter((m) => m !== n && m > 0 && m <= limit && String(m).length === digits.length);
}

/** "Which is the greatest: 305, 350 or 503?" */
export function greatestOrLeast(range: NumberRange, limit: number): Template {
  type Chosen = readonly [numbers: readonly number[], greatest: boolean, n: number];
  const choose = (n: number, rng: Rng): Chosen | null => {
    const others = rng.shuffle(lookalikes(n, limit)).slice(0, rng.chance(0.3) ? 1 : 2);
    return others.length === 0 ? null : [rng.shuffle([n, ...others]), rng.chance(0.6), n];
  };
  return templateOf<Chosen>({
    id: 'order',
    free: (rng) => choose(range.free(rng), rng) ?? [[3, 8, 5], true, 5],
    on: onWhole(range.from, range.to, choose),
    draft: ([numbers, greatest, n], { locale }) => {
      const say = (value: number) => formatWhole(value, locale);
      const sorted = [...numbers].sort((a, b) => a - b);
      const low = sorted[0] ?? 0;
      const high = sorted.at(-1) ?? 0;
      const answer = greatest ? high : low;
      const byLast =
        [...numbers].sort((a, b) => (greatest ? (b % 10) - (a % 10) : (a % 10) - (b % 10)))[0] ?? answer;
      const listed = numbers.map(say);
      const two = numbers.length === 2;
      return {
        text: `Which is ${greatest ? (two ? 'greater' : 'the greatest') : two ? 'less' : 'the least'}: ${listed.slice(0, -1).join(', ')} or ${listed.at(-1) ?? ''}?`,
        answer: wholeAnswer(answer, locale),
        expression: `${greatest ? 'max' : 'min'}(${numbers.join(', ')})`,
        features: { fewChoices: true, size: two ? 0 : 0.7, adjust: greatest ? 0 : 0.1 },
        strategy: [
          high > 20
            ? 'Compare the largest places first, then the next'
            : 'On the number line, greater numbers come later',
          `In order, least first: ${sorted.map(say).join(', ')}`,
        ],
        slips: wholeSlips(
          [
            ['compare.last-digit', byLast],
            ['compare.reversed', greatest ? low : high],
          ],
          locale,
        ),
        usesNumber: `compares ${say(n)} with ${two ? 'another number' : 'others'}`,
      };
    },
  });
}

/** "Round 47 to the nearest ten." */
export function roundWhole(range: NumberRange, units: readonly number[]): Template {
  type Chosen = readonly [n: number, unit: number];
  const choose = (n: number, rng: Rng): Chosen | null => {
    const fitting = units.filter((unit) => n > unit && n % unit !== 0);
    return fitting.length === 0 ? null : [n, rng.pick(fitting)];
  };
  return templateOf<Chosen>({
    id: 'round',
    free: (rng) => {
      for (;;) {
        const chosen = choose(range.free(rng), rng);
        if (chosen !== null) return chosen;
      }
    },
    on: onWhole(range.from, range.to, choose),
    draft: ([n, unit], { locale }) => {
      const say = (value: number) => formatWhole(value, locale);
      const down = Math.floor(n / unit) * unit;
      const middle = down + unit / 2;
      const rounded = n >= middle ? down + unit : down;
      const inner = unit / 10;
      const inSteps =
        inner >= 1 ? Math.floor((Math.floor((n + inner / 2) / inner) * inner) / unit + 0.5) * unit : rounded;
      const otherUnit = unit === 10 ? 100 : unit / 10;
      const near = Math.abs(n - middle) <= unit / 10;
      return {
        text: `Round ${say(n)} to the nearest ${placeName(unit)}.`,
        answer: wholeAnswer(rounded, locale),
        expression: `${unit} * floor(${n} / ${unit} + 1/2)`,
        features: {
          size: Math.max(0, String(n).length - String(unit).length - 1) * 0.8,
          carries: Math.floor(n / unit) % 10 === 9 && rounded > down ? 1 : 0,
          adjust: near ? 0.4 : 0,
        },
        strategy: [
          `${say(n)} lies between ${say(down)} and ${say(down + unit)}`,
          n === middle
            ? `${say(middle)} is exactly halfway, and halfway goes up: ${say(rounded)}`
            : `Halfway is ${say(middle)}; ${say(n)} is ${n > middle ? 'more' : 'less'}, so it goes ${n > middle ? 'up' : 'down'} to ${say(rounded)}`,
        ],
        slips: wholeSlips(
          [
            ['round.cut-off', down],
            ['round.always-up', down + unit],
            ['round.in-steps', inSteps],
            ['round.wrong-place', n % otherUnit === 0 ? null : Math.floor(n / otherUnit + 0.5) * otherUnit],
            ['round.digit-only', rounded / unit],
          ],
          locale,
        ).slice(0, 4),
        ...(unit <= 1000
          ? {
              figure: {
                kind: 'number-line' as const,
                from: down,
                to: down + unit,
                step: unit / 10,
                labels: [down, down + unit],
                mark: n,
              },
            }
          : {}),
        usesNumber: `rounds ${say(n)} to the nearest ${placeName(unit)}`,
      };
    },
  });
}
