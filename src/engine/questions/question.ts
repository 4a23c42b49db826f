// The question as everything else sees it: immutable, exact, complete. The wire form is documented in docs/architecture.md.
import type { FigureSpec } from '../figures/figure.js';
import type { StrandId } from '../curriculum/strands.js';

export const ANSWER_KINDS = [
  'number',
  'fraction',
  'decimal',
  'money',
  'time',
  'word',
  'choice',
  'list',
] as const;
export type AnswerKind = (typeof ANSWER_KINDS)[number];

export interface Answer {
  readonly kind: AnswerKind;
  /** As printed in a key. */
  readonly text: string;
  /** Exact: an integer or n/d in lowest terms; money in main units; time in minutes; null for words, choices and lists. */
  readonly value: string | null;
}

/** A typical wrong answer and the misconception that produces it. Never equal to the right answer. */
export interface Slip {
  readonly misconception: string;
  readonly text: string;
  readonly value: string | null;
}

export interface Question {
  readonly id: string;
  readonly skill: string;
  /** Year in which the skill is introduced; 0 is Foundation. */
  readonly year: number;
  readonly strand: StrandId;
  /** One line of plain text, complete without its figure when read aloud. */
  readonly text: string;
  readonly figure: FigureSpec | null;
  readonly answer: Answer;
  /** Other written forms that are also right; the first is the answer's own text. */
  readonly accepts: readonly string[];
  /** mathjs syntax that evaluates to the answer's value; null only where no arithmetic gives it. */
  readonly expression: string | null;
  /** Logits; 0 is even odds for a typical pupil at the end of the question's year. */
  readonly difficulty: number;
  readonly slips: readonly Slip[];
  /** How a child might think it through, in the question's own numbers, in order. */
  readonly strategy: readonly string[];
  /** How the question uses the day's number ("doubles 47"); null when it does not. */
  readonly usesNumber: string | null;
}

/**
 * Difficulty on the scale common to all years, in logits: 0 is even odds for a typical pupil at the end of Foundation.
 * One school year is one logit on this scale (see docs/architecture.md on the growth assumption).
 */
export function commonDifficulty(question: Pick<Question, 'year' | 'difficulty'>): number {
  return question.year + question.difficulty;
}
