// Printed sets from the shelf to the children and back, by keyboard alone, in a real browser.
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import type { Library, RotaView } from '#api/sets.js';
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
let room: ClassDetail;

beforeAll(async () => {
  server = await startServer('2026-05-08');
  browser = await launchBrowser();
  watched = await openPage(browser, server.address, 1366, 768);
  ({ page } = watched);
  const child = (givenName: string, year: number) => ({ givenName, familyName: '', alias: '', year });
  room = (await post('/api/classes', {
    name: 'Wattle',
    years: [3, 4],
    children: [child('Amara', 3), child('Noah', 4), child('Priya', 4), child('Leo', 3)],
  })) as ClassDetail;
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

/** A busy computer may take its time; nothing is wrong until then. */
const PATIENT = { timeout: 90_000 };

const post = async (path: string, body: unknown): Promise<unknown> =>
  (
    await fetch(server.address + path, {
      method: 'POST',
      body: JSON.stringify(body),
      headers: { 'Content-Type': 'application/json' },
    })
  ).json();
const get = async (path: string): Promise<unknown> => (await fetch(server.address + path)).json();
const shelf = async () => ((await get(`/api/classes/${room.id}/sets`)) as Library).sets;
const rota = async () => (await get(`/api/classes/${room.id}/rota/chain`)) as RotaView;
const setOf = async (name: string) =>
  (await rota()).children.find(({ shownAs }) => shownAs === name)?.holds?.number ?? null;

const button = (name: string) => page.getByRole('button', { name, exact: true });
const view = (name: string) => chooseIn(page, page.getByRole('radiogroup', { name: 'View' }), name);

describe('printed sets', () => {
  it('are made from the empty shelf', async () => {
    await page.goto(`${server.address}/class/${room.id}/today`);
    await pressOn(page, page.getByRole('link', { name: 'Sets', exact: true }));
    await page.getByRole('heading', { name: 'No chains on the shelf yet' }).waitFor();
    await expectAccessible(page);
    await view('Today’s rota');
    await page.getByRole('heading', { name: 'There are no chains yet' }).waitFor();
    await expectAccessible(page);
    await pressOn(page, button('Go to the shelf'));
    await pressOn(page, button('Make 10 chains'));
    await page.getByText('10 chains made: middle 1 to 10.').waitFor();
    await page.getByRole('table', { name: 'Box 1, middle' }).waitFor();
    expect((await shelf()).map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  });

  it('are printed a box at a time, under the numbers of the shelf', async () => {
    await pressOn(page, button('Print Box 1, middle'));
    await page.getByRole('heading', { name: 'Print middle box 1' }).waitFor();
    await page.getByText(/^(More than )?\d+ pages.* on A4/).waitFor({ timeout: 120_000 });
    await expectAccessible(page);
    await pressOn(page, button('Tick them as printed'));
    await page.getByText('Ticked as printed').waitFor();
    await pressOn(page, button('Back to the shelf'));
    await page.getByText('10 chains: printed.').waitFor();
    expect((await shelf()).every(({ nextStep }) => nextStep === 'cut')).toBe(true);
  });

  it('are ticked off one by one or box by box, and a tick is taken back', async () => {
    await view('Today’s rota');
    await page.getByRole('heading', { name: '10 chains made, none in its box yet' }).waitFor();
    await view('The shelf');
    for (const step of ['cut', 'laminated']) await pressOn(page, button(`all of Box 1 ${step}`));
    await page.getByText('10 chains: laminated.').waitFor();
    const tick = (number: number) => button(`Set middle ${number}: in its box`);
    // Tab reaches the table once; arrows move within it.
    await tabTo(page, button('Set middle 1: printed'));
    for (let column = 0; column < 3; column++) await page.keyboard.press('ArrowRight');
    for (let row = 1; row <= 4; row++) {
      await page.keyboard.press('Space');
      await page.getByText(`Set middle ${row}: in its box.`).waitFor();
      await page.keyboard.press('ArrowDown');
    }
    expect(await tick(5).evaluate((element) => element === document.activeElement)).toBe(true);
    expect((await shelf()).filter(({ nextStep }) => nextStep === null).map(({ number }) => number)).toEqual([
      1, 2, 3, 4,
    ]);
    await expectAccessible(page);
    await pressOn(page, button('all of Box 1 in its box'));
    await page.getByText('6 chains: in its box.').waitFor();
    await tabTo(page, button('Undo'), 'Shift+Tab');
    await page.keyboard.press('Enter');
    await page.getByText('Tick each step as it is done').waitFor();
    await expect
      .poll(async () => (await shelf()).filter(({ nextStep }) => nextStep === null).length, PATIENT)
      .toBe(4);
  });

  it('carry a note and tell what they practise', async () => {
    // Tab comes back to where the arrows left off: in the row of set 5.
    await tabTo(page, button('Set middle 5: in its box'));
    for (let row = 5; row > 2; row--) await page.keyboard.press('ArrowUp');
    for (let column = 4; column > 0; column--) await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog', { name: 'Chain middle 2' });
    await dialog.getByRole('heading', { name: 'Practises' }).waitFor();
    await expectAccessible(page);
    await tabTo(page, dialog.getByLabel('Note'));
    await page.keyboard.type('Strip C is torn.');
    await page.keyboard.press('Tab');
    await pressOn(page, dialog.getByRole('button', { name: 'Save the note' }));
    await dialog.waitFor({ state: 'detached' });
    await page.getByText('Strip C is torn.').waitFor();
  });
});

describe('the rota', () => {
  it('leaves out who is away, hands out to everyone else, and moves on with one tap', async () => {
    await view('Today’s rota');
    await pressOn(page, button('Away: Leo'), 'Space');
    await page.getByText('away today', { exact: true }).waitFor();
    await pressOn(page, button('Hand out'));
    await page.getByText('3 children have a set, 1 is away.').first().waitFor();
    await expectAccessible(page);
    const held = (await rota()).children.map(({ holds }) => holds?.number ?? null);
    expect(new Set(held.slice(0, 3)).size).toBe(3);
    expect(held[3]).toBeNull();
    const first = await setOf('Amara');
    await pressOn(page, button('Finished, next: Amara'));
    // A tap that comes twice counts once.
    await page.keyboard.press('Enter');
    await expect.poll(() => setOf('Amara'), PATIENT).not.toBe(first);
    expect(await setOf('Amara')).not.toBeNull();
    // The focus stays where it is; the next tap finds no set to give and says so.
    await page.waitForTimeout(800);
    expect(await setOf('Amara')).not.toBeNull();
    await page.keyboard.press('Enter');
    await page
      .getByText(/is in use today/)
      .first()
      .waitFor();
    expect(await setOf('Amara')).toBeNull();
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(() => setOf('Amara'), PATIENT).toBe(first);
  });

  it('keeps the set of a child who is away for the child', async () => {
    const before = await setOf('Noah');
    await pressOn(page, button('Away: Noah'), 'Space');
    await page.getByText('keeps it, away today').waitFor();
    expect(await setOf('Noah')).toBe(before);
    expect(await button('Finished, next: Noah').count()).toBe(0);
    await page.keyboard.press('Space');
    await button('Finished, next: Noah').waitFor();
  });

  it('takes back, gives by hand, and follows the band chosen for a child', async () => {
    await pressOn(page, button('More for Priya'));
    const dialog = page.getByRole('dialog', { name: 'Priya' });
    await dialog.getByText('New to this child.').waitFor();
    await expectAccessible(page);
    await pressOn(page, dialog.getByRole('button', { name: 'Take it back unfinished' }));
    await expect.poll(() => setOf('Priya'), PATIENT).toBeNull();
    await pressOn(page, button('Choose a set for Priya'));
    const free = (await rota()).free.at(-1)?.number ?? 0;
    await pressOn(page, dialog.getByRole('button', { name: `Give middle ${free} ` }));
    await expect.poll(() => setOf('Priya'), PATIENT).toBe(free);
    await pressOn(page, button('More for Priya'));
    await chooseIn(page, dialog.getByRole('radiogroup', { name: 'Band of Priya' }), 'Upper');
    await dialog.getByText('Upper band, Years 5 and 6').waitFor();
    await page.keyboard.press('Escape');
    expect((await rota()).children[2]).toMatchObject({ band: 'upper', bandChosen: true });
    expect(await setOf('Priya')).toBe(free);
  });

  it('is printed on one page', async () => {
    const link = page.getByRole('link', { name: 'Print the rota' });
    await tabTo(page, link, 'Shift+Tab');
    const paper = await fetch(server.address + (await link.getAttribute('href')));
    expect(paper.headers.get('x-page-count')).toBe('1');
    expect(
      Buffer.from(await paper.arrayBuffer())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
  });

  it('works by touch on a tablet', async () => {
    const tablet = await openPage(browser, server.address, 820, 1180, true);
    await tablet.page.goto(`${server.address}/class/${room.id}/sets?kind=chain&view=rota`);
    const before = await setOf('Noah');
    await tablet.page.getByRole('button', { name: 'Finished, next: Noah' }).tap();
    await expect.poll(() => setOf('Noah'), PATIENT).not.toBe(before);
    await expectAccessible(tablet.page);
    const small = await tablet.page
      .getByRole('main')
      .getByRole('button')
      .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 40).length);
    expect(small).toBe(0);
    expect([...tablet.strays, ...tablet.faults]).toEqual([]);
    await tablet.page.context().close();
  });
});

describe('all the while', () => {
  it('no request left this machine and no page reported an error', () => {
    expect(watched.strays).toEqual([]);
    expect(watched.faults).toEqual([]);
  });
});
