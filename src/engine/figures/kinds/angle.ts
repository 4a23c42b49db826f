// Two arms from a point, with an arc (a small square for a right angle without a label, unless the question asks how big it is) between them.
import type { Locale } from '../../numbers/locale.js';
import type { FigureSpec } from '../figure.js';
import { label, labelWidth } from '../label.js';
import {
  BOLD_MM,
  circle,
  INK,
  LINE_MM,
  line,
  type Mark,
  path,
  polar,
  type Point,
  type Sketch,
} from '../svg.js';
import { onDial } from './clock.js';
import { spoken } from '../words.js';

const ARM_MM = 26;
const ARC_MM = 7;
const VERTEX: Point = [0, 0];

export function drawAngle(spec: Extract<FigureSpec, { kind: 'angle' }>, locale: Locale): Sketch {
  const turn = spec.turn ?? 0;
  // Polar angles run clockwise from the top, the specification's anticlockwise from the right.
  const first = 90 - turn;
  const second = first - spec.degrees;
  const words = spec.label;
  const arc = words && spec.degrees < 45 ? ARC_MM + 4 : ARC_MM;
  const isSquare = spec.degrees === 90 && !words && !spec.plainArc;
  const marks: Mark[] = [
    isSquare
      ? squareMark(first)
      : path([{ centre: VERTEX, radius: arc, from: first, until: second }], {
          widthMm: LINE_MM,
          part: 'arc',
        }),
    line(VERTEX, polar(VERTEX, ARM_MM, first), { widthMm: BOLD_MM, roundCap: true, part: 'first-arm' }),
    line(VERTEX, polar(VERTEX, ARM_MM, second), { widthMm: BOLD_MM, roundCap: true, part: 'second-arm' }),
    circle(VERTEX, 0.9, { fill: INK, stroke: 'none' }),
  ];
  if (words) {
    // Far enough out for the label to clear both arms of a narrow angle.
    const clear =
      spec.degrees < 100 ? (labelWidth(words) / 2 + 1) / Math.sin((spec.degrees * Math.PI) / 360) : 0;
    marks.push(
      ...label(words, polar(VERTEX, Math.min(ARM_MM + 4, Math.max(arc + 5, clear)), (first + second) / 2)),
    );
  }
  const round = locale.id === 'en-US' ? 'counterclockwise' : 'anticlockwise';
  const between = isSquare
    ? ' A small square marks the corner between them.'
    : ` A curved mark turns ${round} from the first arm to the second${words ? `, labelled ${spoken(words)}` : ''}.`;
  return {
    marks,
    alt: `Two arms meet at a point. The first points ${towards(first)} on a clock face, the second ${towards(second)}.${between}`,
  };
}

function squareMark(first: number): Mark {
  const side = 4.5;
  const corner = polar(VERTEX, side * Math.SQRT2, first - 45);
  return path([{ to: polar(VERTEX, side, first) }, { to: corner }, { to: polar(VERTEX, side, first - 90) }], {
    widthMm: LINE_MM,
    part: 'square-corner',
  });
}

function towards(clockwise: number): string {
  const hour = ((((clockwise / 30) % 12) + 12) % 12) + 0;
  return Number.isInteger(hour)
    ? `to ${onDial(hour)}`
    : `between ${onDial(Math.floor(hour))} and ${onDial(Math.floor(hour) + 1)}`;
}
