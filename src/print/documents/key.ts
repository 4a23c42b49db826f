// Answer key: answers at a glance, then the way to each and what typical wrong answers tell.
import type { Board, Rung } from '#engine/activities/board/board.js';
import { misconceptionOf } from '#engine/questions/misconceptions.js';
import { strategyFigure } from '#engine/figures/strategy.js';
import type { Slip } from '#engine/questions/question.js';
import { type TextPiece, textPieces } from '../text/rich-text.js';
import type { Composer } from './composer.js';
import {
  figureData,
  footLine,
  type PartData,
  paperData,
  questionData,
  sideInWords,
  yearsInWords,
} from './page-data.js';
import { targetInWords } from './target-words.js';

/** The key tells of the most typical wrong answers only, so that a board fits its page. */
const MOST_SLIPS = 3;

/** One key for every two boards, side by side at a glance. */
export function* keyParts({ request }: Composer): Generator<PartData> {
  const { boards, options } = request;
  for (let i = 0; i < boards.length; i += 2) {
    const pair = boards.slice(i, i + 2);
    yield {
      kind: 'key',
      pages: pair.length,
      paper: paperData(request.paper),
      foot: footLine(pair[0] as Board, options),
      heading: textPieces(`Answers: ${[...new Set(pair.map((board) => board.number))].join(' and ')}`),
      lead: 'Other ways of writing the same answer are right too. A typical wrong answer is a reason to ask \u201chow did you get there?\u201d, not a verdict.',
      large: options.largePrint ?? false,
      size: options.largePrint ? 13 : 10,
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
    picture: figureData(strategyFigure(question), board.locale),
    slips: wrongAnswers(question.slips),
  };
}

/** Typical wrong answers, those with one meaning together: "18, 24" and what they may tell. */
function wrongAnswers(slips: readonly Slip[]): readonly { text: readonly TextPiece[]; does: string }[] {
  const texts = new Map<string, string[]>();
  for (const slip of slips)
    texts.set(slip.misconception, [...(texts.get(slip.misconception) ?? []), slip.text]);
  return [...texts].slice(0, MOST_SLIPS).flatMap(([id, same]) => {
    const misconception = misconceptionOf(id);
    return misconception ? [{ text: textPieces(same.slice(0, 2).join(', ')), does: misconception.does }] : [];
  });
}
