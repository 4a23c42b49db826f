// A school's rows as plain data, table by table: what a backup holds. No Node, no database.
import type { JsonObject } from './records.js';

/** Tables in the order in which they can be filled: a table comes after those it refers to. */
export const SNAPSHOT_TABLES = [
  'settings',
  'classes',
  'children',
  'sheets',
  'slips',
  'marks',
  'mark_batches',
  'mark_events',
  'placements',
  'days',
  'absences',
  'sets',
  'set_steps',
  'loans',
  'child_bands',
  'timed_ladders',
  'timed_forms',
  'timed_sheets',
  'timed_results',
  'timed_moves',
] as const;
export type SnapshotTable = (typeof SNAPSHOT_TABLES)[number];

/** Rows by table; columns by their database names, without school_id. */
export type Snapshot = { readonly [T in SnapshotTable]: readonly JsonObject[] };
