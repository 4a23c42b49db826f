// Paper sizes in millimetres, portrait.
import type { PaperId } from './request.js';

export interface PaperSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Width and height in portrait: ISO 216 for A3 and A4, ANSI/ASME Y14.1 (8.5 x 11 inches) for Letter. */
export function paperSize(paper: PaperId): PaperSize {
  if (paper === 'A4') return { widthMm: 210, heightMm: 297 };
  if (paper === 'A3') return { widthMm: 297, heightMm: 420 };
  return { widthMm: 215.9, heightMm: 279.4 };
}
