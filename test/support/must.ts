// Results in tests: the value, or a failure that shows the refusal.

type AnyResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: { readonly code: string; readonly message: string } };

/** The value of a result that must be a success. */
export async function must<T>(result: Promise<AnyResult<T>> | AnyResult<T>): Promise<T> {
  const settled = await result;
  if (!settled.ok) throw new Error(`unexpected refusal ${settled.error.code}: ${settled.error.message}`);
  return settled.value;
}

/** The code of a result that must be a refusal; checks that it speaks in one sentence. */
export async function refusalOf(result: Promise<AnyResult<unknown>> | AnyResult<unknown>): Promise<string> {
  const settled = await result;
  if (settled.ok) throw new Error('unexpected success');
  const { code, message } = settled.error;
  if (!/^[A-Z“].*[.!]$/s.test(message) || message.includes('\n'))
    throw new Error(`not one sentence: ${message}`);
  return code;
}
