// A circle cut into slices by share, each with its name beside it, and ticks on the rim where eye alone cannot judge a share.
import type { FigureSpec } from '../figure.js';
import { circle, INK, LINE_MM, line, type Mark, path, type Point, polar, type Sketch, text } from '../svg.js';
import { textWidth } from '../text-width.js';
import { capital } from '../words.js';

const RADIUS_MM = 15;
const LETTER_MM = 3.4;
const TICK_MM = 1.6;
/** Up to so many equal shares are marked on the rim; more would be too close to count. */
const MOST_TICKS = 12;
const FILLS = ['#ffffff', '#d6d6d6', '#a9a9a9', '#ececec', '#c0c0c0', '#f6f6f6'] as const;

/** Slices clockwise from the top; `parts` are counts out of their sum. */
export function drawPieChart(spec: Extract<FigureSpec, { kind: 'pie-chart' }>): Sketch {
  const total = spec.slices.reduce((sum, slice) => sum + slice.parts, 0);
  const centre: Point = [0, 0];
  const marks: Mark[] = [circle(centre, RADIUS_MM, { fill: '#ffffff' })];
  let from = 0;
  spec.slices.forEach((slice, index) => {
    const until = from + (360 * slice.parts) / total;
    if (slice.parts > 0 && slice.parts < total)
      marks.push(
        path(
          [{ to: centre, move: true }, { centre, radius: RADIUS_MM, from, until }, { to: centre }],
          { fill: FILLS[index % FILLS.length] ?? '#ffffff', stroke: INK, widthMm: LINE_MM, part: 'slice' },
          true,
        ),
      );
    const middle = (from + until) / 2;
    const edge = polar(centre, RADIUS_MM, middle);
    const out = polar(centre, RADIUS_MM + 2.5, middle);
    if (slice.parts > 0) {
      marks.push(line(edge, out, { widthMm: 0.35 }));
      const anchor = out[0] >= 0 ? 'start' : 'end';
      const x = out[0] + (anchor === 'start' ? 1 : -1);
      marks.push(text(slice.label, [x, out[1]], LETTER_MM, anchor));
    }
    from = until;
  });
  if (spec.title) {
    const above = Math.min(-RADIUS_MM - 5, ...marks.map((mark) => mark.box.top - 4));
    marks.push(
      text(spec.title, [0, above], Math.min(4.2, (4.2 * 88) / Math.max(1, textWidth(spec.title) * 4.2))),
    );
  }
  marks.push(...ticks(spec.slices.map(({ parts }) => parts)));
  const told = spec.slices.map((slice) => `${slice.label}: ${shareWords(slice.parts, total)}`);
  const title = spec.title ? ` with the title "${spec.title}"` : '';
  return { marks, alt: `A pie chart${title}. ${capital(told.join('; '))}.` };
}

/**
 * Inside the rim at every equal share that is not cut there already. Halves, quarters and slices all alike are seen
 * without them, three eighths beside three eighths are not.
 */
function ticks(parts: readonly number[]): Mark[] {
  const total = parts.reduce((sum, count) => sum + count, 0);
  const isSeen =
    parts.every((count) => count === parts[0]) || parts.every((count) => (4 * count) % total === 0);
  if (isSeen || total > MOST_TICKS) return [];
  const cuts = new Set<number>();
  parts.reduce((sum, count) => (cuts.add(sum), sum + count), 0);
  return Array.from({ length: total }, (_, share) => share)
    .filter((share) => !cuts.has(share))
    .map((share) => (360 * share) / total)
    .map((at) =>
      line(polar([0, 0], RADIUS_MM, at), polar([0, 0], RADIUS_MM - TICK_MM, at), {
        widthMm: LINE_MM,
        part: 'tick',
      }),
    );
}

/** "a quarter of the circle", "3 of 8 equal shares of the circle", "none of the circle". */
function shareWords(parts: number, total: number): string {
  if (parts === 0) return 'none of the circle';
  if (parts === total) return 'the whole circle';
  if (parts * 2 === total) return 'half of the circle';
  if (parts * 4 === total) return 'a quarter of the circle';
  return `${parts} of ${total} equal shares of the circle`;
}
