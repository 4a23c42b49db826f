// A teacher's list as a source of questions for activities that need many: each row asked again about other numbers.
import { type DayNumber } from '../numbers/day-number.js';
import type { Locale } from '../numbers/locale.js';
import { formatWhole } from '../numbers/format.js';
import { rational } from '../numbers/rational.js';
import type { Question } from '../questions/question.js';
import type { Rng } from '../random/rng.js';
import { askOwn, type OwnQuestion } from './own-question.js';

/** What an activity may ask of a teacher's list. */
export interface OwnSource {
  readonly questions: readonly OwnQuestion[];
  /** The number that all are about; numbers that suit each row's year when left out. */
  readonly number?: DayNumber;
}

/** Questions that one row may give to one activity: more would be a page of one sum. */
const MOST_OF_A_ROW = 24;
/** Numbers tried in a row that its `when` refuses, or that were asked before. */
const MOST_MISSES = 12;
/** Largest whole number that a row is asked about, by its year. Common practice for sums in the head. */
const LARGEST_BY_YEAR = [10, 20, 100, 100, 100, 100, 100] as const;

/**
 * Questions of the list, one row after the other in turns, each about a number of its own, until every row is used up. A
 * row without formulas in its text gives one question. The same list and `rng` give the same questions.
 */
export function* drawOwn(source: OwnSource, rng: Rng, locale: Locale): Generator<Question, void> {
  const seen = new Set<string>();
  const rows = source.questions.map((own, at) => ({ own, rng: rng.fork(at), given: 0, misses: 0 }));
  let open = rng.fork('turns').shuffle(rows);
  while (open.length > 0) {
    for (const row of open) {
      const number =
        source.number ?? wholeNumber(row.rng.int(1, LARGEST_BY_YEAR[row.own.year] ?? 100), locale);
      const asked = askOwn(row.own, number, locale);
      if (!asked.ok || asked.value === null || seen.has(asked.value.text)) {
        row.misses++;
        continue;
      }
      seen.add(asked.value.text);
      row.misses = 0;
      row.given++;
      yield asked.value;
    }
    open = open.filter(({ own, given, misses }) => {
      const most = source.number || own.text.every((part) => typeof part === 'string') ? 1 : MOST_OF_A_ROW;
      return given < most && misses < MOST_MISSES;
    });
  }
}

function wholeNumber(n: number, locale: Locale): DayNumber {
  return { kind: 'whole', value: rational(n), text: formatWhole(n, locale) };
}
