// The ladder of a class: the one that comes with the product, or the teacher's own.
import type { Result } from '#api/problem.js';
import type { Ladder, LadderLevel } from '#api/timed-room.js';
import { LADDER, type LevelPlan } from '#engine/activities/timed/ladder.js';
import { spaceOf } from '#engine/activities/timed/space.js';
import { localeOf, type LocaleId } from '#engine/numbers/locale.js';
import type { LadderRecord, LadderStep } from '#store/records.js';
import { refuse } from '../../problems.js';
import type { Services } from '../../services.js';
import { readSettings } from '../settings.js';

/** Thirty questions a side. */
const USUAL_QUESTIONS = 60;
const USUAL_LADDER: LadderRecord = {
  steps: LADDER.map(({ id }) => ({ kind: 'given', id })),
  minutes: null,
  digitsPerMinute: null,
  questions: USUAL_QUESTIONS,
};

export interface ClassLadder extends Omit<LadderRecord, 'steps'> {
  readonly own: boolean;
  readonly levels: readonly LevelPlan[];
}

/** The ladder that the class uses, easiest first. */
export async function readLadder(services: Services, classId: string): Promise<Result<ClassLadder>> {
  const stored = await services.store.timed.ladder(classId);
  if (!stored.ok) return stored;
  const { steps, ...rest } = stored.value ?? USUAL_LADDER;
  return {
    ok: true,
    value: { ...rest, own: stored.value !== null, levels: steps.flatMap((step) => planOf(step) ?? []) },
  };
}

/** A level that comes with the product by its id, or one of skills; null for an id this version does not know. */
function planOf(step: LadderStep): LevelPlan | null {
  if (step.kind === 'given') return LADDER.find(({ id }) => id === step.id) ?? null;
  const { id, title, year, room, skills } = step;
  return { id, title, year, room, source: { kind: 'skills', skills } };
}

/** The ladder as screens show it. */
export function toScreenLadder({ own, levels, minutes, digitsPerMinute, questions }: ClassLadder): Ladder {
  return { own, levels: levels.map(toScreenLevel), minutes, digitsPerMinute, questions };
}

function toScreenLevel({ id, title, year, room, source }: LevelPlan): LadderLevel {
  return { id, title, year, room, skills: source.kind === 'skills' ? [...source.skills] : null };
}

interface LadderWish {
  readonly levels: readonly LadderLevel[];
  readonly minutes: number | null;
  readonly digitsPerMinute: number | null;
  readonly questions: number;
}

/** Puts the teacher's ladder in use, or the usual one back for null. Refuses a level whose skills cannot fill a sheet. */
export async function changeLadder(
  services: Services,
  classId: string,
  wish: LadderWish | null,
): Promise<Result<null>> {
  if (wish === null) return services.store.timed.putLadder(classId, null);
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  const twice = wish.levels.find(({ id }, at) => wish.levels.findIndex((other) => other.id === id) !== at);
  if (twice)
    return refuse('ladder.twice', `“${twice.title}” is on the ladder twice.`, 'Take one of the two away.');
  const steps: LadderStep[] = [];
  for (const level of wish.levels) {
    const step = stepOf(level, settings.value.locale);
    if (!step.ok) return step;
    steps.push(step.value);
  }
  const { minutes, digitsPerMinute, questions } = wish;
  return services.store.timed.putLadder(classId, { steps, minutes, digitsPerMinute, questions });
}

function stepOf({ id, title, year, room, skills }: LadderLevel, locale: LocaleId): Result<LadderStep> {
  if (skills === null) {
    return LADDER.some((level) => level.id === id)
      ? { ok: true, value: { kind: 'given', id } }
      : refuse(
          'ladder.level',
          `There is no level “${title}”.`,
          'Choose a level of the list, or make one of skills.',
        );
  }
  if (LADDER.some((level) => level.id === id))
    return refuse(
      'ladder.level',
      `“${id}” is the name of a level that comes with Afterbell.`,
      'Give yours another id.',
    );
  const plan: LevelPlan = { id, title, year, room, source: { kind: 'skills', skills } };
  const space = spaceOf(plan, localeOf(locale));
  if (!space.ok) return space;
  return { ok: true, value: { kind: 'own', id, title, year, room, skills } };
}

/** Where a child starts whom nobody has placed: the last level of the year before, which is meant to feel easy. Common practice. */
export function startLevel(levels: readonly LevelPlan[], year: number): LevelPlan | null {
  return levels.findLast((level) => level.year < year) ?? levels[0] ?? null;
}
