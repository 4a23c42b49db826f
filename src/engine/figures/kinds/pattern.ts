// A row of pictures, numbers or words, often one that follows a rule; "?" is an empty place.
import type { FigureSpec } from '../figure.js';
import { label, labelWidth } from '../label.js';
import {
  circle,
  FINE_MM,
  INK,
  LINE_MM,
  type Mark,
  path,
  type Point,
  polar,
  polygon,
  rect,
  SHADE,
  type Sketch,
} from '../svg.js';
import { listOf } from '../words.js';

/** The shapes an item may name. */
export const SHAPE_ITEMS = [
  'circle',
  'square',
  'triangle',
  'star',
  'diamond',
  'hexagon',
  'heart',
  'arrow up',
  'arrow right',
  'arrow down',
  'arrow left',
] as const;
type ShapeItem = (typeof SHAPE_ITEMS)[number];

const ITEM = new RegExp(`^(?:(big|small) )?(?:(black|grey|white) )?(${SHAPE_ITEMS.join('|')})$`);
const FILLS: Readonly<Record<string, string>> = { black: INK, grey: SHADE, white: '#ffffff' };
const CELL_MM = 9;
const GAP_MM = 2.2;
const WIDTH_MM = 84;
const LETTER_MM = 5;

export function drawPattern(spec: Extract<FigureSpec, { kind: 'pattern' }>): Sketch {
  const cell = Math.max(
    CELL_MM,
    ...spec.items.filter((item) => !ITEM.test(item)).map((item) => labelWidth(item, LETTER_MM) + 3),
  );
  const pitch = cell + GAP_MM;
  const most = Math.max(1, Math.floor((WIDTH_MM + GAP_MM) / pitch));
  const perRow = Math.ceil(spec.items.length / Math.ceil(spec.items.length / most));
  const marks: Mark[] = [];
  spec.items.forEach((item, index) => {
    const x = (index % perRow) * pitch;
    const y = Math.floor(index / perRow) * (CELL_MM + GAP_MM + 0.8);
    const centre: Point = [x + cell / 2, y + CELL_MM / 2];
    const named = ITEM.exec(item);
    if (item === '?' || item === '') {
      marks.push(rect(x, y, cell, CELL_MM, { widthMm: FINE_MM, dash: [1.2, 1], part: 'empty' }, 1.2));
    } else if (named) {
      const [, size, fill = 'white', shape] = named;
      const radius = size === 'small' ? 2.3 : 4.2;
      marks.push(drawItem(shape as ShapeItem, centre, radius, FILLS[fill] ?? '#ffffff'));
    } else {
      marks.push(
        rect(x, y, cell, CELL_MM, { widthMm: FINE_MM, part: 'item' }, 1.2),
        ...label(item, centre, item.includes('/') ? 4.2 : LETTER_MM),
      );
    }
  });
  const told = spec.items.map((item) => (item === '?' || item === '' ? 'an empty place' : item));
  return {
    marks,
    // Where a place is empty, or numbers stand in the row, the row follows a rule; shapes alone are just a row.
    alt: `${spec.items.every((item) => ITEM.test(item)) ? 'A row' : 'A row that follows a rule'}: ${listOf(told)}.`.replace(
      ', an empty place and an empty place',
      ' and two empty places',
    ),
  };
}

function drawItem(shape: ShapeItem, centre: Point, radius: number, fill: string): Mark {
  const paint = { fill, widthMm: LINE_MM, part: 'item' };
  const [x, y] = centre;
  const turned = (sides: number, from = 0) =>
    polygon(
      Array.from({ length: sides }, (_, index) => polar(centre, radius, from + (index * 360) / sides)),
      paint,
    );
  switch (shape) {
    case 'circle':
      return circle(centre, radius * 0.95, paint);
    case 'square':
      return rect(x - radius * 0.86, y - radius * 0.86, radius * 1.72, radius * 1.72, paint);
    case 'triangle':
      return polygon(
        [
          [x, y - radius * 0.95],
          [x + radius, y + radius * 0.8],
          [x - radius, y + radius * 0.8],
        ],
        paint,
      );
    case 'diamond':
      return polygon(
        [
          [x, y - radius],
          [x + radius * 0.72, y],
          [x, y + radius],
          [x - radius * 0.72, y],
        ],
        paint,
      );
    case 'hexagon':
      return turned(6, 30);
    case 'star':
      return polygon(
        Array.from({ length: 10 }, (_, index) =>
          polar(centre, index % 2 === 0 ? radius : radius * 0.45, index * 36),
        ),
        paint,
      );
    case 'heart':
      return heart(x, y, radius, paint);
    case 'arrow up':
      return arrow(centre, radius, 0, paint);
    case 'arrow right':
      return arrow(centre, radius, 90, paint);
    case 'arrow down':
      return arrow(centre, radius, 180, paint);
    case 'arrow left':
      return arrow(centre, radius, 270, paint);
  }
}

type ItemPaint = { readonly fill: string; readonly widthMm: number };

function arrow(centre: Point, radius: number, degrees: number, paint: ItemPaint): Mark {
  const outline: Point[] = [
    [0, -1],
    [0.85, -0.05],
    [0.35, -0.05],
    [0.35, 1],
    [-0.35, 1],
    [-0.35, -0.05],
    [-0.85, -0.05],
  ];
  const turned = outline.map(([x, y]) =>
    polar(centre, Math.hypot(x, y) * radius, degrees + (Math.atan2(x, -y) * 180) / Math.PI),
  );
  return polygon(turned, paint);
}

function heart(x: number, y: number, r: number, paint: ItemPaint): Mark {
  const low: Point = [x, y + r * 0.9];
  const dip: Point = [x, y - r * 0.45];
  return path(
    [
      { to: low },
      {
        curve: [
          [x - r * 1.5, y - r * 0.1],
          [x - r * 0.75, y - r * 1.35],
        ],
        to: dip,
      },
      {
        curve: [
          [x + r * 0.75, y - r * 1.35],
          [x + r * 1.5, y - r * 0.1],
        ],
        to: low,
      },
    ],
    paint,
    true,
  );
}
