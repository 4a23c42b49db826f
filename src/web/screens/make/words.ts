// The Make room's words for activities and proofs.
import type { JigsawLevel, RowKind } from '#engine/activities/jigsaw/jigsaw.js';
import type { Pitch, SupplyOrder } from '#engine/activities/pitch.js';
import type { ThemeId } from '#engine/activities/trail/trail.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { ActivityId, Source } from './wish.js';
import type { Activity } from './worker/messages.js';

export const ACTIVITY_WORDS: Readonly<
  Record<ActivityId, { readonly name: string; readonly plural: string; readonly about: string }>
> = {
  chain: { name: 'Chain', plural: 'chains', about: 'Loose strips: each answer leads to the next question.' },
  trail: { name: 'Trail', plural: 'trails', about: 'A mat of questions; the answer tiles draw one path.' },
  jigsaw: {
    name: 'Jigsaw',
    plural: 'jigsaws',
    about: 'Interlocking pieces; all is right when every row is true.',
  },
};

export const SOURCE_WORDS: Readonly<Record<Source, string>> = {
  due: 'What is due',
  mix: 'A mix',
  chosen: 'Skills I choose',
  own: 'My questions',
};

export const PITCH_WORDS: Readonly<Record<Pitch, string>> = {
  lower: 'Easier',
  middle: 'As the class is',
  upper: 'Harder',
};

export const ORDER_WORDS: Readonly<Record<SupplyOrder, string>> = { graded: 'Easy to hard', mixed: 'Mixed' };

const THEME_WORDS: Readonly<Record<ThemeId | 'any', string>> = {
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

/** A scene's name as it is spelt in the school's country. */
export function themeWord(theme: ThemeId | 'any', locale: LocaleId): string {
  return theme === 'harbour' && locale === 'en-US' ? 'Harbor' : THEME_WORDS[theme];
}

export const LEVEL_WORDS: Readonly<Record<JigsawLevel, { readonly name: string; readonly about: string }>> = {
  easy: { name: 'Easy', about: 'Every step can be worked out; some cells are printed on the mat.' },
  middle: { name: 'Middle', about: 'Now and then a piece has to be tried.' },
  hard: { name: 'Hard', about: 'Several pieces have to be tried.' },
};

export const ROW_KIND_WORDS: Readonly<Record<RowKind, string>> = {
  mixed: 'A mix of sentences',
  sentences: 'Number sentences',
  missing: 'Missing numbers',
  equivalents: 'Same value, other form',
  families: 'Fact families',
  steps: 'Equal steps',
  repeats: 'Repeating patterns',
};

/** "A chain of 10 strips", "A trail of 4 rows and 4 columns". */
export function titleOf(activity: Activity): string {
  switch (activity.kind) {
    case 'chain':
      return `A chain of ${activity.cards.length} strips`;
    case 'trail':
      return `A trail of ${activity.rows} rows and ${activity.columns} columns`;
    case 'jigsaw':
      return `A jigsaw of ${activity.pieces.length} pieces`;
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
    case 'jigsaw': {
      const { outlineFits, wrongTries } = activity.proof;
      const tries =
        wrongTries === 0
          ? 'Nothing has to be guessed.'
          : `A careful child lays about ${wrongTries} ${wrongTries === 1 ? 'piece' : 'pieces'} wrongly on the way.`;
      return {
        promise: 'Only one way to lay the pieces makes every row true.',
        tried: `By their shapes alone they fit in ${outlineFits.toLocaleString('en-AU')} ways or more, so what stands on them decides. ${tries}`,
      };
    }
  }
}
