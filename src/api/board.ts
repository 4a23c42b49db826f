// A composed board on the wire: what `make board --json` prints and `print` reads.
import { type Board as EngineBoard, RELAXATIONS } from '#engine/activities/board/board.js';
import { LOCALES } from '#engine/numbers/locale.js';
import { z } from 'zod';
import { Question } from './question.js';

const share = z.number().min(0).max(1);

export const Rung = z.object({
  rung: z.number().int().min(1).max(16),
  question: Question,
  target: share,
  predicted: share,
  commonDifficulty: z.number(),
  why: z.string(),
  locked: z.boolean().optional(),
});

export const Board: z.ZodType<EngineBoard> = z.object({
  kind: z.literal('board'),
  seed: z.number().int(),
  number: z.string().min(1).max(20),
  years: z.array(z.number().int().min(0).max(12)).min(1),
  side: z.enum(['front', 'back']),
  locale: z.enum(LOCALES),
  rungs: z.array(Rung).min(1).max(16),
  proof: z.object({
    objective: z.number(),
    candidates: z.number(),
    strands: z.number(),
    worstMiss: z.number(),
    missedRungs: z.array(z.number()),
    reviewsDue: z.array(z.string()),
    reviewsPlaced: z.array(z.string()),
    relaxed: z.array(z.enum(RELAXATIONS)).optional(),
  }),
}) as unknown as z.ZodType<EngineBoard>;
