// Which skills are due: practised or taught, and by now likely forgotten by too many.
import type { Board } from '../activities/board/board.js';
import type { ClassModel } from '../learning/class-model.js';
import { type Memory, remember, retrievability } from '../learning/forgetting.js';
import { classSummary } from '../learning/summary.js';
import { dayCount } from '../numbers/calendar.js';

/** The whole class met a skill: it was taught, or stood on a board that nobody marked. */
export interface Exposure {
  readonly skill: string;
  /** ISO date. */
  readonly on: string;
}

export interface DueSkill {
  readonly skill: string;
  /** Predicted share of it that the class still remembers, 0 to 1. */
  readonly remembered: number;
  /** Days since anyone last met it. */
  readonly sinceDays: number;
  /** "Last met 24 days ago; about three in four may still have it." */
  readonly reason: string;
}

/** A skill is due when the class is predicted to remember less than this of it. FSRS aims at 0.9 by default; a board
 * with a dozen rungs a day cannot hold some 90 skills so tightly. */
export const REMEMBERED_FLOOR = 0.8;
/** Below this predicted success of the class a skill wants teaching, not a review. */
const LEAST_CHANCE = 0.4;
/** Nothing returns sooner than this many days. */
const LEAST_GAP_DAYS = 3;

/**
 * Skills due on a date, most urgent first. Each practice lengthens a skill's memory (forgetting.ts), so returns come at
 * growing gaps by themselves. A child's own answer counts before what the whole class met on the same day or earlier.
 */
export function dueSkills(
  classModel: ClassModel,
  date: string,
  exposures: readonly Exposure[] = [],
): readonly DueSkill[] {
  const today = dayCount(date);
  const shared = sharedMemories(exposures, date);
  const summaries = classSummary(classModel);
  const out: DueSkill[] = [];
  classModel.space.skills.forEach((skill, index) => {
    const ours = shared.get(skill.id) ?? null;
    const recalls: number[] = [];
    let lastDay = ours?.day ?? -Infinity;
    for (const child of classModel.children) {
      const own = child.state.memories[index] ?? null;
      if (own) lastDay = Math.max(lastDay, own.day);
      if (own || ours) recalls.push(recallOfChild(own, ours, today));
    }
    if (classModel.children.length === 0 && ours) recalls.push(recallOf(ours, today));
    if (recalls.length === 0) return;
    const remembered = recalls.reduce((sum, recall) => sum + recall, 0) / recalls.length;
    const sinceDays = today - lastDay;
    const chance = classModel.children.length === 0 ? 1 : (summaries[index]?.chance ?? 0);
    if (remembered >= REMEMBERED_FLOOR || sinceDays < LEAST_GAP_DAYS || chance < LEAST_CHANCE) return;
    out.push({ skill: skill.id, remembered, sinceDays, reason: reasonFor(sinceDays, remembered) });
  });
  return out.sort((a, b) => a.remembered - b.remembered || (a.skill < b.skill ? -1 : 1));
}

/** A child's own latest answer tells more than what the class met that day; before that the better memory counts. */
function recallOfChild(own: Memory | null, ours: Memory | null, today: number): number {
  if (own && (!ours || own.day >= ours.day)) return recallOf(own, today);
  return Math.max(recallOf(own, today), recallOf(ours, today));
}

function recallOf(memory: Memory | null, today: number): number {
  return memory ? retrievability(today - memory.day, memory.stabilityDays) : 0;
}

/** What a class met on boards that were shown, marked or not: the rungs that at least half of it were meant to reach. */
export function exposuresOf(
  boards: readonly { readonly on: string; readonly board: Board }[],
): readonly Exposure[] {
  return boards.flatMap(({ on, board }) =>
    board.rungs.filter((rung) => rung.predicted >= 0.5).map((rung) => ({ skill: rung.question.skill, on })),
  );
}

/** One memory per skill that the class met together; several meetings on one day count once. */
function sharedMemories(exposures: readonly Exposure[], date: string): ReadonlyMap<string, Memory> {
  const memories = new Map<string, Memory>();
  const ordered = exposures
    .filter((one) => one.on <= date)
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  for (const { skill, on } of ordered) {
    const before = memories.get(skill) ?? null;
    const day = dayCount(on);
    if (before?.day !== day) memories.set(skill, remember(before, 3, day));
  }
  return memories;
}

function reasonFor(sinceDays: number, remembered: number): string {
  const share =
    remembered >= 0.72
      ? 'about three in four'
      : remembered >= 0.6
        ? 'about two in three'
        : remembered >= 0.45
          ? 'about half'
          : 'less than half';
  return `Last met ${sinceDays} days ago; ${share} may still have it.`;
}
