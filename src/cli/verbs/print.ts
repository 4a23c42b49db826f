// afterbell print
import { renameSync, rmSync, writeFileSync } from 'node:fs';
import process from 'node:process';
import { z } from 'zod';
import { Board } from '#api/board.js';
import { Question } from '#api/question.js';
import { PAPERS } from '#api/settings.js';
import { hashText } from '#engine/random/rng.js';
import { Press } from '#print/press.js';
import type { DocumentKind, PrintRequest, SlipRequest } from '#print/request.js';
import { UsageFailure, valueOf } from '../failure.js';
import { readJson } from '../input.js';
import { readDate, readWhole, readWord } from '../options.js';
import { note } from '../output.js';
import { type KitPrintOptions, kitKindOf, kitRequestOf } from './print-kit.js';
import { isTimed, timedRequestOf } from './print-timed.js';

interface Options extends KitPrintOptions {
  readonly out: string;
  readonly paper: string;
  readonly document?: string;
  readonly tiled?: boolean;
  readonly perPage: string;
  readonly copies: string;
  readonly date?: string;
  readonly lowInk?: boolean;
  readonly largePrint?: boolean;
}

/** The names of documents on the command line, which serve every activity, and what they are for a board. */
const BOARD_DOCUMENTS: Readonly<Record<string, DocumentKind>> = {
  board: 'poster',
  pupil: 'sheet',
  slips: 'slips',
  key: 'key',
  relief: 'relief',
  practice: 'practice',
};
const OTHER_DOCUMENTS = new Set(['cards', 'tiles', 'pieces', 'labels']);

const Input = z.union([
  Board.transform((board) => ({ boards: [board], questions: [] as Question[] })),
  z
    .object({ items: z.array(Board).min(1) })
    .transform(({ items }) => ({ boards: items, questions: [] as Question[] })),
  z
    .object({ items: z.array(Question).min(1) })
    .transform(({ items }) => ({ boards: [] as Board[], questions: items })),
]);
type Board = z.output<typeof Board>;
type Question = z.output<typeof Question>;

export async function print(file: string, options: Options): Promise<void> {
  const json = readJson(file, z.looseObject({}));
  const press = new Press();
  const kit = kitKindOf(json);
  const made = valueOf(
    isTimed(json)
      ? await press.printTimed(timedRequestOf(file, json, options))
      : kit
        ? await press.printKit(kitRequestOf(file, kit, json, options))
        : await press.print(boardRequestOf(file, json, options)),
  );
  for (const warning of made.warnings) note(warning);
  writeWhole(options.out, made.pdf);
  note(`${options.out}: ${made.pages} ${made.pages === 1 ? 'page' : 'pages'}. Print at 100 %.`);
}

function boardRequestOf(
  file: string,
  json: Readonly<Record<string, unknown>>,
  options: Options,
): PrintRequest {
  const { boards, questions } = readInput(file, json);
  return requestOf(boards, questions, options);
}

function readInput(file: string, json: Readonly<Record<string, unknown>>): z.output<typeof Input> {
  const kind = json['kind'];
  if (typeof kind === 'string' && kind !== 'board') {
    throw new UsageFailure(
      `${file}: this version prints boards, chains, trails, jigsaws, timed practice and questions, not a ${kind}.`,
    );
  }
  const parsed = Input.safeParse(json);
  if (parsed.success) return parsed.data;
  // The union hides which part is wrong; the likeliest form names it.
  const items = json['items'];
  const likely =
    kind === 'board'
      ? Board
      : z.object({ items: z.array(Array.isArray(items) && items[0]?.kind === 'board' ? Board : Question) });
  const again = likely.safeParse(json);
  const issue = again.success ? undefined : again.error.issues[0];
  throw new UsageFailure(
    `${file}: ${issue ? `${issue.path.join('.') || 'the document'}: ${issue.message}` : 'not a board or a list of questions'}. Give it what "make board --json" printed.`,
  );
}

function requestOf(boards: readonly Board[], questions: readonly Question[], options: Options): PrintRequest {
  const document = documentOf(options.document, boards.length > 0);
  if (options.date !== undefined) readDate('--date', options.date);
  const copies = readWhole('--copies', options.copies, 1, 2000);
  const perPage = readWhole('--per-page', options.perPage, 6, 8);
  if (perPage === 7) throw new UsageFailure('--per-page 7: expected 6 or 8.');
  const first = boards[0];
  return {
    document,
    boards,
    ...(questions.length > 0 ? { questions } : {}),
    paper: readWord('--paper', options.paper, PAPERS),
    options: {
      locale: first?.locale ?? 'en-AU',
      perPage: perPage as 6 | 8,
      ...(document === 'slips' || document === 'kit'
        ? { slips: slipsFor(boards, Math.max(copies, perPage)) }
        : { copies: Math.min(copies, 200) }),
      ...(options.date === undefined ? {} : { date: options.date }),
      ...(options.tiled ? { tiled: true } : {}),
      ...(options.lowInk ? { lowInk: true } : {}),
      ...(options.largePrint ? { largePrint: true } : {}),
    },
  };
}

function documentOf(name: string | undefined, isBoard: boolean): DocumentKind {
  if (name === undefined) return isBoard ? 'kit' : 'practice';
  const wanted = name.toLowerCase();
  if (OTHER_DOCUMENTS.has(wanted)) {
    throw new UsageFailure(
      `--document ${name}: a board has no ${wanted}. It has ${Object.keys(BOARD_DOCUMENTS).join(', ')}.`,
    );
  }
  const document = BOARD_DOCUMENTS[
    readWord('--document', wanted, Object.keys(BOARD_DOCUMENTS))
  ] as DocumentKind;
  if (!isBoard && document !== 'practice') {
    throw new UsageFailure(
      `--document ${name}: loose questions can only be printed as a practice sheet; leave --document out.`,
    );
  }
  return document;
}

/** Opaque ids for slips that belong to no class: told from the board alone, so that the same board prints the same slips. */
function slipsFor(boards: readonly Board[], copies: number): SlipRequest[] {
  return boards.flatMap((board, at) => {
    const key = hashText(
      `${board.seed}|${board.number}|${board.side}|${board.rungs.map(({ question }) => question.id).join()}`,
    );
    const stem = key.toString(32).toUpperCase().padStart(7, '0');
    return Array.from({ length: copies }, (_, index) => ({
      id: `${stem}-${(index + 1).toString(32).toUpperCase().padStart(2, '0')}`,
      board: at,
    }));
  });
}

/** The file appears whole or not at all. */
export function writeWhole(path: string, bytes: Uint8Array): void {
  const draft = `${path}.${process.pid}.part`;
  try {
    writeFileSync(draft, bytes);
    renameSync(draft, path);
  } catch (error) {
    rmSync(draft, { force: true });
    const { code } = error as NodeJS.ErrnoException;
    throw new UsageFailure(
      code === 'ENOSPC'
        ? `${path}: the disk is full. Free some space and print again.`
        : `${path} cannot be written (${code ?? 'unknown reason'}). Check that the folder exists and that you may write there.`,
    );
  }
}
