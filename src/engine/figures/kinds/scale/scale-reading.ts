// What every form of scale is drawn from.
import type { FigureSpec } from '../../figure.js';

export type ScaleSpec = Extract<FigureSpec, { kind: 'scale' }>;

export interface ScaleReading {
  readonly spec: ScaleSpec;
  /** Values with a mark, and those of them with a number. */
  readonly marked: readonly number[];
  readonly labelled: readonly number[];
  readonly name: (value: number) => string;
  /** Where a value lies between the scale's ends, 0 to 1. */
  readonly share: (value: number) => number;
}

/** A letter size in mm at which numbers one above another keep clear of each other. */
export function stackedSize(labelled: readonly number[], level: (value: number) => number): number {
  const [first = 0, second] = labelled;
  const pitch = second === undefined ? 10 : Math.abs(level(second) - level(first));
  return Math.max(2.2, Math.min(4, pitch * 1.05));
}
