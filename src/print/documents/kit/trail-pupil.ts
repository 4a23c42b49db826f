// A trail on one sheet to cut and paste into the exercise book: the mat above, its tiles below, both of one size.
import { drawMat, RIM_MM } from '#engine/activities/trail/draw/draw-mat.js';
import { drawTile } from '#engine/activities/trail/draw/draw-tile.js';
import { tileSideMm } from '#engine/activities/trail/sizes.js';
import { tileOrder } from '#engine/activities/trail/tile-order.js';
import type { Trail } from '#engine/activities/trail/trail.js';
import { paperSize } from '../../paper.js';
import type { PaperId } from '../../request.js';
import { type PartData, paperData } from '../page-data.js';
import type { KitComposer } from './activity-kit.js';
import { type CardGrid, placeOf } from './card-grid.js';
import { seedNote } from './notes.js';
import { drawingData, trailHeading } from './trail-tiles.js';

/** Above: heading, name line and words to the child. Between mat and tiles, below the tiles, and at the sides: white. */
const TOP_MM = 31;
const GAP_MM = 4;
const FOOT_MM = 11;
const SIDE_MM = 10;

/** One page a set and copy. */
export function* trailPupilParts({ sets, paper, options }: KitComposer<Trail>): Generator<PartData> {
  for (const set of sets) {
    const { activity } = set;
    const { grid, scale, matLeft } = layOut(activity, paper);
    const { heading, story } = trailHeading(set);
    const part: PartData = {
      kind: 'trail-pupil',
      pages: 1,
      paper: paperData(paper),
      grid,
      heading,
      lead: `${story} Cut out the tiles. Glue each answer on its question, arrowhead up. Does one path run from the top picture to the bottom one? Then every answer is right.`,
      foot: [options.className, seedNote(set)].filter(Boolean).join('  \u00b7  '),
      mat: drawingData(drawMat(activity), scale),
      matLeft,
      matTop: TOP_MM,
      cards: tileOrder(activity).map((tile, n) => ({
        ...placeOf(grid, n),
        tile: drawingData(drawTile(activity, tile, { isBare: true, set: set.number })),
      })),
    };
    for (let copy = 0; copy < (options.copies ?? 1); copy++) yield part;
  }
}

/** The largest tiles, in half millimetres, with which mat and tiles fit on the sheet. */
function layOut(
  { rows, columns, tiles }: Trail,
  paper: PaperId,
): { grid: CardGrid; scale: number; matLeft: number } {
  const { widthMm, heightMm } = paperSize(paper);
  const full = tileSideMm(rows, columns);
  for (let side = full; ; side -= 0.5) {
    const scale = side / full;
    const across = Math.min(tiles.length, Math.floor((widthMm - 2 * SIDE_MM) / side));
    const down = Math.ceil(tiles.length / across);
    const matHeight = rows * side + scale * (RIM_MM.above + RIM_MM.below);
    const matWidth = columns * side + 2 * scale * RIM_MM.beside;
    const top = TOP_MM + matHeight + GAP_MM;
    if (top + down * side + FOOT_MM > heightMm || matWidth > widthMm - 2 * SIDE_MM) continue;
    // Rows of equal length look calmer than a full row and a rest.
    const even = Math.ceil(tiles.length / down);
    return {
      grid: {
        columns: even,
        rows: down,
        cardWidth: side,
        cardHeight: side,
        left: (widthMm - even * side) / 2,
        top,
      },
      scale,
      matLeft: (widthMm - matWidth) / 2,
    };
  }
}
