// afterbell make board
import { type Board, type BoardSide } from '#engine/activities/board/board.js';
import type { BoardRequest } from '#engine/activities/board/board-request.js';
import { composeBoard } from '#engine/activities/board/compose.js';
import { typicalClass } from '#engine/learning/class-model.js';
import { parseDayNumber } from '#engine/numbers/day-number.js';
import { valueOf } from '../failure.js';
import { type MadeOptions, printMade } from '../made.js';
import { readLocale, readWhole, readWord, readYears } from '../options.js';
import { readOwnFile } from '../own-list.js';
import { printText } from '../output.js';

interface Options extends MadeOptions {
  readonly number: string;
  readonly own?: string;
  readonly years: string;
  readonly side: string;
  readonly rungs: string;
  readonly locale: string;
}

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
  printMade(options, {
    stream: 'boards',
    most: 10_000,
    compose: (seed) => composeBoard({ ...base, seed }),
    show: printBoard,
  });
}

function printBoard(board: Board): void {
  const lines = board.rungs.map(
    ({ rung, question, predicted, why }) =>
      `${String(rung).padStart(2)}  ${question.text}\n      ${question.answer.text}   ${Math.round(predicted * 100)} %   ${why}`,
  );
  printText([`${board.number}   (${board.side}, seed ${board.seed})`, ...lines, ''].join('\n'));
}
