// Children solve on the screen: by keyboard alone, and with fingers on a tablet. Only the pieces say whether it goes well.
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AppState } from '#api/class.js';
import type { Library } from '#api/sets.js';
import type { Chain } from '#engine/activities/chain/chain.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { composeJigsaw } from '#engine/activities/jigsaw/compose.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import { composeTrail } from '#engine/activities/trail/compose.js';
import { expectAccessible, launchBrowser, openPage, pressOn, tabTo, type Watched } from './browser.js';
import { startServer, type TestServer } from './server.js';
import { dragFingers, pointOn } from './touch.js';

let server: TestServer;
let browser: Browser;
let classId: string;

beforeAll(async () => {
  server = await startServer('2026-05-08');
  browser = await launchBrowser();
  await fetch(`${server.address}/api/demo`, {
    method: 'POST',
    body: '{}',
    headers: { 'Content-Type': 'application/json' },
  });
  const state = (await (await fetch(`${server.address}/api/state`)).json()) as AppState;
  classId = state.classes[0]?.id ?? '';
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

async function open(search: string, width: number, height: number, hasTouch = false): Promise<Watched> {
  const watched = await openPage(browser, server.address, width, height, hasTouch);
  await watched.page.goto(`${server.address}/solve/${classId}?${search}`);
  return watched;
}

const pieceOf = (on: Locator | Page, piece: number) => on.locator(`[data-piece="${piece}"]`);
const piecesIn = (region: Locator): Promise<number[]> =>
  region
    .locator('[data-piece]')
    .evaluateAll((pieces) => pieces.map((piece) => Number(piece.getAttribute('data-piece'))));
const statusOf = (page: Page) => page.getByRole('status').first();

/** Words that would tell a child how it goes; the pieces' own texts may have them. */
const VERDICTS = /\b(wrong|(?<!the )right|correct|well done|mistake|score)\b/i;
const said = async (page: Page) =>
  `${await surroundings(page)} ${(await statusOf(page).textContent())?.replace(/“[^”]*”|It asks: .*/g, '')}`;

/** What a page shows beyond its pieces must be the same whether they lie right or wrong. */
const surroundings = (page: Page) =>
  page.evaluate(() => {
    const main = document.querySelector('main')?.cloneNode(true) as HTMLElement;
    for (const part of main.querySelectorAll('[role="status"], [data-table]')) part.remove();
    return main.innerHTML.replace(/ (disabled|tabindex|data-[a-z-]+)="[^"]*"/g, '');
  });

/** Picks a loose piece of a mat with the arrow keys and lays the box around it at a place. */
async function layPiece(
  page: Page,
  loose: Locator,
  piece: number,
  [row, column]: readonly [number, number],
): Promise<void> {
  await tabTo(page, loose.locator('[tabindex="0"]'));
  await page.keyboard.press('Home');
  for (let steps = 0; steps < 40; steps++) {
    if (await pieceOf(loose, piece).evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press('ArrowRight');
  }
  await page.keyboard.press('Enter');
  for (let steps = 0; steps < 10; steps++) {
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowLeft');
  }
  for (let steps = 0; steps < row; steps++) await page.keyboard.press('ArrowDown');
  for (let steps = 0; steps < column; steps++) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
}

function chainFor(seed: number): Chain {
  const made = composeChain({ years: [4, 5], seed, cards: 8, locale: 'en-AU' });
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

describe('a chain on the screen', () => {
  const chain = chainFor(3);
  const right = chain.cards.map((_, at) => at);
  const address = 'activity=chain&source=mix&seed=3&cards=8';
  const regions = (page: Page) => ({
    laid: page.getByRole('list', { name: 'The chain' }),
    loose: page.getByRole('list', { name: 'Loose strips' }),
  });

  /** Picks a loose strip with the arrow keys and lays it at the end. */
  async function layByKey(page: Page, piece: number): Promise<void> {
    const { loose } = regions(page);
    await tabTo(page, loose.locator('[tabindex="0"]'));
    await page.keyboard.press('Home');
    for (let steps = 0; steps < chain.cards.length; steps++) {
      if (await pieceOf(loose, piece).evaluate((element) => element === document.activeElement)) break;
      await page.keyboard.press('ArrowRight');
    }
    await page.keyboard.press('Enter');
    await page.keyboard.press('End');
    await page.keyboard.press('Enter');
  }

  it('is laid from start to finish by keyboard alone', async () => {
    const { page, faults, strays } = await open(address, 1366, 768);
    const { laid, loose } = regions(page);
    await laid.waitFor();
    await expectAccessible(page);
    expect(await piecesIn(laid)).toEqual([0]);
    for (const piece of right.slice(1)) {
      await layByKey(page, piece);
      expect(await statusOf(page).textContent()).toContain(`Place ${piece + 1} of ${piece + 1}`);
    }
    expect(await piecesIn(laid)).toEqual(right);
    expect(await piecesIn(loose)).toEqual([]);
    await expectAccessible(page);
    expect([faults, strays]).toEqual([[], []]);
    await page.context().close();
  });

  it('says nothing about a wrong strip: it lies there, and the strips that are left over show it', async () => {
    const { page } = await open(address, 1366, 768);
    const { laid, loose } = regions(page);
    await laid.waitFor();
    const last = chain.cards.length - 1;
    await layByKey(page, 1);
    const before = await surroundings(page);
    await layByKey(page, last);
    expect(await piecesIn(laid)).toEqual([0, 1, last]);
    expect(await piecesIn(loose)).toHaveLength(chain.cards.length - 3);
    expect(await surroundings(page)).toBe(before);
    expect(await said(page)).not.toMatch(VERDICTS);
    // Taken out again, moved within the chain, taken back: all by key.
    await tabTo(page, pieceOf(laid, last), 'Shift+Tab');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Home');
    expect(await statusOf(page).textContent()).toContain('Place 1 of 3');
    await page.keyboard.press('Escape');
    expect(await piecesIn(laid)).toEqual([0, 1, last]);
    await page.keyboard.press('Delete');
    expect(await piecesIn(laid)).toEqual([0, 1]);
    await tabTo(page, page.getByRole('button', { name: 'Undo' }));
    await page.keyboard.press('Enter');
    expect(await piecesIn(laid)).toEqual([0, 1, last]);
    await page.context().close();
  });

  it('gives a hint only when asked, first a question, never the answer', async () => {
    const { page } = await open(address, 1366, 768);
    await regions(page).laid.waitFor();
    const hints: string[] = [];
    await tabTo(page, page.getByRole('button', { name: 'A hint' }));
    await page.keyboard.press('Enter');
    for (let asked = 0; asked < 8; asked++) {
      hints.push((await page.getByRole('status').nth(1).locator('p').textContent()) ?? '');
      await page.keyboard.press('Enter');
    }
    expect(hints[0]).toMatch(/\?$/);
    const answer = chain.cards[1]?.answer?.text ?? '';
    expect(hints.filter((hint) => hint.endsWith(`= ${answer}`))).toEqual([]);
    await page.context().close();
  });

  it('is laid with fingers on an upright tablet, two hands at once, and is still there after a reload', async () => {
    const { page } = await open(address, 820, 1180, true);
    const { laid, loose } = regions(page);
    await laid.waitFor();
    for (const box of await Promise.all(right.map((piece) => pieceOf(page, piece).boundingBox()))) {
      expect(box?.height).toBeGreaterThanOrEqual(44);
      expect(box?.width).toBeGreaterThanOrEqual(44);
    }
    const toEnd = async () => {
      const box = await laid.boundingBox();
      return { x: (box?.x ?? 0) + (box?.width ?? 0) - 30, y: (box?.y ?? 0) + (box?.height ?? 0) - 20 };
    };
    await dragFingers(page, [{ from: await pointOn(pieceOf(loose, 1)), to: await toEnd() }]);
    expect(await piecesIn(laid)).toEqual([0, 1]);
    await dragFingers(page, [
      { from: await pointOn(pieceOf(loose, 2)), to: await toEnd() },
      { from: await pointOn(pieceOf(loose, 3)), to: await toEnd() },
    ]);
    expect((await piecesIn(laid)).toSorted()).toEqual([0, 1, 2, 3]);
    // A press picks up, a second press lays: dragging is never needed.
    for (const piece of [4, 5]) {
      await pieceOf(loose, piece).tap();
      await pieceOf(laid, piece).tap();
    }
    expect(await piecesIn(laid)).toHaveLength(6);
    await page.reload();
    await laid.waitFor();
    expect(await piecesIn(laid)).toHaveLength(6);
    await page.context().close();
  });
});

describe('from the Make room and back', () => {
  it('lays out the very set that was made there', async () => {
    const { page } = await openPage(browser, server.address, 1366, 768);
    const wish = 'activity=jigsaw&rows=4&columns=5&level=easy&seed=12';
    await page.goto(`${server.address}/class/${classId}/make?${wish}`);
    await pressOn(page, page.getByRole('link', { name: 'Try it on the screen' }));
    const loose = page.getByRole('list', { name: 'Loose pieces' });
    await loose.waitFor();
    const made = composeJigsaw({
      years: [4, 5],
      rows: 4,
      columns: 5,
      level: 'easy',
      seed: 12,
      locale: 'en-AU',
    });
    if (!made.ok) throw new Error(made.error.message);
    expect((await piecesIn(loose)).toSorted((a, b) => a - b)).toEqual(made.value.pieces.map((_, at) => at));
    for (const [piece, { cells }] of made.value.pieces.entries()) {
      const [row, column] = cells[0] as readonly [number, number];
      expect(await pieceOf(loose, piece).getAttribute('aria-label')).toContain(
        made.value.cells[row * made.value.columns + column]?.text || 'blank',
      );
    }
    await pressOn(page, page.getByRole('button', { name: 'Close' }));
    await page.getByRole('heading', { name: 'Make room' }).waitFor();
    expect(new URL(page.url()).searchParams.get('seed')).toBe('12');
    await page.context().close();
  });
});

describe('a trail on the screen', () => {
  const made = composeTrail({
    years: [4, 5],
    pitch: 'middle',
    rows: 3,
    columns: 4,
    seed: 5,
    locale: 'en-AU',
  });
  if (!made.ok) throw new Error(made.error.message);
  const trail = made.value;
  const address = 'activity=trail&source=mix&rows=3&columns=4&seed=5';
  const regions = (page: Page) => ({
    grid: page.getByRole('grid', { name: 'The mat' }),
    loose: page.getByRole('list', { name: 'Loose pieces' }),
  });
  const cellAt = (page: Page, cell: number) =>
    page.locator(`[data-cell="${Math.floor(cell / trail.columns)},${cell % trail.columns}"]`);
  const coveredCells = (page: Page) => page.locator('[data-covered="true"]').count();

  it('is laid by keyboard alone, and the path it draws is the only sign', async () => {
    const { page, faults, strays } = await open(address, 1366, 768);
    const { grid, loose } = regions(page);
    await grid.waitFor();
    await expectAccessible(page);
    // Two tiles changed about first: the page says what touches what, and nothing about right or wrong.
    await layPiece(page, loose, 0, [0, 1]);
    const before = await surroundings(page);
    await layPiece(page, loose, 1, [0, 0]);
    expect(await surroundings(page)).toBe(before);
    expect(await statusOf(page).textContent()).toMatch(/On A1\. Above: .+ on the rim .+ To the right: /);
    expect(await said(page)).not.toMatch(VERDICTS);
    // A tile laid on another takes its place, and the other goes back beside the mat.
    await tabTo(page, grid.locator('[tabindex="0"]'), 'Shift+Tab');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('Enter');
    expect(await cellAt(page, 0).getAttribute('aria-label')).toContain(
      `Tile ${trail.tiles[0]?.answer.text} lies here`,
    );
    for (let tile = 2; tile < trail.tiles.length; tile++)
      await layPiece(page, loose, tile, [Math.floor(tile / trail.columns), tile % trail.columns]);
    expect(await coveredCells(page)).toBe(trail.tiles.length);
    expect(await piecesIn(loose)).toEqual([]);
    for (const [tile, { answer }] of trail.tiles.entries())
      expect(await cellAt(page, tile).getAttribute('aria-label')).toContain(`Tile ${answer.text} lies here`);
    await expectAccessible(page);
    expect([faults, strays]).toEqual([[], []]);
    await page.context().close();
  });

  it('is laid with fingers on a tablet, by dragging and by pressing', async () => {
    const { page } = await open(address, 1180, 820, true);
    const { grid, loose } = regions(page);
    await grid.waitFor();
    const box = await cellAt(page, 0).boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
    await dragFingers(page, [
      { from: await pointOn(pieceOf(loose, 0)), to: await pointOn(cellAt(page, 0)) },
      { from: await pointOn(pieceOf(loose, 5)), to: await pointOn(cellAt(page, 5)) },
    ]);
    expect(await coveredCells(page)).toBe(2);
    await pieceOf(loose, 6).tap();
    await cellAt(page, 6).tap();
    expect(await coveredCells(page)).toBe(3);
    // Pressing a bare cell reads its question out large.
    await cellAt(page, 7).tap();
    expect(await page.getByRole('status').nth(1).textContent()).toContain(
      trail.cells[7]?.question.text.slice(0, 4),
    );
    // From the mat back to the loose ones.
    await dragFingers(page, [
      { from: await pointOn(cellAt(page, 0)), to: await pointOn(pieceOf(loose, 1), 0.5, 0.5) },
    ]);
    expect(await coveredCells(page)).toBe(2);
    expect(await piecesIn(loose)).toContain(0);
    await page.context().close();
  });
});

describe('a jigsaw on the screen', () => {
  let jigsaw: Jigsaw;
  let address: string;

  beforeAll(async () => {
    const asked = await fetch(`${server.address}/api/classes/${classId}/sets`, {
      method: 'POST',
      body: JSON.stringify({
        kind: 'jigsaw',
        band: 'middle',
        count: 1,
        rows: 4,
        columns: 5,
        level: 'easy',
        seed: 7,
      }),
      headers: { 'Content-Type': 'application/json' },
    });
    const { sets } = (await asked.json()) as Library;
    const kept = await fetch(`${server.address}/api/sets/${sets[0]?.id}`);
    jigsaw = ((await kept.json()) as { content: Jigsaw }).content;
    address = `set=${sets[0]?.id}`;
  });
  const regions = (page: Page) => ({
    grid: page.getByRole('grid', { name: 'The mat' }),
    loose: page.getByRole('list', { name: 'Loose pieces' }),
  });
  const boxOf = (piece: number): readonly [number, number] => {
    const cells = jigsaw.pieces[piece]?.cells ?? [];
    return [Math.min(...cells.map(([row]) => row)), Math.min(...cells.map(([, column]) => column))];
  };
  const coveredCells = (page: Page) => page.locator('[data-covered="true"]').count();

  it('is put together by keyboard alone; pieces lie flat or not at all, and nothing says right or wrong', async () => {
    const { page, faults, strays } = await open(address, 1366, 768);
    const { grid, loose } = regions(page);
    await grid.waitFor();
    await expectAccessible(page);
    const [first, second] = [0, 1];
    // A piece laid where it does not belong lies there like any other.
    const before = await surroundings(page);
    const [row, column] = boxOf(first);
    await layPiece(page, loose, first, [row === 0 ? 1 : row - 1, column]);
    expect(await coveredCells(page)).toBe(jigsaw.pieces[first]?.cells.length);
    expect(await statusOf(page).textContent()).toMatch(/Laid\. Piece A from row \d, column \d\. Row \d: /);
    expect(await surroundings(page)).toBe(before);
    expect(await said(page)).not.toMatch(VERDICTS);
    await tabTo(page, page.getByRole('button', { name: 'Undo' }));
    await page.keyboard.press('Enter');
    expect(await coveredCells(page)).toBe(0);
    // Another piece cannot lie on one that lies already: it stays in hand and can be put back.
    await layPiece(page, loose, first, boxOf(first));
    await layPiece(page, loose, second, boxOf(first));
    expect(await statusOf(page).textContent()).toContain('It does not lie flat there');
    await page.keyboard.press('Escape');
    expect(await coveredCells(page)).toBe(jigsaw.pieces[first]?.cells.length);
    for (let piece = 1; piece < jigsaw.pieces.length; piece++)
      await layPiece(page, loose, piece, boxOf(piece));
    expect(await coveredCells(page)).toBe(jigsaw.rows * jigsaw.columns);
    expect(await piecesIn(loose)).toEqual([]);
    await expectAccessible(page);
    expect([faults, strays]).toEqual([[], []]);
    await page.context().close();
  });

  it('asks before it tells: a hint is first a question, then one step', async () => {
    const { page } = await open(address, 1366, 768);
    await regions(page).grid.waitFor();
    const note = page.getByRole('status').nth(1).locator('p');
    await tabTo(page, page.getByRole('button', { name: 'A hint' }));
    await page.keyboard.press('Enter');
    expect(await note.textContent()).toMatch(/\?$/);
    await page.keyboard.press('Enter');
    expect(await note.textContent()).toMatch(/piece [A-Z]/);
    await page.context().close();
  });

  it('is put together with fingers on a tablet', async () => {
    const { page } = await open(address, 820, 1180, true);
    const { grid, loose } = regions(page);
    await grid.waitFor();
    const cell = page.locator('[data-cell="0,0"]');
    const side = (await cell.boundingBox())?.width ?? 0;
    expect(side).toBeGreaterThanOrEqual(44);
    const origin = await pointOn(cell, 0, 0);
    // Without dragging: the piece is pressed, then its first cell, then the piece where it waits.
    const [row, column] = jigsaw.pieces[0]?.cells[0] ?? [0, 0];
    await pieceOf(loose, 0).tap();
    await page.touchscreen.tap(origin.x + (column + 0.5) * side, origin.y + (row + 0.5) * side);
    if ((await page.locator('[data-hand]').count()) > 0) await page.locator('[data-hand]').tap();
    expect(await coveredCells(page)).toBe(jigsaw.pieces[0]?.cells.length);
    for (let piece = 1; piece < jigsaw.pieces.length; piece++) {
      const box = await pieceOf(loose, piece).boundingBox();
      const [row, column] = boxOf(piece);
      // Taken hold of a little off its corner, let go a little off its place.
      await dragFingers(page, [
        {
          from: { x: (box?.x ?? 0) + 20, y: (box?.y ?? 0) + 20 },
          to: { x: origin.x + column * side + 26, y: origin.y + row * side + 12 },
        },
      ]);
      expect(await piecesIn(loose)).not.toContain(piece);
    }
    expect(await coveredCells(page)).toBe(jigsaw.rows * jigsaw.columns);
    await page.context().close();
  });
});
