// npm start: everything from a fresh clone to a running app.
import process from 'node:process';
import { ensureDependencies } from './setup/dependencies.mjs';

ensureDependencies();
const { isBuilt } = await import('./setup/freshness.mjs');
if (!isBuilt()) {
  console.error('Building Afterbell (once, about half a minute)…');
  await import('./build.mjs');
}
process.argv = [process.argv[0], 'afterbell', 'serve', ...process.argv.slice(2)];
await import('../dist/cli/main.js');
