// How a child may subtract in the head, step by step, in the question's own numbers.
import { countUpSteps, inPlaces, placeParts, roundJustAbove, type SayWhole } from './adding.js';

/**
 * Steps for a − b (whole numbers, a >= b): counting up when they are close, back through a ten, a round number
 * first and adjusting, or the second number by its places, whichever suits these numbers.
 */
export function subtractSteps(a: number, b: number, say: SayWhole): string[] {
  const whole = `${say(a)} − ${say(b)} = ${say(a - b)}`;
  if (b === 0) return [`Taking away 0 changes nothing: ${whole}`];
  if (a === b) return [`Taking away all of it leaves nothing: ${whole}`];
  if (b > 9 && a - b < 10)
    return [`The numbers are close: count up from ${say(b)}`, ...countUpSteps(b, a, say)];
  if (b < 10) {
    const toTen = a % 10;
    if (a <= 10) return [`Start at ${say(a)} and count back ${say(b)}: ${say(a - b)}`];
    if (toTen === 0 && b > 7)
      return [`${say(a)} − 10 = ${say(a - 10)}`, `${say(a - 10)} + ${10 - b} = ${say(a - b)}`];
    if (b === 9 && a > 20 && toTen < 9)
      return [`${say(a)} − 10 = ${say(a - 10)}`, `${say(a - 10)} + 1 = ${say(a - b)}`];
    const near = toTen === 0 ? 10 : toTen;
    if (b <= near) return [`${near} − ${b} = ${near - b}, so ${whole}`];
    return [`${say(a)} − ${toTen} = ${say(a - toTen)}`, `${say(a - toTen)} − ${b - toTen} = ${say(a - b)}`];
  }
  const round = roundJustAbove(b);
  if (round !== null && round <= a)
    return [
      `${say(a)} − ${say(round)} = ${say(a - round)}`,
      `${say(a - round)} + ${say(round - b)} = ${say(a - b)}`,
    ];
  if (b < 100 && b % 10 === 0 && a < 100 && a % 10 > 0) {
    const tens = a - (a % 10);
    return [`${say(tens)} − ${say(b)} = ${say(tens - b)}`, `${say(tens - b)} + ${a % 10} = ${say(a - b)}`];
  }
  const parts = placeParts(b);
  if (parts.length === 1) return [`${inPlaces(a, b, a - b, ['take away', 'leaves'], say)}, so ${whole}`];
  const steps: string[] = [];
  let left = a;
  for (const part of parts) {
    steps.push(`${say(left)} − ${say(part)} = ${say(left - part)}`);
    left -= part;
  }
  return steps;
}
