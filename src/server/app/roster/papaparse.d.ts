// The few parts of papaparse that we use. The published types pull in Node's, which this layer must not see.
declare module 'papaparse' {
  export interface ParseError {
    readonly type: 'Quotes' | 'Delimiter' | 'FieldMismatch';
    readonly code: string;
    readonly message: string;
    /** Counted from 0, blank rows included. */
    readonly row?: number;
  }
  export interface ParseResult {
    readonly data: string[][];
    readonly errors: ParseError[];
    readonly meta: { readonly delimiter: string };
  }
  export function parse(
    text: string,
    options: { delimiter?: string; delimitersToGuess?: string[]; header: false; skipEmptyLines: false },
  ): ParseResult;
  const papaparse: { parse: typeof parse };
  // oxlint-disable-next-line import/no-default-export -- the package is CommonJS: its whole is its default export
  export default papaparse;
}
