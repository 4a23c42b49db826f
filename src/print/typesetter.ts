// Page data -> Typst -> PDF or SVG, in the calling thread. Synchronous and memory-hungry: printer.ts keeps it off the main thread.
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { NodeCompiler, type NodeError, type NodeTypstDocument } from '@myriaddreamin/typst-ts-node-compiler';

const templates = fileURLToPath(new URL('./templates/', import.meta.url));

export interface SetPages {
  readonly pdf: Uint8Array;
  readonly pages: number;
  /** What the templates have to say to the teacher: metadata with the label <remark>, in plain sentences. */
  readonly remarks: readonly string[];
}

/** Sets page data with the templates. One job at a time; {@link Typesetter.forget} after each keeps memory level. */
export class Typesetter {
  readonly #compiler: NodeCompiler;

  /** `faces` are TrueType files; no other face is asked for by the templates. */
  constructor(faces: readonly Buffer[]) {
    this.#compiler = NodeCompiler.create({ workspace: templates, fontArgs: [{ fontBlobs: [...faces] }] });
  }

  /** The tagged PDF/UA-1 of the page data. Throws when a template warns or fails: that is a bug. */
  pdf(data: object): SetPages {
    const document = this.#set(data);
    return {
      pdf: this.#compiler.pdf(document, { pdfStandard: 'ua-1' }),
      pages: document.numOfPages,
      remarks: this.#remarks(document),
    };
  }

  /** All pages of the page data in one SVG, one below the other, as Typst draws them. */
  svg(data: object): { readonly svg: string; readonly remarks: readonly string[] } {
    const document = this.#set(data);
    return { svg: this.#compiler.plainSvg(document), remarks: this.#remarks(document) };
  }

  /** Drops everything remembered from earlier jobs. */
  forget(): void {
    this.#compiler.evictCache(0);
    this.#compiler.resetShadow();
  }

  #set(data: object): NodeTypstDocument {
    this.#compiler.mapShadow(join(templates, 'data.json'), Buffer.from(JSON.stringify(data)));
    const compiled = this.#compiler.compile({ mainFilePath: join(templates, 'main.typ') });
    const complaint = compiled.takeError() ?? compiled.takeWarnings();
    if (complaint) throw new Error(`typesetting failed: ${this.#explain(complaint)}`);
    if (!compiled.result) throw new Error('typesetting gave no document');
    return compiled.result;
  }

  #remarks(document: NodeTypstDocument): readonly string[] {
    return this.#compiler.query(document, { selector: '<remark>', field: 'value' }) as string[];
  }

  #explain(complaint: NodeError): string {
    return JSON.stringify(this.#compiler.fetchDiagnostics(complaint));
  }
}
