// Builds a template from one drafting function and two ways to choose its numbers: freely, or about the day's number.
import type { DayKind, DayNumber } from '../numbers/day-number.js';
import type { Draft, Template, TemplateContext } from '../questions/draft.js';
import type { Rng } from '../random/rng.js';

/** A template in parts: `free` and `on` choose the numbers P, `draft` makes the question from them. */
export interface Recipe<P> {
  readonly id: string;
  readonly free: (rng: Rng) => P;
  /** Kinds of day's number that `on` may accept; whole numbers when left out. */
  readonly kinds?: readonly DayKind[];
  /** Numbers for a question about the day's number; null when it does not suit, whatever the rng. */
  readonly on?: (day: DayNumber, rng: Rng) => P | null;
  /** The question; its `usesNumber` is kept only when `on` chose the numbers. */
  readonly draft: (numbers: P, context: TemplateContext) => Draft;
}

/** The template that a recipe describes. */
export function templateOf<P>(recipe: Recipe<P>): Template {
  const { id, on, free, draft, kinds = ['whole'] } = recipe;
  const ask = (context: TemplateContext): Draft => {
    const { usesNumber: _unused, ...rest } = draft(free(context.rng), context);
    return rest;
  };
  if (!on) return { id, ask };
  return {
    id,
    ask,
    dayKinds: kinds,
    askOn: (day, context) => {
      const numbers = on(day, context.rng);
      return numbers === null ? null : draft(numbers, context);
    },
  };
}

/** A recipe's `on` for whole numbers from `low` to `high` only; anything else gives null. */
export function onWhole<P>(
  low: number,
  high: number,
  choose: (n: number, rng: Rng) => P | null,
): (day: DayNumber, rng: Rng) => P | null {
  return (day, rng) =>
    day.kind === 'whole' && day.value.n >= low && day.value.n <= high ? choose(day.value.n, rng) : null;
}
