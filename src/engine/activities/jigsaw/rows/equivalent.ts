// Equal in two or three written forms: words and numeral, spoken and digital time, fraction and decimal and percentage.
import {
  formatClock,
  formatDecimal,
  formatDuration,
  formatMixed,
  formatMoney,
  formatWhole,
} from '../../../numbers/format.js';
import type { Locale } from '../../../numbers/locale.js';
import { decimalPlaces, gcd, multiply, type Rational, rational } from '../../../numbers/rational.js';
import { clockToWords } from '../../../numbers/time-words.js';
import { wholeToWords } from '../../../numbers/words.js';
import type { Rng } from '../../../random/rng.js';
import { numberCell, signCell } from '../cells.js';
import type { JigsawCell } from '../jigsaw.js';
import { reachOf, type RowContext } from './band.js';

interface Forms {
  readonly value: Rational;
  readonly texts: readonly string[];
}

type FormMaker = (rng: Rng, locale: Locale, year: number) => Forms;

function words(rng: Rng, locale: Locale, year: number): Forms {
  const most = year <= 2 ? reachOf(year).largest : 99;
  const value = rng.int(year === 0 ? 1 : 6, most);
  return { value: rational(value), texts: [String(value), wholeToWords(value, locale)] };
}

function clock(rng: Rng, locale: Locale, year: number): Forms {
  const grain = year <= 1 ? 30 : year <= 2 ? 15 : 5;
  const minutes = 60 * rng.int(1, 12) + grain * rng.int(0, 60 / grain - 1);
  const value = rational(minutes % 720);
  return { value, texts: [formatClock(minutes), clockToWords(minutes, locale)] };
}

function duration(rng: Rng): Forms {
  const minutes = 60 * rng.int(1, 3) + 5 * rng.int(1, 11);
  return { value: rational(minutes), texts: [`${minutes}\u00a0min`, formatDuration(minutes)] };
}

function money(rng: Rng, locale: Locale, year: number): Forms {
  const minor = 100 * rng.int(1, year <= 2 ? 3 : 9) + 5 * rng.int(1, 19);
  const value = rational(minor, 100);
  return { value, texts: [formatMoney(value, locale), `${minor}${locale.currency.minorSymbol}`] };
}

function equalFractions(rng: Rng, _locale: Locale, year: number): Forms {
  const d = rng.pick(year <= 3 ? [2, 3, 4, 5] : [2, 3, 4, 5, 6, 8]);
  const n = rng.int(1, d - 1);
  const g = gcd(n, d);
  const [top, bottom] = [n / g, d / g];
  const times = rng.shuffle([2, 3, 4, 5].filter((k) => bottom * k <= (year <= 3 ? 12 : 30))).slice(0, 3);
  return {
    value: rational(n, d),
    texts: [`${top}/${bottom}`, ...times.map((k) => `${top * k}/${bottom * k}`)],
  };
}

function tenths(rng: Rng, locale: Locale): Forms {
  const d = rng.pick([10, 10, 2, 5, 4]);
  const n = rng.int(1, d - 1);
  const value = rational(n, d);
  return { value, texts: [`${value.n}/${value.d}`, formatDecimal(value, locale), hundredths(value)] };
}

function hundredths(value: Rational): string {
  const whole = multiply(value, rational(100));
  return `${whole.n}/100`;
}

function percentage(rng: Rng, locale: Locale): Forms {
  const d = rng.pick([2, 4, 5, 10, 20, 25, 50]);
  const value = rational(rng.int(1, d - 1), d);
  const percent = multiply(value, rational(100));
  return {
    value,
    texts: [`${value.n}/${value.d}`, formatDecimal(value, locale), `${percent.n}%`],
  };
}

function mixedNumber(rng: Rng, locale: Locale): Forms {
  const d = rng.pick([2, 3, 4, 5, 8]);
  const value = rational(d * rng.int(1, 4) + rng.int(1, d - 1), d);
  const texts = [`${value.n}/${value.d}`, formatMixed(value)];
  return { value, texts: decimalPlaces(value) === null ? texts : [...texts, formatDecimal(value, locale)] };
}

/** The makers of a year; longer texts only where cells are wide enough. */
function makersOf(year: number, columns: number): readonly FormMaker[] {
  const makers: FormMaker[] = [words];
  if (year >= 1 && columns <= 8) makers.push(clock);
  if (year >= 2) makers.push(money);
  if (year >= 3) makers.push(equalFractions);
  if (year >= 4) makers.push(tenths, mixedNumber);
  if (year >= 4 && columns <= 8) makers.push(duration);
  if (year >= 5) makers.push(percentage, percentage, percentage);
  return makers;
}

const ATTEMPTS = 30;

/** Forms of one value with = between them (2 forms in 3 cells, 3 in 5, 4 in 7), or words and a sum of parts. */
export function equivalentOf(
  length: number,
  year: number,
  columns: number,
  { rng, locale }: RowContext,
): JigsawCell[] | null {
  const forms = (length + 1) / 2;
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const made = rng.pick(makersOf(year, columns))(rng, locale, year);
    const texts = [...new Set(made.texts)];
    if (texts.length >= forms) {
      return rng
        .shuffle(texts)
        .slice(0, forms)
        .flatMap((text, i) => {
          const cell = numberCell(text, made.value);
          return i === 0 ? [cell] : [signCell('=='), cell];
        });
    }
    const { value } = made;
    if (made.texts[0] === String(value.n) && value.d === 1 && length >= 5) {
      const parts = partsOf(value.n, forms - 1, rng);
      if (parts === null) continue;
      const whole = numberCell(wholeToWords(value.n, locale), value);
      const sum = parts.flatMap((part, i) => {
        const cell = numberCell(formatWhole(part, locale), rational(part));
        return i === 0 ? [cell] : [signCell('+'), cell];
      });
      return rng.chance(0.5) ? [whole, signCell('=='), ...sum] : [...sum, signCell('=='), whole];
    }
  }
  return null;
}

/** A number as tens and ones, or as so many different parts. */
function partsOf(value: number, count: number, rng: Rng): number[] | null {
  const tens = value - (value % 10);
  if (count === 2 && tens > 0 && tens < value && rng.chance(0.7)) return rng.shuffle([tens, value - tens]);
  const parts: number[] = [];
  let rest = value;
  for (let i = 1; i < count; i++) {
    const part = rng.int(1, Math.max(1, Math.floor((2 * rest) / (count - i + 1)) - 1));
    parts.push(part);
    rest -= part;
  }
  parts.push(rest);
  return rest < 1 || new Set(parts).size < count ? null : rng.shuffle(parts);
}
