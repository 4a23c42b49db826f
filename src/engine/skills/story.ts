// People and things for one-sentence stories: invented first names and things that children count.
import type { Rng } from '../random/rng.js';

/** Invented first names from many places; nobody real is meant. */
const STORY_NAMES = [
  'Amina',
  'Ben',
  'Chidi',
  'Dara',
  'Elif',
  'Finn',
  'Grace',
  'Hana',
  'Isaac',
  'Jun',
  'Kiri',
  'Leo',
  'Mei',
  'Noor',
  'Otis',
  'Priya',
  'Quinn',
  'Rosa',
  'Sami',
  'Tala',
  'Uma',
  'Vikram',
  'Willa',
  'Yusuf',
  'Zoe',
] as const;

const HANDFULS = ['shells', 'marbles', 'grapes', 'buttons', 'crayons', 'acorns', 'beads'] as const;
const BOXFULS = ['stickers', 'cards', 'beads', 'blocks', 'seeds', 'stamps', 'paper stars'] as const;

/** One name. */
export function storyName(rng: Rng): string {
  return rng.pick(STORY_NAMES);
}

/** Two different names. */
export function twoNames(rng: Rng): readonly [string, string] {
  const first = rng.int(0, STORY_NAMES.length - 1);
  const second = (first + rng.int(1, STORY_NAMES.length - 1)) % STORY_NAMES.length;
  return [STORY_NAMES[first] ?? 'Amina', STORY_NAMES[second] ?? 'Ben'];
}

/** Things of which a child may well have `count`, in the plural: grapes for up to 20, stickers for more. */
export function countables(count: number, rng: Rng): string {
  return rng.pick(count <= 20 ? HANDFULS : BOXFULS);
}

/** "1 shell" or "3 shells". */
export function countOf(count: number, things: string, shown = String(count)): string {
  return count === 1 ? `${shown} ${things.replace(/s$/, '')}` : `${shown} ${things}`;
}
