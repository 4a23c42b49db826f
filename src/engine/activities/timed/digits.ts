// Digits of written answers: how many an answer has, and how many of a child's are right in their places.
// The scoring rules are those of curriculum-based measurement: a digit scores when it stands in its right place value, and
// not when it only occurs somewhere in the answer (Fuchs 2005, scoring slides).

/** How many digits an answer's text has: 3 for "13.8". Signs, points and separators do not count. */
export function digitsIn(text: string): number {
  return [...text].filter((character) => character >= '0' && character <= '9').length;
}

/** A written number by place: digits before the point from the units up, digits after it from the tenths down. */
interface Places {
  readonly before: readonly string[];
  readonly after: readonly string[];
}

function placesOf(text: string): Places {
  const [whole = '', part = ''] = text.split('.');
  const digits = (piece: string) => [...piece].filter((character) => character >= '0' && character <= '9');
  return { before: digits(whole).toReversed(), after: digits(part) };
}

/**
 * Digits of `written` that stand right by `key`, place by place from the point: "63" for "73" scores 1, "613" scores 1,
 * "65" for "56" none. Digits beyond the key's length score nothing.
 */
export function digitsCorrect(key: string, written: string): number {
  const [right, given] = [placesOf(key), placesOf(written)];
  const same = (a: readonly string[], b: readonly string[]) => a.filter((digit, i) => digit === b[i]).length;
  return same(right.before, given.before) + same(right.after, given.after);
}

/** Rate: digits (or answers) per minute over the minutes worked, rounded to 0.1. Throws RangeError unless minutes > 0. */
export function perMinute(count: number, minutes: number): number {
  if (!(minutes > 0)) throw new RangeError(`minutes must be above 0, not ${minutes}`);
  return Math.round((10 * count) / minutes) / 10;
}
