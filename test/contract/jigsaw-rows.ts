// A jigsaw as the command's contract writes it: how a row is judged, by mathjs with exact fractions, and where pieces can lie.
// Shares no code with the program.
import { fractionMath } from '../support/exact-math.js';

export type Place = readonly [row: number, column: number];

export interface Cell {
  readonly text: string;
  readonly expression: string;
  readonly figure?: object;
}

export interface Jigsaw {
  readonly kind: string;
  readonly seed: number;
  readonly rows: number;
  readonly columns: number;
  readonly cells: readonly Cell[];
  readonly rowRule: 'sentences' | 'steps' | 'repeats';
  readonly pieces: readonly { readonly cells: readonly Place[] }[];
  readonly given: readonly Place[];
  readonly proof: {
    readonly assemblies: number;
    readonly outlineFits: number;
    readonly wrongTries: number;
    readonly level: string;
  };
}

const SIGNS = new Set(['+', '-', '*', '/', '==', '<', '>', '<=', '>=']);
export const COMPARISONS: readonly string[] = ['==', '<', '>', '<=', '>='];

/** Number (or word, or shape), sign or blank. */
export function kindOf(cell: Cell): 'number' | 'sign' | 'blank' {
  if (cell.text === '' && cell.expression === '') return 'blank';
  return SIGNS.has(cell.expression) ? 'sign' : 'number';
}

const values = new Map<string, unknown>();

/** The exact value of an expression, or undefined when it has none. */
function valueOf(expression: string): unknown {
  if (!values.has(expression)) {
    let value: unknown;
    try {
      value = fractionMath.evaluate(expression);
    } catch {
      // Not arithmetic: numbers side by side, a sign at the end.
    }
    values.set(expression, value);
  }
  return values.get(expression);
}

/** Stretches between blank cells. */
export function partsOf(cells: readonly Cell[]): Cell[][] {
  const parts: Cell[][] = [[]];
  for (const cell of cells) {
    if (kindOf(cell) === 'blank') parts.push([]);
    else (parts.at(-1) as Cell[]).push(cell);
  }
  return parts.filter((part) => part.length > 0);
}

/** A comparison, or several in a chain: every neighbouring pair must be true. */
function isSentenceTrue(part: readonly Cell[]): boolean {
  const sides: string[] = [''];
  const signs: string[] = [];
  for (const { expression } of part) {
    if (COMPARISONS.includes(expression)) {
      signs.push(expression);
      sides.push('');
    } else sides[sides.length - 1] += ` ${expression}`;
  }
  return (
    signs.length > 0 &&
    sides.every((side) => valueOf(side) !== undefined) &&
    signs.every((sign, i) => valueOf(`(${sides[i]}) ${sign} (${sides[i + 1]})`) === true)
  );
}

/** Whether a full row keeps its rule. */
export function isRowTrue(cells: readonly Cell[], rule: Jigsaw['rowRule']): boolean {
  if (rule === 'sentences') return partsOf(cells).every(isSentenceTrue);
  if (rule === 'repeats') {
    return [2, 3, 4].some(
      (period) =>
        cells.length >= 1.5 * period &&
        cells.every(({ text }, i) => text !== '' && (i < period || text === cells[i - period]?.text)),
    );
  }
  if (cells.some((cell) => kindOf(cell) !== 'number')) return false;
  const [first, second] = cells as [Cell, Cell];
  const step = `((${second.expression}) - (${first.expression}))`;
  return (
    valueOf(`${step} == 0`) === false &&
    cells.every(
      ({ expression }, i) => valueOf(`(${first.expression}) + ${i} * ${step} == (${expression})`) === true,
    )
  );
}

/** The cells row by row. */
export function rowsOf({ cells, rows, columns }: Jigsaw): Cell[][] {
  return Array.from({ length: rows }, (_, row) => cells.slice(row * columns, (row + 1) * columns));
}

/** One way to lay one piece: the cells of the frame it covers, in reading order, and what comes to lie there. */
export interface Laid {
  readonly piece: number;
  readonly at: readonly number[];
  readonly cells: readonly Cell[];
}

/** Every way to lay every piece inside the frame so that printed cells show their text; with `byKind` also by kind of cell. */
export function waysToLay(jigsaw: Jigsaw, { byKind = false, printed = true } = {}): Laid[] {
  const { rows, columns, cells, pieces, given } = jigsaw;
  const shown = new Set(printed ? given.map(([row, column]) => row * columns + column) : []);
  return pieces.flatMap(({ cells: places }, piece) => {
    const ways: Laid[] = [];
    for (let down = -rows; down <= rows; down++) {
      for (let across = -columns; across <= columns; across++) {
        const moved = places.map(([row, column]) => [row + down, column + across] as const);
        if (moved.some(([row, column]) => row < 0 || row >= rows || column < 0 || column >= columns))
          continue;
        const laid = moved
          .map(([row, column], i) => {
            const [fromRow, fromColumn] = places[i] as Place;
            return { at: row * columns + column, cell: cells[fromRow * columns + fromColumn] as Cell };
          })
          .sort((a, b) => a.at - b.at);
        const fits = laid.every(({ at, cell }) => {
          const drawn = cells[at] as Cell;
          return (!shown.has(at) || cell.text === drawn.text) && (!byKind || kindOf(cell) === kindOf(drawn));
        });
        if (fits) ways.push({ piece, at: laid.map(({ at }) => at), cells: laid.map(({ cell }) => cell) });
      }
    }
    return ways;
  });
}
