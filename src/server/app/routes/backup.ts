// Everything in one file, and back.
import type { Context } from 'hono';
import { answerProblem, problem } from '../problems.js';
import type { Services } from '../services.js';

/** Answers with a backup file; the body may be `{ "passphrase": "…" }`. */
export async function downloadBackup(context: Context, services: Services): Promise<Response> {
  const body: unknown = await context.req.json().catch(() => ({}));
  const given = (body as { passphrase?: unknown } | null)?.passphrase;
  const passphrase = typeof given === 'string' && given !== '' ? given : null;
  const taken = await services.backups.take(passphrase);
  if (!taken.ok) return answerProblem(context, taken.error);
  return context.body(taken.value as Uint8Array<ArrayBuffer>, 200, {
    'Content-Type': 'application/octet-stream',
    'Content-Disposition': `attachment; filename="afterbell-${services.clock().today}.backup"`,
  });
}

/** Takes multipart form data: `file`, `passphrase` and `replace` ("yes"). Checks the file before anything is changed. */
export async function restoreBackup(context: Context, services: Services): Promise<Response> {
  const form = await context.req.parseBody().catch(() => null);
  const file = form?.['file'];
  if (!(file instanceof Blob)) {
    return answerProblem(
      context,
      problem('backup.no-file', 'No backup file arrived.', 'Choose the file again.'),
    );
  }
  const passphrase = form?.['passphrase'];
  const put = await services.backups.putBack(
    new Uint8Array(await file.arrayBuffer()),
    typeof passphrase === 'string' && passphrase !== '' ? passphrase : null,
    form?.['replace'] === 'yes',
  );
  return put.ok ? context.json({}) : answerProblem(context, put.error);
}
