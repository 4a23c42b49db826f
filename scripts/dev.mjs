// npm run dev: the compiler, the server and the web app, each starting again when its files change.
import { spawn } from 'node:child_process';
import process from 'node:process';
import { ensureDependencies } from './setup/dependencies.mjs';
import { bin, ROOT, run } from './setup/run.mjs';

ensureDependencies();
const node = process.execPath;
if (run(node, ['scripts/build.mjs']) !== 0) process.exit(1);
const children = [
  spawn(node, [bin('typescript', 'bin/tsc'), '-b', '--watch', '--preserveWatchOutput'], {
    cwd: ROOT,
    stdio: 'inherit',
  }),
  spawn(
    node,
    ['--watch-path=dist/server', '--watch-path=dist/engine', 'dist/cli/main.js', 'serve', '--no-open'],
    { cwd: ROOT, stdio: 'inherit' },
  ),
  spawn(node, [bin('vite', 'bin/vite.js')], { cwd: ROOT, stdio: 'inherit' }),
];
process.on('SIGINT', () => {
  for (const child of children) child.kill();
});
