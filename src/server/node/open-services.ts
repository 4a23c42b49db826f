// The composition root of the Node side: store, print thread, clock and log put together.
import type { Problem } from '#api/problem.js';
import { parseIsoDate } from '#engine/numbers/calendar.js';
import { Printer } from '#print/printer.js';
import type { Services } from '#server/app/services.js';
import { exportBackup, readBackup, restore } from '#store/backup.js';
import { openStore } from '#store/open-store.js';
import pino from 'pino';
import { readClock } from './clock.js';
import { readEnvironment } from './environment.js';

export interface OpenedServices {
  readonly services: Services;
  close(): Promise<void>;
}

interface OpenOptions {
  readonly allowedHosts: readonly string[];
  /** Told in a few words what is under way when it takes seconds. */
  readonly progress: (text: string) => void;
}

type OpenResult = { ok: true; value: OpenedServices } | { ok: false; error: Problem };

/** Opens the data that the environment names; the one sentence of the first thing that is wrong otherwise. */
export async function openServices(variables: NodeJS.ProcessEnv, options: OpenOptions): Promise<OpenResult> {
  const environment = readEnvironment(variables);
  if (!environment.ok) return environment;
  const fixedDay = variables['AFTERBELL_TODAY'] || undefined;
  if (fixedDay !== undefined && parseIsoDate(fixedDay) === null) {
    return {
      ok: false,
      error: {
        code: 'environment',
        message: `AFTERBELL_TODAY is “${fixedDay}”, which is not a day.`,
        hint: 'Write it like 2026-02-03.',
      },
    };
  }
  const opened = await openStore(environment.value.place, { onProgress: options.progress });
  if (!opened.ok) return opened;
  const store = opened.value;
  const printer = new Printer();
  const log = pino({ base: null, level: variables['AFTERBELL_LOG'] ?? 'warn' }, pino.destination(2));
  const clock = () => readClock(fixedDay);
  return {
    ok: true,
    value: {
      services: {
        store,
        printing: {
          print: (request) => printer.printBoard(request),
          preview: (request) => printer.previewBoard(request),
          printKit: (request) => printer.printKit(request),
          previewKit: (request) => printer.previewKit(request),
          printTimed: (request) => printer.printTimed(request),
        },
        backups: {
          take: (passphrase) =>
            exportBackup(store, { createdAt: clock().now, ...(passphrase === null ? {} : { passphrase }) }),
          async putBack(bytes, passphrase, replace) {
            const backup = await readBackup(bytes, passphrase ?? undefined);
            return backup.ok ? restore(store, backup.value, { replace }) : backup;
          },
        },
        clock,
        allowedHosts: options.allowedHosts,
        // Stack traces hold file names and code, never request bodies, so no child's name gets in.
        log: (fault) =>
          log.error({ fault: fault instanceof Error ? fault.stack : String(fault) }, 'internal fault'),
      },
      async close() {
        await printer.close();
        await store.close();
      },
    },
  };
}
