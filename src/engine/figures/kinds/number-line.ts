// Number lines: marked in equal steps, or open (step 0) with only the numbers that matter; jumps are drawn as arcs.
import type { Locale } from '../../numbers/locale.js';
import type { FigureSpec } from '../figure.js';
import { label, labelHeight, labelWidth } from '../label.js';
import {
  boxOf,
  circle,
  FINE_MM,
  INK,
  LABEL_MM,
  LINE_MM,
  line,
  type Mark,
  path,
  type Point,
  polygon,
  type Sketch,
} from '../svg.js';
import { partOfStep } from '../reading.js';
import { capital, countOf, listOf, numberText, withGroupedDigits } from '../words.js';

export type NumberLineSpec = Extract<FigureSpec, { kind: 'number-line' }>;

const WIDTH_MM = 72;
const OVERHANG_MM = 4;
/** Room beside the label of a jump that lies under another's arc. */
const NESTED_GAP_MM = 16;
const TINY = 1e-6;

export function drawNumberLine(given: NumberLineSpec, locale: Locale): Sketch {
  const spec = withGroupedJumps(given, locale);
  const name = (value: number) => labelText(value, spec.denominator, locale);
  const ticks = spec.step > 0 ? ticksOf(spec) : [];
  const labels = [
    ...(spec.labels ?? (spec.step > 0 ? fittingLabels(ticks, name) : [spec.from, spec.to])),
  ].sort((a, b) => a - b);
  const place = spec.step > 0 ? scaled(spec) : spaced(spec, labels, name);
  const end = place(spec.to);
  const marks: Mark[] = [line([-OVERHANG_MM, 0], [end + OVERHANG_MM, 0], { widthMm: LINE_MM, part: 'axis' })];
  marks.push(head([-OVERHANG_MM - 1, 0], [-1, 0]), head([end + OVERHANG_MM + 1, 0], [1, 0]));
  const isDense = ticks.length > 60;
  for (const tick of ticks) {
    const reach = isDense && !isRound(tick / (10 * spec.step)) ? 0.9 : 1.4;
    const widthMm = isDense ? 0.25 : FINE_MM;
    marks.push(line([place(tick), -reach], [place(tick), reach], { widthMm, part: 'tick' }));
  }
  for (const value of labels) {
    marks.push(line([place(value), -2.2], [place(value), 2.2], { widthMm: LINE_MM, part: 'labelled-tick' }));
  }
  marks.push(...labelMarks(labels, name, place));
  const jumps = spec.jumps ?? [];
  marks.push(...jumpMarks(jumps, place));
  if (spec.mark !== undefined) marks.push(...pointer(place(spec.mark), jumps.length > 0));
  return { marks, alt: describe(spec, ticks, labels, name) };
}

/** Jumps are labelled by hand, so that their digits are grouped here, as those of the numbers below them are. */
function withGroupedJumps(spec: NumberLineSpec, locale: Locale): NumberLineSpec {
  if (!spec.jumps) return spec;
  const jumps = spec.jumps.map((jump) => ({
    ...jump,
    label: withGroupedDigits(jump.label, locale),
  }));
  return { ...spec, jumps };
}

function ticksOf(spec: NumberLineSpec): number[] {
  const count = Math.floor((spec.to - spec.from) / spec.step + TINY);
  // Beyond this many marks no child can count them, so the line keeps only its labels.
  if (count > 120) return [];
  return Array.from({ length: count + 1 }, (_, index) => spec.from + index * spec.step);
}

function isRound(value: number): boolean {
  return Math.abs(value - Math.round(value)) < TINY;
}

function fittingLabels(ticks: readonly number[], name: (value: number) => string): number[] {
  for (const every of [1, 2, 5, 10, 20, 50]) {
    const chosen = ticks.filter((_, index) => index % every === 0);
    const pitch = WIDTH_MM / Math.max(1, (ticks.length - 1) / every);
    const widths = chosen.map((value) => labelWidth(name(value)));
    if (widths.every((width, index) => (width + (widths[index + 1] ?? 0)) / 2 + 1.25 <= pitch)) return chosen;
  }
  return [ticks[0], ticks.at(-1)].filter((value) => value !== undefined);
}

/** Position in mm for a value on a line in true proportion. */
function scaled(spec: NumberLineSpec): (value: number) => number {
  return (value) => ((value - spec.from) / (spec.to - spec.from)) * WIDTH_MM;
}

/** Position in mm on an open line: in order and roughly in proportion, but with room for every label. */
function spaced(
  spec: NumberLineSpec,
  labels: readonly number[],
  name: (value: number) => string,
): (value: number) => number {
  const jumps = spec.jumps ?? [];
  const stops = [spec.from, spec.to, ...labels, ...jumps.flatMap((jump) => [jump.from, jump.to])];
  if (spec.mark !== undefined) stops.push(spec.mark);
  const sorted = [...new Set(stops)].sort((a, b) => a - b);
  const gaps = sorted.slice(1).map((value, index) => {
    const before = sorted[index] ?? value;
    const jump = jumps.find(
      (one) => Math.min(one.from, one.to) === before && Math.max(one.from, one.to) === value,
    );
    const halves =
      (labels.includes(before) ? labelWidth(name(before)) : 0) +
      (labels.includes(value) ? labelWidth(name(value)) : 0);
    return {
      size: value - before,
      least: Math.max(
        5,
        halves / 2 + 2,
        jump ? labelWidth(jump.label) + (isNested(jump, jumps) ? NESTED_GAP_MM : 1.5) : 0,
      ),
    };
  });
  const least = gaps.reduce((sum, gap) => sum + gap.least, 0);
  const size = gaps.reduce((sum, gap) => sum + gap.size, 0) || 1;
  // One or two short jumps need no more than part of the width.
  const spare = Math.max(0, Math.min(WIDTH_MM, 36 * gaps.length) - least);
  const positions = new Map<number, number>([[sorted[0] ?? 0, 0]]);
  let x = 0;
  gaps.forEach((gap, index) => {
    x += gap.least + (spare * gap.size) / size;
    positions.set(sorted[index + 1] ?? 0, x);
  });
  return (value) => positions.get(value) ?? 0;
}

function labelMarks(
  labels: readonly number[],
  name: (value: number) => string,
  place: (value: number) => number,
): Mark[] {
  const rowEnds: number[] = [];
  const tallest = Math.max(...labels.map((value) => labelHeight(name(value))), 0);
  return labels.flatMap((value) => {
    const width = labelWidth(name(value));
    const left = place(value) - width / 2;
    const row = freeRow(rowEnds, left, left + width, 1);
    return label(name(value), [place(value), 3.4 + tallest / 2 + row * (tallest + 0.8)]);
  });
}

function jumpMarks(jumps: NonNullable<NumberLineSpec['jumps']>, place: (value: number) => number): Mark[] {
  const rowEnds: number[] = [];
  const ordered = [...jumps].sort((a, b) => Math.min(a.from, a.to) - Math.min(b.from, b.to));
  return ordered.flatMap((jump) => {
    const from = place(jump.from);
    const to = place(jump.to);
    const height = isNested(jump, jumps)
      ? 2.6
      : jumps.some((other) => isInside(other, jump))
        ? 14
        : Math.min(11, 4.5 + Math.abs(to - from) * 0.16);
    const lean = (to - from) * 0.18;
    const rise = (-height * 4) / 3 - 0.6;
    const control: Point = [to - lean, rise];
    const length = Math.hypot(lean, rise);
    const along: Point = [lean / length, -rise / length];
    const tip: Point = [to, -0.6];
    const arc = path(
      [
        { to: [from, -0.6] },
        { curve: [[from + lean, rise], control], to: [to - along[0] * 1.4, -0.6 - along[1] * 1.4] },
      ],
      { widthMm: LINE_MM, part: 'jump' },
    );
    const width = labelWidth(jump.label);
    const middle = (from + to) / 2;
    const row = isNested(jump, jumps) ? 0 : freeRow(rowEnds, middle - width / 2, middle + width / 2, 0.8);
    const bottom = boxOf([arc]).top - 0.9;
    const words = label(jump.label, [middle, bottom - labelHeight(jump.label) / 2 - row * LABEL_MM]);
    return [arc, head(tip, along), ...words];
  });
}

type Jump = NonNullable<NumberLineSpec['jumps']>[number];

/** Whether a jump lies within the reach of another, as a step back after too long a jump does. */
function isNested(jump: Jump, jumps: readonly Jump[]): boolean {
  return jumps.some((other) => isInside(jump, other));
}

function isInside(inner: Jump, outer: Jump): boolean {
  const [low, high] = [Math.min(outer.from, outer.to), Math.max(outer.from, outer.to)];
  const [from, to] = [Math.min(inner.from, inner.to), Math.max(inner.from, inner.to)];
  return from >= low && to <= high && to - from < high - low;
}

// The first row in which the stretch is free; rows fill from left to right.
function freeRow(rowEnds: number[], left: number, right: number, gap: number): number {
  const free = rowEnds.findIndex((end) => end + gap <= left);
  const row = free < 0 ? rowEnds.length : free;
  rowEnds[row] = right;
  return row;
}

/** A filled arrowhead with its tip at `tip`, pointing along the unit vector. */
function head(tip: Point, [dx, dy]: Point): Mark {
  const back: Point = [tip[0] - dx * 2.2, tip[1] - dy * 2.2];
  return polygon([tip, [back[0] - dy * 0.9, back[1] + dx * 0.9], [back[0] + dy * 0.9, back[1] - dx * 0.9]], {
    fill: INK,
    stroke: 'none',
  });
}

function pointer(x: number, hasJumps: boolean): Mark[] {
  if (hasJumps) return [circle([x, 0], 1.3, { fill: INK, stroke: 'none', part: 'mark' })];
  return [
    line([x, -9], [x, -5], { widthMm: 0.9 }),
    polygon(
      [
        [x, -2.6],
        [x - 1.7, -6],
        [x + 1.7, -6],
      ],
      { fill: INK, stroke: 'none', part: 'mark' },
    ),
  ];
}

function labelText(value: number, denominator: number | undefined, locale: Locale): string {
  if (denominator === undefined || Math.abs(value - Math.round(value)) < TINY)
    return numberText(value, locale);
  const top = Math.round(Math.abs(value) * denominator);
  const whole = Math.floor(top / denominator);
  return `${whole > 0 ? `${whole} ` : ''}${top % denominator}/${denominator}`;
}

function describe(
  spec: NumberLineSpec,
  ticks: readonly number[],
  labels: readonly number[],
  name: (value: number) => string,
): string {
  const where = (value: number) => {
    // What is written there, not the value itself, which may be off by a rounding.
    const label = labels.find((one) => Math.abs(one - value) < TINY);
    if (label !== undefined) return name(label);
    if (ticks.length === 0) return 'a place without a number';
    const before = labels.findLast((one) => one < value);
    const start = before === undefined ? 'the left end' : name(before);
    const count = (value - (before ?? spec.from)) / spec.step;
    const whole = Math.floor(count + TINY);
    const over = count - whole;
    const at = whole === 0 ? start : `the place ${countOf(whole, 'mark')} after ${start}`;
    if (over < TINY) return at;
    return `${partOfStep(over)} ${whole === 0 ? 'after' : 'beyond'} ${at}`;
  };
  const parts = [
    ticks.length === 0
      ? 'An open number line.'
      : `A number line with ${ticks.length - 1 === 1 ? '1 step' : `${ticks.length - 1} equal steps`}.`,
  ];
  if (labels.length > 0) {
    parts.push(
      labels.length === 1
        ? `The number ${labels.map(name).join('')} is written.`
        : `The numbers ${listOf(labels.map(name))} are written.`,
    );
  }
  for (const jump of spec.jumps ?? []) {
    const labelled = jump.label ? ` labelled ${jump.label}` : '';
    parts.push(`${capital(`a jump${labelled}`)} goes from ${where(jump.from)} to ${where(jump.to)}.`);
  }
  if (spec.mark !== undefined) {
    parts.push(
      `${(spec.jumps ?? []).length > 0 ? 'A dot lies at' : 'An arrow points at'} ${where(spec.mark)}.`,
    );
  }
  return parts.join(' ');
}
