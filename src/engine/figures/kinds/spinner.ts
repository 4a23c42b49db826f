// A spinner: a disc of equal sectors with an arrow at its middle; sectors with the same word have the same grey.
import type { FigureSpec } from '../figure.js';
import { fitSize, label, labelHeight } from '../label.js';
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
const LABEL_RADIUS_MM = 13.4;
const GREYS = ['#ffffff', '#d2d2d2', '#b0b0b0', '#ededed', '#c2c2c2', '#e0e0e0'] as const;
const CENTRE: Point = [0, 0];

export function drawSpinner(spec: Extract<FigureSpec, { kind: 'spinner' }>): Sketch {
  const { sectors } = spec;
  const words = [...new Set(sectors)];
  const share = 360 / Math.max(sectors.length, 1);
  const radius = sectors.length === 1 ? 11 : sectors.length === 2 ? 12 : LABEL_RADIUS_MM;
  const chord = sectors.length <= 2 ? 26 : 2 * (radius - 1) * Math.sin((share / 2) * (Math.PI / 180)) - 1;
  const size = Math.min(...words.map((word) => fitSize(word, Math.min(chord, 15), 4.6, 2.6)), 4.6);
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
    const at = polar(
      CENTRE,
      Math.min(radius, RADIUS_MM - 2 - labelHeight(word, size) / 2),
      (index + 0.5) * share,
    );
    marks.push(...label(word, at, size));
  });
  // The arrow rests on the first cut, so that it does not seem to choose a sector.
  marks.push(line(polar(CENTRE, -3.4, 0), polar(CENTRE, 5, 0), { widthMm: 0.9, roundCap: true }));
  marks.push(
    polygon([polar(CENTRE, 7.4, 0), polar(CENTRE, 4.8, 22), polar(CENTRE, 4.8, -22)], {
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
