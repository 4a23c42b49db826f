// When two answers are the same answer, seen from their exact values alone. How typed text is read is in check-answer.ts.
import { foldText } from '../numbers/fold-text.js';

export { foldText };

/** Equal values, or for words equal case-folded texts (spaces and no-break spaces alike). */
export function answersEqual(
  a: { readonly text: string; readonly value: string | null },
  b: { readonly text: string; readonly value: string | null },
): boolean {
  if (a.value !== null && b.value !== null) return a.value === b.value;
  return foldText(a.text) === foldText(b.text);
}
