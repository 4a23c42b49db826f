// Numbers as words, both ways: what a number question says aloud, and what a child may type for an answer.
// Rules (hyphen from 21 to 99, "and" before the last two digits in Australia and Britain, none in the US) follow the
// spelled-out numbers of ICU (locale en_AU, "spellout-cardinal-verbose"), without its commas.
import type { Locale } from './locale.js';
import { add, decimalPlaces, negate, type Rational, rational } from './rational.js';

/** Largest size of a whole number that has words here. */
const LARGEST_IN_WORDS = 999_999_999;

const SMALL: readonly string[] = (
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen ' +
  'seventeen eighteen nineteen'
).split(' ');
const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'] as const;
const GROUPS = [
  { size: 1_000_000, word: 'million' },
  { size: 1000, word: 'thousand' },
] as const;

/** Cardinal word -> ordinal word, where it is not just "th" (or "y" -> "ieth") added. */
const IRREGULAR_ORDINALS: Readonly<Record<string, string>> = {
  one: 'first',
  two: 'second',
  three: 'third',
  five: 'fifth',
  eight: 'eighth',
  nine: 'ninth',
  twelve: 'twelfth',
};

function belowHundred(value: number): string {
  if (value < 20) return SMALL[value] as string;
  const tens = TENS[Math.floor(value / 10) - 2] as string;
  return value % 10 === 0 ? tens : `${tens}-${SMALL[value % 10]}`;
}

function belowThousand(value: number, locale: Locale): string {
  const rest = value % 100;
  if (value < 100) return belowHundred(value);
  const hundreds = `${SMALL[Math.floor(value / 100)]} hundred`;
  if (rest === 0) return hundreds;
  return `${hundreds} ${locale.andInWords ? 'and ' : ''}${belowHundred(rest)}`;
}

/**
 * "one hundred and five" (US: "one hundred five"), "minus three" (US: "negative three"): a whole number in words,
 * without commas. Throws RangeError beyond ±999 999 999.
 */
export function wholeToWords(value: number, locale: Locale): string {
  if (!Number.isInteger(value) || Math.abs(value) > LARGEST_IN_WORDS)
    throw new RangeError(`${value} has no words`);
  if (value < 0) return `${negativeWord(locale)} ${wholeToWords(-value, locale)}`;
  const parts: string[] = [];
  let rest = value;
  for (const { size, word } of GROUPS) {
    if (rest >= size) parts.push(`${belowThousand(Math.floor(rest / size), locale)} ${word}`);
    rest %= size;
  }
  if (rest > 0 || parts.length === 0) {
    if (parts.length > 0 && rest < 100 && locale.andInWords) parts.push('and');
    parts.push(belowThousand(rest, locale));
  }
  return parts.join(' ');
}

function negativeWord(locale: Locale): string {
  return locale.id === 'en-US' ? 'negative' : 'minus';
}

/**
 * "three point six", "zero point zero five": a terminating decimal read digit by digit after the point, with at least
 * `places` digits. Throws RangeError when the value does not terminate or is beyond the words.
 */
export function decimalToWords(value: Rational, locale: Locale, places = 0): string {
  const needed = decimalPlaces(value);
  if (needed === null) throw new RangeError(`${value.n}/${value.d} has no finite decimal`);
  if (value.n < 0) return `${negativeWord(locale)} ${decimalToWords(negate(value), locale, places)}`;
  const whole = Math.floor(value.n / value.d);
  const digits: string[] = [];
  for (let rest = value.n % value.d, i = 0; i < Math.max(needed, places); i++) {
    digits.push(SMALL[Math.floor((rest * 10) / value.d)] as string);
    rest = (rest * 10) % value.d;
  }
  const words = wholeToWords(whole, locale);
  return digits.length === 0 ? words : `${words} point ${digits.join(' ')}`;
}

/** "twenty-first", "one hundred and first": a whole number from 0 as a place in order, in words. */
export function ordinalToWords(value: number, locale: Locale): string {
  if (value < 0) throw new RangeError(`${value} has no ordinal`);
  return wholeToWords(value, locale).replace(/[a-z]+$/, ordinalOfWord);
}

function ordinalOfWord(word: string): string {
  return IRREGULAR_ORDINALS[word] ?? (word.endsWith('y') ? `${word.slice(0, -1)}ieth` : `${word}th`);
}

/** "1st", "22nd", "13th": a whole number from 0 as a place in order, in digits (no grouping). */
export function ordinalToText(value: number): string {
  const tens = value % 100;
  const suffixes = ['th', 'st', 'nd', 'rd'];
  return `${value}${tens >= 11 && tens <= 13 ? 'th' : (suffixes[value % 10] ?? 'th')}`;
}

/**
 * The name of one or several equal parts: (2, 1) "half", (4, 3) "quarters" (US: "fourths"), (100, 1) "hundredth".
 * `parts` is a whole number from 2; `count` only decides between one and many.
 */
export function partName(parts: number, count: number, locale: Locale): string {
  if (parts === 2) return count === 1 ? 'half' : 'halves';
  const name =
    parts === 4 && locale.id !== 'en-US'
      ? 'quarter'
      : ordinalToWords(parts, locale).replace(/^one (?=[a-z]+th$)/, '');
  return count === 1 ? name : `${name}s`;
}

/** "three quarters" (US: "three fourths"), "six eighths": n parts of d, not reduced. n from 0, d from 2. */
export function fractionToWords(n: number, d: number, locale: Locale): string {
  return `${wholeToWords(n, locale)} ${partName(d, n, locale)}`;
}

/** "one and three quarters", "three quarters", "two": a value from 0 as whole and proper fraction, in words. */
export function mixedToWords(value: Rational, locale: Locale): string {
  const whole = Math.floor(value.n / value.d);
  const rest = value.n % value.d;
  if (rest === 0) return wholeToWords(whole, locale);
  const fraction = fractionToWords(rest, value.d, locale);
  return whole === 0 ? fraction : `${wholeToWords(whole, locale)} and ${fraction}`;
}

const VALUE_OF_WORD: ReadonlyMap<string, number> = new Map([
  ...SMALL.map((word, value) => [word, value] as const),
  ...TENS.map((word, index) => [word, (index + 2) * 10] as const),
  ['nought', 0],
  ['oh', 0],
]);

const CARDINAL_OF_ORDINAL: ReadonlyMap<string, string> = new Map(
  [...SMALL, ...TENS, 'hundred', 'thousand', 'million'].map((word) => [ordinalOfWord(word), word]),
);

function tokensOf(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/[,\s\u2010\u2011-]+/g, ' ')
    .trim()
    .split(' ');
}

/** Reads a cardinal below 1000 from the front of `tokens`, removing what it read; null when there is none. */
function takeBelowThousand(tokens: string[]): number | null {
  const first = takeBelowHundred(tokens);
  if (first === null || first > 9 || first === 0 || tokens[0] !== 'hundred') return first;
  const afterHundred = tokens.splice(0).slice(1);
  const afterAnd = afterHundred[0] === 'and' ? afterHundred.slice(1) : [...afterHundred];
  const rest = takeBelowHundred(afterAnd) ?? 0;
  tokens.push(...(rest === 0 ? afterHundred : afterAnd));
  return first * 100 + rest;
}

function takeBelowHundred(tokens: string[]): number | null {
  const isArticle = tokens[0] === 'a' && ['hundred', 'thousand', 'million'].includes(tokens[1] ?? '');
  const first = isArticle ? 1 : VALUE_OF_WORD.get(tokens[0] ?? '');
  if (first === undefined) return null;
  tokens.shift();
  const ones = VALUE_OF_WORD.get(tokens[0] ?? '');
  if (first < 20 || ones === undefined || ones < 1 || ones > 9) return first;
  tokens.shift();
  return first + ones;
}

function wholeOfTokens(tokens: readonly string[]): number | null {
  const left = [...tokens];
  let sum = 0;
  let limit = Number.POSITIVE_INFINITY;
  while (left.length > 0) {
    // Inside a number "and" only joins a last part below one hundred.
    const joined = sum > 0 && left[0] === 'and';
    if (joined) left.shift();
    const part = takeBelowThousand(left);
    if (part === null) return null;
    const group = GROUPS.find(({ word }) => word === left[0]);
    if (group) left.shift();
    const size = group?.size ?? 1;
    if (size >= limit || (joined && (size > 1 || part > 99)) || (part === 0 && (sum > 0 || size > 1)))
      return null;
    sum += part * size;
    limit = size;
  }
  return limit === Number.POSITIVE_INFINITY ? null : sum;
}

/** The whole number from 0 that the words name ("forty-seven", "a hundred and five", "one hundred five"); null otherwise. */
export function parseWholeWords(text: string): number | null {
  return wholeOfTokens(tokensOf(text));
}

/** The place in order that the words name: "twenty-first" is 21; null for anything else. */
export function parseOrdinalWords(text: string): number | null {
  const tokens = tokensOf(text);
  const cardinal = CARDINAL_OF_ORDINAL.get(tokens.at(-1) ?? '');
  if (cardinal === undefined) return null;
  const before = tokens.slice(0, -1);
  // "hundredth" stands for "one hundredth".
  if (before.length === 0 && ['hundred', 'thousand', 'million'].includes(cardinal)) before.push('one');
  return wholeOfTokens([...before, cardinal]);
}

function parsePartName(word: string): number | null {
  if (word === 'half' || word === 'halves') return 2;
  if (word === 'quarter' || word === 'quarters') return 4;
  const parts = parseOrdinalWords(word) ?? (word.endsWith('s') ? parseOrdinalWords(word.slice(0, -1)) : null);
  return parts !== null && parts >= 3 ? parts : null;
}

/** "three quarters", "a half", "half": the fraction named, whose last word is its part name. */
function parseFractionWords(text: string): Rational | null {
  const cut = text.lastIndexOf(' ');
  const parts = parsePartName(text.slice(cut + 1));
  if (parts === null) return null;
  const count = text.slice(0, Math.max(cut, 0)).trim();
  if (count === '') return parts === 2 || parts === 4 ? rational(1, parts) : null;
  const n = count === 'a' || count === 'an' ? 1 : parseWholeWords(count);
  return n === null ? null : rational(n, parts);
}

/**
 * The exact number that words name: whole ("forty-seven"), negative ("minus three", "negative three"), decimal
 * ("three point six"), fraction ("three quarters", "three fourths") or mixed ("one and three quarters").
 * Null when the text is anything else. Part names of more than one word need their hyphen: "two twenty-firsts".
 */
export function parseNumberWords(text: string): Rational | null {
  const plain = text.toLowerCase().replace(/\s+/g, ' ').trim();
  const sign = /^(?:minus|negative) (.+)$/.exec(plain);
  if (sign) {
    const size = parseUnsigned(sign[1] as string);
    return size === null ? null : negate(size);
  }
  return parseUnsigned(plain);
}

function parseUnsigned(text: string): Rational | null {
  const whole = parseWholeWords(text);
  if (whole !== null) return rational(whole);
  return parseDecimalWords(text) ?? parseMixedWords(text) ?? parseFractionWords(text);
}

function parseDecimalWords(text: string): Rational | null {
  const match = /^(?:(.+) )?point ([a-z ]+)$/.exec(text);
  if (!match) return null;
  const whole = match[1] === undefined ? 0 : parseWholeWords(match[1]);
  const digits = (match[2] as string).split(' ').map((word) => VALUE_OF_WORD.get(word));
  if (whole === null || digits.length > 6 || digits.some((digit) => digit === undefined || digit > 9))
    return null;
  return add(rational(whole), rational(Number(digits.join('')), 10 ** digits.length));
}

function parseMixedWords(text: string): Rational | null {
  const cut = text.lastIndexOf(' and ');
  if (cut < 0) return null;
  const whole = parseWholeWords(text.slice(0, cut));
  const fraction = parseFractionWords(text.slice(cut + 5));
  if (whole === null || fraction === null || fraction.n >= fraction.d) return null;
  return add(rational(whole), fraction);
}
