// The trail composer: request -> trail. First a picture that fits in one way only, then questions whose answers all differ,
// each on a tile where its answer has room.
import type { LocaleId } from '../../numbers/locale.js';
import type { Question } from '../../questions/question.js';
import { Rng } from '../../random/rng.js';
import {
  type Pitch,
  type SupplyError,
  type SupplyMend,
  type SupplyRequest,
  supplyQuestions,
} from '../supply.js';
import { pictureFits } from '../picture-room.js';
import { answerShapes, placeAnswer } from './answer-shape.js';
import { codeName, EAST, NORTH, sideName, SOUTH, WEST } from './codes.js';
import { proveTrail } from './proof.js';
import { tileSideMm } from './sizes.js';
import type { TileLayout } from './tile-layout.js';
import { THEMES, type ThemeId, type Trail, type TrailFrame, TRAIL_SIZE, type TrailTile } from './trail.js';
import { type Picture, weavePicture } from './weave.js';

export interface TrailRequest
  extends Pick<SupplyRequest, 'years' | 'skills' | 'due' | 'own' | 'classModel' | 'success'> {
  readonly pitch?: Pitch;
  /** 3 to 6 each. */
  readonly rows: number;
  readonly columns: number;
  /** A whole number that fits in 32 bits. */
  readonly seed: number;
  readonly locale: LocaleId;
  /** Chosen by the seed when left out. */
  readonly theme?: ThemeId;
}

export interface TrailError {
  readonly code:
    | 'trail.size'
    | 'trail.theme'
    | 'trail.picture'
    | 'trail.room'
    | 'trail.place'
    | 'trail.swap'
    | SupplyError['code'];
  readonly message: string;
  readonly hint: string;
  readonly mend?: SupplyMend;
}

export type TrailResult =
  | { readonly ok: true; readonly value: Trail }
  | { readonly ok: false; readonly error: TrailError };

/**
 * The trail for a request; the same request gives the same trail. Errors: a size outside 3 to 6, an unknown theme, years
 * or skills that the supply of questions refuses, too few different answers that are short enough for a tile.
 */
export function composeTrail(request: TrailRequest): TrailResult {
  const problem = problemWith(request);
  if (problem) return { ok: false, error: problem };
  const { rows, columns, seed } = request;
  const rng = new Rng(seed).fork('trail');
  const picture = weavePicture(rows, columns, rng.fork(`picture/${sourceKey(request)}`));
  if (!picture) {
    return fail(
      'trail.picture',
      `No picture of ${rows} x ${columns} tiles was found for seed ${seed}.`,
      'Use another seed.',
    );
  }
  const questions = questionsFor(request, picture, rng.fork('questions'));
  if (!questions.ok) return questions;
  const frame = frameOf(picture);
  const tiles = picture.layouts.map((layout, cell) =>
    tileOf(questions.value[cell] as Question, layout, picture.codes.subarray(4 * cell, 4 * cell + 4)),
  );
  const proof = proveTrail({ rows, columns, frame, tiles });
  if (proof.arrangements !== 1)
    throw new Error(`seed ${seed}: ${proof.arrangements} arrangements after weaving`);
  return {
    ok: true,
    value: {
      kind: 'trail',
      seed,
      rows,
      columns,
      years: request.years,
      pitch: request.pitch ?? 'middle',
      locale: request.locale,
      theme: request.theme ?? rng.fork(`theme/${sourceKey(request)}`).pick(THEMES),
      cells: questions.value.map((question) => ({ question })),
      tiles,
      frame,
      entry: { cell: picture.route[0] as number, side: 'north' },
      exit: { cell: picture.route.at(-1) as number, side: 'south' },
      proof,
    },
  };
}

/** What the questions come from: a child who knows one class's picture must not know another's of the same seed. */
function sourceKey({ years, skills, pitch }: TrailRequest): string {
  return [years.join('-'), skills?.join(',') ?? '', pitch ?? 'middle'].join('/');
}

function fail(code: TrailError['code'], message: string, hint: string): { ok: false; error: TrailError } {
  return { ok: false, error: { code, message, hint } };
}

function problemWith({ rows, columns, theme }: TrailRequest): TrailError | null {
  const { least, most } = TRAIL_SIZE;
  const isSize = (size: number) => Number.isInteger(size) && size >= least && size <= most;
  if (!isSize(rows) || !isSize(columns)) {
    return {
      code: 'trail.size',
      message: `A trail has ${least} to ${most} rows and columns, not ${rows} x ${columns}.`,
      hint: 'Choose 4 rows and 4 columns for a usual trail.',
    };
  }
  if (theme !== undefined && !THEMES.includes(theme)) {
    return {
      code: 'trail.theme',
      message: `There is no picture “${theme}”.`,
      hint: `Choose one of ${THEMES.join(', ')}.`,
    };
  }
  return null;
}

/** Answers no longer than this are asked for, shorter ones when they do not all find room. */
const LONGEST_ANSWERS = [14, 10, 7, 5] as const;
/** Smallest letters of an answer, 11 points, in mm. */
export const LEAST_LETTER_MM = 3.9;
/** Letters that need no second look. */
const GOOD_LETTER_MM = 5.2;

type Questions =
  | { readonly ok: true; readonly value: readonly Question[] }
  | { readonly ok: false; readonly error: TrailError };

function questionsFor(request: TrailRequest, picture: Picture, rng: Rng): Questions {
  const side = tileSideMm(request.rows, request.columns);
  const { years, skills, due, own, classModel, success, pitch, locale, seed } = request;
  const wish = {
    years,
    ...(skills ? { skills } : {}),
    ...(due ? { due } : {}),
    ...(own ? { own } : {}),
    ...(classModel ? { classModel } : {}),
    ...(success ? { success } : {}),
    ...(pitch ? { pitch } : {}),
    locale,
    seed,
    count: request.rows * request.columns,
    order: 'mixed',
  } as const;
  let few: TrailError | null = null;
  for (const longestAnswer of LONGEST_ANSWERS) {
    const supplied = supplyQuestions({
      ...wish,
      longestText: longestTextOn(side),
      longestAnswer,
      suits: (question) => fitsCell(question, side, locale),
    });
    if (!supplied.ok) {
      const unlimited = supplyQuestions(wish);
      const isRoom = unlimited.ok || unlimited.error.message !== supplied.error.message;
      few ??= isRoom ? tooLarge(request, supplied.error) : supplied.error;
      break;
    }
    const laid = spreadOut(
      supplied.value.map(({ question }) => question),
      picture,
      side,
      rng.fork(longestAnswer),
    );
    if (laid) return { ok: true, value: laid };
  }
  return few
    ? { ok: false, error: few }
    : fail(
        'trail.room',
        'The answers to these questions are too long for tiles.',
        'Choose skills with shorter answers, or fewer rows.',
      );
}

/** There are more questions than those that a cell and a tile have room for. */
function tooLarge({ rows, columns }: TrailRequest, few: SupplyError): TrailError {
  return {
    ...few,
    code: 'trail.room',
    message: `Too few of these questions fit a trail of ${rows} x ${columns}: their words or answers are too long, or their pictures too wide.`,
  };
}

/** Longest question, in characters, that a cell of this side (mm) carries. */
export function longestTextOn(side: number): number {
  return side >= 40 ? 72 : 52;
}

/** Whether a question's figure, if it has one, stays readable beside its text in a cell of this side (mm). */
export function fitsCell(question: Question, side: number, locale: LocaleId): boolean {
  const room = { widthMm: side - 6, heightMm: side - 6, gapMm: 0, besideMm: null };
  return pictureFits(question, room, locale);
}

/** Questions by cell: long answers first, each on any tile with room for large letters, or else on the roomiest; null when one fits nowhere. */
function spreadOut(
  questions: readonly Question[],
  picture: Picture,
  side: number,
  rng: Rng,
): Question[] | null {
  const least = (LEAST_LETTER_MM / side) * 100;
  const good = (GOOD_LETTER_MM / side) * 100;
  const free = new Set(picture.layouts.keys());
  const laid: Question[] = [];
  const longestFirst = questions.toSorted((a, b) => b.answer.text.length - a.answer.text.length);
  for (const question of longestFirst) {
    const shapes = answerShapes(question.answer.text);
    let best = { cell: -1, size: 0 };
    for (const cell of rng.shuffle([...free])) {
      const { rooms } = picture.layouts[cell] as TileLayout;
      const size = placeAnswer(shapes, rooms, least)?.size ?? 0;
      if (size > best.size) best = { cell, size };
      if (size >= good) break;
    }
    if (best.size === 0) return null;
    free.delete(best.cell);
    laid[best.cell] = question;
  }
  return laid;
}

function tileOf(question: Question, layout: TileLayout, codes: Uint8Array): TrailTile {
  const joins = layout.strokes.flatMap(({ from, to }) =>
    to === null ? [] : [[sideName(from), sideName(to)] as const],
  );
  return {
    answer: question.answer,
    edges: Array.from(codes, codeName),
    path: joins,
    ends: layout.strokes.flatMap(({ from, to }) => (to === null ? [sideName(from)] : [])),
  };
}

function frameOf({ rows, columns, codes }: Picture): TrailFrame {
  const rim = (cells: number, cellAt: (i: number) => number, side: number) =>
    Array.from({ length: cells }, (_, i) => codeName(codes[4 * cellAt(i) + side] as number));
  return {
    north: rim(columns, (i) => i, NORTH),
    east: rim(rows, (i) => i * columns + columns - 1, EAST),
    south: rim(columns, (i) => (rows - 1) * columns + i, SOUTH),
    west: rim(rows, (i) => i * columns, WEST),
  };
}
