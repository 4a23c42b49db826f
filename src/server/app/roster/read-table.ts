// Text -> rows of cells (RFC 4180, and the semicolons and tabs of spreadsheets), with row numbers as an editor counts.
import Papa from 'papaparse';
import type { RosterReader } from './reading.js';

export interface TableRow {
  readonly row: number;
  readonly cells: readonly string[];
}

export interface Table {
  readonly header: readonly string[];
  readonly rows: readonly TableRow[];
}

/** A heading in the form by which columns are recognised: "Given Name" and "given_name" are both "givenname". */
export function headingKey(heading: string): string {
  return heading.toLowerCase().replace(/[^a-z0-9]/g, '');
}

/** The table's header and rows; null, with the problem noted, when quotes do not close or the header is unusable. */
export function readTable(text: string, reader: Pick<RosterReader, 'problem'>, name: string): Table | null {
  const { data, errors } = Papa.parse(text, {
    header: false,
    skipEmptyLines: false,
    delimitersToGuess: [',', ';', '\t', '|'],
  });
  const quotes = errors.find((error) => error.type === 'Quotes');
  if (quotes) {
    const row = (quotes.row ?? 0) + 1;
    reader.problem(
      row,
      '',
      `${name}: a quotation mark in row ${row} is not closed or stands inside a cell.`,
      'Remove the quotation mark or add the missing one, then import again.',
    );
    return null;
  }
  const rows = data
    .map((cells, index) => ({ row: index + 1, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const [first, ...guarded] = rows;
  if (!first) return null;
  const keys = first.cells.map(headingKey).filter((key) => key !== '');
  const twice = keys.find((key, index) => keys.indexOf(key) !== index);
  if (twice !== undefined) {
    reader.problem(
      first.row,
      twice,
      `${name}: two columns are headed “${first.cells.find((cell) => headingKey(cell) === twice)}”.`,
      'Rename or delete one of them.',
    );
    return null;
  }
  const rest = guarded.map(({ row, cells }) => ({ row, cells: cells.map(withoutGuard) }));
  return { header: first.cells, rows: rest };
}

/** The cell without the apostrophe by which a spreadsheet, or our own export, keeps "@Home" from being a formula. */
function withoutGuard(cell: string): string {
  return /^'+[=+\-@\t]/.test(cell) ? cell.slice(1) : cell;
}

/** True, with the problem noted, when a row has another number of cells than the header. */
export function isRagged(table: Table, row: TableRow, reader: RosterReader): boolean {
  const extra = row.cells.slice(table.header.length).some((cell) => cell !== '');
  if (!extra) return false;
  reader.problem(
    row.row,
    '',
    `This row has ${row.cells.length} cells but the heading has ${table.header.length}.`,
    'Check for a comma inside a name: put such a name in quotation marks.',
  );
  return true;
}
