// Joins PDFs of one job into one tagged PDF. Typst needs about 1.6 MB of memory a page while it works, so a long job is
// set in pieces and joined here; the reading structure stays, under one document element.
import { createHash } from 'node:crypto';
import { mapReferences, type PdfObject, readTypstPdf, type TypstPdf } from './typst-pdf.js';

const PAGES = 1;
const OUTLINES = 2;
const STRUCTURE = 3;
const DOCUMENT = 4;

/** Takes the pieces in page order, then gives the whole. Pieces are copied at once, so the caller may drop them. */
export class PdfJoiner {
  readonly #chunks: Buffer[] = [Buffer.from('%PDF-1.7\n%\u0080\u0080\u0080\u0080\n\n', 'latin1')];
  readonly #offsets = new Map<number, number>();
  readonly #kids: number[] = [];
  readonly #sections: number[] = [];
  readonly #parents: number[] = [];
  readonly #ids = createHash('sha256');
  #length = (this.#chunks[0] as Buffer).length;
  #next = DOCUMENT + 1;
  #first: { pdf: TypstPdf; structure: string; document: string } | null = null;

  /** Adds one piece. Throws RangeError when Typst did not write it, or wrote it untagged. */
  add(piece: Uint8Array): void {
    const pdf = readTypstPdf(piece);
    const catalog = textOf(pdf, pdf.root);
    const pages = referenceIn(catalog, 'Pages');
    const structure = referenceIn(catalog, 'StructTreeRoot');
    const structureText = textOf(pdf, structure);
    const document = listIn(structureText, 'K')[0] as number;
    const own = new Map([
      [pages, PAGES],
      [structure, STRUCTURE],
      [document, DOCUMENT],
    ]);
    const dropped = new Set([
      ...own.keys(),
      pdf.root,
      pdf.info,
      referenceIn(catalog, 'Outlines'),
      referenceIn(catalog, 'Metadata'),
    ]);
    for (const number of pdf.objects.keys()) if (!dropped.has(number)) own.set(number, this.#next++);
    const renumber = (number: number): number => own.get(number) as number;
    const firstParent = this.#parents.length;
    for (const [number, object] of pdf.objects) {
      if (dropped.has(number)) continue;
      const text = mapReferences(object.text, renumber).replace(
        /\/StructParents (\d+)/,
        (_whole, key: string) => `/StructParents ${firstParent + Number(key)}`,
      );
      this.#write(renumber(number), text, object.stream);
    }
    this.#kids.push(...listIn(textOf(pdf, pages), 'Kids').map(renumber));
    this.#sections.push(...listIn(textOf(pdf, document), 'K').map(renumber));
    this.#parents.push(...parentsIn(structureText).map(renumber));
    this.#ids.update(pdf.id);
    this.#first ??= { pdf, structure: structureText, document: textOf(pdf, document) };
  }

  /** The whole PDF, in the same plain form as Typst's own. Throws RangeError when nothing was added. */
  finish(): Uint8Array {
    if (!this.#first) throw new RangeError('nothing to join');
    const { pdf, structure, document } = this.#first;
    const catalog = textOf(pdf, pdf.root);
    const id = this.#ids.digest('base64').slice(0, 22) + '==';
    this.#write(
      PAGES,
      `<<\n  /Type /Pages\n  /Count ${this.#kids.length}\n  /Kids [${references(this.#kids)}]\n>>`,
      null,
    );
    this.#write(OUTLINES, '<<\n  /Type /Outlines\n>>', null);
    this.#write(STRUCTURE, this.#structureText(structure), null);
    this.#write(
      DOCUMENT,
      document
        .replace(/\/P \d+ 0 R/, `/P ${STRUCTURE} 0 R`)
        .replace(/\/K \[[^\]]*\]/, `/K [${references(this.#sections)}]`),
      null,
    );
    const info = this.#next++;
    this.#write(info, textOf(pdf, pdf.info), null);
    const metadata = this.#next++;
    this.#writeMetadata(metadata, pdf.objects.get(referenceIn(catalog, 'Metadata')) as PdfObject, id);
    const root = this.#next++;
    const own = new Map([
      [referenceIn(catalog, 'Pages'), PAGES],
      [referenceIn(catalog, 'StructTreeRoot'), STRUCTURE],
      [referenceIn(catalog, 'Outlines'), OUTLINES],
      [referenceIn(catalog, 'Metadata'), metadata],
    ]);
    this.#write(
      root,
      mapReferences(catalog, (number) => own.get(number) as number),
      null,
    );
    this.#writeTail(root, info, id);
    return Buffer.concat(this.#chunks);
  }

  #structureText(first: string): string {
    const roles = /\/RoleMap <<[^>]*>>/.exec(first)?.[0] ?? '';
    const parents = this.#parents.map((number, key) => `${key} ${number} 0 R`).join(' ');
    return `<<\n  /Type /StructTreeRoot\n  ${roles}\n  /K [${DOCUMENT} 0 R]\n  /ParentTree <<\n    /Nums [${parents}]\n  >>\n  /ParentTreeNextKey ${this.#parents.length}\n>>`;
  }

  #writeMetadata(number: number, { text, stream }: PdfObject, id: string): void {
    const xml = (stream as Buffer)
      .toString('utf8')
      .replace(/(<xmpTPg:NPages>)\d+/, `$1${this.#kids.length}`)
      .replace(/(<xmpMM:(?:InstanceID|DocumentID)>)[^<]*/g, `$1${id}`);
    const bytes = Buffer.from(xml, 'utf8');
    this.#write(number, text.replace(/\/Length \d+/, `/Length ${bytes.length}`), bytes);
  }

  #write(number: number, text: string, stream: Buffer | null): void {
    this.#offsets.set(number, this.#length);
    this.#push(Buffer.from(`${number} 0 obj\n${text}\n`, 'latin1'));
    if (stream) {
      this.#push(Buffer.from('stream\n', 'latin1'));
      this.#push(Buffer.from(stream));
      this.#push(Buffer.from('\nendstream\n', 'latin1'));
    }
    this.#push(Buffer.from('endobj\n\n', 'latin1'));
  }

  #writeTail(root: number, info: number, id: string): void {
    const start = this.#length;
    const rows = Array.from({ length: this.#next }, (_, number) =>
      number === 0
        ? '0000000000 65535 f\r\n'
        : `${String(this.#offsets.get(number)).padStart(10, '0')} 00000 n\r\n`,
    );
    const trailer = `trailer\n<<\n  /Size ${this.#next}\n  /Root ${root} 0 R\n  /Info ${info} 0 R\n  /ID [(${id}) (${id})]\n>>\n`;
    this.#push(
      Buffer.from(`xref\n0 ${this.#next}\n${rows.join('')}${trailer}startxref\n${start}\n%%EOF\n`, 'latin1'),
    );
  }

  #push(bytes: Buffer): void {
    this.#chunks.push(bytes);
    this.#length += bytes.length;
  }
}

function textOf(pdf: TypstPdf, number: number): string {
  const object = pdf.objects.get(number);
  if (!object) throw new RangeError(`the PDF has no object ${number}`);
  return object.text;
}

function referenceIn(text: string, key: string): number {
  const match = new RegExp(`/${key} (\\d+) 0 R`).exec(text);
  if (!match) throw new RangeError(`the PDF has no ${key}`);
  return Number(match[1]);
}

function listIn(text: string, key: string): number[] {
  const list = new RegExp(`/${key} \\[([^\\]]*)\\]`).exec(text)?.[1] ?? '';
  return [...list.matchAll(/(\d+) 0 R/g)].map((match) => Number(match[1]));
}

/** The parent tree's arrays, one a page, in key order. */
function parentsIn(structure: string): number[] {
  const numbers = /\/Nums \[([^\]]*)\]/.exec(structure)?.[1] ?? '';
  return [...numbers.matchAll(/(\d+)\s+(\d+) 0 R/g)].map((match) => Number(match[2]));
}

function references(numbers: readonly number[]): string {
  return numbers.map((number) => `${number} 0 R`).join(' ');
}
