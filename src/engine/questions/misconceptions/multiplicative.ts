// Multiplication, division, fractions, decimals, percentages.
import type { Misconception } from '../misconceptions.js';

export const MULTIPLICATIVE_MISCONCEPTIONS = {} as const satisfies Record<string, Misconception>;
