// The Make room's words for activities and proofs.
import type { Pitch, SupplyOrder } from '#engine/activities/pitch.js';
import type { ThemeId } from '#engine/activities/trail/trail.js';
import type { ActivityId, Source } from './wish.js';
import type { Activity } from './worker/messages.js';

export const ACTIVITY_WORDS: Readonly<
  Record<ActivityId, { readonly name: string; readonly plural: string; readonly about: string }>
> = {
  chain: { name: 'Chain', plural: 'chains', about: 'Loose strips: each answer leads to the next question.' },
  trail: { name: 'Trail', plural: 'trails', about: 'A mat of questions; the answer tiles draw one path.' },
};

export const SOURCE_WORDS: Readonly<Record<Source, string>> = {
  due: 'What is due',
  mix: 'A mix',
  chosen: 'Skills I choose',
};

export const PITCH_WORDS: Readonly<Record<Pitch, string>> = {
  lower: 'Easier',
  middle: 'As the class is',
  upper: 'Harder',
};

export const ORDER_WORDS: Readonly<Record<SupplyOrder, string>> = { graded: 'Easy to hard', mixed: 'Mixed' };

export const THEME_WORDS: Readonly<Record<ThemeId | 'any', string>> = {
  any: 'A surprise',
  lantern: 'Lantern walk',
  harbour: 'Harbour',
  kite: 'Kites',
  picnic: 'Picnic',
  rocket: 'Rocket',
  hive: 'Beehive',
  railway: 'Railway',
  reef: 'Reef',
};

/** "A chain of 10 strips", "A trail of 4 rows and 4 columns". */
export function titleOf(activity: Activity): string {
  switch (activity.kind) {
    case 'chain':
      return `A chain of ${activity.cards.length} strips`;
    case 'trail':
      return `A trail of ${activity.rows} rows and ${activity.columns} columns`;
  }
}

/** What is proved about a set: the promise in one plain sentence, and what was tried for it. */
export function proofWords(activity: Activity): { readonly promise: string; readonly tried: string } {
  switch (activity.kind) {
    case 'chain': {
      const { level, slips, shownAtOnce } = activity.proof;
      const tried = `${slips} typical mistakes were tried, alone and in every combination.`;
      return level === 'at once'
        ? { promise: 'Any typical mistake stops the chain.', tried }
        : {
            promise: 'Any typical mistake shows: the chain stops, or strips are left over.',
            tried: `${tried} ${shownAtOnce} of them show at once, the others at the end.`,
          };
    }
    case 'trail':
      return {
        promise: 'Only the right tiles draw an unbroken path.',
        tried: `Of all ways to lay the tiles, exactly one fits; each of the ${activity.proof.swaps} swaps of two tiles breaks the picture.`,
      };
  }
}
