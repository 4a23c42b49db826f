// A clock face. The numerals stand outside the ring of minute marks, so that no hand ever covers one.
import type { FigureSpec } from '../figure.js';
import {
  BOLD_MM,
  circle,
  FINE_MM,
  INK,
  line,
  type Mark,
  polar,
  type Point,
  type Sketch,
  text,
} from '../svg.js';
import { countOf } from '../words.js';

const RIM_MM = 21.6;
const NUMERALS_MM = 17.7;
const TICKS_MM = 13.7;
const CENTRE: Point = [0, 0];

export function drawClock(spec: Extract<FigureSpec, { kind: 'clock' }>): Sketch {
  const minutes = ((spec.minutes % 720) + 720) % 720;
  const minuteAngle = (minutes % 60) * 6;
  const hourAngle = minutes / 2;
  const marks: Mark[] = [circle(CENTRE, RIM_MM, { fill: '#ffffff', widthMm: BOLD_MM, part: 'rim' })];
  for (let minute = 0; minute < 60; minute++) {
    const onHour = minute % 5 === 0;
    const inner = polar(CENTRE, TICKS_MM - (onHour ? 2 : 1.1), minute * 6);
    marks.push(line(inner, polar(CENTRE, TICKS_MM, minute * 6), { widthMm: onHour ? BOLD_MM : FINE_MM }));
  }
  for (let hour = 1; hour <= 12; hour++) {
    marks.push(text(String(hour), polar(CENTRE, NUMERALS_MM, hour * 30), 5));
  }
  marks.push(
    line(CENTRE, polar(CENTRE, 7.4, hourAngle), {
      widthMm: 1.9,
      roundCap: true,
      part: 'hour-hand',
    }),
    line(CENTRE, polar(CENTRE, 12.2, minuteAngle), {
      widthMm: 1,
      roundCap: true,
      part: 'minute-hand',
    }),
    circle(CENTRE, 1.6, { fill: INK, stroke: 'none' }),
  );
  const alt = `A clock. The short hand points ${shortHand(minutes)}; the long hand points ${longHand(minutes % 60)}.`;
  return { marks, alt };
}

function shortHand(minutes: number): string {
  const hour = Math.floor(minutes / 60);
  return minutes % 60 === 0 ? `at ${onDial(hour)}` : `between ${onDial(hour)} and ${onDial(hour + 1)}`;
}

function longHand(minute: number): string {
  const numeral = onDial(Math.floor(minute / 5));
  const past = minute % 5;
  return past === 0 ? `at ${numeral}` : `${countOf(past, 'small mark')} past ${numeral}`;
}

/** The numeral of an hour count: 12 for 0, 1 for 13. */
export function onDial(hour: number): string {
  return String(((hour + 11) % 12) + 1);
}
