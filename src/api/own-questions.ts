// A teacher's own questions: the list as she types it, and a table made into such a list.
import { z } from 'zod';

/** Longest list, in characters; 500 questions of usual length take less. */
const MOST_TEXT = 100_000;

export const OwnQuestions = z.object({
  /** One question a line, its parts between upright bars. */
  text: z.string().max(MOST_TEXT, 'the list is too long: keep it to 500 questions'),
  /** Whether up to three of them come to each board where they suit its number. */
  onBoards: z.boolean(),
});
export type OwnQuestions = z.infer<typeof OwnQuestions>;

/** The list with the mark of its version, which a change must name so that no other window's change is lost. */
export const OwnQuestionsView = OwnQuestions.extend({ version: z.string() });
export type OwnQuestionsView = z.infer<typeof OwnQuestionsView>;

export const OwnTable = z.object({ name: z.string().max(200), text: z.string().max(MOST_TEXT) });
export type OwnTable = z.infer<typeof OwnTable>;

/** The lines that a table gives; rows with a fault are among them, so that they can be mended. */
export const OwnTableRead = z.object({
  lines: z.array(z.string()),
  /** What is wrong with the table as a whole, in sentences; then there are no lines. */
  problems: z.array(z.string()),
});
export type OwnTableRead = z.infer<typeof OwnTableRead>;
