// A teacher's day from the first page to tomorrow's board, by keyboard alone, in a real browser.
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import type { ClassDetail } from '#api/class.js';
import type { MarkingView } from '#api/marking.js';
import type { Sheet, TodayView } from '#api/today.js';
import type { UnderstandingView } from '#api/understanding.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  chooseIn,
  expectAccessible,
  launchBrowser,
  openPage,
  pressOn,
  tabTo,
  type Watched,
} from './browser.js';
import { startServer, type TestServer } from './server.js';
import { inventSlips, keysFor } from './slips.js';

const NAMES = [
  'Amara Brindlewick',
  'Fernhollow, Noah (Year 5)',
  'Priya Quillmere',
  'Leo Dapplestone, Year 5',
  'Mei Tarnbridge',
  'Tomas Wrenfield, Year 5',
  'Zahra Oakspindle',
  'Finn Marlowick, Year 5',
  'Isla Copperbeck',
  'Kai Thistledown, Year 5',
  'Ruby Larkhollow',
  'Omar Pebblewright, Year 5',
  'Ava Sanderling',
  'Jarrah Mossgate, Year 5',
  'Lucia Hazelmoor',
  'Ethan Driftway, Year 5',
  'Nina Cloudmere',
  'Sami Barleycroft, Year 5',
  'Grace Willowmarch',
  'Arlo Stonewhistle, Year 5',
  'Hana Brightwater',
  'Mateo Ashenfold, Year 5',
  'Willa Rushlight',
  'Idris Kettlemoor, Year 5',
  'Poppy Nightingate',
  'Theo Merrivane, Year 5',
  '李 Silverthorn',
  '...',
];

let server: TestServer;
let browser: Browser;
let watched: Watched;
let page: Page;

beforeAll(async () => {
  server = await startServer('2026-05-08');
  browser = await launchBrowser();
  watched = await openPage(browser, server.address, 1366, 768);
  ({ page } = watched);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });

const get = async (path: string): Promise<unknown> => (await fetch(server.address + path)).json();
const post = async (path: string, body: unknown): Promise<unknown> => {
  const init = {
    method: 'POST',
    body: JSON.stringify(body),
    headers: { 'Content-Type': 'application/json' },
  };
  return (await fetch(server.address + path, init)).json();
};
const classId = (): string => /\/class\/([^/]+)/.exec(page.url())?.[1] ?? '';
const today = async (date: string) => (await get(`/api/classes/${classId()}/days/${date}`)) as TodayView;
const copyOfClass = async () => {
  const { children, years } = (await get(`/api/classes/${classId()}`)) as ClassDetail;
  return { name: 'A copy', years, children: children.map(({ id: _, shownAs: _shown, ...child }) => child) };
};

const buttonOn = (on: Page, name: string) => on.getByRole('button', { name, exact: true });

describe('a teacher’s day', () => {
  it('starts with her own class: names pasted, the bad row named, the good ones kept, terms set', async () => {
    await page.goto(server.address);
    await button('Start with my class').waitFor();
    await expectAccessible(page);
    await pressOn(page, button('Start with my class'));
    await tabTo(page, page.getByLabel('Name of the class'));
    await page.keyboard.type('4/5 Banksia');
    await chooseIn(page, page.getByRole('toolbar', { name: 'Year levels' }), 'Year 5');
    await tabTo(page, page.getByLabel('Names'));
    await page.keyboard.insertText(NAMES.join('\n'));
    await pressOn(page, button('Check the names'));
    await page.getByRole('cell', { name: '28', exact: true }).waitFor();
    expect(await page.getByRole('heading', { name: '27 children read' }).isVisible()).toBe(true);
    await expectAccessible(page);
    await pressOn(page, button('Start with these 27 children'));
    await page.getByRole('heading', { name: 'When is school on?' }).waitFor();
    await expectAccessible(page);
    await pressOn(page, button('Save and see today'));
    await page.getByRole('heading', { name: 'Front: for everyone' }).waitFor();
  });

  it('finds today’s board with a plain reason at each of twelve rungs, and changes its number', async () => {
    expect(await page.getByText('week 3 of Term 2', { exact: true }).isVisible()).toBe(true);
    const rungs = page
      .getByRole('listitem')
      .filter({ has: page.getByRole('button', { name: /^Swap question/ }) });
    expect(await rungs.count()).toBe(12);
    for (const number of ['47', '3.6', '$4.85', '3/4', '47']) {
      await tabTo(page, page.getByLabel('Another number'));
      await page.keyboard.type(number);
      await page.keyboard.press('Enter');
      await page.getByText(`a board about ${number}`).waitFor();
      expect(await rungs.count()).toBe(12);
    }
    await expectAccessible(page);
  });

  it('keeps one rung, swaps another, chooses the rest again, and looks at the other boards', async () => {
    const question = (place: number) => page.getByText(`Question ${place}. `).locator('..').innerText();
    const third = await question(3);
    const fourth = await question(4);
    await pressOn(page, button('Keep question 3'), 'Space');
    await page.getByRole('button', { name: 'Keep question 3', pressed: true }).waitFor();
    await pressOn(page, button('Swap question 4'));
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('listitem').first().waitFor();
    await expectAccessible(page);
    await tabTo(page, dialog.getByRole('listitem').first().getByRole('button'));
    await page.keyboard.press('Enter');
    await dialog.waitFor({ state: 'detached' });
    await expect.poll(() => question(4), { timeout: 90_000 }).not.toBe(fourth);
    await pressOn(page, button(/^Choose the others again/));
    await page.waitForLoadState('networkidle');
    expect(await question(3)).toBe(third);
    await chooseIn(page, page.getByRole('radiogroup', { name: 'Side' }), 'Back, harder');
    await page.getByRole('heading', { name: 'Back: harder' }).waitFor();
    await chooseIn(page, page.getByRole('radiogroup', { name: 'Board for' }), 'Years side by side');
    await page.getByRole('heading', { name: 'Year 4', exact: true }).waitFor();
    expect(await page.getByRole('heading', { name: 'Year 5', exact: true }).isVisible()).toBe(true);
    await expectAccessible(page);
  });

  it('prints every document from the same pages that it shows', async () => {
    await pressOn(page, page.getByRole('link', { name: 'Print room' }));
    const documents = page.getByRole('radiogroup', { name: 'What to print' });
    const pages = page.getByRole('img', { name: /^Page \d+ of the print$/ });
    const said = page.getByRole('region', { name: 'Pages' }).getByRole('status');
    const counts: Record<string, number> = {};
    for (const name of [
      'Wall poster',
      'Two-sided sheet',
      'Slips',
      'Answer key',
      'Relief page',
      'Everything',
    ]) {
      await chooseIn(page, documents, name);
      await expect
        .poll(async () => (await pages.count()) > 0 && !(await page.locator('[aria-busy="true"]').count()), {
          timeout: 90_000,
        })
        .toBe(true);
      counts[name] = Number.parseInt(await said.innerText(), 10);
      expect(await pages.count()).toBe(counts[name]);
      if (name === 'Slips') await expectAccessible(page);
    }
    // A sheet for each year; 27 children, six slips to a page.
    expect(counts).toMatchObject({ 'Wall poster': 1, 'Two-sided sheet': 4, Slips: 5, 'Relief page': 1 });
    const saved = page.waitForEvent('download');
    await pressOn(page, button('Save as PDF'));
    const bytes = readFileSync((await (await saved).path()) ?? '');
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('shows the board full screen: large enough, counted down, called, and revealed by clicker keys', async () => {
    await pressOn(page, page.getByRole('link', { name: 'Today' }));
    const show = await page.getByRole('link', { name: 'Show it full screen' }).getAttribute('href');
    const tv = await openPage(browser, server.address, 1920, 1080);
    await tv.page.goto(server.address + show);
    await tv.page.getByText('Start when you are ready').waitFor();
    const sizes = await tv.page
      .getByRole('listitem')
      .evaluateAll((items) => items.map((item) => Number.parseFloat(getComputedStyle(item).fontSize)));
    // 16 minutes of arc at 8 m on a 65-inch screen: ISO 9241-3 (see legibility.ts), capitals of 37 mm.
    const pixelMm = (65 * 25.4 * 16) / Math.hypot(16, 9) / 1920;
    for (const size of sizes) expect(size * 0.725 * pixelMm).toBeGreaterThanOrEqual(37.2);
    await expectAccessible(tv.page);
    const timer = tv.page.getByRole('timer');
    expect(await timer.innerText()).toBe('10:00');
    await tv.page.keyboard.press('PageDown');
    await expect.poll(() => timer.innerText(), { timeout: 90_000 }).toMatch(/^9:[0-5]\d$/);
    await tv.page.keyboard.press('b');
    await tv.page.getByText('Last call: finish the one you are on').waitFor();
    expect(await timer.innerText()).toMatch(/^0:(30|2\d)$/);
    await expectAccessible(tv.page);
    await tv.page.keyboard.press('r');
    await buttonOn(tv.page, 'Show the answer').waitFor();
    for (let rung = 1; rung <= 12; rung++) {
      await tv.page.keyboard.press('PageDown');
      await buttonOn(tv.page, 'Next').waitFor();
      if (rung === 3) await expectAccessible(tv.page);
      if (rung < 12) await tv.page.keyboard.press('PageDown');
    }
    // No child's name is ever on the display.
    expect(await tv.page.locator('body').innerText()).not.toMatch(/Amara|Noah|Priya/);
    expect([...tv.strays, ...tv.faults]).toEqual([]);
    await tv.page.keyboard.press('Escape');
    await tv.page.getByRole('heading', { name: 'Front: for everyone' }).waitFor();
    await tv.page.context().close();
  });

  it('takes twenty-five slips by keyboard in at most 340 presses, each saved and read for typical mistakes', async () => {
    await pressOn(page, page.getByRole('link', { name: 'Marking' }));
    await page.getByRole('grid', { name: 'Marks' }).waitFor();
    await expectAccessible(page);
    const sheet = (await today('2026-05-08')).sheets[0] as Sheet;
    const slips = inventSlips(sheet.board, 25);
    await chooseIn(page, page.getByRole('radiogroup', { name: 'Go along a slip from' }), 'the last one');
    await tabTo(page, page.getByRole('gridcell', { name: /question 12,/ }).first(), 'Shift+Tab');
    let presses = 0;
    for (const slip of slips) {
      for (const key of keysFor(slip, 12)) {
        await page.keyboard.press(key);
        presses++;
      }
    }
    expect(presses).toBeLessThanOrEqual(340);
    await page.getByRole('status', { name: 'Saving' }).getByText('Saved', { exact: true }).waitFor();
    const stored = (await get(`/api/sheets/${sheet.id}/marks`)) as MarkingView;
    stored.children.slice(0, 25).forEach(({ id }, index) => {
      for (let rung = 1; rung <= 12; rung++) {
        const written = slips[index]?.get(rung);
        const state = written === undefined ? 'right' : written === '' ? 'blank' : 'wrong';
        const mark = stored.marks.find((one) => one.childId === id && one.rung === rung);
        expect(mark, `child ${index + 1}, rung ${rung}`).toMatchObject({ state });
        // A typed wrong answer comes from the question's own typical ones, so each must be named.
        if (written && written !== 'x') expect(mark?.findings.length).toBeGreaterThan(0);
      }
    });
    expect(stored.marks).toHaveLength(300);
  });

  it('takes back and brings back, notes who was away, and finds a slip by its code', async () => {
    const sheetId = ((await today('2026-05-08')).sheets[0] as Sheet).id;
    const count = async () => ((await get(`/api/sheets/${sheetId}/marks`)) as MarkingView).marks.length;
    await page.keyboard.press('Control+z');
    await expect.poll(count, { timeout: 90_000 }).toBeLessThan(300);
    await page.keyboard.press('Control+y');
    await expect.poll(count, { timeout: 90_000 }).toBe(300);
    await page.keyboard.press('Alt+a');
    await page.getByText(/away/).first().waitFor();
    await expectAccessible(page);
  });

  it('says what the marks mean, how sure that is, and on which answers it rests', async () => {
    await pressOn(page, page.getByRole('link', { name: 'Understanding' }));
    await page.getByRole('heading', { name: 'Children and skills' }).waitFor();
    expect(await page.getByText('From the marks of one day').isVisible()).toBe(true);
    await expectAccessible(page);
    const standing = (await get(`/api/classes/${classId()}/understanding`)) as UnderstandingView;
    expect(standing.children.filter(({ answers }) => answers > 0)).toHaveLength(25);
    for (const child of standing.children) {
      for (const { low, chance, high } of child.skills) {
        expect(low).toBeLessThanOrEqual(chance);
        expect(chance).toBeLessThanOrEqual(high);
      }
    }
  });

  it('has moved tomorrow’s board accordingly', async () => {
    // The same Monday, planned by a class of the same children before anything was marked and after.
    const unmarked = (await post('/api/classes', await copyOfClass())) as ClassDetail;
    const before = (await get(`/api/classes/${unmarked.id}/understanding`)) as UnderstandingView;
    const after = (await get(`/api/classes/${classId()}/understanding`)) as UnderstandingView;
    const chances = (view: UnderstandingView) => view.class.map(({ chance }) => chance);
    expect(chances(after)).not.toEqual(chances(before));
    const monday = await today('2026-05-11');
    expect(monday.schoolDay).toBe(true);
    const friday = (await today('2026-05-08')).sheets[0] as Sheet;
    const texts = new Set(friday.board.rungs.map(({ question }) => question.text));
    for (const { question } of monday.sheets[0]?.board.rungs ?? [])
      expect(texts.has(question.text)).toBe(false);
    await page.goto(`${server.address}/class/${classId()}/today?date=2026-05-11`);
    await page.getByText('week 4 of Term 2', { exact: true }).waitFor();
    await expectAccessible(page);
  });

  it('shows children and settings without an accessibility fault', async () => {
    await pressOn(page, page.getByRole('link', { name: 'Children' }));
    await page.getByRole('button', { name: 'Add children' }).waitFor();
    await expectAccessible(page);
    await pressOn(page, page.getByRole('link', { name: 'Settings' }));
    await page.getByRole('heading', { name: 'School terms' }).waitFor();
    await expectAccessible(page);
  });
});

describe('all the while', () => {
  it('no request left this machine and no page reported an error', () => {
    expect(watched.strays).toEqual([]);
    expect(watched.faults).toEqual([]);
  });
});
