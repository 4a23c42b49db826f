// Printed sets on their shelf, and the rota that says which child has which set.
import { JIGSAW_LEVELS, ROW_KINDS } from '#engine/activities/jigsaw/jigsaw.js';
import { BANDS } from '#engine/curriculum/bands.js';
import { SET_KINDS, SET_STEPS } from '#engine/planning/set-shelf.js';
import { z } from 'zod';
import { Problem } from './problem.js';
import { IsoDate } from './settings.js';

export const SetKind = z.enum(SET_KINDS);
export const SetBand = z.enum(BANDS);
const step = z.enum(SET_STEPS);
const setNumber = z.number().int().min(1);

/** A composed chain, trail or jigsaw as `make … --json` prints it; kept and given back to the byte. */
export const SetContent = z.looseObject({ kind: SetKind, seed: z.number().int() });
export type SetContent = z.infer<typeof SetContent>;

/** A set without what is on its pieces. */
export const LibrarySet = z.object({
  id: z.string(),
  kind: SetKind,
  band: SetBand,
  /** From 1 within its kind and band; ten to a box. */
  number: setNumber,
  box: setNumber,
  steps: z.array(step),
  /** The step to do next; null once the set is in its box and can be handed out. */
  nextStep: step.nullable(),
  note: z.string(),
  /** What it practises: titles of skills, or what the rows of a jigsaw are about. */
  topics: z.array(z.string()),
  /** Short name of the child who has it now; null when nobody has. */
  heldBy: z.string().nullable(),
  /** How many times a child has finished it. */
  finishes: z.number(),
});
export type LibrarySet = z.infer<typeof LibrarySet>;
export const Library = z.object({ sets: z.array(LibrarySet) });
export type Library = z.infer<typeof Library>;

/** What to compose. What an activity does not know is left alone by it. */
export const SetOrder = z.object({
  kind: SetKind,
  band: SetBand,
  count: z.number().int().min(1).max(10),
  /** Only these skills; a mix that suits the band when left out. */
  skills: z.array(z.string()).max(40).optional(),
  /** Topics that the class is due to review come before others. */
  dueFirst: z.boolean().optional(),
  /** Names the sets for ever; new ones each time when left out. */
  seed: z.number().int().min(0).max(2_147_483_647).optional(),
  /** Chains: strips, 6 to 16. */
  cards: z.number().int().optional(),
  /** Trails and jigsaws. */
  rows: z.number().int().optional(),
  columns: z.number().int().optional(),
  /** Jigsaws. */
  level: z.enum(JIGSAW_LEVELS).optional(),
  rowKind: z.enum(ROW_KINDS).optional(),
});
export type SetOrder = z.infer<typeof SetOrder>;

/** Composed activities of one kind, to be kept as they are. */
export const SetsToKeep = z.object({ band: SetBand, contents: z.array(SetContent).min(1).max(10) });

export const SetWithContent = z.object({ set: LibrarySet, content: SetContent });
export const StepChange = z.object({
  setIds: z.array(z.string()).min(1).max(100),
  step,
  done: z.boolean(),
});
export const NoteChange = z.object({ note: z.string().max(500) });

/** A set as the rota names it. */
export const RotaSet = z.object({ id: z.string(), band: SetBand, number: setNumber, box: setNumber });
export type RotaSet = z.infer<typeof RotaSet>;

export const RotaChild = z.object({
  id: z.string(),
  shownAs: z.string(),
  year: z.number(),
  band: SetBand,
  /** Whether the teacher chose the band; otherwise it follows from the year. */
  bandChosen: z.boolean(),
  absent: z.boolean(),
  /** The set that the child has; `why` says in a sentence how it came to be this one. */
  holds: RotaSet.extend({ since: IsoDate, why: z.string() }).nullable(),
  /** Ids of the sets of this kind that the child has finished. */
  had: z.array(z.string()),
  /** Why no set can be handed to the child now; null when the child has one or can get one. */
  waiting: Problem.pick({ message: true, hint: true }).nullable(),
});
export type RotaChild = z.infer<typeof RotaChild>;

/** Who has which set of one kind today, in list order. */
export const RotaView = z.object({
  date: IsoDate,
  kind: SetKind,
  children: z.array(RotaChild),
  /** Sets in their boxes that nobody has or had today. */
  free: z.array(RotaSet),
  canUndo: z.boolean(),
});
export type RotaView = z.infer<typeof RotaView>;

export const RotaTap = z.object({ childId: z.string() });
/** `setId`, when given, is the set that the page showed: a tap on what has changed meanwhile does nothing. */
export const SetFinished = RotaTap.extend({ setId: z.string().optional() });
export const SetGiven = RotaTap.extend({ setId: z.string() });
export const AwayChange = RotaTap.extend({ absent: z.boolean() });
export const BandChange = z.object({ band: SetBand.nullable() });
