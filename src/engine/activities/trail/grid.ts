// The edges of a rectangle of cells, numbered once each, so that two neighbours cannot disagree while a picture is woven.
import { EAST, NORTH, SOUTH, WEST } from './codes.js';

export interface Grid {
  readonly rows: number;
  readonly columns: number;
  readonly cells: number;
  readonly edges: number;
  /** Edge numbers of a cell at 4 * cell + side. */
  readonly edgeOf: Int16Array;
  /** The cells beside an edge, -1 for the frame: above or left of it at 2 * edge, below or right of it at 2 * edge + 1. */
  readonly besides: Int16Array;
}

/** The numbered edges of `rows` x `columns` cells; cells row by row. */
export function makeGrid(rows: number, columns: number): Grid {
  const cells = rows * columns;
  const across = (rows + 1) * columns;
  const edges = across + rows * (columns + 1);
  const edgeOf = new Int16Array(4 * cells);
  const besides = new Int16Array(2 * edges).fill(-1);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const cell = row * columns + column;
      const north = row * columns + column;
      const west = across + row * (columns + 1) + column;
      edgeOf[4 * cell + NORTH] = north;
      edgeOf[4 * cell + SOUTH] = north + columns;
      edgeOf[4 * cell + WEST] = west;
      edgeOf[4 * cell + EAST] = west + 1;
      besides[2 * north + 1] = cell;
      besides[2 * (north + columns)] = cell;
      besides[2 * west + 1] = cell;
      besides[2 * (west + 1)] = cell;
    }
  }
  return { rows, columns, cells, edges, edgeOf, besides };
}

/** True for an edge between two cells. */
export function isInner({ besides }: Grid, edge: number): boolean {
  return (besides[2 * edge] as number) >= 0 && (besides[2 * edge + 1] as number) >= 0;
}
