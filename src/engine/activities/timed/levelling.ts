// When a child may move to the next level: accurate and quick enough on several days. A suggestion with its evidence;
// the teacher decides. All thresholds are common practice unless a published band gives the rate.
import type { LocaleId } from '../../numbers/locale.js';
import { rateBand } from './criteria.js';
import { perMinute } from './digits.js';

/** One timed sheet that a child did. */
export interface TimedRecord {
  /** ISO date. */
  readonly date: string;
  readonly levelId: string;
  /** Questions on the sheet. */
  readonly asked: number;
  /** Questions reached. */
  readonly attempted: number;
  /** Answers right; at most `attempted`. */
  readonly right: number;
  /** Digits right, by the scoring rules in digits.ts. */
  readonly digitsRight: number;
  /** Minutes worked, above 0; null for a sheet without a clock. */
  readonly minutes: number | null;
}

/** What a level asks before the next. A teacher may set her own. */
export interface LevelGoal {
  /** Share of the reached questions that are right, 0 to 1. */
  readonly accuracy: number;
  /** Digits right in a minute. */
  readonly digitsPerMinute: number;
  /** Sheets that meet the goal, of the last `of`. */
  readonly sheets: number;
  readonly of: number;
}

const USUAL_ACCURACY = 0.95;
/** Where no band was published: the youngest write slowly, the oldest as quickly as the year before. Common practice. */
const RATE_OF_THE_YOUNG = 10;
const RATE_OF_THE_OLD = 49;
/** Below this share right a level is too hard to practise on. */
const TOO_HARD = 0.8;
/** Sheets in a row that are too hard before a level down is suggested. */
const HARD_SHEETS = 3;

/** The goal that comes with the product for a school year, 0 to 6: the upper end of the published band. */
export function usualGoal(year: number, locale: LocaleId): LevelGoal {
  const band = rateBand(year, locale);
  const digitsPerMinute = band?.high ?? (year <= 2 ? RATE_OF_THE_YOUNG : RATE_OF_THE_OLD);
  return { accuracy: USUAL_ACCURACY, digitsPerMinute, sheets: 3, of: 4 };
}

export type LevelMove = 'up' | 'stay' | 'back';

export interface LevelSuggestion {
  readonly move: LevelMove;
  /** One sentence a teacher can check against the sheets. */
  readonly evidence: string;
}

/**
 * What the latest sheets on a level suggest. `records` are of one child, in any order; those of other levels are passed
 * over. A sheet without a clock counts for accuracy only, and so never for moving up.
 */
export function suggestMove(
  records: readonly TimedRecord[],
  levelId: string,
  goal: LevelGoal,
): LevelSuggestion {
  const onLevel = records
    .filter((record) => record.levelId === levelId && record.attempted > 0)
    .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  if (onLevel.length === 0) return { move: 'stay', evidence: 'No sheet on this level yet.' };
  const latest = onLevel.slice(-goal.of);
  const met = latest.filter((record) => meets(record, goal));
  const wish = `${percent(goal.accuracy)} right and ${goal.digitsPerMinute} digits a minute or the whole sheet`;
  if (met.length >= goal.sheets)
    return { move: 'up', evidence: `${sheets(met.length)} of the last ${latest.length} reached ${wish}.` };
  const hard = onLevel.slice(-HARD_SHEETS);
  if (hard.length === HARD_SHEETS && hard.every((record) => accuracy(record) < TOO_HARD))
    return {
      move: 'back',
      evidence: `Each of the last ${HARD_SHEETS} sheets had less than ${percent(TOO_HARD)} right (${hard.map((record) => percent(accuracy(record))).join(', ')}).`,
    };
  return {
    move: 'stay',
    evidence: `${sheets(met.length)} of the last ${latest.length} reached ${wish}; ${goal.sheets} of ${goal.of} are wanted.`,
  };
}

function meets(record: TimedRecord, goal: LevelGoal): boolean {
  return (
    record.minutes !== null &&
    accuracy(record) >= goal.accuracy &&
    // Nobody can do more than the sheet holds.
    (record.attempted === record.asked ||
      perMinute(record.digitsRight, record.minutes) >= goal.digitsPerMinute)
  );
}

function accuracy({ right, attempted }: TimedRecord): number {
  return right / attempted;
}

function percent(share: number): string {
  return `${Math.floor(100 * share + 1e-9)} %`;
}

function sheets(count: number): string {
  return count === 1 ? '1 sheet' : `${count === 0 ? 'None' : `${count} sheets`}`;
}

/** The best sheet of a level so far, by digits right in a minute; null without a timed sheet. The first of equals stays. */
export function personalBest(records: readonly TimedRecord[], levelId: string): TimedRecord | null {
  let best: TimedRecord | null = null;
  let bestRate = Number.NEGATIVE_INFINITY;
  for (const record of records.toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))) {
    if (record.levelId !== levelId || record.minutes === null) continue;
    const rate = record.digitsRight / record.minutes;
    if (rate > bestRate) [best, bestRate] = [record, rate];
  }
  return best;
}
