// The published standard that the school follows, with the skills that exercise each of its statements.
import { STANDARD_IDS } from '#engine/curriculum/statement.js';
import { z } from 'zod';

export const StandardRow = z.object({
  statement: z.object({
    code: z.string(),
    year: z.number(),
    strand: z.string(),
    summary: z.string(),
    verified: z.boolean(),
  }),
  /** Ids of skills in the order of the map. */
  skills: z.array(z.string()),
  leftOut: z.string().nullable(),
  reason: z.string().nullable(),
});

export const StandardView = z.object({
  id: z.enum(STANDARD_IDS),
  name: z.string(),
  rows: z.array(StandardRow),
});
export type StandardView = z.infer<typeof StandardView>;
