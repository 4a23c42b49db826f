// The wish in the address. Whatever there is wrong with an address, the rest of it counts.
import { PITCHES, SUPPLY_ORDERS } from '#engine/activities/pitch.js';
import { z } from 'zod';
import {
  ACTIVITIES,
  LARGEST_SEED,
  MOST_SKILLS,
  RANGES,
  SOURCES,
  THEME_CHOICES,
  type WishChange,
} from './wish.js';

const whole = ([least, most]: readonly [number, number]) =>
  z.int().min(least).max(most).optional().catch(undefined);
const one = <const T extends readonly [string, ...string[]]>(words: T) =>
  z.enum(words).optional().catch(undefined);

const WishSearch = z.object({
  activity: one(ACTIVITIES),
  years: z.array(z.int().min(0).max(6)).min(1).max(7).optional().catch(undefined),
  source: one(SOURCES),
  skills: z.array(z.string().max(80)).max(MOST_SKILLS).optional().catch(undefined),
  pitch: one(PITCHES),
  cards: whole(RANGES.cards),
  order: one(SUPPLY_ORDERS),
  rows: whole(RANGES.rows),
  columns: whole(RANGES.columns),
  theme: one(THEME_CHOICES),
  count: whole(RANGES.count),
  seed: whole([1, LARGEST_SEED]),
});

/** What an address changes of the usual wish. */
export function readWishSearch(search: Record<string, unknown>): WishChange {
  return WishSearch.parse(search);
}
