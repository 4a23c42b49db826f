// A pictograph: rows of discs, each standing for the same number; part of a disc for part of it.
import type { Locale } from '../../numbers/locale.js';
import type { FigureSpec } from '../figure.js';
import {
  circle,
  FINE_MM,
  LABEL_MM,
  LINE_MM,
  line,
  type Mark,
  path,
  type Point,
  SHADE,
  type Sketch,
  text,
} from '../svg.js';
import { textWidth } from '../text-width.js';
import { capital, countOf, numberText, pictureGraph } from '../words.js';
import { rational } from '../../numbers/rational.js';

const RADIUS_MM = 3.1;
const PITCH_MM = 7.6;
const ROW_MM = 8.6;

export function drawPictograph(spec: Extract<FigureSpec, { kind: 'pictograph' }>, locale: Locale): Sketch {
  const column = Math.max(...spec.rows.map((row) => textWidth(row.label) * LABEL_MM), 0) + 3;
  const most = Math.max(...spec.rows.map((row) => Math.ceil(row.value / spec.each)), 1);
  const keyWords = ` = ${numberText(spec.each, locale)}`;
  const keyWidth = 2 * RADIUS_MM + textWidth(keyWords) * LABEL_MM;
  const width = Math.max(column + 2 + most * PITCH_MM, keyWidth + 2, textWidth(spec.title) * LABEL_MM);
  const marks: Mark[] = [line([0, 0], [width, 0], { widthMm: FINE_MM })];
  if (spec.title) marks.push(text(spec.title, [width / 2, -4], LABEL_MM + 0.2));
  spec.rows.forEach((row, index) => {
    const y = (index + 0.5) * ROW_MM;
    marks.push(text(row.label, [0.5, y], LABEL_MM, 'start'));
    marks.push(line([0, (index + 1) * ROW_MM], [width, (index + 1) * ROW_MM], { widthMm: FINE_MM }));
    const whole = Math.floor(row.value / spec.each + 1e-9);
    const rest = row.value / spec.each - whole;
    const left = column + 2 + RADIUS_MM;
    for (let disc = 0; disc < whole; disc++) {
      marks.push(
        circle([left + disc * PITCH_MM, y], RADIUS_MM, { fill: SHADE, widthMm: LINE_MM, part: 'disc' }),
      );
    }
    if (rest > 1e-9) marks.push(partOfDisc([left + whole * PITCH_MM, y], rest));
  });
  const bottom = spec.rows.length * ROW_MM;
  marks.push(line([column, 0], [column, bottom], { widthMm: FINE_MM }));
  const keyY = bottom + 2 + RADIUS_MM;
  marks.push(circle([RADIUS_MM + 0.5, keyY], RADIUS_MM, { fill: SHADE, widthMm: LINE_MM }));
  marks.push(text(keyWords.trimStart(), [2 * RADIUS_MM + 2.4, keyY], LABEL_MM, 'start'));
  const rows = spec.rows.map((row) => `${row.label}: ${discs(row.value / spec.each)}`);
  const title = spec.title ? ` with the title "${spec.title}"` : '';
  return {
    marks,
    alt: `A ${pictureGraph(locale)}${title}. Each disc stands for ${numberText(spec.each, locale)}. ${capital(rows.join('; '))}.`,
  };
}

/** The left part of a disc, cut like a cake, so that a half is the left half and a quarter the upper left one. */
function partOfDisc(centre: Point, share: number): Mark {
  return path(
    [{ to: centre }, { centre, radius: RADIUS_MM, from: 360 - share * 360, until: 360 }],
    { fill: SHADE, widthMm: LINE_MM, part: 'part-disc' },
    true,
  );
}

function discs(count: number): string {
  const whole = Math.floor(count + 1e-9);
  const rest = count - whole;
  if (rest < 1e-9) return whole === 0 ? 'no discs' : countOf(whole, 'disc');
  const part = partName(rest);
  const told = part === 'half' ? 'half a disc' : `${part} of a disc`;
  return whole === 0 ? told : `${countOf(whole, 'disc')} and ${told}`;
}

function partName(share: number): string {
  const names: readonly (readonly [number, string])[] = [
    [1 / 2, 'half'],
    [1 / 4, 'a quarter'],
    [3 / 4, 'three quarters'],
    [1 / 3, 'a third'],
    [2 / 3, 'two thirds'],
  ];
  const named = names.find(([value]) => Math.abs(value - share) < 1e-6);
  if (named) return named[1];
  const hundredths = rational(Math.round(share * 100), 100);
  return `${hundredths.n}/${hundredths.d}`;
}
