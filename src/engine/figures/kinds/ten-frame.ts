// Ten-frames: two rows of five boxes, filled from the top left; a second sort of counter follows the first.
import type { FigureSpec } from '../figure.js';
import { BOLD_MM, circle, INK, LINE_MM, line, type Mark, rect, type Sketch } from '../svg.js';
import { capital, countInWords, countOf, listOf } from '../words.js';

const BOX_MM = 7.4;
const GAP_MM = 4;

export function drawTenFrame(spec: Extract<FigureSpec, { kind: 'ten-frame' }>): Sketch {
  const total = spec.filled + (spec.second ?? 0);
  const frames = Math.max(spec.frames ?? 1, Math.ceil(total / 10), 1);
  const marks: Mark[] = [];
  const told: string[] = [];
  const isMixed = (spec.second ?? 0) > 0;
  for (let frame = 0; frame < frames; frame++) {
    const left = (frame % 2) * (5 * BOX_MM + GAP_MM);
    const top = Math.floor(frame / 2) * (2 * BOX_MM + GAP_MM);
    for (let inner = 1; inner < 5; inner++) {
      marks.push(line([left + inner * BOX_MM, top], [left + inner * BOX_MM, top + 2 * BOX_MM]));
    }
    marks.push(line([left, top + BOX_MM], [left + 5 * BOX_MM, top + BOX_MM], { widthMm: LINE_MM }));
    marks.push(rect(left, top, 5 * BOX_MM, 2 * BOX_MM, { widthMm: BOLD_MM, part: 'frame' }));
    const rows = [0, 1].map((row) => {
      const counts = { dark: 0, light: 0, empty: 0 };
      for (let column = 0; column < 5; column++) {
        const place = frame * 10 + row * 5 + column;
        const kind = place < spec.filled ? 'dark' : place < total ? 'light' : 'empty';
        counts[kind] += 1;
        if (kind === 'empty') continue;
        const fill = kind === 'dark' ? INK : '#ffffff';
        marks.push(
          circle([left + (column + 0.5) * BOX_MM, top + (row + 0.5) * BOX_MM], BOX_MM * 0.34, {
            fill,
            widthMm: BOLD_MM,
            part: `${kind}-counter`,
          }),
        );
      }
      return tellRow(counts, isMixed);
    });
    const name = frames === 1 ? '' : `frame ${frame + 1}, `;
    told.push(`${capital(`${name}top row`)}: ${rows[0]}; bottom row: ${rows[1]}.`);
  }
  const opening = frames === 1 ? 'A ten-frame.' : `${capital(countInWords(frames, 'ten-frame'))}.`;
  return { marks, alt: `${opening} ${told.join(' ')}` };
}

function tellRow(counts: { dark: number; light: number; empty: number }, isMixed: boolean): string {
  const parts: string[] = [];
  if (counts.dark > 0) parts.push(countOf(counts.dark, isMixed ? 'dark counter' : 'counter'));
  if (counts.light > 0) parts.push(countOf(counts.light, 'light counter'));
  if (counts.empty > 0) parts.push(countOf(counts.empty, 'empty box', 'empty boxes'));
  return listOf(parts);
}
