// Counting assemblies: exactly those with every row true (the proof), and those that fit by outline and kind alone.
import { Position } from './position.js';
import type { Puzzle } from './puzzle.js';

export interface Count {
  readonly found: number;
  /** Pieces laid on the way. */
  readonly nodes: number;
  /** False when counting stopped at the node limit; `found` is then a lower bound. */
  readonly isComplete: boolean;
}

/** Counts assemblies until `most` are found or `nodeLimit` pieces were laid. */
export function countAssemblies(
  puzzle: Puzzle,
  { sees, most, nodeLimit }: { sees: 'rows' | 'outlines'; most: number; nodeLimit: number },
): Count {
  const position = new Position(puzzle, sees);
  let found = 0;
  let nodes = 0;
  function walk(): void {
    if (position.isFull) {
      found++;
      return;
    }
    for (const index of position.tightest()) {
      if (found >= most || nodes >= nodeLimit) return;
      nodes++;
      position.lay(index);
      walk();
      position.lift();
    }
  }
  walk();
  return { found, nodes, isComplete: nodes < nodeLimit };
}
