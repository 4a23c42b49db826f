// afterbell serve
import process from 'node:process';
import { serveApp } from '#server/node/serve.js';
import { valueOf } from '../failure.js';

export async function serve(options: { open: boolean }): Promise<void> {
  const running = valueOf(await serveApp(process.env, { offerToOpen: options.open }));
  await running.closed;
}
