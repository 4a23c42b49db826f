// Answer key: answers at a glance, then the way to each and what typical wrong answers tell.
import type { Board, Rung } from '#engine/activities/board/board.js';
import { misconceptionOf } from '#engine/questions/misconceptions.js';
import { textPieces } from '../text/rich-text.js';
import type { Composer } from './composer.js';
import { footLine, type PartData, paperData, questionData, sideInWords, yearsInWords } from './page-data.js';
import { targetInWords } from './target-words.js';

/** One key for every two boards, side by side at a glance. */
export function* keyParts({ request }: Composer): Generator<PartData> {
  const { boards, options } = request;
  for (let i = 0; i < boards.length; i += 2) {
    const pair = boards.slice(i, i + 2);
    yield {
      kind: 'key',
      pages: 2 * pair.length,
      paper: paperData(request.paper),
      foot: footLine(pair[0] as Board, options),
      heading: textPieces(`Answers: ${[...new Set(pair.map((board) => board.number))].join(' and ')}`),
      lead: 'Other ways of writing the same answer are right too. A typical wrong answer is a reason to ask \u201chow did you get there?\u201d, not a verdict.',
      size: options.largePrint ? 13 : 9.5,
      boards: pair.map((board) => ({
        caption: captionOf(board),
        section: pair.length > 1 ? captionOf(board) : 'How to get there',
        rungs: board.rungs.map((rung) => keyRung(rung, board)),
      })),
    };
  }
}

function captionOf(board: Board): string {
  return `${yearsInWords(board.years)}, ${sideInWords(board)}`;
}

function keyRung(rung: Rung, board: Board): object {
  const { question } = rung;
  return {
    ...questionData(question, rung.rung, board.locale),
    note: `for ${targetInWords(rung.target)}`,
    strategy: question.strategy.map((step) => textPieces(step)),
    pictures: [],
    slips: question.slips.flatMap((slip) => {
      const misconception = misconceptionOf(slip.misconception);
      return misconception ? [{ text: textPieces(slip.text), does: misconception.does }] : [];
    }),
  };
}
