// Marking with the class: the teacher's phone by keyboard and by touch while children check their own work; then what the
// marks say, each sentence with a way to its evidence.
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import type { MarkingView } from '#api/marking.js';
import type { TodayView } from '#api/today.js';
import { expectAccessible, launchBrowser, openPage, pressOn, tabTo, type Watched } from './browser.js';
import { startServer, type TestServer } from './server.js';

const CHILDREN = 25;
const QUESTIONS = 12;
/** Who missed a question, by the question's place from 0: the harder, the more. */
const missedIn = (column: number) =>
  Array.from({ length: CHILDREN }, (_, at) => at).filter((at) => column > 5 && at % 6 < column - 5);

let server: TestServer;
let browser: Browser;
let watched: Watched;
let page: Page;
let room: ClassDetail;
let sheetId: string;

async function call<T>(method: string, path: string, body?: unknown): Promise<T> {
  const answer = await fetch(server.address + path, {
    method,
    headers: { 'Content-Type': 'application/json' },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  if (!answer.ok) throw new Error(`${path}: ${await answer.text()}`);
  return (await answer.json()) as T;
}

const tile = (at: number) =>
  page.getByRole('button', { name: room.children[at]?.shownAs ?? 'nobody', exact: true });
const next = () => page.getByRole('button', { name: /^Everyone (else )?has it/ });
const marks = () => call<MarkingView>('GET', `/api/sheets/${sheetId}/marks`);

beforeAll(async () => {
  server = await startServer('2026-05-08');
  browser = await launchBrowser();
  watched = await openPage(browser, server.address, 390, 844, true);
  ({ page } = watched);
  room = await call<ClassDetail>('POST', '/api/classes', {
    name: 'Wattle',
    years: [4],
    children: Array.from({ length: CHILDREN }, (_, i) => ({
      givenName: `Wren ${String.fromCharCode(65 + i)}`,
      familyName: 'Tallow',
      alias: '',
      year: 4,
    })),
  });
  const day = await call<TodayView>('GET', `/api/classes/${room.id}/days/2026-05-08`);
  sheetId = day.sheets[0]?.id ?? '';
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

describe('marking with the class on a phone', () => {
  it('is opened by a tap, is free of accessibility faults and fits the width', async () => {
    await page.goto(`${server.address}/class/${room.id}/marking?sheet=${sheetId}`);
    const choice = page.getByText('With the class', { exact: true });
    await choice.waitFor();
    await choice.tap();
    await page.getByText('Tap who missed it').waitFor();
    await expectAccessible(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBe(0);
  });

  it('takes one tap a question and one for each child who missed it', async () => {
    let taps = 0;
    for (let column = 0; column < QUESTIONS; column++) {
      await page.getByText(`Question ${column + 1} of ${QUESTIONS}`).waitFor();
      for (const at of missedIn(column)) {
        await tile(at).tap();
        taps++;
      }
      await next().tap();
      taps++;
    }
    const missed = Array.from({ length: QUESTIONS }, (_, column) => missedIn(column).length);
    expect(taps).toBe(QUESTIONS + missed.reduce((sum, one) => sum + one, 0));
    await page.getByText('Saved', { exact: true }).waitFor();
    const saved = await marks();
    expect(saved.marks).toHaveLength(CHILDREN * QUESTIONS);
    expect(
      saved.marks
        .filter(({ state }) => state === 'wrong')
        .map(({ childId, rung }) => `${rung}/${childId}`)
        .toSorted(),
    ).toEqual(
      missed
        .flatMap((_, column) => missedIn(column).map((at) => `${column + 1}/${room.children[at]?.id}`))
        .toSorted(),
    );
  });

  it('takes the last question back, and marks it again, by keyboard', async () => {
    await pressOn(page, page.getByRole('button', { name: 'Take back' }));
    await expect.poll(async () => (await marks()).marks.length).toBe(CHILDREN * (QUESTIONS - 1));
    await tabTo(page, next(), 'Shift+Tab');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await marks()).marks.length).toBe(CHILDREN * QUESTIONS);
  });

  it('is followed by at most three sentences, each with a way to its evidence', async () => {
    await page.goto(`${server.address}/class/${room.id}/understanding`);
    const links = page.getByRole('link', { name: /^See why/ });
    await links.first().waitFor();
    expect(await links.count()).toBeLessThanOrEqual(3);
    const targets = await links.evaluateAll((all) => all.map((one) => one.getAttribute('href') ?? ''));
    for (const href of targets) expect(href).toMatch(/[?&](child|skill)=./);
    await pressOn(page, links.first());
    await page.waitForURL(/[?&](child|skill)=./);
    await expectAccessible(page);
  });

  it('asked nothing of the network and reported no fault', () => {
    expect(watched.strays).toEqual([]);
    expect(watched.faults).toEqual([]);
  });
});
