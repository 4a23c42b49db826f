// What the composer is asked, the errors it may answer with, and the composing task that follows from the request.
import { type ClassModel, typicalClass } from '../../learning/class-model.js';
import type { DayNumber } from '../../numbers/day-number.js';
import { foldText } from '../../numbers/fold-text.js';
import { type LocaleId, localeOf } from '../../numbers/locale.js';
import type { OwnQuestion } from '../../own-questions/own-question.js';
import type { Question } from '../../questions/question.js';
import { Rng } from '../../random/rng.js';
import { SKILLS } from '../../skills/map.js';
import type { Skill } from '../../skills/skill.js';
import type { BoardSide } from './board.js';
import { gatherCandidates, makeCandidate } from './candidates.js';
import { type LadderRules, type LadderTask, REVIEWS_WANTED } from './objective.js';
import { targetCurve } from './target-curve.js';

export interface BoardRequest {
  readonly number: DayNumber;
  /** Class years, 0 (Foundation) to 6. */
  readonly years: readonly number[];
  readonly side: BoardSide;
  /** A whole number from -2^31 to 2^31 - 1. */
  readonly seed: number;
  readonly locale: LocaleId;
  /** 6 to 16; 12 when left out. */
  readonly rungs?: number;
  /** What is known about the class; a typical class of these years when left out. */
  readonly classModel?: ClassModel;
  /** Skills due for review, most urgent first. */
  readonly due?: readonly string[];
  /** A teacher's own questions: up to three a board, where they suit the number. */
  readonly own?: readonly OwnQuestion[];
  /** Locked rungs: rung number (from 1) to its question. */
  readonly fixed?: ReadonlyMap<number, Question>;
  /** Question texts that must not come, such as last week's. */
  readonly avoid?: readonly string[];
  /** The skill map, when not the built-in one. */
  readonly skills?: readonly Skill[];
}

export interface BoardError {
  readonly code: 'board.years' | 'board.rungs' | 'board.seed' | 'board.locks' | 'board.candidates';
  readonly message: string;
  readonly hint: string;
}

export const USUAL_RUNGS = 12;
const FEWEST_RUNGS = 6;
const MOST_RUNGS = 16;
/** Own questions that a board is made to carry; more come only where they fit as well as others do. */
const OWN_WANTED = 3;

/** What is wrong with a request before any composing, or null. */
export function problemWith(request: BoardRequest): BoardError | null {
  const { years, rungs = USUAL_RUNGS, seed } = request;
  if (years.length === 0 || years.some((year) => !Number.isInteger(year) || year < 0 || year > 6)) {
    return {
      code: 'board.years',
      message: `A board needs class years from 0 (Foundation) to 6, not “${years.join(', ')}”.`,
      hint: 'Give one year or a few, such as 4 and 5.',
    };
  }
  if (!Number.isInteger(rungs) || rungs < FEWEST_RUNGS || rungs > MOST_RUNGS) {
    return {
      code: 'board.rungs',
      message: `A board has ${FEWEST_RUNGS} to ${MOST_RUNGS} rungs, not ${rungs}.`,
      hint: `Choose ${USUAL_RUNGS} for a usual board.`,
    };
  }
  if (!Number.isInteger(seed) || (seed | 0) !== seed) {
    return {
      code: 'board.seed',
      message: `The seed ${seed} is not a whole number that fits in 32 bits.`,
      hint: 'Use a whole number such as 1.',
    };
  }
  for (const rung of request.fixed?.keys() ?? []) {
    if (!Number.isInteger(rung) || rung < 1 || rung > rungs) {
      return {
        code: 'board.locks',
        message: `Rung ${rung} is locked, but this board has rungs 1 to ${rungs}.`,
        hint: 'Unlock it.',
      };
    }
  }
  return null;
}

/** Why no ladder could be found, as an error. */
export function nothingFits(request: BoardRequest): BoardError {
  const locked = [...(request.fixed?.keys() ?? [])].sort((a, b) => a - b);
  if (locked.length > 0) {
    return {
      code: 'board.locks',
      message: `With the locked rungs (${locked.join(', ')}) no ladder goes from easy to hard.`,
      hint: 'Unlock one of them, or move an easier question to a lower rung.',
    };
  }
  return {
    code: 'board.candidates',
    message: `Too few questions can be asked about ${request.number.text} for this class.`,
    hint: 'Choose another number, or fewer rungs.',
  };
}

/** The skill map and the class that a request is about, with what stands in for those left out. */
export function knownFor(request: BoardRequest): {
  readonly skills: readonly Skill[];
  readonly classModel: ClassModel;
} {
  const skills = request.skills ?? SKILLS;
  return {
    skills,
    classModel: request.classModel ?? typicalClass(request.years, undefined, undefined, skills),
  };
}

/**
 * The composing task of a request that has no problem. Locked questions stand at the end of the candidates, in the order
 * of `fixed`. `free` names skills that may also be asked without the day's number.
 */
export function ladderTask(request: BoardRequest, rules: LadderRules, free: ReadonlySet<string>): LadderTask {
  const { skills, classModel } = knownFor(request);
  const rungs = request.rungs ?? USUAL_RUNGS;
  const due = [...new Set(request.due ?? [])];
  const isDue = new Set(due);
  const fixed = request.fixed ?? new Map<number, Question>();
  const locks = [...fixed.values()].map((question) =>
    makeCandidate(question, classModel, isDue.has(question.skill)),
  );
  const open = gatherCandidates(
    {
      number: request.number,
      years: request.years,
      locale: localeOf(request.locale),
      skills,
      classModel,
      due: isDue,
      avoid: new Set([...(request.avoid ?? []), ...locks.map((lock) => lock.question.text)].map(foldText)),
      free,
      ...(request.own ? { own: request.own } : {}),
    },
    new Rng(request.seed).fork('board'),
  );
  const candidates = [...open, ...locks];
  const locked = Array.from({ length: rungs }, () => -1);
  [...fixed.keys()].forEach((rung, i) => {
    locked[rung - 1] = open.length + i;
  });
  const offered = new Set(candidates.map((candidate) => candidate.question.skill));
  const reviews = Math.max(1, Math.round((REVIEWS_WANTED * rungs) / USUAL_RUNGS));
  // Own questions are looked for as reviews are; which ones come is drawn, so that every row has its turn.
  const own = new Rng(request.seed)
    .fork('own')
    .shuffle([...new Set((request.own ?? []).map(({ id }) => id))])
    .filter((id) => offered.has(id))
    .slice(0, OWN_WANTED);
  return {
    candidates,
    targets: targetCurve(request.side, rungs),
    locked,
    due: [...own, ...due.filter((id) => offered.has(id)).slice(0, reviews)],
    rules,
  };
}
