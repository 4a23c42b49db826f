// Kits of the self-checking activities: pages, texts, faces, sameness, refusals.
import { createHash } from 'node:crypto';
import { afterAll, describe, expect, it } from 'vitest';
import type { Chain } from '#engine/activities/chain/chain.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import type { KitRequest, KitSet } from '#print/kit-request.js';
import { type PaperId, PAPERS } from '#print/request.js';
import {
  chainRequest,
  chainSets,
  fixtureChain,
  fixtureJigsaw,
  jigsawRequest,
  jigsawSets,
  printKit,
} from './kit-tools.js';
import { inspect, printer, type Word, wordsOf } from './pdf-tools.js';

afterAll(() => printer.close());

const ONE: readonly KitSet<Chain>[] = [{ number: 3, label: 'Blue box', activity: fixtureChain() }];
const ONE_JIGSAW: readonly KitSet<Jigsaw>[] = [{ number: 3, label: 'Blue box', activity: fixtureJigsaw() }];

const CASES = [
  ...(['cards', 'labels', 'key', 'pupil', 'kit'] as const).map(
    (document) => ['chain', document, (paper: PaperId) => chainRequest(document, ONE, paper)] as const,
  ),
  ...(['pieces', 'labels', 'key', 'pupil', 'kit'] as const).map(
    (document) =>
      ['jigsaw', document, (paper: PaperId) => jigsawRequest(document, ONE_JIGSAW, paper)] as const,
  ),
];
const TWO_SIDED: ReadonlySet<string> = new Set(['cards', 'pieces', 'kit']);

/** All text of a PDF without the spaces, since a fraction's parts are read apart from its words. */
function textOf(pdf: Uint8Array): string {
  return inspect(pdf, 'pdftotext', ['-raw', 'PDF', '-']).toString('utf8').replace(/\s+/gu, '');
}

describe.each(CASES)('of a %s: %s', (activity, document, requestOn) => {
  it.each(PAPERS)('is sound on %s', async (paper) => {
    const { pdf, pages, warnings } = await printKit(requestOn(paper));
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
    expect(turns).toBe(TWO_SIDED.has(document));
  });

  // Look at the pages before accepting new bytes with `vitest run -u test/print/kit.test.ts`.
  it('has the bytes that were looked at and accepted', async () => {
    const first = await printKit(requestOn('A4'));
    const again = await printKit(structuredClone(requestOn('A4')));
    expect(Buffer.from(first.pdf).equals(again.pdf)).toBe(true);
    const hash = createHash('sha256').update(first.pdf).digest('hex');
    await expect(`${hash}\n`).toMatchFileSnapshot(`../golden/print/${activity}-${document}.sha256`);
  });

  it('is previewed as it is printed', async () => {
    const wanted = requestOn('A4');
    const preview = await printer.previewKit(wanted);
    if (!preview.ok) throw new Error(preview.error.message);
    expect(preview.value.pages).toHaveLength((await printKit(wanted)).pages);
  });
});

/** "3 T" for the letter of a strip of set 3: the words "set 3" stand to its left. */
function markAt(letter: Word, words: readonly Word[]): string[] {
  if (!/^[A-Z]$/.test(letter.text)) return [];
  const left = words.filter(
    ({ right, bottom }) =>
      right < letter.left && right > letter.left - 26 && Math.abs(bottom - letter.bottom) < 2,
  );
  const number = left.find(({ text }) => /^\d+$/.test(text));
  return number && left.some(({ text }) => text === 'set') ? [`${number.text} ${letter.text}`] : [];
}

describe('ten numbered sets', () => {
  const sets = chainSets(10, [3, 4]);

  it('have the pages that a teacher counts on', async () => {
    const pagesOf = async (document: KitRequest['document'], options = {}) =>
      (await printKit(chainRequest(document, sets, 'A4', options))).pages;
    expect(await pagesOf('cards')).toBe(20);
    expect(await pagesOf('cards', { backs: false })).toBe(10);
    expect(await pagesOf('cards', { cutting: 'by stack' })).toBe(20);
    expect(await pagesOf('cards', { largePrint: true })).toBe(40);
    expect(await pagesOf('labels')).toBe(2);
    expect(await pagesOf('pupil')).toBe(10);
    expect(await pagesOf('pupil', { copies: 3 })).toBe(30);
    const key = await pagesOf('key');
    // Two-sided, what is cut has an empty back, so that nothing else is cut with it.
    expect(await pagesOf('kit')).toBe(20 + 2 * 2 + 2 * 10 + key);
    expect(await pagesOf('kit', { backs: false })).toBe(10 + 2 + 10 + key);
  });

  it.each(['by sheet', 'by stack'] as const)('carry every strip once, cut %s', async (cutting) => {
    const { pdf } = await printKit(chainRequest('cards', sets, 'A4', { cutting, backs: false }));
    const marks = wordsOf(pdf).flatMap(({ words }) => words.flatMap((word) => markAt(word, words)));
    const wanted = sets.flatMap(({ number, activity }) =>
      activity.cards.map(({ label }) => `${number} ${label}`),
    );
    expect(marks.sort()).toEqual(wanted.sort());
  });

  it('tell an adult the letters in order, each set on one line', async () => {
    const key = wordsOf((await printKit(chainRequest('key', sets))).pdf)[0];
    for (const { number, activity } of sets) {
      const row = key?.words.find(
        (word, at) => word.text === String(number) && key.words[at - 1]?.text === 'set',
      );
      const line = key?.words.filter(
        (word) => row && Math.abs(word.bottom - row.bottom) < 2 && word.left > row.right,
      );
      expect(
        line
          ?.sort((a, b) => a.left - b.left)
          .map(({ text }) => text)
          .join(''),
      ).toBe(activity.cards.map(({ label }) => label).join(''));
    }
  });

  it('have name tags for the children named, or blank ones', async () => {
    const names = Array.from({ length: 30 }, (_, at) => `Child${at + 1}`);
    const named = await printKit(chainRequest('labels', sets, 'A4', { names }));
    expect(named.pages).toBe(3);
    for (const name of names) expect(textOf(named.pdf)).toContain(name);
    const odd = await printKit(chainRequest('labels', sets, 'A4', { names: ['\u674e'] }));
    expect(odd.warnings.join()).toMatch(/no letters for/);
  });
});

it.each([
  ['cards', 6],
  ['pupil', 5.4],
] as const)(
  'no letter on %s, in a picture or outside, is smaller than %d points',
  async (document, points) => {
    const sets = [10, 12, 16]
      .flatMap((cards) => [...chainSets(4, [2, 3], cards), ...chainSets(4, [5, 6], cards)])
      .map((set, at) => ({ ...set, number: at + 1 }));
    const { pdf } = await printKit(chainRequest(document, sets, 'A4', { backs: false }));
    for (const { words } of wordsOf(pdf)) {
      const tall = ({ top, bottom }: Word) => bottom - top;
      // "set" stands on every strip in seven points, and in larger ones in a heading.
      const point = Math.min(...words.filter(({ text }) => text === 'set').map(tall)) / 7;
      for (const word of words) expect(tall(word) / point, word.text).toBeGreaterThan(points - 0.06);
    }
  },
);

it.each([
  [1, 2],
  [3, 4],
  [5, 6],
])('strips for years %i and %i carry their texts without a missing letter', async (...years) => {
  const sets = chainSets(4, years, 16);
  const { pdf } = await printKit(chainRequest('cards', sets, 'A4', { backs: false }));
  const text = textOf(pdf);
  expect(text).not.toMatch(/[\ufffd\u00b7]/u);
  for (const { activity } of sets)
    for (const { question } of activity.cards) {
      // Fractions are set upright, gaps are drawn.
      if (!question || /[/_\u25a1]/u.test(question.text)) continue;
      expect(text).toContain(question.text.replace(/\s+/gu, ''));
    }
});

it('a question too long for its strip is set smaller, and the teacher is told which', async () => {
  const chain = fixtureChain();
  const long = 'How many apples are there in the baskets of the seven gardeners? '.repeat(6);
  const cards = chain.cards.map((card, at) =>
    at === 4 && card.question ? { ...card, question: { ...card.question, text: long.trim() } } : card,
  );
  const set = { number: 7, activity: { ...chain, cards } };
  const { pdf, warnings } = await printKit(chainRequest('pupil', [set]));
  expect(warnings).toHaveLength(1);
  expect(warnings[0]).toMatch(
    new RegExp(`^Set 7, strip ${chain.cards[4]?.label}: the question has to be set very small`),
  );
  expect(textOf(pdf)).toContain(long.replace(/\s+/gu, ''));
});

describe('jigsaws', () => {
  it('have one sheet of pieces and one mat a set, each with its back', async () => {
    const sets = jigsawSets(3, { years: [3, 4], rows: 4, columns: 5 });
    const pagesOf = async (document: KitRequest['document'], options = {}) =>
      (await printKit(jigsawRequest(document, sets, 'A4', options))).pages;
    expect(await pagesOf('pieces')).toBe(12);
    expect(await pagesOf('pieces', { backs: false })).toBe(6);
    expect(await pagesOf('labels')).toBe(1);
    expect(await pagesOf('pupil', { copies: 2 })).toBe(6);
  });

  it('print every cell on its piece, the given ones on the mat, and the way there in the key', async () => {
    const { rows, columns, cells, given, pieces } = fixtureJigsaw();
    const words = (pdf: Uint8Array, page: number) =>
      wordsOf(pdf)[page - 1]?.words.map(({ text }) => text) ?? [];
    const { pdf } = await printKit(jigsawRequest('pieces', ONE_JIGSAW));
    const printed = words(pdf, 1);
    const times = (list: readonly string[], word: string) => list.filter((one) => one === word).length;
    for (const { text } of cells) {
      const wanted = cells.filter((cell) => cell.text === text).length;
      if (text !== '') expect(times(printed, text), text).toBeGreaterThanOrEqual(wanted);
    }
    const mat = words(pdf, 3).filter((word) => /^\d+$/.test(word) && word !== '3');
    const shown = given
      .map(([row, column]) => cells[row * columns + column]?.text)
      .filter((text) => /^\d+$/.test(text ?? ''));
    expect(mat.filter((word) => shown.includes(word)).length).toBeGreaterThanOrEqual(shown.length);
    const key = textOf((await printKit(jigsawRequest('key', ONE_JIGSAW))).pdf);
    for (let row = 1; row <= rows; row++) expect(key).toContain(`Row${row}isnowfull`);
    expect(pieces.length).toBeGreaterThan(3);
  });

  it('tell the teacher when a sheet to cut and paste comes out small', async () => {
    const made = jigsawSets(1, { years: [5, 6], rows: 8, columns: 10 })[0]?.activity as Jigsaw;
    const cells = made.cells.map((cell, at) =>
      at === 0 ? { text: '10\u00a0000', expression: '10000' } : cell,
    );
    const sets = [{ number: 1, activity: { ...made, cells } }];
    const { warnings } = await printKit(jigsawRequest('pupil', sets, 'A4', { copies: 2 }));
    expect(warnings).toEqual([
      'Set 1: the numbers on the sheet to cut and paste are small. Print that sheet on A3.',
    ]);
    expect((await printKit(jigsawRequest('pupil', sets, 'A3'))).warnings).toEqual([]);
  });
});

describe('refusals', () => {
  const activity = fixtureChain();
  it.each([
    [chainRequest('cards', []), 'print.empty'],
    [chainRequest('tiles', ONE), 'print.document'],
    [jigsawRequest('cards', ONE_JIGSAW), 'print.document'],
    [chainRequest('poster' as 'key', ONE), 'print.document'],
    [chainRequest('key', ONE, 'A5' as 'A4'), 'print.paper'],
    [chainRequest('key', [{ number: 0, activity }]), 'print.set-number'],
    [chainRequest('key', [...ONE, ...ONE]), 'print.set-number'],
    [chainRequest('key', [{ number: 1, activity, label: 'x'.repeat(41) }]), 'print.label'],
    [chainRequest('pupil', ONE, 'A4', { copies: 0 }), 'print.copies'],
    [chainRequest('cards', ONE, 'A4', { cutting: 'twice' as 'by stack' }), 'print.cutting'],
    [
      chainRequest(
        'key',
        Array.from({ length: 101 }, (_, at) => ({ number: at + 1, activity })),
      ),
      'print.sets',
    ],
  ])('%#: one clear sentence and a code', async (wanted, code) => {
    const result = await printer.printKit(wanted);
    expect(result).toMatchObject({ ok: false, error: { code } });
    if (!result.ok) expect(result.error.message).toMatch(/^[^.]+.*\.$/);
  });
});
