// Chances in the words of a staff room, with how sure they are.
import type { SkillStanding } from '#api/understanding.js';

type Standing = SkillStanding['state'];

/** Standings as the screen lists them, from "look here" to "well in hand". */
export const STANDINGS = [
  'needs teaching',
  'growing',
  'secure',
  'not yet sure',
] as const satisfies readonly Standing[];

export const STANDING_MEANS: Readonly<Record<Standing, string>> = {
  'needs teaching': 'would get fewer than half of the plain questions right',
  growing: 'would get about half or more right',
  secure: 'would get at least 8 in 10 right',
  'not yet sure': 'too little has been seen to say',
};

/** "about 7 in 10", "nearly all" or "hardly any". */
export function shareInTenths(chance: number): string {
  const tenths = Math.round(chance * 10);
  if (tenths >= 10) return 'nearly all';
  return tenths <= 0 ? 'hardly any' : `about ${tenths} in 10`;
}

/** "about 7 in 10 plain questions" */
export function chanceInWords(chance: number): string {
  return `${shareInTenths(chance)} plain questions`;
}

/** "most likely between 55 and 85 in 100" */
export function rangeInWords({ low, high }: Pick<SkillStanding, 'low' | 'high'>): string {
  const [from, to] = [Math.round(low * 100), Math.round(high * 100)];
  return from === to ? `most likely about ${from} in 100` : `most likely between ${from} and ${to} in 100`;
}

/** How far the range can be trusted, from its width: "fairly sure", "roughly" or "hardly known". */
export function surenessInWords({ low, high }: Pick<SkillStanding, 'low' | 'high'>): string {
  const width = high - low;
  if (width <= 0.2) return 'quite sure';
  if (width <= 0.35) return 'fairly sure';
  return width <= 0.5 ? 'a rough idea' : 'hardly more than a guess';
}

/** What an answer did to the chance: "up by 6 in 100", or that it changed nothing to speak of. */
export function movedInWords(moved: number): string {
  if (moved === 0) return 'hardly moved it';
  return moved > 0 ? `up by ${moved} in 100` : `down by ${-moved} in 100`;
}
