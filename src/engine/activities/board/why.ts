// The sentence beside a rung: why this question stands here, in a teacher's words.
import { yearName } from '../../curriculum/years.js';
import type { LocaleId } from '../../numbers/locale.js';
import { isOwnId } from '../../own-questions/own-question.js';
import type { Candidate } from './candidates.js';
import { GREATEST_MISS } from './target-curve.js';

const REACH: readonly (readonly [atLeast: number, words: readonly string[]])[] = [
  [0.93, ['Nearly everyone can do this', 'A start for the whole class', 'Almost every child will get this']],
  [
    0.82,
    ['Most of the class can do this', 'A comfortable step for most children', 'Most children will get this'],
  ],
  [0.68, ['About three in four can do this', 'A fair step for three in four']],
  [0.57, ['More than half can do this', 'Within reach of more than half']],
  [0.43, ['About half the class can do this', 'A good test for about half']],
  [0.28, ['About a third can do this', 'A stretch for about a third']],
  [0.17, ['About one in five can do this', 'A climb for one in five']],
  [0.085, ['Only a few can do this yet', 'A challenge for a few']],
  [0, ['One or two children may reach this', 'A summit for one or two']],
];

/** One plain sentence for the teacher. `rung` only varies the wording. */
export function explainRung(
  candidate: Candidate,
  target: number,
  rung: number,
  dayNumber: string,
  locale: LocaleId,
): string {
  const { question, predicted, isDue } = candidate;
  const words = (REACH.find(([atLeast]) => predicted >= atLeast) ?? REACH[REACH.length - 1])?.[1] ?? [];
  const reach = words[rung % words.length] ?? '';
  const skill = `a ${yearName(question.year, locale)} skill`;
  const does = question.usesNumber ? `it ${question.usesNumber}` : '';
  const miss = predicted - target;
  let sentence: string;
  if (isOwnId(question.skill)) sentence = `One of your own questions: ${does}; ${lowerFirst(reach)}`;
  else if (isDue && does)
    sentence = `Brought back because it is due: ${does}, ${skill}; ${lowerFirst(reach)}`;
  else if (isDue)
    sentence = `Brought back because it is due, though it cannot use ${dayNumber}: ${skill}; ${lowerFirst(reach)}`;
  else if (does) sentence = `${reach}: ${does}, ${skill}`;
  else {
    const howFar = predicted >= 0.5 ? 'easy' : 'hard';
    sentence = `${reach}: nothing so ${howFar} can be asked about ${dayNumber}, so this is ${skill} with other numbers`;
  }
  if (Math.abs(miss) > GREATEST_MISS + 1e-9) sentence += `; ${missedWords(miss, isDue)}`;
  return `${sentence}.`;
}

/** What is said of a rung that stands off its target. */
function missedWords(miss: number, isDue: boolean): string {
  if (isDue) return `${miss < 0 ? 'harder' : 'easier'} than this rung is meant to be`;
  return `nothing ${miss < 0 ? 'easier' : 'harder'} fitted this rung`;
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
