// What a class's Make room starts from: the skill map, and what the class is due to meet again.
import type { MakeView } from '#api/make.js';
import type { Result } from '#api/problem.js';
import { addDays } from '#engine/numbers/calendar.js';
import { dueSkills, exposuresOf } from '#engine/planning/due.js';
import { SKILLS, skillById } from '#engine/skills/map.js';
import type { Services } from '../services.js';
import { modelOn, readClassState } from './class-state.js';

/** Boards of this many past days count as met by the whole class, marked or not. */
const EXPOSED_DAYS = 56;
/** More due skills than this no set can hold. */
const MOST_DUE = 40;

/** The skill map and the due skills of a class, as it stands today. */
export async function makeView(services: Services, classId: string): Promise<Result<MakeView>> {
  const { today } = services.clock();
  const state = await readClassState(services, classId, today);
  if (!state.ok) return state;
  const recent = await services.store.sheets.list({
    classId,
    from: addDays(today, -EXPOSED_DAYS),
    to: addDays(today, -1),
  });
  if (!recent.ok) return recent;
  const exposures = exposuresOf(
    recent.value.flatMap(({ date, content }) => (date ? [{ on: date, board: content }] : [])),
  );
  const due = dueSkills(modelOn(state.value, today), today, exposures).slice(0, MOST_DUE);
  return {
    ok: true,
    value: {
      skills: SKILLS.map(({ id, title, strand, year }) => ({ id, title, strand, year })),
      due: due.map(({ skill, reason }) => ({
        skillId: skill,
        title: skillById(skill)?.title ?? skill,
        reason,
      })),
    },
  };
}
