// Texts, names and numbers of any length and script: nothing fails, nothing leaves its page, no word is lost.
import fc from 'fast-check';
import { afterAll, expect, it } from 'vitest';
import type { Board } from '#engine/activities/board/board.js';
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

afterAll(() => printer.close());

const WORDS = [
  'a',
  'sheep',
  '1\u00a0000\u00a0000',
  '3/4',
  'of',
  '12 3/8',
  '\u2212',
  'rectangular',
  '$4.85',
  '7:45',
  'How',
  'many?',
  '\u25a1',
  'kilometres',
  '\u00f7',
];
const text = fc
  .array(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 28 })
  .map((words) => words.join(' '));
const answer = fc.constantFrom(
  '7',
  '1\u00a0000\u00a0000',
  '2 3/8',
  '$1\u00a0284.50',
  '0.375',
  'parallelogram',
  '1, 2, 3, 4, 6, 9, 12, 18, 36',
);

function twelve(one: fc.Arbitrary<string>): fc.Arbitrary<string[]> {
  return fc.array(one, { minLength: 12, maxLength: 12 });
}

function boardOf(texts: readonly string[], answers: readonly string[], number: string): Board {
  const board = fixtureBoard('front');
  return {
    ...board,
    number,
    rungs: board.rungs.map((rung, i) => {
      const shown = answers[i] as string;
      const question = {
        ...rung.question,
        text: texts[i] as string,
        answer: { ...rung.question.answer, text: shown },
      };
      return { ...rung, question };
    }),
  };
}

/** Dark pixels within `edgeMm` of the edge of a page drawn at 50 dpi. */
function inkNearEdge(page: Raster, edgeMm: number): number {
  const edge = Math.floor((edgeMm / 25.4) * 50);
  let ink = 0;
  for (let y = 0; y < page.height; y++)
    for (let x = 0; x < page.width; x++) {
      const isNear = Math.min(x, y, page.width - 1 - x, page.height - 1 - y) < edge;
      if (isNear && page.at(x, y) < 250) ink++;
    }
  return ink;
}

it('long texts and wide numbers stay inside the margins of every document', async () => {
  await fc.assert(
    fc.asyncProperty(
      twelve(text),
      twelve(answer),
      fc.constantFrom('7', '1\u00a0000\u00a0000', '$99\u00a0999.95', '12 99/100', '999.999'),
      fc.constantFrom('poster', 'sheet', 'key', 'relief', 'practice', 'slips'),
      fc.constantFrom('A4', 'A3', 'Letter'),
      async (texts, answers, number, document, paper) => {
        const board = boardOf(texts, answers, number);
        const { pdf, pages } = await print(request(document, { boards: [board], paper }));
        if (document === 'relief' || document === 'sheet' || document === 'poster') expect(pages).toBe(1);
        for (const page of wordsOf(pdf)) {
          for (const word of page.words) {
            expect(word.left, word.text).toBeGreaterThan(4.5);
            expect(word.right, word.text).toBeLessThan(page.widthMm - 4.5);
          }
        }
        // The cut lines of slips run to the edge; everything else leaves it white.
        if (document !== 'slips') {
          for (let page = 1; page <= pages; page++) expect(inkNearEdge(rasterOf(pdf, page, 50), 4)).toBe(0);
          const seen = inspect(pdf, 'pdftotext', ['PDF', '-']).toString();
          for (const word of texts.flatMap((one) => one.split(' ')))
            if (/^\p{L}+\??$/u.test(word)) expect(seen).toContain(word);
        }
      },
    ),
    { numRuns: 24, seed: 47 },
  );
});

it('a name in any script or of any signs never stops a print', async () => {
  const name = fc.string({ unit: 'grapheme', minLength: 0, maxLength: 60 });
  await fc.assert(
    fc.asyncProperty(
      fc.array(name, { minLength: 8, maxLength: 8 }),
      fc.array(name, { maxLength: 12 }),
      name,
      async (names, group, className) => {
        const slips = names.map((one, i) => ({ id: `ID${i}`, name: one }));
        const slipPages = await print(request('slips', { options: { ...OPTIONS, className, slips } }));
        expect(slipPages.pages).toBe(1);
        const sheets = await print(
          request('sheet', {
            options: { ...OPTIONS, className, groups: [{ title: className, names: group }] },
          }),
        );
        expect(sheets.pages).toBe(2);
      },
    ),
    { numRuns: 20, seed: 47 },
  );
});

it('a name is printed whole, without its signs, or not at all, and the teacher is told', async () => {
  const slips = [
    { id: 'A1', name: 'Zo\u00eb-Marie \u00c5ngstr\u00f6m' },
    { id: 'A2', name: 'Bo \u{1f984}' },
    { id: 'A3', name: '\u738b\u5c0f\u660e' },
    { id: 'A4', name: 'Ng\u1ecdc \u00c1nh' },
    { id: 'A5', name: '\u041b\u0438\u043b\u044f' },
  ];
  const { pdf, warnings } = await print(request('slips', { options: { ...OPTIONS, slips } }));
  const seen = inspect(pdf, 'pdftotext', ['PDF', '-']).toString();
  for (const printed of [
    'Zo\u00eb-Marie \u00c5ngstr\u00f6m',
    'Bo',
    'Ng\u1ecdc \u00c1nh',
    '\u041b\u0438\u043b\u044f',
  ])
    expect(seen).toContain(printed);
  expect(warnings).toHaveLength(2);
  expect(warnings[0]).toContain('\u738b\u5c0f\u660e');
  expect(warnings[1]).toContain('Bo \u{1f984}');
});
