// What is checked of every order before anything is composed: its document, its paper, how many copies.
import { PAPERS, refuse } from '../request.js';

type Refusal = ReturnType<typeof refuse>;

/** Most copies of one thing in one go. */
const MOST_COPIES = 200;

/** A refusal of a document that is not among those an order can name, else null. */
export function problemWithDocument(document: string, documents: readonly string[]): Refusal | null {
  if (documents.includes(document)) return null;
  return refuse(
    'print.document',
    `There is no document called “${document}”.`,
    `Choose one of: ${documents.join(', ')}.`,
  );
}

/** A refusal of a paper that this version does not know, else null. */
export function problemWithPaper(paper: string): Refusal | null {
  if ((PAPERS as readonly string[]).includes(paper)) return null;
  return refuse(
    'print.paper',
    `There is no paper called “${paper}”.`,
    `Choose one of: ${PAPERS.join(', ')}.`,
  );
}

/** A refusal of no copies, of too many or of half ones, else null. */
export function problemWithCopies(copies = 1): Refusal | null {
  if (Number.isInteger(copies) && copies >= 1 && copies <= MOST_COPIES) return null;
  return refuse(
    'print.copies',
    `${copies} copies cannot be printed in one go.`,
    `Ask for 1 to ${MOST_COPIES} copies.`,
  );
}
