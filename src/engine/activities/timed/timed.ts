// Timed practice: forms of one level that are equal in difficulty and length, so that a child's counts can be compared.
import type { LocaleId } from '../../numbers/locale.js';
import type { Question } from '../../questions/question.js';
import type { Room } from './ladder.js';

export interface TimedForm {
  /** A, B … Z, AA …: printed on the sheet; the same name of the same level and seed is always the same form. */
  readonly form: string;
  readonly questions: readonly Question[];
  /** Mean of the questions' difficulties, in logits, rounded to 0.001. */
  readonly meanDifficulty: number;
  /** Digits of all answers together. */
  readonly digits: number;
}

export interface Timed {
  readonly kind: 'timed';
  readonly seed: number;
  readonly locale: LocaleId;
  /** Place on the ladder from 1; null for a level that a teacher made of skills. */
  readonly level: number | null;
  readonly levelId: string;
  readonly title: string;
  readonly room: Room;
  /** Usual time for the age; the teacher may change it. */
  readonly minutes: number;
  readonly forms: readonly TimedForm[];
  readonly proof: TimedProof;
}

export interface TimedProof {
  /** Different questions that the level can ask. */
  readonly space: number;
  /** Largest difference between two forms' mean difficulties, in logits; at most 0.05. */
  readonly difficultyGap: number;
  /** Largest difference between two forms' mean school years of the skills asked; at most 0.05. */
  readonly yearGap: number;
  /** Largest difference in answer digits, as a share of the smaller form's; at most 0.03. */
  readonly digitsGap: number;
  /** Most and fewest times that a question of the space is asked over all forms, first to last: they differ by at most 1. */
  readonly fewestAsked: number;
  readonly mostAsked: number;
}

export interface TimedError {
  readonly code:
    | 'timed.level'
    | 'timed.forms'
    | 'timed.questions'
    | 'timed.seed'
    | 'timed.few'
    | 'timed.uneven'
    | 'timed.skill';
  readonly message: string;
  readonly hint: string;
}

export type TimedResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: TimedError };
