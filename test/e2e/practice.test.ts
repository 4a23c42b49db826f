// A week of timed practice for 25 children, by keyboard alone: sheets, counts, circled errors, redo, two children moved on.
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import { FILE_PATHS } from '#api/endpoints.js';
import type { OwnQuestionsView } from '#api/own-questions.js';
import type { TimedView } from '#api/timed-room.js';
import { expectAccessible, launchBrowser, openPage, pressOn, tabTo, type Watched } from './browser.js';
import { startServer, type TestServer } from './server.js';

const CHILDREN = 25;
const WEEK = ['2026-05-04', '2026-05-05', '2026-05-06', '2026-05-07', '2026-05-08'] as const;
const [MONDAY, , , , FRIDAY] = WEEK;
/** Two children who do every sheet quickly and rightly, and one who circles the same two questions. */
const QUICK = [3, 11];
const CIRCLED = 6;

let server: TestServer;
let browser: Browser;
let watched: Watched;
let page: Page;
let room: ClassDetail;
/** Keys pressed for the counts of one day. */
const presses: number[] = [];

const button = (name: string) => page.getByRole('button', { name, exact: true });

async function call<T>(method: string, path: string, body?: unknown): Promise<T> {
  const answer = await fetch(server.address + path, {
    method,
    headers: { 'Content-Type': 'application/json' },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  if (!answer.ok) throw new Error(`${path}: ${await answer.text()}`);
  return (await answer.json()) as T;
}

const view = (date: string) => call<TimedView>('GET', `/api/classes/${room.id}/timed/${date}`);

beforeAll(async () => {
  server = await startServer(FRIDAY);
  browser = await launchBrowser();
  watched = await openPage(browser, server.address, 1366, 768);
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
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

/** What the child at `at` did on a day. */
function workOf(at: number): { readonly done: string; readonly wrong: string } {
  if (QUICK.includes(at)) return { done: '60', wrong: '' };
  return { done: String(18 + at), wrong: at === CIRCLED ? '4 9' : '' };
}

async function countDay(): Promise<void> {
  let keys = 0;
  const press = async (key: string) => {
    keys++;
    await page.keyboard.press(key);
  };
  for (let at = 0; at < CHILDREN; at++) {
    const { done, wrong } = workOf(at);
    for (const key of done) await press(key);
    if (wrong !== '') {
      await press('Tab');
      for (const key of wrong) await press(key === ' ' ? 'Space' : key);
    }
    await press('Enter');
  }
  presses.push(keys);
  await page.getByText(`${CHILDREN} children have a sheet, ${CHILDREN} counted.`).waitFor();
}

describe('a week of timed practice', () => {
  it.each(WEEK)('is prepared and counted on %s', async (date) => {
    await page.goto(`${server.address}/class/${room.id}/practice?date=${date}`);
    await page.getByText('No sheets are handed out for this day yet.').waitFor();
    await pressOn(page, button('Prepare the sheets'));
    await page.getByText(`${CHILDREN} children have a sheet, 0 counted.`).waitFor();
    await tabTo(page, page.getByRole('textbox', { name: /^Done, / }).first());
    await countDay();
    const { children } = await view(date);
    expect(children.map(({ sheet }) => sheet?.outcome?.attempted)).toEqual(
      children.map((_, at) => Number(workOf(at).done)),
    );
    expect(children[CIRCLED]?.sheet?.outcome?.wrong).toEqual([4, 9]);
  });

  it('takes three keys a child for the counts', () => {
    // Two digits and Enter; four more for the child with circled questions.
    expect(Math.max(...presses)).toBe(3 * CHILDREN + 4);
  });

  it('prints what was circled first on the next day’s sheet of that child alone', async () => {
    const answer = await fetch(server.address + FILE_PATHS.timed, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ classId: room.id, date: WEEK[1], document: 'pupil' }),
    });
    expect(answer.headers.get('X-Page-Count')).toBe(String(2 * CHILDREN));
    const file = join(server.dataDir, 'sheets.pdf');
    writeFileSync(file, new Uint8Array(await answer.arrayBuffer()));
    const pages = execFileSync('pdftotext', ['-layout', file, '-']).toString().split('\f');
    expect(pages.flatMap((text, at) => (text.includes('Put these right first') ? [at] : []))).toEqual([
      2 * CIRCLED,
    ]);
    const monday = await view(MONDAY);
    const { key } = monday.forms[0] ?? { key: '' };
    const asked = monday.forms.find((form) => form.key === key)?.questions ?? [];
    // The tool leaves the spaces out between narrow digits.
    const bare = (text = 'missing') => text.replaceAll(/\s/g, '');
    for (const place of [4, 9]) expect(bare(pages[2 * CIRCLED])).toContain(bare(asked[place - 1]?.text));
  });

  it('moves two children on, one key each, and takes one move back', async () => {
    const before = await view(FRIDAY);
    const ready = before.children.filter(({ suggestion }) => suggestion.move === 'up');
    expect(ready.map(({ shownAs }) => shownAs)).toEqual(QUICK.map((at) => before.children[at]?.shownAs));
    for (const { shownAs } of ready) {
      const title = before.ladder.levels.find(({ id }) => id === ready[0]?.suggestion.levelId)?.title;
      await pressOn(page, button(`On to ${title}, ${shownAs}`));
      await page
        .getByRole('status')
        .filter({ hasText: `${shownAs} is on ${title}` })
        .waitFor({ state: 'attached' });
    }
    const after = await view(FRIDAY);
    expect(QUICK.map((at) => after.children[at]?.levelId)).toEqual(
      ready.map(({ suggestion }) => suggestion.levelId),
    );
    const [first] = ready;
    await pressOn(page, button(`Take the move back, ${first?.shownAs}`));
    await page
      .getByRole('status')
      .filter({ hasText: 'is back on the level before' })
      .waitFor({ state: 'attached' });
    expect((await view(FRIDAY)).children[QUICK[0] ?? 0]?.levelId).toBe(first?.levelId);
  });

  it('records circled questions by tapping, and takes a count back', async () => {
    const name = room.children[0]?.shownAs;
    await page.reload();
    await pressOn(page, button(`Tap the circled questions of ${name}`));
    const dialog = page.getByRole('dialog');
    await expectAccessible(page);
    await dialog.getByRole('button', { name: /^5 / }).focus();
    await page.keyboard.press('Space');
    await pressOn(page, dialog.getByRole('button', { name: 'Save' }));
    await dialog.waitFor({ state: 'detached' });
    await page.getByRole('status').filter({ hasText: '1 circled' }).waitFor({ state: 'attached' });
    expect((await view(FRIDAY)).children[0]?.sheet?.outcome?.wrong).toEqual([5]);
    await pressOn(page, button(`Undo the count of ${name}`));
    await page.getByRole('status').filter({ hasText: 'is taken back' }).waitFor({ state: 'attached' });
    expect((await view(FRIDAY)).children[0]?.sheet?.outcome?.wrong).toEqual([]);
    // The count itself was stored once, not once for Enter and again for leaving the box.
    await pressOn(page, button(`Undo the count of ${name}`));
    await page.getByText(`${CHILDREN} children have a sheet, ${CHILDREN - 1} counted.`).waitFor();
    expect((await view(FRIDAY)).children[0]?.sheet?.outcome).toBeNull();
  });

  it('finds the row of a late sheet by its code', async () => {
    const late = (await view(MONDAY)).children[4];
    await page.getByRole('textbox', { name: 'Sheet code' }).focus();
    await page.keyboard.type(late?.sheet?.id ?? '');
    await page.keyboard.press('Enter');
    await page.waitForURL(`**/practice?date=${MONDAY}`);
    const box = page.getByRole('textbox', { name: `Done, ${late?.shownAs}` });
    await box.and(page.locator(':focus')).waitFor();
    await page.goto(`${server.address}/class/${room.id}/practice`);
    await page.getByRole('table').waitFor();
  });

  it('changes the ladder by keyboard', async () => {
    await page.getByText('The ladder', { exact: true }).focus();
    await page.keyboard.press('Space');
    await pressOn(page, button('Adding to 5: leave out'));
    await pressOn(page, button('Save the ladder'));
    await page.getByText('This is your own ladder.').waitFor();
    expect((await view(FRIDAY)).ladder.levels[0]?.id).toBe('add-10');
    await expectAccessible(page);
    await pressOn(page, button('Back to the usual ladder'));
    await page.getByText('This is the usual ladder.').waitFor();
  });

  it('puts a level of the teacher’s own questions on the ladder by keyboard', async () => {
    const { version } = await call<OwnQuestionsView>('GET', '/api/own-questions');
    const long = 'How many legs do {n} spiders and {n} beetles have in all? | 14 * n';
    const text = `{n} + 9 | n + 9 | n + 10\nDouble {n} | 2 * n\n${long}`;
    await call('PUT', '/api/own-questions', { version, text, onBoards: false });
    await page.goto(`${server.address}/class/${room.id}/practice`);
    await page.getByText('The ladder', { exact: true }).focus();
    await page.keyboard.press('Space');
    await pressOn(page, button('Add a level of my own questions'));
    await page.getByText('One more is too long for a timed sheet.').waitFor();
    const ticks = page.getByRole('group', { name: 'Which of your questions?' }).getByRole('checkbox');
    expect(await ticks.count()).toBe(2);
    for (const at of [0, 1]) {
      await ticks.nth(at).focus();
      await page.keyboard.press('Space');
    }
    await page.getByText('They give nothing; a timed sheet needs 8.').waitFor();
    expect(await button('Put it on the ladder').isDisabled()).toBe(true);
    await page.keyboard.press('Space');
    await page.getByText(/They give \d\d different questions/).waitFor();
    await expectAccessible(page);
    const name = page.getByRole('textbox', { name: 'What is the level called?' });
    await name.fill('Spider sums');
    await name.press('Enter');
    await pressOn(page, button('Save the ladder'));
    await page.getByText('This is your own ladder.').waitFor();
    expect((await view(FRIDAY)).ladder.levels.at(-1)).toMatchObject({
      title: 'Spider sums',
      skills: null,
      lines: ['Double {n} | 2 * n'],
    });
    await pressOn(page, button('Back to the usual ladder'));
    await page.getByText('This is the usual ladder.').waitFor();
  });

  it('is free of accessibility faults, and shows no child on the clock', async () => {
    await page.goto(`${server.address}/class/${room.id}/practice`);
    await page.getByRole('table').waitFor();
    await expectAccessible(page);
    await page.goto(`${server.address}/clock/${room.id}`);
    await pressOn(page, button('Start'));
    await page.getByText('Do the ones you know').waitFor();
    await expectAccessible(page);
    expect(await page.locator('body').innerText()).not.toMatch(/Wren|right|\d+ done/);
    await page.keyboard.press('Tab');
    await pressOn(page, button('End now'));
    await page.getByText('Pencils down. Well worked.').waitFor();
  });

  it('asked nothing of the network and reported no fault', () => {
    expect(watched.strays).toEqual([]);
    expect(watched.faults).toEqual([]);
  });
});
