// Fact families: the ways to say how the same parts make the same whole, by adding and taking away or by × and ÷.
import { formatWhole } from '../../../numbers/format.js';
import { rational } from '../../../numbers/rational.js';
import { numberCell, type Operation, signCell } from '../cells.js';
import type { JigsawCell } from '../jigsaw.js';
import { reachOf, type RowContext } from './band.js';

const ATTEMPTS = 40;

/** Up to `count` members of one family, each of `length` cells, or null when the year's numbers are too small for it. */
export function familyOf(
  length: number,
  count: number,
  year: number,
  context: RowContext,
): JigsawCell[][] | null {
  const { rng } = context;
  const parts = (length - 1) / 2;
  const { largest, tables } = reachOf(year);
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const multiplies = parts === 2 && tables.length > 0 && rng.chance(0.5);
    const chosen = multiplies
      ? [rng.pick(tables), rng.pick(tables)]
      : Array.from({ length: parts }, () => rng.int(1, Math.max(2, Math.floor((1.6 * largest) / parts) - 1)));
    const whole = chosen.reduce((total, part) => (multiplies ? total * part : total + part));
    if (new Set([...chosen, whole]).size <= parts || whole > largest) continue;
    const [joins, splits]: [Operation, Operation] = multiplies ? ['*', '/'] : ['+', '-'];
    const members = new Map<string, JigsawCell[]>();
    for (let i = 0; i < 12 && members.size < count; i++) {
      const cells = memberOf(rng.shuffle(chosen), whole, joins, splits, context);
      members.set(cells.map((cell) => cell.text).join(' '), cells);
    }
    return [...members.values()];
  }
  return null;
}

/** One way to say it: all parts joined, or some taken from the whole, with either side first. */
function memberOf(
  parts: readonly number[],
  whole: number,
  joins: Operation,
  splits: Operation,
  { rng, locale }: RowContext,
): JigsawCell[] {
  const taken = rng.int(0, parts.length - 1);
  const number = (value: number) => numberCell(formatWhole(value, locale), rational(value));
  const joined = (values: readonly number[]) =>
    values.flatMap((value, i) => (i === 0 ? [number(value)] : [signCell(joins), number(value)]));
  const left = [number(whole), ...parts.slice(0, taken).flatMap((part) => [signCell(splits), number(part)])];
  const right = joined(parts.slice(taken));
  return rng.chance(0.5) ? [...left, signCell('=='), ...right] : [...right, signCell('=='), ...left];
}
