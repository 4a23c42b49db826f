// Looking a skill up and printing a page of it, by keyboard alone, in a real browser.
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { SKILLS, skillById } from '#engine/skills/map.js';
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

let server: TestServer;
let browser: Browser;
let watched: Watched;
let page: Page;
let room: string;

beforeAll(async () => {
  server = await startServer('2026-05-08');
  const answer = await fetch(`${server.address}/api/demo`, {
    method: 'POST',
    body: '{}',
    headers: { 'Content-Type': 'application/json' },
  });
  room = ((await answer.json()) as { id: string }).id;
  browser = await launchBrowser();
  watched = await openPage(browser, server.address, 1366, 768);
  ({ page } = watched);
});
afterEach(() => {
  expect(watched.faults).toEqual([]);
  expect(watched.strays).toEqual([]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });
const field = () => page.getByRole('searchbox', { name: 'Words or a curriculum code' });
const list = () => page.getByRole('listbox', { name: 'Skills found' });
const heading = () => page.getByRole('heading', { level: 2 });

/** From the list's own Tab stop to the option, by arrow keys. */
async function choose(title: string): Promise<void> {
  await list().getByRole('option', { name: title }).first().waitFor();
  for (let presses = 0; presses < 60; presses++) {
    if (await list().evaluate((element) => element.contains(document.activeElement))) break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Home');
  for (let presses = 0; presses < 60; presses++) {
    const focused = await page.evaluate(() => document.activeElement?.textContent ?? '');
    if (focused.startsWith(title)) return page.keyboard.press('Enter');
    await page.keyboard.press('ArrowDown');
  }
  throw new Error(`arrows do not reach ${title}`);
}

describe('skills', () => {
  it('are reached from the frame, and the whole map is there', async () => {
    await page.goto(`${server.address}/class/${room}/today`);
    await pressOn(page, page.getByRole('link', { name: 'Skills', exact: true }));
    await heading().waitFor();
    expect(await list().getByRole('option').count()).toBe(SKILLS.length);
    const counts = await page.locator('main table td a').allInnerTexts();
    expect(counts.reduce((sum, text) => sum + Number(text), 0)).toBe(SKILLS.length);
    await expectAccessible(page);
  });

  it('are found by a code of the class’s curriculum and opened by arrow keys', async () => {
    await tabTo(page, field());
    await page.keyboard.type('ac9m4a02');
    await page.getByText('8 of').waitFor();
    await page.getByText('Know every multiplication fact').waitFor();
    await choose('7 times table');
    await page.getByRole('heading', { level: 2, name: '7 times table' }).waitFor();
    expect(await heading().evaluate((element) => element === document.activeElement)).toBe(true);
    // What may help comes from the server, beside what the child does.
    const wrong = page.getByRole('region', { name: 'What may go wrong' }).locator('li').first();
    await expect.poll(() => wrong.locator('p').last().innerText()).toMatch(/^\S.+[.?]$/);
    await expectAccessible(page);
  });

  it('show examples that come anew, each with its answer and a way to it on request', async () => {
    const examples = () => page.locator('ol > li p:first-child').allInnerTexts();
    const first = await examples();
    expect(first.length).toBe(6);
    expect(await page.getByText('One way to get there').count()).toBe(0);
    await pressOn(page, button('Answer to example 2'));
    expect(await page.getByText('One way to get there').count()).toBe(1);
    expect(await button('Hide the answer to example 2').getAttribute('aria-expanded')).toBe('true');
    await tabTo(page, button('Show all answers'), 'Shift+Tab');
    await page.keyboard.press('Enter');
    expect(await page.getByText('One way to get there').count()).toBe(6);
    await expectAccessible(page);
    await pressOn(page, button('Other examples'));
    expect(await examples()).not.toEqual(first);
    expect(await page.getByText('One way to get there').count()).toBe(0);
  });

  it('lead to what comes before and after', async () => {
    const title = skillById('div.table.69')?.title ?? '';
    await pressOn(page, page.getByRole('link', { name: title }));
    await page.getByRole('heading', { level: 2, name: title }).waitFor();
    expect(await page.getByRole('link', { name: '7 times table' }).count()).toBe(1);
    expect(await list().getByRole('option', { selected: true }).innerText()).toContain(title);
  });

  it('print one sheet of several skills, with the key', async () => {
    await tabTo(page, field(), 'Shift+Tab');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('find equal fractions');
    await choose('Find equal fractions');
    await page.getByRole('heading', { level: 2, name: 'Find equal fractions' }).waitFor();
    await pressOn(page, button('Put on the sheet'), 'Space');
    await button('On the sheet').waitFor();
    await tabTo(page, field(), 'Shift+Tab');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('7 times');
    await choose('7 times table');
    await page.getByRole('heading', { level: 2, name: '7 times table' }).waitFor();
    await pressOn(page, button('Print a practice sheet'));
    await page.getByRole('heading', { level: 2, name: 'Practice sheet' }).waitFor();
    const pages = page.getByRole('img', { name: /^Page \d of the print$/ });
    await pages.nth(1).waitFor();
    expect(await pages.count()).toBe(2);
    await expectAccessible(page);
    await chooseIn(page, page.getByRole('radiogroup', { name: 'Questions' }), '10');
    await tabTo(page, page.getByRole('textbox', { name: 'Copies' }));
    await page.keyboard.press('Control+A');
    await page.keyboard.type('27');
    // Leaving the field takes the number.
    await page.keyboard.press('Tab');
    await page.getByText('27 copies of the sheet will be printed').waitFor();
    const saved = page.waitForEvent('download');
    await pressOn(page, button('Save as PDF'));
    const file = await (await saved).createReadStream();
    const bytes: Buffer[] = [];
    for await (const part of file) bytes.push(part as Buffer);
    const pdf = Buffer.concat(bytes).toString('latin1');
    expect(pdf.startsWith('%PDF-')).toBe(true);
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBe(28);
    await tabTo(page, button('Take off: 7 times table'), 'Shift+Tab');
    await page.keyboard.press('Enter');
    await button('Practice sheet: 1 skill').waitFor();
  });

  it('show one thing at a time on a tablet, and a way back', async () => {
    const tablet = await openPage(browser, server.address, 820, 1180);
    await tablet.page.goto(`${server.address}/class/${room}/skills?skill=time.clock.five`);
    await tablet.page.getByRole('heading', { level: 2, name: 'Tell the time to five minutes' }).waitFor();
    expect(await tablet.page.getByRole('listbox').isVisible()).toBe(false);
    const width = await tablet.page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(820);
    await expectAccessible(tablet.page);
    await pressOn(tablet.page, tablet.page.getByRole('button', { name: 'All skills' }));
    await tablet.page.getByRole('listbox').waitFor();
    expect([...tablet.faults, ...tablet.strays]).toEqual([]);
    await tablet.page.context().close();
  });

  it('name grades for an American class, in the list too', async () => {
    const { settings } = (await (await page.request.get(`${server.address}/api/state`)).json()) as {
      settings: object;
    };
    await page.request.put(`${server.address}/api/settings`, {
      data: { ...settings, locale: 'en-US' },
      headers: { origin: server.address },
    });
    await page.goto(`${server.address}/class/${room}/skills?find=7+times`);
    const option = list().getByRole('option', { name: '7 times table' }).first();
    await option.filter({ hasText: 'G4' }).waitFor();
    expect(await list().innerText()).not.toMatch(/\bY\d/);
  });
});
