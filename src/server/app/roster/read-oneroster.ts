// OneRoster 1.2 CSV (the 1EdTech interchange standard): users.csv, with classes.csv and enrollments.csv where given.
// Column names are the standard's own.
import type { RosterInput, RosterReading } from '#api/class.js';
import { isRagged, readTable, type Table, type TableRow } from './read-table.js';
import { RosterReader } from './reading.js';
import { parseYear } from './year-words.js';

/** True for the heading row of a OneRoster users file. */
export function isOneRoster(firstLine: string): boolean {
  return /\bsourcedId\b/i.test(firstLine) && /\bgivenName\b/i.test(firstLine);
}

function cellOf(table: Table, row: TableRow, column: string): string {
  const at = table.header.findIndex((heading) => heading.toLowerCase() === column.toLowerCase());
  return at < 0 ? '' : (row.cells[at] ?? '');
}

function isActive(table: Table, row: TableRow): boolean {
  return cellOf(table, row, 'status').toLowerCase() !== 'tobedeleted';
}

/** User ids enrolled as students in the first class of classes.csv, or null when enrolments do not narrow the list. */
function enrolledIn(classId: string, input: RosterInput, reader: RosterReader): Set<string> | null {
  if (!input.enrollmentsCsv || classId === '') return null;
  const table = readTable(input.enrollmentsCsv, reader, 'enrollments.csv');
  if (!table) return null;
  const rows = table.rows.filter(
    (row) =>
      isActive(table, row) &&
      cellOf(table, row, 'classSourcedId') === classId &&
      cellOf(table, row, 'role').toLowerCase() === 'student',
  );
  return new Set(rows.map((row) => cellOf(table, row, 'userSourcedId')));
}

/** Reads users.csv: active students, preferred names first, years from `grades`. */
export function readOneRoster(input: RosterInput): RosterReading {
  const reader = new RosterReader();
  const users = readTable(input.text, reader, 'users.csv');
  if (!users) return reader.finish('oneroster');
  for (const column of ['sourcedId', 'givenName', 'familyName']) {
    if (!users.header.some((heading) => heading.toLowerCase() === column.toLowerCase())) {
      reader.problem(
        1,
        column,
        `users.csv has no column “${column}”.`,
        'Export the file again in OneRoster 1.2 form.',
      );
      return reader.finish('oneroster');
    }
  }
  const classes = input.classesCsv ? readTable(input.classesCsv, reader, 'classes.csv') : null;
  const active = classes?.rows.filter((row) => isActive(classes, row)) ?? [];
  const firstClass = active[0];
  if (active.length > 1 && !input.enrollmentsCsv) {
    reader.problem(
      0,
      '',
      `classes.csv lists ${active.length} classes, but without enrollments.csv Afterbell cannot tell who is in which.`,
      'Add enrollments.csv, or export one class at a time.',
    );
    return reader.finish('oneroster');
  }
  const className = classes && firstClass ? cellOf(classes, firstClass, 'title') : '';
  const enrolled =
    classes && firstClass ? enrolledIn(cellOf(classes, firstClass, 'sourcedId'), input, reader) : null;
  for (const row of users.rows) {
    const role = cellOf(users, row, 'role').toLowerCase();
    if (!isActive(users, row) || (role !== '' && role !== 'student')) continue;
    if (enrolled && !enrolled.has(cellOf(users, row, 'sourcedId'))) continue;
    if (isRagged(users, row, reader)) continue;
    const grades = cellOf(users, row, 'grades').split(/[,;]/)[0]?.trim() ?? '';
    const year = grades === '' ? input.defaultYear : parseYear(grades);
    if (year === null) {
      reader.problem(
        row.row,
        'grades',
        `“${grades.slice(0, 30)}” is not a year from Foundation (KG) to 6.`,
        'Write the grade as two digits, such as 04.',
      );
    }
    const given = cellOf(users, row, 'preferredGivenName') || cellOf(users, row, 'givenName');
    const family = cellOf(users, row, 'preferredFamilyName') || cellOf(users, row, 'familyName');
    reader.child(
      row.row,
      { text: given, column: 'givenName' },
      { text: family, column: 'familyName' },
      { text: '', column: '' },
      year,
    );
  }
  return reader.finish('oneroster', className);
}
