// Reads the plain object structure in which Typst 0.14 writes its PDFs (PDF 1.7, one cross-reference table, no object streams).

/** One indirect object: its dictionary or array as Latin-1 text, and its stream bytes, if any. */
export interface PdfObject {
  readonly text: string;
  readonly stream: Buffer | null;
}

export interface TypstPdf {
  readonly objects: ReadonlyMap<number, PdfObject>;
  readonly root: number;
  readonly info: number;
  /** The file identifier, as written between the parentheses of the trailer's ID. */
  readonly id: string;
}

/** The objects of a PDF that Typst wrote. Throws RangeError when the file is built otherwise. */
export function readTypstPdf(pdf: Uint8Array): TypstPdf {
  const bytes = Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength);
  const tail = /startxref\n(\d+)\n%%EOF\s*$/.exec(bytes.subarray(-64).toString('latin1'));
  const table = tail ? bytes.subarray(Number(tail[1])).toString('latin1') : '';
  const head = /^xref\n0 (\d+)\n/.exec(table);
  const root = /\/Root (\d+) 0 R/.exec(table);
  const info = /\/Info (\d+) 0 R/.exec(table);
  const id = /\/ID \[\(([^)]*)\)/.exec(table);
  if (!head || !root || !info || !id) throw new RangeError('the PDF is not built as Typst 0.14 builds it');
  const objects = new Map<number, PdfObject>();
  const count = Number(head[1]);
  const offsets = Array.from({ length: count }, (_, i) =>
    Number(table.slice(head[0].length + i * 20, head[0].length + i * 20 + 10)),
  );
  for (let number = 1; number < count; number++) {
    const end = offsets[number + 1] ?? Number(tail?.[1]);
    objects.set(number, readObject(bytes.subarray(offsets[number], end), number));
  }
  return { objects, root: Number(root[1]), info: Number(info[1]), id: id[1] as string };
}

function readObject(bytes: Buffer, number: number): PdfObject {
  const opening = `${number} 0 obj\n`;
  if (bytes.subarray(0, opening.length).toString('latin1') !== opening)
    throw new RangeError(`object ${number} is not where the table says`);
  const streamAt = bytes.indexOf('\nstream\n');
  const isStream = streamAt >= 0;
  const text = bytes
    .subarray(opening.length, isStream ? streamAt : bytes.lastIndexOf('\nendobj'))
    .toString('latin1');
  if (!isStream) return { text, stream: null };
  const start = streamAt + '\nstream\n'.length;
  const length = Number(/\/Length (\d+)/.exec(text)?.[1]);
  return { text, stream: bytes.subarray(start, start + length) };
}

/** The same text with every reference replaced; references that stand inside a string literal stay as they are. */
export function mapReferences(text: string, map: (number: number) => number): string {
  if (!text.includes('('))
    return text.replace(REFERENCE, (_whole, number: string) => `${map(Number(number))} 0 R`);
  let mapped = '';
  let from = 0;
  while (from < text.length) {
    const open = text.indexOf('(', from);
    const plain = text.slice(from, open < 0 ? text.length : open);
    mapped += plain.replace(REFERENCE, (_whole, number: string) => `${map(Number(number))} 0 R`);
    if (open < 0) break;
    from = stringEnd(text, open);
    mapped += text.slice(open, from);
  }
  return mapped;
}

const REFERENCE = /\b(\d+) 0 R\b/g;

function stringEnd(text: string, open: number): number {
  let depth = 0;
  for (let i = open; i < text.length; i++) {
    const char = text[i];
    if (char === '\\') i++;
    else if (char === '(') depth++;
    else if (char === ')' && --depth === 0) return i + 1;
  }
  throw new RangeError('a string literal in the PDF has no end');
}
