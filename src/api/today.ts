// The day's plan and its boards.
import { z } from 'zod';
import { Board, Rung } from './board.js';
import { IsoDate } from './settings.js';

/** Whom a board is composed for: the whole class, or the children of one year. */
export const BoardGroup = z.union([z.literal('class'), z.number().int().min(0).max(6)]);
export type BoardGroup = z.infer<typeof BoardGroup>;

/** A saved board. Saved boards never change: every edit saves a new one that takes its place for the day. */
export const Sheet = z.object({
  id: z.string(),
  classId: z.string(),
  date: IsoDate,
  group: BoardGroup,
  board: Board,
  /** Cells marked so far; a board with marks is not changed any more. */
  markCount: z.number(),
});
export type Sheet = z.infer<typeof Sheet>;

export const TodayView = z.object({
  date: IsoDate,
  schoolDay: z.boolean(),
  /** "Term 2, week 3" or the reason why there is no school. */
  dayLabel: z.string(),
  nextSchoolDay: IsoDate.nullable(),
  /** The day's plan in one sentence. */
  sentence: z.string(),
  number: z.string(),
  sheets: z.array(Sheet),
});
export type TodayView = z.infer<typeof TodayView>;

export const NumberChange = z.object({ date: IsoDate, number: z.string().max(40) });
export const Reshuffle = z.object({ sheetId: z.string() });
export const LockChange = z.object({ locked: z.array(z.number().int().min(1).max(16)) });
export const Alternative = z.object({
  question: Rung.shape.question,
  predicted: z.number(),
  why: z.string(),
});
export type Alternative = z.infer<typeof Alternative>;
export const Swap = z.object({ questionId: z.string() });
