// A list of own questions that a user names with --own.
import { type DayNumber, parseDayNumber } from '#engine/numbers/day-number.js';
import type { Locale } from '#engine/numbers/locale.js';
import type { OwnSource } from '#engine/own-questions/own-supply.js';
import { type OwnList, readOwnQuestions } from '#server/app/own-questions/read-own-questions.js';
import { sentenceOf, UsageFailure, valueOf } from './failure.js';
import { readText } from './input.js';
import { note } from './output.js';

/** The questions of the file with their rows; every fault is told on stderr, the first one ends the command. */
export function readOwnFile(file: string): OwnList['questions'] {
  const { questions, problems } = readOwnQuestions(readText(file), file);
  const [first, ...others] = problems.map(
    (one) =>
      `${file}: ${one.row > 0 ? `row ${one.row}` : 'the list'}${one.column === '' ? '' : `, ${one.column}`}: ${sentenceOf(one)}`,
  );
  if (first !== undefined) {
    for (const other of others) note(other);
    throw new UsageFailure(first);
  }
  return questions;
}

/** The list that --own names, and the number that --number says all are about; nothing without --own. */
export function readOwnSource(
  { own, number }: { readonly own?: string; readonly number?: string },
  locale: Locale,
): { readonly own?: OwnSource } {
  if (own === undefined) {
    if (number !== undefined)
      throw new UsageFailure('--number is for your own questions: add --own mine.csv.');
    return {};
  }
  const day: DayNumber | null = number === undefined ? null : valueOf(parseDayNumber(number, locale));
  return {
    own: { questions: readOwnFile(own).map(({ question }) => question), ...(day ? { number: day } : {}) },
  };
}
