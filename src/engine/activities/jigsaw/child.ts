// A child who works with care. She looks for a gap that only one piece can fill, or a piece that has only one place left,
// counting only what leaves every row able to come true. When there is none, she looks one piece ahead at the tightest
// spot: a piece after which some gap or piece is lost is not laid. Only then does she try; what she has to take back is
// the measure of difficulty. A model to be tuned with children, not a finding about them.
import type { Rng } from '../../random/rng.js';
import type { TryRange } from './level.js';
import { Position } from './position.js';
import type { Puzzle } from './puzzle.js';

/**
 * What the child would lay next: one placement when she is sure, several when she has to try, none when all is lost. She
 * looks ahead only where she would otherwise have to try.
 */
export function choices(position: Position): readonly number[] {
  const options = position.tightest();
  return options.length < 2 ? options : options.filter((index) => !position.leadsNowhere(index));
}

/** Wrong tries of one run, equal chances in the order that `rng` gives; she gives up when `patience` is reached. */
function triesOfRun(position: Position, rng: Rng, patience: number): number {
  let wrongTries = 0;
  function work(): boolean {
    if (position.isFull) return true;
    const options = choices(position);
    const order = options.length > 1 ? rng.shuffle(options) : options;
    for (const index of order) {
      position.lay(index);
      const isDone = work();
      position.lift();
      if (isDone) return true;
      // A piece that had no alternative was no try of its own: it falls with the try before it.
      if (order.length > 1) wrongTries++;
      if (wrongTries >= patience) return false;
    }
    return false;
  }
  work();
  return wrongTries;
}

/** The middle one of three runs' wrong tries; more than `range.most` stands for anything above. */
export function wrongTriesOf(puzzle: Puzzle, rng: Rng, range: TryRange): number {
  const position = new Position(puzzle, 'rows');
  const run = (name: number) => triesOfRun(position, rng.fork(name), range.most + 1);
  const [first, second] = [run(0), run(1)];
  const [low, high] = first < second ? [first, second] : [second, first];
  return low === high || low > range.most ? low : Math.max(low, Math.min(high, run(2)));
}
