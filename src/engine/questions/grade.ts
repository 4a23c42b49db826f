// Marks a pile of typed answers at once and gathers what the wrong ones have in common.
import type { Locale } from '../numbers/locale.js';
import { type CheckableQuestion, type CheckedAnswer, checkAnswer } from './check-answer.js';
import { misconceptionOf } from './misconceptions.js';

/** One question with what was typed for it; an empty text is a blank. */
export interface GivenAnswer<Q extends CheckableQuestion = CheckableQuestion> {
  readonly question: Q;
  readonly given: string;
}

export interface GradedAnswer<Q extends CheckableQuestion = CheckableQuestion> extends CheckedAnswer {
  readonly question: Q;
  readonly given: string;
}

/** How often the answers met a misconception, out of the questions in which it could have shown. */
export interface MisconceptionEvidence {
  readonly misconception: string;
  /** In a teacher's words, to be read after "It looks as if the child "; null when this version does not know the id. */
  readonly does: string | null;
  readonly help: string | null;
  /** Wrong answers that match one of its slips. */
  readonly seen: number;
  /** Of those, the ones that match no other misconception's slip. */
  readonly seenAlone: number;
  /** Answered questions that have one of its slips. */
  readonly chances: number;
  /** Positions (from 0) of the answers counted in `seen`. */
  readonly where: readonly number[];
}

export interface Grading<Q extends CheckableQuestion = CheckableQuestion> {
  readonly items: readonly GradedAnswer<Q>[];
  readonly right: number;
  readonly wrong: number;
  readonly blank: number;
  /** Most often seen first; only misconceptions that were seen at all. */
  readonly misconceptions: readonly MisconceptionEvidence[];
}

/** Each answer's verdict in the order given, the counts, and the evidence for misconceptions. Never throws. */
export function gradeAnswers<Q extends CheckableQuestion>(
  answers: readonly GivenAnswer<Q>[],
  locale: Locale,
): Grading<Q> {
  const items = answers.map(({ question, given }) => ({
    question,
    given,
    ...checkAnswer(question, given, locale),
  }));
  const count = (verdict: string) => items.filter((item) => item.verdict === verdict).length;
  return {
    items,
    right: count('right'),
    wrong: count('wrong'),
    blank: count('blank'),
    misconceptions: evidenceOf(items),
  };
}

function evidenceOf(items: readonly GradedAnswer[]): MisconceptionEvidence[] {
  const matchedBy = items.map((item) => new Set(item.slips.map((slip) => slip.misconception)));
  const ids = new Set(matchedBy.flatMap((matched) => [...matched]));
  const evidence = [...ids].map((misconception) => {
    const where = matchedBy.flatMap((matched, index) => (matched.has(misconception) ? [index] : []));
    const known = misconceptionOf(misconception);
    return {
      misconception,
      does: known?.does ?? null,
      help: known?.help ?? null,
      seen: where.length,
      seenAlone: where.filter((index) => matchedBy[index]?.size === 1).length,
      chances: items.filter((item) => item.verdict !== 'blank' && couldShow(item.question, misconception))
        .length,
      where,
    };
  });
  return evidence.sort((a, b) => b.seen - a.seen || (a.misconception < b.misconception ? -1 : 1));
}

function couldShow(question: CheckableQuestion, misconception: string): boolean {
  return question.slips.some((slip) => slip.misconception === misconception);
}
