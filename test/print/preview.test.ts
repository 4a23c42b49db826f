// The preview is the print: same pages, same places, figures inline.
import { afterAll, expect, it } from 'vitest';
import { OPTIONS, print, printer, request } from './pdf-tools.js';

afterAll(() => printer.close());

it.each(['poster', 'sheet', 'slips', 'key', 'relief', 'practice', 'kit'] as const)(
  '%s: as many pages as the print, of the same size',
  async (document) => {
    const wanted = request(document, { options: { ...OPTIONS, slips: [{ id: 'A1', name: 'Ari' }] } });
    const preview = await printer.previewBoard(wanted);
    if (!preview.ok) throw new Error(preview.error.message);
    expect(preview.value.pages).toHaveLength((await print(wanted)).pages);
    expect(preview.value.isCut).toBe(false);
    for (const page of preview.value.pages) {
      expect(page).toMatch(/^<svg [^>]*viewBox="0 0 595\.2\d+ 841\.8\d+"/);
      expect(page.endsWith('</svg>')).toBe(true);
      expect(page).not.toContain('<image');
      const defined = new Set([...page.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]));
      for (const [, id] of page.matchAll(/(?:href="#|url\(#)([^")]+)/g)) expect(defined).toContain(id);
    }
    if (document === 'sheet') expect(preview.value.pages[0]).toContain('aria-label="A clock.');
  },
);

it('shows the first 40 pages of a longer print, and says so', async () => {
  const preview = await printer.previewBoard(request('sheet', { options: { ...OPTIONS, copies: 30 } }));
  expect(preview).toMatchObject({ ok: true, value: { isCut: true } });
  if (preview.ok) expect(preview.value.pages).toHaveLength(40);
});
