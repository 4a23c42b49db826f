// npm run check: types, lint, format, unused code, and the rules of the architecture. Nothing lands without it.
import process from 'node:process';
import { ensureDependencies } from './setup/dependencies.mjs';
import { bin, runSteps } from './setup/run.mjs';

ensureDependencies();
const node = process.execPath;
runSteps([
  ['Types', node, [bin('typescript', 'bin/tsc'), '-b']],
  ['Lint', node, [bin('oxlint', 'bin/oxlint'), '--deny-warnings']],
  ['Format', node, [bin('@biomejs/biome', 'bin/biome'), 'format', '--log-level=warn']],
  ['Unused code', node, [bin('knip', 'bin/knip.js'), '--no-progress']],
  ['Architecture', node, [bin('vitest', 'vitest.mjs'), 'run', 'test/architecture', '--reporter=dot']],
]);
