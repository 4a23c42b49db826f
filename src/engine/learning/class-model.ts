// From a class's answers to what each child, and the class, can be expected to do.
import { dayCount, parseIsoDate } from '../numbers/calendar.js';
import { hashText, Rng } from '../random/rng.js';
import { SKILLS } from '../skills/map.js';
import { averagedLogistic, normalBelow } from './logistic.js';
import { type SkillNode, type SkillSpace, skillSpaceOf, VARIANCES } from './prior.js';
import { type SchoolYear, schoolPosition, usualSchoolYear } from './school-year.js';
import { abilityMean, abilityVariance, type ChildState, type Placement, startState } from './state.js';
import { advance, afterAnswer, afterAnswers, type Answered } from './update.js';

export interface ChildRecord {
  readonly id: string;
  /** Class year; 0 is Foundation. */
  readonly year: number;
  /** In any order; answers to skills that the map does not know, or after `on`, are left out. */
  readonly answers: readonly Answered[];
  readonly placement?: Placement;
}

export interface ClassRequest {
  readonly children: readonly ChildRecord[];
  /** ISO date the model speaks about. */
  readonly on: string;
  readonly skills?: readonly SkillNode[];
  readonly schoolYear?: SchoolYear;
}

export interface ChildModel {
  readonly id: string;
  readonly year: number;
  readonly state: ChildState;
}

export interface ClassModel {
  readonly on: string;
  readonly space: SkillSpace;
  readonly children: readonly ChildModel[];
}

export interface ClassPrediction {
  /** Share of the class predicted to succeed, 0 to 1; 0 for a class without children. */
  readonly mean: number;
  /** Chance of success of each child, in the order of the model's children. */
  readonly perChild: readonly number[];
}

/** The model of a class on a day. Throws RangeError when `on` is not a date: check it at the edge. */
export function buildClassModel(request: ClassRequest): ClassModel {
  const space = skillSpaceOf(request.skills ?? SKILLS);
  const schoolYear = request.schoolYear ?? usualSchoolYear(request.on);
  const today = dayCount(request.on);
  const children = request.children.map((child) => ({
    id: child.id,
    year: child.year,
    state: foldAnswers(space, child, today, schoolYear),
  }));
  return { on: request.on, space, children };
}

/** The state of one child on a day, all answers up to that day taken in, oldest first. */
export function foldAnswers(
  space: SkillSpace,
  child: ChildRecord,
  today: number,
  schoolYear: SchoolYear,
): ChildState {
  const dated = usableAnswers(space, child, today, schoolYear);
  const state = afterAnswers(beginning(space, child, dated[0]?.day ?? today, schoolYear), dated);
  return advance(state, today, schoolPosition(child.year, today, schoolYear));
}

/** One step of {@link foldSteps}: an answer taken in, or (answer null) time passing. */
export interface FoldStep {
  readonly before: ChildState;
  readonly after: ChildState;
  readonly answer: Answered | null;
}

/** The same as {@link foldAnswers}, step by step, so that each change can be traced to its cause. */
export function* foldSteps(
  space: SkillSpace,
  child: ChildRecord,
  today: number,
  schoolYear: SchoolYear,
): Generator<FoldStep, void> {
  const dated = usableAnswers(space, child, today, schoolYear);
  let before = beginning(space, child, dated[0]?.day ?? today, schoolYear);
  for (const { answer, day, position, skill } of dated) {
    if (day > before.day) {
      const after = advance(before, day, position);
      yield { before, after, answer: null };
      before = after;
    }
    const after = afterAnswer(before, skill, answer.difficulty, answer.right);
    yield { before, after, answer };
    before = after;
  }
  yield {
    before,
    after: advance(before, today, schoolPosition(child.year, today, schoolYear)),
    answer: null,
  };
}

function beginning(space: SkillSpace, child: ChildRecord, day: number, schoolYear: SchoolYear): ChildState {
  return startState(space, day, schoolPosition(child.year, day, schoolYear), child.placement);
}

/** Answers of one day are taken in a mixed order that does not depend on how they were handed over: one by one from the
 * easiest to the hardest, the approximation would be at its worst. */
function usableAnswers(space: SkillSpace, child: ChildRecord, today: number, schoolYear: SchoolYear) {
  return child.answers
    .flatMap((answer) => {
      const skill = space.indexOf.get(answer.skill);
      if (skill === undefined || parseIsoDate(answer.on) === null) return [];
      const day = dayCount(answer.on);
      if (day > today) return [];
      const { difficulty, right, questionId } = answer;
      const position = schoolPosition(child.year, day, schoolYear);
      return [{ answer, skill, difficulty, right, day, position, mixed: hashText(questionId) }];
    })
    .sort((a, b) => a.day - b.day || a.mixed - b.mixed);
}

/** Predicted success of a class at a difficulty (logits, relative to the skill's year); mean 0 for an unknown skill. */
export function predictClass(model: ClassModel, skillId: string, difficulty: number): ClassPrediction {
  const gaps = gapsOf(model, skillId);
  if (gaps === null) return { mean: 0, perChild: model.children.map(() => 0) };
  const perChild = gaps.map(({ mean, variance }) => averagedLogistic(mean - difficulty, variance));
  return { mean: perChild.reduce((sum, chance) => sum + chance, 0) / Math.max(1, perChild.length), perChild };
}

type Gaps = readonly { readonly mean: number; readonly variance: number }[];
const GAPS = new WeakMap<ClassModel, Map<string, Gaps | null>>();

/** Each child's Gaussian at a skill, kept per model since a board asks for the same skill many times. */
function gapsOf(model: ClassModel, skillId: string): Gaps | null {
  let known = GAPS.get(model);
  if (!known) GAPS.set(model, (known = new Map()));
  let gaps = known.get(skillId);
  if (gaps === undefined) {
    const skill = model.space.indexOf.get(skillId);
    gaps =
      skill === undefined
        ? null
        : model.children.map(({ state }) => ({
            mean: abilityMean(state, skill),
            variance: abilityVariance(state, skill),
          }));
    known.set(skillId, gaps);
  }
  return gaps;
}

/** Share of the school year taken as done in a class that nothing is known about. */
const MIDDLE_OF_YEAR = 0.5;
/** How well a typical class's children are known: the spread between them is drawn, this much is left open. */
const TYPICAL_DEVIATION = 0.4;

/**
 * A class that nothing is known about but its years: `count` children shared evenly over the years, general ability
 * drawn from the prior, one child from each equal slice of it, so that any seed gives a full spread.
 */
export function typicalClass(
  years: readonly number[],
  count = 27,
  seed = 1,
  skills: readonly SkillNode[] = SKILLS,
  yearShare = MIDDLE_OF_YEAR,
): ClassModel {
  const rng = new Rng(seed).fork('typical class');
  const space = skillSpaceOf(skills);
  const spread = Math.sqrt(VARIANCES.general - TYPICAL_DEVIATION ** 2);
  const children: ChildModel[] = [];
  years.forEach((year, at) => {
    const size = Math.floor(((at + 1) * count) / years.length) - Math.floor((at * count) / years.length);
    for (let i = 0; i < size; i++) {
      const shift = spread * normalQuantile((i + 0.25 + 0.5 * rng.unit()) / size);
      const state = startState(space, 0, year - 1 + yearShare, { shift, deviation: TYPICAL_DEVIATION });
      children.push({ id: `typical-${children.length + 1}`, year, state });
    }
  });
  return { on: '', space, children };
}

/** The value below which a share of a standard normal lies (0.001 to 0.999), by Newton steps. */
function normalQuantile(share: number): number {
  let x = 0;
  for (let i = 0; i < 40; i++) {
    const density = Math.exp((-x * x) / 2) * 0.3989422804014327;
    const step = (normalBelow(x) - share) / Math.max(density, 1e-3);
    x -= Math.max(-0.5, Math.min(0.5, step));
    if (Math.abs(step) < 1e-9) break;
  }
  return x;
}
