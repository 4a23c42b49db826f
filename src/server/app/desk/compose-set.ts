// One composer for each kind of set, all called alike.
import type { Result } from '#api/problem.js';
import type { SetOrder } from '#api/sets.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { composeJigsaw } from '#engine/activities/jigsaw/compose.js';
import { composeTrail } from '#engine/activities/trail/compose.js';
import { type Band, yearsOfBand } from '#engine/curriculum/bands.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { SetContent } from '#store/records.js';

/** Tiles to a side of a trail, unless the teacher chooses. */
const USUAL_SIDE = 4;

/** Rows and columns of a jigsaw, unless the teacher chooses. */
const JIGSAW_SIZES: Readonly<Record<Band, readonly [rows: number, columns: number]>> = {
  lower: [4, 5],
  middle: [5, 7],
  upper: [5, 7],
};

interface SetSource {
  readonly seed: number;
  readonly locale: LocaleId;
  /** Ids of skills that come before others, most urgent first. */
  readonly due: readonly string[];
}

/** One composed activity for the order; the same order and source give the same one. */
export function composeSet(order: SetOrder, { seed, locale, due }: SetSource): Result<SetContent> {
  const { kind, band, skills, cards, rows, columns, level } = order;
  const base = { years: yearsOfBand(band), seed, locale };
  const wish = { ...base, due, ...(skills ? { skills } : {}) };
  switch (kind) {
    case 'chain':
      return composeChain({ ...wish, ...(cards === undefined ? {} : { cards }) });
    case 'trail':
      return composeTrail({ ...wish, rows: rows ?? USUAL_SIDE, columns: columns ?? USUAL_SIDE });
    case 'jigsaw': {
      const [usualRows, usualColumns] = JIGSAW_SIZES[band];
      return composeJigsaw({
        ...base,
        rows: rows ?? usualRows,
        columns: columns ?? usualColumns,
        ...(order.rowKind ? { rowKind: order.rowKind } : {}),
        ...(level ? { level } : {}),
      });
    }
  }
}
