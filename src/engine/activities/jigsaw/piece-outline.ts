// The line along which a piece is cut: the edge of its cells with every corner rounded alike, so that the line tells
// nothing about the neighbours and scissors can follow it in one go.
import type { Place } from './jigsaw.js';

/** A corner of a cell, counted in cells from the top left of the piece's box. */
type Corner = readonly [x: number, y: number];

/** Radius of every corner, as a share of a cell's side. */
const ROUNDING = 0.13;

/** The box around a piece: its first row and column, and its size, all in cells. */
export function boxOfPiece(cells: readonly Place[]): {
  readonly top: number;
  readonly left: number;
  readonly rows: number;
  readonly columns: number;
} {
  const rows = cells.map(([row]) => row);
  const columns = cells.map(([, column]) => column);
  const [top, left] = [Math.min(...rows), Math.min(...columns)];
  return { top, left, rows: Math.max(...rows) - top + 1, columns: Math.max(...columns) - left + 1 };
}

/**
 * The outline of a piece as the `d` of an SVG path, in mm from the top left of its box; `cellMm` is the side of a cell. A
 * piece that encloses a hole has a second ring. Corners bend in a quarter circle of 0.13 of the side.
 */
export function pieceOutline(cells: readonly Place[], cellMm: number): string {
  const { top, left } = boxOfPiece(cells);
  const radius = ROUNDING * cellMm;
  return ringsAround(cells.map(([row, column]): Place => [row - top, column - left]))
    .map((ring) => {
      const parts = ring.map((corner, i) => {
        const before = ring[(i + ring.length - 1) % ring.length] as Corner;
        const after = ring[(i + 1) % ring.length] as Corner;
        const into = short(corner, before, cellMm, radius);
        const out = short(corner, after, cellMm, radius);
        const turn =
          (corner[0] - before[0]) * (after[1] - corner[1]) - (corner[1] - before[1]) * (after[0] - corner[0]);
        return `${i === 0 ? 'M' : 'L'}${into} A${inMm(radius)} ${inMm(radius)} 0 0 ${turn > 0 ? 1 : 0} ${out}`;
      });
      return `${parts.join(' ')} Z`;
    })
    .join(' ');
}

/** The point on the side from `corner` to `towards` where the bend begins or ends. */
function short(corner: Corner, towards: Corner, cellMm: number, radius: number): string {
  const [dx, dy] = [Math.sign(towards[0] - corner[0]), Math.sign(towards[1] - corner[1])];
  return `${inMm(corner[0] * cellMm + dx * radius)} ${inMm(corner[1] * cellMm + dy * radius)}`;
}

function inMm(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

/** The corners where the edge turns, ring by ring, with the piece on the right hand. */
function ringsAround(cells: readonly Place[]): Corner[][] {
  const has = new Set(cells.map(([row, column]) => `${row},${column}`));
  const sides = new Map<string, Corner[]>();
  const add = (from: Corner, to: Corner) => {
    const key = from.join();
    sides.set(key, [...(sides.get(key) ?? []), to]);
  };
  for (const [row, column] of cells) {
    if (!has.has(`${row - 1},${column}`)) add([column, row], [column + 1, row]);
    if (!has.has(`${row},${column + 1}`)) add([column + 1, row], [column + 1, row + 1]);
    if (!has.has(`${row + 1},${column}`)) add([column + 1, row + 1], [column, row + 1]);
    if (!has.has(`${row},${column - 1}`)) add([column, row + 1], [column, row]);
  }
  const rings: Corner[][] = [];
  for (const key of sides.keys()) {
    while ((sides.get(key) ?? []).length > 0) {
      const start = key.split(',').map(Number) as unknown as Corner;
      const ring: Corner[] = [];
      let here = start;
      let heading: Corner = [0, 0];
      do {
        const options = sides.get(here.join()) as Corner[];
        const next = sharpestRight(options, here, heading);
        options.splice(options.indexOf(next), 1);
        const turned: Corner = [next[0] - here[0], next[1] - here[1]];
        if (turned.join() !== heading.join()) ring.push(here);
        heading = turned;
        here = next;
      } while (here.join() !== start.join());
      // The ring may begin in the middle of a straight side.
      const [first, second, last] = [ring[0] as Corner, ring[1] as Corner, ring.at(-1) as Corner];
      const isStraight =
        (first[0] === last[0] && first[0] === second[0]) || (first[1] === last[1] && first[1] === second[1]);
      rings.push(isStraight ? ring.slice(1) : ring);
    }
  }
  return rings;
}

/** Where two cells touch by a corner only, the edge stays with the same cell. */
function sharpestRight(options: readonly Corner[], here: Corner, heading: Corner): Corner {
  const turn = (to: Corner) => heading[0] * (to[1] - here[1]) - heading[1] * (to[0] - here[0]);
  return options.reduce((best, to) => (turn(to) > turn(best) ? to : best));
}
