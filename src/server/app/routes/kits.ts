// Paper for composed activities: a kit order in, a PDF out; and the same pages as pictures for the preview.
import type { Context } from 'hono';
import { KitOrder } from '#api/kits.js';
import type { PrintPreview } from '#api/print.js';
import { describeIssues, type Result } from '#api/problem.js';
import type { KitRequest } from '#print/kit-request.js';
import { toScreen } from '../desk/classes.js';
import { readSettings } from '../desk/settings.js';
import { answerProblem, problem } from '../problems.js';
import type { Services } from '../services.js';

/** Answers with the PDF itself. */
export async function printKit(context: Context, services: Services): Promise<Response> {
  const order = KitOrder.safeParse(await context.req.json().catch(() => null));
  if (!order.success)
    return answerProblem(
      context,
      problem('request.form', describeIssues(order.error), 'Make the sets again, then print them.'),
    );
  const request = await kitRequest(services, order.data);
  if (!request.ok) return answerProblem(context, request.error);
  const made = await services.printing.printKit(request.value);
  if (!made.ok) return answerProblem(context, made.error);
  return context.body(made.value.pdf as Uint8Array<ArrayBuffer>, 200, {
    'Content-Type': 'application/pdf',
    'Content-Disposition': `inline; filename="afterbell-${request.value.activity}-${order.data.document}.pdf"`,
    'X-Page-Count': String(made.value.pages),
  });
}

/** The pages of an order as SVG, from the same typesetting as the PDF. */
export async function previewKit(services: Services, order: KitOrder): Promise<Result<PrintPreview>> {
  const request = await kitRequest(services, order);
  if (!request.ok) return request;
  const made = await services.printing.previewKit(request.value);
  if (!made.ok) return made;
  const { pages, warnings, isCut } = made.value;
  return { ok: true, value: { pages: [...pages], pageCount: pages.length, warnings: [...warnings], isCut } };
}

/** The order in the print room's words, with the class's name and, where wished, its children's. */
async function kitRequest(services: Services, order: KitOrder): Promise<Result<KitRequest>> {
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  const schoolClass = await services.store.classes.get(order.classId);
  if (!schoolClass.ok) return schoolClass;
  const children = await services.store.children.list(order.classId);
  if (!children.ok) return children;
  const { sets, document, paper, backs, cutting, lowInk, largePrint } = order;
  const activity = sets[0]?.activity.kind ?? 'chain';
  return {
    ok: true,
    // The schema has seen to it that all sets are of this activity.
    value: {
      activity,
      sets,
      document,
      paper,
      options: {
        locale: settings.value.locale,
        className: schoolClass.value.name,
        backs,
        lowInk,
        largePrint,
        ...(activity === 'chain' ? { cutting } : {}),
        ...(order.names ? { names: toScreen(children.value).map(({ shownAs }) => shownAs) } : {}),
      },
    } as KitRequest,
  };
}
