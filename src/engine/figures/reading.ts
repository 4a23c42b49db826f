// How a place on a marked scale is told without giving the reading away: by counting marks from the last number.
import { countOf } from './words.js';

const TINY = 1e-6;

/** A scale with a mark every `step` and a number every `labelEvery`, both from `from` to `to`. */
export interface MarkedScale {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly labelEvery: number;
}

/** The values that carry a number: from, from + labelEvery, ... up to `to`. */
export function labelledValues(scale: MarkedScale): number[] {
  return upTo(scale.from, scale.to, Math.max(scale.labelEvery, scale.step));
}

/** The values that carry a mark: from, from + step, ... up to `to`. */
export function markedValues(scale: MarkedScale): number[] {
  return upTo(scale.from, scale.to, scale.step);
}

/** "200", "2 small marks past 200" or "halfway between two marks, 1 small mark past 200". */
export function tellPlace(value: number, scale: MarkedScale, name: (value: number) => string): string {
  const before = labelledValues(scale).findLast((one) => one <= value + TINY) ?? scale.from;
  const steps = (value - before) / scale.step;
  const whole = Math.floor(steps + TINY);
  const over = steps - whole;
  const past = whole === 0 ? name(before) : `${countOf(whole, 'small mark')} past ${name(before)}`;
  if (over < TINY) return past;
  const fraction = partOfStep(over);
  return whole === 0 ? `${fraction} past ${past}` : `${fraction} beyond the mark ${past}`;
}

/** "half a step", "less than half a step" or "more than half a step" for a share of a step between 0 and 1. */
export function partOfStep(share: number): string {
  if (Math.abs(share - 0.5) < TINY) return 'half a step';
  return share < 0.5 ? 'less than half a step' : 'more than half a step';
}

function upTo(from: number, to: number, step: number): number[] {
  const count = Math.floor((to - from) / step + TINY);
  return Array.from({ length: count + 1 }, (_, index) => from + index * step);
}
