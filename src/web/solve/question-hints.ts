// Hints about a question, one at a time and only when asked for: first a question back, then a way to begin, never the answer.
import type { Question } from '#engine/questions/question.js';

/** What can be said about the question of a strip, first hint first. */
export function questionHints(question: Question): string[] {
  const hints = ['Read the question once more and say it in your own words. What do you have to find?'];
  if (question.figure)
    hints.push('Look closely at the picture. What does it show, and how much is one part of it?');
  const steps = question.strategy.map((step) => withoutAnswer(step, question.answer.text));
  steps.forEach((step, at) => {
    if (step !== null) hints.push(`${at === 0 ? 'A way to begin' : 'Then'}: ${step}`);
  });
  hints.push('Say your answer, then look for it on the loose pieces.');
  return hints;
}

/** A step as it stands when it does not give the answer away; with "?" for a result that does; null when it only tells the answer. */
function withoutAnswer(step: string, answer: string): string | null {
  if (!mentions(step, answer)) return step;
  const [, work, result] = /^(.*)=\s*([^=]*)$/.exec(step) ?? [];
  if (work === undefined || result === undefined || mentions(work, answer)) return null;
  return `${work}= ?`;
}

function mentions(text: string, answer: string): boolean {
  const bare = (words: string) => ` ${words.toLowerCase().replace(/[^\p{L}\p{N}./$%]+/gu, ' ')} `;
  const number = /^[$£]?([\d\s.,/]*\d)/.exec(answer)?.[1] ?? answer;
  return bare(text).includes(bare(answer).trimEnd()) || bare(text).includes(bare(number));
}
