// What marking costs a teacher: presses for each task, and how long the program takes to follow them as fast as they come.
// Presses are those of the invented class of the tests; a person's own seconds come on top.
import { runnerImport } from 'vite';
import { ROOT } from './support/measure.mjs';
import { tell } from './support/tell.mjs';

const load = async (path) =>
  (
    await runnerImport(`${ROOT}${path}`, {
      configFile: false,
      logLevel: 'error',
      root: ROOT,
      resolve: { conditions: ['afterbell-source', 'node'] },
    })
  ).module;
const { launchBrowser, openPage, tabTo } = await load('test/e2e/browser.ts');
const { startServer } = await load('test/e2e/server.ts');
const { inventSlips, keysFor } = await load('test/e2e/slips.ts');

const CHILDREN = 25;
const QUESTIONS = 12;
const DATE = '2026-05-08';

const server = await startServer(DATE);
const browser = await launchBrowser();
try {
  const call = async (method, path, body) => {
    const answer = await fetch(server.address + path, {
      method,
      headers: { 'Content-Type': 'application/json' },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    if (!answer.ok) throw new Error(`${path}: ${await answer.text()}`);
    return answer.json();
  };
  const room = await call('POST', '/api/classes', {
    name: 'Wattle',
    years: [4],
    children: Array.from({ length: CHILDREN }, (_, i) => ({
      givenName: `Wren ${String.fromCharCode(65 + i)}`,
      familyName: 'Tallow',
      alias: '',
      year: 4,
    })),
  });
  const { page } = await openPage(browser, server.address, 1366, 768, true);
  const { sheets } = await call('GET', `/api/classes/${room.id}/days/${DATE}`);
  const [front, back] = sheets;
  const slips = inventSlips(front.board, CHILDREN);

  /** Runs a task and tells its presses and seconds; `act` is handed what presses a key. */
  const measure = async (what, most, act) => {
    let presses = 0;
    const start = performance.now();
    await act({
      key: async (name) => {
        presses++;
        await page.keyboard.press(name);
      },
      press: async (target) => {
        presses++;
        await target.click();
      },
    });
    const seconds = (performance.now() - start) / 1000;
    tell({
      what,
      measured: `${presses} presses; the program follows in ${seconds.toFixed(1)} s`,
      target: `${most} presses`,
      met: presses <= most,
    });
  };
  const saved = () => page.getByText('Saved', { exact: true }).waitFor();

  await page.goto(`${server.address}/class/${room.id}/marking?sheet=${front.id}`);
  await page.getByText('the last one', { exact: true }).click();
  await tabTo(page, page.getByRole('gridcell', { name: /question 12,/ }).first());
  await measure(
    `a board by slip: ${CHILDREN} slips of ${QUESTIONS}, 240 of 300 right`,
    340,
    async ({ key }) => {
      for (const slip of slips) for (const name of keysFor(slip, QUESTIONS)) await key(name);
      await saved();
    },
  );

  await page.goto(`${server.address}/class/${room.id}/marking?sheet=${back.id}`);
  await page.getByText('With the class', { exact: true }).click();
  await page.getByText('Tap who missed it').waitFor();
  await measure('a board with the class: the same 60 misses', QUESTIONS + 60, async ({ press }) => {
    for (let rung = 1; rung <= QUESTIONS; rung++) {
      await page.getByText(`Question ${rung} of ${QUESTIONS}`).waitFor();
      for (const [at, { shownAs }] of room.children.entries())
        if (slips[at].has(rung)) await press(page.getByRole('button', { name: shownAs, exact: true }));
      await press(page.getByRole('button', { name: /^Everyone (else )?has it/ }));
    }
    await saved();
  });

  await call('POST', `/api/classes/${room.id}/timed`, { date: DATE });
  await page.goto(`${server.address}/class/${room.id}/practice?date=${DATE}`);
  await tabTo(page, page.getByRole('textbox', { name: /^Done, / }).first());
  await measure(`timed counts of ${CHILDREN} sheets`, 3 * CHILDREN, async ({ key }) => {
    for (let at = 0; at < CHILDREN; at++) for (const name of [...String(20 + at), 'Enter']) await key(name);
    await page.getByText(`${CHILDREN} counted.`).waitFor();
  });

  const circled = page.getByRole('textbox', { name: /^Numbers of the circled/ }).first();
  await tabTo(page, circled, 'Shift+Tab');
  await measure('three circled questions of a sheet, by number', 6, async ({ key }) => {
    for (const name of ['4', 'Space', '9', 'Space', '7', 'Enter']) await key(name);
    await page.getByRole('status').filter({ hasText: '3 circled' }).waitFor({ state: 'attached' });
  });
  await measure('three circled questions of a sheet, by tapping', 5, async ({ press }) => {
    await press(page.getByRole('button', { name: /^Tap the circled/ }).nth(1));
    const dialog = page.getByRole('dialog');
    for (const place of [4, 7, 9])
      await press(dialog.getByRole('button', { name: new RegExp(`^${place} `) }));
    await press(dialog.getByRole('button', { name: 'Save' }));
    await page.getByRole('status').filter({ hasText: '3 circled' }).waitFor({ state: 'attached' });
  });
} finally {
  await browser.close();
  await server.stop();
}
