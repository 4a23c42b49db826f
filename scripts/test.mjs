// npm test: packages, tools, static checks, a build, and every test. With CI set, nothing may be skipped.
import process from 'node:process';
import { ensureDependencies } from './setup/dependencies.mjs';
import { bin, run, runSteps } from './setup/run.mjs';
import { ensureTools } from './setup/tools.mjs';

ensureDependencies();
const missing = ensureTools();
for (const tool of missing) {
  console.error(
    `Missing: ${tool.name}, so the tests of ${tool.use} are skipped. Mend: install ${tool.packages.join(', ')}.`,
  );
}
if (missing.length > 0 && process.env.CI) {
  console.error('CI is set, so nothing may be skipped: install the tools named above.');
  process.exit(1);
}
const node = process.execPath;
runSteps([
  ['Build', node, ['scripts/build.mjs']],
  ['Static checks', node, ['scripts/check.mjs']],
]);
process.exit(run(node, [bin('vitest', 'vitest.mjs'), 'run', ...process.argv.slice(2)]));
