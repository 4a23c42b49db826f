// Practice sheet: loose questions with a box each; the answers follow on a page of their own.
import type { Question } from '#engine/questions/question.js';
import type { Composer } from './composer.js';
import { dateInWords, type PartData, paperData, type QuestionData, questionData } from './page-data.js';

/** A longer question, or one with a figure, takes the whole width. */
const SHORT_TEXT = 22;
/** About how many rows a page holds; for cutting long jobs only. */
const ROWS_A_PAGE = 12;

/**
 * One part: `copies` of the questions, then, unless it is not wanted, one page of answers. Loose short questions come first
 * and stand two to a row; a board's questions keep their order, one to a row.
 */
export function* practiceParts({ request }: Composer): Generator<PartData> {
  const { options, boards } = request;
  const isPaired = (question: Question) =>
    !options.largePrint && question.figure === null && question.text.length <= SHORT_TEXT;
  const loose = request.questions ?? [];
  const paired = loose.filter(isPaired);
  const single = request.questions
    ? loose.filter((question) => !isPaired(question))
    : boards.flatMap((board) => board.rungs.map((rung) => rung.question));
  const questions = [...paired, ...single].map((question, i) =>
    questionData(question, i + 1, options.locale),
  );
  const rows = rowsOf(questions, paired.length);
  const withKey = options.withKey ?? true;
  const copies = options.copies ?? 1;
  yield {
    kind: 'practice',
    pages: (withKey ? 1 : 0) + copies * Math.ceil(rows.length / ROWS_A_PAGE),
    paper: paperData(request.paper),
    foot: [
      options.className,
      dateInWords(options),
      ...boards.map((board) => `${board.number}, seed ${board.seed}`),
    ]
      .filter(Boolean)
      .join('  \u00b7  '),
    heading: 'Practice',
    about: options.about ?? '',
    answersTitle: 'Practice: answers',
    withKey,
    copies,
    size: options.largePrint ? 16 : 12,
    questions,
    rows,
    pairedRows: Math.ceil(paired.length / 2),
  };
}

/** The first `paired` questions two to a row, the others one. */
function rowsOf(questions: readonly QuestionData[], paired: number): QuestionData[][] {
  const rows: QuestionData[][] = [];
  for (const [at, question] of questions.entries()) {
    const last = rows.at(-1);
    if (at < paired && at % 2 === 1 && last) last.push(question);
    else rows.push([question]);
  }
  return rows;
}
