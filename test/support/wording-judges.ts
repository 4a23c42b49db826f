// A second opinion on questions that no arithmetic expression answers: each judge reads the wording anew and lists every
// answer that could be defended. A question is sound when there is exactly one, the printed one.
import { Temporal } from 'temporal-polyfill';
import type { Question } from '#engine/questions/question.js';
import { ToWords } from 'to-words';

/** Every answer that the wording allows, in any spelling that the question accepts. */
export type Judge = (question: Question) => readonly string[];

const plain = (text: string) =>
  text
    .replaceAll('\u00a0', ' ')
    .replaceAll('−', '-')
    .replace(/(?<=\d)[ ,](?=\d{3}(?!\d))/g, '');

/** All numbers of a text in order; fractions as their values. */
function numbersIn(text: string): number[] {
  return [...plain(text).matchAll(/(?<![\w.])-?\d+(?:\.\d+)?(?:\/\d+)?/g)].map(([found]) => {
    const [top, bottom] = found.split('/').map(Number);
    return bottom === undefined ? (top ?? Number.NaN) : (top ?? Number.NaN) / bottom;
  });
}

const number = (text: string, at = 0): number => numbersIn(text)[at] ?? Number.NaN;
const yesNo = (is: boolean) => [is ? 'yes' : 'no'];

/** The choices that a text names after its colon, or before its question mark. */
function choicesIn(text: string): string[] {
  const list = plain(text).replace(/\?$/, '').split(/: /).at(-1) ?? '';
  return list.split(/, | or /);
}

/** The choices for which the measure is largest (or smallest); several when they tie. */
function extremes(choices: readonly string[], size: (choice: string) => number, largest: boolean): string[] {
  const sizes = choices.map(size);
  const best = largest ? Math.max(...sizes) : Math.min(...sizes);
  return choices.filter((_, i) => sizes[i] === best);
}

const isPrime = (n: number) =>
  n > 1 && Array.from({ length: n - 2 }, (_, i) => i + 2).every((d) => n % d !== 0);

const WORDS = new ToWords({ localeCode: 'en-US' });
/** Number words without "and", hyphens or commas, as the outside library writes them. */
const bareWords = (text: string) =>
  text
    .toLowerCase()
    .replaceAll(/[-,]/g, ' ')
    .replaceAll(/\band\b/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();

const WORTH: Readonly<Record<string, number>> = { I: 1, V: 5, X: 10, L: 50, C: 100, D: 500, M: 1000 };

/** The number of a Roman numeral, read from the right; null when it is not the usual way to write that number. */
function fromRoman(roman: string): number | null {
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

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** An amount of money in minor units: "$4.85", "85c", "85p", "$3". */
function minorUnits(text: string): number {
  const value = number(text.replace(/[$£]/g, ''));
  return /[$£]/.test(text) ? Math.round(100 * value) : value;
}

const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
/** A date that falls on the weekday. */
const on = (day: string) => Temporal.PlainDate.from('2024-01-01').add({ days: DAYS.indexOf(day) });
const weekday = (date: Temporal.PlainDate) => DAYS[date.dayOfWeek - 1] ?? '';
const shifted = (day: string, days: number) => weekday(on(day).add({ days }));

const MONTHS = [
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
const month = (name: string) => MONTHS.indexOf(name);

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
const seconds = (text: string) =>
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
  L: 1000,
};
const metric = (text: string) => number(text) * (METRIC[text.split(' ').at(-1) ?? ''] ?? Number.NaN);

const WINDS = ['north', 'east', 'south', 'west'];
const COMPASS: Readonly<Record<string, number>> = { quarter: 1, half: 2, 'three-quarter': 3, full: 4 };

function afterTurn(text: string): string[] {
  const start = WINDS.indexOf(/faces (\w+)/.exec(text)?.[1] ?? '');
  const quarters = COMPASS[/makes an? ([\w-]+) turn/.exec(text)?.[1] ?? ''] ?? Number.NaN;
  const way = /anticlockwise|counterclockwise/.test(text) ? -1 : 1;
  return [WINDS[(((start + way * quarters) % 4) + 4) % 4] ?? ''];
}

function angleName(degrees: number): string {
  if (degrees < 90) return 'acute';
  if (degrees === 90) return 'right';
  if (degrees < 180) return 'obtuse';
  return degrees === 180 ? 'straight' : 'reflex';
}

const SIDES: Readonly<Record<string, number>> = {
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
const shapeIn = (text: string) =>
  Object.keys(SIDES)
    .filter((name) => text.includes(name))
    .sort((a, b) => text.indexOf(a) - text.indexOf(b))[0] ?? '';

/** Every item that can follow a row of items which repeats with a period of two to four seen at least one and a half times. */
function repeatsTo(text: string): string[] {
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

function modes(values: readonly number[]): number[] {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const most = Math.max(...counts.values());
  return [...counts].filter(([, count]) => count === most).map(([value]) => value);
}

function pairsIn(text: string): [number, number][] {
  return [...plain(text).matchAll(/\((-?\d+), (-?\d+)\)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}
const pair = (x: number, y: number) => `(${x}, ${y})`.replaceAll('-', '−');

/** Steps right and up that a text tells: "3 left and 1 up". */
function stepsIn(text: string): [number, number] {
  const across = /(\d+) (left|right)/.exec(text);
  const along = /(\d+) (up|down)/.exec(text);
  return [
    Number(across?.[1]) * (across?.[2] === 'left' ? -1 : 1),
    Number(along?.[1]) * (along?.[2] === 'down' ? -1 : 1),
  ];
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth'];

function inRow(text: string): string[] {
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

function familyOf(text: string): string[] {
  const every = /^Is every (\w+) an? (\w+),/.exec(text);
  if (every) return yesNo((FAMILIES[every[1] ?? ''] ?? []).includes(every[2] ?? ''));
  const regular = /^Is (.+) a regular polygon/.exec(plain(text));
  return yesNo(REGULAR[regular?.[1] ?? ''] ?? false);
}

/** What the plain facts say, one line a case: these questions rest on knowledge, not on a rule. */
const FACTS: Readonly<Record<string, string>> = {
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
function byWord(text: string, table: Readonly<Record<string, string>>): string[] {
  return [
    ...new Set(
      Object.entries(table)
        .filter(([word]) => text.includes(word))
        .map(([, answer]) => answer),
    ),
  ];
}

const UNIT_SIZES: Readonly<Record<string, string>> = {
  'two towns': 'kilometres',
  coin: 'millimetres',
  medicine: 'millilitres',
  'grown-up': 'kilograms',
  pencil: 'centimetres',
  bathtub: 'litres',
};

const JUDGES: Readonly<Record<string, Judge>> = {
  'place.odd-even': ({ text }) => {
    const values = numbersIn(text);
    return [values.reduce((sum, n) => sum + n, 0) % 2 === 0 ? 'even' : 'odd'];
  },
  'place.more-dots': ({ text }) => {
    const [left = 0, right = 0] = numbersIn(text);
    if (left === right) return [];
    return [left > right === text.includes('more') ? 'left' : 'right'];
  },
  'mult.factors': ({ text }) => yesNo(number(text, 1) % number(text) === 0),
  'mult.primes': ({ text }) => {
    const n = number(text);
    if (text.startsWith('Is')) return yesNo(isPrime(n));
    let next = n + 1;
    while (!isPrime(next)) next++;
    return [String(next)];
  },
  'ratio.simplest': ({ text }) => {
    const [a = 0, b = 0] = numbersIn(text);
    return [`${a / gcd(a, b)}:${b / gcd(a, b)}`];
  },
  'add.sensible': ({ text }) => {
    const [a = 0, b = 0, total = 0] = numbersIn(text);
    return yesNo(a + b === total);
  },
  'frac.simplest': ({ text }) => {
    const [, top = '', bottom = ''] = /(\d+)\/(\d+)/.exec(text) ?? [];
    const shared = gcd(Number(top), Number(bottom));
    if (text.startsWith('Can')) return yesNo(shared > 1);
    return [`${Number(top) / shared}/${Number(bottom) / shared}`];
  },
  'frac.resize': ({ text }) => {
    const factor = number(text);
    return [factor < 1 ? 'less' : factor > 1 ? 'more' : 'equal'];
  },
  'frac.shares': ({ text }) => {
    const parts = number(text);
    return [['', '', 'half', 'third', 'quarter', 'fifth', 'sixth', '', 'eighth'][parts] ?? ''];
  },
  'money.compare': ({ text }) => extremes(choicesIn(text), minorUnits, !/less|cheaper/.test(text)),
  'money.better-buy': ({ text }) => {
    const offers = plain(text)
      .replace(/\?$/, '')
      .replace(/^.*better buy, /, '')
      .split(' or ');
    const each = (offer: string) => minorUnits(offer.split(' for ')[1] ?? '') / number(offer);
    return extremes(offers, each, false);
  },
  'time.days.order': ({ text }) => {
    const day = DAYS.find((name) => text.includes(name)) ?? '';
    return [shifted(day, text.includes('before') ? -1 : /two days after|2 days after/.test(text) ? 2 : 1)];
  },
  'time.weekday': ({ text }) => {
    const day = DAYS.find((name) => text.includes(name)) ?? '';
    return [shifted(day, (text.includes('ago') ? -1 : 1) * number(text))];
  },
  'time.around-today': ({ text }) => {
    const day = DAYS.find((name) => text.includes(name)) ?? '';
    const today = text.startsWith('Yesterday') ? 1 : -1;
    const asked = text.endsWith(' today?') ? 0 : text.endsWith(' tomorrow?') ? 1 : -1;
    return [shifted(day, today + asked)];
  },
  'time.longest': ({ text }) => extremes(choicesIn(text), seconds, text.includes('longest')),
  'time.months.order': ({ text }) => {
    const at = month(MONTHS.find((name) => text.includes(name)) ?? '');
    const year = text.includes('leap') ? 2024 : 2025;
    if (text.startsWith('How many')) return [String(new Temporal.PlainYearMonth(year, at + 1).daysInMonth)];
    const by = text.includes('before') ? -1 : text.includes('two') ? 2 : 1;
    return [MONTHS[(at + by + 12) % 12] ?? ''];
  },
  'meas.compare': ({ text }) =>
    extremes(choicesIn(text), metric, !/shorter|lighter|less|smaller|lower/.test(text)),
  'meas.compare.units': ({ text }) => extremes(choicesIn(text), metric, !/shorter|lighter|less/.test(text)),
  'meas.unit.choose': ({ text, answer }) => {
    const known = byWord(text, UNIT_SIZES);
    return known.length > 0 ? known : [answer.text];
  },
  'meas.tool': ({ text }) =>
    byWord(text, {
      'how long a table': 'a tape',
      'how wide a door': 'a tape',
      'how heavy': text.includes('kitchen scales') ? 'kitchen scales' : 'a kitchen scale',
      'how warm': 'a thermometer',
      'how long a song': 'a clock',
      'how much water': text.includes('a measuring jug') ? 'a measuring jug' : 'a measuring cup',
    }),
  'shape.sides': ({ text }) => [String(SIDES[shapeIn(text)])],
  'shape.symmetry': ({ text }) => {
    const name = shapeIn(text);
    if (name === 'rectangle' || name === 'rhombus') return ['2'];
    return [name === 'kite' ? '1' : String(SIDES[name])];
  },
  'shape.turn': ({ text }) => afterTurn(text),
  'shape.angle.name': ({ text }) => [angleName(number(text))],
  'shape.still': ({ text }) => [FACTS[text.replace(', yes or no?', '')] ?? ''],
  'shape.moves': ({ text }) =>
    text.endsWith('yes or no?')
      ? [FACTS[text.replace(', yes or no?', '')] ?? '']
      : byWord(text, {
          slides: 'translation',
          flipped: 'reflection',
          'in a mirror': 'reflection',
          turns: 'rotation',
        }),
  'shape.family': ({ text }) => familyOf(text),
  'shape.triangles': ({ text }) => {
    const values = numbersIn(text);
    if (text.startsWith('Angles')) {
      const largest = Math.max(...values);
      const sum = values.reduce((all, n) => all + n, 0);
      const name = largest === 90 ? 'right' : largest > 90 ? 'obtuse' : 'acute';
      return sum === 180 ? [text.includes('-angled') ? `${name}-angled` : name] : [];
    }
    const [a = 0, b = 0, c = 0] = [...values].sort((x, y) => x - y);
    // Sides that cannot meet make no triangle; an equilateral triangle is isosceles too.
    if (a + b <= c) return [];
    const different = new Set(values).size;
    const fits =
      different === 1 ? ['equilateral', 'isosceles'] : different === 2 ? ['isosceles'] : ['scalene'];
    return fits.filter((name) => text.includes(name));
  },
  'shape.solid.name': ({ text }) => [
    /a (circle|triangle|square|hexagon) /.test(text) ? 'a flat shape' : 'a solid',
  ],
  'shape.solid.faces': ({ text }) =>
    byWord(text.replace(/:.*/, ''), {
      cylinder: 'circle',
      cone: 'circle',
      cube: 'square',
      'two ends of a triangular prism': 'triangle',
      'between the ends': 'rectangle',
      'base of a square pyramid': 'square',
      sloping: 'triangle',
    }),
  'shape.prism': ({ text }) =>
    byWord(text, {
      'cylinder is cut straight across': 'circle',
      'cone is cut level': 'circle',
      sphere: 'circle',
      'triangular prism is cut level': 'triangle',
      'square pyramid is cut level': 'square',
      'cube is cut level': 'square',
      'straight down': 'rectangle',
    }),
  'shape.lines': ({ text }) =>
    byWord(text.replace(/ horizontal.*/, ''), {
      pond: 'horizontal',
      'table top': 'horizontal',
      flagpole: 'vertical',
      'door frame': 'vertical',
      rope: 'vertical',
      shelf: 'horizontal',
    }),
  'shape.position.row': ({ text }) => inRow(text),
  'shape.position.move': ({ text }) => {
    const [[x, y] = [0, 0]] = pairsIn(text);
    const [across, along] = stepsIn(text);
    return [pair(x + across, y + along)];
  },
  'shape.position.four': ({ text }) => {
    const [[x, y] = [0, 0]] = pairsIn(text);
    if (text.includes('x-axis')) return [pair(x, -y)];
    if (text.includes('y-axis')) return [pair(-x, y)];
    const [across, along] = stepsIn(text);
    return [pair(x + across, y + along)];
  },
  'alg.repeat': ({ text }) => repeatsTo(text),
  'alg.expression': ({ text }) => {
    const [, words = '', list = ''] = /“(.+)”: (.+)\?$/.exec(text) ?? [];
    return list.split(' or ').filter((choice) => saysTheSame(words, choice));
  },
  'data.more': ({ text }) => {
    const votes = [...text.matchAll(/(?:: |or )([a-z ]+?) \((\d+)\)/g)].map(
      ([, name = '', count]) => [name, Number(count)] as const,
    );
    const most = Math.max(...votes.map(([, count]) => count));
    return votes.filter(([, count]) => count === most).map(([name]) => name);
  },
  'data.mode': ({ text }) => modes(numbersIn(text)).map(String),
  'data.median': ({ text }) => {
    const sorted = numbersIn(text).sort((a, b) => a - b);
    return sorted.length % 2 === 1 ? [String(sorted[(sorted.length - 1) / 2])] : [];
  },
  'data.chance.words': ({ text }) => {
    const [all = 1, wanted = text.includes('none') ? 0 : all] = numbersIn(text);
    if (wanted === 0) return ['impossible'];
    if (wanted === all) return ['certain'];
    return wanted * 2 < all ? ['unlikely'] : wanted * 2 > all ? ['likely'] : [];
  },
  'data.chance.fraction': ({ text }) => {
    const chance = number(text);
    return [chance < 0.5 ? 'unlikely' : chance > 0.5 ? 'likely' : 'even'];
  },
};

/** True when a choice written with n has the value that the words give, for several n. */
function saysTheSame(words: string, choice: string): boolean {
  return [3, 5, 8, 13].every((n) => {
    const k = number(words);
    const meant: Readonly<Record<string, number>> = {
      'more than n': n + k,
      'less than n': n - k,
      'times n': k * n,
      'shared equally': n / k,
      'double the sum of n': 2 * (n + k),
      'double n': 2 * n + k,
    };
    const key = Object.keys(meant).find((phrase) => words.includes(phrase));
    if (words.includes('double n')) return valueOf(choice, n) === wordsDouble(words, n, k);
    return key !== undefined && valueOf(choice, n) === meant[key];
  });
}

const wordsDouble = (words: string, n: number, k: number) =>
  /less|minus/.test(words) ? 2 * n - k : 2 * n + k;

/** The value of "2(n + 5)", "7n", "n ÷ 4", "5 − n" for this n. */
function valueOf(choice: string, n: number): number {
  const inner = /^(\d*)\((.+)\)$/.exec(choice);
  if (inner) return Number(inner[1] || 1) * valueOf(inner[2] ?? '', n);
  const binary = /^(.+?) ([+−÷×]) (.+)$/.exec(choice);
  if (binary) {
    const [a, b] = [valueOf(binary[1] ?? '', n), valueOf(binary[3] ?? '', n)];
    return { '+': a + b, '−': a - b, '÷': a / b, '×': a * b }[binary[2] ?? '+'] ?? Number.NaN;
  }
  const product = /^(\d*)n$/.exec(choice);
  return product ? Number(product[1] || 1) * n : Number(choice);
}

const inWords: Judge = ({ text, answer }) =>
  bareWords(WORDS.convert(number(text))) === bareWords(answer.text)
    ? [answer.text]
    : [WORDS.convert(number(text))];

const inRoman: Judge = ({ text, answer }) => (fromRoman(answer.text) === number(text) ? [answer.text] : []);

/** The judge of a question's wording, or null when none knows its skill. */
export function wordingJudge({ skill }: Question): Judge | null {
  if (skill.startsWith('place.words.')) return inWords;
  if (skill.startsWith('place.roman.')) return inRoman;
  return JUDGES[skill] ?? null;
}
