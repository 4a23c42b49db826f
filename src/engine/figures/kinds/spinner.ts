// A spinner: a disc of equal sectors with an arrow at its middle; sectors with the same word have the same grey.
import type { FigureSpec } from '../figure.js';
import { label, labelHeight, labelWidth } from '../label.js';
import {
  BOLD_MM,
  circle,
  INK,
  LINE_MM,
  line,
  type Mark,
  polar,
  type Point,
  polygon,
  type Sketch,
} from '../svg.js';
import { countOf } from '../words.js';
import { sector } from './fraction-circle.js';

const RADIUS_MM = 20;
const HUB_MM = 5.5;
const LARGEST_MM = 4.8;
const SMALLEST_MM = 2.4;
const GREYS = ['#ffffff', '#d2d2d2', '#b0b0b0', '#ededed', '#c2c2c2', '#e0e0e0'] as const;
const CENTRE: Point = [0, 0];

export function drawSpinner(spec: Extract<FigureSpec, { kind: 'spinner' }>): Sketch {
  const { sectors } = spec;
  const words = [...new Set(sectors)];
  const share = 360 / Math.max(sectors.length, 1);
  const places = sectors.map((word, index) => placeLabel(word, (index + 0.5) * share, share / 2));
  const size = Math.min(LARGEST_MM, ...places.map((place) => place.size));
  const marks: Mark[] = [];
  sectors.forEach((word, index) => {
    const grey = GREYS[words.indexOf(word) % GREYS.length] ?? GREYS[0];
    marks.push(sector(CENTRE, RADIUS_MM, index * share, (index + 1) * share, grey, 'sector'));
  });
  for (let cut = 0; cut < sectors.length && sectors.length > 1; cut++) {
    marks.push(line(CENTRE, polar(CENTRE, RADIUS_MM, cut * share), { widthMm: LINE_MM }));
  }
  marks.push(circle(CENTRE, RADIUS_MM, { widthMm: BOLD_MM, part: 'rim' }));
  sectors.forEach((word, index) => {
    const radius = places[index]?.radius ?? 0;
    marks.push(...label(word, polar(CENTRE, radius, (index + 0.5) * share), size));
  });
  // The arrow rests on the first cut, so that it does not seem to choose a sector.
  marks.push(line(polar(CENTRE, -3, 0), polar(CENTRE, 4.4, 0), { widthMm: 0.9, roundCap: true }));
  marks.push(
    polygon([polar(CENTRE, 6.4, 0), polar(CENTRE, 3.9, 22), polar(CENTRE, 3.9, -22)], {
      fill: INK,
      stroke: 'none',
    }),
  );
  marks.push(circle(CENTRE, 1.3, { fill: '#ffffff', widthMm: LINE_MM }));
  const told =
    sectors.length === 1 ? `marked ${sectors.join('')}` : `clockwise from the top: ${sectors.join(', ')}`;
  return {
    marks,
    alt: `A spinner with ${countOf(sectors.length, 'sector')}${sectors.length > 1 ? ' of equal size' : ''}, ${told}.`,
  };
}

/** The largest letter size, and the distance from the middle, at which a word keeps clear of its sector's edges. */
function placeLabel(word: string, degrees: number, half: number): { radius: number; size: number } {
  for (let size = LARGEST_MM; size > SMALLEST_MM - 0.1; size -= 0.2) {
    for (const radius of [13, 12.5, 13.5, 12, 14, 11.5, 14.5, 11, 15, 15.5, 10.5, 10, 16, 16.5, 17]) {
      if (
        isClear(
          polar(CENTRE, radius, degrees),
          labelWidth(word, size) / 2,
          labelHeight(word, size) / 2,
          degrees,
          half,
        )
      ) {
        return { radius, size };
      }
    }
  }
  return { radius: 16, size: SMALLEST_MM };
}

function isClear(
  [x, y]: Point,
  halfWidth: number,
  halfHeight: number,
  degrees: number,
  half: number,
): boolean {
  const corners: Point[] = [
    [x - halfWidth, y - halfHeight],
    [x + halfWidth, y - halfHeight],
    [x - halfWidth, y + halfHeight],
    [x + halfWidth, y + halfHeight],
  ];
  return corners.every(([cornerX, cornerY]) => {
    const out = Math.hypot(cornerX, cornerY);
    const turned = (Math.atan2(cornerX, -cornerY) * 180) / Math.PI - degrees;
    const off = Math.abs(((turned + 540) % 360) - 180);
    const toEdge = half > 90 ? out : out * Math.sin(((half - off) * Math.PI) / 180);
    return out > HUB_MM && out < RADIUS_MM - 1 && toEdge > 1;
  });
}
