// How large letters must be to be read across a classroom.
// Rule: capital letters and digits subtend at least 16 minutes of arc at the eye, better 20 to 22 (ISO 9241-3, as quoted
// in a computer maker's ergonomics pages; the US nuclear regulator's NUREG-0700 states the same and gives the formula).

/** Capital height of Andika as a share of its font size (the face's own OS/2 table: 1485 of 2048 units). */
export const CAPITAL_SHARE = 0.725;
export const LEAST_MINUTES = 16;
export const GOOD_MINUTES = 21;
/** Width of a 16:9 screen as a share of its diagonal. */
const WIDTH_OF_DIAGONAL = 16 / Math.hypot(16, 9);

export interface Room {
  /** Screen diagonal in inches, as sold. */
  readonly diagonalInches: number;
  /** From the screen to the child farthest away. */
  readonly distanceM: number;
}

export const USUAL_ROOM: Room = { diagonalInches: 65, distanceM: 8 };

/** Font size in CSS pixels whose capitals subtend `minutes` of arc, on a screen `widthPx` CSS pixels wide. */
export function fontSizePx(minutes: number, room: Room, widthPx: number): number {
  const capitalMm = 2 * room.distanceM * 1000 * Math.tan((minutes / 60 / 2) * (Math.PI / 180));
  const pixelMm = (room.diagonalInches * 25.4 * WIDTH_OF_DIAGONAL) / widthPx;
  return capitalMm / pixelMm / CAPITAL_SHARE;
}
