// The one shape in which anything that went wrong reaches a screen or a terminal.
import { z } from 'zod';

/** What went wrong, where, and how to mend it: one clear sentence each; `code` is stable and dotted. */
export const Problem = z.object({
  code: z.string(),
  message: z.string(),
  hint: z.string(),
});
export type Problem = z.infer<typeof Problem>;

export type Result<T> = { ok: true; value: T } | { ok: false; error: Problem };

/** The first complaint of a schema as one sentence that names the place: "rungs.3.question.text: expected text." */
export function describeIssues(error: z.ZodError): string {
  const issue = error.issues[0];
  if (!issue) return 'The input is not in the expected form.';
  const place = issue.path.length > 0 ? `${issue.path.join('.')}: ` : '';
  return `${place}${issue.message.charAt(0).toLowerCase()}${issue.message.slice(1)}`;
}
