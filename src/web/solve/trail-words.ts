// What a trail says aloud: the question under a cell, the tile on it, and what meets at the edges of a tile. Listeners learn
// what lookers see, and no more.
import { edgeInWords } from '#engine/activities/trail/draw/draw-tile.js';
import { cellName } from '#engine/activities/trail/draw/draw-mat.js';
import { SIDES, type Side, type Trail } from '#engine/activities/trail/trail.js';
import { drawFigure } from '#engine/figures/draw.js';
import { type Mat, type MatShape, pieceOn, type Place } from './mat.js';

const BESIDE: Readonly<Record<Side, Place>> = { north: [-1, 0], east: [0, 1], south: [1, 0], west: [0, -1] };
const SIDE_NAMES: Readonly<Record<Side, string>> = {
  north: 'Above',
  east: 'To the right',
  south: 'Below',
  west: 'To the left',
};

export function cellOf({ columns }: Pick<Trail, 'columns'>, [row, column]: Place): number {
  return row * columns + column;
}

/** The question of a cell with its picture in words. */
export function questionWords(trail: Trail, cell: number): string {
  const question = trail.cells[cell]?.question;
  if (!question) return '';
  const figure = question.figure
    ? ` Picture: ${drawFigure(question.figure, { locale: trail.locale }).alt}`
    : '';
  return `${question.text}${figure}`;
}

/** "B3. Tile 54 lies here. Question: 6 × 9." */
export function trailCellWords(trail: Trail, shape: MatShape, mat: Mat, place: Place): string {
  const cell = cellOf(trail, place);
  const tile = pieceOn(shape, mat, place);
  const lies = tile === null ? '' : `Tile ${trail.tiles[tile]?.answer.text} lies here. `;
  return `${cellName(trail, cell)}. ${lies}Question: ${questionWords(trail, cell)}`;
}

/** What the four edges of a tile on the mat show, and what lies beside each. */
export function edgeWords(trail: Trail, shape: MatShape, mat: Mat, tile: number): string {
  const place = mat.places[tile];
  if (!place) return '';
  return SIDES.map((side, at) => {
    const own = edgeInWords(trail.tiles[tile]?.edges[at] ?? '0', at);
    return `${SIDE_NAMES[side]}: ${own}, ${besideWords(trail, shape, mat, place, side, at)}.`;
  }).join(' ');
}

function besideWords(
  trail: Trail,
  shape: MatShape,
  mat: Mat,
  [row, column]: Place,
  side: Side,
  at: number,
): string {
  const other: Place = [row + BESIDE[side][0], column + BESIDE[side][1]];
  const isInside = other[0] >= 0 && other[0] < trail.rows && other[1] >= 0 && other[1] < trail.columns;
  if (!isInside) {
    const along = side === 'north' || side === 'south' ? column : row;
    return `on the rim ${edgeInWords(trail.frame[side][along] ?? '0', at)}`;
  }
  const neighbour = pieceOn(shape, mat, other);
  if (neighbour === null) return 'no tile beside it yet';
  return `on the tile beside it ${edgeInWords(trail.tiles[neighbour]?.edges[(at + 2) % 4] ?? '0', at)}`;
}
