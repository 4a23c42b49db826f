// Decides whether dist/ is older than what it is made from.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './run.mjs';

const STAMP = join(ROOT, 'dist', '.built');

function newest(path) {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  let latest = 0;
  for (const entry of readdirSync(path)) latest = Math.max(latest, newest(join(path, entry)));
  return latest;
}

/** True when a build has finished and nothing it reads has changed since. */
export function isBuilt() {
  if (!existsSync(STAMP)) return false;
  const sources = ['src', 'package.json', 'package-lock.json', 'vite.config.ts', 'tsconfig.base.json'];
  const built = statSync(STAMP).mtimeMs;
  return sources.every((name) => newest(join(ROOT, name)) <= built);
}
