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

/** What a sheet keeps free above its cards; more where a heading stands. */
interface Limits {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly topMm?: number;
}

/**
 * The grid of `columns` x `rows` cards on a sheet. Cards are as large as the room allows, in whole millimetres, and not
 * larger than `most.widthMm` x `most.heightMm`. It is centred from left to right, and lies at the top of the room.
 */
export function cardGrid(paper: PaperId, columns: number, rows: number, most: Limits): CardGrid {
  const page = paperSize(paper);
  const top = most.topMm ?? MARGIN_MM;
  const cardWidth = Math.min(most.widthMm, Math.floor((page.widthMm - 2 * SIDE_MM) / columns));
  const cardHeight = Math.min(most.heightMm, Math.floor((page.heightMm - top - MARGIN_MM) / rows));
  return { columns, rows, cardWidth, cardHeight, left: (page.widthMm - columns * cardWidth) / 2, top };
}

/** How many rows of cards of that height fit below `topMm`. */
export function rowsBelow(paper: PaperId, topMm: number, cardHeightMm: number): number {
  return Math.floor((paperSize(paper).heightMm - topMm - MARGIN_MM) / cardHeightMm);
}

/** Where the first row of a sheet without a heading lies. */
export const FIRST_ROW_MM = MARGIN_MM;

/** The place of the n-th card, row by row. */
export function placeOf(grid: CardGrid, n: number): CardPlace {
  return { column: n % grid.columns, row: Math.floor(n / grid.columns) };
}

/** The place behind it on the other side of a sheet turned over its long edge. */
export function placeBehind(grid: CardGrid, { column, row }: CardPlace): CardPlace {
  return { column: grid.columns - 1 - column, row };
}
