// A tally table: strokes in bundles of five, the fifth stroke across.
import type { FigureSpec } from '../figure.js';
import { BOLD_MM, FINE_MM, LABEL_MM, line, type Mark, type Sketch, text } from '../svg.js';
import { textWidth } from '../text-width.js';
import { capital, countOf, listOf } from '../words.js';

const STROKE_MM = 7;
const PITCH_MM = 2.3;
const BUNDLE_MM = 14;
const ROW_MM = 10.5;
const BUNDLES_A_LINE = 5;

export function drawTally(spec: Extract<FigureSpec, { kind: 'tally' }>): Sketch {
  const column = Math.max(...spec.rows.map((row) => textWidth(row.label) * LABEL_MM), 0) + 3;
  const most = Math.max(...spec.rows.map((row) => Math.min(BUNDLES_A_LINE, Math.ceil(row.count / 5))), 1);
  const width = column + 3 + most * BUNDLE_MM - 2;
  const marks: Mark[] = [];
  const told: string[] = [];
  let top = 0;
  marks.push(line([0, 0], [width, 0], { widthMm: FINE_MM }));
  for (const row of spec.rows) {
    const lines = Math.max(1, Math.ceil(row.count / (5 * BUNDLES_A_LINE)));
    const height = lines * ROW_MM;
    marks.push(text(row.label, [0.5, top + height / 2], LABEL_MM, 'start'));
    for (let stroke = 0; stroke < row.count; stroke++) {
      const bundle = Math.floor(stroke / 5);
      const x = column + 4 + (bundle % BUNDLES_A_LINE) * BUNDLE_MM;
      const y = top + Math.floor(bundle / BUNDLES_A_LINE) * ROW_MM + (ROW_MM - STROKE_MM) / 2;
      const place = stroke % 5;
      const from: [number, number] = place < 4 ? [x + place * PITCH_MM, y] : [x - 1.4, y + STROKE_MM - 1.2];
      const to: [number, number] =
        place < 4 ? [x + place * PITCH_MM, y + STROKE_MM] : [x + 3 * PITCH_MM + 1.4, y + 1.2];
      marks.push(line(from, to, { widthMm: BOLD_MM, roundCap: true, part: 'stroke' }));
    }
    top += height;
    marks.push(line([0, top], [width, top], { widthMm: FINE_MM }));
    told.push(`${row.label}: ${strokes(row.count)}`);
  }
  marks.push(line([column, 0], [column, top], { widthMm: FINE_MM }));
  return { marks, alt: `A tally table. ${capital(told.join('; '))}.` };
}

function strokes(count: number): string {
  const bundles = Math.floor(count / 5);
  const singles = count % 5;
  if (count === 0) return 'no strokes';
  return listOf([
    ...(bundles > 0 ? [countOf(bundles, 'bundle of five', 'bundles of five')] : []),
    ...(singles > 0 ? [countOf(singles, 'single stroke')] : []),
  ]);
}
