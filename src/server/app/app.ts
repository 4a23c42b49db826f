// The whole server as one function from Request to Response. It knows no runtime: store, clock and printer are handed in.
import { DEFAULT_LIMITS, type Limits } from './limits.js';
import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { ENDPOINTS, type EndpointName, FILE_PATHS } from '#api/endpoints.js';
import { describeIssues } from '#api/problem.js';
import type { Services } from './services.js';
import { answerProblem, problem } from './problems.js';
import { onlyFromHere } from './local-only.js';
import { HANDLERS } from './handlers.js';
import { printPractice } from './routes/practice.js';
import { printKit } from './routes/kits.js';
import { printPdf } from './routes/print.js';
import { printTimedDay } from './routes/timed.js';
import { rotaPaper } from './routes/rota-paper.js';
import { downloadBackup, restoreBackup } from './routes/backup.js';

/** The app. `services` are its only links to the outside; `limits` bound what one request may carry. */
export function createApp(services: Services, limits: Limits = DEFAULT_LIMITS): Hono {
  const app = new Hono();
  app.use('*', onlyFromHere(services.allowedHosts));
  app.use('/api/*', async (context, next) => {
    await next();
    context.header('Cache-Control', 'no-store');
  });
  const tooLarge = (most: number) =>
    bodyLimit({
      maxSize: most,
      onError: (context) =>
        answerProblem(
          context,
          problem(
            'request.size',
            'That is more than Afterbell takes at once.',
            'Send less: one class list, or one backup file.',
          ),
        ),
    });
  app.use(FILE_PATHS.restore, tooLarge(limits.backupBytes));
  app.use('/api/*', async (context, next) =>
    context.req.path === FILE_PATHS.restore ? next() : tooLarge(limits.requestBytes)(context, next),
  );
  for (const name of Object.keys(ENDPOINTS) as EndpointName[]) register(app, name, services);
  app.post(FILE_PATHS.kits, (context) => printKit(context, services));
  app.post(FILE_PATHS.print, (context) => printPdf(context, services));
  app.post(FILE_PATHS.timed, (context) => printTimedDay(context, services));
  app.post(FILE_PATHS.practice, (context) => printPractice(context, services));
  app.get(FILE_PATHS.rotaPaper, (context) => rotaPaper(context, services));
  app.post(FILE_PATHS.backup, (context) => downloadBackup(context, services));
  app.post(FILE_PATHS.restore, (context) => restoreBackup(context, services));
  app.all('/api/*', (context) =>
    answerProblem(context, problem('request.path', 'There is nothing at this address.', 'Reload the page.')),
  );
  app.onError((error, context) => {
    services.log(error);
    return answerProblem(
      context,
      problem(
        'internal',
        'Something went wrong inside Afterbell; nothing was changed.',
        'Try again; if it happens again, restart Afterbell.',
      ),
    );
  });
  return app;
}

/** Registers one endpoint of the contract: parses the body by its schema, calls its handler, answers JSON or a problem. */
function register(app: Hono, name: EndpointName, services: Services): void {
  const { method, path, body: schema } = ENDPOINTS[name];
  const handle = HANDLERS[name] as (
    services: Services,
    params: Record<string, string>,
    body: unknown,
  ) => Promise<
    { ok: true; value: unknown } | { ok: false; error: { code: string; message: string; hint: string } }
  >;
  app.on(method, path, async (context) => {
    let body: unknown = null;
    if (schema) {
      let json: unknown;
      try {
        json = await context.req.json();
      } catch {
        return answerProblem(
          context,
          problem('request.json', 'The request is not valid JSON.', 'Reload the page and try again.'),
        );
      }
      const parsed = schema.safeParse(json);
      if (!parsed.success) {
        return answerProblem(
          context,
          problem('request.form', describeIssues(parsed.error), 'Mend that part and send it again.'),
        );
      }
      body = parsed.data;
    }
    const result = await handle(services, context.req.param() as Record<string, string>, body);
    return result.ok ? context.json(result.value as object) : answerProblem(context, result.error);
  });
}
