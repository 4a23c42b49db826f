// Everything that could stand on a board today: questions about the day's number, and due reviews.
import type { ClassModel } from '../../learning/class-model.js';
import { abilityVariance } from '../../learning/state.js';
import type { DayNumber } from '../../numbers/day-number.js';
import type { Locale } from '../../numbers/locale.js';
import { askOwn, type OwnQuestion } from '../../own-questions/own-question.js';
import { foldText } from '../../questions/equivalence.js';
import { generateQuestions, questionsAbout } from '../../questions/generate.js';
import { commonDifficulty, type Question } from '../../questions/question.js';
import { type Rng } from '../../random/rng.js';
import { skillById } from '../../skills/map.js';
import type { Skill } from '../../skills/skill.js';
import { predictQuestion } from '../predict-question.js';

/** Years above the class's highest that a board may reach into. */
const YEARS_AHEAD = 2;
/** Questions drawn per template. */
const TRIES = 3;

export interface Candidate {
  readonly question: Question;
  /** Predicted share of the class that succeeds, rounded to 0.0001 so that it reads back from JSON unchanged. */
  readonly predicted: number;
  /** Logits on the scale common to all years, rounded to 0.01. */
  readonly common: number;
  /** Neighbours on the ladder must differ in both: the printed answer, folded, and its value (the text again for words). */
  readonly answerText: string;
  readonly answerValue: string;
  /** Skills with the same family feel alike to a child. */
  readonly family: string;
  /** The first three words, numbers alike; empty for bare sums. Neighbours had better differ. */
  readonly opening: string;
  /** How well the class is known at this skill: 0 (not at all) to 1. */
  readonly known: number;
  readonly isDue: boolean;
  /** Lines it takes on the display beyond the first. */
  readonly extraLines: number;
  /** The question names the answers to choose from. */
  readonly isOffered: boolean;
  /** The answer takes no work once the rule is seen: 0, 1, or the number itself. */
  readonly isEcho: boolean;
}

export interface CandidateRequest {
  readonly number: DayNumber;
  readonly years: readonly number[];
  readonly locale: Locale;
  readonly skills: readonly Skill[];
  readonly classModel: ClassModel;
  readonly due: ReadonlySet<string>;
  /** Texts (folded) that must not come. */
  readonly avoid: ReadonlySet<string>;
  /** Skills that may also be asked without the day's number: only where too little can be asked about it. */
  readonly free: ReadonlySet<string>;
  /** A teacher's own questions, wanted before all others. Those that say nothing of the day's number stay away. */
  readonly own?: readonly OwnQuestion[];
}

/** All candidates, in the order of the skill map; no two have the same text, nor ask the same sum unless it is due. */
export function gatherCandidates(request: CandidateRequest, rng: Rng): Candidate[] {
  const out = new Map<string, Candidate>();
  const sums = new Set<string>();
  const { number, locale, avoid } = request;
  for (const own of request.own ?? []) {
    const asked = askOwn(own, number, locale);
    const question = asked.ok ? asked.value : null;
    if (!question?.usesNumber || out.has(question.text) || avoid.has(foldText(question.text))) continue;
    const sum = sumOf(question);
    if (sum !== null) sums.add(sum);
    out.set(question.text, makeCandidate(question, request.classModel, false));
  }
  for (const skill of request.skills) {
    if (!isInReach(skill, request.years) || !request.classModel.space.indexOf.has(skill.id)) continue;
    const isDue = request.due.has(skill.id);
    const about = questionsAbout(skill, request.number, rng.fork(skill.id), request.locale, TRIES);
    const wantsFree = request.free.has(skill.id) || (isDue && about.length === 0);
    const free = wantsFree
      ? generateQuestions(skill, TRIES, rng.fork(skill.id).int(1, 1e9), request.locale)
      : [];
    for (const question of [...about, ...free]) {
      if (out.has(question.text) || (request.avoid.size > 0 && request.avoid.has(foldText(question.text))))
        continue;
      const sum = sumOf(question);
      if (sum !== null && sums.has(sum) && !isDue) continue;
      if (sum !== null) sums.add(sum);
      out.set(question.text, makeCandidate(question, request.classModel, isDue));
    }
  }
  return [...out.values()];
}

/** The sum that a question comes to, the same for 47 + 38 and 38 + 47; null where no arithmetic gives the answer. */
function sumOf({ expression }: Question): string | null {
  const parts = expression === null ? null : /^([\d./]+) ([+*]) ([\d./]+)$/.exec(expression);
  return parts ? [parts[1], parts[3]].toSorted().join(` ${parts[2]} `) : expression;
}

/** True for skills that a board for these class years may ask. */
export function isInReach(skill: Pick<Skill, 'year'>, years: readonly number[]): boolean {
  return skill.year <= Math.max(...years) + YEARS_AHEAD;
}

/** A question with what the composer needs to know about it. */
export function makeCandidate(question: Question, classModel: ClassModel, isDue: boolean): Candidate {
  const answerText = foldText(question.answer.text);
  return {
    question,
    predicted: Math.round(predictQuestion(classModel, question) * 10_000) / 10_000,
    common: Math.round(commonDifficulty(question) * 100) / 100,
    answerText,
    answerValue: question.answer.value ?? answerText,
    family: skillById(question.skill)?.family ?? question.skill.split('.').slice(0, 2).join('.'),
    opening: openingOf(question.text),
    known: knownShare(classModel, question.skill),
    isDue,
    extraLines: Math.ceil(question.text.length / LINE_LENGTH) - 1 + (question.figure ? FIGURE_LINES : 0),
    isOffered: OFFERED.test(question.text),
    isEcho: isEcho(question),
  };
}

/** Letters to a line of the display at a size that the back row reads, in one of two columns. */
const LINE_LENGTH = 22;
const FIGURE_LINES = 2;
/** Questions that name their answers: "… odd or even?", "… yes or no?". */
const OFFERED = /\bor\b[^?]*\?$/;

/** True when the answer is 0, 1, or the only other number in the question again. */
function isEcho({ answer, text }: Question): boolean {
  if (answer.value === null || OFFERED.test(text)) return false;
  return answer.value === '0' || answer.value === '1' || (/[×÷%]/.test(text) && text.includes(answer.text));
}

/** "which is greater", "what is #"; empty for a text that starts with a number, a sign or a gap. */
function openingOf(text: string): string {
  if (!/^[A-Za-z]/.test(text)) return '';
  return text
    .replace(/\S*\d\S*/g, '#')
    .split(' ')
    .slice(0, 3)
    .join(' ')
    .toLowerCase();
}

const KNOWN = new WeakMap<ClassModel, Map<string, number>>();

/** 1 - mean variance over prior variance at a skill, kept per model. */
function knownShare(model: ClassModel, skillId: string): number {
  let shares = KNOWN.get(model);
  if (!shares) KNOWN.set(model, (shares = new Map()));
  const cached = shares.get(skillId);
  if (cached !== undefined) return cached;
  const skill = model.space.indexOf.get(skillId);
  let share = 0;
  if (skill !== undefined && model.children.length > 0) {
    const prior = model.space.covariance[skill * model.space.skills.length + skill] as number;
    const now =
      model.children.reduce((sum, child) => sum + abilityVariance(child.state, skill), 0) /
      model.children.length;
    share = Math.min(1, Math.max(0, 1 - now / prior));
  }
  shares.set(skillId, share);
  return share;
}
