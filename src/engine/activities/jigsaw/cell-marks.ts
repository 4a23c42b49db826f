// What stands in one cell, as marks around its middle: a number, words on lines, a drawn shape, a picture, a sign in a ring.
import { drawFigure } from '../../figures/draw.js';
import { label, labelHeight, labelWidth } from '../../figures/label.js';
import { circle, INK, line, type Mark, mm, type Point, polar, polygon, text } from '../../figures/svg.js';
import type { LocaleId } from '../../numbers/locale.js';
import type { JigsawCell } from './jigsaw.js';
import { kindOf } from './token.js';

/** Shares of a cell's side. */
const TEXT_SIZE = 0.4;
const WORD_SIZE = 0.27;
const SMALLEST_TEXT = 0.15;
const TEXT_WIDTH = 0.84;
const TEXT_HEIGHT = 0.74;
const SIGN_SIZE = 0.4;
const SIGN_RING = 0.31;
const LINE_HEIGHT = 1.15;
export const FIGURE_SIZE = 0.88;

const FINE = '#777777';

/** The letter size in mm at which all plain numbers of a jigsaw fit their cells, so that all stand in one size. */
export function commonSizeMm(cells: readonly JigsawCell[], cellMm: number): number {
  const sizes = cells
    .filter((cell) => kindOf(cell) === 'number' && isPlain(cell))
    .map((cell) => fitted([cell.text], cellMm));
  return Math.min(TEXT_SIZE * cellMm, ...sizes);
}

/** Numbers, fractions and the like, which stay on one line; everything else may be broken at its spaces. */
function isPlain({ text: words, figure }: JigsawCell): boolean {
  return figure === undefined && !(words in SHAPES) && words.length <= 7 && !/[a-z]{3}/i.test(words);
}

/** Whether a letter finds room at the top left of the cell. */
export function hasFreeCorner(cell: JigsawCell): boolean {
  return kindOf(cell) !== 'number' || cell.text in SHAPES || isPlain(cell);
}

/** The marks of a cell whose middle is at `at`. Blank cells are hatched, signs stand in a ring. */
export function cellMarks(
  cell: JigsawCell,
  at: Point,
  { cellMm, sizeMm, locale, ink = INK }: { cellMm: number; sizeMm: number; locale: LocaleId; ink?: string },
): Mark[] {
  const kind = kindOf(cell);
  if (kind === 'blank') return hatch(at, cellMm);
  if (kind === 'sign') {
    return [signRing(at, cellMm), text(cell.text, at, SIGN_SIZE * cellMm, 'middle', ink)];
  }
  if (cell.figure) return [picture(cell, at, cellMm, locale)];
  const shape = SHAPES[cell.text];
  if (shape) return shape(at, cellMm, ink);
  if (isPlain(cell))
    return label(cell.text, at, Math.min(sizeMm, fitted([cell.text], cellMm)), 'middle', ink);
  const lines = broken(cell.text, cellMm);
  const size = Math.min(sizeMm, WORD_SIZE * cellMm, fitted(lines, cellMm));
  return lines.map((words, i) =>
    text(words, [at[0], at[1] + (i - (lines.length - 1) / 2) * LINE_HEIGHT * size], size, 'middle', ink),
  );
}

/** The ring in which a sign stands; empty in the frame. */
export function signRing(at: Point, cellMm: number): Mark {
  return circle(at, SIGN_RING * cellMm, { stroke: FINE, widthMm: 0.25 });
}

/** Diagonal lines that say: nothing stands here. They copy well in black and white. */
export function hatch([x, y]: Point, cellMm: number): Mark[] {
  const half = 0.36 * cellMm;
  return [-0.5, 0, 0.5, 1, 1.5].map((share) => {
    const off = (share - 0.5) * 2 * half;
    const from: Point = [x - half + Math.max(0, off), y + half + Math.min(0, off)];
    const to: Point = [x + half + Math.min(0, off), y - half + Math.max(0, off)];
    return line(from, to, { stroke: FINE, widthMm: 0.3 });
  });
}

/** The largest size at which these lines fit a cell. */
function fitted(lines: readonly string[], cellMm: number): number {
  const width = Math.max(...lines.map((words) => labelWidth(words, 1)));
  const height =
    lines.length === 1 ? labelHeight(lines[0] as string, 1) : 0.8 + (lines.length - 1) * LINE_HEIGHT;
  const most = Math.min((TEXT_WIDTH * cellMm) / width, (TEXT_HEIGHT * cellMm) / height);
  return Math.max(SMALLEST_TEXT * cellMm, Math.min(TEXT_SIZE * cellMm, most));
}

/** The words on as many lines as let them be set largest. Hyphenated words may break after their hyphen. */
function broken(words: string, cellMm: number): readonly string[] {
  const parts = words.split(/ |(?<=-)/);
  const gaps = parts.map((part) => (part.endsWith('-') ? '' : ' '));
  let best: readonly string[] = [words];
  for (let breaks = 1; breaks < 1 << (parts.length - 1); breaks++) {
    const lines = [''];
    parts.forEach((part, i) => {
      lines[lines.length - 1] += part;
      if (breaks & (1 << i)) lines.push('');
      else if (i < parts.length - 1) lines[lines.length - 1] += gaps[i] as string;
    });
    if (fitted(lines, cellMm) > fitted(best, cellMm) + 1e-6) best = lines;
  }
  return best;
}

/** A figure scaled into the cell, as a picture within the picture. */
function picture(cell: JigsawCell, [x, y]: Point, cellMm: number, locale: LocaleId): Mark {
  const { svg, widthMm, heightMm } = drawFigure(cell.figure as NonNullable<JigsawCell['figure']>, { locale });
  const scale = (FIGURE_SIZE * cellMm) / Math.max(widthMm, heightMm);
  const [width, height] = [widthMm * scale, heightMm * scale];
  const [left, top] = [x - width / 2, y - height / 2];
  return {
    box: { left, top, right: left + width, bottom: top + height },
    render: (dx, dy) =>
      svg.replace(
        /^<svg xmlns="[^"]*" width="[^"]*" height="[^"]*"/,
        `<svg x="${mm(left + dx)}" y="${mm(top + dy)}" width="${mm(width)}" height="${mm(height)}"`,
      ),
  };
}

type ShapeDrawer = (at: Point, cellMm: number, ink: string) => Mark[];

const regular =
  (corners: number, size: number, turn = 0, inner = 1): ShapeDrawer =>
  (at, cellMm, ink) => [
    polygon(
      Array.from({ length: corners }, (_, i) =>
        polar(at, size * cellMm * (i % 2 === 1 ? inner : 1), turn + (360 * i) / corners),
      ),
      { fill: ink, stroke: 'none' },
    ),
  ];

/** An arrow turned so many degrees from straight up. */
const arrow =
  (degrees: number): ShapeDrawer =>
  (at, cellMm, ink) => {
    const corner = (along: number, across: number): Point => {
      const [x, y] = polar(at, along * cellMm, degrees);
      return polar([x, y], across * cellMm, degrees + 90);
    };
    const head = [corner(0.34, 0), corner(0.04, 0.24), corner(0.04, 0.09)];
    const tail = [corner(-0.32, 0.09), corner(-0.32, -0.09)];
    return [
      polygon([...head, ...tail, corner(0.04, -0.09), corner(0.04, -0.24)], { fill: ink, stroke: 'none' }),
    ];
  };

/** The shapes that repeat in patterns, drawn, since fonts differ in theirs. */
const SHAPES: Readonly<Record<string, ShapeDrawer>> = {
  '\u25cf': ([x, y], cellMm, ink) => [circle([x, y], 0.26 * cellMm, { fill: ink, stroke: 'none' })],
  '\u25b2': ([x, y], cellMm, ink) => regular(3, 0.33)([x, y + 0.06 * cellMm], cellMm, ink),
  '\u25a0': regular(4, 0.33, 45),
  '\u2605': regular(10, 0.34, 0, 0.45),
  '\u25c6': regular(4, 0.34),
  '\u2b22': regular(6, 0.3),
  '\u2191': arrow(0),
  '\u2197': arrow(45),
  '\u2192': arrow(90),
  '\u2198': arrow(135),
  '\u2193': arrow(180),
  '\u2190': arrow(270),
};
