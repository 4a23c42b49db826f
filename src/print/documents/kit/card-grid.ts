// Where cards lie on a sheet: edge to edge, so that every cut is one straight line across, and centred from left to right,
// so that the backs of a sheet turned over its long edge lie behind their fronts.
import { paperSize } from '../../paper.js';
import type { PaperId } from '../../request.js';

/** A grid of equal cards; millimetres from the upper left corner of the sheet. */
export interface CardGrid {
  readonly columns: number;
  readonly rows: number;
  readonly cardWidth: number;
  readonly cardHeight: number;
  readonly left: number;
  readonly top: number;
}

/** One place of a grid, counted from 0. */
export interface CardPlace {
  readonly column: number;
  readonly row: number;
}

/** Holds the notes, clear of the cuts, and keeps off the edge that printers cannot print. */
const MARGIN_MM = 12;
const SIDE_MM = 10;

/** The room for cards on a sheet of paper, upright or on its side, in millimetres. */
export function roomForCards(paper: PaperId, isOnSide = false): { widthMm: number; heightMm: number } {
  const { widthMm, heightMm } = paperSize(paper);
  const [width, height] = isOnSide ? [heightMm, widthMm] : [widthMm, heightMm];
  return { widthMm: width - 2 * SIDE_MM, heightMm: height - 2 * MARGIN_MM };
}

/**
 * The grid of `columns` x `rows` cards on a sheet. Cards are as large as the room allows, in whole millimetres, and not
 * larger than `mostWidth` x `mostHeight`; it is centred, or lies at the top where it leaves room for another row.
 */
export function cardGrid(
  paper: PaperId,
  columns: number,
  rows: number,
  most: { readonly widthMm: number; readonly heightMm: number },
): CardGrid {
  const page = paperSize(paper);
  const room = roomForCards(paper);
  const cardWidth = Math.min(most.widthMm, Math.floor(room.widthMm / columns));
  const cardHeight = Math.min(most.heightMm, Math.floor(room.heightMm / rows));
  const spare = room.heightMm - rows * cardHeight;
  return {
    columns,
    rows,
    cardWidth,
    cardHeight,
    left: (page.widthMm - columns * cardWidth) / 2,
    top: MARGIN_MM + (spare < cardHeight ? spare / 2 : 0),
  };
}

/** The place of the n-th card, row by row. */
export function placeOf(grid: CardGrid, n: number): CardPlace {
  return { column: n % grid.columns, row: Math.floor(n / grid.columns) };
}

/** The place behind it on the other side of a sheet turned over its long edge. */
export function placeBehind(grid: CardGrid, { column, row }: CardPlace): CardPlace {
  return { column: grid.columns - 1 - column, row };
}
