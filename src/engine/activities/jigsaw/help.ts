// Help in the frame: the cells to print so that a careful child never has to try, in the order in which she comes to need
// them. Printing only the first ones of the list leaves some trying: that is the dial of the levels.
import { choices } from './child.js';
import type { Place } from './jigsaw.js';
import { Position } from './position.js';
import type { Placement, Puzzle, Token } from './puzzle.js';

/**
 * Number cells that, printed besides what the puzzle has printed already, leave the child sure of every piece. Null when
 * more than `most` would be needed.
 */
export function helpfulCells(puzzle: Puzzle, most: number): readonly Place[] | null {
  const position = new Position(puzzle, 'rows');
  const printed: number[] = [];
  while (!position.isFull) {
    const options = choices(position);
    if (options.length === 1) {
      position.lay(options[0] as number);
      continue;
    }
    const cell = printed.length < most ? mostTelling(position) : null;
    if (cell === null) return null;
    printed.push(cell);
    position.print(cell);
  }
  return printed.map((cell): Place => [Math.floor(cell / puzzle.columns), cell % puzzle.columns]);
}

/** The free cell whose printed number leaves the fewest placements over it, and among such rules out the most. */
function mostTelling(position: Position): number | null {
  const { tokens, drawn, placements } = position.puzzle;
  const kept = new Uint16Array(drawn.length);
  const ruledOut = new Uint16Array(drawn.length);
  for (const index of position.open()) {
    const placement = placements[index] as Placement;
    placement.cells.forEach((cell, i) => {
      const counts = placement.tokens[i] === drawn[cell] ? kept : ruledOut;
      counts[cell] = (counts[cell] as number) + 1;
    });
  }
  let best: number | null = null;
  for (let cell = 0; cell < drawn.length; cell++) {
    if (position.grid[cell] !== -1 || (tokens[drawn[cell] as number] as Token).kind !== 'number') continue;
    // Without others to rule out, printing it would help nobody.
    if (ruledOut[cell] === 0) continue;
    if (
      best === null ||
      (kept[cell] as number) < (kept[best] as number) ||
      (kept[cell] === kept[best] && (ruledOut[cell] as number) > (ruledOut[best] as number))
    )
      best = cell;
  }
  return best;
}
