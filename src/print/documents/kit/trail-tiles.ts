// The mat of a trail, and its tiles on card stock: in mixed order, edge to edge, with set number and label on the backs.
import { drawMat } from '#engine/activities/trail/draw/draw-mat.js';
import { drawTile } from '#engine/activities/trail/draw/draw-tile.js';
import type { Drawing } from '#engine/activities/trail/draw/drawing.js';
import { storyOf } from '#engine/activities/trail/draw/scenes.js';
import { tileSideMm } from '#engine/activities/trail/sizes.js';
import { tileOrder } from '#engine/activities/trail/tile-order.js';
import type { Trail } from '#engine/activities/trail/trail.js';
import type { KitSet } from '../../kit-request.js';
import type { PaperId } from '../../request.js';
import { type FigureData, type PartData, paperData } from '../page-data.js';
import type { KitComposer } from './activity-kit.js';
import { audienceOf } from './audience.js';
import { cardGrid, placeBehind, placeOf } from './card-grid.js';
import { CAUTION, printHint, seedNote } from './notes.js';

/** A drawing in the form in which templates take figures, so many times as large. */
export function drawingData({ svg, widthMm, heightMm, alt }: Drawing, scale = 1): FigureData {
  return { svg, width: widthMm * scale, height: heightMm * scale, least: 1, alt };
}

/** The set's number with what its child does: "Trail 3: guide the bee home to its hive." */
export function trailHeading({ number, activity }: KitSet<Trail>): { heading: string; story: string } {
  return { heading: `Trail ${number}`, story: storyOf(activity) };
}

/** Everything is drawn larger on A3, mat and tiles alike. */
const SCALE: Readonly<Record<PaperId, number>> = { A4: 1, Letter: 1, A3: 1.4 };
/** The widest row of tiles, in mm on A4. */
const WIDEST_MM = 180;

/** For each set the mat, then its tiles; each sheet followed by its other side unless backs are left out. */
export function* trailTileParts(composer: KitComposer<Trail>): Generator<PartData> {
  for (const [at, set] of composer.sets.entries()) {
    yield { ...matPart(set, composer), remark: at === 0 ? sizeRemark(composer) : '' };
    yield tilePart(set, composer);
  }
}

/** Told once a job: mats and tiles are as large as the page allows, whatever was asked for. */
function sizeRemark({ options, paper }: KitComposer<Trail>): string {
  return options.largePrint && paper !== 'A3'
    ? 'A trail\u2019s mat fills its page already. Print it on A3 for a larger mat and larger tiles.'
    : '';
}

function matPart(set: KitSet<Trail>, { paper, options }: KitComposer<Trail>): PartData {
  const { activity } = set;
  const hasBacks = options.backs !== false;
  return {
    kind: 'trail-mat',
    pages: hasBacks ? 2 : 1,
    paper: paperData(paper),
    ...trailHeading(set),
    lead: `Find each answer among the tiles and lay it on its question, arrowhead up. When all ${activity.tiles.length} are right, one path runs from the top picture to the bottom one.`,
    aside: [audienceOf(activity), set.label ?? ''].filter(Boolean),
    print: `${printHint(hasBacks)} Laminate the mat whole.`,
    seed: seedNote(set),
    mat: drawingData(drawMat(activity), SCALE[paper]),
    hasBack: hasBacks,
  };
}

function tilePart(set: KitSet<Trail>, { paper, options }: KitComposer<Trail>): PartData {
  const { activity } = set;
  const side = tileSideMm(activity.rows, activity.columns);
  const columns = Math.floor(WIDEST_MM / side);
  const rows = Math.ceil(activity.tiles.length / columns);
  const grid = cardGrid(paper, columns, rows, {
    widthMm: side * SCALE[paper],
    heightMm: side * SCALE[paper],
  });
  const order = tileOrder(activity);
  const hasBacks = options.backs !== false;
  return {
    kind: 'trail-tiles',
    pages: hasBacks ? 2 : 1,
    paper: paperData(paper),
    grid,
    lowInk: options.lowInk ?? false,
    notes: {
      heading: `Trail, set ${set.number}: ${activity.tiles.length} tiles of ${grid.cardWidth} mm`,
      seed: seedNote(set),
      print: printHint(hasBacks),
      caution: CAUTION,
    },
    cards: order.map((tile, n) => ({
      ...placeOf(grid, n),
      tile: drawingData(drawTile(activity, tile, { isBare: true, set: set.number })),
    })),
    backs: hasBacks
      ? order.map((_, n) => ({
          ...placeBehind(grid, placeOf(grid, n)),
          set: String(set.number),
          activity: 'Trail',
          lines: [audienceOf(activity), set.label ?? ''].filter(Boolean),
        }))
      : null,
  };
}
