// Children's names on their way to paper: what can be printed, and one warning that tells of all that cannot.
import type { Coverage } from '../fonts/coverage.js';
import { printableName } from '../text/printable.js';
import { listInWords } from './page-data.js';

/** Turns names into their printed form and remembers those that changed. */
export class NamePrinter {
  readonly #covers: Coverage;
  readonly #blank = new Set<string>();
  readonly #changed = new Set<string>();

  constructor(covers: Coverage) {
    this.#covers = covers;
  }

  /** The printed form, or null when the child has to write the name. */
  one(name: string): string | null {
    const { text, isChanged } = printableName(name, this.#covers);
    if (text === null) this.#blank.add(name);
    else if (isChanged) this.#changed.add(name);
    return text;
  }

  /** "Ari, Bea, ____": names with a line in place of each that cannot be printed. */
  list(names: readonly string[]): string {
    return names.map((name) => this.one(name) ?? '____').join(', ');
  }

  /** Plain sentences for the teacher; empty when every name is printed as it is. */
  warnings(): readonly string[] {
    const blank = [...this.#blank];
    const changed = [...this.#changed];
    return [
      ...(blank.length > 0
        ? [
            `The print typeface has no letters for ${listInWords(blank.map(quote))}, so a line to write the name on is printed instead.`,
          ]
        : []),
      ...(changed.length > 0
        ? [
            `Signs that cannot be printed, or letters beyond the longest line, were left out of ${listInWords(changed.map(quote))}.`,
          ]
        : []),
    ];
  }
}

function quote(name: string): string {
  return `\u201c${[...name].slice(0, 60).join('')}\u201d`;
}
