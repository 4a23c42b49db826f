// Typical wrong methods for products, as algorithms.

/** Facts beside a × b in the tables, nearest first: one group or one member too many or too few. */
export function tableNeighbours(a: number, b: number): number[] {
  return [a * (b - 1), a * (b + 1), (a - 1) * b, (a + 1) * b].filter(
    (product) => product > 0 && product !== a * b,
  );
}

/** Each column multiplied by itself and the results written side by side: 23 × 45 gives 815. Null when nothing is written. */
export function multiplyColumns(a: number, b: number): number | null {
  const [x, y] = [String(a), String(b)];
  if (x.length !== y.length) return null;
  const written = [...x].map((digit, i) => String(Number(digit) * Number(y[i]))).join('');
  const value = Number(written);
  return Number.isSafeInteger(value) ? value : null;
}

/** Only the tens are multiplied, the ones are put back as they were: 47 × 6 gives 247. */
export function multiplyTensOnly(a: number, digit: number): number {
  return (a - (a % 10)) * digit + (a % 10);
}

/** Column by column, every carry forgotten: 47 × 6 gives 242. */
export function multiplyWithoutCarry(a: number, digit: number): number {
  return Number(
    [...String(a)]
      .map((d, i) => (i === 0 ? String(Number(d) * digit) : String((Number(d) * digit) % 10)))
      .join(''),
  );
}

/** Tens by tens and ones by ones only: 47 × 23 gives 821, since 800 + 21. */
export function multiplyWithoutCross(a: number, b: number): number {
  return (a - (a % 10)) * (b - (b % 10)) + (a % 10) * (b % 10);
}
