// Question -> the drawing of one way to think it through, shown when its answer is revealed.
// Only simple expressions have one; the worked steps decide how the drawing is cut where they can be followed.
import { rational } from '../numbers/rational.js';
import type { Question } from '../questions/question.js';
import type { FigureSpec } from './figure.js';

type Strategic = Pick<Question, 'expression' | 'answer' | 'strategy'>;

/** An equation found in the worked steps: left, sign and right operand, and result. */
interface Step {
  readonly left: number;
  readonly sign: '+' | '-' | '*';
  readonly right: number;
  readonly result: number;
}

const MOST_JUMPS = 5;
const LARGEST_FACT = 12;
/** Beyond it the labels of a line crowd one another. */
const LARGEST_LINE = 100_000;

/**
 * A drawing for "47 + 38" or "63 - 29" (open number line, whole numbers under 100 000), "7 * 8" (array, both up to 12),
 * "2 * 47" or "86 / 2" (bar in two, or in twos where the steps count these) and "3/4 * 20" (bar in equal parts); null
 * for everything else, for answers that are not plain numbers, for steps told in money, and where there is nothing to
 * draw (adding 0, fractions that do not come out whole).
 */
export function strategyFigure(question: Strategic): FigureSpec | null {
  const { expression, answer } = question;
  if (expression === null || answer.kind !== 'number') return null;
  // Steps told in money are not shown by a drawing of bare cents, or of how many coins there are.
  if (question.strategy.some((line) => /[$£€]|\d(?:[cp]\b|¢)/.test(line))) return null;
  const figure = drawing(expression.replace(/[()]/g, ''), expression.includes('('), question.strategy);
  return figure !== null && figure.result === Number(answer.value) ? figure.spec : null;
}

interface Drawing {
  readonly spec: FigureSpec;
  readonly result: number;
}

function drawing(plain: string, hasBrackets: boolean, lines: readonly string[]): Drawing | null {
  const steps = stepsOf(lines);
  const fraction =
    /^(\d+)\/(\d+) \* (\d+)$/.exec(plain) ?? turned(/^(\d+) \* (\d+)\/(\d+)$/.exec(plain), hasBrackets);
  if (fraction) {
    const [, top, bottom, whole] = fraction.map(Number);
    return top && bottom && whole ? fractionOf(top, bottom, whole) : null;
  }
  const [, first, sign, second] = /^(\d+) ([-+*/]) (\d+)$/.exec(plain) ?? [];
  const [a, b] = [Number(first), Number(second)];
  if (first === undefined || second === undefined || a === 0 || b === 0) return null;
  if (sign === '+' && a < LARGEST_LINE && b < LARGEST_LINE) return additionLine(a, b, lines, steps);
  if (sign === '-' && a < LARGEST_LINE && b < a) return subtractionLine(a, b, lines, steps);
  if (sign === '*') return product(a, b, lines, steps);
  if (sign !== '/' || b !== 2 || a % 2 !== 0) return null;
  return isInTwos(a, lines, steps) ? groupsOfTwo(a) : inTwo(a / 2, a / 2);
}

// "20 * (3/4)" is a fraction of 20 written the other way round; without brackets it is a longer sum.
function turned(found: RegExpExecArray | null, hasBrackets: boolean): string[] | null {
  if (!found || !hasBrackets) return null;
  const [all, whole = '', top = '', bottom = ''] = found;
  return [all, top, bottom, whole];
}

function fractionOf(top: number, bottom: number, whole: number): Drawing | null {
  const share = rational(top, bottom);
  // A fraction given in parts of a hundred, say, is drawn in its lowest terms.
  const [shaded, parts] = bottom <= LARGEST_FACT ? [top, bottom] : [share.n, share.d];
  if (parts < 2 || parts > LARGEST_FACT || shaded > parts || whole % parts !== 0) return null;
  const each = whole / parts;
  const spec: FigureSpec = {
    kind: 'bar-model',
    whole: String(whole),
    parts: Array.from({ length: parts }, () => String(each)),
    shaded,
  };
  return { spec, result: each * shaded };
}

function product(a: number, b: number, lines: readonly string[], steps: readonly Step[]): Drawing | null {
  if (a === 1 || b === 1) return null;
  if (a > LARGEST_FACT || b > LARGEST_FACT) {
    const half = a === 2 ? b : b === 2 ? a : null;
    return half !== null && half < 1000 ? inTwo(half, 2 * half) : null;
  }
  const result = a * b;
  // "6 + 6 = 12" for 6 × 2 are two rows of six.
  const double = steps.find(
    (step) => step.sign === '+' && step.left === step.right && step.result === result,
  );
  if (double && (a === 2 || b === 2))
    return { spec: { kind: 'array', rows: 2, columns: double.left }, result };
  const onColumns = splitOf(b, a, steps);
  if (onColumns !== null)
    return { spec: { kind: 'array', rows: a, columns: b, splitAfterColumn: onColumns }, result };
  const onRows = splitOf(a, b, steps);
  if (onRows !== null)
    return { spec: { kind: 'array', rows: b, columns: a, splitAfterColumn: onRows }, result };
  const says = (left: number, right: number) =>
    steps.some((step) => step.sign === '*' && step.left === left && step.right === right);
  const [rows, columns] = says(b, a) && !says(a, b) ? [b, a] : [a, b];
  const usual = columns > 10 ? 10 : 5;
  // Beside steps that go another way ("10 × 7 = 70, 70 − 7 = 63") a split at five would tell of a third.
  const isPlainFact =
    lines.length === 0 ||
    (steps.length > 0 && steps.every((step) => step.sign === '*' && step.result === result));
  const spec: FigureSpec =
    columns > 5 && isPlainFact
      ? { kind: 'array', rows, columns, splitAfterColumn: usual }
      : { kind: 'array', rows, columns };
  return { spec, result };
}

/** The first part p when the steps multiply both p and factor - p by `other`; null when they do not. */
function splitOf(factor: number, other: number, steps: readonly Step[]): number | null {
  // "2 × 6 = 12, 12 + 6 = 18" adds one more group of 6.
  const oneMore = steps.flatMap(({ sign, right, result }) =>
    sign === '+' && right === other && result === factor * other ? [1] : [],
  );
  const multiplied = steps
    .filter((step) => step.sign === '*' && (step.left === other || step.right === other))
    .map((step) => (step.left === other ? step.right : step.left))
    .filter((part) => part > 0 && part < factor);
  const partners = new Set([...multiplied, ...oneMore]);
  return multiplied.find((part) => 2 * part === factor || partners.has(factor - part)) ?? null;
}

function inTwo(half: number, result: number): Drawing {
  const spec: FigureSpec = {
    kind: 'bar-model',
    whole: String(2 * half),
    parts: [String(half), String(half)],
  };
  return { spec, result };
}

function additionLine(
  a: number,
  b: number,
  lines: readonly string[],
  steps: readonly Step[],
): Drawing | null {
  const sum = a + b;
  // A double that is known by heart is one jump.
  if (a === b && steps.length === 0 && lines.some((line) => /\bdouble\b/i.test(line)))
    return { spec: openLine([a, sum]), result: sum };
  // Steps that write the sum the other way round ("25 + 5 = 30" for 5 + 25) start from the number they name first.
  const isTurned = steps.some(({ sign, left, right }) => sign === '+' && left === b && right === a);
  const [from, other] = isTurned ? [b, a] : [a, b];
  const tensFirst = isTensFirst(from, other, steps);
  const told = chain(from, sum, steps) ?? (tensFirst ? null : chain(other, sum, steps));
  // Steps that work out the other number before it is added ("10 − 6 = 4, 10 + 4 = 14") are no way along the line.
  const isDetour = told !== null && told[0] === a && told[1] === b && b < a;
  if (told === null && !tensFirst && isOtherWay(steps)) return null;
  const [start, rest] = a >= b ? [a, b] : [b, a];
  return { spec: openLine(told !== null && !isDetour ? told : hops(start, rest, 1)), result: sum };
}

function subtractionLine(
  a: number,
  b: number,
  lines: readonly string[],
  steps: readonly Step[],
): Drawing | null {
  const difference = a - b;
  const told = chain(a, difference, steps) ?? chain(b, a, steps) ?? chain(a, b, steps);
  if (told === null && !isTensFirst(a, b, steps) && isOtherWay(steps)) return null;
  // A part of a number is sought upwards, as its steps say: "3 is 2 and 1", "2 more make 12".
  const says = (words: string) => lines.some((line) => line.includes(words));
  if (says(`${a} is ${b} and ${difference}`)) return { spec: openLine([b, a]), result: difference };
  if (says(`${b} more make ${a}`) || says(`${b} more makes ${a}`))
    return { spec: openLine([difference, a]), result: difference };
  // Close numbers are easier to count up between than to take away.
  const usual = b >= 10 && difference < 10 ? hops(b, difference, 1) : hops(a, b, -1);
  return { spec: openLine(told ?? usual), result: difference };
}

/** Whether steps work on the tens first ("60 + 10 = 70, 70 + 2 = 72" for 62 + 10) and so begin at no number of the question. */
function isTensFirst(from: number, other: number, [first]: readonly Step[]): boolean {
  return first !== undefined && first.right === other && first.left < from && first.left !== other;
}

/** Whether worked steps that no line can follow tell a way of their own, which another drawn beside them would contradict. */
function isOtherWay(steps: readonly Step[]): boolean {
  return steps.length > 1;
}

/** The stops of the worked steps when they lead from `start` to `end`, each from where the last one landed. */
function chain(start: number, end: number, steps: readonly Step[]): number[] | null {
  const stops = [start];
  for (const step of steps) {
    const here = stops.at(-1);
    if (here === end) break;
    if (step.sign === '*' || step.right === 0) continue;
    if (step.left === here) stops.push(step.result);
    else if (step.sign === '+' && step.right === here) stops.push(step.result);
  }
  const isRepeated = new Set(stops).size < stops.length;
  const isWhole = stops.length > 1 && stops.at(-1) === end && stops.length <= MOST_JUMPS + 1;
  return isWhole && !isRepeated ? stops : null;
}

/** Stops from `start` by the hundreds, tens and ones of `size`; a jump below ten that crosses a ten rests there. */
function hops(start: number, size: number, way: 1 | -1): number[] {
  const stops = [start];
  const go = (length: number) => {
    if (length > 0) stops.push((stops.at(-1) ?? start) + way * length);
  };
  go(size - (size % 100));
  go((size % 100) - (size % 10));
  const ones = size % 10;
  const here = stops.at(-1) ?? start;
  const toTen = way === 1 ? (10 - (here % 10)) % 10 : here % 10;
  if (size < 10 && toTen > 0 && toTen < ones) {
    go(toTen);
    go(ones - toTen);
  } else go(ones);
  return stops;
}

/** Whether the worked steps count groups of two ("2 + 2 + 2 = 6", "3 × 2 = 6") and do not halve. */
function isInTwos(whole: number, lines: readonly string[], steps: readonly Step[]): boolean {
  const half = whole / 2;
  if (half === 2 || half > LARGEST_FACT) return false;
  const added = `${Array.from({ length: half }, () => 2).join(' + ')} = ${whole}`;
  return (
    lines.includes(added) ||
    steps.some(({ left, sign, right }) => sign === '*' && left === half && right === 2)
  );
}

function groupsOfTwo(whole: number): Drawing {
  const groups = whole / 2;
  const spec: FigureSpec = {
    kind: 'bar-model',
    whole: String(whole),
    parts: Array.from({ length: groups }, () => '2'),
  };
  return { spec, result: groups };
}

function openLine(stops: readonly number[]): FigureSpec {
  const jumps = stops.slice(1).map((to, index) => {
    const from = stops[index] ?? to;
    return { from, to, label: `${to > from ? '+' : '\u2212'}${Math.abs(to - from)}` };
  });
  const labels = [...stops].sort((a, b) => a - b);
  return { kind: 'number-line', from: Math.min(...stops), to: Math.max(...stops), step: 0, labels, jumps };
}

/** Every true "a + b = c", "a − b = c" or "a × b = c" in the worked steps, in order. */
function stepsOf(lines: readonly string[]): Step[] {
  const found = /(?<![\d.,/] ?[-+×÷\u2212] ?|[\d.,/])(\d+) ?([-+×\u2212]) ?(\d+) ?= ?(\d+)(?!\d|[.,/]\d)/g;
  return lines.flatMap((line) =>
    Array.from(
      line
        // Grouped digits, "12 500" or "12,500", are one number.
        .replace(/(?<=\d)[\u00a0,](?=\d{3}(?!\d))/g, '')
        .replace(/\u00a0/g, ' ')
        .matchAll(found),
      ([, left, sign, right, result]): Step => ({
        left: Number(left),
        sign: sign === '+' ? '+' : sign === '×' ? '*' : '-',
        right: Number(right),
        result: Number(result),
      }),
    ).filter((step) => step.result === apply(step)),
  );
}

function apply({ left, sign, right }: Step): number {
  return sign === '+' ? left + right : sign === '-' ? left - right : left * right;
}
