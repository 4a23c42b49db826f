// How a child may add in the head, step by step, in the question's own numbers.

/** Writes a whole number for a child. */
export type SayWhole = (n: number) => string;

/** The parts of b by place, largest first, zeros left out: 308 -> 300, 8. */
export function placeParts(b: number): number[] {
  const parts: number[] = [];
  for (let place = 1; place <= b; place *= 10) {
    const part = (Math.floor(b / place) % 10) * place;
    if (part > 0) parts.unshift(part);
  }
  return parts;
}

const PLACE_WORDS = [
  'one',
  'ten',
  'hundred',
  'thousand',
  'ten thousand',
  'hundred thousand',
  'million',
] as const;

/** "25 tens and 7 tens are 32 tens": a sum or difference counted in the only place of b (70), from ten to a million. */
export function inPlaces(
  a: number,
  b: number,
  result: number,
  [join, makes]: readonly [join: string, makes: string],
  say: SayWhole,
): string {
  const power = Math.min(String(b).length, PLACE_WORDS.length) - 1;
  const [first, second, third] = [a, b, result].map((n) => {
    const count = Math.floor(n / 10 ** power);
    return `${say(count)} ${PLACE_WORDS[power]}${count === 1 ? '' : 's'}`;
  });
  return `${first} ${join} ${second} ${makes} ${third}`;
}

/**
 * Steps for a + b (whole numbers): near doubles, making a ten, a round number first and adjusting, or the
 * second number by its places, whichever suits these numbers.
 */
export function addSteps(a: number, b: number, say: SayWhole): string[] {
  const total = a + b;
  const whole = `${say(a)} + ${say(b)} = ${say(total)}`;
  if (a === 0 || b === 0) return [`Adding 0 changes nothing: ${whole}`];
  if (a === b && a <= 12) return [`Double ${say(a)} is ${say(total)}`];
  if (Math.abs(a - b) === 1 && a > 4 && a < 12 && a % 10 > 0 && b % 10 > 0) {
    const low = Math.min(a, b);
    return [`${say(low)} + ${say(low)} = ${say(2 * low)}`, `${say(2 * low)} + 1 = ${say(total)}`];
  }
  const round = b > 9 ? roundJustAbove(b) : null;
  if (round !== null)
    return [
      `${say(a)} + ${say(round)} = ${say(a + round)}`,
      `${say(a + round)} − ${say(round - b)} = ${say(total)}`,
    ];
  // Whole tens are simply added: 28 + 10 needs no 30.
  const isTens = b < 100 && b % 10 === 0;
  if (b > 9 && a > 9 && !isTens && roundJustAbove(a) !== null) return addSteps(b, a, say);
  if (a < b && b > 9) {
    const turned = addSteps(b, a, say);
    // Said only where the steps do start there: 15 + 10 starts with its tens.
    const startsThere = turned.length > 1 && turned[0]?.startsWith(`${say(b)} + `) === true;
    return startsThere ? [`Start with the larger number: ${say(b)} + ${say(a)}`, ...turned] : turned;
  }
  if (b < 10) {
    const toTen = (10 - (a % 10)) % 10;
    if (a < 10 && total <= 10)
      return [`Start at ${say(Math.max(a, b))} and count on ${say(Math.min(a, b))}: ${say(total)}`];
    if (toTen === 0) return [whole];
    if (b === 9 && a > 20 && a % 10 > 1)
      return [`${say(a)} + 10 = ${say(a + 10)}`, `${say(a + 10)} − 1 = ${say(total)}`];
    if (b <= toTen) return [`${a % 10} + ${b} = ${(a % 10) + b}, so ${whole}`];
    return [`${say(a)} + ${toTen} = ${say(a + toTen)}`, `${say(a + toTen)} + ${b - toTen} = ${say(total)}`];
  }
  if (b < 100 && b % 10 === 0 && a > 10 && a < 100 && a % 10 > 0) {
    const tens = a - (a % 10);
    return [`${say(tens)} + ${say(b)} = ${say(tens + b)}`, `${say(tens + b)} + ${a % 10} = ${say(total)}`];
  }
  const parts = placeParts(b);
  if (parts.length === 1) return [`${inPlaces(a, b, total, ['and', 'are'], say)}, so ${whole}`];
  const steps: string[] = [];
  let sum = a;
  for (const part of parts) {
    steps.push(`${say(sum)} + ${say(part)} = ${say(sum + part)}`);
    sum += part;
  }
  return steps;
}

/**
 * Steps for a + b that go on from a, a total reached before: those of {@link addSteps} where they do, and otherwise b by
 * its places, ones over the next ten.
 */
export function addOnSteps(a: number, b: number, say: SayWhole): string[] {
  const steps = addSteps(a, b, say);
  const [first = ''] = steps;
  const startsFromA = first.startsWith(`${say(a)} + `) || first.startsWith(`Double ${say(a)} is `);
  if (startsFromA || [', so ', ': '].some((lead) => first.includes(`${lead}${say(a)} + `))) return steps;
  const toTen = (10 - (a % 10)) % 10;
  const parts = b < 10 && toTen > 0 && toTen < b ? [toTen, b - toTen] : placeParts(b);
  let sum = a;
  return parts.map((part) => {
    const step = `${say(sum)} + ${say(part)} = ${say(sum + part)}`;
    sum += part;
    return step;
  });
}

/** The round number one or two above b that makes adding or taking b easy (39 -> 40, 198 -> 200), or null. */
export function roundJustAbove(b: number): number | null {
  const unit = b >= 90 ? 100 : 10;
  const gap = (unit - (b % unit)) % unit;
  return b > 8 && (gap === 1 || gap === 2) ? b + gap : null;
}

/** Whole jumps from `from` over the next ten, hundred and thousand to `to`. */
function jumpsBetween(from: number, to: number): number[] {
  const jumps: number[] = [];
  let at = from;
  for (let unit = 10; at < to; unit *= 10) {
    const next = Math.ceil(at / unit) * unit;
    const target = next >= to || next === 0 ? to : next;
    if (target > at) jumps.push(target - at);
    at = target;
  }
  return jumps;
}

/** Most jumps that a child keeps in mind. */
const MOST_JUMPS = 4;

/** Whether adding `gap` leaves the last digits of `from` as they are, down from its last one that is not 0. */
function keepsLastDigits(from: number, gap: number): boolean {
  let place = 10;
  while (from > 0 && from % place === 0) place *= 10;
  return from > 0 && gap % place === 0;
}

/** The single step for a gap in one place, above digits that stay: "Only the thousands change: 2026 + 3000 = 5026". */
function stepInPlace(from: number, gap: number, say: SayWhole): string {
  const power = String(gap).length - 1;
  const whole = `${say(from)} + ${say(gap)} = ${say(from + gap)}`;
  const isWithin = (Math.floor(from / 10 ** power) % 10) + gap / 10 ** power < 10;
  return isWithin && PLACE_WORDS[power]
    ? `Only the ${PLACE_WORDS[power]}s change: ${whole}`
    : `${inPlaces(from, gap, from + gap, ['and', 'are'], say)}, so ${whole}`;
}

/**
 * Steps from `from` up to a larger `to` over round numbers, or in the places of the difference when the last digits stay
 * or the round numbers would take too many; the jumps added at the end give the difference.
 */
export function countUpSteps(from: number, to: number, say: SayWhole): string[] {
  const overRound = jumpsBetween(from, to);
  const inOrder = placeParts(to - from);
  const keeps = keepsLastDigits(from, to - from);
  if (keeps && inOrder.length === 1) return [stepInPlace(from, to - from, say)];
  const isLong = overRound.length > Math.min(MOST_JUMPS, inOrder.length + 1);
  const jumps = keeps || isLong ? inOrder : overRound;
  const steps: string[] = [];
  let at = from;
  for (const jump of jumps) {
    steps.push(`${say(at)} + ${say(jump)} = ${say(at + jump)}`);
    at += jump;
  }
  if (jumps.length > 1) steps.push(`${jumps.map(say).join(' + ')} = ${say(to - from)}`);
  return steps;
}
