// Opening the data that a verb works on, and letting go of them whatever happens.
import process from 'node:process';
import type { Services } from '#server/app/services.js';
import { openServices } from '#server/node/open-services.js';
import { valueOf } from './failure.js';
import { note } from './output.js';

/** Runs `work` on the data of AFTERBELL_DATA or DATABASE_URL and closes them afterwards. */
export async function withServices<T>(work: (services: Services) => Promise<T>): Promise<T> {
  const opened = valueOf(await openServices(process.env, { allowedHosts: [], progress: note }));
  try {
    return await work(opened.services);
  } finally {
    await opened.close();
  }
}
