// The trail's part in its kit.
import type { Trail } from '#engine/activities/trail/trail.js';
import type { ActivityKit } from './activity-kit.js';
import { audienceOf, strandsInWords } from './audience.js';
import { trailKeyParts } from './trail-key.js';
import { trailPupilParts } from './trail-pupil.js';
import { trailTileParts } from './trail-tiles.js';

/** Mat and tiles, and what else a trail brings to its kit. */
export const trailKit: ActivityKit<Trail> = {
  name: 'Trail',
  loose: 'tiles',
  audience: audienceOf,
  contents: ({ tiles }) => `1 mat, ${tiles.length} tiles`,
  howTo: ({ tiles }) =>
    `Lay each answer on its question, arrowhead up. Are all ${tiles.length} tiles laid, and does one path run from the top picture to the bottom one? Then every answer is right.`,
  topics: ({ cells }) => strandsInWords(cells.map(({ question }) => question)),
  looseParts: trailTileParts,
  keyParts: trailKeyParts,
  pupilParts: trailPupilParts,
};
