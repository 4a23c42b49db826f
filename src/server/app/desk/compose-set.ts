// One composer for each kind of set, all called alike.
import type { Result } from '#api/problem.js';
import type { SetOrder } from '#api/sets.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { composeTrail } from '#engine/activities/trail/compose.js';
import { yearsOfBand } from '#engine/curriculum/bands.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { SetContent } from '#store/records.js';
import { refuse } from '../problems.js';

/** Four tiles a side, unless the teacher chooses. */
const USUAL_SIDE = 4;

interface SetSource {
  readonly seed: number;
  readonly locale: LocaleId;
  /** Ids of skills that come before others, most urgent first. */
  readonly due: readonly string[];
}

/** One composed activity for the order; the same order and source give the same one. */
export function composeSet(order: SetOrder, { seed, locale, due }: SetSource): Result<SetContent> {
  const { kind, skills, cards, rows = USUAL_SIDE, columns = USUAL_SIDE } = order;
  const base = { years: yearsOfBand(order.band), seed, locale, due, ...(skills ? { skills } : {}) };
  switch (kind) {
    case 'chain':
      return composeChain({ ...base, ...(cards === undefined ? {} : { cards }) });
    case 'trail':
      return composeTrail({ ...base, rows, columns });
    case 'jigsaw':
      return refuse(
        'sets.elsewhere',
        'Jigsaws are not made here yet.',
        'Make one with “afterbell make jigsaw” and keep it.',
      );
  }
}
