// A packed empty database, made once at build time: a first opening then takes a second instead of several.
import { readFileSync } from 'node:fs';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { EmbeddedClient } from './client.js';
import { writeDurably } from '../durable-write.js';

/** Depends on the pinned version of the database, which must be changed here with package.json. */
const TEMPLATE_FILE = 'template-0.5.16.tar.gz';

/** Where the build puts it; the same place seen from the sources and from dist/. */
function templatePath(): string {
  return fileURLToPath(new URL(`../../../dist/store/${TEMPLATE_FILE}`, import.meta.url));
}

/** The template, or null where none has been built. */
export function readTemplate(): Uint8Array | null {
  try {
    return readFileSync(templatePath());
  } catch {
    return null;
  }
}

/** Makes the template anew and returns its path. */
export async function makeTemplate(): Promise<string> {
  const scratch = mkdtempSync(join(tmpdir(), 'afterbell-template-'));
  try {
    const client = new EmbeddedClient({ folder: join(scratch, 'database'), template: null, withSync: false });
    await client.start();
    const packed = await client.dump();
    await client.close();
    writeDurably(templatePath(), packed);
    return templatePath();
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
