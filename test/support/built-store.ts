// The compiled store, for tests that run it in processes of their own.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

function newest(folder: string): number {
  const times = readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /(?<!\.test)\.[tj]s$/.test(entry.name))
    .map((entry) => statSync(join(entry.parentPath, entry.name)).mtimeMs);
  return Math.max(0, ...times);
}

/** Compiles the store when its sources are newer than what is compiled; `npm test` has compiled everything before. */
export function ensureBuiltStore(): void {
  const built = join(ROOT, 'dist', 'store');
  const entry = join(built, 'open-store.js');
  if (existsSync(entry) && newest(built) >= newest(join(ROOT, 'src', 'store'))) return;
  const compiler = join(ROOT, 'node_modules', 'typescript', 'bin', 'tsc');
  const { stdout } = spawnSync(process.execPath, [compiler, '-b', 'src/store'], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  // Errors in another layer do not keep the store from being compiled.
  if (!existsSync(entry) || stdout.includes('src/store/'))
    throw new Error(`The store does not compile:\n${stdout}`);
}

/** Address of a compiled module, to be imported by a child process. */
export function builtModule(path: string): string {
  return new URL(`../../dist/store/${path}`, import.meta.url).href;
}
