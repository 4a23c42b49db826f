// What a class's Make room starts from: the skill map, the teacher's own questions, and what the class is due to meet again.
import type { MakeView } from '#api/make.js';
import type { Result } from '#api/problem.js';
import { SKILLS, skillById } from '#engine/skills/map.js';
import type { Services } from '../services.js';
import { dueTopics } from './day-plan.js';
import { ownQuestions } from './own-questions.js';

/** The skill map, and the skills that today's plan says are due. */
export async function makeView(services: Services, classId: string): Promise<Result<MakeView>> {
  const due = await dueTopics(services, classId, services.clock().today);
  if (!due.ok) return due;
  const list = await ownQuestions(services);
  if (!list.ok) return list;
  return {
    ok: true,
    value: {
      own: list.value.text,
      skills: SKILLS.map(({ id, title, strand, year }) => ({ id, title, strand, year })),
      due: due.value.map(({ skill, reason }) => ({
        skillId: skill,
        title: skillById(skill)?.title ?? skill,
        reason,
      })),
    },
  };
}
