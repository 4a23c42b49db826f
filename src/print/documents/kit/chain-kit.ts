// The chain's part in its kit.
import type { Chain } from '#engine/activities/chain/chain.js';
import type { ActivityKit } from './activity-kit.js';
import { audienceOf, strandsInWords } from './audience.js';
import { chainCardParts } from './chain-cards.js';
import { chainKeyParts } from './chain-key.js';
import { chainPupilParts } from './chain-pupil.js';

/** Strips, and what else a chain brings to its kit. */
export const chainKit: ActivityKit<Chain> = {
  name: 'Chain',
  loose: 'cards',
  audience: audienceOf,
  contents: ({ cards }) => `${cards.length} strips`,
  howTo: ({ cards }) =>
    `Begin with Start. Find the strip that has the answer, and so on. All ${cards.length} strips used, and Finish last? Then every answer is right.`,
  topics: ({ cards }) => strandsInWords(cards.flatMap(({ question }) => question ?? [])),
  looseParts: chainCardParts,
  keyParts: chainKeyParts,
  pupilParts: chainPupilParts,
};
