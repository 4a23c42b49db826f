// The school's settings: words, paper, and the calendar.
import { LOCALES } from '#engine/numbers/locale.js';
import { z } from 'zod';

/** A calendar day, YYYY-MM-DD. That it exists is checked where it is used, so that the message can name the field. */
export const IsoDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'expected a date like 2026-02-03');

/** A run of days, both ends included: a school term, or days on which the school is closed. */
export const DaySpan = z.object({ name: z.string().trim().min(1).max(60), first: IsoDate, last: IsoDate });
export type DaySpan = z.infer<typeof DaySpan>;

export const PAPERS = ['A4', 'A3', 'Letter'] as const;

export const Settings = z.object({
  locale: z.enum(LOCALES),
  paper: z.enum(['A4', 'Letter']),
  terms: z.array(DaySpan).max(8),
  closedDays: z.array(DaySpan).max(120),
  /** Minutes that the display counts down from. */
  minutes: z.number().int().min(1).max(30),
  slipsPerPage: z.union([z.literal(6), z.literal(8)]),
});
export type Settings = z.infer<typeof Settings>;

export const DEFAULT_SETTINGS: Settings = {
  locale: 'en-AU',
  paper: 'A4',
  terms: [],
  closedDays: [],
  minutes: 10,
  slipsPerPage: 6,
};
