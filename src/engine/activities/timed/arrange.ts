// The order of a form's questions: every stretch of it about as hard as the next, so that a child who gets half-way has met
// a fair half, and no fact again before all were asked.
import type { Rng } from '../../random/rng.js';

/** What the order looks at. */
export interface Arrangeable {
  /** Difficulty on the scale common to all years, in logits. */
  readonly common: number;
  /** Two neighbours with the same answer would tell each other away. */
  readonly answer: string;
}

/** Questions in a stretch of even difficulty; a row or two on paper. */
const STRETCH = 10;

/** The places of a form in the order in which they are asked; `places` may hold a place more than once. */
export function arrangeForm(
  places: readonly number[],
  space: readonly Arrangeable[],
  rng: Rng,
): readonly number[] {
  const out: number[] = [];
  for (const pass of passesOf(places)) {
    const graded = pass.toSorted((a, b) => (space[a]?.common ?? 0) - (space[b]?.common ?? 0) || a - b);
    const stretches: number[][] = Array.from({ length: Math.ceil(pass.length / STRETCH) }, () => []);
    for (let start = 0; start < graded.length; start += stretches.length) {
      const order = rng.shuffle(stretches.map((_, i) => i));
      graded.slice(start, start + stretches.length).forEach((place, i) => {
        stretches[order[i] ?? 0]?.push(place);
      });
    }
    for (const stretch of stretches)
      out.push(...partNeighbours(rng.shuffle(stretch), space, space[out.at(-1) ?? -1]?.answer));
  }
  return out;
}

/** The first askings, the second askings, and so on: each pass holds a place once at most. */
function passesOf(places: readonly number[]): readonly (readonly number[])[] {
  const asked = new Map<number, number>();
  const passes: number[][] = [];
  for (const place of places) {
    const times = asked.get(place) ?? 0;
    asked.set(place, times + 1);
    (passes[times] ??= []).push(place);
  }
  return passes;
}

/** Swaps a question with a later one of its stretch where it has the answer of the one before; `before` ends the last stretch. */
function partNeighbours(
  stretch: readonly number[],
  space: readonly Arrangeable[],
  before: string | undefined,
): readonly number[] {
  const out = [...stretch];
  let last = before;
  for (let i = 0; i < out.length; i++) {
    const other = out.findIndex((place, j) => j >= i && space[place]?.answer !== last);
    if (other > i) [out[i], out[other]] = [out[other] as number, out[i] as number];
    last = space[out[i] ?? -1]?.answer;
  }
  return out;
}
