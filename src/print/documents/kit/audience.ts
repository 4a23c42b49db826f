// For whom a set is and what it practises, in the words of backs and labels.
import type { Pitch } from '#engine/activities/supply.js';
import { strandTitle } from '#engine/curriculum/strands.js';
import type { Question } from '#engine/questions/question.js';
import { yearsInWords } from '../page-data.js';

/** "Years 3 and 4", or "Years 3 and 4, upper part" for a set pitched above the middle of the class. */
export function audienceOf({
  years,
  pitch = 'middle',
}: {
  readonly years: readonly number[];
  readonly pitch?: Pitch;
}): string {
  return pitch === 'middle' ? yearsInWords(years) : `${yearsInWords(years)}, ${pitch} part`;
}

const MOST_STRANDS = 4;

/** The strands of these questions, most asked first: "Multiplication, Time". */
export function strandsInWords(questions: readonly Question[]): string {
  const counts = new Map<Question['strand'], number>();
  for (const { strand } of questions) counts.set(strand, (counts.get(strand) ?? 0) + 1);
  return [...counts]
    .sort(([, a], [, b]) => b - a)
    .slice(0, MOST_STRANDS)
    .map(([strand]) => strandTitle(strand))
    .join(', ');
}
