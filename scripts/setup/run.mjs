// Running other programs from our scripts: output goes straight to the terminal, failure ends with one sentence.
import { spawnSync } from 'node:child_process';
import process from 'node:process';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Runs a program in the repository root; returns its exit status. On Windows npm is a .cmd file and needs a shell. */
export function run(command, args, options = {}) {
  const isNpm = command === 'npm';
  const result = spawnSync(command, args, {
    cwd: ROOT,
    stdio: 'inherit',
    shell: isNpm && process.platform === 'win32',
    ...options,
  });
  if (result.error) {
    console.error(`Could not run ${command}: ${result.error.message}.`);
    return 1;
  }
  return result.status ?? 1;
}

/** Runs steps [title, command, args] in order and ends the process at the first that fails. */
export function runSteps(steps) {
  for (const [title, command, args] of steps) {
    console.error(`\n— ${title}`);
    const status = run(command, args);
    if (status !== 0) {
      console.error(`\n${title} failed (exit status ${status}).`);
      process.exit(status);
    }
  }
}

/** The path of a program that a package of ours brings, to be run with this Node. */
export function bin(packageName, file) {
  return fileURLToPath(new URL(`../../node_modules/${packageName}/${file}`, import.meta.url));
}
