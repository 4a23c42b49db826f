// Marking a board: one cell for each child and rung, saved as it is typed.
import { z } from 'zod';
import { IsoDate } from './settings.js';
import { Sheet } from './today.js';

export const MARK_STATES = ['right', 'wrong', 'blank'] as const;
export type MarkState = (typeof MARK_STATES)[number];

/** What a wrong answer may tell: plain words, never a verdict on the child. */
export const Finding = z.object({ misconception: z.string(), does: z.string(), help: z.string() });
export type Finding = z.infer<typeof Finding>;

export const Mark = z.object({
  childId: z.string(),
  rung: z.number().int().min(1).max(16),
  /** null: not marked (yet, or any more). */
  state: z.enum(MARK_STATES).nullable(),
  /** The answer as typed; empty when only right or blank was noted. */
  typed: z.string().max(80),
  findings: z.array(Finding),
});
export type Mark = z.infer<typeof Mark>;

/** One entry: either a state, or an answer to be checked (`typed` not empty and `state` null). */
export const MarkEntry = z.object({
  childId: z.string(),
  rung: z.number().int().min(1).max(16),
  state: z.enum(MARK_STATES).nullable(),
  typed: z.string().max(80).default(''),
});
export type MarkEntry = z.infer<typeof MarkEntry>;

export const MarkBatch = z.object({ entries: z.array(MarkEntry).min(1).max(2000) });

export const MarkingView = z.object({
  sheet: Sheet,
  children: z.array(z.object({ id: z.string(), shownAs: z.string(), year: z.number(), absent: z.boolean() })),
  marks: z.array(Mark),
  canUndo: z.boolean(),
  canRedo: z.boolean(),
});
export type MarkingView = z.infer<typeof MarkingView>;

/** Answer to every change: the marks as they are now stored (only those touched), after they have reached the disk. */
export const MarksSaved = z.object({ marks: z.array(Mark), canUndo: z.boolean(), canRedo: z.boolean() });
export type MarksSaved = z.infer<typeof MarksSaved>;

export const AbsentChange = z.object({ childId: z.string(), absent: z.boolean() });

export const SlipPlace = z.object({ sheetId: z.string(), childId: z.string().nullable() });

/** A day that has boards, with its number and how many cells of them are marked. */
export const BoardDay = z.object({ date: IsoDate, number: z.string(), markCount: z.number() });
export type BoardDay = z.infer<typeof BoardDay>;
