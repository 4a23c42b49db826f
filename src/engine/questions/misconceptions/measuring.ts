// Money, time, measures, shape and angle, data and chance.
import type { Misconception } from '../misconceptions.js';

export const MEASURING_MISCONCEPTIONS = {} as const satisfies Record<string, Misconception>;
