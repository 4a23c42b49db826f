// npm run screenshots [name…]: takes every picture of docs/images anew, from the built program with the invented class on a
// fixed day. Needs a browser and pdftoppm.
import { spawn, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { chromium } from 'playwright-core';
import { smallPng } from './pictures/small-png.mjs';
import { isBuilt } from './setup/freshness.mjs';
import { ROOT, run } from './setup/run.mjs';

const TODAY = '2026-05-08';
const NUMBER = '47';
const MARKED_DAY = '2026-05-01';
const IMAGES = join(ROOT, 'docs', 'images');
const LAPTOP = { width: 1366, height: 768 };
const TV = { width: 1920, height: 1080 };
const TABLET = { width: 820, height: 1180 };
const PAGE_DPI = 70;

const BROWSER = [process.env.AFTERBELL_BROWSER, '/usr/bin/chromium', '/usr/bin/google-chrome'].find(
  (place) => place && existsSync(place),
);

function freePort() {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}

/** The program on an empty folder of its own, and its address once it answers. */
async function startProgram(folder) {
  const port = await freePort();
  const child = spawn(process.execPath, [join(ROOT, 'dist/cli/main.js'), 'serve', '--no-open'], {
    env: {
      ...process.env,
      PORT: String(port),
      AFTERBELL_DATA: join(folder, 'data'),
      AFTERBELL_TODAY: TODAY,
      DATABASE_URL: '',
    },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await new Promise((resolve, reject) => {
    child.stdout.on('data', (chunk) => String(chunk).includes('is ready at') && resolve());
    child.once('exit', () => reject(new Error('the program did not start')));
  });
  return { child, address: `http://127.0.0.1:${port}` };
}

async function ask(address, path, body, method = body ? 'POST' : 'GET') {
  const answer = await fetch(`${address}${path}`, {
    method,
    headers: { 'content-type': 'application/json', origin: address },
    ...(body ? { body: JSON.stringify(body) } : {}),
  });
  if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
  return answer;
}

/** Each screen: its address, its size, and what is done before the picture is taken. */
function screens(classId) {
  const inClass = (room) => `/class/${classId}/${room}`;
  const press =
    (...keys) =>
    async (page) => {
      for (const key of keys) {
        await page.keyboard.press(key);
        await page.waitForTimeout(200);
      }
    };
  return [
    { name: 'start', path: '/start', size: LAPTOP },
    { name: 'today', path: inClass('today'), size: LAPTOP },
    { name: 'today-dark', path: inClass('today'), size: LAPTOP, scheme: 'dark' },
    { name: 'today-tablet', path: inClass('today'), size: TABLET },
    {
      name: 'today-side-by-side',
      path: inClass('today'),
      size: LAPTOP,
      before: async (page) => {
        await page.getByText('Years side by side', { exact: true }).click();
        await page.getByRole('heading', { name: 'Year 5', exact: true }).waitFor();
      },
    },
    { name: 'print-room', path: inClass('print'), size: LAPTOP },
    { name: 'make-chain', path: `${inClass('make')}?seed=12`, size: LAPTOP, before: setMade },
    { name: 'make-trail', path: `${inClass('make')}?activity=trail&seed=7`, size: LAPTOP, before: setMade },
    { name: 'make-jigsaw', path: `${inClass('make')}?activity=jigsaw&seed=7`, size: LAPTOP, before: setMade },
    {
      name: 'make-paper',
      path: `${inClass('make')}?seed=12&count=10`,
      size: LAPTOP,
      before: async (page) => {
        await setMade(page);
        await page.getByRole('radiogroup', { name: 'Show' }).getByText('Paper').click();
        await page.getByRole('radiogroup', { name: 'What to print' }).getByText('Strips').click();
        await page.getByRole('img', { name: 'Page 20 of the print' }).waitFor();
      },
    },
    { name: 'make-tablet', path: `${inClass('make')}?activity=trail&seed=3`, size: TABLET, before: setMade },
    {
      name: 'marking',
      path: `${inClass('marking')}?date=${MARKED_DAY}`,
      size: LAPTOP,
      before: markingAtWork,
    },
    { name: 'understanding', path: inClass('understanding'), size: LAPTOP },
    {
      name: 'understanding-child',
      path: inClass('understanding'),
      size: LAPTOP,
      before: async (page) => {
        const { children } = await (await page.request.get(`/api/classes/${classId}/understanding`)).json();
        const telling = children.find(({ findings }) => findings?.length > 0) ?? children[0];
        await page.goto(`${inClass('understanding')}?child=${telling.childId}`);
        await page.waitForLoadState('networkidle');
      },
    },
    { name: 'sets-rota', path: `${inClass('sets')}?kind=chain&view=rota`, size: LAPTOP },
    { name: 'sets-rota-tablet', path: `${inClass('sets')}?kind=chain&view=rota`, size: TABLET },
    {
      name: 'sets-shelf',
      path: `${inClass('sets')}?kind=chain&view=shelf`,
      size: LAPTOP,
      before: async (page) => {
        const heading = page.getByRole('heading', { name: 'Box 2' }).first();
        await heading.evaluate((element) => element.scrollIntoView({ block: 'start' }));
        await page.mouse.wheel(0, -24);
      },
    },
    {
      name: 'skills',
      path: `${inClass('skills')}?find=equal&skill=frac.equal`,
      size: LAPTOP,
      before: (page) => page.getByRole('button', { name: 'Answer to example 1' }).click(),
    },
    {
      name: 'skills-sheet',
      path: `${inClass('skills')}?desk=true&sheet=${encodeURIComponent('["mult.table.7","frac.equal"]')}`,
      size: LAPTOP,
      before: (page) => page.getByRole('img', { name: 'Page 2 of the print' }).waitFor(),
    },
    { name: 'children', path: inClass('children'), size: LAPTOP },
    { name: 'settings', path: '/settings', size: LAPTOP },
    {
      name: 'display',
      path: `/display/${classId}/${TODAY}?show=class-front`,
      size: TV,
      before: press('Enter'),
    },
    {
      name: 'display-side-by-side',
      path: `/display/${classId}/${TODAY}?show=beside`,
      size: TV,
      before: press('Enter'),
    },
    {
      name: 'display-answers',
      path: `/display/${classId}/${TODAY}?show=class-front`,
      size: TV,
      before: press('r', 'PageDown', 'PageDown', 'PageDown', 'PageDown', 'PageDown', 'PageDown', 'PageDown'),
    },
    {
      name: 'solve-chain',
      path: `/solve/${classId}?activity=chain&source=mix&seed=7`,
      size: TV,
      before: async (page) => {
        for (const strip of [1, 2, 3, 4]) {
          await page.locator(`[data-piece="${strip}"]`).click();
          await page.locator(`[data-laid="${strip}"]`).click();
        }
        await page.locator('[data-piece="6"]').click();
      },
    },
    {
      name: 'solve-trail',
      path: `/solve/${classId}?activity=trail&source=mix&seed=3`,
      size: TABLET,
      before: (page) => layTiles(page, [0, 1, 2, 4, 5, 6, 9]),
    },
    {
      name: 'solve-jigsaw',
      path: `/solve/${classId}?activity=jigsaw&rows=4&columns=7&seed=2`,
      size: LAPTOP,
      before: (page) => page.getByRole('button', { name: 'A hint' }).click(),
    },
  ];
}

/** The Make room once its set is there. */
async function setMade(page) {
  await page.getByRole('heading', { name: /^A (chain|trail|jigsaw)/ }).waitFor();
}

/** The marking grid with the place of work on a wrong answer, so that its card shows. */
async function markingAtWork(page) {
  const grid = page.getByRole('grid');
  await grid.waitFor();
  const wrong = grid.locator('[data-state="wrong"]').first();
  if ((await wrong.count()) > 0) await wrong.click();
  await page.waitForTimeout(300);
}

/** A shelf at work: a full box of each band in hand, a second one halfway, two children away. */
async function fillShelf(address, classId) {
  const path = `/api/classes/${classId}`;
  const make = async (band, count, seed) =>
    (await (await ask(address, `${path}/sets`, { kind: 'chain', band, count, seed })).json()).sets;
  const tick = (sets, step) =>
    ask(address, `${path}/sets/steps`, { setIds: sets.map(({ id }) => id), step, done: true }, 'PUT');
  const { children } = await (await ask(address, path)).json();
  const boxes = [await make('middle', 10, 1), await make('upper', 10, 1), await make('upper', 5, 11)].flat();
  const second = await make('middle', 10, 11);
  for (const step of ['printed', 'cut', 'laminated', 'boxed']) await tick(boxes, step);
  await tick(second, 'printed');
  await tick(second.slice(0, 7), 'cut');
  await tick(second.slice(0, 5), 'laminated');
  await tick(second.slice(0, 4), 'boxed');
  await ask(address, `${path}/away`, { childId: children[4].id, absent: true }, 'PUT');
  await ask(address, `${path}/rota/chain/hand-out`, {});
  await ask(address, `${path}/away`, { childId: children[9].id, absent: true }, 'PUT');
}

/** Tiles of a trail of four columns laid where they belong. */
async function layTiles(page, tiles) {
  for (const tile of tiles) {
    await page.locator(`[data-piece="${tile}"]`).click();
    const cell = await page.locator(`[data-cell="${Math.floor(tile / 4)},${tile % 4}"]`).boundingBox();
    await page.mouse.click(cell.x + cell.width / 2, cell.y + cell.height / 2);
  }
}

async function takeScreens(browser, address, classId, isWanted) {
  for (const { name, path, size, scheme = 'light', before } of screens(classId)) {
    if (!isWanted(name)) continue;
    const context = await browser.newContext({
      viewport: size,
      colorScheme: scheme,
      reducedMotion: 'reduce',
      locale: 'en-AU',
      timezoneId: 'Australia/Brisbane',
      baseURL: address,
    });
    const page = await context.newPage();
    await page.goto(path);
    await page.waitForLoadState('networkidle');
    await page.evaluate(() => document.fonts.ready);
    await before?.(page);
    // Nothing is to look hovered.
    await page.mouse.move(0, size.height - 1);
    await page.waitForTimeout(200);
    save(name, await page.screenshot());
    await context.close();
  }
}

/** Printed pages: the document, and which of its pages are shown. */
const PRINTED = [
  { name: 'page-poster', order: { document: 'poster', paper: 'A3' }, pages: [1] },
  { name: 'page-sheet', order: { document: 'sheet', paper: 'A4' }, pages: [1, 2] },
  { name: 'page-slips', order: { document: 'slips', paper: 'A4', perPage: 6, names: true }, pages: [1] },
  { name: 'page-key', order: { document: 'key', paper: 'A4' }, pages: [1] },
  { name: 'page-relief', order: { document: 'relief', paper: 'A4' }, pages: [1] },
  { name: 'page-rota', order: { document: 'rota', paper: 'A4' }, pages: [1] },
];

async function takePages(folder, address, sheets, isWanted) {
  const [front, back] = ['front', 'back'].map(
    (side) => sheets.find(({ group, board }) => group === 'class' && board.side === side)?.id,
  );
  for (const { name, order, pages } of PRINTED) {
    if (!isWanted(name)) continue;
    const sheetIds = order.document === 'sheet' ? [front, back] : [front];
    const answer =
      order.document === 'rota'
        ? await ask(address, `/api/classes/${sheets[0].classId}/rota/chain/paper`)
        : await ask(address, '/api/print', { ...order, sheetIds });
    const pdf = join(folder, `${name}.pdf`);
    writeFileSync(pdf, Buffer.from(await answer.arrayBuffer()));
    for (const page of pages) {
      const dpi = order.paper === 'A3' ? PAGE_DPI / Math.SQRT2 : PAGE_DPI;
      save(pages.length > 1 ? `${name}-${page}` : name, pictureOf(pdf, page, dpi));
    }
  }
}

/** Pages of sets made and printed from the command line. */
const KITS = [
  {
    make: ['trail', '--years', '3-4', '--theme', 'hive', '--seed', '5'],
    shown: [
      { name: 'trail-mat', document: 'tiles', page: 1 },
      { name: 'trail-tiles', document: 'tiles', page: 3 },
      { name: 'trail-paste', document: 'pupil', page: 1 },
      { name: 'trail-key', document: 'key', page: 1 },
    ],
  },
  {
    make: ['chain', '--years', '3-4', '--seed', '5'],
    shown: [
      { name: 'chain-strips', document: 'cards', page: 1 },
      { name: 'chain-backs', document: 'cards', page: 2 },
      { name: 'chain-pupil', document: 'pupil', page: 1 },
    ],
  },
  {
    make: ['chain', '--years', '3-4', '--seed', '5', '--count', '10'],
    shown: [
      { name: 'chain-key', document: 'key', page: 1 },
      { name: 'chain-labels', document: 'labels', page: 1 },
    ],
  },
  {
    make: 'jigsaw --years 3-4 --rows 5 --columns 7 --level middle --seed 4'.split(' '),
    shown: [
      { name: 'jigsaw-pieces', document: 'pieces', page: 1 },
      { name: 'jigsaw-mat', document: 'pieces', page: 3 },
      { name: 'jigsaw-pupil', document: 'pupil', page: 1 },
      { name: 'jigsaw-key', document: 'key', page: 1 },
    ],
  },
];

function takeKits(folder, isWanted) {
  const afterbell = (args) => {
    const program = join(ROOT, 'dist/cli/main.js');
    const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
      maxBuffer: 1 << 26,
    });
    if (status !== 0) throw new Error(String(stderr));
    return stdout;
  };
  for (const { make, shown } of KITS) {
    const json = join(folder, `${make[0]}.json`);
    writeFileSync(json, afterbell(['make', ...make, '--json']));
    for (const { name, document, page } of shown) {
      if (!isWanted(name)) continue;
      const pdf = join(folder, `${name}.pdf`);
      afterbell(['print', json, '--document', document, '--out', pdf]);
      save(name, pictureOf(pdf, page, PAGE_DPI));
    }
  }
}

/** A page of a PDF as a PNG. */
function pictureOf(pdf, page, dpi) {
  const out = `${pdf}-${page}`;
  const args = ['-r', dpi, '-png', '-singlefile', '-f', page, '-l', page, pdf, out].map(String);
  const { status, stderr } = spawnSync('pdftoppm', args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return readFileSync(`${out}.png`);
}

function save(name, png) {
  const small = smallPng(png);
  writeFileSync(join(IMAGES, `${name}.png`), small);
  console.log(`${name}.png, ${Math.round(small.length / 1000)} kB`);
}

if (!BROWSER) {
  console.error('No browser was found. Install chromium, or name one with AFTERBELL_BROWSER.');
  process.exit(1);
}
if (!isBuilt() && run(process.execPath, ['scripts/build.mjs']) !== 0) process.exit(1);
const wanted = process.argv.slice(2);
const isWanted = (name) => wanted.length === 0 || wanted.includes(name);
mkdirSync(IMAGES, { recursive: true });
const folder = mkdtempSync(join(tmpdir(), 'afterbell-pictures-'));
const { child, address } = await startProgram(folder);
const browser = await chromium.launch({
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
try {
  const { id } = await (await ask(address, '/api/demo', {})).json();
  const { sheets } = await (
    await ask(address, `/api/classes/${id}/number`, { date: TODAY, number: NUMBER })
  ).json();
  await fillShelf(address, id);
  await takeScreens(browser, address, id, isWanted);
  await takePages(folder, address, sheets, isWanted);
  takeKits(folder, isWanted);
} finally {
  await browser.close();
  const ended = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGTERM');
  await ended;
  rmSync(folder, { recursive: true, force: true });
}
const total = readdirSync(IMAGES, { recursive: true })
  .filter((file) => file.endsWith('.png'))
  .reduce((sum, file) => sum + readFileSync(join(IMAGES, file)).length, 0);
console.log(`docs/images: ${(total / 1e6).toFixed(2)} MB`);
