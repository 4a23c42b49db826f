// Listening: the app on this computer, from environment to a printed address, until a signal ends it.
import type { Server } from 'node:http';
import process from 'node:process';
import { serve } from '@hono/node-server';
import type { Problem } from '#api/problem.js';
import { createApp } from '#server/app/app.js';
import { readEnvironment } from './environment.js';
import { openServices } from './open-services.js';
import { offerPage } from './offer-page.js';
import { serveFiles } from './static-files.js';

export interface Running {
  readonly address: string;
  /** Resolves when the server has stopped and the data are let go. */
  readonly closed: Promise<void>;
  stop(): void;
}

type ServeResult = { ok: true; value: Running } | { ok: false; error: Problem };

/** Opens the data, listens, prints the address. */
export async function serveApp(
  variables: NodeJS.ProcessEnv,
  options: { offerToOpen: boolean },
): Promise<ServeResult> {
  const environment = readEnvironment(variables);
  if (!environment.ok) return environment;
  const { host, port } = environment.value;
  const shownHost = host.includes(':') ? `[${host}]` : host;
  // Browsers leave the port of plain HTTP out.
  const ports = port === 80 ? [':80', ''] : [`:${port}`];
  const allowedHosts = ['127.0.0.1', 'localhost', '[::1]'].flatMap((name) => ports.map((end) => name + end));
  const progress = (text: string) => process.stderr.write(`${text}\n`);
  const opened = await openServices(variables, { allowedHosts, progress });
  if (!opened.ok) return opened;
  const app = createApp(opened.value.services);
  serveFiles(app);
  const listening = await listen(app.fetch, host, port);
  if (!listening.ok) {
    await opened.value.close();
    return listening;
  }
  const address = `http://${shownHost}:${port}`;
  process.stdout.write(
    `Afterbell is ready at ${address}\nData: ${opened.value.services.store.place}\nStop it with Ctrl+C.\n`,
  );
  if (options.offerToOpen) offerPage(address);
  let stop = () => {};
  const closed = new Promise<void>((resolve) => {
    let isStopping = false;
    stop = () => {
      if (isStopping) return;
      isStopping = true;
      listening.value.close();
      listening.value.closeAllConnections();
      void opened.value.close().then(resolve);
    };
  });
  process.once('SIGINT', () => stop());
  process.once('SIGTERM', () => stop());
  return { ok: true, value: { address, closed, stop: () => stop() } };
}

function listen(
  fetch: Parameters<typeof serve>[0]['fetch'],
  hostname: string,
  port: number,
): Promise<{ ok: true; value: Server } | { ok: false; error: Problem }> {
  return new Promise((resolve) => {
    const server = serve({ fetch, hostname, port }) as Server;
    server.once('listening', () => resolve({ ok: true, value: server }));
    server.once('error', (error: NodeJS.ErrnoException) =>
      resolve({
        ok: false,
        error: {
          code: 'listen',
          message:
            error.code === 'EADDRINUSE'
              ? `Port ${port} is taken, perhaps by an Afterbell that is already running.`
              : `Port ${port} cannot be used (${error.code ?? error.message}).`,
          hint: 'Close the other program, or start with another port: PORT=4690 npm start.',
        },
      }),
    );
  });
}
