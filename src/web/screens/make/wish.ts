// What a teacher wishes for in the Make room, as one plain value: it stands in the address, so that a page opened again
// shows the same sets.
import type { JigsawLevel, RowKind } from '#engine/activities/jigsaw/jigsaw.js';
import { LEAST_COLUMNS, LEAST_ROWS, MOST_COLUMNS, MOST_ROWS } from '#engine/activities/jigsaw/jigsaw.js';
import type { Pitch, SupplyOrder } from '#engine/activities/pitch.js';
import { THEMES, type ThemeId, TRAIL_SIZE } from '#engine/activities/trail/trail.js';

export const ACTIVITIES = ['chain', 'trail', 'jigsaw'] as const;
export type ActivityId = (typeof ACTIVITIES)[number];

/** What the questions are about: what the class is due to meet again, a mix for its years, chosen skills, or the teacher's own questions. */
export const SOURCES = ['due', 'mix', 'chosen', 'own'] as const;
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
  /** Trails and jigsaws. */
  readonly rows: number;
  readonly columns: number;
  /** Trails. */
  readonly theme: ThemeId | 'any';
  /** Jigsaws. */
  readonly level: JigsawLevel;
  readonly rowKind: RowKind;
  /** How many numbered sets. */
  readonly count: number;
  /** Names the sets: the same wish with the same seed makes the same sets. */
  readonly seed: number;
}

/** A wish as far as it differs from the usual one. */
export type WishChange = { readonly [K in keyof Wish]?: Wish[K] | undefined };

export type Range = readonly [least: number, most: number];

/** Least and most of everything that can be counted. */
export const RANGES = {
  cards: [6, 16],
  count: [1, 10],
} as const satisfies Partial<Record<keyof Wish, Range>>;

const TRAIL_SIDE: Range = [TRAIL_SIZE.least, TRAIL_SIZE.most];

/** The same for rows and columns, which differ between activities; a chain has neither. */
export const SIDE_RANGES: Readonly<Record<ActivityId, { readonly rows: Range; readonly columns: Range }>> = {
  chain: { rows: TRAIL_SIDE, columns: TRAIL_SIDE },
  trail: { rows: TRAIL_SIDE, columns: TRAIL_SIDE },
  jigsaw: { rows: [LEAST_ROWS, MOST_ROWS], columns: [LEAST_COLUMNS, MOST_COLUMNS] },
};

export const LARGEST_SEED = 999_999;

/** The whole wish of a class: what was changed, and the usual for everything else. */
export function wishOf(
  change: WishChange,
  usual: { readonly years: readonly number[]; readonly seed: number },
): Wish {
  const activity = change.activity ?? 'chain';
  const base: Wish = {
    activity: 'chain',
    source: 'due',
    skills: [],
    pitch: 'middle',
    cards: 10,
    order: 'graded',
    theme: 'any',
    level: 'easy',
    rowKind: 'mixed',
    count: 1,
    ...USUAL_SIZES[activity],
    ...usual,
  };
  const given = Object.entries(change).filter(([, value]) => value !== undefined);
  const wish: Wish = { ...base, ...Object.fromEntries(given) };
  const { rows, columns } = SIDE_RANGES[activity];
  return { ...wish, rows: within(wish.rows, rows), columns: within(wish.columns, columns) };
}

function within(value: number, [least, most]: Range): number {
  return Math.min(most, Math.max(least, value));
}

const USUAL_SIZES: Readonly<Record<ActivityId, Pick<Wish, 'rows' | 'columns'>>> = {
  chain: { rows: 4, columns: 4 },
  trail: { rows: 4, columns: 4 },
  jigsaw: { rows: 5, columns: 7 },
};
