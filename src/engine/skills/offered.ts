// Questions whose answer is a word or one of the choices that the text names.
import type { FigureSpec } from '../figures/figure.js';
import { choiceAnswer, wordAnswer } from '../questions/answer.js';
import type { Features } from '../questions/difficulty.js';
import type { Draft } from '../questions/draft.js';
import type { MisconceptionId } from '../questions/misconceptions.js';

/** What differs between one such question and the next. */
export interface Wording {
  readonly text: string;
  readonly right: string;
  readonly wrong: readonly (readonly [misconception: MisconceptionId, text: string])[];
  readonly features: Features;
  readonly strategy: readonly string[];
  readonly accepts?: readonly string[];
  readonly figure?: FigureSpec | undefined;
}

function draftOf(wording: Wording, answerOf: typeof wordAnswer): Draft {
  const { text, right, wrong, features, strategy, accepts, figure } = wording;
  return {
    text,
    answer: answerOf(right),
    expression: null,
    features,
    strategy,
    slips: wrong.map(([misconception, other]) => ({ misconception, answer: answerOf(other) })),
    ...(accepts ? { accepts } : {}),
    ...(figure ? { figure } : {}),
  };
}

/** A question that names its choices; there must be few of them, which its features say. */
export function offered(wording: Wording): Draft {
  return draftOf({ ...wording, features: { fewChoices: true, ...wording.features } }, choiceAnswer);
}

/** A question answered with a word, a name or a pair of coordinates. */
export function worded(wording: Wording): Draft {
  return draftOf(wording, wordAnswer);
}

/** "a", "b and c" or "a, b or c": things in a sentence, the last one after the given word. */
export function inSentence(items: readonly string[], last: 'or' | 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}
