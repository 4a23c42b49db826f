// A list of a teacher's own questions, as a table or as lines -> questions about any number, and what is wrong where.
import { MOST_OWN, OWN_PARTS, ownLineOf, readOwnLines } from '#engine/own-questions/own-lines.js';
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
  /** The whole list as lines, rows with a fault too: what a teacher mends in the app. */
  readonly lines: readonly string[];
}

const NEEDED = ['question', 'answer'] as const;
const SEE = 'docs/own-questions.md has the columns and the formulas.';

/** The questions of a list, and every fault with its row and column; a row with a fault gives no question. */
export function readOwnQuestions(text: string, name: string): OwnList {
  return isLines(text) ? readAsLines(text) : readAsTable(text, name);
}

/** Whether the first line is a question with bars and not the heading of a table. */
function isLines(text: string): boolean {
  const [first = ''] = text.trimStart().split('\n', 1);
  const [cell = '', ...more] = first.split('|');
  return more.length > 0 && headingKey(cell) !== 'question';
}

function readAsLines(text: string): OwnList {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const problems: OwnListProblem[] = [];
  if (lines.length > MOST_OWN)
    problems.push({
      row: 0,
      column: '',
      message: `The list has ${lines.length} questions.`,
      hint: `Keep a list to ${MOST_OWN}.`,
    });
  const questions = readOwnLines(text).flatMap(({ line, read }) => {
    if (read.ok) return [{ row: line, question: read.value }];
    for (const { part, message } of read.faults)
      problems.push({ row: line, column: part, message, hint: SEE });
    return [];
  });
  return { questions, problems, lines };
}

function readAsTable(text: string, name: string): OwnList {
  const problems: OwnListProblem[] = [];
  const problem = (row: number, column: string, message: string, hint: string) =>
    void problems.push({ row, column, message, hint });
  const table = readTable(text, { problem }, name);
  if (table === null) {
    if (problems.length === 0)
      problem(0, '', `${name} is empty.`, 'Give it a heading row and one question a row.');
    return { questions: [], problems, lines: [] };
  }
  const keys = table.header.map(headingKey);
  for (const needed of NEEDED)
    if (!keys.includes(needed)) problem(1, needed, `There is no column “${needed}”.`, SEE);
  for (const [at, key] of keys.entries())
    if (key !== '' && !OWN_PARTS.some((column) => column === key))
      problem(1, table.header[at] ?? '', `The column “${table.header[at]}” is not known.`, SEE);
  if (table.rows.length > MOST_OWN)
    problem(0, '', `The list has ${table.rows.length} questions.`, `Keep a list to ${MOST_OWN}.`);
  if (problems.length > 0) return { questions: [], problems, lines: [] };
  const lines: string[] = [];
  const questions = table.rows.flatMap(({ row, cells }) => {
    const cell = (column: string) => cells[keys.indexOf(column)] ?? '';
    const source = Object.fromEntries(
      OWN_PARTS.map((column) => [column, cell(column)]),
    ) as unknown as OwnQuestionSource;
    lines.push(ownLineOf(source));
    const read = readOwnQuestion(source);
    if (read.ok) return [{ row, question: read.value }];
    for (const { part, message } of read.faults) problem(row, part, message, SEE);
    return [];
  });
  return { questions, problems, lines };
}
