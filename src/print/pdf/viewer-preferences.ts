// What a PDF viewer is asked to do when it prints: keep the size, and turn two-sided paper over the long edge.

export interface ViewerPreferences {
  /** Two-sided, flipped on the long edge; single-sided handling is left to the printer otherwise. */
  readonly isDuplex: boolean;
}

/**
 * The same PDF with print scaling set to none, and duplex where asked (ISO 32000-1, 12.2). Typst writes the catalog as
 * the last object before a plain cross-reference table, so only the tail is rewritten: every other byte and offset
 * stays. Throws RangeError when the file is built otherwise.
 */
export function withViewerPreferences(pdf: Uint8Array, preferences: ViewerPreferences): Uint8Array {
  const bytes = Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength);
  const catalogAt = bytes.lastIndexOf('/Type /Catalog');
  const tail = bytes.subarray(catalogAt).toString('latin1');
  const opening = '/ViewerPreferences <<';
  const xrefAt = tail.indexOf('xref\n0 ');
  const at = tail.indexOf(opening);
  const start = /startxref\n(\d+)\n%%EOF\s*$/.exec(tail);
  if (
    catalogAt < 0 ||
    at < 0 ||
    xrefAt < at ||
    !start ||
    Number(start[1]) !== catalogAt + xrefAt ||
    /\d+ 0 obj/.test(tail)
  )
    throw new RangeError('the PDF is not built as Typst 0.14 builds it');
  const added = `\n    /PrintScaling /None${preferences.isDuplex ? '\n    /Duplex /DuplexFlipLongEdge' : ''}`;
  const moved = tail.slice(0, at + opening.length) + added + tail.slice(at + opening.length, start.index);
  const newTail = `${moved}startxref\n${Number(start[1]) + added.length}\n%%EOF\n`;
  return Buffer.concat([bytes.subarray(0, catalogAt), Buffer.from(newTail, 'latin1')]);
}
