// Timed practice on paper: a day's sheets with the children's names, keys, records and the list of copies.
import type { Context } from 'hono';
import { describeIssues, type Result } from '#api/problem.js';
import { TimedPrintOrder } from '#api/timed-room.js';
import type { Timed } from '#engine/activities/timed/timed.js';
import type { TimedPrintRequest, TimedSheetRequest } from '#print/timed-request.js';
import { readSettings } from '../desk/settings.js';
import { readRoom } from '../desk/timed/room.js';
import { answerProblem, problem, refuse } from '../problems.js';
import type { Services } from '../services.js';

/** Answers with the PDF itself. */
export async function printTimedDay(context: Context, services: Services): Promise<Response> {
  const order = TimedPrintOrder.safeParse(await context.req.json().catch(() => null));
  if (!order.success)
    return answerProblem(
      context,
      problem('request.form', describeIssues(order.error), 'Choose again what to print.'),
    );
  const request = await timedDayRequest(services, order.data);
  if (!request.ok) return answerProblem(context, request.error);
  const made = await services.printing.printTimed(request.value);
  if (!made.ok) return answerProblem(context, made.error);
  return context.body(made.value.pdf as Uint8Array<ArrayBuffer>, 200, {
    'Content-Type': 'application/pdf',
    'Content-Disposition': `inline; filename="afterbell-timed-${order.data.document}-${order.data.date}.pdf"`,
    'X-Page-Count': String(made.value.pages),
  });
}

/** What to print of a class's practice on a day; refuses a day without sheets. */
export async function timedDayRequest(
  services: Services,
  { classId, date, document, largePrint }: TimedPrintOrder,
): Promise<Result<TimedPrintRequest>> {
  const room = await readRoom(services, { classId, date });
  if (!room.ok) return room;
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  const schoolClass = await services.store.classes.get(classId);
  if (!schoolClass.ok) return schoolClass;
  const levels: Timed[] = [];
  const sheets: TimedSheetRequest[] = [];
  for (const { shownAs, sheets: own } of room.value.children) {
    const sheet = own.find((one) => one.date === date);
    if (!sheet) continue;
    const key = JSON.stringify(sheet.content);
    let level = levels.findIndex((one) => JSON.stringify(one) === key);
    if (level < 0) level = levels.push(sheet.content) - 1;
    sheets.push({ level, form: 0, name: shownAs, id: sheet.id, redo: sheet.redo });
  }
  if (sheets.length === 0)
    return refuse('timed.no-sheets', 'No sheets are handed out for this day yet.', 'Hand them out first.');
  const { locale, paper } = settings.value;
  return {
    ok: true,
    value: {
      document,
      levels,
      sheets,
      paper,
      options: {
        locale,
        className: schoolClass.value.name,
        date,
        ...(largePrint ? { largePrint: true } : {}),
      },
    },
  };
}
