// Solids seen from the front, a little from above and the right; hidden edges are dashed.
import type { FigureSpec } from '../figure.js';
import {
  BOLD_MM,
  circle,
  FINE_MM,
  line,
  type Mark,
  path,
  route,
  type Point,
  type Segment,
  type Sketch,
} from '../svg.js';

type SolidSpec = Extract<FigureSpec, { kind: 'solid' }>;

const SEEN = { widthMm: BOLD_MM, roundCap: true } as const;
const HIDDEN = { widthMm: FINE_MM, dash: [1.4, 1.2] } as const;

export function drawSolid(spec: SolidSpec): Sketch {
  return { marks: DRAWN[spec.solid](), alt: TOLD[spec.solid] };
}

const DRAWN: Readonly<Record<SolidSpec['solid'], () => Mark[]>> = {
  cube: () => box(20, 20, [8, -7]),
  cuboid: () => box(34, 16, [10, -8]),
  cylinder: () => [
    circle([0, 0], 11, { widthMm: BOLD_MM }, 3.6),
    line([-11, 0], [-11, 25], SEEN),
    line([11, 0], [11, 25], SEEN),
    halfEllipse([0, 25], 11, 3.6, 1, SEEN),
    halfEllipse([0, 25], 11, 3.6, -1, HIDDEN),
  ],
  cone: () => [
    path(route('M -12 27 L 0 0 L 12 27'), SEEN),
    halfEllipse([0, 27], 12, 3.8, 1, SEEN),
    halfEllipse([0, 27], 12, 3.8, -1, HIDDEN),
  ],
  sphere: () => [
    circle([0, 0], 14, { widthMm: BOLD_MM }),
    halfEllipse([0, 0], 14, 4, 1, { ...SEEN, widthMm: FINE_MM }),
    halfEllipse([0, 0], 14, 4, -1, HIDDEN),
  ],
  'square-pyramid': () => {
    const [front, right, back, left, top]: Point[] = [
      [0, 0],
      [23, 0],
      [33, -8],
      [10, -8],
      [16.5, -29],
    ];
    return edges(
      [
        [front, right],
        [right, back],
        [front, top],
        [right, top],
        [back, top],
      ],
      [
        [front, left],
        [left, back],
        [left, top],
      ],
    );
  },
  'triangular-prism': () => {
    const front: Point[] = [
      [0, 0],
      [19, 0],
      [9.5, -17],
    ];
    const [a, b, c] = front;
    const [d, e, f] = front.map(([x, y]): Point => [x + 19, y - 7]);
    return edges(
      [
        [a, b],
        [b, c],
        [c, a],
        [b, e],
        [c, f],
        [e, f],
      ],
      [
        [a, d],
        [d, e],
        [d, f],
      ],
    );
  },
};

const TOLD: Readonly<Record<SolidSpec['solid'], string>> = {
  cube: 'A solid with flat square faces, all of the same size, that meet at square corners.',
  cuboid:
    'A solid with flat faces that meet at square corners; the front face is wider than it is high, the side faces are narrower.',
  cylinder:
    'A solid that stands on a flat round end; the same flat round end is at the top, and a curved face goes around between them.',
  cone: 'A solid that stands on a flat round end; a curved face narrows upwards to a point.',
  sphere: 'A solid that is round in every direction, with no flat face.',
  'square-pyramid':
    'A solid that stands on a flat square face; from each edge of it a flat triangle rises, and all meet at a point at the top.',
  'triangular-prism':
    'A solid with the same flat triangle at the front and at the back; flat rectangles join their edges.',
};

function box(width: number, height: number, [x, y]: Point): Mark[] {
  const front: Point[] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const [a, b, c, d] = front;
  const [e, f, g, h] = front.map((corner): Point => [corner[0] + x, corner[1] + y]);
  return edges(
    [
      [a, b],
      [b, c],
      [c, d],
      [d, a],
      [a, e],
      [b, f],
      [c, g],
      [e, f],
      [f, g],
    ],
    [
      [d, h],
      [h, e],
      [h, g],
    ],
  );
}

type Edge = readonly [Point | undefined, Point | undefined];

function edges(seen: readonly Edge[], hidden: readonly Edge[]): Mark[] {
  const drawn = (list: readonly Edge[], paint: typeof SEEN | typeof HIDDEN) =>
    list.flatMap(([from, to]) => (from && to ? [line(from, to, paint)] : []));
  return [...drawn(hidden, HIDDEN), ...drawn(seen, SEEN)];
}

/** The lower (1) or upper (-1) half of an ellipse, from left to right, as two Bezier quarters. */
function halfEllipse(
  [x, y]: Point,
  rx: number,
  ry: number,
  side: 1 | -1,
  paint: typeof HIDDEN | { widthMm: number },
): Mark {
  const k = 0.5523;
  const deep = y + side * ry;
  const segments: Segment[] = [
    { to: [x - rx, y] },
    {
      curve: [
        [x - rx, y + side * ry * k],
        [x - rx * k, deep],
      ],
      to: [x, deep],
    },
    {
      curve: [
        [x + rx * k, deep],
        [x + rx, y + side * ry * k],
      ],
      to: [x + rx, y],
    },
  ];
  return path(segments, paint);
}
