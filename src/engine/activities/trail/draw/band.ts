// The two kinds of line on a tile, drawn as by hand: the broad path between its rims, and the thin second line.
import type { Rng } from '../../../random/rng.js';
import { END_RADIUS, HALF_LINE, HALF_PATH, spread, type Stroke, WOBBLE, type XY } from '../tile-strokes.js';
import { inked, placed } from './drawing.js';
import { beside, type Course, courseOf, makeSway, placeAt, ribbon, roundAbout, type Sway } from './ink.js';
import { type Scene, type Sketched, sketched, sketchedAt } from './scene.js';

/** Width of a rim where it crosses an edge; elsewhere it swells and thins. */
const RIM = 2.7;
/** How far the inner line of a rim may leave its course. */
const SWELL = 0.95;
/** From point to point of a drawn line: a smooth curve runs between them. */
const STEP = 4.5;
/** Half the width of the second line's stem. */
const STEM = 1.15;

/** Markup of a stroke in tile units. */
export function drawStroke(stroke: Stroke, scene: Scene, rng: Rng): string {
  const course = courseOf(spread(stroke.points, STEP), stroke.to !== null);
  return stroke.style === 'path' ? drawPath(course, scene, rng) : drawLine(course, scene, rng);
}

function drawPath(course: Course, scene: Scene, rng: Rng): string {
  const sways = [0, 1, 2, 3].map((i) => makeSway(rng.fork(i))) as [Sway, Sway, Sway, Sway];
  const inner = HALF_PATH - RIM;
  const [end, room] = [course.points.at(-1) as XY, course.isThrough ? 0 : END_RADIUS.path];
  const rims = course.isThrough
    ? [
        ribbon(beside(course, HALF_PATH, sways[0], WOBBLE), beside(course, inner, sways[1], SWELL)),
        ribbon(beside(course, -HALF_PATH, sways[2], WOBBLE), beside(course, -inner, sways[3], SWELL)),
      ]
    : [
        ribbon(
          bay(course, HALF_PATH, END_RADIUS.path, sways[0], WOBBLE),
          bay(course, inner, END_RADIUS.path - RIM, sways[1], SWELL),
        ),
      ];
  const glade = course.isThrough ? '' : placed(sketched(scene.glade, 1.5), end[0], end[1]);
  return `${inked(rims.join(''), 'path')}${tread(course, scene.tread, scene.pace, room)}${glade}`;
}

/** Markup of the path outside the cells: it crosses the edge at the course's beginning and ends round. */
export function drawDoorstep(stroke: Stroke, scene: Scene, rng: Rng): string {
  const course = courseOf(stroke.points, false);
  const inner = HALF_PATH - RIM;
  const rim = ribbon(
    bay(course, HALF_PATH, HALF_PATH, makeSway(rng.fork(0)), WOBBLE),
    bay(course, inner, inner, makeSway(rng.fork(1)), SWELL),
  );
  return inked(rim, 'path') + tread(course, scene.tread, scene.pace, 0);
}

/** The line along one side of a course, around its round end, and back along the other. */
function bay(course: Course, half: number, radius: number, sway: Sway, reach: number): XY[] {
  const end = course.points.at(-1) as XY;
  // The neck: where the sides run into the round, with a little of both left out so that the corner is soft.
  const neck = Math.sqrt(radius ** 2 - half ** 2) + 2.6;
  const opening = (Math.asin(half / radius) * 180) / Math.PI + 13;
  const before = placeAt(course, course.length - neck);
  const turn = (Math.atan2(end[1] - before.y, end[0] - before.x) * 180) / Math.PI;
  const sides = [half, -half].map((side) =>
    beside(course, side, sway, reach).filter((_, i) => course.length - (course.lengths[i] as number) >= neck),
  ) as [XY[], XY[]];
  return [
    ...sides[0],
    ...roundAbout(end, radius, turn - 180 + opening, turn + 180 - opening, sway, reach * 0.6),
    ...sides[1].reverse(),
  ];
}

/** Marks at even paces along the middle; half a pace from every edge, so that the next tile goes on with the same pace. */
function tread(course: Course, mark: Sketched, pace: number, roomAtEnd: number): string {
  const length = course.length - roomAtEnd;
  const steps = Math.max(1, Math.round(length / pace));
  const places = Array.from({ length: steps }, (_, i) => placeAt(course, ((i + 0.5) * length) / steps));
  return sketchedAt(mark, places, 1.5);
}

const LEAVES: readonly Sketched[] = [
  [['ink', 'M0 0C.8 -2.4 2.8 -3.8 5 -3.7C4.8 -1.8 2.8 -.2 0 0Z']],
  [['ink', 'M0 0C.8 2.4 2.8 3.8 5 3.7C4.8 1.8 2.8 .2 0 0Z']],
];
const TWIST: Sketched = [['fine', 'M-1.9 2.6L1.9 -2.6']];
const BEAD: Sketched = [['ink', 'M-2.6 0a2.6 2.6 0 1 0 5.2 0a2.6 2.6 0 1 0 -5.2 0Z']];

function drawLine(course: Course, { line, tip }: Scene, rng: Rng): string {
  const [end, room] = [course.points.at(-1) as XY, course.isThrough ? 0 : END_RADIUS.line];
  const mark = course.isThrough ? '' : placed(sketched(tip, 1.3), end[0], end[1]);
  return `${stems(course, line, rng)}${ornaments(course, line, room)}${mark}`;
}

function stems(course: Course, line: Scene['line'], rng: Rng): string {
  const sway = (i: number) => makeSway(rng.fork(i));
  const stroke = (middle: number, half: number) =>
    ribbon(
      beside(course, middle + half, sway(2 * middle + 1), 0.35),
      beside(course, middle - half, sway(2 * middle + 2), 0.35),
    );
  const outlines =
    line === 'rope' ? [stroke(HALF_LINE - 0.8, 0.5), stroke(0.8 - HALF_LINE, 0.5)] : [stroke(0, STEM)];
  return inked(outlines.join(''), 'line');
}

function ornaments(course: Course, line: Scene['line'], room: number): string {
  if (line === 'rope') return tread(course, TWIST, 3.4, room);
  if (line === 'beads') return tread(course, BEAD, 10, room);
  const length = course.length - room;
  const steps = Math.max(1, Math.round(length / 7.5));
  return LEAVES.map((leaf, hand) => {
    const places = Array.from({ length: Math.ceil((steps - hand) / 2) }, (_, i) =>
      placeAt(course, ((2 * i + hand + 0.2) * length) / steps),
    );
    return sketchedAt(leaf, places);
  }).join('');
}
