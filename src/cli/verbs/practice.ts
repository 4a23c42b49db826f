// afterbell practice: timed practice of a class, day by day
import { LadderChange, Outcome, TIMED_PAPERS, type TimedChild, type TimedView } from '#api/timed-room.js';
import { describeIssues } from '#api/problem.js';
import { changeLadder } from '#server/app/desk/timed/ladder.js';
import {
  handOutTimed,
  moveChild,
  recordTimed,
  timedView,
  undoMove,
  undoTimed,
} from '#server/app/desk/timed/room.js';
import { readResults, type ResultRow, SHEET_COLUMNS } from '#server/app/roster/read-results.js';
import { timedDayRequest } from '#server/app/routes/timed.js';
import type { Services } from '#server/app/services.js';
import { chooseClass } from '../class-choice.js';
import { withServices } from '../data-folder.js';
import { UsageFailure, valueOf } from '../failure.js';
import { readJson, readText } from '../input.js';
import { readDate, readWord } from '../options.js';
import { note, printJson, printText } from '../output.js';
import { chooseChild } from '../set-choice.js';
import { writeWhole } from './print.js';

interface PracticeOptions {
  readonly class?: string;
  readonly date?: string;
  readonly json?: boolean;
}

interface Place {
  readonly classId: string;
  readonly date: string;
}

/** Does `act` on the practice that the options name, then shows it. */
async function onPractice(
  options: PracticeOptions,
  act: (services: Services, place: Place) => Promise<unknown>,
): Promise<void> {
  const view = await withServices(async (services) => {
    const place = await placeOf(services, options);
    await act(services, place);
    return valueOf(await timedView(services, place));
  });
  if (options.json) printJson(view);
  else printView(view);
}

async function placeOf(services: Services, options: PracticeOptions): Promise<Place> {
  const { id } = await chooseClass(services, options.class);
  const date = options.date === undefined ? services.clock().today : readDate('--date', options.date);
  return { classId: id, date };
}

export const showPractice = (options: PracticeOptions) => onPractice(options, async () => null);

export const prepare = (options: PracticeOptions) =>
  onPractice(options, async (services, place) => valueOf(await handOutTimed(services, place)));

/** Saves all rows of a CSV file, or none. */
export function count(file: string, options: PracticeOptions): Promise<void> {
  const rows = valueOf(readResults(readText(file), file, SHEET_COLUMNS));
  return onPractice(options, async (services, place) => {
    const { children } = valueOf(await timedView(services, place));
    const entries = rows.map((row) => entryOf(row, children));
    valueOf(await recordTimed(services, place, entries));
  });
}

export const uncount = (name: string, options: PracticeOptions) =>
  onPractice(options, async (services, place) => {
    const childId = await chooseChild(services, place.classId, name);
    const { children } = valueOf(await timedView(services, place));
    const sheet = children.find(({ id }) => id === childId)?.sheet;
    if (!sheet) throw new UsageFailure(`${name} has no sheet on ${place.date}.`);
    valueOf(await undoTimed(services, place, sheet.id));
  });

/** Puts a child on a level, which may be told by its id, its title or its place on the ladder. */
export const move = (name: string, level: string, options: PracticeOptions) =>
  onPractice(options, async (services, place) => {
    const childId = await chooseChild(services, place.classId, name);
    const { ladder } = valueOf(await timedView(services, place));
    const found = ladder.levels.find(
      ({ id, title }, at) =>
        id === level || String(at + 1) === level || title.toLowerCase() === level.toLowerCase(),
    );
    if (!found)
      throw new UsageFailure(
        `There is no level “${level}”: give its place from 1 to ${ladder.levels.length}, its id or its title.`,
      );
    valueOf(await moveChild(services, place, childId, found.id));
  });

export const moveBack = (name: string, options: PracticeOptions) =>
  onPractice(options, async (services, place) =>
    valueOf(await undoMove(services, place, await chooseChild(services, place.classId, name))),
  );

/** The class's ladder as JSON; with a file, that one from now on; `usual` puts the one back that comes with the product. */
export async function classLadder(
  file: string | undefined,
  options: PracticeOptions & { readonly usual?: boolean },
): Promise<void> {
  const wish = file === undefined ? null : readJson(file, LadderChange.shape.ladder);
  const view = await withServices(async (services) => {
    const place = await placeOf(services, options);
    if (options.usual || wish !== null)
      valueOf(await changeLadder(services, place.classId, options.usual ? null : wish));
    return valueOf(await timedView(services, place));
  });
  printJson(view.ladder);
}

export async function printPracticeTo(
  options: PracticeOptions & {
    readonly out: string;
    readonly document: string;
    readonly largePrint?: boolean;
  },
): Promise<void> {
  const document = readWord('--document', options.document, TIMED_PAPERS);
  const made = await withServices(async (services) => {
    const place = await placeOf(services, options);
    const order = { ...place, document, largePrint: options.largePrint ?? false };
    return valueOf(await services.printing.printTimed(valueOf(await timedDayRequest(services, order))));
  });
  for (const warning of made.warnings) note(warning);
  writeWhole(options.out, made.pdf);
  note(`${options.out}: ${made.pages} ${made.pages === 1 ? 'page' : 'pages'}. Print at 100 %.`);
}

/** One row of the file: whose sheet, told by the child's id, name or the sheet's code, and what came of it. */
function entryOf({ row, cells }: ResultRow, children: readonly TimedChild[]) {
  const wanted = (cells['child'] ?? '').toLowerCase();
  const found = children.filter(({ id, shownAs, sheet }) =>
    [id, shownAs, sheet?.id].some((word) => word?.toLowerCase() === wanted),
  );
  const [child] = found;
  const refused = (why: string) => new UsageFailure(`row ${row}: ${why} Nothing was recorded.`);
  if (!child || found.length > 1)
    throw refused(`${child ? 'more than one child is' : 'no child is'} shown as “${cells['child']}”.`);
  if (!child.sheet) throw refused(`${child.shownAs} has no sheet on this day.`);
  const places = (column: string) => words(cells[column]).map(Number);
  const minutes = (cells['minutes'] ?? '').toLowerCase();
  const outcome = Outcome.safeParse({
    attempted: cells['done'] === '' ? Number.NaN : Number(cells['done']),
    wrong: places('circled'),
    written: Object.fromEntries(words(cells['written']).map((word) => word.split(':', 2))),
    redoWrong: places('redo'),
    minutes: minutes === '' ? child.sheet.minutes : minutes === 'none' ? null : Number(minutes),
  });
  if (!outcome.success) throw refused(`${describeIssues(outcome.error)}.`);
  return { sheetId: child.sheet.id, outcome: outcome.data };
}

function words(cell = ''): string[] {
  return cell.split(/[\s;]+/).filter((word) => word !== '');
}

function printView({ date, ladder, children, forms }: TimedView): void {
  printText(date);
  const width = Math.max(0, ...children.map(({ shownAs }) => shownAs.length));
  for (const { shownAs, absent, levelId, sheet, redo, best, suggestion } of children) {
    const at = ladder.levels.findIndex(({ id }) => id === levelId);
    const form = forms.find(({ key }) => key === sheet?.formKey);
    const parts = [
      `level ${at + 1} ${ladder.levels[at]?.title ?? ''}`,
      absent ? 'away' : '',
      sheet ? `form ${form?.form ?? ''} ${sheet.id}` : 'no sheet',
      sheet?.outcome ? `${sheet.outcome.attempted} done, ${sheet.outcome.wrong.length} circled` : '',
      redo.length > 0 ? `${redo.length} to put right` : '',
      best ? `best ${best.right} right` : '',
    ];
    printText(`${shownAs.padEnd(width)}  ${parts.filter(Boolean).join(', ')}`);
    if (suggestion.levelId !== null) {
      const next = ladder.levels.find(({ id }) => id === suggestion.levelId)?.title;
      const way = suggestion.move === 'up' ? 'may go on to' : 'may go back to';
      printText(`${' '.repeat(width)}  ${way} ${next}: ${suggestion.evidence}`);
    }
  }
}
