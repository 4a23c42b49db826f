// The chain's part in its kit.
import type { Chain } from '#engine/activities/chain/chain.js';
import { yearsInWords } from '../page-data.js';
import type { ActivityKit } from './activity-kit.js';
import { chainCardParts } from './chain-cards.js';

/** Strips, and what else a chain brings to its kit. */
export const chainKit: ActivityKit<Chain> = {
  name: 'Chain',
  loose: 'cards',
  audience: ({ years, pitch }) => [yearsInWords(years), pitchInWords(pitch)].filter(Boolean).join(', '),
  looseParts: chainCardParts,
};

function pitchInWords(pitch: Chain['pitch']): string {
  return pitch === 'middle' ? '' : `${pitch} part`;
}
