// From typed wrong answers to what a child may be doing: a prompt to look at the working, never a diagnosis.
import { daysBetween, parseIsoDate } from '../numbers/calendar.js';
import { misconceptionOf } from '../questions/misconceptions.js';
import type { Answered } from './update.js';

/**
 * Rates of the evidence (common practice; children apply a faulty rule on and off, so no single answer settles it).
 * `Holding` is a child that has the misconception, `other` one that has not.
 */
export const EVIDENCE_RATES = {
  prior: 0.1,
  /** The typed answer is the one that the misconception predicts. */
  shownHolding: 0.6,
  /** Of the wrong answers of a child without it, so many are that very answer by chance. */
  shownByChance: 0.12,
  /** Added to the chance for every further misconception that predicts the same answer. */
  shared: 0.15,
  /** The question could have shown it, and the answer was right. */
  rightHolding: 0.25,
  /** How often a child without it is right, where the question's own prediction is not known. */
  rightOther: 0.75,
  /** Evidence counts half after this many days, since children learn. */
  halfLifeDays: 90,
} as const;

/** A misconception is named from this probability and this many fitting answers to different questions. */
export const NAMED_FROM = { probability: 0.78, questions: 2 } as const;

export interface MisconceptionEvidence {
  readonly misconception: string;
  /** How probable it is that the child works this way at present, 0 to 1, by the rates above. */
  readonly probability: number;
  /** Answers that fit it, and answers (these included) that could have shown it. */
  readonly fitting: number;
  readonly chances: number;
  /** Ids of the questions with fitting answers, oldest first. */
  readonly questionIds: readonly string[];
  /** True when the evidence is enough to say something. */
  readonly isNamed: boolean;
  /** What to tell the teacher: "may", and a prompt to look. Null while it is not named or the id is unknown. */
  readonly sentence: string | null;
}

/**
 * What one child's answers say about misconceptions, most probable first: odds are multiplied by the ratio of the rates
 * for every answer that could have shown one, older answers counting less. `on` is the day looked from (ISO); the day
 * of the last answer when left out. Misconceptions that no answer fitted are left out.
 */
export function misconceptionEvidence(
  answers: readonly Answered[],
  on?: string,
): readonly MisconceptionEvidence[] {
  const dated = answers
    .filter((answer) => parseIsoDate(answer.on) !== null && (on === undefined || answer.on <= on))
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  const today = on ?? dated[dated.length - 1]?.on ?? '';
  const ids = new Set(dated.flatMap((answer) => (answer.right ? [] : answer.slips)));
  return [...ids]
    .map((id) => weigh(id, dated, today))
    .sort((a, b) => b.probability - a.probability || (a.misconception < b.misconception ? -1 : 1));
}

function weigh(id: string, answers: readonly Answered[], today: string): MisconceptionEvidence {
  let logOdds = Math.log(EVIDENCE_RATES.prior / (1 - EVIDENCE_RATES.prior));
  let chances = 0;
  const fitting: string[] = [];
  for (const answer of answers) {
    const shows = !answer.right && answer.slips.includes(id);
    if (!shows && !answer.chances?.includes(id)) continue;
    chances++;
    if (shows) fitting.push(answer.questionId);
    const fading = 0.5 ** (daysBetween(answer.on, today) / EVIDENCE_RATES.halfLifeDays);
    logOdds += fading * logRatio(answer, shows);
  }
  const probability = 1 / (1 + Math.exp(-logOdds));
  const isNamed = probability >= NAMED_FROM.probability && new Set(fitting).size >= NAMED_FROM.questions;
  return {
    misconception: id,
    probability,
    fitting: fitting.length,
    chances,
    questionIds: [...new Set(fitting)],
    isNamed,
    sentence: isNamed ? sentenceFor(id, fitting.length, chances) : null,
  };
}

/** Hardly any question is so easy or so hard that nobody, or everybody, fails it. */
const SUREST = 0.98;

/**
 * How an answer moves the log-odds. On a hard question a wrong answer says little: children without the misconception
 * are wrong there too, and now and then in just this way.
 */
function logRatio(answer: Answered, shows: boolean): number {
  const { shownHolding, shownByChance, shared, rightHolding, rightOther } = EVIDENCE_RATES;
  const right = Math.min(SUREST, Math.max(1 - SUREST, answer.expected ?? rightOther));
  if (shows) {
    const byChance = (1 - right) * shownByChance + shared * (answer.slips.length - 1);
    return Math.log(shownHolding / byChance);
  }
  if (answer.right) return Math.log(rightHolding / right);
  return Math.log((1 - shownHolding - rightHolding) / ((1 - right) * (1 - shownByChance)));
}

function sentenceFor(id: string, fitting: number, chances: number): string | null {
  const entry = misconceptionOf(id);
  if (!entry) return null;
  const count = chances > fitting ? `${fitting} of ${chances} answers fit` : `${fitting} answers fit`;
  return `It may be that this child ${entry.does} (${count}). Look at the working, or ask, before you decide.`;
}

export interface MisconceptionGroup {
  readonly misconception: string;
  /** Ids of the children for whom it is named, surest first. */
  readonly children: readonly string[];
}

/** Children who may share a misconception, the largest group first: whom to bring together for one look. */
export function misconceptionGroups(
  children: readonly { readonly id: string; readonly answers: readonly Answered[] }[],
  on?: string,
): readonly MisconceptionGroup[] {
  const groups = new Map<string, { id: string; probability: number }[]>();
  for (const child of children) {
    for (const evidence of misconceptionEvidence(child.answers, on)) {
      if (!evidence.isNamed) continue;
      const group = groups.get(evidence.misconception) ?? [];
      groups.set(evidence.misconception, [...group, { id: child.id, probability: evidence.probability }]);
    }
  }
  return [...groups]
    .map(([misconception, list]) => ({
      misconception,
      children: list.sort((a, b) => b.probability - a.probability).map((child) => child.id),
    }))
    .sort((a, b) => b.children.length - a.children.length || (a.misconception < b.misconception ? -1 : 1));
}
