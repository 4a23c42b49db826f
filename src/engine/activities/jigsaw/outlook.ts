// The outlook of a row that is not full yet: can it still come true? A "no" is always right; a "yes" may be too hopeful.
// The proof prunes by it, and it is as far as the child of child.ts looks within a row.
import type { Puzzle, Token } from './puzzle.js';
import { isPeriodSeen, REPEAT_PERIODS } from './row-truth.js';
import { isPartTrue, PartSums } from './part-sums.js';

/** Numbers this close are equal: exact values here are fractions with small denominators, far coarser than this. */
const CLOSE = 1e-9;
/** Values rounded to this grain name the same number. */
const GRAIN = 1e7;
const NO_TOKENS: readonly number[] = [];

/** Judges rows of one puzzle; remembers what it judged. */
export class Outlook {
  readonly #puzzle: Puzzle;
  readonly #tokens: readonly Token[];
  readonly #values: Float64Array;
  readonly #byValue = new Map<number, number[]>();
  /** First cell and end (not included) of the parts of each row, as cells of the whole frame. */
  readonly #parts: readonly (readonly (readonly [number, number])[])[];
  readonly #numbers: readonly number[];
  readonly #signs: readonly number[];
  readonly #sums: PartSums;
  /** What fits into the single gap of a part, by the part's tokens. */
  readonly #fillings = new Map<number, readonly number[]>();
  readonly #base: number;
  readonly #periods: readonly number[];

  constructor(puzzle: Puzzle) {
    this.#puzzle = puzzle;
    const { tokens, drawn, rows, columns } = puzzle;
    this.#tokens = tokens;
    this.#values = Float64Array.from(tokens, (token) => token.value);
    this.#numbers = tokens.flatMap((token, id) => (token.kind === 'number' ? [id] : []));
    this.#signs = tokens.flatMap((token, id) => (token.kind === 'sign' ? [id] : []));
    for (const id of this.#numbers) {
      const key = Math.round((this.#values[id] as number) * GRAIN);
      const same = this.#byValue.get(key);
      if (same) same.push(id);
      else this.#byValue.set(key, [id]);
    }
    this.#parts = Array.from({ length: rows }, (_, row) => partsOf(drawn, tokens, row * columns, columns));
    this.#sums = new PartSums(puzzle);
    this.#base = tokens.length + 2;
    this.#periods = REPEAT_PERIODS.filter((period) => isPeriodSeen(period, columns));
  }

  /** Whether `row` of `grid` (-1 where nothing lies) can still come true; `loose` counts the tokens not yet laid. */
  isHopeful(row: number, grid: Int16Array, loose: Int16Array): boolean {
    const { rule, columns } = this.#puzzle;
    if (rule === 'steps') return this.#canStep(row * columns, columns, grid, loose);
    if (rule === 'repeats') return this.#canRepeat(row * columns, columns, grid, loose);
    for (const [from, to] of this.#parts[row] as readonly (readonly [number, number])[])
      if (!this.#canBeSentence(grid, from, to, loose)) return false;
    return true;
  }

  #canStep(from: number, columns: number, grid: Int16Array, loose: Int16Array): boolean {
    const values = this.#values;
    let first = -1;
    let second = -1;
    for (let i = 0; i < columns && second < 0; i++) {
      if (grid[from + i] === -1) continue;
      if (first < 0) first = i;
      else second = i;
    }
    if (second < 0) return true;
    const start = values[grid[from + first] as number] as number;
    const step = ((values[grid[from + second] as number] as number) - start) / (second - first);
    if (Math.abs(step) < CLOSE) return false;
    for (let i = 0; i < columns; i++) {
      const id = grid[from + i] as number;
      const wanted = start + step * (i - first);
      if (id === -1) {
        if (!this.#hasLoose(wanted, loose)) return false;
      } else if (Math.abs((values[id] as number) - wanted) > CLOSE) return false;
    }
    return true;
  }

  #hasLoose(wanted: number, loose: Int16Array): boolean {
    for (const id of this.#byValue.get(Math.round(wanted * GRAIN)) ?? NO_TOKENS)
      if ((loose[id] as number) > 0) return true;
    return false;
  }

  #canRepeat(from: number, columns: number, grid: Int16Array, loose: Int16Array): boolean {
    for (const period of this.#periods) if (this.#hasPeriod(from, columns, grid, period, loose)) return true;
    return false;
  }

  #hasPeriod(from: number, columns: number, grid: Int16Array, period: number, loose: Int16Array): boolean {
    for (let turn = 0; turn < period; turn++) {
      let id = -1;
      let gaps = 0;
      for (let i = from + turn; i < from + columns; i += period) {
        const here = grid[i] as number;
        if (here === -1) gaps++;
        else if (id === -1) id = here;
        else if (here !== id) return false;
      }
      if (id !== -1 && (loose[id] as number) < gaps) return false;
    }
    return true;
  }

  #canBeSentence(grid: Int16Array, from: number, to: number, loose: Int16Array): boolean {
    const tokens = this.#tokens;
    let gapAt = -1;
    let gaps = 0;
    let comparisons = 0;
    for (let i = from; i < to; i++) {
      const id = grid[i] as number;
      if (id === -1) {
        gaps++;
        gapAt = i;
      } else if ((tokens[id] as Token).isComparison) comparisons++;
    }
    if (comparisons > 1 && this.#puzzle.isOneComparison) return false;
    if (gaps === to - from) return true;
    if (gaps > 1) return comparisons === 0 || this.#sums.areSidesTrue(grid, from, to);
    if (gaps === 0) return comparisons > 0 && this.#sums.areSidesTrue(grid, from, to);
    for (const id of this.#fillingsOf(grid, from, to, gapAt)) if ((loose[id] as number) > 0) return true;
    return false;
  }

  /** The tokens that would make the part true in its only gap. */
  #fillingsOf(grid: Int16Array, from: number, to: number, gapAt: number): readonly number[] {
    let key = to - from;
    for (let i = from; i < to; i++) key = key * this.#base + (grid[i] as number) + 1;
    const isKey = key <= Number.MAX_SAFE_INTEGER;
    const known = isKey ? this.#fillings.get(key) : undefined;
    if (known) return known;
    const candidates = (gapAt - from) % 2 === 0 ? this.#numbers : this.#signs;
    const found = candidates.filter((id) => {
      grid[gapAt] = id;
      const fits = isPartTrue(grid, from, to, this.#sums, this.#puzzle.isOneComparison, this.#tokens);
      grid[gapAt] = -1;
      return fits;
    });
    if (isKey) this.#fillings.set(key, found);
    return found;
  }
}

function partsOf(
  drawn: readonly number[],
  tokens: readonly Token[],
  from: number,
  columns: number,
): (readonly [number, number])[] {
  const parts: [number, number][] = [];
  for (let i = from; i < from + columns; i++) {
    if ((tokens[drawn[i] as number] as Token).kind === 'blank') continue;
    const last = parts.at(-1);
    if (last && last[1] === i) last[1] = i + 1;
    else parts.push([i, i + 1]);
  }
  return parts;
}
