// Where everything on a recording slip lies, in millimetres from its top left corner. The template draws from these
// numbers and a reader of photographed slips can look in the same places.
import { paperSize } from '../paper.js';
import type { PaperId } from '../request.js';

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export interface SlipLayout {
  readonly perPage: 6 | 8;
  readonly columns: number;
  readonly rows: number;
  readonly slip: { readonly w: number; readonly h: number };
  /** Top left corners of the slips on the page, row by row. */
  readonly slips: readonly { readonly x: number; readonly y: number }[];
  /** Left over below the last row: holds the check rule, and is cut off. */
  readonly strip: Place;
  /** Four solid squares: top left, top right, bottom left, bottom right. */
  readonly marks: readonly Place[];
  /** QR code with its four-module quiet zone. */
  readonly qr: Place;
  /** Name and small print. */
  readonly head: Place;
  /** Answer boxes from 1, row by row. */
  readonly boxes: readonly Place[];
}

/** Nothing is printed closer than this to a cut or to the edge of the paper, where most printers cannot print. */
export const SAFE_MM = 5;
const STRIP_MM = 13;
const MARK_MM = 3;
const QR_MM = 15;
const NUMBER_MM = 4.6;
const GAP_MM = 1.8;

/** The layout for a paper, 6 or 8 slips a page and 1 to 16 answers. Two columns of slips; cuts run from edge to edge. */
export function slipLayout(paper: PaperId, perPage: 6 | 8, answers = 12): SlipLayout {
  const { widthMm, heightMm } = paperSize(paper);
  const columns = 2;
  const rows = perPage / columns;
  const w = widthMm / columns;
  const h = (heightMm - STRIP_MM) / rows;
  const headTop = SAFE_MM;
  const qr = { x: w - SAFE_MM - MARK_MM - 1 - QR_MM, y: headTop - 0.5, w: QR_MM, h: QR_MM };
  const inner = SAFE_MM + MARK_MM + 1;
  return {
    perPage,
    columns,
    rows,
    slip: { w, h },
    slips: Array.from({ length: perPage }, (_, i) => ({
      x: (i % columns) * w,
      y: Math.floor(i / columns) * h,
    })),
    strip: { x: 0, y: rows * h, w: widthMm, h: STRIP_MM },
    marks: [
      { x: SAFE_MM, y: SAFE_MM },
      { x: w - SAFE_MM - MARK_MM, y: SAFE_MM },
      { x: SAFE_MM, y: h - SAFE_MM - MARK_MM },
      { x: w - SAFE_MM - MARK_MM, y: h - SAFE_MM - MARK_MM },
    ].map((corner) => ({ ...corner, w: MARK_MM, h: MARK_MM })),
    qr,
    head: { x: inner, y: headTop, w: qr.x - inner - 2, h: QR_MM - 1 },
    boxes: answerBoxes(answers, {
      x: inner,
      y: headTop + QR_MM,
      w: w - 2 * inner,
      h: h - headTop - QR_MM - SAFE_MM,
    }),
  };
}

function answerBoxes(answers: number, area: Place): Place[] {
  const columns = answers > 12 ? 4 : 3;
  const rows = Math.max(4, Math.ceil(answers / columns));
  const columnWidth = (area.w + GAP_MM) / columns;
  const rowHeight = (area.h + GAP_MM) / rows;
  return Array.from({ length: answers }, (_, i) => ({
    x: area.x + (i % columns) * columnWidth + NUMBER_MM,
    y: area.y + Math.floor(i / columns) * rowHeight,
    w: columnWidth - NUMBER_MM - GAP_MM,
    h: rowHeight - GAP_MM,
  }));
}
