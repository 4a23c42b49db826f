// Letters by which a key and a hint speak of the pieces. They follow the order of `pieces`, which is shuffled, and so tell
// nothing about where a piece belongs.

/** Letters that cannot be read as a digit or as another letter upside down. */
const LETTERS = 'ABCDEFGHJKLMNPQRTUVWXYZ';

/** The letter of a piece, counted from 0: A, B … Z, then A2, B2 … */
export function pieceName(piece: number): string {
  const round = Math.floor(piece / LETTERS.length);
  return `${LETTERS[piece % LETTERS.length]}${round === 0 ? '' : round + 1}`;
}
