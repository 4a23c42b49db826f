// A second opinion on questions that no arithmetic expression answers: each judge reads the wording anew and lists every
// answer that could be defended. A question is sound when there is exactly one, the printed one.
import { Temporal } from 'temporal-polyfill';
import type { Question } from '#engine/questions/question.js';
import {
  afterTurn,
  angleName,
  bareWords,
  byWord,
  choicesIn,
  DAYS,
  extremes,
  FACTS,
  familyOf,
  fromRoman,
  gcd,
  inRow,
  isPrime,
  metric,
  minorUnits,
  modes,
  month,
  MONTHS,
  number,
  numbersIn,
  pair,
  pairsIn,
  plain,
  repeatsTo,
  seconds,
  shapeIn,
  shifted,
  SIDES,
  stepsIn,
  UNIT_SIZES,
  WORDS,
  yesNo,
} from './wording-readings.js';

/** Every answer that the wording allows, in any spelling that the question accepts. */
export type Judge = (question: Question) => readonly string[];

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
      'how long a table': 'a tape measure',
      'how wide a door': 'a tape measure',
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
      'cone is cut parallel': 'circle',
      sphere: 'circle',
      'triangular prism is cut parallel': 'triangle',
      'square pyramid is cut parallel': 'square',
      'cube is cut parallel': 'square',
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
