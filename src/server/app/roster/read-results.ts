// Results of a board as CSV: one row for each child and rung, columns child, rung, answer, state.
import Papa from 'papaparse';
import type { Result } from '#api/problem.js';
import { refuse } from '../problems.js';

export interface ResultRow {
  /** As an editor counts, the heading being row 1. */
  readonly row: number;
  readonly cells: Readonly<Record<string, string>>;
}

/** The rows by column name; refuses a file without the columns child and rung, or without rows. */
export function readResults(text: string, name: string): Result<ResultRow[]> {
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
  for (const needed of ['child', 'rung']) {
    if (!names.includes(needed)) {
      return refuse(
        'results.column',
        `${name}: there is no column “${needed}”.`,
        'The columns are child, rung, answer and state.',
      );
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
    : refuse(
        'results.empty',
        `${name}: there are no results under the heading row.`,
        'Add a row for each child and rung.',
      );
}
