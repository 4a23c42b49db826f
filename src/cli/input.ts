// Reading files that a user names ("-" is standard input), with one sentence for each way it can fail.
import { readFileSync } from 'node:fs';
import type { z } from 'zod';
import { describeIssues } from '#api/problem.js';
import { UsageFailure } from './failure.js';

/** The bytes of a file or of standard input. */
export function readBytes(path: string): Uint8Array {
  try {
    return readFileSync(path === '-' ? 0 : path);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT')
      throw new UsageFailure(`${path}: there is no such file. Check the name and the folder.`);
    if (code === 'EISDIR') throw new UsageFailure(`${path} is a folder. Name a file in it.`);
    throw new UsageFailure(
      `${path} cannot be read (${code ?? 'unknown reason'}). Check that you may open it.`,
    );
  }
}

/** The text of a file; refuses what is not UTF-8. */
export function readText(path: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readBytes(path));
  } catch (error) {
    if (error instanceof UsageFailure) throw error;
    throw new UsageFailure(`${path} is not UTF-8 text. Save it as UTF-8 and try again.`);
  }
}

/** A JSON file in the form of `schema`. */
export function readJson<T>(path: string, schema: z.ZodType<T>): T {
  const where = path === '-' ? 'standard input' : path;
  let json: unknown;
  try {
    json = JSON.parse(readText(path));
  } catch (error) {
    if (error instanceof UsageFailure) throw error;
    throw new UsageFailure(
      `${where} is not JSON (${(error as Error).message}). Give it what "make --json" printed.`,
    );
  }
  const parsed = schema.safeParse(json);
  if (!parsed.success)
    throw new UsageFailure(`${where}: ${describeIssues(parsed.error)}. Mend that part and try again.`);
  return parsed.data;
}
