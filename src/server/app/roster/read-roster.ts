// Whatever a teacher pastes or imports -> children and problems. The format is told from the first line.
import type { RosterInput, RosterReading } from '#api/class.js';
import { hasHeadings, readCsvRoster } from './read-csv.js';
import { readNames } from './read-names.js';
import { isOneRoster, readOneRoster } from './read-oneroster.js';
import { RosterReader } from './reading.js';

/** Longest text taken, in UTF-16 units; a class of 60 with all OneRoster columns stays below 60 000. */
export const LONGEST_ROSTER = 400_000;

/** Reads names, CSV or OneRoster 1.2. Never throws: whatever cannot be read is a problem with its mend. */
export function readRoster(input: RosterInput): RosterReading {
  const size = input.text.length + (input.classesCsv?.length ?? 0) + (input.enrollmentsCsv?.length ?? 0);
  if (size > LONGEST_ROSTER)
    return refused(
      'That is far more text than a class list.',
      'Paste only the names of one class, one on each line.',
    );
  const text = input.text.replace(/^\ufeff/, '');
  if (text.includes('\u0000'))
    return refused(
      'This is not a text file, or it is saved in another encoding.',
      'Save the list as “CSV UTF-8” and import it again.',
    );
  const firstLine = text.split(/\r\n|\r|\n/).find((line) => line.trim() !== '') ?? '';
  if (isOneRoster(firstLine)) return readOneRoster({ ...input, text });
  return hasHeadings(firstLine) ? readCsvRoster(text, input.defaultYear) : readNames(text, input.defaultYear);
}

function refused(message: string, hint: string): RosterReading {
  const reader = new RosterReader();
  reader.problem(0, '', message, hint);
  return reader.finish('names');
}
