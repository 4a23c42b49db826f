// Timed practice in a class: the ladder, who is on which level, today's sheets and what came of them.
import { ROOMS } from '#engine/activities/timed/ladder.js';
import { MOST_OWN } from '#engine/own-questions/own-lines.js';
import { z } from 'zod';
import { IsoDate } from './settings.js';

const place = z.number().int().min(1).max(120);
const levelId = z.string().min(1).max(80);

/** A level as the ladder lists it. */
export const LadderLevel = z.object({
  id: levelId,
  title: z.string(),
  year: z.number().int().min(0).max(6),
  room: z.enum(ROOMS),
  /** Skills of a level that the teacher made of skills; null for every other. */
  skills: z.array(z.string()).nullable(),
  /** Lines of a level that the teacher made of her own questions, as in her list; null for every other. */
  lines: z.array(z.string()).nullable(),
});
export type LadderLevel = z.infer<typeof LadderLevel>;

export const Ladder = z.object({
  /** Whether the teacher changed it. */
  own: z.boolean(),
  levels: z.array(LadderLevel),
  minutes: z.number().nullable(),
  digitsPerMinute: z.number().nullable(),
  questions: z.number(),
});
export type Ladder = z.infer<typeof Ladder>;

/** A ladder to be used from now on: levels by id, or new ones of skills or of her own questions; null goes back to the one that comes with the product. */
export const LadderChange = z.object({
  ladder: z
    .object({
      levels: z
        .array(
          z.object({
            id: levelId,
            title: z.string().trim().min(1).max(60),
            year: z.number().int().min(0).max(6),
            room: z.enum(ROOMS),
            skills: z.array(z.string().max(80)).min(1).max(12).nullable(),
            lines: z.array(z.string().max(1000)).min(1).max(MOST_OWN).nullable().default(null),
          }),
        )
        .min(1)
        .max(60),
      /** 2 to 5 by age is usual; null for the usual time of the level. */
      minutes: z.number().min(1).max(15).nullable(),
      digitsPerMinute: z.number().int().min(1).max(120).nullable(),
      questions: z.number().int().min(60).max(120),
    })
    .nullable(),
});

export const Outcome = z.object({
  attempted: z.number().int().min(0).max(120),
  wrong: z.array(place).max(120),
  written: z.record(z.string().regex(/^\d{1,3}$/), z.string().max(40)),
  redoWrong: z.array(place).max(8),
  minutes: z.number().positive().max(60).nullable(),
});
export type Outcome = z.infer<typeof Outcome>;

/** The questions of a form, for circling what was wrong. */
export const FormQuestions = z.object({
  key: z.string(),
  title: z.string(),
  form: z.string(),
  questions: z.array(z.object({ text: z.string(), answer: z.string() })),
});

export const ChildSheet = z.object({
  id: z.string(),
  formKey: z.string(),
  levelId,
  minutes: z.number(),
  redo: z.array(z.object({ text: z.string(), answer: z.string() })),
  outcome: Outcome.nullable(),
  canUndo: z.boolean(),
});

/** One marked sheet as charts and lists show it. */
export const SheetCount = z.object({
  date: IsoDate,
  levelId,
  attempted: z.number(),
  right: z.number(),
  digitsRight: z.number(),
  /** Null for a sheet without a clock. */
  digitsPerMinute: z.number().nullable(),
});
export type SheetCount = z.infer<typeof SheetCount>;

export const TimedChild = z.object({
  id: z.string(),
  shownAs: z.string(),
  year: z.number(),
  absent: z.boolean(),
  levelId,
  /** Whether the teacher put the child there; otherwise it follows from the year. */
  chosen: z.boolean(),
  sheet: ChildSheet.nullable(),
  /** Facts still to be put right, oldest first. */
  redo: z.array(z.object({ text: z.string(), since: IsoDate, times: z.number() })),
  /** Marked sheets, oldest first. */
  counts: z.array(SheetCount),
  /** The best sheet of this level. */
  best: SheetCount.nullable(),
  suggestion: z.object({
    move: z.enum(['up', 'stay', 'back']),
    levelId: levelId.nullable(),
    evidence: z.string(),
  }),
  /** Published rates for the child's year, never a label; null where none were published. */
  band: z.object({ low: z.number(), high: z.number(), source: z.string() }).nullable(),
  canUndoMove: z.boolean(),
});
export type TimedChild = z.infer<typeof TimedChild>;

export const TimedView = z.object({
  date: IsoDate,
  ladder: Ladder,
  children: z.array(TimedChild),
  forms: z.array(FormQuestions),
});
export type TimedView = z.infer<typeof TimedView>;

export const TimedDay = z.object({ date: IsoDate });
export const OutcomeBatch = TimedDay.extend({
  entries: z
    .array(z.object({ sheetId: z.string(), outcome: Outcome }))
    .min(1)
    .max(60),
});
export const LevelChange = TimedDay.extend({ levelId });

/** Where a sheet's code leads. */
export const TimedPlace = z.object({ classId: z.string(), childId: z.string(), date: IsoDate });

export const TIMED_PAPERS = ['pupil', 'key', 'cover', 'spares'] as const;
/** What to print of a day's timed practice. */
export const TimedPrintOrder = TimedDay.extend({
  classId: z.string(),
  document: z.enum(TIMED_PAPERS),
  largePrint: z.boolean().optional(),
});
export type TimedPrintOrder = z.infer<typeof TimedPrintOrder>;
