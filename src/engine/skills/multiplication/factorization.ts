// Factors of whole numbers, for the skills on factors, multiples and primes.

/** All factors of a positive whole number, smallest first. */
export function factorsOf(n: number): number[] {
  const out: number[] = [];
  for (let f = 1; f * f <= n; f++) {
    if (n % f === 0) out.push(f, ...(f * f === n ? [] : [n / f]));
  }
  return out.sort((a, b) => a - b);
}

/** Whether a whole number has exactly two factors. */
export function isPrime(n: number): boolean {
  return n > 1 && factorsOf(n).length === 2;
}

/** The first prime number above n. */
export function primeAfter(n: number): number {
  let next = n + 1;
  while (!isPrime(next)) next++;
  return next;
}

/** "7 × 8 = 56": a factor pair as a strategy line, its numbers written by `say`. */
export function pairLine(a: number, b: number, say: (n: number) => string): string {
  return `${say(a)} × ${say(b)} = ${say(a * b)}`;
}

/** The primes that make a whole number from 2 up, smallest first: 54 is 2 × 3 × 3 × 3. */
export function primeSplit(n: number): number[] {
  const smallest = factorsOf(n)[1];
  return smallest === undefined ? [] : [smallest, ...primeSplit(n / smallest)];
}
