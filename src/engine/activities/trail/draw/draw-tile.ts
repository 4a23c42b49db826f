// A loose tile of a trail: its answer, its pieces of path, and a corner that says which way is up.
import { INK } from '../../../figures/svg.js';
import { Rng } from '../../../random/rng.js';
import { answerShapes, type PlacedAnswer, placeAnswer } from '../answer-shape.js';
import { tileSideMm } from '../sizes.js';
import { SIDES, type EdgeCode, type Trail, type TrailTile } from '../trail.js';
import { drawStroke } from './band.js';
import { type Drawing, drawingOf, num } from './drawing.js';
import { layoutOf } from './layout-of.js';
import { SCENES } from './scenes.js';
import { setLines } from './set-lines.js';
import { setMark } from './set-mark.js';

/** A tile is drawn 100 units wide and high. */
export const TILE_UNITS = 100;

export interface TileOptions {
  /** Without the white paper below it, for a sheet with cut lines. */
  readonly isBare?: boolean;
  /** The number of the set that the tile belongs to, printed small. */
  readonly set?: number;
}

/**
 * The tile that belongs on the cell of the same number, at its size on paper; the picture is square and cut to the cut
 * lines. The same trail always gives the same picture. Throws RangeError for a number that is no tile of the trail.
 */
export function drawTile(trail: Trail, index: number, options: TileOptions = {}): Drawing {
  const side = tileSideMm(trail.rows, trail.columns);
  const paper = options.isBare ? '' : `<rect width="${TILE_UNITS}" height="${TILE_UNITS}" fill="#fff"/>`;
  const body = paper + tileBody(trail, index, options.set);
  const alt = tileInWords(trail.tiles[index] as TrailTile);
  return drawingOf(body, [TILE_UNITS, TILE_UNITS], [side, side], alt);
}

/** Markup of a tile without its paper. */
export function tileBody(trail: Trail, index: number, set?: number): string {
  const layout = layoutOf(trail, index);
  if (!layout) throw new RangeError(`the lines of tile ${index} cannot be drawn`);
  const { strokes, rooms } = layout;
  const { text } = (trail.tiles[index] as TrailTile).answer;
  const answer = placeAnswer(answerShapes(text), rooms, 1);
  if (!answer) throw new RangeError(`the answer “${text}” is too long for a tile`);
  const rng = inkOf(trail).fork(index);
  const scene = SCENES[trail.theme];
  const lines = strokes.map((stroke, i) => drawStroke(stroke, scene, rng.fork(i)));
  const mark = set === undefined ? '' : setMark(set, strokes, answer, tileSideMm(trail.rows, trail.columns));
  return lines.join('') + UP_MARK + answerBody(text, answer) + mark;
}

/** The stream of chance of the hand that draws this trail. */
export function inkOf({ seed }: Pick<Trail, 'seed'>): Rng {
  return new Rng(seed).fork('ink');
}

/** A small arrowhead in the top left corner, pointing up. */
const UP_MARK = `<path data-part="up" d="M8 4.6L11.2 10.6L8 9.6L4.8 10.6Z" fill="${INK}"/>`;

function answerBody(text: string, answer: PlacedAnswer): string {
  const isLined = readsUpsideDown(text);
  // A line below takes its share of the room.
  const size = isLined ? answer.size * 0.85 : answer.size;
  const y = isLined ? answer.y - 0.11 * size : answer.y;
  return `<g data-part="answer">${setLines(answer.shape.lines, answer.x, y, size, 'bold')}${isLined ? underline(answer, y, size) : ''}</g>`;
}

function underline({ shape, x }: PlacedAnswer, y: number, size: number): string {
  const wide = shape.width * size * 0.86;
  return `<rect x="${num(x - wide / 2)}" y="${num(y + 0.49 * size)}" width="${num(wide)}" height="${num(0.08 * size)}" fill="${INK}"/>`;
}

/** True when a number reads as another one upside down, so that it gets a line below: 6, 9, 68, 106, 1.6. */
function readsUpsideDown(text: string): boolean {
  const turned = [...text]
    .reverse()
    .map((digit) => TURNED[digit] ?? digit)
    .join('');
  return /^[01689.]*[69][01689.]*$/.test(text) && turned !== text;
}

const TURNED: Readonly<Record<string, string>> = { '6': '9', '9': '6' };

const EDGE_WORDS: Readonly<Record<EdgeCode, readonly [across: string, down: string]>> = {
  '0': ['nothing', 'nothing'],
  a: ['path on the left', 'path high up'],
  b: ['path on the right', 'path low down'],
  c: ['thin line on the left', 'thin line high up'],
  d: ['thin line on the right', 'thin line low down'],
};
const SIDE_WORDS = ['Top', 'Right side', 'Bottom', 'Left side'] as const;

/** What the tile shows, edge by edge, so that a listener can fit tiles as a looker does. */
function tileInWords({ answer, edges }: TrailTile): string {
  const shown = SIDES.map((_, side) => `${SIDE_WORDS[side]}: ${edgeInWords(edges[side] as EdgeCode, side)}.`);
  return `${answer.text}. ${shown.join(' ')}`;
}

/** What crosses an edge, as it is seen: "path on the left", "nothing"; `side` counts as the edges of a tile do. */
export function edgeInWords(code: EdgeCode, side: number): string {
  return EDGE_WORDS[code][side % 2 === 0 ? 0 : 1];
}
