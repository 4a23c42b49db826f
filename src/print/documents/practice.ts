// Practice sheet: loose questions with a box each; the answers follow on a page of their own.
import type { Composer } from './composer.js';
import { dateInWords, type PartData, paperData, questionData } from './page-data.js';

/** One part: `copies` of the questions, then one page of answers. */
export function* practiceParts({ request }: Composer): Generator<PartData> {
  const { options, boards } = request;
  const questions = request.questions ?? boards.flatMap((board) => board.rungs.map((rung) => rung.question));
  yield {
    kind: 'practice',
    pages: 1 + (options.copies ?? 1) * Math.ceil(questions.length / 12),
    paper: paperData(request.paper),
    foot: [
      options.className,
      dateInWords(options),
      ...boards.map((board) => `${board.number}, seed ${board.seed}`),
    ]
      .filter(Boolean)
      .join('  \u00b7  '),
    heading: 'Practice',
    answersTitle: 'Practice: answers',
    copies: options.copies ?? 1,
    size: options.largePrint ? 16 : 12,
    questions: questions.map((question, i) => questionData(question, i + 1, options.locale)),
  };
}
