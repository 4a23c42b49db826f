// The wish in the address. Whatever there is wrong with an address, the rest of it counts.
import { JIGSAW_LEVELS, ROW_KINDS } from '#engine/activities/jigsaw/jigsaw.js';
import { PITCHES, SUPPLY_ORDERS } from '#engine/activities/pitch.js';
import { z } from 'zod';
import { MOST_SKILLS } from '../../parts/find-skills.js';
import { ACTIVITIES, LARGEST_SEED, RANGES, SOURCES, THEME_CHOICES, type WishChange } from './wish.js';

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
  // Narrowed to what the activity allows when the wish is put together.
  rows: whole([1, 20]),
  columns: whole([1, 20]),
  theme: one(THEME_CHOICES),
  level: one(JIGSAW_LEVELS),
  rowKind: one(ROW_KINDS),
  count: whole(RANGES.count),
  seed: whole([1, LARGEST_SEED]),
});

/** What an address changes of the usual wish. */
export function readWishSearch(search: Record<string, unknown>): WishChange {
  return WishSearch.parse(search);
}
