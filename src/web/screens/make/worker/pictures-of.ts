// The pieces of a set as drawings. Made in the maker's thread, so that the page need not load what draws them.
import { drawJigsawMat, drawJigsawPiece } from '#engine/activities/jigsaw/draw.js';
import { drawMat, drawSolved } from '#engine/activities/trail/draw/draw-mat.js';
import type { Activity, Picture } from './messages.js';

/** Side of a jigsaw's cell in its drawings, in mm; the page scales them. */
const CELL_MM = 15;

/** What a teacher should see of a set; empty where the page lays the pieces out itself. */
export function picturesOf(activity: Activity): readonly Picture[] {
  switch (activity.kind) {
    case 'chain':
      return [];
    case 'trail':
      return [
        { caption: 'The mat with its questions', drawings: [drawMat(activity)] },
        { caption: 'Every tile on its answer', drawings: [drawSolved(activity)] },
      ];
    case 'jigsaw':
      return [
        {
          caption: 'The loose pieces',
          drawings: activity.pieces.map((_, piece) => drawJigsawPiece(activity, piece, CELL_MM)),
        },
        { caption: 'The mat', drawings: [drawJigsawMat(activity, CELL_MM)] },
        {
          caption: 'Every piece in its place',
          drawings: [drawJigsawMat(activity, CELL_MM, { isSolved: true })],
        },
      ].map(({ caption, drawings }) => ({
        caption,
        drawings: drawings.map(({ svg, widthMm }) => ({ svg, widthMm })),
      }));
  }
}
