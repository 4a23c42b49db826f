// Kits of trails: pages and texts, and what is cut by hand, judged on pages that poppler read and drew at 300 dpi.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { composeTrail } from '#engine/activities/trail/compose.js';
import type { Trail } from '#engine/activities/trail/trail.js';
import type { KitOptions, KitRequest, KitSet } from '#print/kit-request.js';
import { paperSize } from '#print/paper.js';
import { PAPERS, type PaperId } from '#print/request.js';
import { cutsAcross, cutsDown, inkWithin, printKit } from './kit-tools.js';
import { inspect, printer, rasterOf, type Word, wordsOf } from './pdf-tools.js';

afterAll(() => printer.close());

function trailSet(number: number, rows: number, columns: number, years = [3, 4]): KitSet<Trail> {
  const made = composeTrail({ years, rows, columns, seed: number, locale: 'en-AU' });
  if (!made.ok) throw new Error(made.error.message);
  return { number, activity: made.value };
}

function trailRequest(
  document: KitRequest['document'],
  sets: readonly KitSet<Trail>[],
  paper: PaperId = 'A4',
  options: Partial<KitOptions> = {},
): KitRequest {
  return { activity: 'trail', document, sets, paper, options: { locale: 'en-AU', ...options } };
}

/** An invented trail of nine tiles, kept so that its pages have the same bytes for ever. */
const FIXTURE = JSON.parse(
  readFileSync(new URL('../fixtures/trail-9.json', import.meta.url), 'utf8'),
) as Trail;
const ONE: readonly KitSet<Trail>[] = [{ number: 4, label: 'Green box', activity: FIXTURE }];
const DOCUMENTS = ['tiles', 'labels', 'key', 'pupil', 'kit'] as const;

describe.each(DOCUMENTS)('a trail’s %s', (document) => {
  it.each(PAPERS)('is sound on %s', async (paper) => {
    const { pdf, pages, warnings } = await printKit(trailRequest(document, ONE, paper));
    expect(warnings).toEqual([]);
    expect(wordsOf(pdf)).toHaveLength(pages);
    const fonts = inspect(pdf, 'pdffonts', ['PDF']).toString().trim().split('\n').slice(2);
    expect(fonts.length).toBeGreaterThan(0);
    for (const font of fonts) expect(font).toMatch(/^[A-Z]{6}\+Andika(-Bold)? .* yes yes yes /);
    expect(inspect(pdf, 'qpdf', ['--check', 'PDF']).toString()).toContain(
      'No syntax or stream encoding errors',
    );
    expect(Buffer.from(pdf).includes('<pdfuaid:part>1</pdfuaid:part>')).toBe(true);
    const turns = Buffer.from(pdf).includes('/Duplex /DuplexFlipLongEdge');
    expect(turns).toBe(document === 'tiles' || document === 'kit');
  });

  // Look at the pages before accepting new bytes with `vitest run -u test/print/trail-kit.test.ts`.
  it('has the bytes that were looked at and accepted', async () => {
    const { pdf } = await printKit(trailRequest(document, ONE));
    const hash = createHash('sha256').update(pdf).digest('hex');
    await expect(`${hash}\n`).toMatchFileSnapshot(`../golden/print/trail-${document}.sha256`);
  });
});

const TOLERANCE_MM = 0.3;
const SAFE_MM = 3;

/** Where the cuts are meant to be, told apart from the code that lays them out. */
const SHEETS = [
  { name: '3 x 3 on A4', rows: 3, columns: 3, paper: 'A4', side: 45, left: 15, across: 4, down: 3 },
  { name: '4 x 4 on A4', rows: 4, columns: 4, paper: 'A4', side: 45, left: 15, across: 4, down: 4 },
  {
    name: '5 x 5 on Letter',
    rows: 5,
    columns: 5,
    paper: 'Letter',
    side: 36,
    left: 17.95,
    across: 5,
    down: 5,
  },
  { name: '6 x 6 on A4', rows: 6, columns: 6, paper: 'A4', side: 30, left: 15, across: 6, down: 6 },
  { name: '4 x 4 on A3', rows: 4, columns: 4, paper: 'A3', side: 63, left: 22.5, across: 4, down: 4 },
] as const;
const TOP_MM = 12;
/** No answer reads like this number, which stands small on every tile. */
const SET = 888;

/** The box around a word's letters: the type's own measures are 1.22 of the size above the line and 0.39 below it. */
function lettersOf({ text, left, right, top, bottom }: Word) {
  const size = (bottom - top) / 1.611;
  const baseline = top + 1.221 * size;
  const tail = /[gjpqyQ,;$]/.test(text) ? 0.24 : 0.02;
  return { left, right, top: baseline - 0.76 * size, bottom: baseline + tail * size };
}

describe.each(SHEETS)('tiles of $name', ({ rows, columns, paper, side, left, across, down }) => {
  const set = trailSet(SET, rows, columns);
  const lines = (from: number, count: number) => Array.from({ length: count + 1 }, (_, i) => from + i * side);
  const [xs, ys] = [lines(left, across), lines(TOP_MM, down)];
  // The mat and its other side come first.
  const [FRONT, BACK] = [3, 4];
  const printed = printKit(trailRequest('tiles', [set], paper));
  const count = rows * columns;

  function expectNear(measured: readonly number[], wanted: readonly number[]): void {
    expect(measured, String(measured)).toHaveLength(wanted.length);
    for (const [i, value] of wanted.entries())
      expect(Math.abs((measured[i] as number) - value)).toBeLessThan(TOLERANCE_MM);
  }

  it('have their cuts where they belong, from edge to edge', async () => {
    const page = rasterOf((await printed).pdf, FRONT, 300);
    const [first, last] = [ys[0] as number, ys.at(-1) as number];
    expectNear(cutsAcross(page, first - 1.5), xs);
    expectNear(cutsAcross(page, last + 1.5), xs);
    expectNear(cutsDown(page, (xs[0] as number) - 1.5), ys);
    expectNear(cutsDown(page, (xs.at(-1) as number) + 1.5), ys);
  });

  it('carry every answer once and the number of their set, 3 mm off every cut', async () => {
    const words = wordsOf((await printed).pdf)[FRONT - 1]?.words ?? [];
    const told: string[] = [];
    let marks = 0;
    for (let n = 0; n < count; n++) {
      const [x, y] = [xs[n % across] as number, ys[Math.floor(n / across)] as number];
      const own = words.filter(
        (word) => word.left > x && word.right < x + side && word.top > y && word.bottom < y + side + 4,
      );
      const boxes = own.map(lettersOf).filter((box) => box.top > y && box.bottom < y + side);
      expect(boxes.length, `tile ${n}`).toBeGreaterThan(0);
      for (const box of boxes) {
        const white = Math.min(box.left - x, x + side - box.right, box.top - y, y + side - box.bottom);
        expect(white, `tile ${n}`).toBeGreaterThan(SAFE_MM - 0.05);
      }
      told.push(...own.map(({ text }) => text).filter((text) => text !== 'set' && text !== String(SET)));
      marks += own.filter(({ text }) => text === String(SET)).length;
    }
    const letters = (texts: readonly string[]) => [...texts.join('').replace(/[\s/]/gu, '')].sort().join('');
    expect(marks).toBeGreaterThan(0.9 * count);
    expect(letters(told)).toBe(letters(set.activity.tiles.map(({ answer }) => answer.text)));
  });

  it('have their backs behind their fronts when the sheet is turned over its long edge', async () => {
    const { pdf } = await printed;
    const width = paperSize(paper).widthMm;
    const page = rasterOf(pdf, BACK, 300);
    for (let n = 0; n < across * down; n++) {
      const [x, y] = [xs[n % across] as number, ys[Math.floor(n / across)] as number];
      const behind = { left: width - x - side, right: width - x, top: y, bottom: y + side };
      const ink = inkWithin(page, behind);
      if (n >= count) {
        expect(ink, `place ${n} has no tile`).toBeNull();
        continue;
      }
      const [middle, wanted] = [((ink?.left ?? 0) + (ink?.right ?? 0)) / 2, (behind.left + behind.right) / 2];
      expect(Math.abs(middle - wanted)).toBeLessThan(TOLERANCE_MM);
      const { left: l, right: r, top: t, bottom: b } = ink ?? behind;
      expect(Math.min(l - behind.left, behind.right - r, t - behind.top, behind.bottom - b)).toBeGreaterThan(
        SAFE_MM,
      );
    }
    const numbers = wordsOf(pdf)[BACK - 1]?.words.filter(({ text }) => text === String(SET)) ?? [];
    expect(numbers).toHaveLength(count);
  });

  it('show the path where their neighbours will meet it, to 0.3 mm', async () => {
    const page = rasterOf((await printed).pdf, FRONT, 300);
    let met = 0;
    for (let n = 0; n < count; n++) {
      const [x, y] = [xs[n % across] as number, ys[Math.floor(n / across)] as number];
      const inks = [
        cutsAcross(page, y + 0.5).map((at) => at - x),
        cutsDown(page, x + side - 0.5).map((at) => at - y),
        cutsAcross(page, y + side - 0.5).map((at) => at - x),
        cutsDown(page, x + 0.5).map((at) => at - y),
      ].map((all) => all.filter((at) => at > 1 && at < side - 1));
      const tile = set.activity.tiles.find(({ edges }) =>
        edges.every((code, i) => {
          const at = (code === 'a' || code === 'c' ? 0.3 : 0.7) * side;
          const ink = inks[i] as number[];
          if (code === '0') return ink.length === 0;
          if (code === 'c' || code === 'd')
            return ink.length > 0 && ink.every((one) => Math.abs(one - at) < 0.05 * side);
          // The two rims of a path, the middle between them, and perhaps a mark on it.
          const [first = 0, last = 0] = [ink[0], ink.at(-1)];
          return (
            ink.length >= 2 && Math.abs((first + last) / 2 - at) < TOLERANCE_MM && last - first < 0.18 * side
          );
        }),
      );
      if (tile) met++;
    }
    expect(met).toBe(count);
  });
});

describe('trails printed as numbered sets', () => {
  const sets = [1, 2, 3].map((number) => trailSet(number, 4, 4, [1, 2]));

  it('have the pages that a teacher counts on', async () => {
    const pagesOf = async (document: KitRequest['document'], options = {}) =>
      (await printKit(trailRequest(document, sets, 'A4', options))).pages;
    expect(await pagesOf('tiles')).toBe(3 * 4);
    expect(await pagesOf('tiles', { backs: false })).toBe(3 * 2);
    expect(await pagesOf('pupil', { copies: 2 })).toBe(6);
    expect(await pagesOf('key')).toBe(2);
    // Two-sided, what is cut has an empty back, so that nothing else is cut with it.
    expect(await pagesOf('kit')).toBe(3 * 4 + 2 * (await pagesOf('labels')) + 2 * 3 + 2);
  });

  it('say once that large print needs larger paper', async () => {
    const large = (paper: PaperId) => printKit(trailRequest('tiles', sets, paper, { largePrint: true }));
    expect((await large('A4')).warnings).toEqual([expect.stringMatching(/^A trail’s mat .* on A3/)]);
    expect((await large('A3')).warnings).toEqual([]);
  });

  it('show every question on the mat, on the sheet to cut and paste, and in the key', async () => {
    const words = (text: string) => text.replace(/\s+/gu, '');
    for (const document of ['tiles', 'pupil', 'key'] as const) {
      const pdf = (await printKit(trailRequest(document, sets))).pdf;
      const text = words(inspect(pdf, 'pdftotext', ['-raw', 'PDF', '-']).toString('utf8'));
      for (const { activity } of sets)
        for (const { question } of activity.cells)
          if (!question.text.includes('/'))
            // Lines of a cell are read apart, so its words are looked for one by one.
            for (const word of question.text.split(' ')) expect(text).toContain(words(word));
    }
  });
});
