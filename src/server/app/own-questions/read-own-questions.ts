// A list of a teacher's own questions as CSV -> questions that can be asked about any number, and what is wrong where.
import {
  type OwnQuestion,
  type OwnQuestionSource,
  readOwnQuestion,
} from '#engine/own-questions/own-question.js';
import { headingKey, readTable } from '../roster/read-table.js';

export interface OwnListProblem {
  /** Counted from 1 as a spreadsheet does; 0 is the file as a whole. */
  readonly row: number;
  /** The column's heading; empty for the whole row. */
  readonly column: string;
  readonly message: string;
  readonly hint: string;
}

export interface OwnList {
  readonly questions: readonly { readonly row: number; readonly question: OwnQuestion }[];
  readonly problems: readonly OwnListProblem[];
}

const COLUMNS = ['question', 'answer', 'slips', 'way', 'when', 'year', 'strand'] as const;
const NEEDED = ['question', 'answer'] as const;
const MOST = 500;
const SEE = 'docs/own-questions.md has the columns and the formulas.';

/** The questions of a list, and every fault with its row and column; a row with a fault gives no question. */
export function readOwnQuestions(text: string, name: string): OwnList {
  const problems: OwnListProblem[] = [];
  const problem = (row: number, column: string, message: string, hint: string) =>
    void problems.push({ row, column, message, hint });
  const table = readTable(text, { problem }, name);
  if (table === null) {
    if (problems.length === 0)
      problem(0, '', `${name} is empty.`, 'Give it a heading row and one question a row.');
    return { questions: [], problems };
  }
  const keys = table.header.map(headingKey);
  for (const needed of NEEDED)
    if (!keys.includes(needed)) problem(1, needed, `There is no column “${needed}”.`, SEE);
  for (const [at, key] of keys.entries())
    if (key !== '' && !COLUMNS.some((column) => column === key))
      problem(1, table.header[at] ?? '', `The column “${table.header[at]}” is not known.`, SEE);
  if (table.rows.length > MOST)
    problem(0, '', `The list has ${table.rows.length} questions.`, `Keep a list to ${MOST}.`);
  if (problems.length > 0) return { questions: [], problems };
  const questions = table.rows.flatMap(({ row, cells }) => {
    const cell = (column: string) => cells[keys.indexOf(column)] ?? '';
    const source = Object.fromEntries(COLUMNS.map((column) => [column, cell(column)]));
    const read = readOwnQuestion(source as unknown as OwnQuestionSource);
    if (read.ok) return [{ row, question: read.value }];
    for (const { part, message } of read.faults) problem(row, part, message, SEE);
    return [];
  });
  return { questions, problems };
}
