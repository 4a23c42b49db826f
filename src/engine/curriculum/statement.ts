// What a published standard is to the program: statements with a code, a year, a strand and our own paraphrase.

export const STANDARD_IDS = ['ac9', 'england', 'ccss'] as const;
export type StandardId = (typeof STANDARD_IDS)[number];

/** One content statement. The summary is a paraphrase of ours for finding one's way, never a quotation. */
export interface Statement {
  readonly code: string;
  /** The standard's own year number; 0 is its year before Year 1 or Grade 1. */
  readonly year: number;
  /** The standard's own strand or domain. */
  readonly strand: string;
  readonly summary: string;
  /** True when code and content were seen in a source named in the data file. */
  readonly verified: boolean;
}

export interface Standard {
  readonly id: StandardId;
  /** Short name for a column or a filter. */
  readonly name: string;
  readonly title: string;
  readonly publisher: string;
  readonly version: string;
  /** Who owns the published text and on what terms codes and paraphrases are kept here. */
  readonly licence: string;
  /** What a user of the codes has to know, in plain sentences. */
  readonly notes: readonly string[];
  readonly statements: readonly Statement[];
}

/** A statement as a data file lists it, under its year and strand. */
export type StatementRow = readonly [code: string, summary: string];

/** The statements of one year and strand; each was seen in a source named by its file. */
export function statementsIn(year: number, strand: string, rows: readonly StatementRow[]): Statement[] {
  return rows.map(([code, summary]) => ({ code, year, strand, summary, verified: true }));
}
