// What the address of the Skills screen holds, so that a page of it can be kept, shared and gone back to.
import { z } from 'zod';

export const SkillsSearch = z.object({
  /** Words or a curriculum code that the screen opens with. */
  find: z.string().optional(),
  year: z.number().optional(),
  strand: z.string().optional(),
  /** The skill whose page is open. */
  skill: z.string().optional(),
  /** Skills on the practice sheet. */
  sheet: z.array(z.string()).max(24).optional(),
  /** The practice sheet is open instead of a skill. */
  desk: z.boolean().optional(),
  /** The teacher's own questions are open instead of a skill. */
  own: z.boolean().optional(),
});
export type SkillsSearch = z.infer<typeof SkillsSearch>;
