// Dividing in friendly parts: 84 ÷ 6 as 60 ÷ 6 and 24 ÷ 6.

/** Divisors of one digit, one left out. */
export const DIGITS = [2, 3, 4, 5, 6, 7, 8, 9] as const;

/** The largest friendly multiple (tens, hundreds of the divisor) not above n. */
export function friendlyPart(n: number, divisor: number): number {
  let step = divisor;
  while (step * 10 <= n) step *= 10;
  return n - (n % step);
}

/** The friendly multiples of the divisor that n holds, largest first, until less than the divisor is left: 600, 42 in 645 by 6. */
export function friendlyParts(n: number, divisor: number): number[] {
  const parts: number[] = [];
  for (let rest = n; rest >= divisor; rest -= parts.at(-1) ?? rest) parts.push(friendlyPart(rest, divisor));
  return parts;
}

/** Strategy lines that take parts off n one after another. */
export function takenOff(n: number, parts: readonly number[], t: (value: number) => string): string[] {
  let left = n;
  return parts.map((part) => {
    const line = `${t(left)} − ${t(part)} = ${t(left - part)}`;
    left -= part;
    return line;
  });
}

/** Strategy lines that divide n part by part; `t` writes a number. n must be a multiple of the divisor. */
export function dividingSteps(n: number, divisor: number, t: (value: number) => string): string[] {
  const parts = friendlyParts(n, divisor);
  const shares = parts.map((part) => part / divisor);
  const steps = parts.map((part) => `${t(part)} ÷ ${divisor} = ${t(part / divisor)}`);
  const ones = n / 10;
  if (shares.length === 1 && n % (10 * divisor) === 0 && n > 9)
    return [
      `${t(ones)} ÷ ${divisor} = ${t(ones / divisor)}`,
      `${t(ones / divisor)} × 10 = ${t(n / divisor)}`,
    ];
  if (shares.length > 1) steps.push(`${shares.map((share) => t(share)).join(' + ')} = ${t(n / divisor)}`);
  return steps;
}
