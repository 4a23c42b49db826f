// Installs the packages of package-lock.json when they are missing or older than the lock file.
import { existsSync, statSync } from 'node:fs';
import process from 'node:process';
import { ROOT, run } from './run.mjs';

/** Makes sure that node_modules matches the lock file; ends the process with one sentence when it cannot. */
export function ensureDependencies() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    console.error(
      `Afterbell needs Node 20.19 or newer; this is ${process.versions.node}. Install a newer Node from your usual source.`,
    );
    process.exit(1);
  }
  const stamp = `${ROOT}node_modules/.package-lock.json`;
  if (existsSync(stamp) && statSync(stamp).mtimeMs >= statSync(`${ROOT}package-lock.json`).mtimeMs) return;
  console.error('Installing packages (once, about a minute)…');
  const status = run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
  if (status !== 0) {
    console.error(
      'The packages could not be installed. Check the network connection and run the command again.',
    );
    process.exit(1);
  }
}
