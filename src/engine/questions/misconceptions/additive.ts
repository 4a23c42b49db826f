// Place value, addition, subtraction, patterns and algebra.
import type { Misconception } from '../misconceptions.js';

export const ADDITIVE_MISCONCEPTIONS = {} as const satisfies Record<string, Misconception>;
