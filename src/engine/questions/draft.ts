// What a template makes: the mathematics of one question, before it is checked and finished (see finish.ts).
import type { FigureSpec } from '../figures/figure.js';
import type { DayKind, DayNumber } from '../numbers/day-number.js';
import type { Locale } from '../numbers/locale.js';
import type { Rng } from '../random/rng.js';
import type { MisconceptionId } from './misconceptions.js';
import type { Features } from './difficulty.js';
import type { Answer } from './question.js';

/** A wrong answer proposed by a template; finishing drops it when it equals the right answer or another slip. */
export interface DraftSlip {
  readonly misconception: MisconceptionId;
  readonly answer: Answer;
}

export interface Draft {
  readonly text: string;
  readonly answer: Answer;
  readonly expression: string | null;
  /** What makes it easier or harder than the skill's plain case; see difficulty.ts. */
  readonly features: Features;
  readonly strategy: readonly string[];
  readonly slips: readonly DraftSlip[];
  /** Other right forms beyond those that parsing by value accepts anyway. */
  readonly accepts?: readonly string[];
  readonly figure?: FigureSpec;
  /** How it uses the day's number, as a verb phrase: "doubles 47". Required whenever `day` was given and used. */
  readonly usesNumber?: string;
}

export interface TemplateContext {
  readonly rng: Rng;
  readonly locale: Locale;
}

/**
 * One way to ask a skill. `ask` makes a free question; `askOn` one about the day's number, or null when that number
 * does not suit. Both are total: they never throw for any seed, locale or day's number.
 */
export interface Template {
  readonly id: string;
  readonly ask: (context: TemplateContext) => Draft;
  readonly dayKinds?: readonly DayKind[];
  readonly askOn?: (day: DayNumber, context: TemplateContext) => Draft | null;
}
