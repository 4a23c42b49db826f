// npm run build: compiles every layer, copies what is not code, bundles the web app. Leaves dist/.built when all is done.
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { bin, ROOT, runSteps } from './setup/run.mjs';

rmSync(join(ROOT, 'dist', '.built'), { force: true });
runSteps([['Compiling', process.execPath, [bin('typescript', 'bin/tsc'), '-b', 'src/cli', 'src/web']]]);
runSteps([['Packing an empty data folder', process.execPath, [join(ROOT, 'scripts', 'make-template.mjs')]]]);
mkdirSync(join(ROOT, 'dist', 'print'), { recursive: true });
cpSync(join(ROOT, 'src', 'print', 'templates'), join(ROOT, 'dist', 'print', 'templates'), {
  recursive: true,
});
runSteps([
  ['Bundling the web app', process.execPath, [bin('vite', 'bin/vite.js'), 'build', '--logLevel', 'warn']],
]);
writeFileSync(join(ROOT, 'dist', '.built'), '');
