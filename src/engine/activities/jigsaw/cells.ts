// Making cells: numbers and signs as a child reads them, with the mathjs form beside.
import { MINUS } from '../../numbers/format.js';
import type { FigureSpec } from '../../figures/figure.js';
import { decimalPlaces, type Rational, toValue } from '../../numbers/rational.js';
import type { JigsawCell } from './jigsaw.js';

export type Operation = '+' | '-' | '*' | '/';
export type Comparison = '==' | '<' | '>';

const SIGN_TEXTS: Readonly<Record<Operation | Comparison, string>> = {
  '+': '+',
  '-': MINUS,
  '*': '\u00d7',
  '/': '\u00f7',
  '==': '=',
  '<': '<',
  '>': '>',
};

export const BLANK_CELL: JigsawCell = { text: '', expression: '' };

/** The cell of a number, written in any way. Its exact value stands as a decimal where it has one, else as n/d. */
export function numberCell(text: string, value: Rational): JigsawCell {
  return { text, expression: exact(value) };
}

/** The cell of a number that is shown as a picture; `text` says what the picture is. */
export function pictureCell(text: string, value: Rational, figure: FigureSpec): JigsawCell {
  return { text, expression: exact(value), figure };
}

function exact(value: Rational): string {
  const places = decimalPlaces(value);
  if (places === null || places === 0) return toValue(value);
  const size = String(Math.abs(value.n) * (10 ** places / value.d)).padStart(places + 1, '0');
  return `${value.n < 0 ? '-' : ''}${size.slice(0, -places)}.${size.slice(-places)}`;
}

/** The cell of a sign. */
export function signCell(sign: Operation | Comparison): JigsawCell {
  return { text: SIGN_TEXTS[sign], expression: sign };
}

/** The cell of a shape or letter, which has no value. */
export function markCell(text: string): JigsawCell {
  return { text, expression: `"${text}"` };
}
