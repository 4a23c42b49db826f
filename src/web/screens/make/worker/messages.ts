// What the page and its maker say to each other. The maker works in a thread of its own, so everything here is plain data.
import type { Chain } from '#engine/activities/chain/chain.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import type { Trail } from '#engine/activities/trail/trail.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { Wish, WishChange } from '../wish.js';

export type Activity = Chain | Trail | Jigsaw;

/** Drawings with what they show: one picture, or the loose pieces, each for itself. */
export interface Picture {
  readonly caption: string;
  readonly drawings: readonly { readonly svg: string; readonly widthMm: number }[];
}

/** One numbered set. */
export interface MadeSet {
  readonly activity: Activity;
  /** Its pieces as they look, where they are drawn; none where the page lays them out itself. */
  readonly pictures: readonly Picture[];
  /** How it can be worked out, step by step; none where each question stands for itself. */
  readonly steps: readonly string[];
}

/** A wish with all that the composers need. */
export interface MakeOrder {
  readonly wish: Wish;
  readonly locale: LocaleId;
  /** Skills due for this class, most urgent first. */
  readonly due: readonly string[];
  /** The teacher's own questions as lines; used when the wish is for them. */
  readonly own: string;
}

/** What cannot be done, and its mend: one sentence each. */
export interface Refusal {
  readonly message: string;
  readonly hint: string;
  /** What the hint proposes, ready to be taken. */
  readonly mends?: readonly Mend[];
}

export interface Mend {
  readonly label: string;
  readonly change: WishChange;
}

export type ToMaker =
  | { readonly id: number; readonly task: 'make'; readonly order: MakeOrder }
  | {
      readonly id: number;
      readonly task: 'swap';
      readonly order: MakeOrder;
      readonly set: MadeSet;
      /** Which set, and which of its questions, from 0. */
      readonly at: number;
      readonly place: number;
      /** How many times a question was swapped before: another turn brings another question. */
      readonly turn: number;
    };

/** `at` counts sets from 0. "ended" is the last word about an order, whatever came before. */
export type FromMaker =
  | { readonly id: number; readonly said: 'made'; readonly at: number; readonly set: MadeSet }
  | { readonly id: number; readonly said: 'refused'; readonly at: number; readonly refusal: Refusal }
  | { readonly id: number; readonly said: 'ended' };
