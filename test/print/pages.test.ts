// Every document on every paper: size, faces, conformance, viewer settings, sameness.
import { createHash } from 'node:crypto';
import { afterAll, describe, expect, it } from 'vitest';
import type { Board } from '#engine/activities/board/board.js';
import { DOCUMENTS, PAPERS } from '#print/request.js';
import { paperSize } from '#print/paper.js';
import { fixtureBoard, inspect, OPTIONS, print, printer, request, wordsOf } from './pdf-tools.js';

afterAll(() => printer.close());

const SLIPS = { ...OPTIONS, slips: [{ id: 'B7K2M9QX01', name: 'Ari' }, { id: 'B7K2M9QX02' }] };

describe.each(DOCUMENTS)('%s', (document) => {
  it.each(PAPERS)('is sound on %s', async (paper) => {
    const { pdf, pages, warnings } = await print(request(document, { paper, options: SLIPS }));
    expect(warnings).toEqual([]);
    const sizes = wordsOf(pdf);
    expect(sizes).toHaveLength(pages);
    for (const [i, size] of sizes.entries()) {
      const asked = paperSize(document === 'kit' && paper === 'A3' && i >= 2 ? 'A4' : paper);
      expect(Math.abs(size.widthMm - asked.widthMm)).toBeLessThan(0.01);
      expect(Math.abs(size.heightMm - asked.heightMm)).toBeLessThan(0.01);
      expect(size.words.length).toBeGreaterThan(4);
    }
    const fonts = inspect(pdf, 'pdffonts', ['PDF']).toString().trim().split('\n').slice(2);
    expect(fonts.length).toBeGreaterThan(0);
    for (const font of fonts) expect(font).toMatch(/^[A-Z]{6}\+Andika(-Bold)? .* yes yes yes /);
    expect(inspect(pdf, 'qpdf', ['--check', 'PDF']).toString()).toContain(
      'No syntax or stream encoding errors found',
    );
    const catalog = catalogOf(pdf);
    expect(catalog['/MarkInfo']).toMatchObject({ '/Marked': true });
    expect(catalog['/Lang']).toBe('u:en-AU');
    const view = { '/PrintScaling': '/None', '/DisplayDocTitle': true };
    expect(catalog['/ViewerPreferences']).toMatchObject(
      document === 'sheet' ? { ...view, '/Duplex': '/DuplexFlipLongEdge' } : view,
    );
    expect(Buffer.from(pdf).includes('<pdfuaid:part>1</pdfuaid:part>')).toBe(true);
  });
});

/** Without figures, drawn strategies included: their looks are guarded elsewhere. */
function plain(side: 'front' | 'back'): Board {
  const board = fixtureBoard(side);
  return {
    ...board,
    rungs: board.rungs.map((rung) => ({
      ...rung,
      question: { ...rung.question, figure: null, expression: null },
    })),
  };
}

async function firstRungHeight(paper: 'A3' | 'A4'): Promise<number> {
  const word = wordsOf((await print(request('poster', { paper }))).pdf)[0]?.words.find(
    ({ text }) => text === 'Write',
  );
  if (!word) throw new Error('the first rung is missing');
  return word.bottom - word.top;
}

describe('same request, same bytes', () => {
  // Look at the pages before accepting new bytes with `vitest run -u test/print/pages.test.ts`.
  it.each(DOCUMENTS)('%s has the bytes that were looked at and accepted', async (document) => {
    const wanted = request(document, { boards: [plain('front'), plain('back')], options: SLIPS });
    const first = await print(wanted);
    const second = await print(structuredClone(wanted));
    expect(Buffer.from(first.pdf).equals(second.pdf)).toBe(true);
    const hash = createHash('sha256').update(first.pdf).digest('hex');
    await expect(`${hash}\n`).toMatchFileSnapshot(`../golden/print/${document}.sha256`);
  });

  it('another seed gives another foot, hence other bytes', async () => {
    const first = await print(request('poster'));
    const second = await print(
      request('poster', { boards: [{ ...fixtureBoard('front'), seed: 2 }, fixtureBoard('back')] }),
    );
    expect(Buffer.from(first.pdf).equals(second.pdf)).toBe(false);
  });
});

describe('poster', () => {
  it.each([2, 4] as const)('is cut into %i sheets that together hold every word', async (tiled) => {
    const { pdf, pages } = await print(
      request('poster', { boards: [fixtureBoard('front')], options: { ...OPTIONS, tiled } }),
    );
    expect(pages).toBe(tiled);
    const sizes = wordsOf(pdf);
    const asked = paperSize('A4');
    const across = tiled === 2 ? asked.heightMm : asked.widthMm;
    for (const size of sizes) expect(Math.abs(size.widthMm - across)).toBeLessThan(0.01);
    const seen = new Set(sizes.flatMap((page) => page.words.map((word) => word.text)));
    for (const word of ['Wednesday', 'pencil', '4.7', 'seed']) expect(seen).toContain(word);
  });

  it('sets rungs larger on larger paper', async () => {
    expect(await firstRungHeight('A3')).toBeGreaterThan(1.3 * (await firstRungHeight('A4')));
  });
});

describe('refusals', () => {
  it.each([
    [request('poster', { boards: [] }), 'print.empty'],
    [request('sheet', { options: { ...OPTIONS, date: '2026-13-01' } }), 'print.date'],
    [request('sheet', { options: { ...OPTIONS, copies: 0 } }), 'print.copies'],
    [request('slips', { options: { ...OPTIONS, slips: [] } }), 'print.slips'],
    [request('slips', { options: { ...OPTIONS, slips: [{ id: 'lower case' }] } }), 'print.slip-id'],
    [request('slips', { paper: 'A5' as 'A4' }), 'print.paper'],
    [request('card' as 'key'), 'print.document'],
  ])('%#: one clear sentence and a code', async (wanted, code) => {
    const result = await printer.printBoard(wanted);
    expect(result).toMatchObject({ ok: false, error: { code } });
    if (!result.ok) expect(result.error.message).toMatch(/^[^.]+.*\.$/);
  });
});

function catalogOf(pdf: Uint8Array): Record<string, unknown> {
  const json = JSON.parse(inspect(pdf, 'qpdf', ['--json=2', '--json-key=qpdf', 'PDF']).toString()) as {
    qpdf: [unknown, Record<string, { value?: Record<string, unknown> }>];
  };
  const objects = Object.values(json.qpdf[1]);
  const catalog = objects.find((object) => object.value?.['/Type'] === '/Catalog')?.value;
  if (!catalog) throw new Error('no catalog');
  return catalog;
}
