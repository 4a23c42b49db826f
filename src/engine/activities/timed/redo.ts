// What was wrong comes back first on a child's next sheet, in the same facts, until it was right once.
import type { Question } from '../../questions/question.js';

/** One marked sheet of a child, as far as redoing is concerned. */
export interface MarkedSheet {
  /** ISO date. */
  readonly date: string;
  /** Questions answered wrongly, circled by the marker. */
  readonly wrong: readonly Question[];
  /** Questions answered rightly, those of the redo row included. */
  readonly right: readonly Question[];
}

export interface OpenRedo {
  readonly question: Question;
  /** ISO date of the sheet on which it was first wrong since it was last right. */
  readonly since: string;
  /** Sheets on which it was wrong since then. */
  readonly times: number;
}

/** Most facts on a sheet's redo row; more would take the place of the practice itself. */
const MOST_REDO = 8;

/** The facts that a child still has to put right, oldest first. A fact is what its text says; sheets in any order. */
export function openRedo(sheets: readonly MarkedSheet[]): readonly OpenRedo[] {
  const open = new Map<string, OpenRedo>();
  for (const sheet of sheets.toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))) {
    for (const { text } of sheet.right) open.delete(text);
    for (const question of sheet.wrong) {
      const before = open.get(question.text);
      open.set(question.text, {
        question,
        since: before?.since ?? sheet.date,
        times: (before?.times ?? 0) + 1,
      });
    }
  }
  return [...open.values()];
}

/** The questions of the redo row on a child's next sheet: those open longest, at most eight. */
export function redoRow(open: readonly OpenRedo[]): readonly Question[] {
  return open.slice(0, MOST_REDO).map(({ question }) => question);
}
