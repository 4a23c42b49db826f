// The single door to all figures: a specification in, an SVG picture with its size and its alternative text out.
import { type LocaleId, type Locale, localeOf } from '../numbers/locale.js';
import type { Figure, FigureKind, FigureSpec } from './figure.js';
import { drawAngle } from './kinds/angle.js';
import { drawArray } from './kinds/array.js';
import { drawBarChart } from './kinds/bar-chart.js';
import { drawBarModel } from './kinds/bar-model.js';
import { drawBaseTen } from './kinds/base-ten.js';
import { drawClock } from './kinds/clock.js';
import { drawDigitalClock } from './kinds/digital-clock.js';
import { drawFractionBar } from './kinds/fraction-bar.js';
import { drawFractionCircle } from './kinds/fraction-circle.js';
import { drawFractionSet } from './kinds/fraction-set.js';
import { drawGridRectangle } from './kinds/grid-rectangle.js';
import { drawMoney } from './kinds/money.js';
import { drawNumberLine } from './kinds/number-line.js';
import { drawPartWhole } from './kinds/part-whole.js';
import { drawPattern } from './kinds/pattern.js';
import { drawPictograph } from './kinds/pictograph.js';
import { drawRuler } from './kinds/ruler.js';
import { drawScale } from './kinds/scale.js';
import { drawShape } from './kinds/shape.js';
import { drawSolid } from './kinds/solid.js';
import { drawSpinner } from './kinds/spinner.js';
import { drawTally } from './kinds/tally.js';
import { drawTenFrame } from './kinds/ten-frame.js';
import { drawDots } from './kinds/dots.js';
import { drawTable } from './kinds/table.js';
import { drawCoordinates } from './kinds/coordinates.js';
import { drawLineGraph } from './kinds/line-graph.js';
import { drawPieChart } from './kinds/pie-chart.js';
import { drawCalendar } from './kinds/calendar.js';
import { drawHundredSquare } from './kinds/hundred-square.js';
import { drawAreaModel } from './kinds/area-model.js';
import { drawNet } from './kinds/net.js';
import { drawLinePair } from './kinds/line-pair.js';
import { drawSymmetryGrid } from './kinds/symmetry-grid.js';
import { type Box, boxOf, escapeXml, type Mark, mm, type Sketch } from './svg.js';

type Drawers = {
  readonly [K in FigureKind]: (spec: Extract<FigureSpec, { kind: K }>, locale: Locale) => Sketch;
};

const DRAWERS: Drawers = {
  'number-line': drawNumberLine,
  'ten-frame': drawTenFrame,
  'base-ten': drawBaseTen,
  array: drawArray,
  clock: drawClock,
  'digital-clock': drawDigitalClock,
  money: drawMoney,
  'fraction-bar': drawFractionBar,
  'fraction-circle': drawFractionCircle,
  'fraction-set': drawFractionSet,
  shape: drawShape,
  solid: drawSolid,
  'grid-rectangle': drawGridRectangle,
  angle: drawAngle,
  tally: drawTally,
  'bar-chart': drawBarChart,
  pictograph: drawPictograph,
  spinner: drawSpinner,
  pattern: drawPattern,
  ruler: drawRuler,
  scale: drawScale,
  'bar-model': drawBarModel,
  'part-whole': drawPartWhole,
  'symmetry-grid': drawSymmetryGrid,
  'line-pair': drawLinePair,
  net: drawNet,
  'area-model': drawAreaModel,
  'hundred-square': drawHundredSquare,
  calendar: drawCalendar,
  'pie-chart': drawPieChart,
  'line-graph': drawLineGraph,
  coordinates: drawCoordinates,
  table: drawTable,
  dots: drawDots,
};

/** Every kind of figure that can be drawn. */
export const FIGURE_KINDS = Object.keys(DRAWERS) as readonly FigureKind[];

/** Clear space around the drawing, in mm. */
const MARGIN_MM = 0.5;
/** 6 points, the least letter size that print aims at (common practice). */
const SMALLEST_MM = 2.117;
/** How narrow a figure without letters may be (common practice). */
const PLAIN_MM = 20;

/** The size of a figure, as in {@link Figure}. */
export type FigureSize = Pick<Figure, 'widthMm' | 'heightMm' | 'leastWidthMm'>;

/**
 * The picture of a specification: SVG in millimetres cut to the drawing, its size, and the text for a screen reader.
 * The same specification and locale always give the same characters. Total for every specification whose counts are
 * whole and not negative, whose steps are positive and whose ranges are not empty.
 */
export function drawFigure(spec: FigureSpec, options: { readonly locale?: LocaleId } = {}): Figure {
  const { marks, alt } = sketchOf(spec, options.locale);
  const box = boxOf(marks);
  const size = sizeOf(marks, box);
  const { widthMm, heightMm } = size;
  const dx = MARGIN_MM - box.left;
  const dy = MARGIN_MM - box.top;
  const shown = `width="${mm(widthMm)}mm" height="${mm(heightMm)}mm" viewBox="0 0 ${mm(widthMm)} ${mm(heightMm)}"`;
  const body = marks.map((mark) => mark.render(dx, dy)).join('');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" ${shown} role="img" aria-label="${escapeXml(alt)}">${body}</svg>`;
  return { svg, ...size, alt };
}

/** The size that {@link drawFigure} would give, at a part of the work: for composers that try many questions. */
export function measureFigure(spec: FigureSpec, options: { readonly locale?: LocaleId } = {}): FigureSize {
  const { marks } = sketchOf(spec, options.locale);
  return sizeOf(marks, boxOf(marks));
}

function sketchOf(spec: FigureSpec, locale: LocaleId = 'en-AU'): Sketch {
  const draw = DRAWERS[spec.kind] as (spec: FigureSpec, locale: Locale) => Sketch;
  const sketch = draw(spec, localeOf(locale));
  return locale === 'en-US' ? { ...sketch, alt: inAmerican(sketch.alt) } : sketch;
}

/** The words of the alternative texts that American readers spell or call otherwise. */
const AMERICAN: readonly (readonly [british: RegExp, american: string])[] = [
  [/\b([Ll])abelled\b/g, '$1abeled'],
  [/\b([Cc])oloured\b/g, '$1olored'],
  [/\b([Gg])rey\b/g, '$1ray'],
  [/\b([Cc]enti|[Mm]illi|[Kk]ilo)metre/g, '$1meter'],
  [/\bmeasuring jug\b/g, 'measuring cup'],
  [/\bdisc(s?)\b/g, 'disk$1'],
  [/\bhundred square\b/g, 'hundreds chart'],
];

function inAmerican(alt: string): string {
  return AMERICAN.reduce((text, [british, american]) => text.replace(british, american), alt);
}

function sizeOf(marks: readonly Mark[], box: Box): FigureSize {
  const widthMm = upToTenth(box.right - box.left + 2 * MARGIN_MM);
  const heightMm = upToTenth(box.bottom - box.top + 2 * MARGIN_MM);
  const least = marks.reduce(
    (size, { letterMm = size }) => Math.min(size, letterMm),
    Number.POSITIVE_INFINITY,
  );
  const leastShare = Math.min(1, SMALLEST_MM / least);
  const leastWidthMm = Number.isFinite(least)
    ? Math.min(widthMm, upToTenth(widthMm * leastShare))
    : Math.min(widthMm, PLAIN_MM);
  return { widthMm, heightMm, leastWidthMm };
}

// Whole tenths keep the sizes printable in a layout without long decimals.
function upToTenth(value: number): number {
  return Math.ceil(value * 10 - 1e-6) / 10;
}
