// The Make room by keyboard alone, and by touch on a tablet: make, look, swap, print and keep each activity.
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import type { ClassDetail } from '#api/class.js';
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

let server: TestServer;
let browser: Browser;
let watched: Watched;
let page: Page;
let classId: string;

beforeAll(async () => {
  server = await startServer('2026-05-08');
  const init = { method: 'POST', body: '{}', headers: { 'Content-Type': 'application/json' } };
  const demo = (await (await fetch(`${server.address}/api/demo`, init)).json()) as ClassDetail;
  classId = demo.id;
  browser = await launchBrowser();
  watched = await openPage(browser, server.address, 1366, 768);
  ({ page } = watched);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const button = (name: string, on: Page = page) => on.getByRole('button', { name, exact: true });
const row = (name: string, on: Page = page) => on.getByRole('radiogroup', { name, exact: true });
const heading = (name: string, on: Page = page) => on.getByRole('heading', { name, exact: true });
const jigsawTitle = () => page.getByRole('heading', { name: /^A jigsaw of \d+ pieces$/ });
const pages = (on: Page = page) => on.getByRole('img', { name: /^Page \d+ of the print$/ });

/** Types into a number field and leaves it. */
async function setCount(label: string, value: number): Promise<void> {
  await tabTo(page, page.getByRole('textbox', { name: label, exact: true }));
  await page.keyboard.press('Control+a');
  await page.keyboard.type(String(value));
  await page.keyboard.press('Tab');
}

/** Waits until the pages on the screen are those of the present order. */
async function pagesAreSet(on: Page = page): Promise<number> {
  const isSet = async () =>
    (await pages(on).count()) > 0 && (await on.locator('[aria-busy="true"]').count()) === 0;
  await expect.poll(isSet, { timeout: 90_000 }).toBe(true);
  return pages(on).count();
}

async function savedPdf(): Promise<Buffer> {
  const saved = page.waitForEvent('download');
  await pressOn(page, button('Save as PDF'));
  const bytes = readFileSync((await (await saved).path()) ?? '');
  expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
  return bytes;
}

describe('the Make room by keyboard', () => {
  it('has a chain of what the class is due ready when it is entered, with its promise', async () => {
    await page.goto(`${server.address}/class/${classId}/today`);
    await pressOn(page, page.getByRole('link', { name: 'Make', exact: true }));
    await heading('A chain of 10 strips').waitFor();
    expect(await page.getByText('Any typical mistake stops the chain.').isVisible()).toBe(true);
    expect(await page.getByText('Due again, and a mix around it:').isVisible()).toBe(true);
    expect(await page.getByRole('list', { name: 'Strips in the right order' }).locator('li').count()).toBe(
      10,
    );
    await expectAccessible(page);
  });

  it('makes it anew at every change, and the browser’s Back brings the one before', async () => {
    await setCount('Strips', 8);
    await heading('A chain of 8 strips').waitFor();
    await chooseIn(page, row('Questions about'), 'A mix');
    await chooseIn(page, row('Order'), 'Mixed');
    const strips = page.getByRole('list', { name: 'Strips in the right order' });
    await expect.poll(() => page.locator('[aria-busy="true"]').count()).toBe(0);
    const before = await strips.innerText();
    await pressOn(page, button('Make another'));
    await expect.poll(() => strips.innerText()).not.toBe(before);
    await page.goBack();
    await expect.poll(() => strips.innerText()).toBe(before);
    await page.reload();
    await expect.poll(() => strips.innerText()).toBe(before);
  });

  it('takes skills from a list that is searched by typing', async () => {
    await chooseIn(page, row('Questions about'), 'Skills I choose');
    const dialog = page.getByRole('dialog');
    await dialog.waitFor();
    await expectAccessible(page);
    await tabTo(page, dialog.getByRole('searchbox', { name: 'Find a skill' }));
    await page.keyboard.type('multi fact');
    const list = dialog.getByRole('listbox', { name: 'Skills' });
    const first = list.getByRole('option').first();
    await first.waitFor();
    await expectAccessible(page);
    for (let presses = 0; presses < 20; presses++) {
      if (await list.evaluate((element) => element.contains(document.activeElement))) break;
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('Space');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Space');
    await dialog.getByText('2 chosen').waitFor();
    await pressOn(page, dialog.getByRole('button', { name: 'Done' }));
    await dialog.waitFor({ state: 'detached' });
    expect(await page.getByRole('list', { name: 'Chosen skills' }).getByRole('listitem').count()).toBe(2);
    await heading('A chain of 8 strips').waitFor();
    await chooseIn(page, row('Questions about'), 'A mix');
    await page.getByText('Different topics in turn').waitFor();
  });

  it('swaps one question, keeps the others, and takes the swap back', async () => {
    await chooseIn(page, row('Show'), 'Questions and answers');
    const rows = page.getByRole('row');
    await expect.poll(() => rows.count()).toBe(8);
    const before = await rows.allInnerTexts();
    await pressOn(page, button('Swap question 4'));
    await button('Take the swap back').waitFor();
    const after = await rows.allInnerTexts();
    expect(after.filter((text, at) => text !== before[at])).toHaveLength(1);
    expect(after[4]).not.toBe(before[4]);
    await expectAccessible(page);
    await pressOn(page, button('Take the swap back'));
    await expect.poll(() => rows.allInnerTexts()).toEqual(before);
  });

  it('prints every document of a set from the same pages that it shows', async () => {
    await chooseIn(page, row('Show'), 'Paper');
    const counts: Record<string, number> = {};
    for (const name of ['Cut and paste', 'Labels', 'Check key', 'Everything', 'Strips']) {
      await chooseIn(page, row('What to print'), name);
      counts[name] = await pagesAreSet();
    }
    // One sheet of strips and its back.
    expect(counts['Strips']).toBe(2);
    expect(counts['Everything']).toBeGreaterThanOrEqual(5);
    await expectAccessible(page);
  });

  it('makes and prints ten sets with one press each, and numbers them as they are kept', async () => {
    await pressOn(page, button('Ten sets'));
    await expect.poll(() => button('Keep as sets').isEnabled()).toBe(true);
    await expect.poll(() => pages().count(), { timeout: 90_000 }).toBe(20);
    const first = await savedPdf();
    await pressOn(page, button('Keep as sets'));
    const dialog = page.getByRole('dialog');
    await dialog.waitFor();
    await expectAccessible(page);
    await pressOn(page, dialog.getByRole('button', { name: 'Keep these 10 sets' }));
    await page.getByText('Kept as 1 to 10 of the chains, in box 1.').waitFor();
    expect(await button('Kept').isDisabled()).toBe(true);
    const shelf = await fetch(`${server.address}/api/classes/${classId}/sets`);
    const { sets } = (await shelf.json()) as { sets: { kind: string; number: number }[] };
    expect(sets.map(({ kind, number }) => `${kind} ${number}`)).toEqual(
      Array.from({ length: 10 }, (_, at) => `chain ${at + 1}`),
    );
    // The numbers on paper were those that the shelf had free.
    expect((await savedPdf()).equals(first)).toBe(true);
    const next = page.waitForRequest((request) => request.url().endsWith('/api/kits/preview'));
    await pressOn(page, button('Make another'));
    const order = (await next).postDataJSON() as { sets: { number: number }[] };
    expect(order.sets.map(({ number }) => number)).toEqual([11, 12, 13, 14, 15, 16, 17, 18, 19, 20]);
    await pagesAreSet();
  });

  it('draws a trail on its mat and with every tile laid', async () => {
    await chooseIn(page, row('Activity'), 'Trail');
    await chooseIn(page, row('Show'), 'Pieces');
    await setCount('Numbered sets', 1);
    await heading('A trail of 4 rows and 4 columns').waitFor();
    expect(await page.getByRole('figure').count()).toBe(2);
    await setCount('Rows', 3);
    await heading('A trail of 3 rows and 4 columns').waitFor();
    await chooseIn(page, row('Show'), 'Questions and answers');
    const rows = page.getByRole('row');
    await expect.poll(() => rows.count()).toBe(13);
    const before = await rows.allInnerTexts();
    await pressOn(page, button('Swap question B2'));
    await button('Take the swap back').waitFor();
    expect((await rows.allInnerTexts()).filter((text, at) => text !== before[at])).toHaveLength(1);
    await chooseIn(page, row('Show'), 'Pieces');
    await tabTo(page, page.getByRole('combobox', { name: 'Scene' }));
    await page.keyboard.press('r');
    await expect.poll(() => page.url()).toContain('theme=rocket');
    await expectAccessible(page);
    await chooseIn(page, row('Show'), 'Paper');
    for (const name of ['Mat and tiles', 'Cut and paste', 'Check key', 'Everything']) {
      await chooseIn(page, row('What to print'), name);
      expect(await pagesAreSet(), name).toBeGreaterThanOrEqual(1);
    }
    await savedPdf();
    await chooseIn(page, row('Show'), 'Pieces');
  });

  it('makes a jigsaw with a way to solve it, and says what to change when there is none', async () => {
    await chooseIn(page, row('Activity'), 'Jigsaw');
    await jigsawTitle().waitFor();
    expect(await page.getByText('Only one way to lay the pieces makes every row true.').isVisible()).toBe(
      true,
    );
    expect(await page.getByRole('figure').count()).toBe(3);
    await expectAccessible(page);
    await chooseIn(page, row('Show'), 'A way to solve it');
    await page
      .getByText(/^The mat shows|^Only piece|^Piece/)
      .first()
      .waitFor();
    await expectAccessible(page);
    await chooseIn(page, row('Show'), 'Paper');
    for (const name of ['Mat and pieces', 'Cut and paste', 'Check key', 'Everything']) {
      await chooseIn(page, row('What to print'), name);
      expect(await pagesAreSet(), name).toBeGreaterThanOrEqual(1);
    }
    await savedPdf();
    await tabTo(page, page.getByRole('combobox', { name: 'Rows hold' }));
    await page.keyboard.type('Same');
    await setCount('Rows', 4);
    await chooseIn(page, row('How hard'), 'Hard');
    const refusal = page.getByRole('alert');
    await refusal.waitFor();
    expect(await refusal.innerText()).toMatch(/^A 4 by 7 jigsaw .*\. Choose .*\.$/m);
    await expectAccessible(page);
    await pressOn(page, button('Make it easy'));
    await refusal.waitFor({ state: 'detached' });
    await jigsawTitle().waitFor();
  });

  it('makes the last wish when wishes come faster than sets', async () => {
    await chooseIn(page, row('Show'), 'Pieces');
    await setCount('Rows', 8);
    await setCount('Columns', 10);
    await chooseIn(page, row('How hard'), 'Hard');
    await pressOn(page, button('Ten sets'));
    for (let turn = 0; turn < 3; turn++) await pressOn(page, button('Make another'));
    await chooseIn(page, row('How hard'), 'Easy');
    await setCount('Rows', 3);
    await setCount('Columns', 5);
    await page.getByText(/^Set 1 of 10$/).waitFor({ timeout: 90_000 });
    const url = new URL(page.url());
    expect(url.searchParams.get('rows')).toBe('3');
    await expect.poll(() => page.getByText(/^\d+ pieces|^A jigsaw of [4-7] pieces$/).count()).toBe(1);
  });
});

describe('the Make room on a tablet, by touch', () => {
  it('makes, looks at and prints without anything running off the side', async () => {
    const context = await browser.newContext({
      viewport: { width: 820, height: 1180 },
      hasTouch: true,
      reducedMotion: 'reduce',
    });
    context.setDefaultTimeout(90_000);
    const tablet = await context.newPage();
    const faults: string[] = [];
    tablet.on('pageerror', (error) => faults.push(error.message));
    tablet.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
    await tablet.goto(`${server.address}/class/${classId}/make?seed=3`);
    await heading('A chain of 10 strips', tablet).waitFor();
    await tablet.getByRole('button', { name: 'Increase Strips' }).tap();
    await heading('A chain of 11 strips', tablet).waitFor();
    for (const [activity, title] of [
      ['Trail', /^A trail/],
      ['Jigsaw', /^A jigsaw/],
      ['Chain', /^A chain/],
    ] as const) {
      await row('Activity', tablet).getByText(activity, { exact: true }).tap();
      await tablet.getByRole('heading', { name: title }).waitFor();
      const width = await tablet.evaluate(() => document.documentElement.scrollWidth);
      expect(width, activity).toBeLessThanOrEqual(820);
      await expectAccessible(tablet);
    }
    await row('Show', tablet).getByText('Paper', { exact: true }).tap();
    expect(await pagesAreSet(tablet)).toBeGreaterThanOrEqual(4);
    await expectAccessible(tablet);
    expect(faults).toEqual([]);
    await context.close();
  });
});

describe('all the while', () => {
  it('no request left this machine and no page reported an error', () => {
    expect(watched.strays).toEqual([]);
    expect(watched.faults).toEqual([]);
  });
});
