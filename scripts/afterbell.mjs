#!/usr/bin/env node
// The `afterbell` command: builds the program when there is no build yet, then hands over to it.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const built = new URL('../dist/cli/main.js', import.meta.url);
const stamp = new URL('../dist/.built', import.meta.url);
if (!existsSync(fileURLToPath(stamp))) {
  const { spawnSync } = await import('node:child_process');
  const { ensureDependencies } = await import('./setup/dependencies.mjs');
  ensureDependencies();
  const script = fileURLToPath(new URL('build.mjs', import.meta.url));
  // Build messages go to stderr: stdout belongs to the verb's own output.
  const { status } = spawnSync(process.execPath, [script], { stdio: ['ignore', 2, 2] });
  if (status !== 0) {
    console.error('Afterbell could not be built; the lines above say why. Run "npm run build" to try again.');
    process.exit(1);
  }
}
await import(built.href);
