// When two answers are the same answer, seen from their exact values alone. How typed text is read is in check-answer.ts.

/** Equal values, or for words equal case-folded texts (spaces and no-break spaces alike). */
export function answersEqual(
  a: { readonly text: string; readonly value: string | null },
  b: { readonly text: string; readonly value: string | null },
): boolean {
  if (a.value !== null && b.value !== null) return a.value === b.value;
  return foldText(a.text) === foldText(b.text);
}

/**
 * The form in which answer texts are compared: lower case, single plain spaces, plain hyphen-minus, apostrophe and
 * slash; "1½" becomes "1 1/2" and "cm²" becomes "cm2".
 */
export function foldText(text: string): string {
  return (
    text
      // A fraction sign must not run into the whole number before it: 1½ is not 11/2.
      .replace(/[\u00bc-\u00be\u2150-\u215e\u2189]/g, ' $&')
      .normalize('NFKC')
      .toLowerCase()
      .replace(/[\u2212\u2010\u2011\u2013]/g, '-')
      .replace(/\u2044/g, '/')
      .replace(/[\u2018\u2019]/g, "'")
      .replace(/\s+/g, ' ')
      .trim()
  );
}
