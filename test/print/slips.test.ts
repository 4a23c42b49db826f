// Slips as a ruler, a camera and a guillotine meet them.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { slipLayout } from '#print/documents/slip-layout.js';
import { paperSize } from '#print/paper.js';
import {
  fixtureBoard,
  inspect,
  OPTIONS,
  print,
  printer,
  type Raster,
  rasterOf,
  request,
  wordsOf,
} from './pdf-tools.js';

const MM_A_PIXEL = 25.4 / 300;
const px = (mm: number) => Math.round(mm / MM_A_PIXEL);
const SHEETS = [
  { paper: 'A4', perPage: 6 },
  { paper: 'A4', perPage: 8 },
  { paper: 'Letter', perPage: 6 },
  { paper: 'Letter', perPage: 8 },
] as const;

beforeAll(() => {
  const wasmBinary = readFileSync(
    createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'),
  );
  prepareZXingModule({
    overrides: {
      wasmBinary: wasmBinary.buffer.slice(
        wasmBinary.byteOffset,
        wasmBinary.byteOffset + wasmBinary.byteLength,
      ) as ArrayBuffer,
    },
  });
});
afterAll(() => printer.close());

describe.each(SHEETS)('$perPage slips on $paper', ({ paper, perPage }) => {
  const slips = Array.from({ length: perPage }, (_, i) => ({
    id: `B7K2M9QX0000000000${i}$`,
    name: `Child ${i + 1}`,
    board: i % 2,
  }));
  const layout = slipLayout(paper, perPage);
  const printed = print(request('slips', { paper, options: { ...OPTIONS, perPage, slips } }));

  it('every code reads from a 150 dpi picture', async () => {
    const png = inspect((await printed).pdf, 'pdftoppm', ['-r', '150', '-png', 'PDF']);
    const codes = await readBarcodes(new Uint8Array(png), { formats: ['QRCode'], maxNumberOfSymbols: 32 });
    expect(codes.map((code) => code.text).sort()).toEqual(slips.map((slip) => slip.id).sort());
    for (const code of codes) expect(code.ecLevel).toBe('M');
  });

  it('cut lines, corner marks, boxes and the 100 mm ruler lie where they should, to 0.3 mm', async () => {
    const page = rasterOf((await printed).pdf, 1, 300);
    const { widthMm } = paperSize(paper);
    expect(Math.abs(lineNear(page, 'x', widthMm / 2, [1, layout.strip.y - 1]) - widthMm / 2)).toBeLessThan(
      0.3,
    );
    for (let row = 1; row <= layout.rows; row++) {
      const asked = row * layout.slip.h;
      expect(Math.abs(lineNear(page, 'y', asked, [1, widthMm - 1]) - asked)).toBeLessThan(0.3);
    }
    for (const origin of layout.slips) {
      for (const mark of layout.marks) {
        const found = darkBox(page, origin.x + mark.x, origin.y + mark.y, mark.w, 1.4);
        for (const miss of found) expect(Math.abs(miss)).toBeLessThan(0.3);
      }
      const box = layout.boxes[0] as (typeof layout.boxes)[number];
      const left = lineNear(page, 'x', origin.x + box.x, [
        origin.y + box.y + 2,
        origin.y + box.y + box.h - 2,
      ]);
      const right = lineNear(page, 'x', origin.x + box.x + box.w, [
        origin.y + box.y + 2,
        origin.y + box.y + box.h - 2,
      ]);
      expect(Math.abs(right - left - box.w)).toBeLessThan(0.3);
    }
    const ruler = [layout.strip.y + 4, layout.strip.y + 6] as const;
    expect(Math.abs(lineNear(page, 'x', 110, ruler) - lineNear(page, 'x', 10, ruler) - 100)).toBeLessThan(
      0.3,
    );
  });

  it('no text within 3 mm of a cut or of the edge of the paper', async () => {
    const [page] = wordsOf((await printed).pdf);
    const { widthMm, heightMm } = paperSize(paper);
    const cutsY = Array.from({ length: layout.rows }, (_, i) => (i + 1) * layout.slip.h);
    for (const word of page?.words ?? []) {
      expect(word.left, word.text).toBeGreaterThan(3);
      expect(word.right, word.text).toBeLessThan(widthMm - 3);
      expect(word.top, word.text).toBeGreaterThan(3);
      expect(word.bottom, word.text).toBeLessThan(heightMm - 3);
      if (word.top < layout.strip.y)
        expect(distance(widthMm / 2, word.left, word.right), word.text).toBeGreaterThan(3);
      for (const cut of cutsY) expect(distance(cut, word.top, word.bottom), word.text).toBeGreaterThan(3);
    }
  });
});

it('has a box for each of 16 answers, wide enough to write in', async () => {
  const board = fixtureBoard('front');
  const more = board.rungs.slice(0, 4).map((rung, i) => ({ ...rung, rung: 13 + i }));
  const { pdf } = await print(
    request('slips', { boards: [{ ...board, rungs: [...board.rungs, ...more] }], options: OPTIONS }),
  );
  const numbers = wordsOf(pdf)[0]?.words.filter((word) => word.text === '16');
  expect(numbers).toHaveLength(8);
  for (const box of slipLayout('A4', 8, 16).boxes)
    expect(Math.min(box.w / 14, box.h / 9)).toBeGreaterThanOrEqual(1);
});

describe('slip layout', () => {
  it.each(SHEETS)('$perPage on $paper: nothing overlaps, codes are at least 14 mm', ({ paper, perPage }) => {
    const layout = slipLayout(paper, perPage);
    expect(layout.qr.w).toBeGreaterThanOrEqual(14);
    const places = [...layout.marks, layout.qr, layout.head, ...layout.boxes];
    for (const [i, a] of places.entries()) {
      expect(a.x).toBeGreaterThanOrEqual(3);
      expect(a.x + a.w).toBeLessThanOrEqual(layout.slip.w - 3);
      expect(a.y + a.h).toBeLessThanOrEqual(layout.slip.h - 3);
      for (const b of places.slice(i + 1))
        expect(
          a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h,
          `${JSON.stringify([a, b])}`,
        ).toBe(false);
    }
    for (const box of layout.boxes) expect(Math.min(box.w / 20, box.h / 8.5)).toBeGreaterThanOrEqual(1);
  });
});

function distance(cut: number, from: number, to: number): number {
  return cut < from ? from - cut : cut > to ? cut - to : 0;
}

/** Centre of the darkest line near a place, over the span across it, all in mm. */
function lineNear(
  page: Raster,
  axis: 'x' | 'y',
  nearMm: number,
  [fromMm, toMm]: readonly [number, number],
): number {
  let weight = 0;
  let moment = 0;
  for (let i = px(nearMm - 0.7); i <= px(nearMm + 0.7); i++) {
    let dark = 0;
    for (let j = px(fromMm); j < px(toMm); j++) dark += 255 - (axis === 'x' ? page.at(i, j) : page.at(j, i));
    weight += dark;
    moment += dark * (i + 0.5) * MM_A_PIXEL;
  }
  if (weight === 0) throw new Error(`no line near ${nearMm} mm`);
  return moment / weight;
}

/** How far the four edges of a solid square lie from where they should, in mm. */
function darkBox(page: Raster, x: number, y: number, side: number, reach: number): number[] {
  const middleX = px(x + side / 2);
  const middleY = px(y + side / 2);
  const run = (step: (i: number) => number) => {
    let i = 0;
    while (i < px(side / 2 + reach) && step(i) < 128) i++;
    return i * MM_A_PIXEL - side / 2;
  };
  return [
    run((i) => page.at(middleX + i, middleY)),
    run((i) => page.at(middleX - i, middleY)),
    run((i) => page.at(middleX, middleY + i)),
    run((i) => page.at(middleX, middleY - i)),
  ];
}
