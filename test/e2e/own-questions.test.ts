// Questions of one's own by keyboard alone: typed and checked, imported, saved, and made into a chain.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
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
const folder = mkdtempSync(join(tmpdir(), 'own-questions-'));

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
  rmSync(folder, { recursive: true });
});

const button = (name: string) => page.getByRole('button', { name, exact: true });
const box = () => page.getByRole('textbox', { name: 'One question on each line' });
const checks = () => page.getByRole('list', { name: 'As a child will see them' }).getByRole('listitem');

describe('own questions', () => {
  it('are checked as they are typed, for any number', async () => {
    await page.goto(`${server.address}/class/${room}/skills`);
    await pressOn(page, button('My questions'));
    await tabTo(page, box());
    await page.keyboard.type('What is double {n}? | 2 * n | n + 2; n\nHalf of {n}? | n / ');
    await page.getByText('1 question is ready; 1 line needs a look').waitFor();
    expect(await checks().allInnerTexts()).toEqual([
      expect.stringMatching(/Line 1\s+What is double 24\? 48\s+typical slips: 26, 24/),
      expect.stringMatching(/Line 2\s+Answer: \S.*[.]/),
    ]);
    await expectAccessible(page);
    await page.keyboard.type('2 | | | n mod 2 = 0');
    await page.getByText('2 questions are ready.').waitFor();
    await tabTo(page, page.getByRole('textbox', { name: 'Try them with the number' }));
    await page.keyboard.press('Control+A');
    await page.keyboard.type('35');
    await page.getByText('not asked about 35').waitFor();
    expect(await checks().first().innerText()).toContain('What is double 35? 70');
  });

  it('come from a CSV file too, and stay when they are saved', async () => {
    const file = join(folder, 'mine.csv');
    writeFileSync(file, 'answer,question\nn + n + 2,{n} + {n + 2} = ?\n24,"Legs, of 3 spiders?"\n');
    await page.locator('input[type=file]').setInputFiles(file);
    await page.getByText('2 lines of mine.csv added at the end.').waitFor();
    expect((await box().inputValue()).split('\n').slice(-2)).toEqual([
      '{n} + {n + 2} = ? | n + n + 2',
      'Legs, of 3 spiders? | 24',
    ]);
    await pressOn(page, button('Save'));
    await page.getByText('Saved.', { exact: true }).waitFor();
    await page.reload();
    await checks().nth(3).waitFor();
    expect(await checks().last().innerText()).toContain('Legs, of 3 spiders? 24');
    await expectAccessible(page);
  });

  it('are not lost by leaving before they are saved', async () => {
    await tabTo(page, box());
    await page.keyboard.press('Control+End');
    await page.keyboard.type('\nWhat is {n} less 1? | n - 1');
    await pressOn(page, page.getByRole('link', { name: 'Today', exact: true }));
    const asking = page.getByRole('alertdialog', { name: 'Leave without saving?' });
    await asking.waitFor();
    await expectAccessible(page);
    await pressOn(page, asking.getByRole('button', { name: 'Keep it' }));
    expect(await checks().last().innerText()).toContain('What is 24 less 1? 23');
    await pressOn(page, page.getByRole('link', { name: 'Today', exact: true }));
    await pressOn(page, asking.getByRole('button', { name: 'Leave', exact: true }));
    await page.waitForURL(/\/today/);
  });

  it('make a chain in the Make room', async () => {
    await page.goto(`${server.address}/class/${room}/make`);
    await chooseIn(page, page.getByRole('radiogroup', { name: 'Questions about' }), 'My questions');
    await page.getByText('4 questions of your own').waitFor();
    await chooseIn(page, page.getByRole('radiogroup', { name: 'Show' }), 'Questions and answers');
    await page.getByRole('cell', { name: 'My question', exact: true }).nth(8).waitFor();
    expect(await page.getByRole('cell', { name: 'My question', exact: true }).count()).toBe(9);
    expect(await page.getByText(/^Any typical mistake/).count()).toBe(1);
    await expectAccessible(page);
    await pressOn(page, button('Keep as a set'));
    await pressOn(page, page.getByRole('dialog').getByRole('button', { name: /^Keep/ }));
    await button('Kept').waitFor();
  });
});
