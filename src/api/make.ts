// What the Make room needs to know about a class before anything is made.
import { STRANDS, type StrandId } from '#engine/curriculum/strands.js';
import { z } from 'zod';

const strandIds = STRANDS.map(({ id }) => id) as [StrandId, ...StrandId[]];

/** A skill as it can be chosen. */
export const SkillChoice = z.object({
  id: z.string(),
  title: z.string(),
  strand: z.enum(strandIds),
  year: z.number(),
});
export type SkillChoice = z.infer<typeof SkillChoice>;

export const MakeView = z.object({
  /** The skill map, in map order. */
  skills: z.array(SkillChoice),
  /** The teacher's own questions, one a line. */
  own: z.string(),
  /** What the class is due to meet again, most urgent first, each with its reason in one sentence. */
  due: z.array(z.object({ skillId: z.string(), title: z.string(), reason: z.string() })),
});
export type MakeView = z.infer<typeof MakeView>;
