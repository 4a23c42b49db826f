import { describe, expect, it } from 'vitest';
import { composeJigsaw } from '#engine/activities/jigsaw/compose.js';
import { must } from '../../test/support/must.js';
import { Jigsaw } from './jigsaw.js';

const sample = await must(
  composeJigsaw({ years: [1, 2], rowKind: 'equivalents', rows: 4, columns: 5, seed: 2, locale: 'en-AU' }),
);

describe('Jigsaw on the wire', () => {
  it('comes back as it was made', () => {
    expect(Jigsaw.parse(JSON.parse(JSON.stringify(sample)))).toEqual(sample);
  });

  it('refuses pieces that leave a cell out or lie on one another', () => {
    const [first, ...rest] = sample.pieces;
    expect(Jigsaw.safeParse({ ...sample, pieces: rest }).success).toBe(false);
    expect(Jigsaw.safeParse({ ...sample, pieces: [...sample.pieces, first] }).success).toBe(false);
    expect(Jigsaw.safeParse({ ...sample, given: [[7, 9]] }).success).toBe(false);
  });
});
