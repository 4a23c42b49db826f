// The share of the class that each rung is meant for.
import type { BoardSide } from './board.js';

/**
 * Twelve rungs (common practice): the first two trivially easy, everyone does at least the first five, the twelfth for
 * one or two children of a class of 27. The back of the sheet is for those who found the front easy.
 */
const CURVES: Readonly<Record<BoardSide, readonly number[]>> = {
  front: [0.98, 0.97, 0.94, 0.9, 0.85, 0.76, 0.65, 0.53, 0.41, 0.29, 0.17, 0.06],
  back: [0.9, 0.87, 0.82, 0.75, 0.67, 0.58, 0.48, 0.38, 0.28, 0.19, 0.1, 0.03],
};

/** The target of each rung, easiest first, strictly falling; other counts than 12 are read off the same curve. */
export function targetCurve(side: BoardSide, rungs: number): readonly number[] {
  const curve = CURVES[side];
  return Array.from({ length: rungs }, (_, i) => {
    const at = rungs === 1 ? 0 : (i * (curve.length - 1)) / (rungs - 1);
    const low = Math.floor(at);
    const from = curve[low] as number;
    const to = curve[Math.min(low + 1, curve.length - 1)] as number;
    return Math.round((from + (to - from) * (at - low)) * 1000) / 1000;
  });
}

/** A rung whose predicted share misses its target by more than this says so. */
export const GREATEST_MISS = 0.08;
