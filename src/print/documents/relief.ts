// The relief teacher's page: how to run the warm-up, the questions with answers, what early finishers do, one caution.
import type { Board } from '#engine/activities/board/board.js';
import { localeOf } from '#engine/numbers/locale.js';
import type { PrintOptions } from '../request.js';
import { keepLastWords, textPieces } from '../text/rich-text.js';
import type { Composer } from './composer.js';
import {
  dateInWords,
  footLine,
  MINIMUM_RUNG,
  type PartData,
  paperData,
  rungsData,
  yearsInWords,
} from './page-data.js';

const USUAL_MINUTES = 10;

/** One page a board. */
export function* reliefParts({ request }: Composer): Generator<PartData> {
  const { options } = request;
  for (const board of request.boards)
    yield {
      kind: 'relief',
      pages: 1,
      paper: paperData(request.paper),
      foot: footLine(board, options),
      size: options.largePrint ? 14 : 12.5,
      heading: textPieces(`The ${localeOf(options.locale).spelling.maths} warm-up: ${board.number}`),
      lead: leadLine(board, options),
      stepsTitle: 'How it runs',
      steps: stepsFor(board, options.minutes ?? USUAL_MINUTES).map((step) => ({
        ...step,
        how: textPieces(step.how),
      })),
      earlyTitle: 'For a child who is done early',
      early: [
        `Write three questions of your own with the answer ${board.number}: an easy one, a middle one, a hard one.`,
        'Choose one question from the board and find a second way to do it.',
        'If the class has two-sided sheets: turn over.',
      ].map((line) => textPieces(line)),
      cautionTitle: 'Please keep it calm',
      caution:
        'Children never race each other here. Do not call out or write up anyone\u2019s time, score or place. A child who freezes does questions 1 to 5 and may stop there. If a child gets upset about maths, note it for the class teacher.'.replace(
          'maths',
          localeOf(options.locale).spelling.maths,
        ),
      questionsTitle: 'Questions and answers',
      lineNote: `Everyone works down to the line below ${MINIMUM_RUNG}. Nobody has to finish; number ${board.rungs.length} is meant for one or two children.`,
      minimum: MINIMUM_RUNG,
      rungs: rungsData(board),
    };
}

function leadLine(board: Board, options: PrintOptions): string {
  const about = [options.className, yearsInWords(board.years), dateInWords(options)]
    .filter(Boolean)
    .join(', ');
  return keepLastWords(
    `${about}. ${board.rungs.length} questions on one number, from very easy to hard. You need the board (on the wall or the screen) and the children\u2019s books or sheets; nothing else.`,
  );
}

interface Step {
  readonly time: string;
  readonly what: string;
  readonly how: string;
}

/** The minutes are split as three fifths work, then last call, then answers (common practice). */
function stepsFor(board: Board, minutes: number): readonly Step[] {
  const call = Math.max(2, Math.round(minutes * 0.6));
  const last = board.rungs.length;
  return [
    {
      time: 'before',
      what: 'Show the board.',
      how: 'Have it up before the children come in, so that they can start by themselves.',
    },
    {
      time: '0 min',
      what: 'They start.',
      how: `Date and the number ${board.number} at the top of the page, then answers 1 to ${last}, quietly, from the top.`,
    },
    {
      time: `0\u2013${call} min`,
      what: 'You walk round.',
      how: `Help with 1 to ${MINIMUM_RUNG} first. Read a question aloud to anyone who asks. Leave the last three to the children.`,
    },
    {
      time: `${call} min`,
      what: 'Last call.',
      how: 'When the first child is done, or now at the latest, say: \u201cLast call, half a minute.\u201d',
    },
    {
      time: `${call + 1}\u2013${minutes} min`,
      what: 'Answers.',
      how: 'Read them out. Children mark their own work. For two questions ask: \u201cWho did it another way?\u201d',
    },
    {
      time: 'after',
      what: 'Put away.',
      how: 'If there are slips, collect them unmarked for the class teacher.',
    },
  ];
}
