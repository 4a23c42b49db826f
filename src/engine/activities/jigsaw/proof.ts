// The proof of a finished jigsaw, computed from its JSON alone.
import { Rng } from '../../random/rng.js';
import { type Count, countAssemblies } from './count.js';
import type { Jigsaw, JigsawProof } from './jigsaw.js';
import { levelOf, type TryRange } from './level.js';
import { outlineFits } from './outline-fits.js';
import { wrongTriesOf } from './child.js';
import { makePuzzle, type Puzzle } from './puzzle.js';

type ProofSource = Pick<Jigsaw, 'seed' | 'rows' | 'columns' | 'cells' | 'rowRule' | 'pieces' | 'given'>;

/** Pieces laid while proving, at most; a jigsaw that needs more is not made. */
export const PROOF_NODE_LIMIT = 6000;
const ANY_TRIES: TryRange = { least: 0, most: 400 };

/**
 * Assemblies with every row true, up to 2. All blank cells are printed in the frame, so that every part between them has
 * its place; a true part of N numbers and S signs, no two numbers side by side, has N - S = 1 - (signs before a number),
 * and as the sum over all parts is the same in every assembly, no sign ever stands before a number: numbers and signs
 * alternate where they are drawn, and no other kinds need to be tried.
 */
export function countTrueAssemblies(puzzle: Puzzle, nodeLimit: number): Count {
  return countAssemblies(puzzle, { sees: 'rows', most: 2, nodeLimit });
}

/** The middle of three runs of the child whose orders follow from the jigsaw's seed. */
export function childTries(puzzle: Puzzle, seed: number, range: TryRange = ANY_TRIES): number {
  return wrongTriesOf(puzzle, new Rng(seed).fork('child'), range);
}

/** The whole proof, with no limit on its length. */
export function proveJigsaw(source: ProofSource): JigsawProof {
  const puzzle = makePuzzle(source);
  const wrongTries = childTries(puzzle, source.seed);
  return {
    assemblies: countTrueAssemblies(puzzle, Number.POSITIVE_INFINITY).found,
    outlineFits: outlineFits(source),
    wrongTries,
    level: levelOf(wrongTries, source.pieces.length, source.rowRule),
  };
}
