// Hints for a jigsaw, one at a time and only when asked for: first a question about the next step, then the step.
import { explainJigsaw, type SolutionStep } from '#engine/activities/jigsaw/explain.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import { boxOfPiece } from '#engine/activities/jigsaw/piece-outline.js';
import { spokenPlace } from '#engine/activities/jigsaw/spoken.js';
import { fullRows } from './jigsaw-words.js';
import type { Told } from './use-hints.js';
import { isSame, type Mat, type MatShape } from './mat.js';

/** The hints of a jigsaw; its explanation is worked out when the first is wanted, and remembered. */
export function jigsawHints(jigsaw: Jigsaw, shape: MatShape): (mat: Mat) => Told {
  let steps: readonly SolutionStep[] | null = null;
  return (mat) => {
    steps ??= explainJigsaw(jigsaw);
    const next = steps.find(({ piece, cells }) => {
      const { top, left } = boxOfPiece(cells);
      const place = mat.places[piece];
      return !place || !isSame(place, [top, left]);
    });
    const rows = fullRows(jigsaw, shape, mat);
    const read = rows.length > 0 ? [{ text: readFirst(rows.map((row) => row + 1)) }] : [];
    const about = `${next?.name ?? ''} ${rows.join()}`;
    if (!next) return { about, hints: read };
    return { about, hints: [...read, { text: askAbout(next) }, { text: next.text }] };
  };
}

function readFirst(rows: readonly number[]): string {
  const named = rows.length === 1 ? `row ${rows[0]}` : 'each full row';
  return `Read ${named} aloud. Does it hold?`;
}

function askAbout({ reason, name, cells }: SolutionStep): string {
  const [first] = cells;
  const place = first ? spokenPlace(first) : '';
  if (reason === 'only place') return `Look for piece ${name}. Where could it lie?`;
  if (reason === 'tried') return `Look at ${place}. Which pieces could lie there? Try one and read the rows.`;
  return `Look at ${place}. Which pieces could lie there, and what would the row say?`;
}
