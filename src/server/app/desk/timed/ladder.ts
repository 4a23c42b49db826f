// The ladder of a class: the one that comes with the product, or the teacher's own.
import type { Result } from '#api/problem.js';
import type { Ladder, LadderLevel } from '#api/timed-room.js';
import { LADDER, type LevelPlan } from '#engine/activities/timed/ladder.js';
import { spaceOf } from '#engine/activities/timed/space.js';
import { localeOf, type LocaleId } from '#engine/numbers/locale.js';
import { ownQuestionsIn } from '#engine/own-questions/own-lines.js';
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

export interface ClassLadder extends LadderRecord {
  readonly own: boolean;
  readonly levels: readonly LevelPlan[];
}

/** The ladder that the class uses, easiest first. */
export async function readLadder(services: Services, classId: string): Promise<Result<ClassLadder>> {
  const stored = await services.store.timed.ladder(classId);
  if (!stored.ok) return stored;
  const record = stored.value ?? USUAL_LADDER;
  const levels = record.steps.flatMap((step) => planOf(step) ?? []);
  return { ok: true, value: { ...record, own: stored.value !== null, levels } };
}

/** The level of a step; null for an id, or questions, that this version does not know. */
function planOf(step: LadderStep): LevelPlan | null {
  if (step.kind === 'given') return LADDER.find(({ id }) => id === step.id) ?? null;
  const { id, title, year, room } = step;
  if (step.kind === 'own') return { id, title, year, room, source: { kind: 'skills', skills: step.skills } };
  const questions = ownQuestionsIn(step.lines.join('\n'));
  return questions.length === 0 ? null : { id, title, year, room, source: { kind: 'own', questions } };
}

/** The ladder as screens show it. */
export function toScreenLadder(ladder: ClassLadder): Ladder {
  const { own, levels, steps, minutes, digitsPerMinute, questions } = ladder;
  return {
    own,
    levels: levels.map(({ id, title, year, room }) => {
      const step = steps.find((one) => one.id === id);
      const skills = step?.kind === 'own' ? [...step.skills] : null;
      const lines = step?.kind === 'lines' ? [...step.lines] : null;
      return { id, title, year, room, skills, lines };
    }),
    minutes,
    digitsPerMinute,
    questions,
  };
}

interface LadderWish {
  readonly levels: readonly LadderLevel[];
  readonly minutes: number | null;
  readonly digitsPerMinute: number | null;
  readonly questions: number;
}

/** Puts the teacher's ladder in use, or the usual one back for null. Refuses a level whose skills or questions cannot fill a sheet. */
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

function stepOf({ id, title, year, room, skills, lines }: LadderLevel, locale: LocaleId): Result<LadderStep> {
  const isGiven = LADDER.some((level) => level.id === id);
  if (skills === null && lines === null) {
    return isGiven
      ? { ok: true, value: { kind: 'given', id } }
      : refuse(
          'ladder.level',
          `There is no level “${title}”.`,
          'Choose a level of the list, or make one of skills.',
        );
  }
  if (isGiven)
    return refuse(
      'ladder.level',
      `“${id}” is the name of a level that comes with Afterbell.`,
      'Give yours another id.',
    );
  const made = { id, title, year, room };
  const step: LadderStep =
    lines === null ? { ...made, kind: 'own', skills: skills ?? [] } : { ...made, kind: 'lines', lines };
  const plan = planOf(step);
  if (plan === null)
    return refuse(
      'ladder.lines',
      `No question of “${title}” can be read.`,
      'Mend your questions first, then make the level again.',
    );
  const space = spaceOf(plan, localeOf(locale));
  return space.ok ? { ok: true, value: step } : space;
}

/** Where a child starts whom nobody has placed: the last level of the year before, which is meant to feel easy. Common practice. */
export function startLevel(levels: readonly LevelPlan[], year: number): LevelPlan | null {
  return levels.findLast((level) => level.year < year) ?? levels[0] ?? null;
}
