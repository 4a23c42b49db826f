// Problem -> HTTP status: the one place that knows both.
import type { Context } from 'hono';
import type { Problem } from '#api/problem.js';

const STATUS_BY_CODE: readonly (readonly [RegExp, 403 | 404 | 409 | 413 | 500 | 503 | 507])[] = [
  [/^(internal|disk\.failed)$/, 500],
  [/^(not\.found|child\.missing|skill\.unknown|request\.path)$/, 404],
  [
    /^(conflict|rota(tion)?\.[\w-]+|timed\.no(body|-sheets)|board\.marked|board\.swap|nothing\.to-(undo|redo)|backup\.would-overwrite)$/,
    409,
  ],
  [/^request\.size$/, 413],
  [/^request\.origin$/, 403],
  [/^disk\.full$/, 507],
  [/^(database|folder|store|schema)\./, 503],
];

export function problem(code: string, message: string, hint: string): Problem {
  return { code, message, hint };
}

/** A failed result, for handlers. */
export function refuse(code: string, message: string, hint: string): { ok: false; error: Problem } {
  return { ok: false, error: problem(code, message, hint) };
}

/** Answers with the problem as JSON, under the status that its code stands for (400 unless known). */
export function answerProblem(context: Context, error: Problem): Response {
  const status = STATUS_BY_CODE.find(([pattern]) => pattern.test(error.code))?.[1] ?? 400;
  return context.json({ code: error.code, message: error.message, hint: error.hint }, status);
}
