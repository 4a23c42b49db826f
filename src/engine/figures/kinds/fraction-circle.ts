// Circles cut into equal sectors from the top, clockwise, some shaded.
import type { FigureSpec } from '../figure.js';
import {
  BOLD_MM,
  circle,
  LINE_MM,
  line,
  type Mark,
  path,
  polar,
  type Point,
  SHADE,
  type Sketch,
} from '../svg.js';
import { shadedIn, tellShares } from './fraction-bar.js';

const RADIUS_MM = 15;
const GAP_MM = 5;

export function drawFractionCircle(spec: Extract<FigureSpec, { kind: 'fraction-circle' }>): Sketch {
  const { parts, shaded } = spec;
  const circles = Math.max(Math.ceil(shaded / parts), 1);
  const perRow = Math.min(circles, 3);
  const marks: Mark[] = [];
  for (let whole = 0; whole < circles; whole++) {
    const pitch = 2 * RADIUS_MM + GAP_MM;
    const centre: Point = [(whole % perRow) * pitch, Math.floor(whole / perRow) * pitch];
    const filled = shadedIn(whole, parts, shaded);
    const share = 360 / parts;
    for (let part = 0; part < filled; part++) {
      marks.push(sector(centre, RADIUS_MM, part * share, (part + 1) * share, SHADE, 'shaded'));
    }
    const cuts = parts > 1 ? parts : 0;
    for (let cut = 0; cut < cuts; cut++) {
      marks.push(line(centre, polar(centre, RADIUS_MM, cut * share), { widthMm: LINE_MM, part: 'cut' }));
    }
    marks.push(circle(centre, RADIUS_MM, { widthMm: BOLD_MM, part: 'circle' }));
  }
  return { marks, alt: tellShares('circle', parts, shaded, circles) };
}

/** A filled slice of a disc between two angles, degrees clockwise from the top; the whole disc for 360. */
export function sector(
  centre: Point,
  radius: number,
  from: number,
  until: number,
  fill: string,
  part: string,
): Mark {
  if (until - from >= 360) return circle(centre, radius, { fill, stroke: 'none', part });
  return path([{ to: centre }, { centre, radius, from, until }], { fill, stroke: 'none', part }, true);
}
