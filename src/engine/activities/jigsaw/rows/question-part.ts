// A question of the skill map as a true sentence on cells: 47 + 38 = 85, or two forms of one value.
import type { FigureSpec } from '../../../figures/figure.js';
import {
  formatDecimal,
  formatFraction,
  formatMixed,
  formatMoney,
  formatWhole,
} from '../../../numbers/format.js';
import type { Locale } from '../../../numbers/locale.js';
import {
  compare,
  decimalPlaces,
  equals,
  parseValue,
  type Rational,
  rational,
  ZERO,
} from '../../../numbers/rational.js';
import { parseRoman } from '../../../numbers/roman.js';
import { parseNumberWords } from '../../../numbers/words.js';
import type { Question } from '../../../questions/question.js';
import { numberCell, type Operation, pictureCell, signCell } from '../cells.js';
import type { JigsawCell } from '../jigsaw.js';
import { isRowPlainlyTrue } from '../row-truth.js';
import { valueOf } from '../token.js';

/** What a question says is equal: a calculation and its result, or two forms of a value. */
export interface QuestionPart {
  readonly left: readonly JigsawCell[];
  /** Between left and right; anything but = stands between two plain numbers. */
  readonly sign: '==' | '>';
  readonly right: JigsawCell;
  readonly value: Rational;
}

const FLAT = /^\(?[\d./]+\)?(?: [-+*/] \(?[\d./]+\)?)*$/;
const NUMBER = /^\(?(\d+)\/(\d+)\)?$|^(\d+)(?:\.(\d+))?$/;
const COMPARED = /^(?:max|min)\(([^,]+), ([^,]+)\)$/;
/** A number as a text writes it, with its money sign or percent. */
const WRITTEN = /[$£€]?\d[\d.\u00a0]*(?:\/\d+)?(?:[c¢p](?![a-z])|%)?/g;
/** Results that are a plain number as written: no units, no times. */
const PLAIN_RESULT = /^[$£€]?[\d.,\u00a0 /]+[c¢p%]?$/;
const LONGEST = 9;

/** The part, or null when the question has no sentence of numbers in it, or one with nothing to work out. */
export function questionPart(question: Question, locale: Locale): QuestionPart | null {
  const part =
    twoForms(question, locale) ??
    rewritten(question, locale) ??
    compared(question, locale) ??
    calculation(question, locale);
  if (part === null) return null;
  const cells = [...part.left, signCell(part.sign), part.right];
  const isWorthLaying = cells.length <= LONGEST && !isIdle(part) && isRowPlainlyTrue(cells, 'sentences');
  return isWorthLaying ? part : null;
}

/** Words, Roman numerals, a clock or another picture beside the number it stands for. */
function twoForms({ figure, answer, text }: Question, locale: Locale): QuestionPart | null {
  if (answer.kind === 'word') {
    const value = parseNumberWords(answer.text) ?? romanValue(answer.text);
    if (value === null || value.d !== 1) return null;
    const numeral = formatWhole(value.n, locale);
    return text.includes(numeral) ? equalForms(numberCell(numeral, value), answer.text, value) : null;
  }
  const value = answer.value === null ? null : parseValue(answer.value);
  const name = figure === null || value === null ? null : pictureName(figure, value, answer.text);
  if (name === null || figure === null || value === null) return null;
  return equalForms(pictureCell(name, value, figure), answer.text, value);
}

function romanValue(text: string): Rational | null {
  const value = /^[IVXLCDM]+$/.test(text) ? parseRoman(text) : null;
  return value === null ? null : rational(value);
}

/** What to call a picture that shows just this value; null when it shows something else. */
function pictureName(figure: FigureSpec, value: Rational, shown: string): string | null {
  const isValue = (n: number, d = 1) => equals(rational(n, d), value);
  if (figure.kind === 'clock')
    return /^\d+:\d\d$/.test(shown) && isValue(figure.minutes % 720) ? `clock face ${shown}` : null;
  if (figure.kind === 'dots')
    return isValue(figure.groups.reduce((sum, one) => sum + one, 0)) ? `dots ${shown}` : null;
  if (figure.kind === 'fraction-circle' && isValue(figure.shaded, figure.parts))
    return `circle ${figure.shaded}/${figure.parts}`;
  if (figure.kind === 'fraction-bar' && (figure.bars ?? 1) === 1 && isValue(figure.shaded, figure.parts))
    return `bar ${figure.shaded}/${figure.parts}`;
  return null;
}

/** One number that the text writes and the answer writes in another way: 95% and 0.95. */
function rewritten({ answer, text, figure }: Question, locale: Locale): QuestionPart | null {
  const value = answer.value === null ? null : parseValue(answer.value);
  const found = text.match(WRITTEN) ?? [];
  const [shown = ''] = found;
  if (value === null || found.length !== 1 || figure !== null || !PLAIN_RESULT.test(answer.text)) return null;
  const isSame = equals(quantityOf(shown, locale) ?? rational(-1), value) && shown !== answer.text;
  return isSame ? equalForms(numberCell(shown, value), answer.text, value) : null;
}

function equalForms(left: JigsawCell, text: string, value: Rational): QuestionPart {
  return { left: [left], sign: '==', right: numberCell(text, value), value };
}

/** What a written number is worth: 95% is 0.95, 653c is 6.53. */
function quantityOf(shown: string, locale: Locale): Rational | null {
  const number = readNumber(shown.replace(/^[$£€]|[c¢p%]$/g, '').replaceAll('\u00a0', ''));
  if (number === null) return null;
  const isMinor = shown.endsWith(locale.currency.minorSymbol) || shown.endsWith('%');
  return isMinor ? rational(number.n, number.d * 100) : number;
}

/** Which of two numbers is greater or less, as a comparison. */
function compared({ expression, text }: Question, locale: Locale): QuestionPart | null {
  const [, ...words] = COMPARED.exec(expression ?? '') ?? [];
  const numbers = words.map(readNumber).toSorted((a, b) => (a && b ? compare(b, a) : 0));
  const [more, less] = numbers;
  if (!more || !less || equals(more, less)) return null;
  const texts = [more, less].map((number) => asWritten(number, text, locale));
  if (texts[0] == null || texts[1] == null) return null;
  return { left: [numberCell(texts[0], more)], sign: '>', right: numberCell(texts[1], less), value: more };
}

/** The question's expression, written as its text writes the numbers. */
function calculation({ expression, answer, text }: Question, locale: Locale): QuestionPart | null {
  const spaced = (expression ?? '').replace(/\((\d+) \/ 100\)/g, '($1/100)');
  if (!FLAT.test(spaced) || !PLAIN_RESULT.test(answer.text)) return null;
  const value = answer.value === null ? null : parseValue(answer.value);
  if (value === null || value.n < 0) return null;
  const left: JigsawCell[] = [];
  for (const word of spaced.split(' ')) {
    if (left.length % 2 === 1) {
      left.push(signCell(word as Operation));
      continue;
    }
    const number = readNumber(word);
    if (number === null) return null;
    const written = asWritten(number, text, locale);
    if (written === null) return null;
    left.push(numberCell(written, number));
  }
  const right = numberCell(answer.text, value);
  return left.length === 1 && left[0]?.text === right.text ? null : { left, sign: '==', right, value };
}

function readNumber(word: string): Rational | null {
  const parts = NUMBER.exec(word);
  if (!parts) return null;
  const [, top, bottom, whole, after = ''] = parts;
  if (top !== undefined) return rational(Number(top), Number(bottom));
  return rational(Number(`${whole}${after}`), 10 ** after.length);
}

/** Words that stand for a number of the calculation. */
const NUMBER_WORDS = /\b(?:doubl|hal[fv]|twice|third|quarter|fifth|sixth|eighth|tenth)/i;

/** The form in which the question itself writes the number; null when the number is no part of what it asks. */
function asWritten(value: Rational, text: string, locale: Locale): string | null {
  const forms = [
    ...(value.d > 1 && 100 % value.d === 0 ? [`${value.n * (100 / value.d)}%`] : []),
    ...(100 % value.d === 0 ? [formatMoney(value, locale)] : []),
    ...(value.d > 1 ? [formatMixed(value, locale), formatFraction(value)] : []),
    ...(decimalPlaces(value) === null ? [] : [formatDecimal(value, locale)]),
  ];
  const written = forms.find((form) =>
    new RegExp(`(?<![\\d./])${escaped(form)}(?![\\d/]|\\.\\d)`).test(text),
  );
  return written ?? (NUMBER_WORDS.test(text) ? (forms.at(-1) as string) : null);
}

function escaped(form: string): string {
  return form.replace(/[.$/]/g, '\\$&');
}

/** Whether nothing happens: + 0, × 1, ÷ 1, or a number by itself. */
function isIdle({ left }: QuestionPart): boolean {
  return left.some((cell, i) => {
    const sign = left[i - 1]?.expression;
    const value = i % 2 === 0 ? valueOf(cell) : null;
    if (value === null || left.length === 1) return false;
    const isFactor = sign === '*' || sign === '/' || left[i + 1]?.expression === '*';
    const isOne = equals(value, rational(1));
    const isUndone = (sign === '-' || sign === '/') && left[i - 2]?.text === cell.text;
    return equals(value, ZERO) || (isFactor && isOne) || isUndone;
  });
}
