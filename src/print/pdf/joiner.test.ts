import { describe, expect, it } from 'vitest';
import { andikaFaces } from '../fonts/andika.js';
import { Typesetter } from '../typesetter.js';
import { PdfJoiner } from './joiner.js';
import { mapReferences, readTypstPdf } from './typst-pdf.js';
import { withViewerPreferences } from './viewer-preferences.js';

const PAGE = {
  title: 'T (10 0 R)',
  lang: 'en',
  region: 'AU',
  parts: [
    {
      kind: 'practice',
      paper: { width: 210, height: 297 },
      foot: '',
      heading: 'H',
      about: '',
      answersTitle: 'A',
      withKey: true,
      copies: 1,
      size: 12,
      questions: [],
      rows: [],
      pairedRows: 0,
    },
  ],
};

describe('pieces of a PDF', () => {
  const typesetter = new Typesetter(andikaFaces());
  const { pdf } = typesetter.pdf(PAGE);

  it('reads every object that Typst wrote', () => {
    const { objects, root, info } = readTypstPdf(pdf);
    expect(objects.get(root)?.text).toContain('/Type /Catalog');
    expect(objects.get(info)?.text).toContain(
      '(T \\(10 0 R\\))'.replaceAll('\\', objects.get(info)?.text.includes('\\(') ? '\\' : ''),
    );
  });

  it('joining one piece keeps its pages; joining none is a bug', () => {
    const joiner = new PdfJoiner();
    joiner.add(pdf);
    expect(Buffer.from(joiner.finish()).toString('latin1')).toMatch(/\/Type \/Pages\n {2}\/Count 2\n/);
    expect(() => new PdfJoiner().finish()).toThrow(RangeError);
  });

  it('refuses files built otherwise', () => {
    const other = Buffer.from('%PDF-1.4\nnothing\n');
    expect(() => readTypstPdf(other)).toThrow(RangeError);
    expect(() => withViewerPreferences(other, { isDuplex: true })).toThrow(RangeError);
  });

  it('renumbers references, but not words that look like them', () => {
    expect(
      mapReferences('<< /A 1 0 R /T (see 1 0 R \\) (2 0 R) 3 0 R) /K [2 0 R 12 0 R] >>', (n) => n + 100),
    ).toBe('<< /A 101 0 R /T (see 1 0 R \\) (2 0 R) 3 0 R) /K [102 0 R 112 0 R] >>');
  });
});
