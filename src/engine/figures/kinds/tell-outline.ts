// The outline of a plane shape in words.
import type { Point } from '../svg.js';
import { listOf, spoken } from '../words.js';

/** Walks round the outline side by side: a listener can count and compare sides as a reader can, but no name is given. */
export function tellOutline(
  corners: readonly Point[],
  labels: readonly string[],
  cornerLabels: readonly string[],
): string {
  const sides = corners.map((from, index) => {
    const to = corners[(index + 1) % corners.length] ?? from;
    const words = labels[index];
    const way = wayOf(to[0] - from[0], to[1] - from[1]) + (words ? ` (labelled ${spoken(words)})` : '');
    return { way, length: Math.round(10 * Math.hypot(to[0] - from[0], to[1] - from[1])) };
  });
  const lengths = [...new Set(sides.map((side) => side.length))].sort((a, b) => a - b);
  // Labels that differ say more than the drawing, which need not be to scale.
  const isPlain = new Set(labels.filter((words) => words !== '?' && words !== '')).size < 2;
  const told = sides.map(({ way, length }) => {
    const size = lengths.length !== 2 || !isPlain ? '' : length === lengths[0] ? 'short ' : 'long ';
    return `a ${size}side ${way}`;
  });
  const start = corners[0]?.[1] === corners[1]?.[1] ? 'the left end of its top side' : 'its highest corner';
  const named = cornerLabels.slice(0, corners.length).map(spoken);
  const inside = named.length > 0 ? ` Its corners, in the same order, are labelled: ${listOf(named)}.` : '';
  const same = lengths.length === 1 && isPlain ? ' All sides have the same length.' : '';
  return `A shape with straight sides. Going around it from ${start}: ${listOf(told)}, back to the start.${same}${inside}`;
}

/** The direction of a side in words: "right", "gently down and left", "up and right". */
function wayOf(dx: number, dy: number): string {
  const flat = 0.01 * Math.hypot(dx, dy);
  const across = Math.abs(dx) < flat ? '' : dx > 0 ? 'right' : 'left';
  const along = Math.abs(dy) < flat ? '' : dy > 0 ? 'down' : 'up';
  if (!across || !along) return across + along;
  const slope = Math.abs(dy / dx);
  const steepness = slope < 0.57 ? 'gently ' : slope > 1.9 ? 'steeply ' : '';
  return `${steepness}${along} and ${across}`;
}
