// Making cells: numbers and signs as a child reads them, with the mathjs form beside.
import { MINUS } from '../../numbers/format.js';
import { type Rational, toValue } from '../../numbers/rational.js';
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

/** The cell of a number, written in any way; `expression` is its exact value. */
export function numberCell(text: string, value: Rational): JigsawCell {
  return { text, expression: toValue(value) };
}

/** The cell of a sign. */
export function signCell(sign: Operation | Comparison): JigsawCell {
  return { text: SIGN_TEXTS[sign], expression: sign };
}

/** The cell of a shape or letter, which has no value. */
export function markCell(text: string): JigsawCell {
  return { text, expression: `"${text}"` };
}
