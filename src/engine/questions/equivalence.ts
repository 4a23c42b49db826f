// When two answers are the same answer.

/** Equal values, or for words equal case-folded texts (spaces and no-break spaces alike). */
export function answersEqual(
  a: { readonly text: string; readonly value: string | null },
  b: { readonly text: string; readonly value: string | null },
): boolean {
  if (a.value !== null && b.value !== null) return a.value === b.value;
  return foldText(a.text) === foldText(b.text);
}

/** The form in which answer texts are compared: lower case, single plain spaces, plain hyphen-minus. */
export function foldText(text: string): string {
  return text.normalize('NFKC').toLowerCase().replace(/\u2212/g, '-').replace(/\s+/g, ' ').trim();
}
