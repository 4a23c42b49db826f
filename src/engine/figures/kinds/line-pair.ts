// Two straight lines: side by side, crossing squarely, or crossing at a slant.
import type { FigureSpec } from '../figure.js';
import { BOLD_MM, line, type Mark, type Point, rect, type Sketch } from '../svg.js';

const HALF_MM = 14;
const APART_MM = 8;

/** `turn` degrees anticlockwise from level; a square corner is marked where the lines meet squarely. */
export function drawLinePair(spec: Extract<FigureSpec, { kind: 'line-pair' }>): Sketch {
  const { relation, turn = 0 } = spec;
  const along = (degrees: number, reach: number): Point => {
    const angle = (degrees * Math.PI) / 180;
    return [reach * Math.cos(angle), -reach * Math.sin(angle)];
  };
  const through = ([x, y]: Point, degrees: number): Mark => {
    const [dx, dy] = along(degrees, HALF_MM);
    return line([x - dx, y - dy], [x + dx, y + dy], { widthMm: BOLD_MM, part: 'line' });
  };
  if (relation === 'parallel') {
    const off = along(turn + 90, APART_MM / 2);
    return {
      marks: [through(off, turn), through([-off[0], -off[1]], turn)],
      alt: 'Two straight lines that stay the same distance apart.',
    };
  }
  const other = turn + (relation === 'perpendicular' ? 90 : 50);
  const corner =
    turn % 90 === 0 && relation === 'perpendicular' ? [rect(0, -2.6, 2.6, 2.6, { widthMm: 0.35 })] : [];
  return {
    marks: [through([0, 0], turn), through([0, 0], other), ...corner],
    alt:
      relation === 'perpendicular'
        ? 'Two straight lines that cross and make four equal corners.'
        : 'Two straight lines that cross and make two narrow and two wide corners.',
  };
}
