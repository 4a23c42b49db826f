// A set of counters, the first ones shaded, in rows or in ringed equal groups.
import type { FigureSpec } from '../figure.js';
import { circle, FINE_MM, INK, LINE_MM, type Mark, rect, type Sketch, text } from '../svg.js';
import { countOf, listOf } from '../words.js';

const PITCH_MM = 7;
const DOT_MM = 2.5;
const WIDTH_MM = 80;
const RING_MM = 1.4;
const GAP_MM = 3;

export function drawFractionSet(spec: Extract<FigureSpec, { kind: 'fraction-set' }>): Sketch {
  const { total, shaded } = spec;
  if (total === 0) return { marks: [text('no counters', [0, 0])], alt: 'No counters.' };
  const groups = spec.groups !== undefined && spec.groups > 1 && total % spec.groups === 0 ? spec.groups : 1;
  const each = total / groups;
  const columns = groups === 1 ? rowLength(total) : groupRowLength(groups, each);
  const rows = Math.ceil(each / columns);
  const width = columns * PITCH_MM + RING_MM;
  const height = rows * PITCH_MM + RING_MM;
  const lines = Math.ceil(groups / groupsInRow(columns));
  const perRow = Math.ceil(groups / lines);
  const marks: Mark[] = [];
  for (let index = 0; index < total; index++) {
    const group = Math.floor(index / each);
    const inner = index % each;
    const left = (group % perRow) * (width + GAP_MM);
    const top = Math.floor(group / perRow) * (height + GAP_MM);
    if (groups > 1 && inner === 0) {
      marks.push(rect(left, top, width, height, { widthMm: FINE_MM, part: 'group' }, 2.5));
    }
    const x = left + RING_MM / 2 + ((inner % columns) + 0.5) * PITCH_MM;
    const y = top + RING_MM / 2 + (Math.floor(inner / columns) + 0.5) * PITCH_MM;
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
  const sorts = [
    shaded > 0 ? countOf(Math.min(shaded, total), 'dark counter') : '',
    plain > 0 ? countOf(plain, 'light counter') : '',
  ].filter(Boolean);
  const told = sorts.length === 1 && shaded === 0 ? countOf(total, 'counter') : listOf(sorts);
  return {
    marks,
    alt: `A set of counters: ${told}${groups > 1 ? `, ringed in ${groups} equal groups` : ''}.`,
  };
}

// The longest row up to ten that makes a full rectangle; failing that, rows of ten.
function rowLength(count: number): number {
  if (count <= 7) return count;
  const full = [10, 9, 8, 7, 6, 5, 4].find((columns) => count % columns === 0 && count / columns <= 6);
  return full ?? Math.min(10, count);
}

// The row length that leaves the fewest gaps in a group and the figure low.
function groupRowLength(groups: number, each: number): number {
  const cost = (columns: number) => {
    const rows = Math.ceil(each / columns);
    const lines = Math.ceil(groups / groupsInRow(columns));
    return (rows * columns - each) * 8 + lines * (rows * PITCH_MM + RING_MM + GAP_MM);
  };
  const choices = Array.from({ length: Math.min(each, 10) }, (_, index) => index + 1);
  return choices.reduce((best, columns) => (cost(columns) < cost(best) ? columns : best));
}

function groupsInRow(columns: number): number {
  return Math.max(1, Math.floor((WIDTH_MM + GAP_MM) / (columns * PITCH_MM + RING_MM + GAP_MM)));
}
