// Plane shapes with labelled sides and, where asked, a dashed line that may be a mirror line.
import type { FigureSpec } from '../figure.js';
import { label, labelHeight, labelWidth } from '../label.js';
import {
  BOLD_MM,
  boxOf,
  circle,
  INK,
  LINE_MM,
  line,
  type Mark,
  type Point,
  polar,
  polygon,
  type Sketch,
} from '../svg.js';
import { spoken } from '../words.js';
import { cornerLabel, trueTriangle } from './corner-labels.js';
import { tellOutline } from './tell-outline.js';

type ShapeSpec = Extract<FigureSpec, { kind: 'shape' }>;
type Polygon = Exclude<ShapeSpec['shape'], 'circle' | 'oval'>;

/** Corners in mm, clockwise, so that side 0 is the top side or the upper right one. */
const CORNERS: Readonly<Record<Polygon, readonly Point[]>> = {
  triangle: [
    [16, 0],
    [32, 27.713],
    [0, 27.713],
  ],
  'right-triangle': [
    [0, 0],
    [34, 26],
    [0, 26],
  ],
  square: [
    [0, 0],
    [26, 0],
    [26, 26],
    [0, 26],
  ],
  rectangle: [
    [0, 0],
    [40, 0],
    [40, 24],
    [0, 24],
  ],
  rhombus: [
    [19, 0],
    [38, 14],
    [19, 28],
    [0, 14],
  ],
  parallelogram: [
    [11, 0],
    [45, 0],
    [34, 22],
    [0, 22],
  ],
  trapezium: [
    [10, 0],
    [30, 0],
    [40, 22],
    [0, 22],
  ],
  kite: [
    [13, 0],
    [26, 11],
    [13, 34],
    [0, 11],
  ],
  pentagon: regular(5, 16, 0),
  hexagon: regular(6, 16, -30),
  octagon: regular(8, 16, -22.5),
};
const ROUND = { circle: [15, 15], oval: [20, 12.5] } as const;
const BEYOND_MM = 4;

export function drawShape(spec: ShapeSpec): Sketch {
  const labels = spec.labels ?? [];
  const outline = { fill: '#ffffff', widthMm: BOLD_MM, part: 'outline' };
  const marks: Mark[] = [];
  let alt: string;
  if (spec.shape === 'circle' || spec.shape === 'oval') {
    const [radiusX, radiusY] = ROUND[spec.shape];
    marks.push(circle([0, 0], radiusX, outline, radiusY));
    const radius = spec.shape === 'circle' ? labels[0] : undefined;
    alt =
      spec.shape === 'circle'
        ? 'A shape with one curved edge, equally far from its middle all the way around.'
        : 'A shape with one curved edge, longer from left to right than from top to bottom.';
    if (radius) {
      marks.push(
        line([0, 0], [radiusX, 0], { widthMm: LINE_MM }),
        circle([0, 0], 0.8, { fill: INK, stroke: 'none' }),
      );
      marks.push(...label(radius, [radiusX / 2, -1.4 - labelHeight(radius) / 2]));
      alt += ` A line from the middle to the edge is labelled ${spoken(radius)}.`;
    }
  } else {
    const cornerLabels = spec.corners ?? [];
    const corners = (spec.shape === 'triangle' && trueTriangle(cornerLabels)) || CORNERS[spec.shape];
    const isCrossed = spec.mirrorLine !== undefined;
    marks.push(polygon(corners, outline));
    corners.forEach((corner, side) => {
      const words = labels[side];
      if (words)
        marks.push(...sideLabel(words, corner, corners[(side + 1) % corners.length] ?? corner, isCrossed));
    });
    corners.forEach((corner, index) => {
      const words = cornerLabels[index];
      const [before, after] = [
        corners.at(index - 1) ?? corner,
        corners[(index + 1) % corners.length] ?? corner,
      ];
      if (words) marks.push(...cornerLabel(words, before, corner, after));
    });
    alt = tellOutline(corners, labels, cornerLabels);
  }
  if (spec.mirrorLine) {
    marks.push(mirror(boxOf(marks.slice(0, 1)), spec.mirrorLine));
    alt += ` A dashed line ${MIRROR_WORDS[spec.mirrorLine]}.`;
  }
  return { marks, alt };
}

const MIRROR_WORDS = {
  vertical: 'runs straight up and down through its middle',
  horizontal: 'runs straight across its middle',
  diagonal: 'slants through its middle from bottom left to top right',
} as const;

function mirror(
  box: { left: number; top: number; right: number; bottom: number },
  way: keyof typeof MIRROR_WORDS,
): Mark {
  const x = (box.left + box.right) / 2;
  const y = (box.top + box.bottom) / 2;
  const paint = { widthMm: LINE_MM, dash: [2, 1.4], part: 'mirror-line' };
  if (way === 'vertical') return line([x, box.top - BEYOND_MM], [x, box.bottom + BEYOND_MM], paint);
  if (way === 'horizontal') return line([box.left - BEYOND_MM, y], [box.right + BEYOND_MM, y], paint);
  const reach = 1 + (2 * BEYOND_MM) / Math.hypot(box.right - box.left, box.bottom - box.top);
  const dx = (box.right - x) * reach;
  const dy = (box.bottom - y) * reach;
  return line([x - dx, y + dy], [x + dx, y - dy], paint);
}

function sideLabel(words: string, from: Point, to: Point, isCrossed: boolean): Mark[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const outX = (to[1] - from[1]) / length;
  const outY = -(to[0] - from[0]) / length;
  const [width, height] = [labelWidth(words), labelHeight(words)];
  const away = 1.6 + (Math.abs(outX) * width) / 2 + (Math.abs(outY) * height) / 2;
  // A mirror line may cross the middle of a side, so its label makes way.
  const aside = isCrossed ? (Math.abs(outY) * width) / 2 + (Math.abs(outX) * height) / 2 + 1.2 : 0;
  const x = (from[0] + to[0]) / 2 + outX * away + outY * aside;
  const y = (from[1] + to[1]) / 2 + outY * away - outX * aside;
  return label(words, [x, y]);
}

function regular(sides: number, radius: number, start: number): Point[] {
  return Array.from({ length: sides }, (_, index) => polar([0, 0], radius, start + (index * 360) / sides));
}
