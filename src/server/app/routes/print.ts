// Paper: a print order in, a PDF out; and the same pages as pictures for the preview.
import type { Context } from 'hono';
import type { Child } from '#api/class.js';
import { PrintOrder, type PrintPreview } from '#api/print.js';
import { describeIssues, type Result } from '#api/problem.js';
import { yearName } from '#engine/curriculum/years.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { PrintRequest, SheetGroup } from '#print/request.js';
import type { SchoolClass, Sheet } from '#store/records.js';
import { toScreen } from '../desk/classes.js';
import { readSettings } from '../desk/settings.js';
import { groupOf } from '../desk/sheets.js';
import { answerProblem, problem } from '../problems.js';
import type { Services } from '../services.js';

/** Answers with the PDF itself. */
export async function printPdf(context: Context, services: Services): Promise<Response> {
  const order = PrintOrder.safeParse(await context.req.json().catch(() => null));
  if (!order.success)
    return answerProblem(
      context,
      problem('request.form', describeIssues(order.error), 'Choose again what to print.'),
    );
  const request = await printRequest(services, order.data, 'issue');
  if (!request.ok) return answerProblem(context, request.error);
  const made = await services.printing.print(request.value);
  if (!made.ok) return answerProblem(context, made.error);
  return context.body(made.value.pdf as Uint8Array<ArrayBuffer>, 200, {
    'Content-Type': 'application/pdf',
    'Content-Disposition': `inline; filename="afterbell-${order.data.document}-${request.value.options.date ?? 'board'}.pdf"`,
    'X-Page-Count': String(made.value.pages),
  });
}

/** The pages of an order as SVG, from the same typesetting as the PDF. Gives out no slip ids. */
export async function previewPrint(services: Services, order: PrintOrder): Promise<Result<PrintPreview>> {
  const request = await printRequest(services, order, 'sample');
  if (!request.ok) return request;
  const made = await services.printing.preview(request.value);
  if (!made.ok) return made;
  return {
    ok: true,
    value: {
      pages: [...made.value.pages],
      pageCount: made.value.pages.length,
      isCut: made.value.isCut,
      warnings: [...made.value.warnings],
    },
  };
}

/** The order in the print room's words: slips get ids that lead back to exactly these questions. */
async function printRequest(
  services: Services,
  order: PrintOrder,
  ids: 'issue' | 'sample',
): Promise<Result<PrintRequest>> {
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  const sheets: Sheet[] = [];
  for (const id of order.sheetIds) {
    const sheet = await services.store.sheets.get(id);
    if (!sheet.ok) return sheet;
    sheets.push(sheet.value);
  }
  const first = sheets[0];
  if (!first)
    return { ok: false, error: problem('print.nothing', 'No board was chosen.', 'Choose a board to print.') };
  const schoolClass = await services.store.classes.get(first.classId);
  if (!schoolClass.ok) return schoolClass;
  const children = await services.store.children.list(first.classId);
  if (!children.ok) return children;
  if (sheets.some(({ classId }) => classId !== first.classId)) {
    return {
      ok: false,
      error: problem(
        'print.classes',
        'These boards belong to several classes.',
        'Print one class at a time.',
      ),
    };
  }
  const groups = sheets.map((sheet) => groupOf(sheet, schoolClass.value.years));
  // A child writes on the slip of one board: the one for its own year where there is one, else the one for the class.
  const boardOf = (year: number) => (groups.includes(year) ? groups.indexOf(year) : groups.indexOf('class'));
  const shown = toScreen(children.value);
  const wantsSlips = order.document === 'slips' || order.document === 'kit';
  const slips: { id: string; name?: string; board: number }[] = [];
  if (wantsSlips) {
    for (const [at, sheet] of sheets.entries()) {
      const mine = shown.filter(({ year }) => boardOf(year) === at);
      const issued =
        ids === 'issue'
          ? await services.store.slips.issue(
              sheet.id,
              mine.map(({ id }) => id),
            )
          : null;
      if (issued && !issued.ok) return issued;
      for (const [index, child] of mine.entries()) {
        const id = issued?.value[index]?.id ?? 'SAMPLE';
        slips.push({ id, board: at, ...(order.names ? { name: child.shownAs } : {}) });
      }
    }
  }
  return {
    ok: true,
    value: {
      document: order.document,
      boards: sheets.map((sheet) => sheet.content),
      paper: order.paper,
      options: {
        locale: settings.value.locale,
        className: schoolClass.value.name,
        minutes: Math.min(15, Math.max(5, settings.value.minutes)),
        perPage: order.perPage,
        ...(first.date === null ? {} : { date: first.date }),
        ...(slips.length > 0 ? { slips } : {}),
        ...(order.document === 'sheet' || order.document === 'kit'
          ? { groups: groupsOf(schoolClass.value, shown, settings.value.locale, order.names) }
          : {}),
        ...(order.tiled ? { tiled: true } : {}),
        ...(order.lowInk ? { lowInk: true } : {}),
        ...(order.largePrint ? { largePrint: true } : {}),
      },
    },
  };
}

/** One sheet for the children of each year, or one for the class; names stand on it only where the teacher wants them. */
function groupsOf(
  schoolClass: SchoolClass,
  children: readonly Child[],
  locale: LocaleId,
  withNames: boolean,
): SheetGroup[] {
  const group = (title: string, members: readonly Child[]) => ({
    title,
    names: withNames ? members.map(({ shownAs }) => shownAs) : [],
  });
  const groups = schoolClass.years.map((year) =>
    group(
      yearName(year, locale),
      children.filter((child) => child.year === year),
    ),
  );
  return groups.length > 1 ? groups : [group(schoolClass.name, children)];
}
