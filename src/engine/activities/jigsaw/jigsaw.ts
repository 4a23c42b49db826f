// The jigsaw: a rectangle of cells cut into interlocking pieces. All right = every row true and the frame full. Immutable
// once composed; everything printed or shown derives from it.
import type { FigureSpec } from '../../figures/figure.js';
import type { LocaleId } from '../../numbers/locale.js';

/** How every row of one jigsaw is judged. */
export const ROW_RULES = ['sentences', 'steps', 'repeats'] as const;
export type RowRule = (typeof ROW_RULES)[number];

/** What the rows are about, as a teacher chooses it. */
export const ROW_KINDS = [
  'mixed',
  'sentences',
  'missing',
  'equivalents',
  'families',
  'steps',
  'repeats',
] as const;
export type RowKind = (typeof ROW_KINDS)[number];

/** How much trying out a jigsaw asks for. */
export const JIGSAW_LEVELS = ['easy', 'middle', 'hard'] as const;
export type JigsawLevel = (typeof JIGSAW_LEVELS)[number];

export const LEAST_ROWS = 3;
export const MOST_ROWS = 8;
export const LEAST_COLUMNS = 5;
export const MOST_COLUMNS = 10;

/** A row and a column, both counted from 0. */
export type Place = readonly [row: number, column: number];

export interface JigsawCell {
  /** As printed; empty in a blank cell. */
  readonly text: string;
  /** mathjs syntax: the cell's number, its sign, or nothing in a blank cell; a quoted text where rows repeat shapes. */
  readonly expression: string;
  /** The picture drawn instead of the text: a clock face, say. Cells with the same text have the same picture. */
  readonly figure?: FigureSpec;
}

/** Cells that hang together, as they lie in the right assembly. Pieces are neither turned nor flipped. */
export interface JigsawPiece {
  readonly cells: readonly Place[];
}

/** What was computed about a jigsaw, so that another program can check it again. */
export interface JigsawProof {
  /** Assemblies of all pieces that fill the frame with every row true and every printed cell met; counting stops at 2. */
  readonly assemblies: number;
  /** Assemblies that fit by outline and by kind of cell (number, sign, blank) alone; a lower bound, counting stops early. */
  readonly outlineFits: number;
  /** Pieces that the child of child.ts lays and has to take back: the middle of three runs. */
  readonly wrongTries: number;
  readonly level: JigsawLevel;
}

export interface Jigsaw {
  readonly kind: 'jigsaw';
  readonly seed: number;
  readonly years: readonly number[];
  readonly locale: LocaleId;
  readonly rowKind: RowKind;
  readonly rows: number;
  readonly columns: number;
  /** Row by row, `rows` times `columns` of them. */
  readonly cells: readonly JigsawCell[];
  readonly rowRule: RowRule;
  readonly pieces: readonly JigsawPiece[];
  /** Cells whose text is printed in the frame: whatever lies there must show the same text. */
  readonly given: readonly Place[];
  readonly proof: JigsawProof;
}
