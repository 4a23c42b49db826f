// What can be printed from a day's boards, in a teacher's words, and which boards each document needs.
import type { DocumentName } from '#api/print.js';
import type { Sheet } from '#api/today.js';

export interface DocumentChoice {
  readonly id: DocumentName;
  readonly label: string;
  readonly about: string;
}

export const DOCUMENT_CHOICES: readonly [DocumentChoice, ...DocumentChoice[]] = [
  {
    id: 'kit',
    label: 'Everything',
    about: 'Poster, two-sided sheet, slips, key and relief page in one file.',
  },
  { id: 'poster', label: 'Wall poster', about: 'The board to pin up: one A3 page, or A4 pages to join.' },
  {
    id: 'sheet',
    label: 'Two-sided sheet',
    about: 'Easier front, harder back, room to write. Laminate it and it wipes clean.',
  },
  {
    id: 'slips',
    label: 'Slips',
    about: 'One small slip for each child to record answers on, each with a code that leads back to it.',
  },
  {
    id: 'key',
    label: 'Answer key',
    about: 'Answers, a way to think of each, and what wrong answers may tell. For adults.',
  },
  { id: 'relief', label: 'Relief page', about: 'One page with which a relief teacher can run the warm-up.' },
];

/** Whether boards are for the class or for each year. */
export type BoardsChoice = 'class' | 'years';

/** Ids of the boards that a document is printed from: for two-sided sheets and the kit, front before back. */
export function sheetIdsFor(
  document: DocumentName,
  boards: BoardsChoice,
  sheets: readonly Sheet[],
): string[] {
  const ofClass = sheets.filter(({ group }) => group === 'class');
  const ofYears = sheets.filter(({ group }) => group !== 'class');
  const front = ofClass.filter(({ board }) => board.side === 'front');
  const both = [...front, ...ofClass.filter(({ board }) => board.side === 'back')];
  const chosen = boards === 'years' && ofYears.length > 0 ? ofYears : front;
  return (document === 'sheet' || document === 'kit' ? both : chosen).map(({ id }) => id);
}
