// The mat that the tiles are laid on: a question on every cell, and around them the scene with the way in and the way
// out; and the same mat with every tile laid, for the adult.
import { drawFigure } from '../../../figures/draw.js';
import { INK } from '../../../figures/svg.js';
import type { Rng } from '../../../random/rng.js';
import type { Question } from '../../../questions/question.js';
import type { LocaleId } from '../../../numbers/locale.js';
import { codeNumber, NORTH, SOUTH } from '../codes.js';
import { tileSideMm } from '../sizes.js';
import { crossing, HALF_PATH, spread, type XY } from '../tile-strokes.js';
import type { Trail } from '../trail.js';
import { drawDoorstep } from './band.js';
import { type Drawing, drawingOf, inked, num, placed } from './drawing.js';
import { inkOf, TILE_UNITS, tileBody } from './draw-tile.js';
import { beside, courseOf, makeSway, ribbon } from './ink.js';
import { PICTURE_MM, type Scene, sketched } from './scene.js';
import { SCENES } from './scenes.js';
import { type FittedLines, fitLines, setLines } from './set-lines.js';

/** Width of the scene around the cells, in mm. */
export const RIM_MM = { above: 28, beside: 8, below: 28 } as const;

/** The mat of questions at its size on paper. The same trail always gives the same picture. */
export function drawMat(trail: Trail): Drawing {
  const side = tileSideMm(trail.rows, trail.columns);
  const cellBody = (cell: number) =>
    questionBody((trail.cells[cell] as { question: Question }).question, side, trail.locale);
  const list = trail.cells.map(({ question }, cell) => `${cellName(trail, cell)}: ${question.text}`);
  return matOf(trail, cellBody, `${SCENES[trail.theme].story} ${list.join(' ')}`);
}

/** The mat with every tile on its cell, at the size of the mat of questions. */
export function drawSolved(trail: Trail): Drawing {
  const scale = tileSideMm(trail.rows, trail.columns) / TILE_UNITS;
  const list = trail.tiles.map(({ answer }, cell) => `${cellName(trail, cell)}: ${answer.text}.`);
  return matOf(
    trail,
    (cell) => placed(tileBody(trail, cell), 0, 0, scale),
    `The trail laid. ${list.join(' ')}`,
  );
}

/** Rows are lettered from the top, columns numbered from the left: B3. */
export function cellName({ columns }: Pick<Trail, 'columns'>, cell: number): string {
  return `${String.fromCharCode(65 + Math.floor(cell / columns))}${(cell % columns) + 1}`;
}

function matOf(trail: Trail, cellBody: (cell: number) => string, alt: string): Drawing {
  const side = tileSideMm(trail.rows, trail.columns);
  const [width, height] = [
    trail.columns * side + 2 * RIM_MM.beside,
    trail.rows * side + RIM_MM.above + RIM_MM.below,
  ];
  const rng = inkOf(trail).fork('mat');
  const cells = trail.cells.map((_, cell) => {
    const [x, y] = cornerOf(trail, cell, side);
    return placed(cellBody(cell), x, y);
  });
  const body = `<rect width="${num(width)}" height="${num(height)}" fill="#fff"/>${surround(trail, side, rng)}${gridLines(trail, side)}${cells.join('')}`;
  return drawingOf(body, [width, height], [width, height], alt);
}

function cornerOf({ columns }: Trail, cell: number, side: number): XY {
  return [RIM_MM.beside + (cell % columns) * side, RIM_MM.above + Math.floor(cell / columns) * side];
}

function gridLines({ rows, columns }: Trail, side: number): string {
  const [x, y, w, h] = [RIM_MM.beside, RIM_MM.above, columns * side, rows * side];
  const across = Array.from({ length: rows - 1 }, (_, i) => `M${x} ${y + (i + 1) * side}h${w}`);
  const down = Array.from({ length: columns - 1 }, (_, i) => `M${x + (i + 1) * side} ${y}v${h}`);
  return `<path d="${across.join('')}${down.join('')}" stroke="#777" stroke-width="0.25" fill="none"/><rect x="${x}" y="${y}" width="${w}" height="${h}" fill="none" stroke="${INK}" stroke-width="0.7"/>`;
}

/** Length of the path outside the cells, and white between the frame and a picture, in mm. */
const DOORSTEP_MM = 6.8;
const PICTURE_INSET_MM = 2.2;

function surround(trail: Trail, side: number, rng: Rng): string {
  const scene = SCENES[trail.theme];
  const [width, height] = [
    trail.columns * side + 2 * RIM_MM.beside,
    trail.rows * side + RIM_MM.above + RIM_MM.below,
  ];
  const doors = [
    {
      door: trail.entry,
      side: NORTH,
      picture: scene.entry,
      top: PICTURE_INSET_MM,
      code: trail.frame.north,
      edge: RIM_MM.above,
      out: -1,
    },
    {
      door: trail.exit,
      side: SOUTH,
      picture: scene.exit,
      top: height - PICTURE_INSET_MM - PICTURE_MM.height,
      code: trail.frame.south,
      edge: height - RIM_MM.below,
      out: 1,
    },
  ];
  const drawn = doors.map(({ door, side: border, picture, top, code, edge, out }) => {
    const column = door.cell % trail.columns;
    const along = crossing(border, codeNumber(code[column] as string)).at[0];
    const left = RIM_MM.beside + column * side;
    const middle = left + (along / TILE_UNITS) * side;
    const scale = side / TILE_UNITS;
    const points = spread(
      [
        [along, 0],
        [along, out * (DOORSTEP_MM / scale - HALF_PATH)],
      ],
      3,
    );
    const step = drawDoorstep({ style: 'path', from: border, to: null, points }, scene, rng.fork(out));
    const pictured = placed(sketched(picture, 0.9), middle - PICTURE_MM.width / 2, top);
    return { markup: placed(step, left, edge, scale) + pictured, middle };
  });
  const [above, below] = drawn.map(({ middle }) => middle) as [number, number];
  return (
    drawn.map(({ markup }) => markup).join('') +
    scatter(scene.sky, [RIM_MM.beside, width - RIM_MM.beside], 0, above, rng.fork('sky')) +
    scatter(
      scene.ground,
      [RIM_MM.beside, width - RIM_MM.beside],
      height - RIM_MM.below,
      below,
      rng.fork('ground'),
    ) +
    border(width, height, rng.fork('border'))
  );
}

/** So far apart are small things from one another and from the picture, middle to middle. */
const APART_MM = { each: 15, picture: 18 } as const;

function scatter(things: Scene['sky'], [from, until]: XY, top: number, picture: number, rng: Rng): string {
  const spots: XY[] = [];
  for (let attempt = 0; attempt < 60; attempt++) {
    const spot: XY = [from + (until - from) * rng.unit(), top + 5.5 + (RIM_MM.above - 11) * rng.unit()];
    if (Math.abs(spot[0] - picture) < APART_MM.picture) continue;
    if (spots.every((other) => Math.hypot(other[0] - spot[0], other[1] - spot[1]) >= APART_MM.each))
      spots.push(spot);
  }
  return spots
    .map(([x, y], i) => placed(sketched(things[i % things.length] as Scene['entry'], 0.75), x, y, 1.1))
    .join('');
}

/** A frame with round corners, drawn as by hand. */
function border(width: number, height: number, rng: Rng): string {
  const [inset, r] = [0.8, 6];
  const [left, top, right, bottom] = [inset, inset, width - inset, height - inset];
  const corner = (x: number, y: number, from: number): XY[] =>
    Array.from({ length: 7 }, (_, i) => {
      const angle = ((from + i * 15) * Math.PI) / 180;
      return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
    });
  const outline: XY[] = [
    ...corner(left + r, top + r, 180),
    ...corner(right - r, top + r, 270),
    ...corner(right - r, bottom - r, 0),
    ...corner(left + r, bottom - r, 90),
    [left, top + r],
  ];
  const course = courseOf(spread(outline, 4), true);
  return inked(
    ribbon(
      beside(course, 0.28, makeSway(rng.fork(0)), 0.2),
      beside(course, -0.28, makeSway(rng.fork(1)), 0.2),
    ),
  );
}

/** White between a question and the lines around its cell, and between its words and its figure, in mm. */
const CELL_WHITE_MM = 2.8;
const FIGURE_WHITE_MM = 1.4;
/** Letters of questions in mm: the largest of a sum and of words, the least of a sum before it is broken, the least of all. */
const LETTERS_MM = { sum: 6.2, words: 4.7, unbroken: 4.2, least: 3 } as const;

function questionBody({ text, figure }: Question, side: number, locale: LocaleId): string {
  const room = side - 2 * CELL_WHITE_MM;
  if (!figure) {
    const { lines, size } = fitQuestion(text, room, room);
    return setLines(lines, side / 2, side / 2, size, 'regular');
  }
  const { svg, widthMm, heightMm, leastWidthMm } = drawFigure(figure, { locale });
  const leastHeight = (heightMm * leastWidthMm) / widthMm;
  const words = fitQuestion(text, room, room - leastHeight - FIGURE_WHITE_MM);
  const left = room - words.height - FIGURE_WHITE_MM;
  const scale = Math.min(1.2, room / widthMm, left / heightMm);
  const tall = words.height + FIGURE_WHITE_MM + scale * heightMm;
  const top = (side - tall) / 2;
  const picture = placed(
    svg.replace(/^<svg[^>]*>|<\/svg>$/g, ''),
    (side - scale * widthMm) / 2,
    top + words.height + FIGURE_WHITE_MM,
    scale,
  );
  return setLines(words.lines, side / 2, top + words.height / 2, words.size, 'regular') + picture;
}

/** A sum stays on one line while its letters stay large. */
function fitQuestion(text: string, width: number, height: number): FittedLines {
  const isSum = !/\p{L}{2}/u.test(text);
  const most = isSum ? LETTERS_MM.sum : LETTERS_MM.words;
  const whole = isSum ? fitLines(text, width, height, most, LETTERS_MM.unbroken, 1) : null;
  return whole?.fits ? whole : fitLines(text, width, height, most, LETTERS_MM.least);
}
