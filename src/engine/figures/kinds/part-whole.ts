// A whole above, joined by lines to the parts below that make it.
import type { FigureSpec } from '../figure.js';
import { fitSize, label, labelWidth } from '../label.js';
import { BOLD_MM, circle, LINE_MM, line, type Mark, type Sketch } from '../svg.js';
import { listOf, spoken } from '../words.js';

const LETTER_MM = 5;

export function drawPartWhole(spec: Extract<FigureSpec, { kind: 'part-whole' }>): Sketch {
  const widest = Math.max(...[spec.whole, ...spec.parts].map((words) => labelWidth(words, LETTER_MM)));
  const radius = Math.min(9.6, Math.max(6.5, widest / 2 + 2));
  const inside = (words: string, x: number, y: number) =>
    label(words, [x, y], fitSize(words, 2 * radius - 3, LETTER_MM));
  const pitch = 2 * radius + 6;
  const depth = 2 * radius + 5;
  const marks: Mark[] = [];
  const discs: Mark[] = [];
  spec.parts.forEach((part, index) => {
    const x = (index - (spec.parts.length - 1) / 2) * pitch;
    marks.push(line([0, 0], [x, depth], { widthMm: LINE_MM }));
    discs.push(circle([x, depth], radius, { fill: '#ffffff', widthMm: BOLD_MM, part: 'part' }));
    discs.push(...inside(part, x, depth));
  });
  discs.push(circle([0, 0], radius, { fill: '#ffffff', widthMm: BOLD_MM, part: 'whole' }));
  discs.push(...inside(spec.whole, 0, 0));
  const parts = listOf(spec.parts.map(spoken));
  const alt = `A whole and its parts. The whole: ${spoken(spec.whole)}. ${spec.parts.length === 1 ? 'The part' : 'The parts'}: ${parts}.`;
  return { marks: [...marks, ...discs], alt };
}
