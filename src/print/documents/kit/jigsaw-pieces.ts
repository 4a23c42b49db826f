// The pieces of a jigsaw on card stock, side by side as they belong, so that one cut serves two pieces; their backs; and the
// mat of the same size.
import { contentFor, drawJigsawMat, drawJigsawPiece } from '#engine/activities/jigsaw/draw.js';
import type { Jigsaw, JigsawPiece, Place } from '#engine/activities/jigsaw/jigsaw.js';
import type { KitSet } from '../../kit-request.js';
import type { PaperId } from '../../request.js';
import { yearsInWords, type PartData, paperData } from '../page-data.js';
import type { KitComposer } from './activity-kit.js';
import { type CardGrid, cardGrid, placeBehind } from './card-grid.js';
import { jigsawHowTo } from './jigsaw-how-to.js';
import { CAUTION, printHint, SAFE_MM, seedNote } from './notes.js';

/** Larger cells would make small jigsaws clumsy. */
const LARGEST_CELL_MM = { A4: 34, Letter: 34, A3: 48 } as const;

/** For every set the sheet of pieces and the mat, each followed by its back unless backs are left out. */
export function* jigsawPieceParts(composer: KitComposer<Jigsaw>): Generator<PartData> {
  const { sets, paper, options } = composer;
  const hasBacks = options.backs !== false;
  for (const set of sets) {
    const jigsaw = set.activity;
    const grid = cellGrid(jigsaw, paper);
    const cell = grid.cardWidth;
    const contentMm = contentFor(cell, SAFE_MM);
    const shared = {
      pages: hasBacks ? 2 : 1,
      paper: paperData(paper),
      grid,
      lowInk: options.lowInk ?? false,
    };
    const notes = { seed: seedNote(set), print: printHint(hasBacks), caution: CAUTION };
    const lines = [yearsInWords(jigsaw.years), set.label ?? ''].filter(Boolean);
    const back = { set: String(set.number), activity: 'Jigsaw', lines };
    yield {
      ...shared,
      kind: 'jigsaw-pieces',
      notes: {
        ...notes,
        heading: `Jigsaw, set ${set.number}: ${jigsaw.pieces.length} pieces`,
        print: `${notes.print} The whole is ${jigsaw.columns * cell} mm by ${jigsaw.rows * cell} mm.`,
      },
      pieces: jigsaw.pieces.map(({ cells }, at) => {
        const { svg, widthMm, heightMm, marginMm, alt } = drawJigsawPiece(jigsaw, at, cell, {
          contentMm,
          set: set.number,
        });
        const left = Math.min(...cells.map(([, column]) => column));
        const top = Math.min(...cells.map(([row]) => row));
        return {
          svg,
          width: widthMm,
          height: heightMm,
          alt,
          x: grid.left + left * cell - marginMm,
          y: grid.top + top * cell - marginMm,
        };
      }),
      backs: hasBacks
        ? jigsaw.pieces.map((piece) => {
            const [row, column] = middleCell(piece);
            return { ...placeBehind(grid, { row, column }), ...back };
          })
        : null,
    };
    yield {
      ...shared,
      kind: 'jigsaw-mat',
      notes: matNotes(set, notes),
      mat: matData(jigsaw, cell),
      howTo: jigsawHowTo(jigsaw),
      back,
    };
  }
}

/** The grid of cells in which the finished jigsaw lies on its sheet. */
function cellGrid({ rows, columns }: Jigsaw, paper: PaperId): CardGrid {
  const most = LARGEST_CELL_MM[paper];
  const { cardWidth, cardHeight } = cardGrid(paper, columns, rows, { widthMm: most, heightMm: most });
  const side = Math.min(cardWidth, cardHeight);
  return cardGrid(paper, columns, rows, { widthMm: side, heightMm: side });
}

function matNotes(set: KitSet<Jigsaw>, notes: object): object {
  return { ...notes, heading: `Jigsaw, set ${set.number}: mat` };
}

/** The drawn mat, with texts as large as on the pieces. */
export function matData(jigsaw: Jigsaw, cellMm: number): object {
  const { svg, widthMm, heightMm, marginMm, alt } = drawJigsawMat(jigsaw, cellMm, {
    contentMm: contentFor(cellMm, SAFE_MM),
  });
  return { svg, width: widthMm, height: heightMm, margin: marginMm, alt };
}

/** The cell of a piece nearest to its middle: there is room for a text, whatever the shape. */
function middleCell({ cells }: JigsawPiece): Place {
  const mean = (of: (place: Place) => number) =>
    cells.reduce((sum, place) => sum + of(place), 0) / cells.length;
  const [row, column] = [mean((place) => place[0]), mean((place) => place[1])];
  const distance = (place: Place) => (place[0] - row) ** 2 + (place[1] - column) ** 2;
  return cells.toSorted((a, b) => distance(a) - distance(b))[0] as Place;
}
