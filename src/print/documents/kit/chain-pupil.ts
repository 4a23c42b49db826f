// A chain on one sheet to cut and paste into the exercise book, in black and white.
import type { Chain } from '#engine/activities/chain/chain.js';
import { type PartData, paperData } from '../page-data.js';
import type { KitComposer } from './activity-kit.js';
import { cardGrid, placeOf } from './card-grid.js';
import { stripData, USUAL_WIDTH_MM } from './chain-cards.js';
import { seedNote } from './notes.js';

const COLUMNS = 2;
/** Below the heading, the name line and the words to the child. */
const TOP_MM = 34;
/** Two stand side by side on a page 175 mm wide, as in common exercise books. */
const WIDEST_MM = { A4: 84, Letter: 84, A3: 138 } as const;
const TALLEST_MM = { A4: 50, Letter: 50, A3: 76 } as const;

/** One page a set and copy. */
export function* chainPupilParts(composer: KitComposer<Chain>): Generator<PartData> {
  const { sets, paper, options } = composer;
  for (const set of sets) {
    const strips = set.activity.printOrder;
    const grid = cardGrid(paper, COLUMNS, Math.ceil(strips.length / COLUMNS), {
      widthMm: WIDEST_MM[paper],
      heightMm: TALLEST_MM[paper],
      topMm: TOP_MM,
    });
    const part: PartData = {
      kind: 'chain-pupil',
      pages: 1,
      paper: paperData(paper),
      grid,
      heading: `Chain, set ${set.number}`,
      lead: `Cut out the strips. Glue Start into your book. Beside or below it glue the strip that has the answer, then the strip with the next answer, and so on. Are all ${strips.length} used, with Finish last? Then every answer is right.`,
      foot: [options.className, seedNote(set)].filter(Boolean).join('  \u00b7  '),
      grow: grid.cardWidth / USUAL_WIDTH_MM,
      cards: strips.map((at, n) => ({ ...placeOf(grid, n), ...stripData(set, at, options.locale) })),
    };
    for (let copy = 0; copy < (options.copies ?? 1); copy++) yield part;
  }
}
