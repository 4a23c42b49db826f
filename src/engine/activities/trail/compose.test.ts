import { expect, it } from 'vitest';
import { refusalOf } from '../../../../test/support/must.js';
import { composeTrail } from './compose.js';

it('says that questions do not fit the cells, rather than that there are none', async () => {
  const usual = { years: [2], seed: 3, locale: 'en-AU' } as const;
  const wide = composeTrail({ ...usual, rows: 3, columns: 3, skills: ['meas.ruler'] });
  expect(await refusalOf(wide)).toBe('trail.room');
  const few = composeTrail({ ...usual, rows: 4, columns: 4, skills: ['place.next-ten'] });
  expect(await refusalOf(few)).toBe('supply.few');
});
