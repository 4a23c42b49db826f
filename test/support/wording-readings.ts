// What the wordings of questions mean, read out of the text alone: numbers, amounts, days, times, shapes, families.
import { Temporal } from 'temporal-polyfill';
import { ToWords } from 'to-words';

export const plain = (text: string) =>
  text
    .replaceAll('\u00a0', ' ')
    .replaceAll('−', '-')
    .replace(/(?<=\d)[ ,](?=\d{3}(?!\d))/g, '');

/** All numbers of a text in order; fractions as their values. */
export function numbersIn(text: string): number[] {
  return [...plain(text).matchAll(/(?<![\w.])-?\d+(?:\.\d+)?(?:\/\d+)?/g)].map(([found]) => {
    const [top, bottom] = found.split('/').map(Number);
    return bottom === undefined ? (top ?? Number.NaN) : (top ?? Number.NaN) / bottom;
  });
}

export const number = (text: string, at = 0): number => numbersIn(text)[at] ?? Number.NaN;
export const yesNo = (is: boolean) => [is ? 'yes' : 'no'];

/** The choices that a text names after its colon, or before its question mark. */
export function choicesIn(text: string): string[] {
  const list = plain(text).replace(/\?$/, '').split(/: /).at(-1) ?? '';
  return list.split(/, | or /);
}

/** The choices for which the measure is largest (or smallest); several when they tie. */
export function extremes(
  choices: readonly string[],
  size: (choice: string) => number,
  largest: boolean,
): string[] {
  const sizes = choices.map(size);
  const best = largest ? Math.max(...sizes) : Math.min(...sizes);
  return choices.filter((_, i) => sizes[i] === best);
}

export const isPrime = (n: number) =>
  n > 1 && Array.from({ length: n - 2 }, (_, i) => i + 2).every((d) => n % d !== 0);

export const WORDS = new ToWords({ localeCode: 'en-US' });
/** Number words without "and", hyphens or commas, as the outside library writes them. */
export const bareWords = (text: string) =>
  text
    .toLowerCase()
    .replaceAll(/[-,]/g, ' ')
    .replaceAll(/\band\b/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();

const WORTH: Readonly<Record<string, number>> = { I: 1, V: 5, X: 10, L: 50, C: 100, D: 500, M: 1000 };

/** The number of a Roman numeral, read from the right; null when it is not the usual way to write that number. */
export function fromRoman(roman: string): number | null {
  if (!/^M{0,3}(CM|CD|D?C{0,3})(XC|XL|L?X{0,3})(IX|IV|V?I{0,3})$/.test(roman)) return null;
  let sum = 0;
  let before = 0;
  for (const letter of [...roman].reverse()) {
    const worth = WORTH[letter] ?? 0;
    sum += worth < before ? -worth : worth;
    before = Math.max(before, worth);
  }
  return sum;
}

export const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** An amount of money in minor units: "$4.85", "85c", "85p", "$3". */
export function minorUnits(text: string): number {
  const value = number(text.replace(/[$£]/g, ''));
  return /[$£]/.test(text) ? Math.round(100 * value) : value;
}

export const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
/** A date that falls on the weekday. */
const on = (day: string) => Temporal.PlainDate.from('2024-01-01').add({ days: DAYS.indexOf(day) });
const weekday = (date: Temporal.PlainDate) => DAYS[date.dayOfWeek - 1] ?? '';
export const shifted = (day: string, days: number) => weekday(on(day).add({ days }));

export const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
export const month = (name: string) => MONTHS.indexOf(name);

const SECONDS: Readonly<Record<string, number>> = {
  second: 1,
  minute: 60,
  hour: 3600,
  day: 86_400,
  week: 604_800,
  // The shortest month, and a year of twelve such, so that no order rests on a long one.
  month: 28 * 86_400,
  year: 365 * 86_400,
};
export const seconds = (text: string) =>
  number(text) * (SECONDS[/[a-z]+/.exec(text)?.[0].replace(/s$/, '') ?? ''] ?? Number.NaN);

const METRIC: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  km: 1e6,
  g: 1,
  kg: 1000,
  t: 1e6,
  mL: 1,
  ml: 1,
  L: 1000,
  l: 1000,
};
export const metric = (text: string) => number(text) * (METRIC[text.split(' ').at(-1) ?? ''] ?? Number.NaN);

const WINDS = ['north', 'east', 'south', 'west'];
const COMPASS: Readonly<Record<string, number>> = { quarter: 1, half: 2, 'three-quarter': 3, full: 4 };

export function afterTurn(text: string): string[] {
  const start = WINDS.indexOf(/faces (\w+)/.exec(text)?.[1] ?? '');
  const quarters = COMPASS[/makes an? ([\w-]+) turn/.exec(text)?.[1] ?? ''] ?? Number.NaN;
  const way = /anticlockwise|counterclockwise/.test(text) ? -1 : 1;
  return [WINDS[(((start + way * quarters) % 4) + 4) % 4] ?? ''];
}

export function angleName(degrees: number): string {
  if (degrees < 90) return 'acute';
  if (degrees === 90) return 'right';
  if (degrees < 180) return 'obtuse';
  return degrees === 180 ? 'straight' : 'reflex';
}

export const SIDES: Readonly<Record<string, number>> = {
  triangle: 3,
  square: 4,
  rectangle: 4,
  rhombus: 4,
  kite: 4,
  pentagon: 5,
  hexagon: 6,
  octagon: 8,
};
/** The shape that a text names first. */
export const shapeIn = (text: string) =>
  Object.keys(SIDES)
    .filter((name) => text.includes(name))
    .sort((a, b) => text.indexOf(a) - text.indexOf(b))[0] ?? '';

/** Every item that can follow a row of items which repeats with a period of two to four seen at least one and a half times. */
export function repeatsTo(text: string): string[] {
  const items = plain(text)
    .replace(/^What comes next: /, '')
    .replace(/, \?\?$|, \?$/, '')
    .split(', ');
  const next = new Set<string>();
  for (let period = 2; period <= 4; period++) {
    if (items.length < 1.5 * period) continue;
    if (items.every((item, i) => i < period || item === items[i - period]))
      next.add(items[items.length - period] ?? '');
  }
  return [...next];
}

export function modes(values: readonly number[]): number[] {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const most = Math.max(...counts.values());
  return [...counts].filter(([, count]) => count === most).map(([value]) => value);
}

export function pairsIn(text: string): [number, number][] {
  return [...plain(text).matchAll(/\((-?\d+), (-?\d+)\)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}
export const pair = (x: number, y: number) => `(${x}, ${y})`.replaceAll('-', '−');

/** Steps right and up that a text tells: "3 left and 1 up". */
export function stepsIn(text: string): [number, number] {
  const across = /(\d+) (left|right)/.exec(text);
  const along = /(\d+) (up|down)/.exec(text);
  return [
    Number(across?.[1]) * (across?.[2] === 'left' ? -1 : 1),
    Number(along?.[1]) * (along?.[2] === 'down' ? -1 : 1),
  ];
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth'];

export function inRow(text: string): string[] {
  const row = (/row (.+?), what/.exec(text)?.[1] ?? '').split(/, | and /);
  const beside = /just to the (left|right) of the (\w+)/.exec(text);
  if (beside) return [row[row.indexOf(beside[2] ?? '') + (beside[1] === 'left' ? -1 : 1)] ?? ''];
  const from = / is (\w+) from the (left|right)/.exec(text);
  const at = ORDINALS.indexOf(from?.[1] ?? '');
  return [(from?.[2] === 'left' ? row : [...row].reverse())[at] ?? ''];
}

/** The properties that make a quadrilateral or polygon what its name says. */
const FAMILIES: Readonly<Record<string, readonly string[]>> = {
  square: ['square', 'rectangle', 'rhombus', 'parallelogram', 'quadrilateral', 'polygon'],
  rectangle: ['rectangle', 'parallelogram', 'quadrilateral', 'polygon'],
  rhombus: ['rhombus', 'parallelogram', 'quadrilateral', 'polygon'],
  parallelogram: ['parallelogram', 'quadrilateral', 'polygon'],
  quadrilateral: ['quadrilateral', 'polygon'],
  pentagon: ['pentagon', 'polygon'],
};

const REGULAR: Readonly<Record<string, boolean>> = {
  'a rectangle of 6 cm by 4 cm': false,
  'a square': true,
  'a rhombus that leans': false,
  'a triangle with three equal sides': true,
  'a hexagon with sides of 3 cm and 5 cm': false,
};

export function familyOf(text: string): string[] {
  const every = /^Is every (\w+) an? (\w+),/.exec(text);
  if (every) return yesNo((FAMILIES[every[1] ?? ''] ?? []).includes(every[2] ?? ''));
  const regular = /^Is (.+) a regular polygon/.exec(plain(text));
  return yesNo(REGULAR[regular?.[1] ?? ''] ?? false);
}

/** What the plain facts say, one line a case: these questions rest on knowledge, not on a rule. */
export const FACTS: Readonly<Record<string, string>> = {
  'A red square is painted blue. Is it still a square': 'yes',
  'A triangle is turned upside down. Is it still a triangle': 'yes',
  'A square stands on one corner. Is it still a square': 'yes',
  'A very small circle is made larger. Is it still a circle': 'yes',
  'A square is cut into two triangles. Is each piece a square': 'no',
  'A shape has 4 sides. Can it be a triangle': 'no',
  'A closed shape has 3 straight sides. Is it a triangle': 'yes',
  'A shape is reflected. Do its sides keep their length': 'yes',
  'A shape is turned. Do its angles stay the same': 'yes',
  'A shape slides 5 squares. Does its area change': 'no',
  'A shape is reflected. Does it become larger': 'no',
  'A shape is turned upside down. Does its number of sides change': 'no',
  'A shape slides along. Does it still face the same way': 'yes',
};

/** Which of the things a text may name belongs to which answer; the first that fits counts, and only one may fit. */
export function byWord(text: string, table: Readonly<Record<string, string>>): string[] {
  return [
    ...new Set(
      Object.entries(table)
        .filter(([word]) => text.includes(word))
        .map(([, answer]) => answer),
    ),
  ];
}

export const UNIT_SIZES: Readonly<Record<string, string>> = {
  'two towns': 'kilometres',
  coin: 'millimetres',
  medicine: 'millilitres',
  'grown-up': 'kilograms',
  pencil: 'centimetres',
  bathtub: 'litres',
};
