// afterbell mark
import { MarkEntry } from '#api/marking.js';
import { describeIssues } from '#api/problem.js';
import { markingView, saveMarks } from '#server/app/desk/marking.js';
import { BOARD_COLUMNS, readResults, type ResultRow } from '#server/app/roster/read-results.js';
import { withServices } from '../data-folder.js';
import { UsageFailure, valueOf } from '../failure.js';
import { readText } from '../input.js';
import { printJson, printText } from '../output.js';

interface Options {
  readonly sheet: string;
  readonly answers?: string;
  readonly json?: boolean;
}

export async function mark(options: Options): Promise<void> {
  const rows =
    options.answers === undefined
      ? null
      : valueOf(readResults(readText(options.answers), options.answers, BOARD_COLUMNS));
  await withServices(async (services) => {
    const view = valueOf(await markingView(services, options.sheet));
    if (rows === null) {
      if (options.json) printJson(view);
      else for (const child of view.children) printText(lineOf(child, view));
      return;
    }
    const entries = rows.map((row) => entryOf(row, view.children));
    if (entries.length === 0)
      throw new UsageFailure(`${options.answers}: there are no results under the heading row.`);
    const saved = valueOf(await saveMarks(services, options.sheet, { entries }));
    if (options.json) printJson(saved);
    else printText(`${entries.length} results recorded.`);
  });
}

type Shown = { readonly id: string; readonly shownAs: string };

function lineOf(
  child: Shown & { readonly absent: boolean },
  view: { readonly marks: readonly { childId: string; rung: number; state: string | null; typed: string }[] },
): string {
  const cells = view.marks.filter(({ childId }) => childId === child.id).sort((a, b) => a.rung - b.rung);
  const told = cells.map(({ rung, state, typed }) => `${rung}:${typed || state}`).join('  ');
  return `${child.shownAs}${child.absent ? ' (away)' : ''}  ${told}`;
}

function entryOf({ row, cells }: ResultRow, children: readonly Shown[]): MarkEntry {
  const wanted = cells['child'] ?? '';
  const found = children.filter(
    ({ id, shownAs }) => id === wanted || shownAs.toLowerCase() === wanted.toLowerCase(),
  );
  const [child] = found;
  if (!child || found.length > 1)
    throw new UsageFailure(
      `row ${row}, child: ${found.length === 0 ? 'no child' : 'more than one child'} is shown as “${wanted}” on this board. Nothing was recorded.`,
    );
  const entry = MarkEntry.safeParse({
    childId: child.id,
    rung: Number(cells['rung']),
    state: cells['state'] ? cells['state'].toLowerCase() : null,
    typed: cells['answer'] ?? '',
  });
  if (!entry.success)
    throw new UsageFailure(`row ${row}, ${describeIssues(entry.error)}. Nothing was recorded.`);
  return entry.data;
}
