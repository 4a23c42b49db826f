// A full disk, as the page meets it: a plain refusal with its own status, and everything told as saved stays.
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import type { MarkingView } from '#api/marking.js';
import type { TodayView } from '#api/today.js';
import { startServer } from '../e2e/server.js';
import { mountSmallDisk } from '../support/small-disk.js';

const TODAY = '2026-05-08';

it('refuses marks on a full disk with 507, goes on reading, and saves again when there is room', async (context) => {
  const disk = mountSmallDisk(160);
  if (!disk)
    return context.skip(
      'A small disk can be mounted by root on Linux only. Mend: run the tests as root in a container.',
    );
  onTestFinished(() => disk.unmount());
  const server = await startServer(TODAY, join(disk.folder, 'data'));
  onTestFinished(() => server.stop());
  const call = async (path: string, method = 'GET', body?: object) => {
    const response = await fetch(server.address + path, {
      method,
      ...(body ? { body: JSON.stringify(body), headers: { 'Content-Type': 'application/json' } } : {}),
    });
    return { status: response.status, answer: (await response.json()) as unknown };
  };
  const room = (await call('/api/demo', 'POST', {})).answer as ClassDetail;
  const day = (await call(`/api/classes/${room.id}/days/${TODAY}`)).answer as TodayView;
  const path = `/api/sheets/${day.sheets[0]?.id}/marks`;
  const round = (n: number) => ({
    entries: room.children.flatMap(({ id }) =>
      Array.from({ length: 12 }, (_, at) => ({
        childId: id,
        rung: at + 1,
        state: null,
        typed: `round ${n} ${'x'.repeat(60)}`,
      })),
    ),
  });
  const roundsStored = async () => {
    const { marks } = (await call(path)).answer as MarkingView;
    return [...new Set(marks.map(({ typed }) => Number(typed.split(' ')[1])))];
  };
  expect((await call(path, 'PUT', round(0))).status).toBe(200);
  disk.fill();

  let saved = 0;
  let refused = await call(path, 'PUT', round(saved + 1));
  while (refused.status === 200 && saved < 500) refused = await call(path, 'PUT', round(++saved + 1));
  expect(refused).toMatchObject({ status: 507, answer: { code: 'disk.full' } });
  expect((refused.answer as { message: string }).message).toMatch(/disk is full.*\.$/);
  expect(await roundsStored()).toEqual([saved]);
  expect((await call(path, 'PUT', round(saved + 1))).status).toBe(507);

  disk.empty();
  expect((await call(path, 'PUT', round(saved + 1))).status).toBe(200);
  expect(await roundsStored()).toEqual([saved + 1]);
});
