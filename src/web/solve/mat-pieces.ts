// What a table with a mat is told about its activity: how the pieces look, how they lie, and what is said about them.
import type { LocaleId } from '#engine/numbers/locale.js';
import type { Mat, MatShape, Place } from './mat.js';
import type { Told } from './use-hints.js';

/** A drawing and its size in cells. */
export interface Drawn {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** How far the drawing reaches beyond the cells to the left and above, in cells. */
  readonly left: number;
  readonly top: number;
}

export interface MatPieces {
  readonly shape: MatShape;
  /** The order in which the pieces lie loose at first. */
  readonly homes: readonly number[];
  readonly locale: LocaleId;
  readonly ground: Drawn;
  readonly pieces: readonly (Drawn & { readonly words: string })[];
  /** What one sees at a cell. */
  readonly cellWords: (mat: Mat, cell: Place) => string;
  /** Where a piece lies or would lie, before it is laid. */
  readonly placeWords: (piece: number, place: Place) => string;
  /** What one sees once a piece lies: what it touches, in neutral words. */
  readonly laidWords: (mat: Mat, piece: number) => string;
  /** Hints about a cell, or about the whole where none was pressed. */
  readonly hints: (mat: Mat, cell: Place | null) => Told;
  /** Whether pressing a bare cell reads its question out large. */
  readonly hasQuestions: boolean;
}
