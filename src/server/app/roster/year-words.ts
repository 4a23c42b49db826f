// Year levels as rosters write them.

const FOUNDATION = new Set([
  'f',
  'foundation',
  'prep',
  'p',
  'k',
  'kg',
  'kindergarten',
  'kindy',
  'r',
  'reception',
  'tk',
]);

/**
 * The year 0 to 6 meant by "4", "04", "Year 4", "Yr4", "Y4", "Grade 4", "Foundation", "Prep", "K", "Reception";
 * null when it is none of them. OneRoster writes grades as two digits or KG.
 */
export function parseYear(text: string): number | null {
  const word = text.trim().toLowerCase().replace(/\.$/, '');
  if (FOUNDATION.has(word)) return 0;
  const match = /^(?:(?:year|yr|y|grade|gr|g)[\s.-]*)?0?([0-6])$/.exec(word);
  return match ? Number(match[1]) : null;
}
