// A jigsaw on one sheet to cut and paste: the mat, and below it the pieces in rows, as large as the sheet allows.
import { commonSizeMm } from '#engine/activities/jigsaw/cell-marks.js';
import { contentFor, drawJigsawPiece } from '#engine/activities/jigsaw/draw.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import type { KitSet } from '../../kit-request.js';
import { paperSize } from '../../paper.js';
import type { PaperId } from '../../request.js';
import { type PartData, paperData } from '../page-data.js';
import type { KitComposer } from './activity-kit.js';
import { layAround, layInRows, type PupilLayout, type SheetRoom } from './jigsaw-layout.js';
import { jigsawHowTo } from './jigsaw-how-to.js';
import { matData } from './jigsaw-pieces.js';
import { SAFE_MM, seedNote } from './notes.js';

const TOP_MM = 36;
const BOTTOM_MM = 12;
const SIDE_MM = 10;
/** The finished jigsaw fits a page 175 mm wide, as in common exercise books. */
const WIDEST_MAT_MM = { A4: 168, Letter: 168, A3: 260 } as const;
const STEP_MM = 0.5;
const SMALLEST_CELL_MM = 8;

/** Below this cell the letters of the pieces, which only the key needs, would be specks. */
const LEAST_NAMED_CELL_MM = 18;
/** Nine points, the least that children read with ease (common practice). */
const COMFORTABLE_MM = (9 * 25.4) / 72;

/** One page a set and copy. */
export function* jigsawPupilParts({ sets, paper, options }: KitComposer<Jigsaw>): Generator<PartData> {
  for (const set of sets) {
    const jigsaw = set.activity;
    const { cell, mat, pieces } = arrange(jigsaw, paper);
    const contentMm = contentFor(cell, SAFE_MM);
    const part: PartData = {
      kind: 'jigsaw-pupil',
      pages: 1,
      paper: paperData(paper),
      grid: { left: SIDE_MM },
      heading: `Jigsaw, set ${set.number}`,
      lead: `Cut out the mat and glue it into your book. Cut out the pieces. ${jigsawHowTo(jigsaw)} Now glue them down.`,
      foot: [options.className, seedNote(set)].filter(Boolean).join('  \u00b7  '),
      mat: { ...matData(jigsaw, cell), x: mat.x, y: mat.y },
      remark: remarkOn(set, contentMm),
      pieces: pieces.map(({ piece, x, y }) => {
        const drawn = drawJigsawPiece(jigsaw, piece, cell, {
          contentMm,
          isNamed: cell >= LEAST_NAMED_CELL_MM,
        });
        return {
          svg: drawn.svg,
          width: drawn.widthMm,
          height: drawn.heightMm,
          alt: drawn.alt,
          x: x - drawn.marginMm,
          y: y - drawn.marginMm,
        };
      }),
    };
    for (let copy = 0; copy < (options.copies ?? 1); copy++) yield part;
  }
}

function remarkOn({ number, activity }: KitSet<Jigsaw>, contentMm: number): string | null {
  if (commonSizeMm(activity.cells, contentMm) >= COMFORTABLE_MM) return null;
  return `Set ${number}: the numbers on the sheet to cut and paste are small. Print that sheet on A3.`;
}

/** The arrangement with the largest cells: mat above and pieces in rows, or, where that gains much, pieces all around it. */
function arrange(jigsaw: Jigsaw, paper: PaperId): PupilLayout {
  const room = roomOn(paper);
  const rows = largest(jigsaw, paper, (cell) => layInRows(jigsaw, cell, room));
  const filled = largest(jigsaw, paper, (cell) => layAround(jigsaw, cell, room));
  return filled.cell > WORTH_MOVING * rows.cell ? filled : rows;
}

/** Rows are easier to cut, so other arrangements must gain more than this. */
const WORTH_MOVING = 1.06;

function roomOn(paper: PaperId): SheetRoom {
  const { widthMm, heightMm } = paperSize(paper);
  return { left: SIDE_MM, top: TOP_MM, right: widthMm - SIDE_MM, bottom: heightMm - BOTTOM_MM };
}

function largest(jigsaw: Jigsaw, paper: PaperId, lay: (cell: number) => PupilLayout): PupilLayout {
  let least = SMALLEST_CELL_MM / STEP_MM;
  let most = Math.floor(WIDEST_MAT_MM[paper] / jigsaw.columns / STEP_MM);
  let best = lay(least * STEP_MM);
  while (least < most) {
    const middle = Math.ceil((least + most) / 2);
    const layout = lay(middle * STEP_MM);
    if (layout.fits) {
      best = layout;
      least = middle;
    } else most = middle - 1;
  }
  return best;
}
