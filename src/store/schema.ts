// The tables. Each leads with school_id; keys and references carry it, and a policy keeps one school from another's rows.
// After a change: `npm run migrations`, which writes the next file in migrations/ and embeds it.
import { sql } from 'drizzle-orm';
import type { Band } from '#engine/curriculum/bands.js';
import type { SetKind, SetStep } from '#engine/planning/set-shelf.js';
import {
  boolean,
  doublePrecision,
  foreignKey,
  index,
  integer,
  pgPolicy,
  pgTable,
  primaryKey,
  unique,
  uniqueIndex,
} from 'drizzle-orm/pg-core';
import { day, document, instant, words } from './columns.js';
import type {
  JsonObject,
  LadderRecord,
  MarkAction,
  MarkState,
  PlacementSource,
  Settings,
  SheetKind,
  TimedOutcome,
} from './records.js';

const school = () => words('school_id', 'The school').notNull();

/** The session's school, set at the start of every transaction; without it no row is seen. */
const ownSchool = sql`school_id = current_setting('afterbell.school', true)`;
const isolation = () =>
  pgPolicy('own_school', { for: 'all', to: 'public', using: ownSchool, withCheck: ownSchool });

export const schools = pgTable(
  'schools',
  {
    schoolId: words('school_id', 'The school').primaryKey(),
    /** Written at every opening: the commit that proves the disk syncs. */
    openings: integer('openings').notNull().default(0),
  },
  () => [isolation()],
);

export const settings = pgTable(
  'settings',
  {
    schoolId: words('school_id', 'The school')
      .primaryKey()
      .references(() => schools.schoolId),
    version: integer('version').notNull(),
    value: document<Settings>('value', 'A setting').notNull(),
  },
  () => [isolation()],
);

export const classes = pgTable(
  'classes',
  {
    schoolId: school(),
    id: words('id', 'The class id').notNull(),
    name: words('name', 'The class name').notNull(),
    years: document<number[]>('years', 'The years').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.id] }),
    foreignKey({ columns: [t.schoolId], foreignColumns: [schools.schoolId] }),
    isolation(),
  ],
);

export const children = pgTable(
  'children',
  {
    schoolId: school(),
    id: words('id', 'The child id').notNull(),
    classId: words('class_id', 'The class id').notNull(),
    position: integer('position').notNull(),
    givenName: words('given_name', 'The given name').notNull(),
    familyName: words('family_name', 'The family name').notNull(),
    alias: words('alias', 'The alias').notNull(),
    year: integer('year').notNull(),
    joined: day('joined', 'The joining day'),
    left: day('left_on', 'The leaving day'),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.id] }),
    foreignKey({ columns: [t.schoolId, t.classId], foreignColumns: [classes.schoolId, classes.id] }),
    index('children_by_class').on(t.schoolId, t.classId, t.position),
    isolation(),
  ],
);

export const sheets = pgTable(
  'sheets',
  {
    schoolId: school(),
    id: words('id', 'The sheet id').notNull(),
    classId: words('class_id', 'The class id').notNull(),
    date: day('date', 'The date of the sheet'),
    kind: words('kind', 'The kind of sheet').$type<SheetKind>().notNull(),
    seed: doublePrecision('seed').notNull(),
    number: words('number', 'The number').notNull(),
    side: words('side', 'The side').$type<'front' | 'back'>().notNull(),
    /** How many questions the sheet asks: marks carry 1 to this. */
    rungs: integer('rungs').notNull(),
    /** JSON as text, so that it stays the same to the byte and its hash can be checked. */
    content: words('content', 'The sheet').notNull(),
    contentHash: words('content_hash', 'The hash of the sheet').notNull(),
    createdAt: instant('created_at', 'The time of saving').notNull(),
    /** Not a foreign key: a restore fills the table in parts, in no particular order. */
    supersededBy: words('superseded_by', 'The newer sheet'),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.id] }),
    foreignKey({ columns: [t.schoolId, t.classId], foreignColumns: [classes.schoolId, classes.id] }),
    index('sheets_by_class').on(t.schoolId, t.classId, t.date),
    isolation(),
  ],
);

export const slips = pgTable(
  'slips',
  {
    schoolId: school(),
    id: words('id', 'The slip id').notNull(),
    sheetId: words('sheet_id', 'The sheet id').notNull(),
    childId: words('child_id', 'The child id'),
    /** Order of issue within the sheet. */
    position: integer('position').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.id] }),
    unique('slips_one_each').on(t.schoolId, t.sheetId, t.childId),
    foreignKey({ columns: [t.schoolId, t.sheetId], foreignColumns: [sheets.schoolId, sheets.id] }),
    foreignKey({ columns: [t.schoolId, t.childId], foreignColumns: [children.schoolId, children.id] }),
    isolation(),
  ],
);

export const marks = pgTable(
  'marks',
  {
    schoolId: school(),
    sheetId: words('sheet_id', 'The sheet id').notNull(),
    childId: words('child_id', 'The child id').notNull(),
    rung: integer('rung').notNull(),
    state: words('state', 'The mark').$type<MarkState>().notNull(),
    text: words('text', 'The answer').notNull(),
    by: words('by', 'The marker').notNull(),
    at: instant('at', 'The time of marking').notNull(),
    sequence: integer('sequence').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.sheetId, t.childId, t.rung] }),
    foreignKey({ columns: [t.schoolId, t.sheetId], foreignColumns: [sheets.schoolId, sheets.id] }),
    foreignKey({ columns: [t.schoolId, t.childId], foreignColumns: [children.schoolId, children.id] }),
    index('marks_by_child').on(t.schoolId, t.childId),
    isolation(),
  ],
);

export const markBatches = pgTable(
  'mark_batches',
  {
    schoolId: school(),
    sheetId: words('sheet_id', 'The sheet id').notNull(),
    batch: integer('batch').notNull(),
    action: words('action', 'The action').$type<MarkAction>().notNull(),
    /** The batch that an undo took back or a redo brought back. */
    target: integer('target'),
    token: words('token', 'The marking token').notNull(),
    by: words('by', 'The marker').notNull(),
    at: instant('at', 'The time of marking').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.sheetId, t.batch] }),
    foreignKey({ columns: [t.schoolId, t.sheetId], foreignColumns: [sheets.schoolId, sheets.id] }),
    isolation(),
  ],
);

export const markEvents = pgTable(
  'mark_events',
  {
    schoolId: school(),
    sheetId: words('sheet_id', 'The sheet id').notNull(),
    sequence: integer('sequence').notNull(),
    batch: integer('batch').notNull(),
    childId: words('child_id', 'The child id').notNull(),
    rung: integer('rung').notNull(),
    beforeState: words('before_state', 'The mark').$type<MarkState>(),
    beforeText: words('before_text', 'The answer').notNull(),
    afterState: words('after_state', 'The mark').$type<MarkState>(),
    afterText: words('after_text', 'The answer').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.sheetId, t.sequence] }),
    foreignKey({
      columns: [t.schoolId, t.sheetId, t.batch],
      foreignColumns: [markBatches.schoolId, markBatches.sheetId, markBatches.batch],
    }),
    foreignKey({ columns: [t.schoolId, t.childId], foreignColumns: [children.schoolId, children.id] }),
    index('mark_events_by_child').on(t.schoolId, t.childId),
    isolation(),
  ],
);

export const placements = pgTable(
  'placements',
  {
    schoolId: school(),
    childId: words('child_id', 'The child id').notNull(),
    level: doublePrecision('level').notNull(),
    spread: doublePrecision('spread').notNull(),
    source: words('source', 'The source of the placement').$type<PlacementSource>().notNull(),
    at: instant('at', 'The time of the placement').notNull(),
    detail: document<JsonObject>('detail', 'The placement').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.childId] }),
    foreignKey({ columns: [t.schoolId, t.childId], foreignColumns: [children.schoolId, children.id] }),
    isolation(),
  ],
);

export const days = pgTable(
  'days',
  {
    schoolId: school(),
    classId: words('class_id', 'The class id').notNull(),
    date: day('date', 'The day').notNull(),
    number: words('number', 'The number'),
    activity: words('activity', 'The activity').$type<SheetKind>(),
    note: words('note', 'The note').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.classId, t.date] }),
    foreignKey({ columns: [t.schoolId, t.classId], foreignColumns: [classes.schoolId, classes.id] }),
    isolation(),
  ],
);

export const absences = pgTable(
  'absences',
  {
    schoolId: school(),
    classId: words('class_id', 'The class id').notNull(),
    date: day('date', 'The day').notNull(),
    childId: words('child_id', 'The child id').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.classId, t.date, t.childId] }),
    foreignKey({
      columns: [t.schoolId, t.classId, t.date],
      foreignColumns: [days.schoolId, days.classId, days.date],
    }),
    foreignKey({ columns: [t.schoolId, t.childId], foreignColumns: [children.schoolId, children.id] }),
    index('absences_by_child').on(t.schoolId, t.childId),
    isolation(),
  ],
);

export const sets = pgTable(
  'sets',
  {
    schoolId: school(),
    id: words('id', 'The set id').notNull(),
    classId: words('class_id', 'The class id').notNull(),
    kind: words('kind', 'The kind of set').$type<SetKind>().notNull(),
    band: words('band', 'The band').$type<Band>().notNull(),
    /** From 1 within class, kind and band: what is printed on the pieces. */
    number: integer('number').notNull(),
    seed: doublePrecision('seed').notNull(),
    /** JSON as text, so that it stays the same to the byte and its hash can be checked. */
    content: words('content', 'The set').notNull(),
    contentHash: words('content_hash', 'The hash of the set').notNull(),
    createdAt: instant('created_at', 'The time of saving').notNull(),
    note: words('note', 'The note').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.id] }),
    foreignKey({ columns: [t.schoolId, t.classId], foreignColumns: [classes.schoolId, classes.id] }),
    unique('sets_one_number').on(t.schoolId, t.classId, t.kind, t.band, t.number),
    isolation(),
  ],
);

/** What has been done with a printed set; a row for each step that is ticked. */
export const setSteps = pgTable(
  'set_steps',
  {
    schoolId: school(),
    setId: words('set_id', 'The set id').notNull(),
    step: words('step', 'The step').$type<SetStep>().notNull(),
    date: day('date', 'The day of the step').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.setId, t.step] }),
    foreignKey({ columns: [t.schoolId, t.setId], foreignColumns: [sets.schoolId, sets.id] }),
    isolation(),
  ],
);

export const loans = pgTable(
  'loans',
  {
    schoolId: school(),
    id: words('id', 'The loan id').notNull(),
    setId: words('set_id', 'The set id').notNull(),
    childId: words('child_id', 'The child id').notNull(),
    /** The set's, so that the database itself can keep a child to one set of a kind. */
    kind: words('kind', 'The kind of set').$type<SetKind>().notNull(),
    from: day('from_date', 'The day of handing out').notNull(),
    to: day('to_date', 'The day of giving back'),
    finished: boolean('finished').notNull(),
    /** The turns of class and kind that opened and closed it, from 1: an undo takes back the last turn. */
    openedTurn: integer('opened_turn').notNull(),
    closedTurn: integer('closed_turn'),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.id] }),
    foreignKey({ columns: [t.schoolId, t.setId], foreignColumns: [sets.schoolId, sets.id] }),
    foreignKey({ columns: [t.schoolId, t.childId], foreignColumns: [children.schoolId, children.id] }),
    uniqueIndex('loans_one_holder').on(t.schoolId, t.setId).where(sql`to_date is null`),
    uniqueIndex('loans_one_set').on(t.schoolId, t.childId, t.kind).where(sql`to_date is null`),
    index('loans_by_child').on(t.schoolId, t.childId),
    isolation(),
  ],
);

/** The band of a child for whom the teacher chose one; without a row it follows from the child's year. */
export const childBands = pgTable(
  'child_bands',
  {
    schoolId: school(),
    childId: words('child_id', 'The child id').notNull(),
    band: words('band', 'The band').$type<Band>().notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.childId] }),
    foreignKey({ columns: [t.schoolId, t.childId], foreignColumns: [children.schoolId, children.id] }),
    isolation(),
  ],
);

/** A teacher's own ladder of timed levels; without a row the class uses the one that comes with the product. */
export const timedLadders = pgTable(
  'timed_ladders',
  {
    schoolId: school(),
    classId: words('class_id', 'The class id').notNull(),
    value: document<LadderRecord>('value', 'The ladder').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.classId] }),
    foreignKey({ columns: [t.schoolId, t.classId], foreignColumns: [classes.schoolId, classes.id] }),
    isolation(),
  ],
);

/** One form of a level as it was printed; many children's sheets refer to it. */
export const timedForms = pgTable(
  'timed_forms',
  {
    schoolId: school(),
    id: words('id', 'The form id').notNull(),
    classId: words('class_id', 'The class id').notNull(),
    levelId: words('level_id', 'The level').notNull(),
    /** JSON as text, so that it stays the same to the byte and its hash can be checked. */
    content: words('content', 'The form').notNull(),
    contentHash: words('content_hash', 'The hash of the form').notNull(),
    createdAt: instant('created_at', 'The time of saving').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.id] }),
    foreignKey({ columns: [t.schoolId, t.classId], foreignColumns: [classes.schoolId, classes.id] }),
    unique('timed_forms_once').on(t.schoolId, t.classId, t.contentHash),
    isolation(),
  ],
);

/** A child's piece of paper with a form on it. */
export const timedSheets = pgTable(
  'timed_sheets',
  {
    schoolId: school(),
    id: words('id', 'The sheet id').notNull(),
    formId: words('form_id', 'The form id').notNull(),
    childId: words('child_id', 'The child id').notNull(),
    date: day('date', 'The day of the sheet').notNull(),
    /** The questions of the redo row, JSON as text. */
    redo: words('redo', 'The redo row').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.id] }),
    foreignKey({ columns: [t.schoolId, t.formId], foreignColumns: [timedForms.schoolId, timedForms.id] }),
    foreignKey({ columns: [t.schoolId, t.childId], foreignColumns: [children.schoolId, children.id] }),
    unique('timed_sheets_one_a_day').on(t.schoolId, t.childId, t.date),
    isolation(),
  ],
);

/** What came of a sheet; the row of the highest number that is not undone counts. */
export const timedResults = pgTable(
  'timed_results',
  {
    schoolId: school(),
    sheetId: words('sheet_id', 'The sheet id').notNull(),
    childId: words('child_id', 'The child id').notNull(),
    sequence: integer('sequence').notNull(),
    outcome: document<TimedOutcome>('outcome', 'The result').notNull(),
    at: instant('at', 'The time of marking').notNull(),
    undone: boolean('undone').notNull().default(false),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.sheetId, t.sequence] }),
    foreignKey({ columns: [t.schoolId, t.sheetId], foreignColumns: [timedSheets.schoolId, timedSheets.id] }),
    foreignKey({ columns: [t.schoolId, t.childId], foreignColumns: [children.schoolId, children.id] }),
    index('timed_results_by_child').on(t.schoolId, t.childId),
    isolation(),
  ],
);

/** The levels a child was put on, oldest first; the last one counts. */
export const timedMoves = pgTable(
  'timed_moves',
  {
    schoolId: school(),
    childId: words('child_id', 'The child id').notNull(),
    sequence: integer('sequence').notNull(),
    date: day('date', 'The day of the move').notNull(),
    levelId: words('level_id', 'The level').notNull(),
    /** Why, in the words that were shown. */
    evidence: words('evidence', 'The evidence').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.schoolId, t.childId, t.sequence] }),
    foreignKey({ columns: [t.schoolId, t.childId], foreignColumns: [children.schoolId, children.id] }),
    isolation(),
  ],
);
