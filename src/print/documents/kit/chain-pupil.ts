// A chain on one sheet to cut and paste into the exercise book, in black and white.
import type { Chain } from '#engine/activities/chain/chain.js';
import { STRIP_COLUMNS, STRIP_WIDTH_MM, stripRoom } from '#engine/activities/chain/strip-room.js';
import { pictureFits } from '#engine/activities/picture-room.js';
import type { KitSet } from '../../kit-request.js';
import type { PaperId } from '../../request.js';
import { type PartData, paperData } from '../page-data.js';
import type { KitComposer } from './activity-kit.js';
import { type CardGrid, cardGrid, placeOf } from './card-grid.js';
import { stripData } from './chain-cards.js';
import { seedNote } from './notes.js';

/** Below the heading, the name line and the words to the child. */
const TOP_MM = 34;
/** Two stand side by side on a page 175 mm wide, as in common exercise books. */
const WIDEST_MM = { A4: 84, Letter: 84, A3: 138 } as const;
const TALLEST_MM = { A4: 50, Letter: 50, A3: 76 } as const;

/** Letters in a picture may be smaller here than on a strip for the hand, so that most sets stay on one page: 5.4 points. */
const SMALLER = 0.9;

/** One page a set and copy; two where a picture would be too small to read on one. */
export function* chainPupilParts(composer: KitComposer<Chain>): Generator<PartData> {
  const { options } = composer;
  for (const set of composer.sets) {
    const pages = pagesOf(composer, set);
    for (let copy = 0; copy < (options.copies ?? 1); copy++) yield* pages;
  }
}

function pagesOf({ paper, options }: KitComposer<Chain>, set: KitSet<Chain>): PartData[] {
  const strips = set.activity.printOrder;
  const onOne = gridOf(paper, strips.length);
  const room = stripRoom(onOne.cardWidth / SMALLER, onOne.cardHeight / SMALLER);
  const isRoomy = set.activity.cards.every(
    ({ question }) => question === null || pictureFits(question, room, options.locale),
  );
  const perPage = isRoomy ? strips.length : Math.ceil(strips.length / 2);
  const count = Math.ceil(strips.length / perPage);
  return Array.from({ length: count }, (_, page) => {
    const onPage = strips.slice(page * perPage, (page + 1) * perPage);
    const grid = gridOf(paper, perPage);
    return {
      kind: 'chain-pupil',
      pages: 1,
      paper: paperData(paper),
      grid,
      heading: `Chain, set ${set.number}${count > 1 ? `, page ${page + 1} of ${count}` : ''}`,
      lead: `Cut out the strips. Glue Start into your book. Beside or below it glue the strip that has the answer, then the strip with the next answer, and so on. Are all ${strips.length} used, with Finish last? Then every answer is right.`,
      foot: [options.className, seedNote(set)].filter(Boolean).join('  \u00b7  '),
      grow: grid.cardWidth / STRIP_WIDTH_MM,
      cards: onPage.map((at, n) => ({ ...placeOf(grid, n), ...stripData(set, at, options.locale) })),
    };
  });
}

function gridOf(paper: PaperId, strips: number): CardGrid {
  return cardGrid(paper, STRIP_COLUMNS, Math.ceil(strips / STRIP_COLUMNS), {
    widthMm: WIDEST_MM[paper],
    heightMm: TALLEST_MM[paper],
    topMm: TOP_MM,
  });
}
