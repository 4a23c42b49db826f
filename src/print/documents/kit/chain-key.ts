// The chain's key: the letters of every set at a glance, then every strip in order.
import type { Chain } from '#engine/activities/chain/chain.js';
import { textPieces } from '../../text/rich-text.js';
import { type PartData, paperData } from '../page-data.js';
import { type KitComposer, lowerFirst, setsInWords } from './activity-kit.js';
import { seedNote } from './notes.js';

/** One part for all sets; it runs on from page to page. */
export function* chainKeyParts({ sets, paper, options }: KitComposer<Chain>): Generator<PartData> {
  yield {
    kind: 'chain-key',
    pages: 1 + Math.ceil(sets.length / 4),
    paper: paperData(paper),
    large: options.largePrint ?? false,
    heading: `Chain: check letters of ${lowerFirst(setsInWords(sets))}`,
    lead: 'Read the letters along the finished chain. If a strip is left over, or no strip has the answer, something slipped on the way: ask \u201chow did you get there?\u201d',
    foot: setsInWords(sets),
    sets: sets.map((set) => ({
      set: String(set.number),
      note: [set.label, seedNote(set)].filter(Boolean).join(', '),
      letters: set.activity.cards.map(({ label }) => label),
      strips: set.activity.cards.map(({ label, answer, question }) => ({
        label,
        answer: answer ? textPieces(answer.text) : null,
        question: question ? textPieces(question.text) : null,
      })),
    })),
  };
}
