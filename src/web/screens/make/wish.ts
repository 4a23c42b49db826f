// What a teacher wishes for in the Make room, as one plain value: it stands in the address, so that a page opened again
// shows the same sets.
import type { Pitch, SupplyOrder } from '#engine/activities/pitch.js';
import { THEMES, type ThemeId } from '#engine/activities/trail/trail.js';

export const ACTIVITIES = ['chain', 'trail'] as const;
export type ActivityId = (typeof ACTIVITIES)[number];

/** What the questions are about: what the class is due to meet again, a mix for its years, or chosen skills. */
export const SOURCES = ['due', 'mix', 'chosen'] as const;
export type Source = (typeof SOURCES)[number];

export const THEME_CHOICES = ['any', ...THEMES] as const;

export interface Wish {
  readonly activity: ActivityId;
  readonly years: readonly number[];
  readonly source: Source;
  /** Ids of the chosen skills; used when the source is "chosen". */
  readonly skills: readonly string[];
  readonly pitch: Pitch;
  /** Chains. */
  readonly cards: number;
  readonly order: SupplyOrder;
  /** Trails. */
  readonly rows: number;
  readonly columns: number;
  readonly theme: ThemeId | 'any';
  /** How many numbered sets. */
  readonly count: number;
  /** Names the sets: the same wish with the same seed makes the same sets. */
  readonly seed: number;
}

/** A wish as far as it differs from the usual one. */
export type WishChange = { readonly [K in keyof Wish]?: Wish[K] | undefined };

/** Least and most of everything that can be counted. */
export const RANGES = {
  cards: [6, 16],
  rows: [3, 6],
  columns: [3, 6],
  count: [1, 10],
} as const satisfies Partial<Record<keyof Wish, readonly [number, number]>>;

export const MOST_SKILLS = 24;
export const LARGEST_SEED = 999_999;

/** The whole wish of a class: what was changed, and the usual for everything else. */
export function wishOf(
  change: WishChange,
  usual: { readonly years: readonly number[]; readonly seed: number },
): Wish {
  const size = USUAL_SIZES[change.activity ?? 'chain'];
  const base: Wish = {
    activity: 'chain',
    source: 'due',
    skills: [],
    pitch: 'middle',
    cards: 10,
    order: 'graded',
    theme: 'any',
    count: 1,
    ...size,
    ...usual,
  };
  const given = Object.entries(change).filter(([, value]) => value !== undefined);
  return { ...base, ...Object.fromEntries(given) };
}

const USUAL_SIZES: Readonly<Record<ActivityId, Pick<Wish, 'rows' | 'columns'>>> = {
  chain: { rows: 4, columns: 4 },
  trail: { rows: 4, columns: 4 },
};
