// Classes and children, and reading a roster that a teacher pastes or imports.
import { z } from 'zod';
import { Settings } from './settings.js';

const name = z.string().trim().min(1).max(80);

export const NewChild = z.object({
  givenName: name,
  familyName: z.string().trim().max(80),
  /** What slips and screens show instead of the name, where a teacher wishes. */
  alias: z.string().trim().max(40),
  year: z.number().int().min(0).max(6),
});
export type NewChild = z.infer<typeof NewChild>;

export const Child = NewChild.extend({
  id: z.string(),
  /** Shortest name that is unique in the class: "Mara", or "Mara T". */
  shownAs: z.string(),
});
export type Child = z.infer<typeof Child>;

export const ClassSummary = z.object({
  id: z.string(),
  name: z.string(),
  years: z.array(z.number()),
  childCount: z.number(),
  demo: z.boolean(),
});
export type ClassSummary = z.infer<typeof ClassSummary>;

export const ClassDetail = ClassSummary.extend({ children: z.array(Child) });
export type ClassDetail = z.infer<typeof ClassDetail>;

export const NewClass = z.object({
  name: z.string().trim().min(1).max(60),
  years: z.array(z.number().int().min(0).max(6)).min(1).max(7),
  children: z.array(NewChild).max(60),
});
export type NewClass = z.infer<typeof NewClass>;

/** Pasted names, one CSV file, or the two OneRoster 1.2 files users.csv and classes.csv (enrollments.csv optional). */
export const RosterInput = z.object({
  text: z.string(),
  classesCsv: z.string().optional(),
  enrollmentsCsv: z.string().optional(),
  /** Given to rows that name no year. */
  defaultYear: z.number().int().min(0).max(6),
});
export type RosterInput = z.infer<typeof RosterInput>;

export const RosterProblem = z.object({
  /** Counted from 1 as a text editor or spreadsheet does; 0 is the file as a whole. */
  row: z.number(),
  /** The column's heading, or its number where there is none; empty for the whole row. */
  column: z.string(),
  message: z.string(),
  hint: z.string(),
});
export type RosterProblem = z.infer<typeof RosterProblem>;

export const RosterReading = z.object({
  format: z.enum(['names', 'csv', 'oneroster']),
  className: z.string(),
  children: z.array(NewChild.extend({ row: z.number() })),
  problems: z.array(RosterProblem),
});
export type RosterReading = z.infer<typeof RosterReading>;

/** What the app needs to know when it opens. */
export const AppState = z.object({
  firstRun: z.boolean(),
  today: z.string(),
  settings: Settings,
  classes: z.array(ClassSummary),
});
export type AppState = z.infer<typeof AppState>;
