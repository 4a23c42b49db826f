// Column subtraction as children do it wrongly. The rules are those described by Brown & Burton (1978) and
// VanLehn (1990); names differ between authors, so each rule is defined here by what it does.

const SUBTRACTION_BUGS = [
  'smaller-from-larger',
  'borrow-no-decrement',
  'borrow-from-zero',
  'borrow-across-zero',
  'stops-borrow-at-zero',
  'zero-minus-n-is-n',
  'zero-minus-n-is-zero',
] as const;
export type SubtractionBug = (typeof SUBTRACTION_BUGS)[number];

function digitsOf(value: number, length: number): number[] {
  return String(value).padStart(length, '0').split('').map(Number).reverse();
}

/** Takes one from the column left of `column`, in place, as the bugs have it; false when nothing is left to take from. */
function borrow(top: number[], column: number, bugs: ReadonlySet<SubtractionBug>): boolean {
  if (bugs.has('borrow-no-decrement')) return true;
  let left = column + 1;
  if (bugs.has('stops-borrow-at-zero') && top[left] === 0) return true;
  if (bugs.has('borrow-from-zero') && top[left] === 0) {
    top[left] = 9;
    return true;
  }
  while (top[left] === 0) {
    if (!bugs.has('borrow-across-zero')) top[left] = 9;
    left++;
  }
  const digit = top[left];
  if (digit === undefined) return false;
  top[left] = digit - 1;
  return true;
}

/**
 * What a − b (whole numbers, a >= b >= 0) becomes under the given bugs, columns worked from the right; the true
 * difference for no bugs. Null when the method gets stuck.
 */
export function columnSubtract(a: number, b: number, ...rules: readonly SubtractionBug[]): number | null {
  const bugs = new Set(rules);
  const length = String(a).length;
  const top = digitsOf(a, length);
  const bottom = digitsOf(b, length);
  let result = 0;
  for (let column = 0; column < length; column++) {
    const under = bottom[column] ?? 0;
    const over = top[column] ?? 0;
    let written = over - under;
    if (written < 0) {
      if (over === 0 && bugs.has('zero-minus-n-is-n')) written = under;
      else if (over === 0 && bugs.has('zero-minus-n-is-zero')) written = 0;
      else if (bugs.has('smaller-from-larger')) written = under - over;
      else if (borrow(top, column, bugs)) written += 10;
      else return null;
    }
    result += written * 10 ** column;
  }
  return result;
}

/** Number of columns of a − b that need a borrow, and whether one has to cross a zero. */
export function borrowsOf(a: number, b: number): { readonly borrows: number; readonly acrossZero: boolean } {
  const length = String(a).length;
  const top = digitsOf(a, length);
  const bottom = digitsOf(b, length);
  let borrows = 0;
  let acrossZero = false;
  let owed = 0;
  for (let column = 0; column < length; column++) {
    const over = (top[column] ?? 0) - owed;
    owed = over < (bottom[column] ?? 0) ? 1 : 0;
    borrows += owed;
    if (owed === 1 && top[column + 1] === 0) acrossZero = true;
  }
  return { borrows, acrossZero };
}
