// The jigsaw's part in its kit.
import type { Jigsaw, RowKind } from '#engine/activities/jigsaw/jigsaw.js';
import { yearsInWords } from '../page-data.js';
import type { ActivityKit } from './activity-kit.js';
import { jigsawHowTo } from './jigsaw-how-to.js';
import { jigsawKeyParts } from './jigsaw-key.js';
import { jigsawPieceParts } from './jigsaw-pieces.js';
import { jigsawPupilParts } from './jigsaw-pupil.js';

const TOPICS: Readonly<Record<RowKind, string>> = {
  mixed: 'Number rows of many kinds',
  sentences: 'Number sentences',
  missing: 'Missing numbers',
  equivalents: 'Equal forms',
  families: 'Fact families',
  steps: 'Number patterns',
  repeats: 'Repeating patterns',
};

/** Pieces and mat, and what else a jigsaw brings to its kit. */
export const jigsawKit: ActivityKit<Jigsaw> = {
  name: 'Jigsaw',
  loose: 'pieces',
  audience: ({ years }) => yearsInWords(years),
  contents: ({ pieces }) => `${pieces.length} pieces and a mat`,
  howTo: jigsawHowTo,
  topics: ({ rowKind, proof }) => `${TOPICS[rowKind]}, ${proof.level}`,
  looseParts: jigsawPieceParts,
  keyParts: jigsawKeyParts,
  pupilParts: jigsawPupilParts,
};
