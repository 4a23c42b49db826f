// Equal in two or three forms: words and numeral, clock face and digital time, fraction, decimal and percentage, a picture
// and its number.
import {
  formatClock,
  formatDecimal,
  formatDuration,
  formatMixed,
  formatMoney,
  formatWhole,
} from '../../../numbers/format.js';
import { decimalPlaces, gcd, multiply, rational } from '../../../numbers/rational.js';
import { clockToWords } from '../../../numbers/time-words.js';
import { wholeToWords } from '../../../numbers/words.js';
import type { Rng } from '../../../random/rng.js';
import { numberCell, pictureCell, signCell } from '../cells.js';
import type { JigsawCell } from '../jigsaw.js';
import { reachOf, type RowContext } from './band.js';

interface Made {
  readonly year: number;
  readonly rng: Rng;
  readonly locale: RowContext['locale'];
}

/** Cells that all show one value, in different forms. */
type FormMaker = (made: Made) => readonly JigsawCell[];

const words: FormMaker = ({ rng, locale, year }) => {
  const count = rng.int(year === 0 ? 1 : 6, year <= 2 ? reachOf(year).largest : 99);
  const value = rational(count);
  return [numberCell(String(count), value), numberCell(wholeToWords(count, locale), value)];
};

const clock: FormMaker = ({ rng, locale, year }) => {
  const grain = year <= 1 ? 30 : year <= 2 ? 15 : 5;
  const minutes = 60 * rng.int(1, 12) + grain * rng.int(0, 60 / grain - 1);
  const value = rational(minutes % 720);
  const digital = formatClock(minutes);
  return [
    numberCell(digital, value),
    pictureCell(`clock face ${digital}`, value, { kind: 'clock', minutes: minutes % 720 }),
    numberCell(clockToWords(minutes, locale), value),
  ];
};

const tenFrame: FormMaker = ({ rng, locale }) => {
  const filled = rng.int(2, 9);
  const value = rational(filled);
  return [
    pictureCell(`ten-frame ${filled}`, value, { kind: 'ten-frame', filled }),
    numberCell(String(filled), value),
    numberCell(wholeToWords(filled, locale), value),
  ];
};

const tally: FormMaker = ({ rng, locale, year }) => {
  const count = rng.int(3, year === 0 ? 10 : 14);
  const value = rational(count);
  return [
    pictureCell(`tally ${count}`, value, { kind: 'tally', rows: [{ label: '', count }] }),
    numberCell(String(count), value),
    numberCell(wholeToWords(count, locale), value),
  ];
};

const blocks: FormMaker = ({ rng, locale }) => {
  const [tens, ones] = [rng.int(1, 4), rng.int(1, 9)];
  const count = 10 * tens + ones;
  const value = rational(count);
  return [
    pictureCell(`blocks ${count}`, value, { kind: 'base-ten', hundreds: 0, tens, ones }),
    numberCell(String(count), value),
    numberCell(wholeToWords(count, locale), value),
  ];
};

const shaded: FormMaker = ({ rng, year }) => {
  const parts = rng.pick(year <= 2 ? [2, 4] : [3, 4, 5, 6, 8]);
  const count = rng.int(1, parts - 1);
  const value = rational(count, parts);
  const name = `${count}/${parts}`;
  const cells = [
    pictureCell(`circle ${name}`, value, { kind: 'fraction-circle', parts, shaded: count }),
    numberCell(name, value),
  ];
  return value.d === parts ? cells : [...cells, numberCell(`${value.n}/${value.d}`, value)];
};

const duration: FormMaker = ({ rng }) => {
  const minutes = 60 * rng.int(1, 3) + 5 * rng.int(1, 11);
  const value = rational(minutes);
  return [numberCell(`${minutes}\u00a0min`, value), numberCell(formatDuration(minutes), value)];
};

const money: FormMaker = ({ rng, locale, year }) => {
  const minor = 100 * rng.int(1, year <= 2 ? 3 : 9) + 5 * rng.int(1, 19);
  const value = rational(minor, 100);
  return [
    numberCell(formatMoney(value, locale), value),
    numberCell(`${minor}${locale.currency.minorSymbol}`, value),
  ];
};

const equalFractions: FormMaker = ({ rng, year }) => {
  const d = rng.pick(year <= 3 ? [2, 3, 4, 5] : [2, 3, 4, 5, 6, 8]);
  const n = rng.int(1, d - 1);
  const g = gcd(n, d);
  const [top, bottom] = [n / g, d / g];
  const value = rational(n, d);
  const times = rng.shuffle([2, 3, 4, 5].filter((k) => bottom * k <= (year <= 3 ? 12 : 30))).slice(0, 3);
  return [1, ...times].map((k) => numberCell(`${top * k}/${bottom * k}`, value));
};

/** A fraction, its decimal, and the same in tenths, or in hundredths where tenths do not do. */
const tenths: FormMaker = ({ rng, locale }) => {
  const d = rng.pick([2, 5, 5, 4, 20]);
  const value = rational(rng.int(1, d - 1), d);
  const whole = 10 % value.d === 0 ? 10 : 100;
  return [
    numberCell(`${value.n}/${value.d}`, value),
    numberCell(formatDecimal(value, locale), value),
    numberCell(`${(value.n * whole) / value.d}/${whole}`, value),
  ];
};

const percentage: FormMaker = ({ rng, locale }) => {
  const d = rng.pick([2, 4, 5, 10, 20, 25, 50]);
  const value = rational(rng.int(1, d - 1), d);
  return [
    numberCell(`${value.n}/${value.d}`, value),
    numberCell(formatDecimal(value, locale), value),
    numberCell(`${multiply(value, rational(100)).n}%`, value),
  ];
};

const mixedNumber: FormMaker = ({ rng, locale }) => {
  const d = rng.pick([2, 3, 4, 5, 8]);
  const value = rational(d * rng.int(1, 4) + rng.int(1, d - 1), d);
  const cells = [numberCell(`${value.n}/${value.d}`, value), numberCell(formatMixed(value, locale), value)];
  return decimalPlaces(value) === null ? cells : [...cells, numberCell(formatDecimal(value, locale), value)];
};

/** Columns up to which a cell is wide enough for a picture or for long words. */
const ROOMY = 8;

/** The makers of a year; pictures and long words only where cells are wide enough. */
function makersOf(year: number, columns: number): readonly FormMaker[] {
  const makers: FormMaker[] = [words];
  const isRoomy = columns <= ROOMY;
  if (isRoomy && year <= 1) makers.push(tenFrame, tally);
  if (isRoomy && year >= 1 && year <= 2) makers.push(blocks);
  if (isRoomy && year >= 1 && year <= 4) makers.push(clock, clock);
  if (isRoomy && year >= 2 && year <= 4) makers.push(shaded);
  if (year >= 2) makers.push(money);
  if (year >= 3) makers.push(equalFractions);
  if (year >= 4) makers.push(tenths, mixedNumber);
  if (year >= 4 && isRoomy) makers.push(duration);
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
    const maker = rng.pick(makersOf(year, columns));
    const made = [...new Map(maker({ year, rng, locale }).map((cell) => [cell.text, cell])).values()];
    if (made.length >= forms) {
      const [first, ...others] = made as [JigsawCell, ...JigsawCell[]];
      // Two fractions of which neither is in lowest terms say little.
      const pool = maker === equalFractions ? others : made;
      const kept = maker === equalFractions ? [first] : [];
      const chosen = rng.shuffle([...kept, ...rng.shuffle(pool).slice(0, forms - kept.length)]);
      return chosen.flatMap((cell, i) => (i === 0 ? [cell] : [signCell('=='), cell]));
    }
    if (maker === words && length >= 5) {
      const [numeral, word] = made as [JigsawCell, JigsawCell];
      const parts = partsOf(Number(numeral.expression), forms - 1, rng);
      if (parts === null) continue;
      const sum = parts.flatMap((part, i) => {
        const cell = numberCell(formatWhole(part, locale), rational(part));
        return i === 0 ? [cell] : [signCell('+'), cell];
      });
      return rng.chance(0.5) ? [word, signCell('=='), ...sum] : [...sum, signCell('=='), word];
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
