// The whole server without a port: real store in a temporary folder, real printing, a clock that moves when told.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type AnswerOf, type BodyOf, ENDPOINTS, type EndpointName } from '#api/endpoints.js';
import { Problem } from '#api/problem.js';
import { Press } from '#print/press.js';
import { createApp } from '#server/app/app.js';
import type { Services } from '#server/app/services.js';
import { exportBackup, readBackup, restore } from '#store/backup.js';
import { openStore } from '#store/open-store.js';
import { must } from './must.js';

const HOST = '127.0.0.1:4680';
export const TODAY = '2026-05-08';

type Params = Readonly<Record<string, string | number>>;

/** A request as the page sends it. */
export function request(path: string, init: RequestInit = {}, headers: Record<string, string> = {}): Request {
  return new Request(`http://${HOST}${path}`, {
    ...init,
    headers: { host: HOST, 'content-type': 'application/json', ...headers },
  });
}

function requestFor(name: EndpointName, params: Params, body: unknown): Request {
  const { method, path } = ENDPOINTS[name];
  const url = path.replace(/:(\w+)/g, (_, key: string) => encodeURIComponent(String(params[key] ?? '')));
  return request(url, { method, ...(body === null ? {} : { body: JSON.stringify(body) }) });
}

export interface TestApp {
  readonly services: Services;
  readonly faults: unknown[];
  /** Turns the calendar of the app to an ISO date. */
  turnTo(date: string): void;
  fetch(request: Request): Promise<Response>;
  /** Calls an endpoint that must succeed; the answer has been checked against the contract's schema. */
  call<N extends EndpointName>(name: N, params: Params, body: BodyOf<N>): Promise<AnswerOf<N>>;
  /** Calls an endpoint that must refuse: status and problem, which has its two sentences. */
  refused<N extends EndpointName>(
    name: N,
    params: Params,
    body: unknown,
  ): Promise<{ status: number; problem: Problem }>;
  close(): Promise<void>;
}

/** Status and problem of a refusal; throws when it is none. */
export async function problemOf(response: Response): Promise<{ status: number; problem: Problem }> {
  const problem = Problem.parse(await response.json());
  if (response.ok || !/^\S.*[.!]$/u.test(problem.hint) || problem.message === '')
    throw new Error(`no plain refusal: ${response.status} ${JSON.stringify(problem)}`);
  return { status: response.status, problem };
}

/** Opens the app on a new, empty data folder. */
export async function openTestApp(): Promise<TestApp> {
  const dataDir = mkdtempSync(join(tmpdir(), 'afterbell-app-'));
  const store = await must(openStore({ dataDir }));
  const press = new Press();
  const faults: unknown[] = [];
  let today = TODAY;
  const clock = () => ({ today, now: `${today}T01:02:03.000Z` });
  const services: Services = {
    store,
    printing: {
      print: (order) => press.print(order),
      preview: (order) => press.preview(order),
      printKit: (order) => press.printKit(order),
      previewKit: (order) => press.previewKit(order),
      printTimed: (order) => press.printTimed(order),
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
    allowedHosts: [HOST],
    log: (fault) => faults.push(fault),
  };
  const app = createApp(services);
  const fetch = async (sent: Request) => app.fetch(sent);
  return {
    services,
    faults,
    turnTo(date) {
      today = date;
    },
    fetch,
    async call(name, params, body) {
      const response = await fetch(requestFor(name, params, body));
      const answer: unknown = await response.json();
      if (!response.ok) throw new Error(`${name}: ${response.status} ${JSON.stringify(answer)}`);
      return ENDPOINTS[name].answer.parse(answer) as never;
    },
    refused: async (name, params, body) => problemOf(await fetch(requestFor(name, params, body))),
    async close() {
      await store.close();
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
}
