// Folders that a test may fill and that are gone afterwards.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** An empty folder with blanks and an accent in its path, removed when the running test ends. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'afterbell té st '));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
