// What a snapshot from outside must look like before any of it reaches the database.
import { z } from 'zod';
import { BANDS } from '#engine/curriculum/bands.js';
import { SET_KINDS, SET_STEPS } from '#engine/planning/set-shelf.js';
import { isIsoDate, requireText } from './columns.js';
import { HOME_PAPERS, MARK_ACTIONS, MARK_STATES, PLACEMENT_SOURCES, SHEET_KINDS } from './records.js';
import type { Snapshot } from './snapshot.js';

const text = z.string().refine((value) => {
  try {
    requireText(value, '');
    return true;
  } catch {
    return false;
  }
}, 'text that can be stored');
const date = z.string().refine(isIsoDate, 'a day');
const moment = z.iso.datetime({ offset: true });
const count = z.int().min(0);
const span = z.object({ name: text, first: date, last: date });
const json = z.record(text, z.json());
const markState = z.enum(MARK_STATES);

const settings = z.object({
  version: count,
  // Loose: a setting that this list does not name yet is kept, not dropped.
  value: z.looseObject({
    schoolName: text,
    locale: text,
    paper: z.enum(HOME_PAPERS),
    terms: z.array(span),
    closedDays: z.array(span),
    activities: json,
    demo: z.boolean(),
  }),
});
const classes = z.object({ id: text, name: text, years: z.array(z.int().min(0).max(6)).min(1) });
const children = z.object({
  id: text,
  class_id: text,
  position: count,
  given_name: text,
  family_name: text,
  alias: text,
  year: z.int().min(0).max(6),
  joined: date.nullable(),
  left_on: date.nullable(),
});
const sheets = z.object({
  id: text,
  class_id: text,
  date: date.nullable(),
  kind: z.enum(SHEET_KINDS),
  seed: z.number(),
  number: text,
  side: z.enum(['front', 'back']),
  rungs: z.int().min(1),
  content: text,
  content_hash: z.string().regex(/^[0-9a-f]{64}$/),
  created_at: moment,
  superseded_by: text.nullable(),
});
const slips = z.object({ id: text, sheet_id: text, child_id: text.nullable(), position: count });
const marks = z.object({
  sheet_id: text,
  child_id: text,
  rung: z.int().min(1),
  state: markState,
  text,
  by: text,
  at: moment,
  sequence: count,
});
const markBatches = z.object({
  sheet_id: text,
  batch: count,
  action: z.enum(MARK_ACTIONS),
  target: count.nullable(),
  token: text,
  by: text,
  at: moment,
});
const markEvents = z.object({
  sheet_id: text,
  sequence: count,
  batch: count,
  child_id: text,
  rung: z.int().min(1),
  before_state: markState.nullable(),
  before_text: text,
  after_state: markState.nullable(),
  after_text: text,
});
const placements = z.object({
  child_id: text,
  level: z.number(),
  spread: z.number().positive(),
  source: z.enum(PLACEMENT_SOURCES),
  at: moment,
  detail: json,
});
const days = z.object({
  class_id: text,
  date,
  number: text.nullable(),
  activity: z.enum(SHEET_KINDS).nullable(),
  note: text,
});
const absences = z.object({ class_id: text, date, child_id: text });
const sets = z.object({
  id: text,
  class_id: text,
  kind: z.enum(SET_KINDS),
  band: z.enum(BANDS),
  number: z.int().min(1),
  seed: z.number(),
  content: text,
  content_hash: z.string().regex(/^[0-9a-f]{64}$/),
  created_at: moment,
  note: text,
});
const setSteps = z.object({ set_id: text, step: z.enum(SET_STEPS), date });
const loans = z.object({
  id: text,
  set_id: text,
  child_id: text,
  kind: z.enum(SET_KINDS),
  from_date: date,
  to_date: date.nullable(),
  finished: z.boolean(),
  opened_turn: z.int().min(1),
  closed_turn: z.int().min(1).nullable(),
});
const childBands = z.object({ child_id: text, band: z.enum(BANDS) });
const timedLadders = z.object({
  class_id: text,
  value: z.looseObject({
    steps: z.array(z.looseObject({ kind: z.enum(['given', 'own']), id: text })),
    minutes: z.number().nullable(),
    digitsPerMinute: z.number().nullable(),
    questions: count,
  }),
});
const timedForms = z.object({
  id: text,
  class_id: text,
  level_id: text,
  content: text,
  content_hash: z.string().regex(/^[0-9a-f]{64}$/),
  created_at: moment,
});
const timedSheets = z.object({ id: text, form_id: text, child_id: text, date, redo: text });
const timedResults = z.object({
  sheet_id: text,
  child_id: text,
  sequence: count,
  outcome: z.looseObject({
    attempted: count,
    wrong: z.array(count),
    written: z.record(text, text),
    redoWrong: z.array(count),
    minutes: z.number().nullable(),
  }),
  at: moment,
  undone: z.boolean(),
});
const timedMoves = z.object({ child_id: text, sequence: count, date, level_id: text, evidence: text });

const snapshot = z.object({
  settings: z.array(settings).max(1),
  classes: z.array(classes),
  children: z.array(children),
  sheets: z.array(sheets),
  slips: z.array(slips),
  marks: z.array(marks),
  mark_batches: z.array(markBatches),
  mark_events: z.array(markEvents),
  placements: z.array(placements),
  days: z.array(days),
  absences: z.array(absences),
  // Backups made before there were sets do not name these.
  sets: z.array(sets).default([]),
  set_steps: z.array(setSteps).default([]),
  loans: z.array(loans).default([]),
  child_bands: z.array(childBands).default([]),
  timed_ladders: z.array(timedLadders).default([]),
  timed_forms: z.array(timedForms).default([]),
  timed_sheets: z.array(timedSheets).default([]),
  timed_results: z.array(timedResults).default([]),
  timed_moves: z.array(timedMoves).default([]),
});

/** The snapshot, or where the first fault lies ("marks row 3, state"). */
export function checkSnapshot(value: unknown): { ok: true; value: Snapshot } | { ok: false; where: string } {
  const parsed = snapshot.safeParse(value);
  if (parsed.success) return { ok: true, value: parsed.data as Snapshot };
  const [table, row, ...rest] = parsed.error.issues[0]?.path ?? [];
  const place = typeof row === 'number' ? `${String(table)} row ${row + 1}` : String(table ?? 'the whole');
  return { ok: false, where: rest.length > 0 ? `${place}, ${rest.map(String).join('.')}` : place };
}
