// A set of counters, the first ones shaded, in rows or in ringed equal groups.
import type { FigureSpec } from '../figure.js';
import { circle, FINE_MM, INK, LINE_MM, type Mark, rect, type Sketch, text } from '../svg.js';
import { countOf, listOf } from '../words.js';

const PITCH_MM = 7;
const DOT_MM = 2.5;
const WIDTH_MM = 80;

export function drawFractionSet(spec: Extract<FigureSpec, { kind: 'fraction-set' }>): Sketch {
  const { total, shaded } = spec;
  if (total === 0) return { marks: [text('no counters', [0, 0])], alt: 'No counters.' };
  const groups = spec.groups !== undefined && spec.groups > 1 && total % spec.groups === 0 ? spec.groups : 1;
  const each = total / groups;
  const columns =
    groups === 1
      ? rowLength(total, 10)
      : rowLength(each, Math.max(2, Math.min(5, Math.floor(70 / PITCH_MM / groups))));
  const rows = Math.ceil(each / columns);
  const width = columns * PITCH_MM + 1.4;
  const height = rows * PITCH_MM + 1.4;
  const perRow = Math.max(1, Math.floor((WIDTH_MM + 3) / (width + 3)));
  const marks: Mark[] = [];
  for (let index = 0; index < total; index++) {
    const group = Math.floor(index / each);
    const inner = index % each;
    const left = (group % perRow) * (width + 3);
    const top = Math.floor(group / perRow) * (height + 3);
    if (groups > 1 && inner === 0) {
      marks.push(rect(left, top, width, height, { widthMm: FINE_MM, part: 'group' }, 2.5));
    }
    const x = left + 0.7 + ((inner % columns) + 0.5) * PITCH_MM;
    const y = top + 0.7 + (Math.floor(inner / columns) + 0.5) * PITCH_MM;
    const isShaded = index < shaded;
    marks.push(
      circle([x, y], DOT_MM, {
        fill: isShaded ? INK : '#ffffff',
        widthMm: LINE_MM,
        part: isShaded ? 'shaded' : 'plain',
      }),
    );
  }
  const plain = total - Math.min(shaded, total);
  const told = listOf(
    [
      shaded > 0 ? countOf(Math.min(shaded, total), 'dark counter') : '',
      plain > 0 ? countOf(plain, 'light counter') : '',
    ].filter(Boolean),
  );
  return {
    marks,
    alt: `A set of counters: ${told}${groups > 1 ? `, ringed in ${groups} equal groups` : ''}.`,
  };
}

// The longest row up to `most` that makes a full rectangle; failing that a row of five, or of as many as there are.
function rowLength(count: number, most: number): number {
  if (count <= Math.min(most, 6)) return count;
  for (let columns = most; columns >= 3; columns--) {
    if (count % columns === 0 && count / columns <= 6) return columns;
  }
  return Math.min(count, Math.max(most, Math.ceil(count / 6)));
}
