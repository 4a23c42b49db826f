// A long job is set in pieces and joined: it must be one sound, tagged PDF with every page in order.
import { afterAll, expect, it } from 'vitest';
import { inspect, OPTIONS, print, printer, request, wordsOf } from './pdf-tools.js';

afterAll(() => printer.close());

it('joins 110 pages into one tagged document', async () => {
  const groups = Array.from({ length: 55 }, (_, i) => ({ title: `Group${i + 1}`, names: [`(10 0 R) ${i}`] }));
  const { pdf, pages } = await print(request('sheet', { options: { ...OPTIONS, groups } }));
  expect(pages).toBe(110);
  expect(inspect(pdf, 'qpdf', ['--check', 'PDF']).toString()).toContain(
    'No syntax or stream encoding errors found',
  );
  const titles = wordsOf(pdf).map((page) => page.words.find((word) => word.text.startsWith('Group'))?.text);
  expect(titles).toEqual(groups.flatMap((group) => [group.title, group.title]));
  const structure = inspect(pdf, 'pdfinfo', ['-struct', 'PDF']).toString();
  expect(structure.match(/^ *Document/gm)).toHaveLength(1);
  expect(structure.match(/^ *H1/gm)).toHaveLength(110);
  expect(structure.match(/Figure/g)?.length).toBe(55 * 3);
  expect(inspect(pdf, 'pdfinfo', ['PDF']).toString()).toMatch(
    /Title: +Dry-wipe sheet: 47\n[\s\S]*Tagged: +yes[\s\S]*Pages: +110/,
  );
});
