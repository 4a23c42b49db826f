// afterbell make board
import { type Board, type BoardSide } from '#engine/activities/board/board.js';
import type { BoardRequest } from '#engine/activities/board/board-request.js';
import { composeBoard } from '#engine/activities/board/compose.js';
import { typicalClass } from '#engine/learning/class-model.js';
import { parseDayNumber } from '#engine/numbers/day-number.js';
import { Rng } from '#engine/random/rng.js';
import { valueOf } from '../failure.js';
import { readLocale, readWhole, readWord, readYears } from '../options.js';
import { readOwnFile } from '../own-list.js';
import { printJson, printText } from '../output.js';

interface Options {
  readonly number: string;
  readonly own?: string;
  readonly years: string;
  readonly side: string;
  readonly rungs: string;
  readonly count?: string;
  readonly seed: string;
  readonly locale: string;
  readonly json?: boolean;
}

const LARGEST_SEED = 2_147_483_647;

export function makeBoard(options: Options): void {
  const locale = readLocale(options.locale);
  const years = readYears('--years', options.years);
  const base: Omit<BoardRequest, 'seed'> = {
    number: valueOf(parseDayNumber(options.number, locale)),
    years,
    side: readWord<BoardSide>('--side', options.side, ['front', 'back']),
    rungs: readWhole('--rungs', options.rungs, 6, 16),
    locale: locale.id,
    classModel: typicalClass(years),
    ...(options.own === undefined ? {} : { own: readOwnFile(options.own).map(({ question }) => question) }),
  };
  const seed = readWhole('--seed', options.seed, 0, LARGEST_SEED);
  if (options.count === undefined) {
    const board = valueOf(composeBoard({ ...base, seed }));
    if (options.json) printJson(board);
    else printBoard(board);
    return;
  }
  const count = readWhole('--count', options.count, 1, 10_000);
  const rng = new Rng(seed).fork('boards');
  const items = Array.from({ length: count }, () =>
    valueOf(composeBoard({ ...base, seed: rng.int(0, LARGEST_SEED) })),
  );
  if (options.json) printJson({ items });
  else for (const board of items) printBoard(board);
}

function printBoard(board: Board): void {
  const lines = board.rungs.map(
    ({ rung, question, predicted, why }) =>
      `${String(rung).padStart(2)}  ${question.text}\n      ${question.answer.text}   ${Math.round(predicted * 100)} %   ${why}`,
  );
  printText([`${board.number}   (${board.side}, seed ${board.seed})`, ...lines, ''].join('\n'));
}
