// The strips of a chain on card stock: two columns, in shuffled order, with set number and label on the backs.
import type { Chain } from '#engine/activities/chain/chain.js';
import { MOST_STRIP_ROWS, STRIP_COLUMNS, STRIP_WIDTH_MM } from '#engine/activities/chain/strip-room.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { KitSet } from '../../kit-request.js';
import { textPieces } from '../../text/rich-text.js';
import { figureData, type PartData, paperData } from '../page-data.js';
import type { KitComposer } from './activity-kit.js';
import { type CardGrid, cardGrid, placeBehind, placeOf } from './card-grid.js';
import { audienceOf } from './audience.js';
import { CAUTION, printHint, seedNote } from './notes.js';

const USUAL_ROWS = 5;
const LARGE_ROWS = 4;
const LARGE_GROWTH = 1.3;
/** Taller strips would leave a question alone in much white. */
const TALLEST_MM = { A4: 54, Letter: 54, A3: 78 } as const;

interface LaidStrip {
  readonly set: KitSet<Chain>;
  /** Place in the chain's cards. */
  readonly at: number;
}

interface Sheet {
  readonly heading: string;
  /** Null where the sheet has no strip. */
  readonly strips: readonly (LaidStrip | null)[];
}

/** Sheets of strips, each followed by its back unless backs are left out. */
export function* chainCardParts(composer: KitComposer<Chain>): Generator<PartData> {
  const { options, paper } = composer;
  const sheets = options.cutting === 'by stack' ? stackedSheets(composer) : setSheets(composer);
  for (const sheet of sheets) {
    const rows = options.largePrint ? LARGE_ROWS : Math.ceil(sheet.strips.length / STRIP_COLUMNS);
    const grid = cardGrid(paper, STRIP_COLUMNS, rows, {
      widthMm: 1000,
      heightMm: options.largePrint ? 1000 : TALLEST_MM[paper],
    });
    const strips = sheet.strips.flatMap((strip, n) => (strip ? [{ ...strip, place: placeOf(grid, n) }] : []));
    const hasBacks = options.backs !== false;
    yield {
      kind: 'chain-cards',
      pages: hasBacks ? 2 : 1,
      paper: paperData(paper),
      grid,
      lowInk: options.lowInk ?? false,
      grow: (grid.cardWidth / STRIP_WIDTH_MM) * (options.largePrint ? LARGE_GROWTH : 1),
      notes: notesOf(sheet, grid, hasBacks),
      cards: strips.map(({ set, at, place }) => ({ ...place, ...stripData(set, at, options.locale) })),
      backs: hasBacks
        ? strips.map(({ set, place }) => ({
            ...placeBehind(grid, place),
            set: String(set.number),
            activity: 'Chain',
            lines: [audienceOf(set.activity), set.label ?? ''].filter(Boolean),
          }))
        : null,
    };
  }
}

/** Each set on sheets of its own. */
function setSheets({ sets, options }: KitComposer<Chain>): Sheet[] {
  return sets.flatMap((set) => {
    const strips = set.activity.printOrder.map((at) => ({ set, at }));
    const most = STRIP_COLUMNS * (options.largePrint ? LARGE_ROWS : MOST_STRIP_ROWS);
    const count = Math.ceil(strips.length / most);
    const perSheet = Math.ceil(strips.length / count);
    return Array.from({ length: count }, (_, k) => ({
      heading: `Chain, set ${set.number}: ${strips.length} strips${count > 1 ? `, sheet ${k + 1} of ${count}` : ''}`,
      strips: strips.slice(k * perSheet, (k + 1) * perSheet),
    }));
  });
}

/** Sets in groups of as many as a sheet has places, usually ten: the n-th place of every sheet of a group belongs to its n-th set. */
function stackedSheets({ sets, options: { largePrint } }: KitComposer<Chain>): Sheet[] {
  const perSheet = STRIP_COLUMNS * (largePrint ? LARGE_ROWS : USUAL_ROWS);
  const groups = Array.from({ length: Math.ceil(sets.length / perSheet) }, (_, k) =>
    sets.slice(k * perSheet, (k + 1) * perSheet),
  );
  return groups.flatMap((group) => {
    const count = Math.max(...group.map(({ activity }) => activity.cards.length));
    return Array.from({ length: count }, (_, k) => ({
      heading: `Chain, sets ${group[0]?.number} to ${group.at(-1)?.number}, sheet ${k + 1} of ${count}: cut the whole stack, each pile is a set`,
      strips: Array.from({ length: perSheet }, (__, n) => {
        const set = group[n];
        const at = set?.activity.printOrder[k];
        return set && at !== undefined ? { set, at } : null;
      }),
    }));
  });
}

function notesOf(sheet: Sheet, grid: CardGrid, hasBacks: boolean): object {
  const first = sheet.strips.find((strip) => strip !== null);
  return {
    heading: sheet.heading,
    print: `${printHint(hasBacks)} Strips of ${grid.cardWidth} mm by ${grid.cardHeight} mm.`,
    caution: CAUTION,
    seed: first ? seedNote(first.set) : '',
  };
}

/** A number and its word may stand one below the other in the answer's box. */
const NUMBER_AND_WORD = /(?<=\d)\u00a0(?=\p{L}{4})/u;

/** One strip as the templates set it. */
export function stripData(set: KitSet<Chain>, at: number, locale: LocaleId): object {
  const card = set.activity.cards[at];
  if (!card) throw new RangeError(`set ${set.number} has no strip ${at}`);
  return {
    set: String(set.number),
    label: card.label,
    answer: card.answer ? textPieces(card.answer.text.replace(NUMBER_AND_WORD, ' ')) : null,
    question: card.question ? textPieces(card.question.text) : null,
    figure: figureData(card.question?.figure ?? null, locale),
  };
}
