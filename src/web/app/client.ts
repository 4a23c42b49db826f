// Calls to the server, typed by the contract. Nothing here leaves this computer: every address is relative.
// First, wherever this file is bundled: the contract's validators are built when it is loaded.
import './zod-setup.js';
import { type AnswerOf, type BodyOf, ENDPOINTS, type EndpointName } from '#api/endpoints.js';
import { Problem } from '#api/problem.js';

/** What the server refused, or why it could not be reached: `message` says what, `hint` how to mend. */
export class CallFailure extends Error {
  override readonly name = 'CallFailure';
  readonly code: string;
  readonly hint: string;

  constructor(problem: Problem) {
    super(problem.message);
    this.code = problem.code;
    this.hint = problem.hint;
  }
}

const UNREACHABLE: Problem = {
  code: 'unreachable',
  message: 'Afterbell does not answer.',
  hint: 'Check that it is still running on this computer, then try again.',
};

/** Calls an endpoint; `params` fill the :names of its path. Throws {@link CallFailure}. */
export async function call<N extends EndpointName>(
  name: N,
  params: Readonly<Record<string, string | number>>,
  body: BodyOf<N>,
): Promise<AnswerOf<N>> {
  const { method, path } = ENDPOINTS[name];
  const url = path.replace(/:(\w+)/g, (_, key: string) => encodeURIComponent(String(params[key] ?? '')));
  const response = await send(url, {
    method,
    ...(body === null ? {} : { body: JSON.stringify(body), headers: { 'Content-Type': 'application/json' } }),
  });
  return (await response.json()) as AnswerOf<N>;
}

/** Fetches with the server's problems turned into {@link CallFailure}. */
export async function send(url: string, init: RequestInit): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(url, init);
  } catch {
    throw new CallFailure(UNREACHABLE);
  }
  if (response.ok) return response;
  const problem = Problem.safeParse(await response.json().catch(() => null));
  throw new CallFailure(problem.success ? problem.data : UNREACHABLE);
}

/** Any thrown thing as the two sentences a screen shows. */
export function sentencesOf(error: unknown): { message: string; hint: string } {
  if (error instanceof CallFailure) return { message: error.message, hint: error.hint };
  return {
    message: 'Something went wrong on this page.',
    hint: 'Reload the page; nothing that was saved is lost.',
  };
}
