// Counts the assemblies of a jigsaw: the cell or piece with the fewest ways left is always filled next. Rows are given up
// early only where plain floating-point arithmetic leaves no doubt; a full row is judged exactly.
import { type Cell, COMPARISONS, isRowTrue, type Jigsaw, kindOf, waysToLay } from './jigsaw-rows.js';

export interface CountOptions {
  /** Stop after so many. */
  readonly most: number;
  /** Numbers, signs and blanks must lie where they are drawn. */
  readonly byKind?: boolean;
  /** Rows must be true and printed cells met; without it only outlines (and kinds) count. */
  readonly byRows?: boolean;
}

interface Way {
  readonly piece: number;
  readonly at: readonly number[];
  readonly ids: readonly number[];
  readonly rows: readonly number[];
}

const EMPTY = -1;

/** Assemblies up to `most`. */
export function countAssemblies(
  jigsaw: Jigsaw,
  { most, byKind = false, byRows = true }: CountOptions,
): number {
  const { rows, columns, rowRule, pieces } = jigsaw;
  const names = jigsaw.cells.map((cell) => `${cell.text}\n${cell.expression}`);
  const distinct = [...new Set(names)];
  const tokens = distinct.map((name) => jigsaw.cells[names.indexOf(name)] as Cell);
  const idOf = (cell: Cell) => distinct.indexOf(`${cell.text}\n${cell.expression}`);
  const ways = waysToLay(jigsaw, { byKind, printed: byRows }).map(
    ({ piece, at, cells }): Way => ({
      piece,
      at,
      ids: cells.map(idOf),
      rows: [...new Set(at.map((cell) => Math.floor(cell / columns)))],
    }),
  );
  const grid = Array.from({ length: rows * columns }, () => EMPTY);
  const judge = new RowJudge(tokens, rowRule, columns);
  const used = pieces.map(() => false);
  const loose = tokens.map((_, id) => names.filter((name) => name === distinct[id]).length);
  const take = ({ ids }: Way, by: number) => {
    for (const id of ids) loose[id] = (loose[id] as number) + by;
  };
  const isOpen = (way: Way): boolean => {
    if (used[way.piece] || way.at.some((cell) => grid[cell] !== EMPTY)) return false;
    if (!byRows) return true;
    way.at.forEach((cell, i) => {
      grid[cell] = way.ids[i] as number;
    });
    const can = way.rows.every((row) => {
      const line = grid.slice(row * columns, (row + 1) * columns);
      return judge.canBeTrue(line) && judge.canBeFilled(line, loose);
    });
    for (const cell of way.at) grid[cell] = EMPTY;
    return can;
  };
  let found = 0;
  const fill = (open: readonly Way[], left: number): void => {
    if (left === 0) {
      found++;
      return;
    }
    const counts = new Map<string, Way[]>();
    const put = (key: string, way: Way) => {
      const list = counts.get(key);
      if (list) list.push(way);
      else counts.set(key, [way]);
    };
    for (const way of open) {
      put(`piece ${way.piece}`, way);
      for (const cell of way.at) put(`cell ${cell}`, way);
    }
    if (counts.size < left + grid.filter((id) => id === EMPTY).length) return;
    let fewest: readonly Way[] = open;
    for (const list of counts.values()) if (list.length < fewest.length) fewest = list;
    for (const way of fewest) {
      used[way.piece] = true;
      take(way, -1);
      way.at.forEach((cell, i) => {
        grid[cell] = way.ids[i] as number;
      });
      // Only ways that touch the same rows can have closed beside those that overlap.
      const rest = open.filter((other) =>
        !byRows || other.rows.some((row) => way.rows.includes(row)) ? isOpen(other) : !used[other.piece],
      );
      fill(rest, left - 1);
      for (const cell of way.at) grid[cell] = EMPTY;
      used[way.piece] = false;
      take(way, 1);
      if (found >= most) return;
    }
  };
  fill(ways.filter(isOpen), pieces.length);
  return found;
}

/** Judges lines of token numbers, EMPTY where nothing lies; remembers what it judged. */
class RowJudge {
  readonly #tokens: readonly Cell[];
  readonly #rule: Jigsaw['rowRule'];
  readonly #values: readonly number[];
  readonly #known = new Map<string, boolean>();
  readonly #columns: number;

  constructor(tokens: readonly Cell[], rule: Jigsaw['rowRule'], columns: number) {
    this.#tokens = tokens;
    this.#rule = rule;
    this.#columns = columns;
    this.#values = tokens.map((cell) => {
      const [top, bottom = '1'] = cell.expression.split('/');
      return kindOf(cell) === 'number' ? Number(top) / Number(bottom) : Number.NaN;
    });
  }

  canBeTrue(line: readonly number[]): boolean {
    const key = line.join();
    const before = this.#known.get(key);
    if (before !== undefined) return before;
    const verdict = line.includes(EMPTY)
      ? this.#couldBe(line)
      : isRowTrue(
          line.map((id) => this.#tokens[id] as Cell),
          this.#rule,
        );
    this.#known.set(key, verdict);
    return verdict;
  }

  /** Whether what the gaps of a row of steps or repeats need is among the tokens left, so many of each as `loose` says. */
  canBeFilled(line: readonly number[], loose: readonly number[]): boolean {
    if (this.#rule === 'sentences') return true;
    if (this.#rule === 'repeats') {
      return [2, 3, 4].some((period) =>
        Array.from({ length: period }, (_, turn) => line.filter((_, i) => i % period === turn)).every(
          (places) => {
            const [mark, ...others] = new Set(places.filter((id) => id !== EMPTY));
            const gaps = places.filter((id) => id === EMPTY).length;
            return others.length === 0 && (mark === undefined || (loose[mark] as number) >= gaps);
          },
        ),
      );
    }
    const wanted = this.#stepOf(line);
    if (wanted === null) return true;
    return line.every(
      (id, at) =>
        id !== EMPTY ||
        this.#values.some(
          (value, token) => (loose[token] as number) > 0 && Math.abs(value - wanted(at)) < 1e-6,
        ),
    );
  }

  /** What stands at each place of a row of steps of which two places are known. */
  #stepOf(line: readonly number[]): ((at: number) => number) | null {
    const placed = line.flatMap((id, i) => (id === EMPTY ? [] : [[this.#values[id] as number, i] as const]));
    const [first, second] = placed;
    if (!first || !second) return null;
    const step = (second[0] - first[0]) / (second[1] - first[1]);
    return (at) => first[0] + step * (at - first[1]);
  }

  #couldBe(line: readonly number[]): boolean {
    if (this.#rule === 'steps') {
      const placed = line.flatMap((id, i) =>
        id === EMPTY ? [] : [[this.#values[id] as number, i] as const],
      );
      const [first, second, ...rest] = placed;
      if (!first || !second) return true;
      const step = (second[0] - first[0]) / (second[1] - first[1]);
      const isNear = (value: number, at: number) =>
        Math.abs(first[0] + step * (at - first[1]) - value) < 1e-6;
      return (
        Math.abs(step) > 1e-6 &&
        rest.every(([value, at]) => isNear(value, at)) &&
        line.every((id, at) => id !== EMPTY || this.#values.some((value) => isNear(value, at)))
      );
    }
    if (this.#rule === 'repeats') {
      return [2, 3, 4].some(
        (period) =>
          this.#columns >= 1.5 * period &&
          line.every((id, i) =>
            line.every(
              (other, j) => (j - i) % period !== 0 || id === EMPTY || other === EMPTY || id === other,
            ),
          ),
      );
    }
    return this.#stretches(line).every((stretch) => {
      const gaps = stretch.filter((id) => id === EMPTY).length;
      if (gaps === 0) return this.#mightHold(stretch);
      if (gaps > 1) return this.#mightGrow(stretch);
      return this.#tokens.some((_, id) => {
        const filled = stretch.map((one) => (one === EMPTY ? id : one));
        return this.#stretches(filled).every((part) => this.#mightHold(part));
      });
    });
  }

  /** The stretches between blanks. */
  #stretches(line: readonly number[]): number[][] {
    const stretches: number[][] = [[]];
    for (const id of line) {
      if (id !== EMPTY && kindOf(this.#tokens[id] as Cell) === 'blank') stretches.push([]);
      else (stretches.at(-1) as number[]).push(id);
    }
    return stretches.filter((stretch) => stretch.length > 0);
  }

  /** No two numbers side by side, no sign but + and - after a sign. */
  #mightGrow(stretch: readonly number[]): boolean {
    return stretch.every((id, i) => {
      const next = stretch[i + 1];
      if (id === EMPTY || next === undefined || next === EMPTY) return true;
      const [here, after] = [this.#tokens[id] as Cell, this.#tokens[next] as Cell];
      if (kindOf(here) === 'number') return kindOf(after) === 'sign';
      return kindOf(after) === 'number' || '+-'.includes(after.expression);
    });
  }

  /** A rough reading of a full stretch: false only when it is no sentence, or its sides plainly differ. */
  #mightHold(stretch: readonly number[]): boolean {
    let side = 0;
    let term = Number.NaN;
    let isTaken = false;
    let sign = '';
    let needsNumber = true;
    let left: number | null = null;
    let comparison = '';
    const close = (): boolean => {
      if (needsNumber) return false;
      const value = side + (isTaken ? -term : term);
      const holds = left === null || roughly(left, comparison, value);
      left = value;
      return holds;
    };
    for (const id of stretch) {
      const { expression } = this.#tokens[id] as Cell;
      if (kindOf(this.#tokens[id] as Cell) === 'number') {
        if (!needsNumber) return false;
        const value = this.#values[id] as number;
        // Joined, a divisor n/d divides by n and by d.
        const [, bottom = '1'] = expression.split('/');
        if (sign === '*') term *= value;
        else if (sign === '/') term /= value * Number(bottom) ** 2;
        else term = value;
        needsNumber = false;
      } else if (COMPARISONS.includes(expression)) {
        if (!close()) return false;
        comparison = expression;
        [side, isTaken, sign, needsNumber] = [0, false, '', true];
      } else if (needsNumber) {
        // A sign before a number.
        if (sign === '*' || sign === '/') return true;
        if (expression === '-') isTaken = !isTaken;
        else if (expression !== '+') return false;
      } else {
        if (expression === '+' || expression === '-') {
          side += isTaken ? -term : term;
          isTaken = expression === '-';
        }
        sign = expression;
        needsNumber = true;
      }
    }
    return comparison !== '' && close();
  }
}

function roughly(left: number, comparison: string, right: number): boolean {
  const difference = left - right;
  if (comparison === '==') return Math.abs(difference) < 1e-6 || Number.isNaN(difference);
  return comparison.startsWith('<') ? difference < 1e-6 : difference > -1e-6;
}
