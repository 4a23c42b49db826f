// Where the self-checking activities get their questions: drawn from chosen skills, or from all that suit the years, with
// strands mixed, in a bounded number of draws. A wish that cannot be met is answered at once with what to change.
import { type ClassModel, predictClass, typicalClass } from '../learning/class-model.js';
import { type LocaleId, localeOf } from '../numbers/locale.js';
import { isOwnId } from '../own-questions/own-question.js';
import { drawOwn, type OwnSource } from '../own-questions/own-supply.js';
import { PLAIN_CASE } from '../questions/difficulty.js';
import { foldText } from '../questions/equivalence.js';
import { finishQuestion } from '../questions/finish.js';
import { commonDifficulty, type Question } from '../questions/question.js';
import { Rng } from '../random/rng.js';
import { SKILLS, skillById } from '../skills/map.js';
import type { Skill } from '../skills/skill.js';
import { PITCHES, type Pitch, SUPPLY_ORDERS, type SupplyOrder } from './pitch.js';
import { predictQuestion } from './predict-question.js';
import { answerMarks, shareMark } from './sameness.js';

export { PITCHES, type Pitch, SUPPLY_ORDERS, type SupplyOrder };

export interface SupplyRequest {
  /** School years of the children, 0 (Foundation) to 6. */
  readonly years: readonly number[];
  /** Only these skills; all that suit the years when left out or empty. */
  readonly skills?: readonly string[];
  /** Skills due for review, most urgent first: they come before others. Unknown ones are passed over. */
  readonly due?: readonly string[];
  /** A teacher's own questions: they come first, whatever their year, and skills fill up what is missing. */
  readonly own?: OwnSource;
  readonly pitch?: Pitch;
  /** What is known about the class; a typical class of these years when left out. */
  readonly classModel?: ClassModel;
  /** A whole number that fits in 32 bits. */
  readonly seed: number;
  readonly locale: LocaleId;
  /** Longest question and answer that the piece can carry, in characters. */
  readonly longestText?: number;
  readonly longestAnswer?: number;
  /** Lowest and highest predicted share of the class that succeeds, 0 to 1; open when left out. Due skills and own questions come anyway. */
  readonly success?: readonly [low: number, high: number];
  /** Anything else that a question must be. */
  readonly suits?: (question: Question) => boolean;
}

export interface SuppliedQuestion {
  readonly question: Question;
  /** Predicted share of these children that succeeds, 0 to 1, rounded to 0.0001. */
  readonly predicted: number;
  /** Difficulty on the scale common to all years, in logits, rounded to 0.01. */
  readonly common: number;
  /** Marks of every form of the right answer (see sameness.ts). */
  readonly rightMarks: readonly string[];
  /** Marks of each slip, in the question's order. */
  readonly slipMarks: readonly (readonly string[])[];
}

export interface SupplyError {
  readonly code: 'supply.years' | 'supply.seed' | 'supply.skill' | 'supply.none' | 'supply.few';
  readonly message: string;
  readonly hint: string;
  readonly mend?: SupplyMend;
}

/** What the hint of a refusal proposes, for a screen that offers it as a button. */
export interface SupplyMend {
  /** Strips of a chain that these questions do give. */
  readonly cards?: number;
  /** Id of a skill that could join the chosen ones. */
  readonly skill?: string;
}

export type SupplyResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: SupplyError };

/** The skills that a request may draw on, in the order in which they take turns. */
export interface SupplyPlan {
  readonly request: SupplyRequest;
  readonly skills: readonly Skill[];
  readonly classModel: ClassModel;
}

/** Years below the lowest class year that a piece of practice reaches back. */
const YEARS_BACK = 2;
/** Of a skill that fewer than this share are predicted to manage, nobody can work alone. Common practice. */
const LEAST_CHANCE = 0.45;
/** How far the difficulty is shifted against the middle of the class, in logits (about: school years). */
const PITCH_SHIFT: Readonly<Record<Pitch, number>> = { lower: -1, middle: 0, upper: 1 };

/** What a request may draw on, or what is wrong with it. */
export function planSupply(request: SupplyRequest): SupplyResult<SupplyPlan> {
  const { years, seed, pitch = 'middle' } = request;
  if (years.length === 0 || years.some((year) => !Number.isInteger(year) || year < 0 || year > 6)) {
    return fail(
      'supply.years',
      `School years go from 0 (Foundation) to 6; these are “${years.join(', ')}”.`,
      'Give one year or a few, such as 3 and 4.',
    );
  }
  if (!Number.isInteger(seed) || (seed | 0) !== seed) {
    return fail(
      'supply.seed',
      `The seed ${seed} is not a whole number that fits in 32 bits.`,
      'Use a whole number such as 1.',
    );
  }
  const unknown = (request.skills ?? []).find((id) => skillById(id) === null);
  if (unknown !== undefined) {
    return fail(
      'supply.skill',
      `There is no skill “${unknown}” in the skill map.`,
      'Choose skills by their ids from the skill map, such as add.2d2d.carry.',
    );
  }
  const classModel = request.classModel ?? usualClass(years);
  const isChosen = request.skills !== undefined && request.skills.length > 0;
  const chosen = isChosen
    ? [...new Set(request.skills)].flatMap((id) => skillById(id) ?? [])
    : skillsWithinReach(years, pitch, classModel);
  const due = [...new Set(request.due ?? [])].flatMap((id) => {
    const skill = skillById(id);
    return skill && (!isChosen || chosen.includes(skill)) ? [skill] : [];
  });
  const skills = [
    ...due,
    ...takeTurns(chosen, new Rng(seed).fork('turns')).filter((one) => !due.includes(one)),
  ];
  if (skills.length === 0) {
    return fail(
      'supply.none',
      'No skill of the map suits this part of a class of these years.',
      'Choose skills by name, or pitch it at another part.',
    );
  }
  return { ok: true, value: { request, skills, classModel } };
}

function fail(code: SupplyError['code'], message: string, hint: string): { ok: false; error: SupplyError } {
  return { ok: false, error: { code, message, hint } };
}

const USUAL_CLASSES = new Map<string, ClassModel>();

/** A typical class of these years, made once. */
function usualClass(years: readonly number[]): ClassModel {
  const ordered = [...new Set(years)].toSorted((a, b) => a - b);
  const key = ordered.join();
  let model = USUAL_CLASSES.get(key);
  if (!model) USUAL_CLASSES.set(key, (model = typicalClass(ordered)));
  return model;
}

/** The same for every set of a typical class, so worked out once for each class, its years and the pitch. */
const WITHIN_REACH = new WeakMap<ClassModel, Map<string, readonly Skill[]>>();

function skillsWithinReach(years: readonly number[], pitch: Pitch, classModel: ClassModel): readonly Skill[] {
  const known = WITHIN_REACH.get(classModel) ?? new Map<string, readonly Skill[]>();
  WITHIN_REACH.set(classModel, known);
  const key = `${Math.min(...years)} ${Math.max(...years)} ${pitch}`;
  let skills = known.get(key);
  if (!skills)
    known.set(key, (skills = SKILLS.filter((one) => isWithinReach(one, years, pitch, classModel))));
  return skills;
}

function isWithinReach(
  skill: Skill,
  years: readonly number[],
  pitch: Pitch,
  classModel: ClassModel,
): boolean {
  const shift = PITCH_SHIFT[pitch];
  const low = Math.min(...years) + shift - YEARS_BACK;
  const high = Math.max(0, Math.max(...years) + shift);
  if (skill.year < low || skill.year > high) return false;
  const plain = PLAIN_CASE + (skill.shift ?? 0);
  return predictClass(classModel, skill.id, plain - shift).mean >= LEAST_CHANCE;
}

/** Skills in an order in which strands take turns, so that any stretch of it mixes strands. */
function takeTurns(skills: readonly Skill[], rng: Rng): Skill[] {
  const byStrand = new Map<string, Skill[]>();
  for (const skill of rng.shuffle(skills)) {
    const queue = byStrand.get(skill.strand);
    if (queue) queue.push(skill);
    else byStrand.set(skill.strand, [skill]);
  }
  const queues = rng.shuffle([...byStrand.values()]);
  const out: Skill[] = [];
  for (let round = 0; out.length < skills.length; round++) {
    for (const queue of queues) {
      const skill = queue[round];
      if (skill) out.push(skill);
    }
  }
  return out;
}

/** Draws in a row from one skill that bring nothing new, after which it is taken as used up. */
const MOST_MISSES = 12;

/**
 * Different questions that fit the request, one skill after the other in turns, until every skill is used up or
 * `mostDraws` questions were made. Each fits its piece, and none has a slip that could be taken for its own answer.
 * With `repeatTexts`, questions may share a text when their figures differ.
 */
export function* drawQuestions(
  plan: SupplyPlan,
  mostDraws: number,
  repeatTexts = false,
): Generator<SuppliedQuestion, void> {
  const { request } = plan;
  const locale = localeOf(request.locale);
  const root = new Rng(request.seed).fork('questions');
  const seen = new Set<string>();
  // Streams are made when a skill's first turn comes: most chains end before the last skill.
  const sources: { readonly skill: Skill; rng: Rng | null; turn: number; misses: number }[] = plan.skills.map(
    (skill) => ({ skill, rng: null, turn: 0, misses: 0 }),
  );
  let draws = 0;
  for (const question of request.own ? drawOwn(request.own, root.fork('own'), locale) : []) {
    // Own questions with few different answers must leave draws for others.
    if (draws++ >= mostDraws / 2) break;
    const supplied = fits(question, request) ? supply(question, plan) : null;
    if (supplied === null) continue;
    seen.add(foldText(question.text));
    yield supplied;
  }
  while (draws < mostDraws && sources.some((source) => source.misses < MOST_MISSES)) {
    for (const source of sources) {
      if (source.misses >= MOST_MISSES) continue;
      if (draws++ >= mostDraws) return;
      source.rng ??= root.fork(source.skill.id);
      const { templates } = source.skill;
      if (source.turn === 0) source.turn = source.rng.int(0, templates.length - 1);
      const template = templates[source.turn++ % templates.length] ?? templates[0];
      const question = finishQuestion(
        source.skill,
        template.id,
        template.ask({ rng: source.rng, locale }),
        locale,
      );
      const key =
        foldText(question.text) + (repeatTexts && question.figure ? JSON.stringify(question.figure) : '');
      const supplied = seen.has(key) || !fits(question, request) ? null : supply(question, plan);
      if (supplied === null) {
        source.misses++;
        continue;
      }
      seen.add(key);
      source.misses = 0;
      yield supplied;
    }
  }
}

function fits(question: Question, request: SupplyRequest): boolean {
  const { longestText = 120, longestAnswer = 18, suits } = request;
  return (
    question.text.length <= longestText &&
    question.answer.text.length <= longestAnswer &&
    (suits === undefined || suits(question))
  );
}

/** The question with what the composers need to know; null when a slip could be taken for its answer, or success is out of range. */
function supply(question: Question, plan: SupplyPlan): SuppliedQuestion | null {
  const { request, classModel } = plan;
  const locale = localeOf(request.locale);
  const answer = answerMarks(question.answer, locale);
  const others = question.accepts.slice(1).flatMap((text) => answerMarks({ text, value: null }, locale));
  const rightMarks = others.length === 0 ? answer : [...new Set([...answer, ...others])];
  const slipMarks = question.slips.map((slip) => answerMarks(slip, locale));
  if (slipMarks.some((marks) => shareMark(marks, rightMarks))) return null;
  const shift = PITCH_SHIFT[request.pitch ?? 'middle'];
  const chance = predictQuestion(classModel, question, -shift);
  const predicted = Math.round(chance * 10_000) / 10_000;
  const [low, high] = request.success ?? [0, 1];
  const isWished = isOwnId(question.skill) || (request.due?.includes(question.skill) ?? false);
  if (!isWished && (predicted < low || predicted > high)) return null;
  return {
    question,
    predicted,
    common: Math.round(commonDifficulty(question) * 100) / 100,
    rightMarks,
    slipMarks,
  };
}

/** Draws allowed for each question wanted. */
export const DRAWS_PER_QUESTION = 40;

/**
 * `count` questions, all texts different (or, where a skill has only a few texts, all figures) and no two answers alike.
 * "graded" goes from easy to hard, "mixed" in any order.
 */
export function supplyQuestions(
  request: SupplyRequest & { readonly count: number; readonly order?: SupplyOrder },
): SupplyResult<readonly SuppliedQuestion[]> {
  const plan = planSupply(request);
  if (!plan.ok) return plan;
  let best: SuppliedQuestion[] = [];
  for (const repeatTexts of [false, true]) {
    const taken: SuppliedQuestion[] = [];
    const marks = new Set<string>();
    for (const drawn of drawQuestions(plan.value, DRAWS_PER_QUESTION * request.count, repeatTexts)) {
      if (drawn.rightMarks.some((mark) => marks.has(mark))) continue;
      taken.push(drawn);
      for (const mark of drawn.rightMarks) marks.add(mark);
      if (taken.length === request.count) return { ok: true, value: inOrder(taken, request) };
    }
    if (taken.length > best.length) best = taken;
  }
  return { ok: false, error: tooFew(plan.value, best.length, request.count) };
}

function inOrder(
  questions: readonly SuppliedQuestion[],
  request: { readonly seed: number; readonly order?: SupplyOrder },
): readonly SuppliedQuestion[] {
  return request.order === 'mixed'
    ? new Rng(request.seed).fork('order').shuffle(questions)
    : questions.toSorted((a, b) => a.common - b.common);
}

/** The error that tells how many questions there are, and which size or skill to change. */
export function tooFew(plan: SupplyPlan, found: number, wanted: number): SupplyError {
  return {
    code: 'supply.few',
    message: `Of ${wanted} questions whose answers all differ, ${sourceName(plan)} can give only ${found}.`,
    hint: `${found > 0 ? `Ask for ${found} or fewer` : 'Choose other skills'}, or ${wideningHint(plan)}.`,
    mend: wideningMend(plan),
  };
}

/** The skills of a plan in words: “Doubles” and “Number bonds to 10”, or "these 7 skills". */
export function sourceName({ skills, request }: SupplyPlan): string {
  const named =
    skills.length > 3
      ? `these ${skills.length} skills`
      : skills.map((skill) => `“${skill.title}”`).join(' and ');
  return request.own ? `your own questions with ${named}` : named;
}

/** What would give more questions, as the end of a sentence: "add a skill such as …" or "choose other years". */
export function wideningHint(plan: SupplyPlan): string {
  const other = companionSkill(plan);
  return other ? `add a skill such as “${other.title}” (${other.id})` : 'choose other years';
}

/** The skill that {@link wideningHint} names; empty when it names none. */
export function wideningMend(plan: SupplyPlan): SupplyMend {
  const other = companionSkill(plan);
  return other ? { skill: other.id } : {};
}

/** A skill that could join the chosen ones: of the same years, from another strand if possible. */
function companionSkill({ skills, request, classModel }: SupplyPlan): Skill | null {
  if (!request.skills?.length) return null;
  const strands = new Set(skills.map((skill) => skill.strand));
  const within = skillsWithinReach(request.years, request.pitch ?? 'middle', classModel);
  const rng = new Rng(request.seed).fork('companion');
  const fresh = within.filter((skill) => !skills.includes(skill));
  const otherStrand = fresh.filter((skill) => !strands.has(skill.strand));
  const choice = otherStrand.length > 0 ? otherStrand : fresh;
  return choice.length > 0 ? rng.pick(choice) : null;
}
