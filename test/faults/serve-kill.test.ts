// The whole server is killed while a class is being marked through it: what the page was told is saved, is saved.
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import type { MarkingView } from '#api/marking.js';
import type { TodayView } from '#api/today.js';
import { freePort, startServer, type TestServer } from '../e2e/server.js';
import { randomFrom } from '../support/seeded-random.js';

const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
const TODAY = '2026-05-08';
const SEED = 20260508;
const KILLS = 30;
/** Every fifth kill comes while the server is still opening its data. */
const IN_OPENING = 5;
/** Requests under way at the same time; each belongs to one child, so that the order within a cell is known. */
const IN_FLIGHT = 6;
const RUNGS = 12;

/** What a cell may hold: the last acknowledged answer, or the one that was under way when the server died. */
interface Cell {
  acknowledged: string | null;
  underWay: string | null;
}

async function fetchJson<T>(server: TestServer, path: string, method = 'GET', body?: object): Promise<T> {
  const response = await fetch(server.address + path, {
    method,
    ...(body ? { body: JSON.stringify(body), headers: { 'Content-Type': 'application/json' } } : {}),
  });
  const answer: unknown = await response.json();
  if (!response.ok) throw new Error(`${method} ${path}: ${response.status} ${JSON.stringify(answer)}`);
  return answer as T;
}

async function gone(child: ChildProcess): Promise<void> {
  if (child.exitCode === null && child.signalCode === null)
    await new Promise((resolve) => child.once('exit', resolve));
}

describe('marking through the server, killed', () => {
  let dataDir: string;
  beforeAll(() => {
    dataDir = mkdtempSync(join(tmpdir(), 'afterbell-serve-kill-'));
  });
  afterAll(() => rmSync(dataDir, { recursive: true, force: true }));

  it(`at ${KILLS} random moments, loses no acknowledged mark and opens by itself (seed ${SEED})`, async () => {
    const random = randomFrom(SEED);
    const cells = new Map<string, Cell>();
    let sent = 0;
    let acknowledged = 0;
    let killAfter = 0;

    /** One child's slip, cell after cell, each sent when the one before is acknowledged, until the server is gone. */
    async function markChild(server: TestServer, sheetId: string, childId: string): Promise<void> {
      for (let n = random(RUNGS - 1); ; n++) {
        const rung = 1 + (n % RUNGS);
        const key = `${childId} ${rung}`;
        const cell = cells.get(key) ?? { acknowledged: null, underWay: null };
        cells.set(key, cell);
        cell.underWay = `answer ${++sent}`;
        const entry = { childId, rung, state: null, typed: cell.underWay };
        try {
          await fetchJson(server, `/api/sheets/${sheetId}/marks`, 'PUT', { entries: [entry] });
        } catch (error) {
          // fetch says TypeError when the connection is gone; a refusal by a living server would be a fault.
          if (error instanceof TypeError || server.process.killed) return;
          throw error;
        }
        cell.acknowledged = cell.underWay;
        cell.underWay = null;
        // The number of marks says when, not a time, so that a slow machine is killed in the middle of as much work.
        if (++acknowledged === killAfter) void wait(random(25)).then(() => server.process.kill('SIGKILL'));
      }
    }

    async function checkStored(server: TestServer, sheetId: string): Promise<void> {
      const { marks } = await fetchJson<MarkingView>(server, `/api/sheets/${sheetId}/marks`);
      const stored = new Map(marks.map(({ childId, rung, typed }) => [`${childId} ${rung}`, typed]));
      for (const [key, cell] of cells) {
        const found = stored.get(key) ?? null;
        const possible = cell.underWay === null ? [cell.acknowledged] : [cell.acknowledged, cell.underWay];
        expect(possible, `cell ${key}`).toContain(found);
        [cell.acknowledged, cell.underWay] = [found, null];
      }
      for (const key of stored.keys()) expect(cells.has(key)).toBe(true);
    }

    let sheetId = '';
    let childIds: string[] = [];
    for (let kill = 0; kill < KILLS; kill++) {
      if (kill % IN_OPENING === IN_OPENING - 1) {
        const opening = spawn(process.execPath, [MAIN, 'serve', '--no-open'], {
          env: { ...process.env, AFTERBELL_DATA: dataDir, PORT: String(await freePort()), DATABASE_URL: '' },
          stdio: 'ignore',
        });
        await wait(100 + random(900));
        opening.kill('SIGKILL');
        await gone(opening);
        continue;
      }
      const server = await startServer(TODAY, dataDir);
      if (sheetId === '') {
        const room = await fetchJson<ClassDetail>(server, '/api/classes', 'POST', {
          name: 'Wattle',
          years: [4],
          children: Array.from({ length: 25 }, (_, at) => ({
            givenName: `Child ${at + 1}`,
            familyName: '',
            alias: '',
            year: 4,
          })),
        });
        const day = await fetchJson<TodayView>(server, `/api/classes/${room.id}/days/${TODAY}`);
        sheetId = day.sheets[0]?.id ?? '';
        childIds = room.children.map(({ id }) => id);
      }
      await checkStored(server, sheetId);
      const first = random(childIds.length - 1);
      killAfter = acknowledged + 1 + random(40);
      const marking = Array.from({ length: IN_FLIGHT }, (_, at) =>
        markChild(server, sheetId, childIds[(first + at) % childIds.length] ?? ''),
      );
      await Promise.all(marking);
      await gone(server.process);
    }
    const server = await startServer(TODAY, dataDir);
    try {
      await checkStored(server, sheetId);
    } finally {
      await server.stop({ keepData: true });
    }
    // The kills came while there was something to lose.
    expect(acknowledged).toBeGreaterThan(10 * KILLS);
  }, 300_000);
});
