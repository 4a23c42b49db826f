// Names of fraction parts as a class says them: halves, thirds, quarters (fourths in the United States).
import type { Locale } from './locale.js';

const NAMES: Readonly<Record<number, readonly [one: string, many: string]>> = {
  2: ['half', 'halves'],
  3: ['third', 'thirds'],
  4: ['quarter', 'quarters'],
  5: ['fifth', 'fifths'],
  6: ['sixth', 'sixths'],
  7: ['seventh', 'sevenths'],
  8: ['eighth', 'eighths'],
  9: ['ninth', 'ninths'],
  10: ['tenth', 'tenths'],
  11: ['eleventh', 'elevenths'],
  12: ['twelfth', 'twelfths'],
  15: ['fifteenth', 'fifteenths'],
  16: ['sixteenth', 'sixteenths'],
  20: ['twentieth', 'twentieths'],
  24: ['twenty-fourth', 'twenty-fourths'],
  100: ['hundredth', 'hundredths'],
};

/** "quarters" for 4, or "quarter" when `count` is 1; null for parts that primary classes do not name. */
export function partName(parts: number, count: number, locale: Locale): string | null {
  const names = NAMES[parts];
  if (!names) return null;
  if (parts === 4 && locale.id === 'en-US') return count === 1 ? 'fourth' : 'fourths';
  return count === 1 ? names[0] : names[1];
}
