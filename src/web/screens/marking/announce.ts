// What was just marked, as a sentence for those who listen to the screen.
import type { Content, Step } from './history.js';

/** "Mara, question 4, right", or a count when one press changed many cells. */
export function sentenceFor(step: Step, nameOf: (childId: string) => string): string {
  const [first] = step;
  if (!first) return '';
  const name = nameOf(first.childId);
  if (step.length === 1) return `${name}, question ${first.rung}, ${stateInWords(first.after)}`;
  return `${name}, ${step.length} questions, ${stateInWords(first.after)}`;
}

/** A cell's content in words: "right", "wrong: 75", "blank" or "not marked". */
export function stateInWords({ state, typed }: Content): string {
  if (state === null) return 'not marked';
  return state === 'wrong' && typed !== '' ? `wrong: ${typed}` : state;
}
