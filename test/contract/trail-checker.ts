// Judges a trail from its JSON alone, by what the command's contract promises. Shares no code with the program: the path is
// walked, swaps are tried and arrangements counted by own searches.
import { questionProblems } from './board-checker.js';
import { type Answer, looksSame, type Question } from './chain-checker.js';

type Side = 'north' | 'east' | 'south' | 'west';
const SIDES: readonly Side[] = ['north', 'east', 'south', 'west'];
const FACING: Readonly<Record<Side, Side>> = { north: 'south', south: 'north', east: 'west', west: 'east' };

export interface Trail {
  readonly kind: string;
  readonly seed: number;
  readonly rows: number;
  readonly columns: number;
  readonly cells: readonly { readonly question: Question }[];
  readonly tiles: readonly {
    readonly answer: Answer;
    readonly edges: readonly string[];
    readonly path: readonly (readonly [Side, Side])[];
    readonly ends: readonly Side[];
  }[];
  readonly frame: Readonly<Record<Side, readonly string[]>>;
  readonly entry: { readonly cell: number; readonly side: Side };
  readonly exit: { readonly cell: number; readonly side: Side };
  readonly proof: {
    readonly arrangements: number;
    readonly swapsShown: number;
    readonly swaps: number;
    readonly leastBreaks: number;
    readonly pictureOnlyNodes: number;
  };
}

/** The place beside a cell: another cell, or the code of the frame there. */
export function beside({ rows, columns, frame }: Trail, cell: number, side: Side): number | string {
  const [row, column] = [Math.floor(cell / columns), cell % columns];
  if (side === 'north') return row > 0 ? cell - columns : (frame.north[column] as string);
  if (side === 'south') return row < rows - 1 ? cell + columns : (frame.south[column] as string);
  if (side === 'west') return column > 0 ? cell - 1 : (frame.west[row] as string);
  return column < columns - 1 ? cell + 1 : (frame.east[row] as string);
}

export function edgeOf(trail: Trail, tile: number, side: Side): string {
  return trail.tiles[tile]?.edges[SIDES.indexOf(side)] as string;
}

/** Edges, the frame's among them, that do not match when laid[cell] is the tile on each cell. */
export function brokenEdges(trail: Trail, laid: readonly number[]): number {
  let broken = 0;
  laid.forEach((tile, cell) => {
    for (const side of SIDES) {
      const other = beside(trail, cell, side);
      if (typeof other === 'string') broken += other === edgeOf(trail, tile, side) ? 0 : 1;
      else if (
        other > cell &&
        edgeOf(trail, tile, side) !== edgeOf(trail, laid[other] as number, FACING[side])
      )
        broken++;
    }
  });
  return broken;
}

/** Arrangements in which everything matches, up to `most`: the cell with the fewest fitting tiles is always filled next. */
export function countArrangements(trail: Trail, most: number): number {
  const cells = trail.tiles.map((_, i) => i);
  const laid = new Map<number, number>();
  const free = new Set(cells);
  const fits = (tile: number, cell: number) =>
    SIDES.every((side) => {
      const other = beside(trail, cell, side);
      if (typeof other === 'string') return other === edgeOf(trail, tile, side);
      const there = laid.get(other);
      return there === undefined || edgeOf(trail, there, FACING[side]) === edgeOf(trail, tile, side);
    });
  let found = 0;
  const fill = (): void => {
    if (laid.size === cells.length) {
      found++;
      return;
    }
    let next = -1;
    let choices: number[] = [];
    for (const cell of cells) {
      if (laid.has(cell)) continue;
      const fitting = [...free].filter((tile) => fits(tile, cell));
      if (next < 0 || fitting.length < choices.length) [next, choices] = [cell, fitting];
      if (choices.length === 0) return;
    }
    for (const tile of choices) {
      laid.set(next, tile);
      free.delete(tile);
      fill();
      laid.delete(next);
      free.add(tile);
      if (found >= most) return;
    }
  };
  fill();
  return found;
}

/** Tiles laid by the search that the contract describes: reading order, whatever matches frame, above and left, everything tried. */
function picturesOnlyTries(trail: Trail): number {
  let tries = 0;
  const laid: number[] = [];
  const lay = (): void => {
    const cell = laid.length;
    if (cell === trail.tiles.length) return;
    for (let tile = 0; tile < trail.tiles.length; tile++) {
      if (laid.includes(tile)) continue;
      const matches = SIDES.every((side) => {
        const other = beside(trail, cell, side);
        if (typeof other === 'string') return other === edgeOf(trail, tile, side);
        return (
          other > cell || edgeOf(trail, laid[other] as number, FACING[side]) === edgeOf(trail, tile, side)
        );
      });
      if (!matches) continue;
      tries++;
      laid.push(tile);
      lay();
      laid.pop();
    }
  };
  lay();
  return tries;
}

/** Walks from the entry along the paths drawn on the tiles: the cells passed, or null when it does not come out at the exit. */
export function walk(trail: Trail): number[] | null {
  let { cell, side } = trail.entry;
  const passed: number[] = [];
  for (;;) {
    if (passed.includes(cell)) return null;
    passed.push(cell);
    const pair = trail.tiles[cell]?.path.find((sides) => sides.includes(side));
    if (!pair) return null;
    const out = pair[0] === side ? pair[1] : pair[0];
    const next = beside(trail, cell, out);
    if (typeof next === 'string') return cell === trail.exit.cell && out === trail.exit.side ? passed : null;
    cell = next;
    side = FACING[out];
  }
}

/** Every broken promise of a trail. */
export function trailProblems(
  trail: Trail,
  asked: { readonly rows: number; readonly columns: number },
): string[] {
  const problems: string[] = [];
  const claim = (holds: boolean, problem: string) => void (holds || problems.push(problem));
  const { tiles, cells, proof, frame } = trail;
  const size = asked.rows * asked.columns;
  claim(trail.kind === 'trail', 'is no trail');
  claim(trail.rows === asked.rows && trail.columns === asked.columns, 'is of another size');
  if (tiles.length !== size || cells.length !== size) return [...problems, 'has too few cells or tiles'];
  const rims = [...frame.north, ...frame.east, ...frame.south, ...frame.west];
  claim(rims.length === 2 * (asked.rows + asked.columns), 'has a frame of another size');
  claim(
    rims.filter((code) => code !== '0').length === 2,
    'has a frame with more or less than an entry and an exit',
  );
  cells.forEach(({ question }, i) => {
    for (const problem of questionProblems(question as never)) problems.push(`question ${i} ${problem}`);
    claim(
      JSON.stringify(question.answer) === JSON.stringify(tiles[i]?.answer),
      `tile ${i} has another answer than its question`,
    );
  });
  tiles.forEach((tile, i) => {
    for (const other of tiles.slice(0, i))
      claim(!looksSame(tile.answer, other.answer), `two tiles show ${tile.answer.text}`);
    const drawn = [...tile.path.flat(), ...tile.ends];
    const carrying = SIDES.filter((side) => edgeOf(trail, i, side) !== '0');
    claim(
      drawn.length === carrying.length && carrying.every((side) => drawn.includes(side)),
      `tile ${i} draws other edges than it carries`,
    );
    for (const [a, b] of tile.path)
      claim(
        /[ab]/.test(edgeOf(trail, i, a)) === /[ab]/.test(edgeOf(trail, i, b)),
        `tile ${i} joins path and line`,
      );
  });
  const questions = cells.map(({ question }) => question.text + JSON.stringify(question.figure));
  claim(new Set(questions).size === size, 'asks a question twice');
  const passed = walk(trail);
  claim(passed !== null, 'has no unbroken trail from entry to exit');
  if (passed)
    claim(
      passed.length >= 0.5 * size && passed.length <= 0.85 * size,
      `runs over ${passed.length} of ${size} cells`,
    );

  const right = tiles.map((_, i) => i);
  claim(brokenEdges(trail, right) === 0, 'does not match in the right arrangement');
  let [least, shown, swaps] = [Number.POSITIVE_INFINITY, 0, 0];
  for (let a = 0; a < size; a++)
    for (let b = a + 1; b < size; b++) {
      const laid = right.map((tile) => (tile === a ? b : tile === b ? a : tile));
      const broken = brokenEdges(trail, laid);
      swaps++;
      least = Math.min(least, broken);
      if (broken >= 2) shown++;
    }
  claim(shown === swaps, `${swaps - shown} swaps do not show`);
  claim(
    proof.swaps === swaps && proof.swapsShown === shown && proof.leastBreaks === least,
    'states other swaps than there are',
  );
  const arrangements = countArrangements(trail, 2);
  claim(
    arrangements === 1 && proof.arrangements === 1,
    `has ${arrangements} arrangements and states ${proof.arrangements}`,
  );
  claim(
    proof.pictureOnlyNodes === picturesOnlyTries(trail),
    `states ${proof.pictureOnlyNodes} tries by picture alone`,
  );
  return problems;
}
