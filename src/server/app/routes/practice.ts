// Practice sheets of skills: made from the order alone, kept nowhere.
import type { Context } from 'hono';
import { PracticeOrder, type PrintPreview } from '#api/print.js';
import { describeIssues, type Result } from '#api/problem.js';
import { localeOf } from '#engine/numbers/locale.js';
import { practiceQuestions } from '#engine/questions/practice.js';
import { skillById } from '#engine/skills/map.js';
import type { PrintRequest } from '#print/request.js';
import { readSettings } from '../desk/settings.js';
import { answerProblem, problem, refuse } from '../problems.js';
import type { Services } from '../services.js';

/** Answers with the PDF itself. */
export async function printPractice(context: Context, services: Services): Promise<Response> {
  const order = PracticeOrder.safeParse(await context.req.json().catch(() => null));
  if (!order.success)
    return answerProblem(
      context,
      problem('request.form', describeIssues(order.error), 'Choose again what to print.'),
    );
  const request = await practiceRequest(services, order.data);
  if (!request.ok) return answerProblem(context, request.error);
  const made = await services.printing.print(request.value);
  if (!made.ok) return answerProblem(context, made.error);
  return context.body(made.value.pdf as Uint8Array<ArrayBuffer>, 200, {
    'Content-Type': 'application/pdf',
    'Content-Disposition': 'inline; filename="afterbell-practice.pdf"',
    'X-Page-Count': String(made.value.pages),
  });
}

/** One copy of the sheet and its key as SVG pages, from the same typesetting as the PDF. */
export async function previewPractice(
  services: Services,
  order: PracticeOrder,
): Promise<Result<PrintPreview>> {
  const request = await practiceRequest(services, { ...order, copies: 1 });
  if (!request.ok) return request;
  const made = await services.printing.preview(request.value);
  if (!made.ok) return made;
  const { pages, warnings } = made.value;
  return {
    ok: true,
    value: { pages: [...pages], pageCount: pages.length, warnings: [...warnings] },
  };
}

async function practiceRequest(services: Services, order: PracticeOrder): Promise<Result<PrintRequest>> {
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  const schoolClass = await services.store.classes.get(order.classId);
  if (!schoolClass.ok) return schoolClass;
  const skills = [...new Set(order.skills)].flatMap((id) => skillById(id) ?? []);
  if (skills.length < new Set(order.skills).size)
    return refuse(
      'print.skill',
      'One of the chosen skills is not in this version of Afterbell.',
      'Take it off the sheet and choose another.',
    );
  const { locale } = settings.value;
  return {
    ok: true,
    value: {
      document: 'practice',
      boards: [],
      questions: practiceQuestions(skills, order.questions, order.seed, localeOf(locale)),
      paper: order.paper,
      options: {
        locale,
        className: schoolClass.value.name,
        about: skills.map(({ title }) => title).join('  \u00b7  '),
        copies: order.copies,
        withKey: order.withKey,
        ...(order.largePrint ? { largePrint: true } : {}),
      },
    },
  };
}
