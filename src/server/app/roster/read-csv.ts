// A plain CSV roster with a heading row.
import type { RosterReading } from '#api/class.js';
import { isRagged, headingKey, readTable } from './read-table.js';
import { RosterReader } from './reading.js';
import { splitName } from './read-names.js';
import { parseYear } from './year-words.js';

const HEADINGS = {
  given: ['givenname', 'firstname', 'given', 'first', 'forename', 'preferredname', 'preferredfirstname'],
  family: ['familyname', 'lastname', 'surname', 'family', 'last'],
  full: ['name', 'fullname', 'student', 'studentname', 'pupil', 'pupilname', 'child', 'childname'],
  alias: ['alias', 'nickname', 'shortname', 'knownas'],
  year: ['year', 'yearlevel', 'yr', 'grade', 'gradelevel', 'schoolyear', 'yeargroup'],
} as const;

type Field = keyof typeof HEADINGS;

function findColumns(header: readonly string[]): Partial<Record<Field, number>> {
  const columns: Partial<Record<Field, number>> = {};
  for (const [field, names] of Object.entries(HEADINGS) as [Field, readonly string[]][]) {
    const at = header.findIndex((heading) => names.includes(headingKey(heading)));
    if (at >= 0) columns[field] = at;
  }
  return columns;
}

/** True when the first line looks like the heading row of a roster rather than a child's name. */
export function hasHeadings(firstLine: string): boolean {
  const cells = firstLine.split(/[,;\t|]/);
  if (
    cells.length < 2 &&
    !['name', 'studentname', 'fullname', 'firstname', 'givenname'].includes(headingKey(firstLine))
  )
    return false;
  const columns = findColumns(cells.map((cell) => cell.replace(/^\ufeff?"|"$/g, '')));
  return (
    columns.given !== undefined ||
    columns.full !== undefined ||
    columns.family !== undefined ||
    columns.year !== undefined
  );
}

/** Reads a CSV roster; every row is kept or has a problem naming row, column and mend. */
export function readCsvRoster(text: string, defaultYear: number): RosterReading {
  const reader = new RosterReader();
  const table = readTable(text, reader, 'The file');
  if (!table) return reader.finish('csv');
  const columns = findColumns(table.header);
  const headingOf = (at: number | undefined): string => (at === undefined ? '' : (table.header[at] ?? ''));
  if (columns.given === undefined && columns.full === undefined) {
    reader.problem(
      1,
      '',
      'No column is headed “Given name” or “Name”.',
      'Rename the column with the children’s first names to “Given name”.',
    );
    return reader.finish('csv');
  }
  for (const row of table.rows) {
    if (isRagged(table, row, reader)) continue;
    const cell = (field: Field): string => row.cells[columns[field] ?? -1] ?? '';
    const split =
      columns.given === undefined
        ? splitName(cell('full'))
        : { given: cell('given'), family: cell('family') };
    let year: number | null = defaultYear;
    if (cell('year') !== '') {
      year = parseYear(cell('year'));
      if (year === null) {
        reader.problem(
          row.row,
          headingOf(columns.year),
          `“${cell('year').slice(0, 30)}” is not a year from Foundation to 6.`,
          'Write the year as a number, such as 4.',
        );
      }
    }
    reader.child(
      row.row,
      { text: split.given, column: headingOf(columns.given ?? columns.full) },
      { text: split.family, column: headingOf(columns.family ?? columns.full) },
      { text: cell('alias'), column: headingOf(columns.alias) },
      year,
    );
  }
  return reader.finish('csv');
}
