// The rota of one kind of set as a page for the wall.
import type { Context } from 'hono';
import { rotaRequest } from '../desk/rota-sheet.js';
import { answerProblem } from '../problems.js';
import type { Services } from '../services.js';

/** Answers with the PDF of the rota that the address names. */
export async function rotaPaper(context: Context, services: Services): Promise<Response> {
  const request = await rotaRequest(services, {
    classId: context.req.param('classId') ?? '',
    kind: context.req.param('kind') ?? '',
  });
  if (!request.ok) return answerProblem(context, request.error);
  const made = await services.printing.print(request.value);
  if (!made.ok) return answerProblem(context, made.error);
  return context.body(made.value.pdf as Uint8Array<ArrayBuffer>, 200, {
    'Content-Type': 'application/pdf',
    'Content-Disposition': `inline; filename="afterbell-rota-${request.value.options.date ?? 'today'}.pdf"`,
    'X-Page-Count': String(made.value.pages),
  });
}
