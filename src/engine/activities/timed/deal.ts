// Deals a space of facts out into forms: deck after deck, each deck the whole space once, so that over any number of forms
// no fact is asked more than once oftener than another; within a form, none twice before all were asked once.
// Which facts of a deck go into which form is chosen so that all forms have the same difficulty, year and number of digits.
import type { Rng } from '../../random/rng.js';

/** What one fact adds to a form's balance. */
export interface Weight {
  /** Logits. */
  readonly difficulty: number;
  /** School year of its skill. */
  readonly year: number;
  /** Digits of its answer. */
  readonly digits: number;
}

const MEASURES = ['difficulty', 'year', 'digits'] as const;
type Sums = Readonly<Record<(typeof MEASURES)[number], number>>;

/** Swaps tried from one start. */
const MOST_SWAPS = 1500;

/**
 * Endless forms of `size` places in the space each, in no particular order (see arrange.ts). Equal rng, equal forms,
 * however many are taken.
 */
export function* dealForms(
  space: readonly Weight[],
  size: number,
  rng: Rng,
): Generator<readonly number[], void> {
  const all = space.map((_, place) => place);
  const share = sumsOf(all, space, size / space.length);
  // What the forms so far fall short of their fair share by; carried on, or the end of a deck would have to make it up.
  let owed: Sums = NOTHING;
  let deck = rng.shuffle(all);
  for (let number = 0; ; number++) {
    const target = plus(owed, share);
    const stream = rng.fork(number);
    const asked = all.map(() => 0);
    const form: number[] = [];
    const take = (places: readonly number[]) => {
      for (const place of places) {
        form.push(place);
        asked[place] = (asked[place] ?? 0) + 1;
      }
    };
    if (deck.length <= size) {
      take(deck);
      deck = rng.shuffle(all);
    }
    while (size - form.length >= space.length) {
      take(deck);
      deck = rng.shuffle(all);
    }
    const open = size - form.length;
    if (open > 0) {
      const least = Math.min(...deck.map((place) => asked[place] ?? 0));
      const fresh = deck.filter((place) => asked[place] === least);
      const again = deck.filter((place) => asked[place] !== least);
      const forced = fresh.length <= open ? fresh : [];
      const rest = minus(target, sumsOf([...form, ...forced], space));
      const chosen = chooseBalanced(
        fresh.length <= open ? again : fresh,
        open - forced.length,
        rest,
        space,
        stream,
      );
      take([...forced, ...chosen]);
      const gone = new Set([...forced, ...chosen]);
      deck = deck.filter((place) => !gone.has(place));
      if (deck.length === 0) deck = rng.shuffle(all);
    }
    owed = minus(target, sumsOf(form, space));
    yield form;
  }
}

/** Choices started afresh, since swaps alone can come to a standstill. */
const MOST_STARTS = 6;

/** `count` places whose sums come as close as possible to `target`: random choices, each improved by swaps. */
function chooseBalanced(
  from: readonly number[],
  count: number,
  target: Sums,
  space: readonly Weight[],
  rng: Rng,
): readonly number[] {
  let best: readonly number[] = [];
  let bestCost = Number.POSITIVE_INFINITY;
  for (let start = 0; start < MOST_STARTS && bestCost > CLOSE_ENOUGH; start++) {
    const [chosen, cost] = improveChoice(rng.shuffle(from), count, target, space, rng);
    if (cost < bestCost) [best, bestCost] = [chosen, cost];
  }
  return best;
}

function improveChoice(
  order: readonly number[],
  count: number,
  target: Sums,
  space: readonly Weight[],
  rng: Rng,
): readonly [chosen: readonly number[], cost: number] {
  const [inside, outside] = [order.slice(0, count), order.slice(count)];
  let sums = sumsOf(inside, space);
  let cost = distance(sums, target);
  if (count === 0 || outside.length === 0) return [inside, cost];
  for (let i = 0; i < MOST_SWAPS && cost > CLOSE_ENOUGH; i++) {
    const [a, b] = [rng.int(0, inside.length - 1), rng.int(0, outside.length - 1)];
    const [leaves, enters] = [inside[a] as number, outside[b] as number];
    const changed = minus(plus(sums, space[enters] as Weight), space[leaves] as Weight);
    const changedCost = distance(changed, target);
    if (changedCost >= cost) continue;
    inside[a] = enters;
    outside[b] = leaves;
    sums = changed;
    cost = changedCost;
  }
  return [inside, cost];
}

/** Squared distance at which a form is as good as even: a tenth of a logit over the whole form. */
const CLOSE_ENOUGH = 0.01;
/** A digit too many is about as unwelcome as half a logit too much over the whole form. */
const PER_DIGIT = 0.5;
/** Digits are whole, so that half a digit cannot be helped. */
const HALF_DIGIT = 0.5;

function distance(a: Sums, b: Sums): number {
  const digits = Math.max(0, Math.abs(a.digits - b.digits) - HALF_DIGIT);
  return (a.difficulty - b.difficulty) ** 2 + (a.year - b.year) ** 2 + (PER_DIGIT * digits) ** 2;
}

const NOTHING: Sums = { difficulty: 0, year: 0, digits: 0 };

function sumsOf(places: readonly number[], space: readonly Weight[], times = 1): Sums {
  const sums = { difficulty: 0, year: 0, digits: 0 };
  for (const place of places)
    for (const measure of MEASURES) sums[measure] += times * (space[place] as Weight)[measure];
  return sums;
}

function plus(a: Sums, b: Sums): Sums {
  return {
    difficulty: a.difficulty + b.difficulty,
    year: a.year + b.year,
    digits: a.digits + b.digits,
  };
}

function minus(a: Sums, b: Sums): Sums {
  return {
    difficulty: a.difficulty - b.difficulty,
    year: a.year - b.year,
    digits: a.digits - b.digits,
  };
}
