// Composing: rows, a cut, the printed cells, the proof; drawn again until all of it holds, in a fixed order that the seed
// names.
import { localeOf } from '../../numbers/locale.js';
import { Rng } from '../../random/rng.js';
import { type CutStyle, cutPieces } from './cut.js';
import type { JigsawProof } from './jigsaw.js';
import { levelOf } from './level.js';
import { exchanges, fitsAsked, outlineFits } from './outline-fits.js';
import { printedFor, type Uncut } from './printed.js';
import { type JigsawRequest, type JigsawResult, noLevel, noRows, problemWith, tooSmall } from './request.js';
import { fillRows, ruleOf } from './rows/fill.js';
import { poolOf } from './rows/skill-pool.js';

const ATTEMPTS = 120;
/** Cuts tried for one set of rows, and those of them that are worked through. */
const CUTS_OF_ROWS = 40;
const WORKED_OF_ROWS = 4;
/** After so many attempts without a set of rows, none will come. */
const ROW_ATTEMPTS = 12;

/** The jigsaw that the request and its seed name, or why there is none and what to change. */
export function composeJigsaw(request: JigsawRequest): JigsawResult {
  const problem = problemWith(request) ?? tooSmall(request);
  if (problem) return { ok: false, error: problem };
  const { rows, columns, seed, years, locale, rowKind = 'mixed', level = 'easy' } = request;
  const rowRule = ruleOf(rowKind);
  const drawn = request.skills?.length || request.own ? poolOf(request, rowKind) : null;
  if (drawn !== null && !drawn.ok) return drawn;
  const pool = drawn?.value ?? null;
  const stream = new Rng(seed).fork('jigsaw');
  const enough = fitsAsked(rows, columns);
  let hasRows = false;
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const rng = stream.fork(attempt);
    const filled = fillRows(rowKind, rows, columns, { years, locale: localeOf(locale), rng, level, pool });
    if (filled === null) {
      if (!hasRows && attempt >= ROW_ATTEMPTS) return { ok: false, error: noRows(request) };
      continue;
    }
    hasRows = true;
    const cells = filled.flat();
    let worked = 0;
    for (let cutting = 0; cutting < CUTS_OF_ROWS && worked < WORKED_OF_ROWS; cutting++) {
      const cut = cutPieces(cells, rows, columns, styleFor(rows * columns, cutting, rng), rng);
      if (cut === null) continue;
      // The cut comes in reading order, which would give the places away.
      const base: Uncut = { seed, rows, columns, cells, rowRule, pieces: rng.shuffle(cut) };
      if (!hasEnoughFits(base, enough)) continue;
      worked++;
      const printed = printedFor(base, rowKind, level);
      if (printed === null) continue;
      const { given, wrongTries } = printed;
      const proof: JigsawProof = {
        assemblies: 1,
        outlineFits: outlineFits(base),
        wrongTries,
        level: levelOf(wrongTries, base.pieces.length, rowRule),
      };
      return { ok: true, value: { kind: 'jigsaw', years, locale, rowKind, ...base, given, proof } };
    }
  }
  return { ok: false, error: noLevel(request) };
}

/** Cells below which a jigsaw is small. */
const SMALL = 30;

/** Counting is worth its time only where exchanges alone come near. */
const NEAR = 6;

function hasEnoughFits(base: Uncut, enough: number): boolean {
  const bound = exchanges(base);
  if (bound >= enough) return true;
  return (base.cells.length < SMALL || bound * NEAR >= enough) && outlineFits(base, enough) >= enough;
}

/** Cuttings for which larger pieces are tried before the jigsaw is cut into threes. */
const HANDSOME_CUTS = 24;

/** Larger pieces interlock better; small ones are more alike, so that they fit in more ways, as small jigsaws need. */
function styleFor(cells: number, cutting: number, rng: Rng): CutStyle {
  if (cells < SMALL) return { sizes: [3], variety: rng.int(2, 3) };
  return cutting < HANDSOME_CUTS
    ? {
        sizes: rng.pick([
          [3, 4],
          [3, 4],
          [3, 4, 5],
        ]),
        variety: rng.int(2, 4),
      }
    : { sizes: [3], variety: rng.int(2, 4) };
}
