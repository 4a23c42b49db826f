// Fact families: the ways to say how the same parts make the same whole, by adding and taking away or by × and ÷.
import { formatWhole } from '../../../numbers/format.js';
import { rational } from '../../../numbers/rational.js';
import { numberCell, type Operation, signCell } from '../cells.js';
import type { JigsawCell } from '../jigsaw.js';
import { valueOf } from '../token.js';
import { reachOf, type RowContext } from './band.js';
import type { SkillPool } from './skill-pool.js';

const ATTEMPTS = 40;

/** Up to `count` members of one family, each of `length` cells, or null when the year's numbers, or the chosen skills, do not give it. */
export function familyOf(
  length: number,
  count: number,
  year: number,
  context: RowContext,
): JigsawCell[][] | null {
  const { rng, pool } = context;
  const parts = (length - 1) / 2;
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const triple = pool === null ? triad(parts, year, context) : dealtTriad(pool, parts, rng);
    if (triple === null) continue;
    const { chosen, whole, multiplies } = triple;
    if (new Set([...chosen, whole]).size <= parts) continue;
    const [joins, splits]: [Operation, Operation] = multiplies ? ['*', '/'] : ['+', '-'];
    const members = new Map<string, JigsawCell[]>();
    for (let i = 0; i < 12 && members.size < count; i++) {
      const member = memberOf(rng.shuffle(chosen), whole, joins, splits, context);
      // The same sentence with its sides exchanged says nothing new.
      if (!members.has(member.name)) members.set(member.name, member.cells);
    }
    return [...members.values()];
  }
  return null;
}

/** Parts and the whole that they make. */
interface Family {
  readonly chosen: readonly number[];
  readonly whole: number;
  readonly multiplies: boolean;
}

function triad(parts: number, year: number, { rng }: RowContext): Family | null {
  const { largest, tables } = reachOf(year);
  const multiplies = parts === 2 && tables.length > 0 && rng.chance(0.5);
  const chosen = multiplies
    ? [rng.pick(tables), rng.pick(tables)]
    : Array.from({ length: parts }, () => rng.int(1, Math.max(2, Math.floor((1.6 * largest) / parts) - 1)));
  const whole = chosen.reduce((total, part) => (multiplies ? total * part : total + part));
  return whole > largest ? null : { chosen, whole, multiplies };
}

/** The family of a fact that the chosen skills ask; it has two parts. */
function dealtTriad({ parts: facts }: SkillPool, parts: number, rng: RowContext['rng']): Family | null {
  const { left, value } = rng.pick(facts);
  const [a, b] = [left[0], left[2]].map((cell) => (cell === undefined ? null : valueOf(cell)));
  if (parts !== 2 || left.length !== 3 || a?.d !== 1 || b?.d !== 1 || value.d !== 1) return null;
  const sign = left[1]?.expression;
  const multiplies = sign === '*' || sign === '/';
  return sign === '+' || sign === '*'
    ? { chosen: [a.n, b.n], whole: value.n, multiplies }
    : { chosen: [b.n, value.n], whole: a.n, multiplies };
}

/** One way to say it: all parts joined, or some taken from the whole, with either side first. */
function memberOf(
  parts: readonly number[],
  whole: number,
  joins: Operation,
  splits: Operation,
  { rng, locale }: RowContext,
): { readonly name: string; readonly cells: JigsawCell[] } {
  const taken = rng.int(0, parts.length - 1);
  const number = (value: number) => numberCell(formatWhole(value, locale), rational(value));
  const joined = (values: readonly number[]) =>
    values.flatMap((value, i) => (i === 0 ? [number(value)] : [signCell(joins), number(value)]));
  const left = [number(whole), ...parts.slice(0, taken).flatMap((part) => [signCell(splits), number(part)])];
  const right = joined(parts.slice(taken));
  const cells = rng.chance(0.5) ? [...left, signCell('=='), ...right] : [...right, signCell('=='), ...left];
  return { name: [...left, ...right].map((cell) => cell.text).join(' '), cells };
}
