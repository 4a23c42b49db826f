// The rota of one kind of set as a page for the wall.
import type { Context } from 'hono';
import { rotaSheet } from '../desk/rota-sheet.js';
import { readSettings } from '../desk/settings.js';
import { answerProblem } from '../problems.js';
import type { Services } from '../services.js';

/** Answers with the PDF of the rota that the address names. */
export async function rotaPaper(context: Context, services: Services): Promise<Response> {
  const classId = context.req.param('classId') ?? '';
  const settings = await readSettings(services);
  if (!settings.ok) return answerProblem(context, settings.error);
  const schoolClass = await services.store.classes.get(classId);
  if (!schoolClass.ok) return answerProblem(context, schoolClass.error);
  const rota = await rotaSheet(services, { classId, kind: context.req.param('kind') ?? '' });
  if (!rota.ok) return answerProblem(context, rota.error);
  const date = services.clock().today;
  const made = await services.printing.print({
    document: 'rota',
    boards: [],
    rota: rota.value,
    paper: settings.value.paper,
    options: { locale: settings.value.locale, className: schoolClass.value.name, date },
  });
  if (!made.ok) return answerProblem(context, made.error);
  return context.body(made.value.pdf as Uint8Array<ArrayBuffer>, 200, {
    'Content-Type': 'application/pdf',
    'Content-Disposition': `inline; filename="afterbell-rota-${date}.pdf"`,
    'X-Page-Count': String(made.value.pages),
  });
}
