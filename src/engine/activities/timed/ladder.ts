// The ladder of levels: one idea each, simple ones first. A teacher may use it as it is, reorder it, or put levels of her own in.
// About fifteen levels to mixed tables are common practice; this one starts earlier and goes on to decimals and numbers below zero.
import type { OwnQuestion } from '../../own-questions/own-question.js';
import type { Fact } from './fact.js';
import {
  decimalShifts,
  doublesAndNear,
  missingFactors,
  onesBackThroughTen,
  onesPastTen,
  pairsTo,
  pastZero,
  products,
  quotients,
  sums,
  takes,
  tensAndHundreds,
  tenths,
  twoDigitSums,
  twoDigitTakes,
  wholeTens,
} from './fact-sets.js';

/** How much room a question needs on paper: `line` for an answer only, `roomy` where a child may jot a carried ten. */
export const ROOMS = ['line', 'roomy'] as const;
export type Room = (typeof ROOMS)[number];

/** A level of timed practice as the ladder or a teacher describes it. */
export interface LevelPlan {
  /** Stable for ever; children's records refer to it. */
  readonly id: string;
  /** Short and plain, as a teacher says it: "Adding to 10". */
  readonly title: string;
  /** School year in which it is usually met, 0 (Foundation) to 6. */
  readonly year: number;
  readonly room: Room;
  /** Where its questions come from: a listed space of facts, skills of the map, or a teacher's own list. */
  readonly source:
    | { readonly kind: 'facts'; readonly facts: () => readonly Fact[] }
    | { readonly kind: 'skills'; readonly skills: readonly string[] }
    | { readonly kind: 'own'; readonly questions: readonly OwnQuestion[] };
}

function level(
  id: string,
  title: string,
  year: number,
  facts: () => readonly Fact[],
  room: Room = 'line',
): LevelPlan {
  return { id, title, year, room, source: { kind: 'facts', facts } };
}

const TABLES_TO_TEN = [2, 3, 4, 5, 6, 7, 8, 9, 10];
const TABLES_TO_TWELVE = [...TABLES_TO_TEN, 11, 12];

/** The ladder that comes with the product, level 1 first. */
export const LADDER: readonly LevelPlan[] = [
  level('add-5', 'Adding to 5', 0, () => sums(0, 5)),
  level('add-10', 'Adding to 10', 1, () => sums(5, 10)),
  level('take-10', 'Taking away within 10', 1, () => takes(3, 10)),
  level('pairs-10', 'Pairs that make 10', 1, () => [...pairsTo(10), ...sums(10, 10)]),
  level('doubles', 'Doubles and their neighbours', 1, doublesAndNear),
  level('add-20', 'Adding past 10', 2, () => sums(11, 20)),
  level('take-20', 'Taking away back through 10', 2, () => takes(11, 20)),
  level('mixed-20', 'Adding and taking away to 20', 2, () => [...sums(8, 20), ...takes(8, 20)]),
  level('tens', 'Adding and taking away tens', 2, wholeTens),
  level('table-2-10', 'Twos and tens', 2, () => products([2, 10], 10)),
  level('table-5', 'Fives', 2, () => products([5], 10)),
  level('add-ones', 'Adding ones past a ten', 3, onesPastTen, 'roomy'),
  level('take-ones', 'Taking ones back through a ten', 3, onesBackThroughTen, 'roomy'),
  level('share-2-5-10', 'Dividing by 2, 5 and 10', 3, () => quotients([2, 5, 10], 10)),
  level('table-3', 'Threes', 3, () => products([3], 10)),
  level('table-4', 'Fours', 3, () => products([4], 10)),
  level('share-3-4', 'Dividing by 3 and 4', 3, () => quotients([3, 4], 10)),
  level('table-6', 'Sixes', 4, () => products([6], 10)),
  level('table-9', 'Nines', 4, () => products([9], 10)),
  level('table-7-8', 'Sevens and eights', 4, () => products([7, 8], 10)),
  level('share-6-9', 'Dividing by 6, 7, 8 and 9', 4, () => quotients([6, 7, 8, 9], 10)),
  level('tables-10', 'Mixed tables to 10 × 10', 4, () => [
    ...products(TABLES_TO_TEN, 10),
    ...quotients(TABLES_TO_TEN, 10),
  ]),
  level('add-two-digits', 'Adding two-digit numbers', 4, twoDigitSums, 'roomy'),
  level('take-two-digits', 'Taking away two-digit numbers', 4, twoDigitTakes, 'roomy'),
  level('table-11-12', 'Elevens and twelves', 5, () => [
    ...products([11, 12], 12),
    ...quotients([11, 12], 12),
  ]),
  level('missing-factors', 'Missing numbers in the tables', 5, () => missingFactors(TABLES_TO_TWELVE, 12)),
  level('tables-12', 'Mixed tables to 12 × 12', 5, () => [
    ...products(TABLES_TO_TWELVE, 12),
    ...quotients(TABLES_TO_TWELVE, 12),
  ]),
  level('tens-hundreds', 'Ten and a hundred times', 5, tensAndHundreds),
  level('four-signs', 'All four signs', 5, () => [
    ...sums(11, 20),
    ...takes(11, 20),
    ...products([6, 7, 8, 9], 10),
    ...quotients([6, 7, 8, 9], 10),
  ]),
  level('tenths', 'Adding and taking away tenths', 5, tenths, 'roomy'),
  level('decimal-shifts', 'Decimals ten and a hundred times', 6, decimalShifts),
  level('below-zero', 'Past zero', 6, pastZero),
  level('everything', 'Everything together', 6, () => [
    ...products([6, 7, 8, 9, 12], 12),
    ...quotients([6, 7, 8, 9, 12], 12),
    ...tenths(),
    ...decimalShifts(),
    ...pastZero(),
  ]),
];
