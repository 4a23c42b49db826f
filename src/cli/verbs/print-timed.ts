// afterbell print, for timed practice: sheets, keys, the folded record.
import { z } from 'zod';
import { describeIssues } from '#api/problem.js';
import { PAPERS } from '#api/settings.js';
import { Timed } from '#api/timed.js';
import { TIMED_DOCUMENTS, type TimedPrintRequest } from '#print/timed-request.js';
import { UsageFailure } from '../failure.js';
import { readDate, readNames, readWhole, readWord } from '../options.js';

interface TimedPrintOptions {
  readonly paper: string;
  readonly document?: string;
  readonly copies: string;
  readonly names?: string;
  readonly date?: string;
  readonly largePrint?: boolean;
}

/** Whether the file holds timed practice: one level, or several as `items`. */
export function isTimed(json: Readonly<Record<string, unknown>>): boolean {
  const items = json['items'];
  return (json['kind'] ?? (Array.isArray(items) ? items[0]?.kind : undefined)) === 'timed';
}

/** What to print of the file; ends the command with one sentence when it cannot be read. */
export function timedRequestOf(
  file: string,
  json: Readonly<Record<string, unknown>>,
  options: TimedPrintOptions,
): TimedPrintRequest {
  const parsed = (
    json['items'] === undefined
      ? Timed.transform((one) => ({ items: [one] }))
      : z.object({ items: z.array(Timed).min(1).max(40) })
  ).safeParse(json);
  if (!parsed.success)
    throw new UsageFailure(
      `${file}: ${describeIssues(parsed.error)}. Give it what "make timed --json" printed.`,
    );
  const { items } = parsed.data;
  return {
    document:
      options.document === undefined ? 'kit' : readWord('--document', options.document, TIMED_DOCUMENTS),
    levels: items,
    paper: readWord('--paper', options.paper, PAPERS),
    options: {
      locale: items[0]?.locale ?? 'en-AU',
      copies: readWhole('--copies', options.copies, 1, 200),
      ...(options.date === undefined ? {} : { date: readDate('--date', options.date) }),
      ...(options.names === undefined ? {} : { names: readNames('--names', options.names) }),
      ...(options.largePrint ? { largePrint: true } : {}),
    },
  };
}
