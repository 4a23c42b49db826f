// How a command ends when it cannot do what was asked: one sentence on stderr and an exit status, never a stack trace.

export const EXIT_USAGE = 2;
export const EXIT_INTERNAL = 1;

/** Bad usage or input: what, where, how to mend. Ends the command with status 2. */
export class UsageFailure extends Error {
  override readonly name = 'UsageFailure';
}

/** The value of a result, or the end of the command with the problem as its one sentence. */
export function valueOf<T>(
  result: { ok: true; value: T } | { ok: false; error: { message: string; hint: string } },
): T {
  if (result.ok) return result.value;
  throw new UsageFailure(sentenceOf(result.error));
}

/** A problem and its mend on one line. */
export function sentenceOf(problem: { readonly message: string; readonly hint: string }): string {
  return `${problem.message} ${problem.hint}`.trim();
}
