// Flat patterns that fold, or do not fold, to a solid: squares, rectangles, triangles and circles joined at edges.
import type { FigureSpec } from '../figure.js';
import { circle, LINE_MM, type Mark, polygon, rect, type Sketch } from '../svg.js';

type NetOf = Extract<FigureSpec, { kind: 'net' }>['net'];

const CELL_MM = 7;
const SHEET = { fill: '#ffffff', widthMm: LINE_MM, part: 'face' } as const;

/** Squares by column and row. */
const SQUARES: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  cube: [
    [1, 0],
    [0, 1],
    [1, 1],
    [2, 1],
    [3, 1],
    [1, 2],
  ],
  'cube-steps': [
    [0, 0],
    [1, 0],
    [1, 1],
    [2, 1],
    [2, 2],
    [3, 2],
  ],
  'not-cube-row': [
    [0, 0],
    [1, 0],
    [2, 0],
    [3, 0],
    [4, 0],
    [5, 0],
  ],
  'not-cube-block': [
    [0, 0],
    [1, 0],
    [2, 0],
    [0, 1],
    [1, 1],
    [2, 1],
  ],
  'open-box': [
    [1, 0],
    [0, 1],
    [1, 1],
    [2, 1],
    [1, 2],
  ],
};

const WORDS: Readonly<Record<NetOf, string>> = {
  cube: 'six equal squares: a row of four, with one above and one below its second square',
  'cube-steps': 'six equal squares in three steps of two',
  'not-cube-row': 'six equal squares in one row',
  'not-cube-block': 'six equal squares in two rows of three',
  'open-box': 'five equal squares in the shape of a plus sign',
  cuboid: 'six rectangles: a row of four, with one small rectangle above and one below',
  cylinder: 'one rectangle with a circle above and a circle below',
  'square-pyramid': 'one square with a triangle on each of its four sides',
  'triangular-prism':
    'three rectangles side by side with a triangle above and a triangle below the middle one',
};

/** The flat pattern, its edges drawn as fold lines; the alternative text never says what it folds to. */
export function drawNet(spec: Extract<FigureSpec, { kind: 'net' }>): Sketch {
  return { marks: marksOf(spec.net), alt: `A flat pattern of ${WORDS[spec.net]}.` };
}

function marksOf(net: NetOf): Mark[] {
  const cell = CELL_MM;
  const squares = SQUARES[net];
  if (squares) return squares.map(([column, row]) => rect(column * cell, row * cell, cell, cell, SHEET));
  const side = cell * 1.3;
  const tall = cell * 1.6;
  switch (net) {
    case 'cuboid':
      return [
        ...[0, 1, 2, 3].map((i) => {
          const wide = i % 2 === 0 ? cell : side;
          const left = [0, cell, cell + side, 2 * cell + side][i] ?? 0;
          return rect(left, cell, wide, tall, SHEET);
        }),
        rect(cell, 0, side, cell, SHEET),
        rect(cell, cell + tall, side, cell, SHEET),
      ];
    case 'cylinder': {
      const radius = 4;
      const length = 2 * Math.PI * radius;
      return [
        rect(0, 0, length, tall, SHEET),
        circle([length / 2, -radius], radius, SHEET),
        circle([length / 2, tall + radius], radius, SHEET),
      ];
    }
    case 'square-pyramid': {
      const high = side * 1.1;
      return [
        rect(0, 0, side, side, SHEET),
        polygon(
          [
            [0, 0],
            [side / 2, -high],
            [side, 0],
          ],
          SHEET,
        ),
        polygon(
          [
            [0, side],
            [side / 2, side + high],
            [side, side],
          ],
          SHEET,
        ),
        polygon(
          [
            [0, 0],
            [-high, side / 2],
            [0, side],
          ],
          SHEET,
        ),
        polygon(
          [
            [side, 0],
            [side + high, side / 2],
            [side, side],
          ],
          SHEET,
        ),
      ];
    }
    default: {
      const high = (side * Math.sqrt(3)) / 2;
      return [
        ...[0, 1, 2].map((i) => rect(i * side, 0, side, tall, SHEET)),
        polygon(
          [
            [side, 0],
            [side * 1.5, -high],
            [2 * side, 0],
          ],
          SHEET,
        ),
        polygon(
          [
            [side, tall],
            [side * 1.5, tall + high],
            [2 * side, tall],
          ],
          SHEET,
        ),
      ];
    }
  }
}
