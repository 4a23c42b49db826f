// The drawings that print and screen share: a piece with its cells, and the mat on which the pieces are laid. Millimetres;
// both are vector drawings in black, white and fine grey lines.
import { escapeXml, INK, line, type Mark, mm, type Point, polygon, text } from '../../figures/svg.js';
import { cellMarks, commonSizeMm, FIGURE_SIZE, hasFreeCorner, hatch, signRing } from './cell-marks.js';
import type { Jigsaw, Place } from './jigsaw.js';
import { pieceName } from './piece-names.js';
import { boxOfPiece, pieceOutline } from './piece-outline.js';
import { cellAt, spokenCell, spokenPlace } from './spoken.js';
import { kindOf } from './token.js';

export interface JigsawDrawing {
  /** Written with sizes in mm; the viewBox is in mm too and begins `marginMm` left of and above the first cell. */
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Clear space around the cells on every side, room for half the outer line. */
  readonly marginMm: number;
  /** What a screen reader says. */
  readonly alt: string;
}

/** The cut line of a piece, drawn with it. */
export interface PieceDrawing extends JigsawDrawing {
  /** The `d` of its outline in mm from the top left of the piece's box (without the margin). */
  readonly outline: string;
  /** Size of the box in cells. */
  readonly rows: number;
  readonly columns: number;
}

type Source = Pick<Jigsaw, 'rows' | 'columns' | 'cells' | 'pieces' | 'given' | 'locale'>;

const MARGIN_MM = 0.5;
const OUTLINE_MM = 0.5;
const GRID_MM = 0.2;
const GRID_INK = '#999999';
const GIVEN_INK = '#555555';
/** Letters of pieces, as a share of a cell's side; in small cells they grow, up to a share, to what an adult can read. */
const NAME_SIZE = 0.15;
const MOST_NAME_SIZE = 0.2;
const READABLE_NAME_MM = 2.1;
/** The number of the set: 5.5 to 6.5 points. */
const SET_SIZE = 0.1;
const [LEAST_SET_MM, MOST_SET_MM] = [1.95, 2.3];

/** How what stands in the cells is drawn. */
export interface CellStyle {
  /** Side of the square in the middle of each cell that texts and pictures are scaled to; the cell's own side unless given. */
  readonly contentMm?: number;
}

/**
 * The largest `contentMm` at which no text or picture comes closer than `clearMm` to the edge of its cell: 0.88 of the
 * square is the most that any takes up.
 */
export function contentFor(cellMm: number, clearMm: number): number {
  return Math.min(cellMm, (cellMm - 2 * clearMm) / FIGURE_SIZE);
}

/**
 * One piece as it lies: outline, cells, and its letter with a small arrow in a free corner, which says which
 * way is up (6 or 9). `cellMm` is the side of a cell. Without `isNamed` the letter is left out and the arrow stays. The
 * number of the `set`, when given, stands small in the corner below, so that a lost piece finds its bag.
 */
export function drawJigsawPiece(
  jigsaw: Source,
  piece: number,
  cellMm: number,
  {
    isNamed = true,
    contentMm = cellMm,
    set,
  }: CellStyle & { readonly isNamed?: boolean; readonly set?: number } = {},
): PieceDrawing {
  const cells = (jigsaw.pieces[piece] as Jigsaw['pieces'][number]).cells;
  const { top, left, rows, columns } = boxOfPiece(cells);
  const outline = pieceOutline(cells, cellMm);
  const move = (place: Place): Place => [place[0] - top, place[1] - left];
  const sizeMm = commonSizeMm(jigsaw.cells, contentMm);
  const marks = [
    ...innerLines(cells.map(move), cellMm),
    ...cells.flatMap((place) =>
      cellMarks(cellAt(jigsaw, place), middleOf(move(place), cellMm), {
        cellMm: contentMm,
        sizeMm,
        locale: jigsaw.locale,
      }),
    ),
    ...upMark(move(markedPlace(jigsaw, cells)), cellMm, contentMm, isNamed ? pieceName(piece) : ''),
    ...(set === undefined ? [] : [setMark(move(setPlace(jigsaw, cells)), cellMm, contentMm, set)]),
  ];
  const texts = cells.map((place) => spokenCell(cellAt(jigsaw, place), jigsaw.locale)).join(', ');
  const alt = `Piece ${pieceName(piece)}: ${texts}.`;
  const path = `<path d="${outline}" fill="#ffffff" stroke="${INK}" stroke-width="${OUTLINE_MM}" stroke-linejoin="round"/>`;
  return { ...framed(path + rendered(marks), rows, columns, cellMm, alt), outline, rows, columns };
}

/**
 * The mat: the frame with one place for every cell. Rings wait for signs, hatched cells for hatched ones, and what is
 * printed in the frame stands there in grey. With `isSolved` all pieces lie on it, with their letters: the adult's key.
 */
export function drawJigsawMat(
  jigsaw: Source,
  cellMm: number,
  { isSolved = false, contentMm = cellMm }: CellStyle & { readonly isSolved?: boolean } = {},
): JigsawDrawing {
  const { rows, columns, cells, locale } = jigsaw;
  const sizeMm = commonSizeMm(cells, contentMm);
  const given = new Set(jigsaw.given.map(([row, column]) => row * columns + column));
  const marks: Mark[] = gridLines(rows, columns, cellMm);
  cells.forEach((cell, at) => {
    const middle = middleOf([Math.floor(at / columns), at % columns], cellMm);
    if (isSolved || given.has(at)) {
      marks.push(
        ...cellMarks(cell, middle, { cellMm: contentMm, sizeMm, locale, ink: isSolved ? INK : GIVEN_INK }),
      );
    } else if (kindOf(cell) === 'sign') marks.push(signRing(middle, contentMm));
    else if (kindOf(cell) === 'blank') marks.push(...hatch(middle, contentMm));
  });
  const lines = isSolved
    ? jigsaw.pieces.map(({ cells: places }, piece) => {
        const { top, left } = boxOfPiece(places);
        marks.push(...upMark(markedPlace(jigsaw, places), cellMm, contentMm, pieceName(piece)));
        return `<path d="${pieceOutline(places, cellMm)}" transform="translate(${mm(left * cellMm)} ${mm(top * cellMm)})" fill="none" stroke="${INK}" stroke-width="${OUTLINE_MM}"/>`;
      })
    : [];
  const size = `width="${mm(columns * cellMm)}" height="${mm(rows * cellMm)}"`;
  const frame = `<rect ${size} rx="${mm(0.13 * cellMm)}" fill="#ffffff" stroke="${INK}" stroke-width="${OUTLINE_MM}"/>`;
  const alt = isSolved
    ? `The finished jigsaw. ${rowTexts(jigsaw).join(' ')}`
    : `The mat: ${rows} rows of ${columns} cells. ${printedText(jigsaw)}`;
  return framed(frame + rendered(marks) + lines.join(''), rows, columns, cellMm, alt);
}

function rowTexts(jigsaw: Source): string[] {
  return Array.from({ length: jigsaw.rows }, (_, row) => {
    const cells = jigsaw.cells.slice(row * jigsaw.columns, (row + 1) * jigsaw.columns);
    return `Row ${row + 1}: ${cells.map((cell) => spokenCell(cell, jigsaw.locale)).join(' ')}.`;
  });
}

function printedText(jigsaw: Source): string {
  const printed = jigsaw.given.filter((place) => cellAt(jigsaw, place).text !== '');
  if (printed.length === 0) return 'Nothing is printed in it.';
  const each = printed.map(
    (place) => `${spokenCell(cellAt(jigsaw, place), jigsaw.locale)} in ${spokenPlace(place)}`,
  );
  return `Printed in it: ${each.join('; ')}.`;
}

function framed(body: string, rows: number, columns: number, cellMm: number, alt: string): JigsawDrawing {
  const widthMm = columns * cellMm + 2 * MARGIN_MM;
  const heightMm = rows * cellMm + 2 * MARGIN_MM;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(widthMm)}mm" height="${mm(heightMm)}mm" viewBox="${-MARGIN_MM} ${-MARGIN_MM} ${mm(widthMm)} ${mm(heightMm)}" role="img" aria-label="${escapeXml(alt)}">${body}</svg>`;
  return { svg, widthMm, heightMm, marginMm: MARGIN_MM, alt };
}

function rendered(marks: readonly Mark[]): string {
  return marks.map((mark) => mark.render(0, 0)).join('');
}

function middleOf([row, column]: Place, cellMm: number): Point {
  return [(column + 0.5) * cellMm, (row + 0.5) * cellMm];
}

/** Fine lines between the cells of one piece. */
function innerLines(cells: readonly Place[], cellMm: number): Mark[] {
  const has = new Set(cells.map((place) => place.join()));
  return cells.flatMap(([row, column]) => {
    const marks: Mark[] = [];
    const [x, y] = [column * cellMm, row * cellMm];
    if (has.has([row, column + 1].join())) marks.push(fine([x + cellMm, y], [x + cellMm, y + cellMm]));
    if (has.has([row + 1, column].join())) marks.push(fine([x, y + cellMm], [x + cellMm, y + cellMm]));
    return marks;
  });
}

function gridLines(rows: number, columns: number, cellMm: number): Mark[] {
  const [width, height] = [columns * cellMm, rows * cellMm];
  return [
    ...Array.from({ length: columns - 1 }, (_, i) => fine([(i + 1) * cellMm, 0], [(i + 1) * cellMm, height])),
    ...Array.from({ length: rows - 1 }, (_, i) => fine([0, (i + 1) * cellMm], [width, (i + 1) * cellMm])),
  ];
}

function fine(from: Point, to: Point): Mark {
  return line(from, to, { stroke: GRID_INK, widthMm: GRID_MM });
}

/** The first cell of a piece whose corner is free: none with a picture or words, if there is another. */
function markedPlace(jigsaw: Source, cells: readonly Place[]): Place {
  const ordered = cells.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  return ordered.find((place) => hasFreeCorner(cellAt(jigsaw, place))) ?? (ordered[0] as Place);
}

/** The small arrow that points up, with the piece's letter beside it, at the top left of a cell. */
function upMark([row, column]: Place, cellMm: number, contentMm: number, name: string): Mark[] {
  const size = Math.max(NAME_SIZE * contentMm, Math.min(READABLE_NAME_MM, MOST_NAME_SIZE * contentMm));
  const rim = (cellMm - contentMm) / 2;
  const [x, y] = [column * cellMm + rim + 0.1 * contentMm, row * cellMm + rim + 0.14 * contentMm];
  const arrow = polygon(
    [
      [x, y - 0.3 * size],
      [x + 0.32 * size, y + 0.3 * size],
      [x - 0.32 * size, y + 0.3 * size],
    ],
    { fill: INK, stroke: 'none' },
  );
  return name === '' ? [arrow] : [arrow, text(name, [x + 0.55 * size, y], size, 'start')];
}

/** The first cell of a piece with room below what stands in it: fractions and pictures have none, a ring has a little. */
function setPlace(jigsaw: Source, cells: readonly Place[]): Place {
  const isLow = (place: Place) => {
    const cell = cellAt(jigsaw, place);
    return kindOf(cell) === 'number' && hasFreeCorner(cell) && !cell.text.includes('/');
  };
  const isSign = (place: Place) => kindOf(cellAt(jigsaw, place)) === 'sign';
  return cells.find(isLow) ?? cells.find(isSign) ?? markedPlace(jigsaw, cells);
}

/** "set 3" at the bottom left of a cell. */
function setMark([row, column]: Place, cellMm: number, contentMm: number, set: number): Mark {
  const size = Math.max(LEAST_SET_MM, Math.min(MOST_SET_MM, SET_SIZE * contentMm));
  const rim = (cellMm - contentMm) / 2;
  const at: Point = [
    column * cellMm + rim + 0.07 * contentMm,
    (row + 1) * cellMm - rim - 0.07 * contentMm - 0.4 * size,
  ];
  return text(`set ${set}`, at, size, 'start', GIVEN_INK);
}
