// Asking for paper: the loose pieces of composed activities, with their labels, keys and sheets.
import { z } from 'zod';
import { Chain } from './chain.js';
import { Jigsaw } from './jigsaw.js';
import { PAPERS } from './settings.js';
import { Trail } from './trail.js';

/** cards, tiles, pieces: the loose parts of a chain, a trail, a jigsaw. kit: everything in one file. */
export const KIT_DOCUMENTS = ['kit', 'cards', 'tiles', 'pieces', 'pupil', 'labels', 'key'] as const;
export type KitDocument = (typeof KIT_DOCUMENTS)[number];

const SCHEMAS = { chain: Chain, trail: Trail, jigsaw: Jigsaw };
type KitActivity = z.output<(typeof SCHEMAS)[keyof typeof SCHEMAS]>;

/** A composed activity, checked by the schema of its kind, so that a complaint names the place. */
const KitActivity: z.ZodType<KitActivity> = z
  .looseObject({ kind: z.enum(['chain', 'trail', 'jigsaw']) })
  .transform((activity, context): KitActivity => {
    const parsed = SCHEMAS[activity.kind].safeParse(activity);
    if (parsed.success) return parsed.data;
    for (const { message, path } of parsed.error.issues) context.addIssue({ code: 'custom', message, path });
    return z.NEVER;
  });

/** Sets to an order: as many as a box holds. */
const MOST_SETS = 10;

export const KitOrder = z
  .object({
    classId: z.string(),
    sets: z
      .array(z.object({ number: z.number().int().min(1).max(999), activity: KitActivity }))
      .min(1)
      .max(MOST_SETS),
    document: z.enum(KIT_DOCUMENTS),
    paper: z.enum(PAPERS),
    /** Backs with set number and label, for two-sided printing. */
    backs: z.boolean().default(true),
    /** by stack: each sheet holds one piece of every set, so that a stack cut in one go falls into sets. Chains only. */
    cutting: z.enum(['by sheet', 'by stack']).default('by sheet'),
    /** Children's names on the name tags; blank tags otherwise. */
    names: z.boolean().default(false),
    lowInk: z.boolean().default(false),
    largePrint: z.boolean().default(false),
  })
  .refine(({ sets }) => new Set(sets.map(({ activity }) => activity.kind)).size === 1, {
    message: 'the sets are of different activities',
    path: ['sets'],
  });
export type KitOrder = z.infer<typeof KitOrder>;
