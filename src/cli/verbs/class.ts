// afterbell class list | import | export
import { NewClass } from '#api/class.js';
import { readRoster } from '#server/app/roster/read-roster.js';
import { classDetail, createClass, listClasses } from '#server/app/desk/classes.js';
import { chooseClass } from '../class-choice.js';
import { withServices } from '../data-folder.js';
import { UsageFailure, valueOf } from '../failure.js';
import { readText } from '../input.js';
import { readYears } from '../options.js';
import { note, printJson, printText } from '../output.js';

export async function listAll(options: { json?: boolean }): Promise<void> {
  const classes = await withServices(async (services) => valueOf(await listClasses(services)));
  if (options.json) printJson({ items: classes });
  else
    for (const { id, name, years, childCount } of classes)
      printText(`${id}  ${name}  years ${years.join(', ')}  ${counted(childCount, 'child', 'children')}`);
}

interface ImportOptions {
  readonly name: string;
  readonly years: string;
  readonly classes?: string;
  readonly enrollments?: string;
  readonly keepGood?: boolean;
  readonly json?: boolean;
}

export async function importClass(file: string, options: ImportOptions): Promise<void> {
  const years = readYears('--years', options.years);
  const reading = readRoster({
    text: readText(file),
    defaultYear: years[0] ?? 0,
    ...(options.classes === undefined ? {} : { classesCsv: readText(options.classes) }),
    ...(options.enrollments === undefined ? {} : { enrollmentsCsv: readText(options.enrollments) }),
  });
  for (const { row, column, message, hint } of reading.problems) {
    note(`${row > 0 ? `row ${row}` : file}${column ? `, ${column}` : ''}: ${message} ${hint}`);
  }
  const good = reading.children.length;
  if (reading.problems.length > 0 && !options.keepGood) {
    throw new UsageFailure(
      `Nothing was imported: ${counted(reading.problems.length, 'problem')} above. Mend ${reading.problems.length === 1 ? 'it' : 'them'} and import again${good === 0 ? '' : `, or add --keep-good to import the other ${counted(good, 'child', 'children')}`}.`,
    );
  }
  if (good === 0) throw new UsageFailure(`${file}: no children could be read, so nothing was imported.`);
  const input = NewClass.safeParse({
    name: options.name,
    years,
    children: reading.children.map(({ row: _, ...child }) => child),
  });
  if (!input.success) throw new UsageFailure('--name: give the class a name of 1 to 60 letters.');
  const made = await withServices(async (services) => valueOf(await createClass(services, input.data)));
  if (options.json) printJson(made);
  else
    printText(
      `${made.name}: ${counted(made.children.length, 'child', 'children')} imported. Its id is ${made.id}.`,
    );
}

export async function exportClass(name: string, options: { json?: boolean }): Promise<void> {
  const detail = await withServices(async (services) =>
    valueOf(await classDetail(services, (await chooseClass(services, name)).id)),
  );
  if (options.json) {
    printJson(detail);
    return;
  }
  printText('Given name,Family name,Alias,Year');
  for (const child of detail.children) {
    printText([child.givenName, child.familyName, child.alias, String(child.year)].map(csvCell).join(','));
  }
}

function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** RFC 4180 quoting; a leading sign is guarded so that a spreadsheet shows it as text. The import takes the guard off. */
function csvCell(text: string): string {
  const guarded = /^'*[=+\-@\t]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}
