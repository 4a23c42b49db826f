// The trail: a mat of questions and loose answer tiles. With every tile on its question the pieces of path on the tiles
// join to one unbroken trail from the entry to the exit. Immutable once composed; everything printed or shown derives from it.
import type { LocaleId } from '../../numbers/locale.js';
import type { Answer, Question } from '../../questions/question.js';
import type { Pitch } from '../pitch.js';

/** The sides of a tile in the order of its edges. */
export const SIDES = ['north', 'east', 'south', 'west'] as const;
export type Side = (typeof SIDES)[number];

/**
 * What crosses an edge: nothing, the path near the beginning of the edge (left or top: "a") or near its end ("b"), or the
 * second, thinner line at the same places ("c", "d"). Two tiles match along an edge when their codes are equal.
 */
export const EDGE_CODES = ['0', 'a', 'b', 'c', 'd'] as const;
export type EdgeCode = (typeof EDGE_CODES)[number];

export const THEMES = ['lantern', 'harbour', 'kite', 'picnic', 'rocket', 'hive', 'railway', 'reef'] as const;
export type ThemeId = (typeof THEMES)[number];

/** The fewest and most rows, and columns. */
export const TRAIL_SIZE = { least: 3, most: 6 } as const;

export interface TrailCell {
  readonly question: Question;
}

export interface TrailTile {
  readonly answer: Answer;
  /** North, east, south, west. */
  readonly edges: readonly EdgeCode[];
  /** Edges that a drawn line joins inside the tile; on tiles of the trail the trail's own pair comes first. */
  readonly path: readonly (readonly [Side, Side])[];
  /** Edges whose line ends inside the tile, at a mark of its own. */
  readonly ends: readonly Side[];
}

/** The codes printed on the rim around the cells: blank but for the entry and the exit. */
export interface TrailFrame {
  readonly north: readonly EdgeCode[];
  readonly east: readonly EdgeCode[];
  readonly south: readonly EdgeCode[];
  readonly west: readonly EdgeCode[];
}

export interface TrailDoor {
  readonly cell: number;
  readonly side: Side;
}

export interface Trail {
  readonly kind: 'trail';
  readonly seed: number;
  readonly rows: number;
  readonly columns: number;
  readonly years: readonly number[];
  /** The part of the class that its questions are made for. */
  readonly pitch: Pitch;
  readonly locale: LocaleId;
  /** What the pictures show. */
  readonly theme: ThemeId;
  /** Row by row. */
  readonly cells: readonly TrailCell[];
  /** `tiles[i]` belongs on `cells[i]`. */
  readonly tiles: readonly TrailTile[];
  readonly frame: TrailFrame;
  readonly entry: TrailDoor;
  readonly exit: TrailDoor;
  readonly proof: TrailProof;
}

/** What was computed about the tiles, so that another program can check it again. */
export interface TrailProof {
  /** Arrangements of all tiles on all cells in which every edge matches its neighbour and the frame: always 1. */
  readonly arrangements: number;
  /** Swaps of two tiles that break at least two edges, of all swaps. */
  readonly swapsShown: number;
  readonly swaps: number;
  /** The fewest edges that a swap breaks. */
  readonly leastBreaks: number;
  /**
   * How much work it is to lay the tiles by picture alone: tiles laid by a search that fills the cells in reading order,
   * lays whatever matches the frame and the tiles above and to the left, takes back at a dead end, and goes on until it
   * has tried everything.
   */
  readonly pictureOnlyNodes: number;
}
