// What a caller asks the print room for when a self-checking activity is printed: numbered sets of loose pieces with their
// labels and keys. Plain data: it crosses a thread boundary as it is.
import type { Chain } from '#engine/activities/chain/chain.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import type { Trail } from '#engine/activities/trail/trail.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { PaperId } from './request.js';

/**
 * cards, tiles, pieces: the loose parts of a chain, a trail, a jigsaw, on card stock with backs.
 * labels: for the bags and the box, and name tags. key: for an adult. pupil: one sheet to cut and paste. kit: all of them.
 */
export const KIT_DOCUMENTS = ['cards', 'tiles', 'pieces', 'labels', 'key', 'pupil', 'kit'] as const;
export type KitDocument = (typeof KIT_DOCUMENTS)[number];

/** One set as it is bagged: a number, and what is in it. */
export interface KitSet<T> {
  /** 1 to 999; printed on every piece, so that a lost one finds its bag. */
  readonly number: number;
  /** The teacher's own words for it on backs and labels, up to 40 characters; years are printed anyway. */
  readonly label?: string;
  readonly activity: T;
}

/**
 * by sheet: each sheet holds one set, so laminated sheets are cut one by one and nothing has to be sorted.
 * by stack: each sheet holds one piece of every set, so a stack cut in one go falls into piles that are sets.
 */
export const CUTTINGS = ['by sheet', 'by stack'] as const;
export type Cutting = (typeof CUTTINGS)[number];

export interface KitOptions {
  readonly locale: LocaleId;
  /** Backs with set number and label, for two-sided printing; printed unless false. */
  readonly backs?: boolean;
  /** "by sheet" unless given. Chains only: other activities are always cut by the sheet. */
  readonly cutting?: Cutting;
  /** Outlines instead of solid areas. */
  readonly lowInk?: boolean;
  /** Larger pieces and letters; a set may take more sheets. */
  readonly largePrint?: boolean;
  /** Children's names for name tags; blank tags without them. */
  readonly names?: readonly string[];
  readonly className?: string;
  /** How many of each sheet to cut and paste; 1 to 200. */
  readonly copies?: number;
}

interface KitRequestOf<A extends string, T> {
  readonly activity: A;
  readonly document: KitDocument;
  /** In the order of printing; all of one activity, numbers all different, at most 100. */
  readonly sets: readonly KitSet<T>[];
  readonly paper: PaperId;
  readonly options: KitOptions;
}

export type KitRequest =
  | KitRequestOf<'chain', Chain>
  | KitRequestOf<'trail', Trail>
  | KitRequestOf<'jigsaw', Jigsaw>;
