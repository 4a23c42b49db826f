// Judges a jigsaw from its JSON alone, by what the command's contract promises. Shares no code with the program.
import {
  type Cell,
  COMPARISONS,
  isRowTrue,
  type Jigsaw,
  kindOf,
  partsOf,
  type Place,
  rowsOf,
} from './jigsaw-rows.js';
import { countAssemblies } from './jigsaw-search.js';

/** The fewest assemblies by outline and kind that a jigsaw of so many cells may have. */
function fewestFits(cells: number): number {
  if (cells >= 54) return 100;
  if (cells >= 35) return 30;
  return cells >= 20 ? 10 : 4;
}

/** What makes a true sentence dull: the same numbers on both sides, a number taken from itself, + 0, times 1. */
function dullness(part: readonly Cell[]): string | null {
  const text = part.map((cell) => cell.text).join(' ');
  const sides = part.reduce<Cell[][]>(
    (all, cell) => {
      if (COMPARISONS.includes(cell.expression)) all.push([]);
      else (all.at(-1) as Cell[]).push(cell);
      return all;
    },
    [[]],
  );
  const names = sides.map((side) =>
    side
      .map((cell) => cell.text)
      .toSorted()
      .join(' '),
  );
  if (new Set(names).size < names.length) return `${text} has the same on both sides`;
  for (const side of sides) {
    for (let i = 2; i < side.length; i += 2) {
      const [before, sign, after] = [side[i - 2] as Cell, (side[i - 1] as Cell).expression, side[i] as Cell];
      if (after.expression === '0' || before.expression === '0') return `${text} has a nought`;
      if ('*/'.includes(sign) && [before, after].some(({ expression }) => expression === '1'))
        return `${text} has a factor of 1`;
      const beforeSign = side[i - 3]?.expression ?? '+';
      if (
        before.text === after.text &&
        sign !== beforeSign &&
        '+-'.includes(sign) &&
        '+-'.includes(beforeSign)
      )
        return `${text} undoes itself`;
    }
  }
  return null;
}

/** Pieces alike in outline and kinds of cell can change places: so many fits by outline there are at least. */
function exchanges({ pieces, cells, columns }: Jigsaw): number {
  const alike = new Map<string, number>();
  let product = 1;
  for (const { cells: places } of pieces) {
    const [[top, left]] = places.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]) as [Place];
    const look = places
      .map(
        ([row, column]) => `${row - top} ${column - left} ${kindOf(cells[row * columns + column] as Cell)}`,
      )
      .toSorted()
      .join('|');
    alike.set(look, (alike.get(look) ?? 0) + 1);
    product *= alike.get(look) as number;
  }
  return product;
}

function isConnected(places: readonly Place[]): boolean {
  const left = new Set(places.slice(1).map((place) => place.join()));
  const queue: Place[] = places.slice(0, 1);
  for (const [row, column] of queue) {
    for (const next of [
      [row - 1, column],
      [row + 1, column],
      [row, column - 1],
      [row, column + 1],
    ] as const) {
      if (left.delete(next.join())) queue.push(next);
    }
  }
  return left.size === 0;
}

function isBar(places: readonly Place[]): boolean {
  return (
    new Set(places.map(([row]) => row)).size === 1 || new Set(places.map(([, column]) => column)).size === 1
  );
}

/** Every broken promise of a jigsaw. With `isWhole` assemblies of all kinds are counted, else those with kinds as drawn. */
export function jigsawProblems(
  jigsaw: Jigsaw,
  asked: { readonly rows: number; readonly columns: number; readonly level: string },
  isWhole = true,
): string[] {
  const problems: string[] = [];
  const claim = (holds: boolean, problem: string) => void (holds || problems.push(problem));
  const { rows, columns, cells, pieces, given, proof, rowRule } = jigsaw;
  claim(jigsaw.kind === 'jigsaw', 'is no jigsaw');
  claim(rows === asked.rows && columns === asked.columns, 'is of another size');
  if (cells.length !== asked.rows * asked.columns) return [...problems, 'has too few or too many cells'];
  const lines = rowsOf(jigsaw);
  for (const line of lines) {
    const text = line.map((cell) => cell.text).join(' ');
    claim(isRowTrue(line, rowRule), `row ${text} is not true`);
    if (rowRule === 'sentences')
      for (const part of partsOf(line)) claim(dullness(part) === null, `${dullness(part)}`);
  }
  const names = lines.map((line) => line.map((cell) => cell.text).join(' '));
  claim(new Set(names).size === rows, 'has a row twice');
  if (rowRule === 'sentences') {
    const parts = lines.flatMap(partsOf).map((part) => part.map((cell) => cell.text));
    const plain = parts.map(
      (part) => [part.join(' '), part.join(' ').split(' = ').toReversed().join(' = ')].toSorted()[0],
    );
    claim(new Set(plain).size === plain.length, 'says something twice');
  }
  for (const cell of cells) claim((cell.text === '') === (cell.expression === ''), 'has a half-blank cell');

  const covered = pieces.flatMap((piece) => piece.cells.map((place) => place.join()));
  claim(
    covered.length === cells.length && new Set(covered).size === cells.length,
    'has pieces that overlap or leave gaps',
  );
  for (const { cells: places } of pieces) {
    claim(isConnected(places), 'has a piece that falls apart');
    claim(places.length >= 2 && places.length <= 5, `has a piece of ${places.length} cells`);
    claim(
      places.some(([row, column]) => kindOf(cells[row * columns + column] as Cell) === 'number'),
      'has a piece of signs alone',
    );
  }
  const looks = pieces.map(({ cells: places }) => {
    const [[top, left]] = places.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]) as [Place];
    return places
      .map(([row, column]) => `${row - top} ${column - left} ${cells[row * columns + column]?.text}`)
      .toSorted()
      .join('|');
  });
  claim(new Set(looks).size === pieces.length, 'has two pieces that look the same');
  const bars = pieces
    .filter(({ cells: places }) => isBar(places))
    .map(({ cells: places }) =>
      places
        .map(([row, column]) => [row - (places[0] as Place)[0], column - (places[0] as Place)[1]].join())
        .join(' '),
    );
  claim(new Set(bars).size === bars.length, 'repeats a bar');
  claim(new Set(given.map((place) => place.join())).size === given.length, 'prints a cell twice');
  claim(
    given.every(([row, column]) => row >= 0 && row < rows && column >= 0 && column < columns),
    'prints a cell outside',
  );

  const fewest = fewestFits(cells.length);
  const exchanged = exchanges(jigsaw);
  const fits =
    exchanged >= fewest ? exchanged : countAssemblies(jigsaw, { most: fewest, byKind: true, byRows: false });
  claim(
    fits >= fewest && proof.outlineFits >= fewest,
    `fits by outline ${fits} times and states ${proof.outlineFits}`,
  );
  const assemblies = countAssemblies(jigsaw, { most: 2, byKind: !isWhole });
  claim(
    assemblies === 1 && proof.assemblies === 1,
    `has ${assemblies} assemblies and states ${proof.assemblies}`,
  );
  claim(proof.level === asked.level, `is ${proof.level}, not ${asked.level}`);
  claim(
    (proof.level === 'easy') === (proof.wrongTries === 0),
    `is ${proof.level} with ${proof.wrongTries} wrong tries`,
  );
  return problems;
}
