// Typed text -> what it means: an exact number, a quantity with its unit, a time of day. Every function takes text that
// foldText has prepared, returns null for text it cannot read, and never throws, whatever was typed.
import type { Locale } from '../numbers/locale.js';
import { add, divide, multiply, negate, type Rational, rational } from '../numbers/rational.js';
import { type ClockReading, parseClockWords, readDial, splitDayHalf } from '../numbers/time-words.js';
import { type Unit, unitNamed } from '../numbers/units.js';
import { parseNumberWords } from '../numbers/words.js';

/** A number as typed and what followed it: a known unit, some other words, or nothing. */
export interface Quantity {
  readonly value: Rational;
  readonly unit: Unit | null;
  /** Words after the number that name no unit ("apples"); empty when there are none. */
  readonly noun: string;
}

const SIGN = String.raw`(?<sign>[-+] ?)?`;
// Groups of three digits after a comma or a space, all alike; or plain digits.
const WHOLE = String.raw`\d{1,3}(?:,\d{3}){1,3}|\d{1,3}(?: \d{3}){1,3}|\d{1,12}`;
const NUMBER_FORMS: readonly {
  readonly pattern: RegExp;
  readonly read: (groups: Groups) => Rational | null;
}[] = [
  {
    // "3/4", "1 3/4", "1 and 3/4"
    pattern: new RegExp(
      String.raw`^${SIGN}(?:(?<whole>\d{1,6})(?: and | ))?(?<n>\d{1,6}) ?/ ?(?<d>\d{1,6})(?![\d/.])`,
    ),
    read: ({ whole = '0', n = '0', d = '1' }) =>
      Number(d) === 0 ? null : add(rational(Number(whole)), rational(Number(n), Number(d))),
  },
  {
    // "3.6", ".5", "12,500.75"
    pattern: new RegExp(String.raw`^${SIGN}(?<whole>${WHOLE})?\.(?<places>\d{1,6})(?![\d/.,])`),
    read: ({ whole = '0', places = '' }) => {
      const digits = whole.replace(/\D/g, '') + places;
      return digits.length > 15 ? null : rational(Number(digits), 10 ** places.length);
    },
  },
  {
    // "47", "12 500", "12,500"
    pattern: new RegExp(String.raw`^${SIGN}(?<whole>${WHOLE})(?![\d/]|[.,]\d)`),
    read: ({ whole = '' }) => rational(Number(whole.replace(/\D/g, ''))),
  },
];

type Groups = Readonly<Record<string, string | undefined>>;

interface Front {
  readonly value: Rational;
  readonly rest: string;
}

/** Reads the longest number at the front of the text; `rest` is what follows it. */
function readFront(text: string): Front | null {
  for (const { pattern, read } of NUMBER_FORMS) {
    const match = pattern.exec(text);
    const size = match ? read(match.groups ?? {}) : null;
    if (!match || size === null) continue;
    const value = match.groups?.['sign']?.startsWith('-') ? negate(size) : size;
    return { value, rest: text.slice(match[0].length).trim() };
  }
  return null;
}

/** The exact number that digits or words name, with nothing after it: "12 500", ".5", "1 3/4", "forty-seven". */
export function readNumber(text: string): Rational | null {
  const front = readFront(text);
  if (front) return front.rest === '' ? front.value : null;
  return parseNumberWords(text);
}

function moneyUnits(locale: Locale): { readonly main: Unit; readonly minor: Unit } {
  return {
    main: { symbol: locale.currency.symbol, quantity: 'money', size: rational(100) },
    minor: { symbol: locale.currency.minorSymbol, quantity: 'money', size: rational(1) },
  };
}

function unitOf(name: string, locale: Locale): Unit | null {
  const { minorSymbol, mainName, minorName } = locale.currency;
  if (mainName.includes(name)) return moneyUnits(locale).main;
  if (name === minorSymbol || minorName.includes(name)) return moneyUnits(locale).minor;
  // A US keyboard has no cent sign.
  if (name === 'c' && minorSymbol === '¢') return moneyUnits(locale).minor;
  return unitNamed(name);
}

/**
 * A number with its unit: "47 cm", "$4.85", "485c", "25%", "twenty minutes", "12 apples", a bare "47", or whole parts in
 * falling units: "1 h 25 min", "4 dollars 85 cents", "1h25". The value of several parts is in the last unit.
 */
export function readQuantity(text: string, locale: Locale): Quantity | null {
  const { symbol } = locale.currency;
  const money = /^(?<sign>- ?)?(?<symbol>[$£€]) ?(?<amount>[\d.].*)$/.exec(text)?.groups;
  if (money) {
    const front = money['symbol'] === symbol ? readFront(money['amount'] ?? '') : null;
    if (!front || front.rest !== '') return null;
    return {
      value: money['sign'] ? negate(front.value) : front.value,
      unit: moneyUnits(locale).main,
      noun: '',
    };
  }
  const plain = text
    .replace(/^(\d{1,6}) and a half\b/, '$1 1/2')
    .replace(/^an? ([a-z]+) and a half$/, '1 1/2 $1s');
  const front = readFront(plain);
  if (!front) return readWordQuantity(plain, locale);
  return readSimple(front, locale) ?? readParts(front, locale);
}

function readSimple({ value, rest }: Front, locale: Locale): Quantity | null {
  if (rest === '') return { value, unit: null, noun: '' };
  const name = rest.replace(/^(?:of )?an? /, '').replace(/\.$/, '');
  const unit = unitOf(rest, locale) ?? unitOf(name, locale);
  if (unit) return { value, unit, noun: '' };
  return /^[a-z][a-z' -]*$/.test(rest) ? { value, unit: null, noun: rest } : null;
}

/** "twenty minutes", "half an hour", "forty-seven": number words, then perhaps a unit of one or two words. */
function readWordQuantity(text: string, locale: Locale): Quantity | null {
  const bare = parseNumberWords(text);
  if (bare) return { value: bare, unit: null, noun: '' };
  const words = text.split(' ');
  for (const length of [1, 2]) {
    const unit = unitOf(words.slice(-length).join(' '), locale);
    const count = words
      .slice(0, -length)
      .join(' ')
      .replace(/ (?:of )?an?$/, '');
    const value = count === 'a' || count === 'an' ? rational(1) : parseNumberWords(count);
    if (unit && value) return { value, unit, noun: '' };
  }
  return null;
}

const NEXT_UNIT: Readonly<Record<string, string>> = { h: 'min', min: 's', $: 'cents', '£': 'pence' };
/** Beyond these sizes the sum of parts could leave the exact integers; no classroom quantity comes near. */
const LARGEST_PART = 1_000_000;

function readParts(first: Front, locale: Locale): Quantity | null {
  const parts: { value: Rational; unit: Unit }[] = [];
  for (let front: Front | null = first; front !== null; ) {
    const match: RegExpExecArray | null = /^([a-z¢]+)\.?,?(?: and)? ?/.exec(front.rest);
    const previous = parts.at(-1)?.unit;
    // "1 h 25" leaves out the unit that is understood.
    const name: string = match?.[1] ?? NEXT_UNIT[previous?.symbol ?? ''] ?? '';
    const unit = unitOf(name, locale);
    if (!unit || Math.abs(front.value.n) > LARGEST_PART || front.value.n < 0) return null;
    if (
      previous &&
      (previous.quantity !== unit.quantity || previous.size.n * unit.size.d <= unit.size.n * previous.size.d)
    )
      return null;
    parts.push({ value: front.value, unit });
    const rest: string = front.rest.slice(match?.[0].length ?? 0);
    if (rest === '') break;
    front = readFront(rest);
    if (front === null) return null;
  }
  const last = parts.at(-1);
  if (!last || parts.length < 2 || parts.length > 3 || parts.slice(0, -1).some(({ value }) => value.d !== 1))
    return null;
  if (last.value.d > 1000) return null;
  const total = parts.reduce(
    (sum, { value, unit }) => add(sum, multiply(value, divide(unit.size, last.unit.size))),
    rational(0),
  );
  return { value: total, unit: last.unit, noun: '' };
}

/**
 * A time of day: "7:45", "7.45", "7 45", "19:45", "1945", "7:45 pm", "7 pm", "quarter to 8", "noon". The half of the
 * day is known from "am" or "pm", from an hour above 12, and from a leading 0 ("07:45").
 */
export function readClock(text: string): ClockReading | null {
  const { rest, half } = splitDayHalf(text);
  const match =
    /^(\d{1,2})(?: ?: ?|[. h])(\d{2})$/.exec(rest) ?? /^(\d{2})(\d{2})(?: ?h(?:ou)?rs?)?$/.exec(rest);
  if (!match) return parseClockWords(text) ?? (/^\d{1,2}$/.test(rest) ? readHour(Number(rest), half) : null);
  const [hour, minute] = [Number(match[1]), Number(match[2])];
  if (hour > 23 || minute > 59) return null;
  if (hour === 0 || hour > 12 || match[1]?.startsWith('0')) {
    // "07:45 pm" is a dial time written with a 0; "19:45 am" is no time at all.
    if (half === null) return { minutes: hour * 60 + minute, halfKnown: true };
    if (hour > 12) return half === 'pm' ? { minutes: hour * 60 + minute, halfKnown: true } : null;
  }
  return readDial(hour, minute, half);
}

function readHour(hour: number, half: 'am' | 'pm' | null): ClockReading | null {
  return hour >= 1 && hour <= 12 ? readDial(hour, 0, half) : null;
}

/** The ways in which a typed list can be cut into its items, the most careful first; the items are trimmed. */
export function readListWays(text: string): string[][] {
  const cuts = [/ ?; ?/, /, (?:and )?/, / ?, ?/, / and | ?, ?/, /(?: and |[ ,;])+/];
  return cuts.map((cut) => text.split(cut).map((item) => item.trim()));
}
