// The board composer: request -> board, by search over hundreds of candidates (see objective.ts for what is sought).
import { type ClassModel, typicalClass } from '../../learning/class-model.js';
import type { DayNumber } from '../../numbers/day-number.js';
import { type Locale, type LocaleId, localeOf } from '../../numbers/locale.js';
import { foldText } from '../../numbers/fold-text.js';
import type { Question } from '../../questions/question.js';
import { Rng } from '../../random/rng.js';
import { SKILLS } from '../../skills/map.js';
import type { Skill } from '../../skills/skill.js';
import type { Board, BoardSide, Rung } from './board.js';
import { type Candidate, type CandidateRequest, gatherCandidates, makeCandidate } from './candidates.js';
import { type LadderRules, type LadderTask, REVIEWS_WANTED, STRICT_RULES } from './objective.js';
import { searchLadder } from './search.js';
import { GREATEST_MISS, targetCurve } from './target-curve.js';
import { explainRung } from './why.js';

export interface BoardRequest {
  readonly number: DayNumber;
  /** Class years, 0 (Foundation) to 6. */
  readonly years: readonly number[];
  readonly side: BoardSide;
  readonly seed: number;
  readonly locale: LocaleId;
  /** 6 to 16; 12 when left out. */
  readonly rungs?: number;
  /** What is known about the class; a typical class of these years when left out. */
  readonly classModel?: ClassModel;
  /** Skills due for review, most urgent first. */
  readonly due?: readonly string[];
  /** Locked rungs: rung number (from 1) to its question. */
  readonly fixed?: ReadonlyMap<number, Question>;
  /** Question texts that must not come, such as last week's. */
  readonly avoid?: readonly string[];
  /** The skill map, when not the built-in one. */
  readonly skills?: readonly Skill[];
}

export interface BoardError {
  readonly code: 'board.years' | 'board.rungs' | 'board.locks' | 'board.candidates';
  readonly message: string;
  readonly hint: string;
}

export type BoardResult =
  | { readonly ok: true; readonly value: Board }
  | { readonly ok: false; readonly error: BoardError };

/** Rules from strict to loose, each step with the words that the proof shows for it. */
const STEPS: readonly {
  readonly rules: LadderRules;
  readonly withFree: boolean;
  readonly relaxed: readonly string[];
}[] = [
  { rules: STRICT_RULES, withFree: false, relaxed: [] },
  { rules: { ...STRICT_RULES, mostPerStrand: 6 }, withFree: false, relaxed: ['up to 6 rungs of one strand'] },
  {
    rules: { ...STRICT_RULES, mostPerStrand: 6 },
    withFree: true,
    relaxed: ['up to 6 rungs of one strand', 'rungs without the number of the day'],
  },
  {
    rules: { leastStrands: 1, mostPerStrand: 16, mostPerSkill: 2 },
    withFree: true,
    relaxed: ['any number of strands', 'a skill up to twice', 'rungs without the number of the day'],
  },
];

/**
 * The board for a request. The same request gives the same board. Errors: years outside 0 to 6, rungs outside 6 to 16,
 * locked rungs that contradict each other, too few candidates.
 */
export function composeBoard(request: BoardRequest): BoardResult {
  const problem = problemWith(request);
  if (problem) return { ok: false, error: problem };
  const context = contextOf(request);
  for (const step of STEPS) {
    const task = taskFor(request, context, step.rules, step.withFree);
    const found = searchLadder(task);
    if (found)
      return { ok: true, value: makeBoard(request, task, found.ladder, found.objective, step.relaxed) };
  }
  return { ok: false, error: nothingFits(request) };
}

interface Context {
  readonly locale: Locale;
  readonly classModel: ClassModel;
  readonly skills: readonly Skill[];
  readonly rungs: number;
  readonly due: readonly string[];
}

function contextOf(request: BoardRequest): Context {
  const skills = request.skills ?? SKILLS;
  const rungs = request.rungs ?? 12;
  return {
    locale: localeOf(request.locale),
    classModel: request.classModel ?? typicalClass(request.years, 27, 1, skills),
    skills,
    rungs,
    due: [...new Set(request.due ?? [])],
  };
}

function taskFor(request: BoardRequest, context: Context, rules: LadderRules, withFree: boolean): LadderTask {
  const due = new Set(context.due);
  const fixed = request.fixed ?? new Map<number, Question>();
  const locks = [...fixed.values()].map((question) =>
    makeCandidate(question, context.classModel, due.has(question.skill)),
  );
  const gather: CandidateRequest = {
    number: request.number,
    years: request.years,
    locale: context.locale,
    skills: context.skills,
    classModel: context.classModel,
    due,
    avoid: new Set([...(request.avoid ?? []).map(foldText), ...locks.map((lock) => lock.text)]),
    withFree,
  };
  const open = gatherCandidates(gather, new Rng(request.seed).fork('board'));
  const candidates = [...open, ...locks];
  const locked = Array.from({ length: context.rungs }, () => -1);
  [...fixed.keys()].forEach((rung, i) => {
    locked[rung - 1] = open.length + i;
  });
  const offered = new Set(candidates.map((candidate) => candidate.question.skill));
  const wanted = Math.max(1, Math.round((REVIEWS_WANTED * context.rungs) / 12));
  return {
    candidates,
    targets: targetCurve(request.side, context.rungs),
    locked,
    due: context.due.filter((id) => offered.has(id)).slice(0, wanted),
    rules,
  };
}

function makeBoard(
  request: BoardRequest,
  task: LadderTask,
  ladder: readonly number[],
  objective: number,
  relaxed: readonly string[],
): Board {
  const rungs = ladder.map((at, i) =>
    makeRung(task.candidates[at] as Candidate, i + 1, task.targets[i] as number, request),
  );
  const misses = rungs.map((rung) => Math.abs(rung.predicted - rung.target));
  const skills = new Set(rungs.map((rung) => rung.question.skill));
  const due = [...new Set(request.due ?? [])];
  return {
    kind: 'board',
    seed: request.seed,
    number: request.number.text,
    years: request.years,
    side: request.side,
    locale: request.locale,
    rungs,
    proof: {
      objective: Math.round(objective * 10_000) / 10_000,
      candidates: task.candidates.length,
      strands: new Set(rungs.map((rung) => rung.question.strand)).size,
      worstMiss: Math.round(Math.max(...misses) * 10_000) / 10_000,
      missedRungs: rungs.filter((_, i) => (misses[i] as number) > GREATEST_MISS).map((rung) => rung.rung),
      reviewsDue: due,
      reviewsPlaced: due.filter((id) => skills.has(id)),
      ...(relaxed.length > 0 ? { relaxed } : {}),
    },
  };
}

function makeRung(candidate: Candidate, rung: number, target: number, request: BoardRequest): Rung {
  return {
    rung,
    question: candidate.question,
    target,
    predicted: candidate.predicted,
    commonDifficulty: candidate.common,
    why: explainRung(candidate, target, rung + request.seed, request.number.text),
  };
}

/** A question that could stand on a rung instead, with what the rung would then say. */
export type RungAlternative = Rung;

/**
 * Up to `count` questions that could replace the one on `rung` (from 1) while the rest of the board stays, best first,
 * each of a different skill while there are enough; empty when nothing fits or the rung does not exist.
 */
export function replaceRung(
  board: Board,
  rung: number,
  request: BoardRequest,
  count = 6,
): readonly RungAlternative[] {
  const others = new Map(
    board.rungs.filter((other) => other.rung !== rung).map((other) => [other.rung, other.question]),
  );
  if (others.size !== board.rungs.length - 1) return [];
  const current = board.rungs[rung - 1]?.question.text ?? '';
  const avoid = [...(request.avoid ?? []), current];
  const out: RungAlternative[] = [];
  const seen = new Set<string>();
  const base: BoardRequest = { ...request, rungs: board.rungs.length, fixed: others };
  for (let round = 0; out.length < count; round++) {
    const found = composeBoard({ ...base, avoid: [...avoid, ...seen], seed: request.seed + round });
    const next = found.ok ? found.value.rungs[rung - 1] : undefined;
    if (!next || round > count) break;
    seen.add(next.question.text);
    out.push(next);
  }
  return out;
}

function problemWith(request: BoardRequest): BoardError | null {
  const rungs = request.rungs ?? 12;
  if (
    request.years.length === 0 ||
    request.years.some((year) => !Number.isInteger(year) || year < 0 || year > 6)
  ) {
    return {
      code: 'board.years',
      message: `A board needs class years from 0 (Foundation) to 6, not "${request.years.join(', ')}".`,
      hint: 'Give one year or a few, such as 4 and 5.',
    };
  }
  if (!Number.isInteger(rungs) || rungs < 6 || rungs > 16) {
    return {
      code: 'board.rungs',
      message: `A board has 6 to 16 rungs, not ${rungs}.`,
      hint: 'Choose 12 for a usual board.',
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

function nothingFits(request: BoardRequest): BoardError {
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
