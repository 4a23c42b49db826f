// A teacher's list as she types it: one question a line, its parts between upright bars.
import { type OwnQuestion, type OwnQuestionSource, readOwnQuestion } from './own-question.js';

/** The parts of a question in the order in which a line, or a table without another order, has them. */
export const OWN_PARTS = [
  'question',
  'answer',
  'slips',
  'way',
  'when',
  'year',
  'strand',
] as const satisfies readonly (keyof OwnQuestionSource)[];

/** Most questions of one list. */
export const MOST_OWN = 500;

export interface OwnLine {
  /** Counted from 1, as an editor does. */
  readonly line: number;
  readonly read: ReturnType<typeof readOwnQuestion>;
}

/** What each line that is not blank says: "What is double {n}? | 2 * n | n + 2; n". Lines beyond the 500th question are left out. */
export function readOwnLines(text: string): readonly OwnLine[] {
  return text
    .split(/\r?\n/)
    .flatMap((line, at) => (line.trim() === '' ? [] : [{ line: at + 1, read: readLine(line) }]))
    .slice(0, MOST_OWN);
}

/** The questions of the lines that have no fault. */
export function ownQuestionsIn(text: string): readonly OwnQuestion[] {
  return readOwnLines(text).flatMap(({ read }) => (read.ok ? [read.value] : []));
}

function readLine(line: string): OwnLine['read'] {
  const cells = line.split('|').map((cell) => cell.trim());
  const fault = (part: keyof OwnQuestionSource, message: string) =>
    ({ ok: false, faults: [{ part, message }] }) as const;
  if (cells.length === 1)
    return fault('answer', 'There is none: write an upright bar | after the question, then the answer.');
  if (cells.length > OWN_PARTS.length)
    return fault(
      'strand',
      `There are ${cells.length} parts, and a question has ${OWN_PARTS.length} at most.`,
    );
  const [question = '', answer = '', slips = '', way = '', when = '', year = '', strand = ''] = cells;
  return readOwnQuestion({ question, answer, slips, way, when, year, strand });
}

/** The line that says the same as a row of a table; bars in a cell, which a line cannot hold, become commas. */
export function ownLineOf(source: OwnQuestionSource): string {
  const cells = OWN_PARTS.map((part) => source[part].replace(/\s+/g, ' ').replaceAll('|', ',').trim());
  return cells.join(' | ').replace(/[ |]+$/, '');
}
