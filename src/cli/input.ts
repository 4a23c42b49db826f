// Reading files that a user names ("-" is standard input), with one sentence for each way it can fail.
import { readFileSync, readSync } from 'node:fs';
import type { z } from 'zod';
import { describeIssues } from '#api/problem.js';
import { UsageFailure } from './failure.js';

/** The bytes of a file or of standard input. */
export function readBytes(path: string): Uint8Array {
  try {
    return path === '-' ? readStandardInput() : readFileSync(path);
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

const READ_BYTES = 65_536;
const WAIT_MS = 20;

/** Everything on standard input, however late it comes: a pipe that is not filled yet says EAGAIN instead of waiting. */
function readStandardInput(): Uint8Array {
  const parts: Uint8Array[] = [];
  const room = Buffer.alloc(READ_BYTES);
  for (;;) {
    try {
      const read = readSync(0, room);
      if (read === 0) return Buffer.concat(parts);
      parts.push(Uint8Array.from(room.subarray(0, read)));
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      // Windows ends a pipe that way.
      if (code === 'EOF') return Buffer.concat(parts);
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, WAIT_MS);
    }
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
