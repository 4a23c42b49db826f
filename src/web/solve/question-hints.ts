// Hints about a question, one at a time and only when asked for: first a question back, then a way to begin, never the answer.
import type { Question } from '#engine/questions/question.js';

/** What can be said about the question of a strip, first hint first. */
export function questionHints(question: Question): string[] {
  const hints = ['Read the question once more and say it in your own words. What do you have to find?'];
  if (question.figure)
    hints.push('Look closely at the picture. What does it show, and how much is one part of it?');
  const { text: answer } = question.answer;
  const told = question.strategy.flatMap((step, at) =>
    openStep(step, answer, at === question.strategy.length - 1),
  );
  told.forEach((step, at) => hints.push(`${at === 0 ? 'A way to begin' : 'Then'}: ${step}`));
  hints.push('Say your answer, then look for it on the loose pieces.');
  return hints;
}

/** The number in an answer such as "48", "$7.90", "360 min" or "1 3/4"; null in words and in times of day. */
function numberIn(answer: string): string | null {
  if (answer.includes(':')) return null;
  return /^[$£]?(\d[\d\s.,/]*\d|\d)/.exec(answer)?.[1] ?? null;
}

/**
 * A step of the way with "?" wherever it would give the answer away; none where that leaves nothing to think about. What
 * leads to a word ends by saying it, so the last step of such a way is left out.
 */
function openStep(step: string, answer: string, isLast: boolean): string[] {
  const number = numberIn(answer);
  if (number === null) return isLast || says(step, answer) ? [] : [step];
  const pattern = number.replace(/[.$]/g, '\\$&');
  return [step.replace(new RegExp(`(?<![\\d.,/])${pattern}(?!\\d|[.,]\\d| \\d)`, 'g'), '?')];
}

function says(step: string, answer: string): boolean {
  const plain = (text: string) =>
    ` ${text
      .toLowerCase()
      .replace(/[^\p{L}\p{N}:]+/gu, ' ')
      .trim()} `;
  return plain(step).includes(plain(answer.replace(/^(?:an?|the) /, '')));
}
