// What a command prints: results to stdout, everything else to stderr.
import { writeSync } from 'node:fs';
import process from 'node:process';

/** One JSON document on stdout. */
export function printJson(value: unknown): void {
  printText(JSON.stringify(value, null, 2));
}

/** Text on stdout, with a newline after it; written whole even into a pipe that reads slowly. */
export function printText(text: string): void {
  const bytes = Buffer.from(`${text}\n`, 'utf8');
  let sent = 0;
  while (sent < bytes.length) {
    try {
      sent += writeSync(1, bytes, sent);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      // The reader is slow (EAGAIN) or has had enough (EPIPE, as with `| head`).
      if (code === 'EPIPE') process.exit(0);
      if (code !== 'EAGAIN') throw error;
    }
  }
}

/** A line for the person at the terminal. */
export function note(text: string): void {
  process.stderr.write(`${text}\n`);
}
