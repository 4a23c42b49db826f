// afterbell print, for the self-checking activities: numbered sets of loose pieces with their labels and keys.
import { z } from 'zod';
import { Chain } from '#api/chain.js';
import { Jigsaw } from '#api/jigsaw.js';
import { describeIssues } from '#api/problem.js';
import { PAPERS } from '#api/settings.js';
import { Trail } from '#api/trail.js';
import { KIT_DOCUMENTS, type KitRequest } from '#print/kit-request.js';
import { UsageFailure } from '../failure.js';
import { readWhole, readWord } from '../options.js';

export interface KitPrintOptions {
  readonly paper: string;
  readonly document?: string;
  readonly copies: string;
  readonly firstSet: string;
  readonly label?: string;
  readonly names?: string;
  readonly backs: boolean;
  readonly byStack?: boolean;
  readonly lowInk?: boolean;
  readonly largePrint?: boolean;
}

/** The activities printed as kits, each with the form of its JSON. */
const KINDS = { chain: Chain, jigsaw: Jigsaw, trail: Trail } as const;
type Kind = keyof typeof KINDS;

/** The kind of activity in the file when it is printed as a kit: one, or several as `items`. */
export function kitKindOf(json: Readonly<Record<string, unknown>>): Kind | null {
  const items = json['items'];
  const kind = json['kind'] ?? (Array.isArray(items) ? items[0]?.kind : undefined);
  return typeof kind === 'string' && Object.hasOwn(KINDS, kind) ? (kind as Kind) : null;
}

/** What to print of a file that holds activities of one kind; ends the command with one sentence when it cannot be read. */
export function kitRequestOf(
  file: string,
  kind: Kind,
  json: Readonly<Record<string, unknown>>,
  options: KitPrintOptions,
): KitRequest {
  const form = KINDS[kind];
  const many = z.object({ items: z.array(form).min(1).max(100) });
  const parsed = (json['items'] === undefined ? form.transform((one) => ({ items: [one] })) : many).safeParse(
    json,
  );
  if (!parsed.success) {
    throw new UsageFailure(
      `${file}: ${describeIssues(parsed.error)}. Give it what "make ${kind} --json" printed.`,
    );
  }
  const { items } = parsed.data;
  const first = readWhole('--first-set', options.firstSet, 1, 900);
  // Kind and activities were read by one form.
  return {
    activity: kind,
    document:
      options.document === undefined ? 'kit' : readWord('--document', options.document, KIT_DOCUMENTS),
    sets: items.map((activity, at) => ({
      number: first + at,
      activity,
      ...(options.label === undefined ? {} : { label: options.label }),
    })),
    paper: readWord('--paper', options.paper, PAPERS),
    options: {
      locale: items[0]?.locale ?? 'en-AU',
      backs: options.backs,
      copies: readWhole('--copies', options.copies, 1, 200),
      ...(options.names === undefined ? {} : { names: namesIn(options.names) }),
      ...(options.byStack ? { cutting: 'by stack' } : {}),
      ...(options.lowInk ? { lowInk: true } : {}),
      ...(options.largePrint ? { largePrint: true } : {}),
    },
  } as KitRequest;
}

function namesIn(text: string): string[] {
  return text
    .split(',')
    .map((name) => name.trim())
    .filter(Boolean);
}
