// Whether a trail that came from outside can be drawn: the composer's own always can.
import { answerShapes, placeAnswer } from '../answer-shape.js';
import type { Trail } from '../trail.js';
import { layoutOf, routeOf } from './layout-of.js';

/** Letters smaller than this, in hundredths of a tile's side, are no answer that a child could read. */
const LEAST_LETTERS = 5;

/** What stands in the way of drawing the trail, as the end of a sentence; null when nothing does. */
export function whyNotDrawable(
  trail: Pick<Trail, 'rows' | 'columns' | 'tiles' | 'frame' | 'entry' | 'exit'>,
): string | null {
  const { rows, columns, frame, entry, exit, tiles } = trail;
  const isFramed =
    [frame.north, frame.south].every((rim) => rim.length === columns) &&
    [frame.east, frame.west].every((rim) => rim.length === rows);
  if (!isFramed) return `the frame does not have one code for each edge of ${rows} x ${columns} cells`;
  const route = routeOf(trail);
  if (
    entry.side !== 'north' ||
    exit.side !== 'south' ||
    route[0] !== entry.cell ||
    route.at(-1) !== exit.cell
  )
    return 'no path runs from the entry in the north to the exit in the south';
  for (const [index, { answer }] of tiles.entries()) {
    const layout = layoutOf(trail, index);
    if (!layout) return `the lines of tile ${index} would touch each other`;
    if (!placeAnswer(answerShapes(answer.text), layout.rooms, LEAST_LETTERS))
      return `the answer of tile ${index} is too long`;
  }
  return null;
}
