// The questions of a set as rows that a teacher reads: question, answer, skill.
import type { Answer, Question } from '#engine/questions/question.js';
import type { Activity } from './worker/messages.js';

export interface QuestionRow {
  /** Where the question stands in its set, from 0. */
  readonly place: number;
  /** "1" for the first strip, "B3" for a place on a mat. */
  readonly where: string;
  readonly question: Question;
  readonly answer: Answer;
}

/** Rows in the order in which the pieces lie when all is right; none for a jigsaw, whose rows are no questions. */
export function questionRows(activity: Activity): readonly QuestionRow[] {
  switch (activity.kind) {
    case 'chain':
      return activity.cards.flatMap(({ question }, place) =>
        question ? [{ place, where: String(place + 1), question, answer: question.answer }] : [],
      );
    case 'trail':
      return activity.cells.map(({ question }, place) => ({
        place,
        // As the mat names its places: rows lettered from the top, columns numbered from the left.
        where: `${'ABCDEF'[Math.floor(place / activity.columns)] ?? ''}${(place % activity.columns) + 1}`,
        question,
        answer: question.answer,
      }));
    case 'jigsaw':
      return [];
  }
}

/** Whether single questions can be swapped: not where pieces depend on one another. */
export function canSwap(activity: Activity): boolean {
  return activity.kind !== 'jigsaw';
}
