// Dividing in friendly parts: 84 ÷ 6 as 60 ÷ 6 and 24 ÷ 6.

/** Divisors of one digit, one left out. */
export const DIGITS = [2, 3, 4, 5, 6, 7, 8, 9] as const;

/** The largest friendly multiple (tens, hundreds of the divisor) not above n. */
export function friendlyPart(n: number, divisor: number): number {
  let step = divisor;
  while (step * 10 <= n) step *= 10;
  return n - (n % step);
}

/** Strategy lines that divide n part by part; `t` writes a number. n must be a multiple of the divisor. */
export function dividingSteps(n: number, divisor: number, t: (value: number) => string): string[] {
  const steps: string[] = [];
  const shares: number[] = [];
  for (let rest = n; rest > 0; ) {
    const part = friendlyPart(rest, divisor);
    steps.push(`${t(part)} ÷ ${divisor} = ${t(part / divisor)}`);
    shares.push(part / divisor);
    rest -= part;
  }
  const ones = n / 10;
  if (shares.length === 1 && n % (10 * divisor) === 0 && n > 9)
    return [
      `${t(ones)} ÷ ${divisor} = ${t(ones / divisor)}`,
      `${t(ones / divisor)} × 10 = ${t(n / divisor)}`,
    ];
  if (shares.length > 1) steps.push(`${shares.map((share) => t(share)).join(' + ')} = ${t(n / divisor)}`);
  return steps;
}
