// Offering to open the page: a question at the terminal, so that no window pops up unasked.
import { spawn } from 'node:child_process';
import process from 'node:process';
import { createInterface } from 'node:readline';

/** Asks once, on a terminal only; Enter opens the page in the usual browser. */
export function offerPage(address: string): void {
  if (!process.stdin.isTTY || !process.stdout.isTTY) return;
  const lines = createInterface({ input: process.stdin, output: process.stdout });
  lines.on('SIGINT', () => process.kill(process.pid, 'SIGINT'));
  lines.question('Press Enter to open it in the browser. ', () => {
    lines.close();
    const [command, ...args] =
      process.platform === 'win32'
        ? ['cmd', '/c', 'start', '', address]
        : process.platform === 'darwin'
          ? ['open', address]
          : ['xdg-open', address];
    const opener = spawn(command as string, args, { stdio: 'ignore', detached: true });
    opener.on('error', () => process.stdout.write(`Open ${address} in a browser.\n`));
    opener.unref();
  });
}
