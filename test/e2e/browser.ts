// A real browser, driven by keyboard, watched for requests that leave this machine and for accessibility faults.
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import process from 'node:process';
import { type Browser, chromium, type Locator, type Page } from 'playwright-core';
import { expect } from 'vitest';

const PLACES = [process.env['AFTERBELL_BROWSER'], '/usr/bin/chromium', '/usr/bin/google-chrome'];
/** The browser's program, or null when there is none here. */
export const BROWSER = PLACES.find((place) => place && existsSync(place)) ?? null;

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

export function launchBrowser(): Promise<Browser> {
  if (!BROWSER) throw new Error('no browser: install chromium');
  return chromium.launch({
    executablePath: BROWSER,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}

export interface Watched {
  readonly page: Page;
  /** Addresses that a page asked for outside its own server. */
  readonly strays: string[];
  /** Errors that a page reported. */
  readonly faults: string[];
}

/** A page that may talk to `address` only; anything else is noted and cut off. */
export async function openPage(
  browser: Browser,
  address: string,
  width: number,
  height: number,
  hasTouch = false,
): Promise<Watched> {
  const context = await browser.newContext({
    viewport: { width, height },
    hasTouch,
    reducedMotion: 'reduce',
    acceptDownloads: true,
  });
  // A screen that comes is waited for as long as a slow machine needs; how fast it comes is a matter of the benchmarks.
  context.setDefaultTimeout(90_000);
  const page = await context.newPage();
  const strays: string[] = [];
  const faults: string[] = [];
  await context.route('**/*', (route) => {
    const url = route.request().url();
    if (url.startsWith(address) || url.startsWith('blob:') || url.startsWith('data:'))
      return route.continue();
    strays.push(url);
    return route.abort();
  });
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  return { page, strays, faults };
}

/** No violation of any rule that axe-core knows for WCAG 2.2 AA. */
export async function expectAccessible(page: Page): Promise<void> {
  // Evaluated by the debugger, which the page's security policy does not bind.
  await page.evaluate(AXE);
  const violations = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: {
        run: (
          node: Document,
          options: object,
        ) => Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
      };
    };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const result = await axe.run(document, { runOnly: { type: 'tag', values: tags } });
    return result.violations.map(({ id, nodes }) => ({
      id,
      where: nodes.slice(0, 3).map(({ html, failureSummary }) => `${html.slice(0, 160)} ${failureSummary}`),
    }));
  });
  expect(violations).toEqual([]);
}

/** Moves the focus with Tab (or Shift+Tab) until it is on `target`, as a person without a mouse does. */
export async function tabTo(page: Page, target: Locator, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  await target.waitFor({ state: 'visible' });
  for (let presses = 0; presses < 150; presses++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`Tab does not reach ${target.toString()}`);
}

/** Tabs to a control and presses it. */
export async function pressOn(page: Page, target: Locator, key = 'Enter'): Promise<void> {
  await tabTo(page, target);
  await page.keyboard.press(key);
}

/** Chooses in a row of choices: Tab reaches the row, arrows move within it, Space takes. */
export async function chooseIn(page: Page, row: Locator, name: string): Promise<void> {
  const target = row.getByText(name, { exact: true });
  await target.waitFor();
  for (let presses = 0; presses < 150; presses++) {
    if (await row.evaluate((element) => element.contains(document.activeElement))) break;
    await page.keyboard.press('Tab');
  }
  for (const arrow of ['ArrowRight', 'ArrowLeft']) {
    for (let presses = 0; presses < 12; presses++) {
      if (await target.evaluate((element) => element === document.activeElement)) {
        await page.keyboard.press('Space');
        return;
      }
      await page.keyboard.press(arrow);
    }
  }
  throw new Error(`arrows do not reach “${name}”`);
}
