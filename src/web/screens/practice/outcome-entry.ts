// What a teacher types for a sheet: how far the child got, and the numbers of the circled questions.
import type { Outcome } from '#api/timed-room.js';

/** What stands in a row's two boxes. */
export interface Typed {
  readonly done: string;
  readonly wrong: string;
}

export type Entry =
  | { readonly ok: true; readonly attempted: number; readonly wrong: readonly number[] }
  | { readonly ok: false; readonly message: string };

/** The typed boxes as numbers; `asked` is how many questions the sheet has. Empty boxes are a problem of "done" alone. */
export function readEntry({ done, wrong }: Typed, asked: number): Entry {
  if (!/^\s*\d{1,3}\s*$/.test(done) || Number(done) > asked)
    return { ok: false, message: `Done: a number from 0 to ${asked}.` };
  const attempted = Number(done);
  const pieces = wrong.split(/[\s,.;]+/).filter((piece) => piece !== '');
  const places = pieces.map(Number);
  const bad = places.find((place) => !Number.isInteger(place) || place < 1 || place > attempted);
  if (bad !== undefined)
    return {
      ok: false,
      message: Number.isInteger(bad)
        ? `Circled: question ${bad} is beyond the ${attempted} done.`
        : 'Circled: the numbers of the questions, such as 4 9.',
    };
  return { ok: true, attempted, wrong: [...new Set(places)].toSorted((a, b) => a - b) };
}

/** A saved result as it would be typed. */
export function typedOf(outcome: Outcome | null): Typed {
  if (outcome === null) return { done: '', wrong: '' };
  return { done: String(outcome.attempted), wrong: outcome.wrong.join(' ') };
}

/** The entry as a result; what only the circling dialog knows is kept from the result before where it still fits. */
export function outcomeOf(
  { attempted, wrong }: { readonly attempted: number; readonly wrong: readonly number[] },
  before: Outcome | null,
  minutes: number | null,
): Outcome {
  const written = Object.entries(before?.written ?? {}).filter(([place]) => wrong.includes(Number(place)));
  return {
    attempted,
    wrong: [...wrong],
    written: Object.fromEntries(written),
    redoWrong: [...(before?.redoWrong ?? [])],
    minutes,
  };
}
