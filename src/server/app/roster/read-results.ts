// Results as CSV with a heading row: of a board one row for each child and rung, of timed practice one for each sheet.
import Papa from 'papaparse';
import type { Result } from '#api/problem.js';
import { refuse } from '../problems.js';

export interface ResultRow {
  /** As an editor counts, the heading being row 1. */
  readonly row: number;
  readonly cells: Readonly<Record<string, string>>;
}

interface Columns {
  readonly needed: readonly string[];
  /** All of them, as the refusal tells them. */
  readonly all: string;
}

export const BOARD_COLUMNS: Columns = {
  needed: ['child', 'rung'],
  all: 'The columns are child, rung, answer and state.',
};

export const SHEET_COLUMNS: Columns = {
  needed: ['child', 'done'],
  all: 'The columns are child, done and, where you like, circled, written, redo and minutes.',
};

/** The rows by column name; refuses a file without a needed column, or without rows. */
export function readResults(text: string, name: string, columns: Columns): Result<ResultRow[]> {
  const { data, errors } = Papa.parse(text.replace(/^\ufeff/, ''), { header: false, skipEmptyLines: false });
  const quotes = errors.find((error) => error.type === 'Quotes');
  if (quotes) {
    return refuse(
      'results.quotes',
      `${name}: a quotation mark near row ${(quotes.row ?? 0) + 1} is not closed.`,
      'Close or remove it.',
    );
  }
  const [header = [], ...rows] = data;
  const names = header.map((cell) => cell.trim().toLowerCase());
  for (const needed of columns.needed) {
    if (!names.includes(needed)) {
      return refuse('results.column', `${name}: there is no column “${needed}”.`, columns.all);
    }
  }
  const read = rows
    .map((cells, index) => ({
      row: index + 2,
      cells: Object.fromEntries(names.map((column, at) => [column, (cells[at] ?? '').trim()])),
    }))
    .filter(({ cells }) => Object.values(cells).some((cell) => cell !== ''));
  return read.length > 0
    ? { ok: true, value: read }
    : refuse('results.empty', `${name}: there are no results under the heading row.`, columns.all);
}
