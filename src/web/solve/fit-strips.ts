// How large strips and their letters can be: as large as lets every strip of the chain lie on the screen at once, loose or
// laid, so that nothing is scrolled while hands are busy.

export interface StripFit {
  readonly columns: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly letterPx: number;
}

/** Rows of strips that must find room at worst: laid ones with the next place, and loose ones, each begin a row. */
export function rowsNeeded(strips: number, columns: number): number {
  let most = 0;
  for (let laid = 0; laid <= strips; laid++) {
    const isDone = laid === strips;
    const rows =
      Math.ceil((laid + (isDone ? 0 : 1)) / columns) + Math.max(1, Math.ceil((strips - laid) / columns));
    most = Math.max(most, rows);
  }
  return most;
}

/**
 * The fit with the largest letters for `strips` strips on a ground of the given size, gaps taken off. `fits` says whether
 * every strip holds its text at a size; it holds at smaller letters when it holds at larger ones.
 */
export function fitStrips(
  strips: number,
  ground: { readonly widthPx: number; readonly heightPx: number },
  fits: (fit: StripFit) => boolean,
): StripFit {
  let best: StripFit = { columns: 1, widthPx: ground.widthPx, heightPx: 64, letterPx: LEAST_LETTER_PX };
  for (let columns = 1; columns <= MOST_COLUMNS; columns++) {
    const widthPx = Math.floor(ground.widthPx / columns);
    // Strips much taller than their letters look empty, and leave the chain no line to follow.
    const heightPx = Math.min(
      Math.floor(ground.heightPx / rowsNeeded(strips, columns)),
      Math.round(widthPx * 0.5),
    );
    if (heightPx < LEAST_HEIGHT_PX || widthPx < LEAST_WIDTH_PX) continue;
    let [low, high] = [LEAST_LETTER_PX - 1, Math.floor(heightPx * 0.42)];
    while (low < high) {
      const letterPx = Math.ceil((low + high) / 2);
      if (fits({ columns, widthPx, heightPx, letterPx })) low = letterPx;
      else high = letterPx - 1;
    }
    if (low > best.letterPx) best = { columns, widthPx, heightPx, letterPx: low };
  }
  return best;
}

const LEAST_LETTER_PX = 12;
const LEAST_HEIGHT_PX = 52;
const LEAST_WIDTH_PX = 220;
const MOST_COLUMNS = 5;
