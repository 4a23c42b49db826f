// Where the mat and the pieces lie on a sheet to cut and paste, in millimetres.
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import { boxOfPiece } from '#engine/activities/jigsaw/piece-outline.js';

/** Room for scissors between pieces, and between the mat and the pieces. */
const GAP_MM = 4;

export interface SheetRoom {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface PupilLayout {
  readonly cell: number;
  readonly mat: Spot;
  readonly pieces: readonly (Spot & { readonly piece: number })[];
  /** Whether all of it lies within the room. */
  readonly fits: boolean;
}

interface Box {
  readonly piece: number;
  readonly width: number;
  readonly height: number;
}

/** Tallest first; pieces of one height in their own, shuffled order. */
function boxesOf({ pieces }: Jigsaw, cell: number): Box[] {
  return pieces
    .map(({ cells }, piece) => {
      const { rows, columns } = boxOfPiece(cells);
      return { piece, width: columns * cell, height: rows * cell };
    })
    .sort((a, b) => b.height - a.height || a.piece - b.piece);
}

/** The mat in the middle above, the pieces below it in rows of like height, with straight lanes to cut along between the rows. */
export function layInRows(jigsaw: Jigsaw, cell: number, room: SheetRoom): PupilLayout {
  const width = room.right - room.left;
  const rows: Box[][] = [];
  const widthOf = (row: readonly Box[]) => row.reduce((sum, box) => sum + box.width + GAP_MM, -GAP_MM);
  for (const box of boxesOf(jigsaw, cell)) {
    const row = rows.find((one) => widthOf([...one, box]) <= width);
    if (row) row.push(box);
    else rows.push([box]);
  }
  const pieces: PupilLayout['pieces'][number][] = [];
  let y = room.top + jigsaw.rows * cell + 2 * GAP_MM;
  for (const row of rows) {
    const spare = row.length > 1 ? (width - widthOf(row)) / (row.length - 1) : 0;
    let x = room.left;
    for (const box of row) {
      pieces.push({ piece: box.piece, x, y });
      x += box.width + GAP_MM + Math.min(spare, GAP_MM);
    }
    y += Math.max(...row.map((box) => box.height)) + GAP_MM;
  }
  const mat = { x: room.left + (width - jigsaw.columns * cell) / 2, y: room.top };
  return { cell, mat, pieces, fits: y - GAP_MM <= room.bottom };
}

/** The mat in the upper left corner, each piece as high as it goes, then as far left, beside the mat too. */
export function layAround(jigsaw: Jigsaw, cell: number, room: SheetRoom): PupilLayout {
  const mat = { x: room.left, y: room.top };
  const taken: (Spot & { width: number; height: number })[] = [
    { ...mat, width: jigsaw.columns * cell + GAP_MM, height: jigsaw.rows * cell + GAP_MM },
  ];
  const pieces: PupilLayout['pieces'][number][] = [];
  for (const { piece, width, height } of boxesOf(jigsaw, cell)) {
    const spot = highestSpot(taken, { width, height }, room);
    pieces.push({ piece, ...spot });
    taken.push({ ...spot, width: width + GAP_MM, height: height + GAP_MM });
  }
  const bottom = Math.max(...taken.map((box) => box.y + box.height)) - GAP_MM;
  return { cell, mat, pieces, fits: bottom <= room.bottom };
}

function highestSpot(
  taken: readonly (Spot & { readonly width: number; readonly height: number })[],
  { width, height }: { readonly width: number; readonly height: number },
  room: SheetRoom,
): Spot {
  const xs = [room.left, ...taken.map((box) => box.x + box.width)].filter((x) => x + width <= room.right);
  const ys = [room.top, ...taken.map((box) => box.y + box.height)].sort((a, b) => a - b);
  xs.sort((a, b) => a - b);
  for (const y of ys)
    for (const x of xs) {
      const isFree = taken.every(
        (box) =>
          x >= box.x + box.width ||
          x + width + GAP_MM <= box.x ||
          y >= box.y + box.height ||
          y + height + GAP_MM <= box.y,
      );
      if (isFree) return { x, y };
    }
  return { x: room.left, y: ys.at(-1) ?? room.top };
}
