// When two answers printed on loose pieces could be taken for one another. Pieces are found by their answers, so this is
// stricter than marking: whatever a child might read as the same thing counts as the same.
import type { Locale } from '../numbers/locale.js';
import { type Rational, rational } from '../numbers/rational.js';
import { parseNumberWords } from '../numbers/words.js';
import { readClock, readQuantity } from '../questions/parse-answer.js';
import { foldText } from '../questions/equivalence.js';

/** What of an answer or a slip counts here. */
export interface PrintedAnswer {
  readonly text: string;
  readonly value: string | null;
}

const PLAIN_DIGITS = /^\d{1,9}$/;
const CLOCK = /\d:\d|o'clock|\b(?:past|to|am|pm|noon|midnight)\b/;
const ONE = rational(1);
const HUNDREDTH = rational(1, 100);

/**
 * The marks of an answer: two answers are taken for one another when they share a mark. Marks are its bare number, its
 * size in base units (1 m and 100 cm, $0.85 and 85c, 1 h and 60 min), its place on a 12-hour dial, a percentage both as
 * 25 and as 1/4, and its words without case, article or hyphen.
 */
export function answerMarks(answer: PrintedAnswer, locale: Locale): readonly string[] {
  if (answer.value === answer.text && PLAIN_DIGITS.test(answer.text)) return [`v${answer.text}`];
  const text = foldText(answer.text);
  const marks = new Set<string>();
  if (answer.value !== null) marks.add(`v${answer.value}`);
  const isClock = CLOCK.test(text);
  const clock = isClock ? readClock(text) : null;
  if (clock) marks.add(`c${clock.minutes % 720}`);
  const quantity = isClock ? null : readQuantity(text, locale);
  if (quantity) {
    marks.add(`v${product(quantity.value, ONE)}`);
    if (quantity.unit?.quantity === 'percent') marks.add(`v${product(quantity.value, HUNDREDTH)}`);
    else if (quantity.unit)
      marks.add(`${quantity.unit.quantity}:${product(quantity.value, quantity.unit.size)}`);
  } else {
    const number = isClock ? null : (parseNumberWords(text) ?? parseNumberWords(text.replaceAll('-', ' ')));
    if (number) marks.add(`v${product(number, ONE)}`);
  }
  if (marks.size === 0 || /[a-z]/.test(text)) marks.add(`t${plainWords(text)}`);
  return [...marks];
}

/** a x b in lowest terms, as values are written; in big integers, since km² in mm² leave the safe ones. */
function product(a: Rational, b: Rational): string {
  const n = BigInt(a.n) * BigInt(b.n);
  const d = BigInt(a.d) * BigInt(b.d);
  let [x, y] = [n < 0n ? -n : n, d];
  while (y !== 0n) [x, y] = [y, x % y];
  return d === x ? String(n / x) : `${n / x}/${d / x}`;
}

function plainWords(text: string): string {
  return text
    .replace(/^(?:an?|the) (?=.)/, '')
    .replaceAll('-', ' ')
    .replace(/[,;]/g, ' ')
    .replace(/[.!]$/, '')
    .replace(/\b(\w*)(met|lit)er(s?)\b/g, '$1$2re$3')
    .replace(/\bcolor/g, 'colour')
    .replace(/\bgray\b/g, 'grey')
    .replace(/\s+/g, ' ');
}

/** True when the two lists of marks have one in common. */
export function shareMark(a: readonly string[], b: readonly string[]): boolean {
  return a.some((mark) => b.includes(mark));
}
