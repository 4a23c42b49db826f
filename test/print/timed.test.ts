// Timed practice on paper: every question of a form once, room to write, what was wrong first, answers where they belong.
import { beforeAll, describe, expect, it } from 'vitest';
import { composeTimed } from '#engine/activities/timed/compose.js';
import type { Timed } from '#engine/activities/timed/timed.js';
import { Press } from '#print/press.js';
import type { TimedPrintRequest } from '#print/timed-request.js';
import { must } from '../support/must.js';
import { inspect, wordsOf } from './pdf-tools.js';

const press = new Press();
/** Only the numbers of a page's first column of questions end left of this. */
const LEFTMOST_MM = 20.5;

function level(place: number, forms = 2, questions = 60): Promise<Timed> {
  return must(composeTimed({ level: place, forms, questions, seed: 1, locale: 'en-AU' }));
}

async function printed(request: Partial<TimedPrintRequest> & Pick<TimedPrintRequest, 'levels'>) {
  return must(
    await press.printTimed({ document: 'pupil', paper: 'A4', options: { locale: 'en-AU' }, ...request }),
  );
}

/** The words of each page in reading order, as one line. */
function linesOf(pdf: Uint8Array): string[] {
  return wordsOf(pdf).map(({ words }) => words.map(({ text }) => text).join(' '));
}

describe('timed sheets', () => {
  let adding: Timed;
  beforeAll(async () => {
    adding = await level(6);
  });

  it.each(['A4', 'Letter'] as const)('print a form on front and back of one %s sheet', async (paper) => {
    const { pdf, pages, warnings } = await printed({ levels: [adding], paper });
    expect([pages, warnings]).toEqual([4, []]);
    const lines = linesOf(pdf);
    const [form] = adding.forms;
    form?.questions.forEach(({ text }, i) => {
      expect(lines[i < 30 ? 0 : 1]).toContain(`${i + 1} ${text} =`);
    });
  });

  it('leave at least 12 mm between the questions of a column', async () => {
    for (const made of [adding, await level(23), await level(6, 1, 120)]) {
      const [page] = wordsOf((await printed({ levels: [made] })).pdf);
      const numbers = page?.words.filter(({ text }) => /^\d+$/.test(text)) ?? [];
      const column = numbers
        .filter(({ right }) => right < LEFTMOST_MM)
        .map(({ top }) => top)
        .toSorted((a, b) => a - b);
      expect(column.length).toBeGreaterThanOrEqual(10);
      const gaps = column.slice(1).map((y, i) => y - (column[i] ?? 0));
      expect(Math.min(...gaps)).toBeGreaterThan(12);
    }
  });

  it('put a child’s own wrong facts first, outside the count', async () => {
    const redo = (await level(20)).forms[0]?.questions.slice(0, 10) ?? [];
    const sheets = [{ level: 0, form: 1, name: 'Wren Tallow', id: 'K7Q2-0001', redo }];
    const { pdf, pages } = await printed({ levels: [adding], sheets });
    expect(pages).toBe(2);
    const [front = '', back = ''] = linesOf(pdf);
    const before = front.slice(0, front.indexOf(`1 ${adding.forms[1]?.questions[0]?.text}`));
    for (const { text } of redo.slice(0, 8)) expect(before).toContain(`${text} =`);
    for (const { text } of redo.slice(8)) expect(before).not.toContain(`${text} =`);
    expect(front).toContain('Wren Tallow');
    expect(back).not.toContain('Put these right first');
  });

  it('key every answer, with the digits of the form at the end', async () => {
    const { pdf, pages } = await printed({ levels: [adding], document: 'key' });
    expect(pages).toBe(2);
    linesOf(pdf).forEach((line, page) => {
      const form = adding.forms[page];
      form?.questions.forEach(({ text, answer }, i) => {
        expect(line).toContain(`${i + 1} ${answer.text} ${text}`);
      });
      expect(line).toContain(`${form?.digits} digits`);
    });
  });

  it('fold the record inside and leave nothing of it outside', async () => {
    const options = { locale: 'en-AU' as const, names: ['Wren Tallow', 'Ilo Marsh'] };
    const { pdf, pages } = await printed({ levels: [adding], document: 'cover', options });
    expect(pages).toBe(4);
    const [outside = '', inside = ''] = linesOf(pdf);
    expect(outside).toContain('Wren Tallow');
    expect(outside).not.toContain('My record');
    expect(inside).toContain('My record');
    expect(inside).not.toContain('Wren');
  });

  it('count the copies for tomorrow with spares', async () => {
    const sheets = Array.from({ length: 7 }, () => ({ level: 0, form: 0 }));
    const { pdf } = await printed({ levels: [adding], document: 'spares', sheets });
    const words = wordsOf(pdf)[0]?.words ?? [];
    const line = words.find(({ text }) => text === 'Adding')?.top ?? 0;
    const row = words
      .filter(({ top }) => Math.abs(top - line) < 2)
      .toSorted((a, b) => a.left - b.left)
      .map(({ text }) => text);
    expect(row.join(' ')).toBe('6 Adding past 10 A 7 2 9');
  });

  it('are tagged and say so', async () => {
    const { pdf } = await printed({ levels: [adding], document: 'kit' });
    expect(inspect(pdf, 'pdfinfo', ['PDF']).toString()).toMatch(
      /Title: +Timed practice: kit\n[\s\S]*Tagged: +yes/,
    );
  });

  it.each([
    [{ levels: [] }, 'print.empty'],
    [{ paper: 'A3' as const }, 'print.paper'],
    [{ sheets: [{ level: 0, form: 9 }] }, 'print.form'],
    [{ sheets: [{ level: 0, form: 0, id: 'ä' }] }, 'print.slip-id'],
    [{ options: { locale: 'en-AU' as const, copies: 0 } }, 'print.copies'],
  ])('refuse %j', async (change, code) => {
    const request = {
      document: 'pupil',
      levels: [adding],
      paper: 'A4',
      options: { locale: 'en-AU' },
      ...change,
    };
    expect(await press.printTimed(request as TimedPrintRequest)).toMatchObject({
      ok: false,
      error: { code },
    });
  });
});
