// Labels for the bags and the box, and name tags: what keeps sets together in a classroom.
import type { KitSet } from '../../kit-request.js';
import { listInWords, type PartData, paperData } from '../page-data.js';
import { type ActivityKit, type KitComposer, lowerFirst, setsInWords } from './activity-kit.js';
import { type CardGrid, cardGrid, FIRST_ROW_MM, placeOf, rowsBelow } from './card-grid.js';
import { CAUTION, printHint } from './notes.js';

// All three kinds are equally wide side by side, so that one cut serves all.
const BAG_MM = { widthMm: 94.5, heightMm: 54 } as const;
const BAG_COLUMNS = 2;
const BAGS_A_PAGE = 10;
const BOX_MM = { widthMm: 189, heightMm: 72 } as const;
const TAG_MM = { widthMm: 63, heightMm: 26 } as const;
const TAG_COLUMNS = 3;
/** Sets to a box (common practice). */
const BOXFUL = 10;

interface Block {
  readonly grid: CardGrid;
  readonly face: 'bag' | 'box' | 'tag';
  readonly cards: readonly object[];
}

/** Fewer sets share one page with the name tags, and need no box. */
const FEWEST_FOR_A_BOX = 5;
/** Between blocks of different cards. */
const GAP_MM = 6;

/** One page a part. Ten or more sets: bag labels, then box labels with name tags below them; few sets: one page of all. */
export function* labelParts<T>(composer: KitComposer<T>, kit: ActivityKit<T>): Generator<PartData> {
  const { sets, paper, options, names } = composer;
  const bags = sets.map((set) => bagLabel(set, kit));
  const title = `${kit.name}, ${lowerFirst(setsInWords(sets))}`;
  const isFew = sets.length < FEWEST_FOR_A_BOX;
  const boxes = isFew ? [] : boxfuls(sets).map((some) => boxLabel(some, kit));
  if (!isFew) {
    for (let i = 0; i < bags.length; i += BAGS_A_PAGE) {
      const block = blockOf(composer, 'bag', bags.slice(i, i + BAGS_A_PAGE), FIRST_ROW_MM);
      yield page(composer, `${title}: bag labels`, [block]);
    }
  }
  const boxRows = rowsBelow(paper, FIRST_ROW_MM, BOX_MM.heightMm);
  while (boxes.length > boxRows) {
    const some = boxes.splice(0, boxRows);
    yield page(composer, `${title}: box labels`, [blockOf(composer, 'box', some, FIRST_ROW_MM)]);
  }
  const upper = isFew
    ? blockOf(composer, 'bag', bags, FIRST_ROW_MM)
    : blockOf(composer, 'box', boxes, FIRST_ROW_MM);
  const below = FIRST_ROW_MM + upper.grid.rows * upper.grid.cardHeight + GAP_MM;
  const room = TAG_COLUMNS * Math.max(0, rowsBelow(paper, below, TAG_MM.heightMm));
  const tags: readonly { readonly name: string | null }[] =
    options.names?.map((name) => ({ name: names.one(name) })) ??
    Array.from({ length: room }, () => ({ name: null }));
  const first = tags.slice(0, room);
  yield page(composer, `${title}: ${isFew ? 'bag labels' : 'box label'} and name tags`, [
    upper,
    ...(first.length > 0 ? [blockOf(composer, 'tag', first, below)] : []),
  ]);
  const most = TAG_COLUMNS * rowsBelow(paper, FIRST_ROW_MM, TAG_MM.heightMm);
  for (let i = first.length; i < tags.length; i += most) {
    yield page(composer, 'Name tags', [blockOf(composer, 'tag', tags.slice(i, i + most), FIRST_ROW_MM)]);
  }
}

function page<T>({ paper, options }: KitComposer<T>, heading: string, blocks: readonly Block[]): PartData {
  return {
    kind: 'set-labels',
    pages: 1,
    paper: paperData(paper),
    grid: blocks[0]?.grid,
    blocks,
    lowInk: options.lowInk ?? false,
    notes: { heading, seed: options.className ?? '', print: printHint(false), caution: CAUTION },
  };
}

const SIZES = {
  bag: { columns: BAG_COLUMNS, ...BAG_MM },
  box: { columns: 1, ...BOX_MM },
  tag: { columns: TAG_COLUMNS, ...TAG_MM },
} as const;

function blockOf<T>(
  { paper }: KitComposer<T>,
  face: Block['face'],
  cards: readonly object[],
  topMm: number,
): Block {
  const { columns, widthMm, heightMm } = SIZES[face];
  const grid = cardGrid(paper, columns, Math.ceil(cards.length / columns), { widthMm, heightMm, topMm });
  return { grid, face, cards: cards.map((card, n) => ({ ...placeOf(grid, n), ...card })) };
}

function bagLabel<T>(set: KitSet<T>, kit: ActivityKit<T>): object {
  return {
    activity: kit.name,
    set: String(set.number),
    audience: kit.audience(set.activity),
    label: set.label ?? '',
    contents: kit.contents(set.activity),
    topics: kit.topics(set.activity),
    howTo: kit.howTo(set.activity),
  };
}

function boxLabel<T>(sets: readonly KitSet<T>[], kit: ActivityKit<T>): object {
  const audiences = new Set(sets.map(({ activity }) => kit.audience(activity)));
  const labels = new Set(sets.map(({ label }) => label ?? ''));
  return {
    activity: kit.name,
    sets: setsInWords(sets),
    numbers: sets.map(({ number }) => String(number)),
    audience: listInWords([...audiences]),
    label: labels.size === 1 ? [...labels][0] : '',
  };
}

/** Sets that share a box: 1 to 10, 11 to 20, and so on. */
function boxfuls<T>(sets: readonly KitSet<T>[]): KitSet<T>[][] {
  const boxes = new Map<number, KitSet<T>[]>();
  for (const set of sets) {
    const box = Math.floor((set.number - 1) / BOXFUL);
    boxes.set(box, [...(boxes.get(box) ?? []), set]);
  }
  return [...boxes.values()];
}
