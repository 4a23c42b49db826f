// What is cut by hand must be exact: cut lines, backs behind their fronts, and room around every text. Judged on pages that
// poppler drew at 300 dpi.
import { afterAll, describe, expect, it } from 'vitest';
import { paperSize } from '#print/paper.js';
import type { PrintedBoard } from '#print/request.js';
import {
  chainRequest,
  chainSets,
  cutsAcross,
  cutsDown,
  fixtureJigsaw,
  inkWithin,
  jigsawRequest,
  printKit,
} from './kit-tools.js';
import { inspect, printer, type Raster, rasterOf, wordsOf } from './pdf-tools.js';

afterAll(() => printer.close());

const TOLERANCE_MM = 0.3;
const SAFE_MM = 3;

/** Where the cuts of ten strips are meant to be, told apart from the code that lays them out. */
const TEN_STRIPS = {
  A4: { across: [10, 105, 200], down: [12, 66, 120, 174, 228, 282] },
  Letter: { across: [10.95, 107.95, 204.95], down: [12, 63, 114, 165, 216, 267] },
} as const;

function expectNear(measured: readonly number[], wanted: readonly number[]): void {
  expect(measured, String(measured)).toHaveLength(wanted.length);
  for (const [i, value] of wanted.entries())
    expect(Math.abs((measured[i] as number) - value)).toBeLessThan(TOLERANCE_MM);
}

/** Rings are meant to be cut: they lie within 5 mm of the middle of a card's left and right edge. */
const RING_MM = 5;

/** The strips of 3 mm inside each card's edge hold no ink but the cut itself and the rings. */
function expectSafe(
  page: Raster,
  across: readonly number[],
  down: readonly number[],
  hasRings: boolean,
): void {
  const line = 0.35;
  for (let c = 0; c + 1 < across.length; c++)
    for (let r = 0; r + 1 < down.length; r++) {
      const card = {
        left: across[c] as number,
        right: across[c + 1] as number,
        top: down[r] as number,
        bottom: down[r + 1] as number,
      };
      const middle = (card.top + card.bottom) / 2;
      const rims = [
        {
          ...card,
          left: card.left + line,
          right: card.right - line,
          top: card.top + line,
          bottom: card.top + SAFE_MM,
        },
        {
          ...card,
          left: card.left + line,
          right: card.right - line,
          top: card.bottom - SAFE_MM,
          bottom: card.bottom - line,
        },
        ...[
          [card.left + line, card.left + SAFE_MM],
          [card.right - SAFE_MM, card.right - line],
        ].flatMap(([left, right]) => {
          const rim = { left: left as number, right: right as number };
          return hasRings
            ? [
                { ...rim, top: card.top + line, bottom: middle - RING_MM },
                { ...rim, top: middle + RING_MM, bottom: card.bottom - line },
              ]
            : [{ ...rim, top: card.top + line, bottom: card.bottom - line }];
        }),
      ];
      for (const rim of rims) expect(inkWithin(page, rim), `card ${c}, ${r}`).toBeNull();
    }
}

describe.each(['A4', 'Letter'] as const)('strips on %s', (paper) => {
  const { across, down } = TEN_STRIPS[paper];

  it('have their cuts where they belong, from edge to edge', async () => {
    const { pdf } = await printKit(chainRequest('cards', chainSets(1, [3, 4]), paper));
    const page = rasterOf(pdf, 1, 300);
    // Beyond the outer strips only the ends of the cuts are left.
    expectNear(cutsAcross(page, down[0] - 1.5), across);
    expectNear(cutsAcross(page, down[5] + 1.5), across);
    expectNear(cutsDown(page, across[0] - 1.5), down);
    expectNear(cutsDown(page, across[2] + 1.5), down);
  });

  it('keep text and pictures 3 mm off every cut', async () => {
    const { pdf } = await printKit(chainRequest('cards', chainSets(2, [1, 2]), paper));
    for (const number of [1, 3]) expectSafe(rasterOf(pdf, number, 300), across, down, true);
    for (const number of [2, 4]) expectSafe(rasterOf(pdf, number, 300), across, down, false);
  });

  it('have their backs behind their fronts when the sheet is turned over its long edge', async () => {
    // One strip of each of ten sets to a sheet: every back must show the number of its own front.
    const sets = chainSets(10, [3, 4]).map((set, at) => ({ ...set, number: 21 + at }));
    const { pdf } = await printKit(chainRequest('cards', sets, paper, { cutting: 'by stack' }));
    const width = paperSize(paper).widthMm;
    const back = rasterOf(pdf, 2, 300);
    for (let n = 0; n < 10; n++) {
      const [c, r] = [n % 2, Math.floor(n / 2)];
      const front = textAt(pdf, 1, {
        left: across[c] as number,
        right: across[c + 1] as number,
        top: down[r] as number,
        bottom: down[r + 1] as number,
      });
      const behind = {
        left: width - (across[c + 1] as number),
        right: width - (across[c] as number),
        top: down[r] as number,
        bottom: down[r + 1] as number,
      };
      expect(front).toContain(`set ${21 + n}`);
      const told = textAt(pdf, 2, behind)
        .split(/\s*\n\s*/)
        .sort();
      expect(told).toEqual([String(21 + n), 'Chain set', 'Years 3 and 4']);
      const words = inkWithin(back, { ...behind, bottom: behind.top + 17.5 });
      const middle = ((words?.left ?? 0) + (words?.right ?? 0)) / 2;
      expect(Math.abs(middle - (behind.left + behind.right) / 2)).toBeLessThan(TOLERANCE_MM);
    }
  });
});

/** The text within a rectangle of a page, as poppler reads it. */
function textAt(
  pdf: PrintedBoard['pdf'],
  page: number,
  box: { left: number; right: number; top: number; bottom: number },
): string {
  const dots = (mm: number) => String(Math.round((mm / 25.4) * 72));
  const area = [
    '-x',
    dots(box.left),
    '-y',
    dots(box.top),
    '-W',
    dots(box.right - box.left),
    '-H',
    dots(box.bottom - box.top),
  ];
  const args = ['-f', String(page), '-l', String(page), ...area, 'PDF', '-'];
  return inspect(pdf, 'pdftotext', args).toString('utf8').trim();
}

describe.each(['A4', 'Letter'] as const)('pieces of a jigsaw on %s', (paper) => {
  const jigsaw = fixtureJigsaw();
  const set = { number: 41, activity: jigsaw };
  const cell = 27;
  const left = (paperSize(paper).widthMm - 7 * cell) / 2;
  const top = 12;
  const owner = (row: number, column: number) =>
    jigsaw.pieces.findIndex(({ cells }) => cells.some((at) => at[0] === row && at[1] === column));

  it('are cut along the edges of their cells, with 3 mm free inside', async () => {
    const page = rasterOf((await printKit(jigsawRequest('pieces', [set], paper))).pdf, 1, 300);
    for (let row = 0; row < 5; row++) {
      // A level look through the upper part of the row, below the round corners and the letters, above the texts.
      const wanted = Array.from({ length: 8 }, (_, i) => i)
        .filter((i) => owner(row, i - 1) !== owner(row, i))
        .map((i) => left + i * cell);
      const level = top + row * cell + 6.2;
      const found = cutsAcross(page, level).filter((x) => wanted.some((one) => Math.abs(one - x) < 1));
      expectNear(found, wanted);
      for (let column = 0; column < 7; column++) {
        const [x, y] = [left + column * cell, top + row * cell];
        const sides = [
          [owner(row - 1, column), { left: x + 8, right: x + cell - 6, top: y + 0.4, bottom: y + SAFE_MM }],
          [
            owner(row + 1, column),
            { left: x + 6, right: x + cell - 6, top: y + cell - SAFE_MM, bottom: y + cell - 0.4 },
          ],
          [owner(row, column - 1), { left: x + 0.4, right: x + SAFE_MM, top: y + 8, bottom: y + cell - 6 }],
          [
            owner(row, column + 1),
            { left: x + cell - SAFE_MM, right: x + cell - 0.4, top: y + 6, bottom: y + cell - 6 },
          ],
        ] as const;
        for (const [neighbour, rim] of sides)
          if (neighbour !== owner(row, column))
            expect(inkWithin(page, rim), `cell ${row}, ${column}`).toBeNull();
      }
    }
  });

  it('have the number of their set behind one of their own cells', async () => {
    const { pdf } = await printKit(jigsawRequest('pieces', [set], paper));
    const numbers = (wordsOf(pdf)[1]?.words ?? []).filter(({ text }) => text === '41');
    expect(numbers).toHaveLength(jigsaw.pieces.length);
    const owners = numbers.map(({ left: from, right: to, top: upper, bottom: lower }) => {
      const x = paperSize(paper).widthMm - (from + to) / 2;
      const [row, column] = [((upper + lower) / 2 - top) / cell, (x - left) / cell];
      expect(Math.abs(column - Math.floor(column) - 0.5) * cell).toBeLessThan(TOLERANCE_MM);
      return owner(Math.floor(row), Math.floor(column));
    });
    expect(new Set(owners).size).toBe(jigsaw.pieces.length);
  });
});

it('labels and sheets to cut and paste keep text 3 mm off every cut too', async () => {
  const sets = chainSets(10, [3, 4]);
  const { pdf } = await printKit(chainRequest('labels', sets));
  const labels = rasterOf(pdf, 1, 300);
  const down = [12, 66, 120, 174, 228, 282];
  expectNear(cutsAcross(labels, 10.5), [10.5, 105, 199.5]);
  expectNear(cutsDown(labels, 9), down);
  expectSafe(labels, [10.5, 105, 199.5], down, false);
  const tags = rasterOf(pdf, 2, 300);
  const rows = Array.from({ length: 8 }, (_, r) => 90 + 26 * r);
  expectNear(cutsDown(tags, 9), [12, 84, ...rows]);
  expectSafe(tags, [10.5, 73.5, 136.5, 199.5], rows, false);
  const pupil = await printKit(chainRequest('pupil', sets.slice(0, 1)));
  expectSafe(rasterOf(pupil.pdf, 1, 300), [21, 105, 189], [34, 84, 134, 184, 234, 284], true);
});
