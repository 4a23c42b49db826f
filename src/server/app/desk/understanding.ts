// What the marks say about a class and each child, always with how sure it is and the answers it rests on.
import type { Result } from '#api/problem.js';
import type {
  ChildStanding,
  EvidenceView,
  SkillInfo,
  SkillStanding,
  UnderstandingView,
} from '#api/understanding.js';
import { misconceptionEvidence } from '#engine/learning/diagnosis.js';
import { explainSkill } from '#engine/learning/explain.js';
import { logistic } from '#engine/learning/logistic.js';
import { classSummary, skillSummaries, type SkillSummary } from '#engine/learning/summary.js';
import { localeOf } from '#engine/numbers/locale.js';
import { PLAIN_CASE } from '#engine/questions/difficulty.js';
import { misconceptionOf } from '#engine/questions/misconceptions.js';
import { checkAnswer } from '#engine/questions/check-answer.js';
import { SKILLS, skillById } from '#engine/skills/map.js';
import { refuse } from '../problems.js';
import type { Services } from '../services.js';
import { modelOn, readClassState, recordOf } from './class-state.js';
import { sentencesFor } from './sentences.js';

/** The class as it stands after every mark up to and including today. */
export async function understandingView(
  services: Services,
  classId: string,
): Promise<Result<UnderstandingView>> {
  const { today } = services.clock();
  const state = await readClassState(services, classId, today);
  if (!state.ok) return state;
  const model = modelOn(state.value, today);
  const reachable = Math.max(...state.value.schoolClass.years) + 1;
  const met = new Set([...state.value.answers.values()].flat().map(({ skill }) => skill));
  const skills: SkillInfo[] = SKILLS.filter(({ id, year }) => met.has(id) || year <= reachable).map(
    ({ id, title, strand, year }) => ({ id, title, strand, year }),
  );
  const children: ChildStanding[] = state.value.children.map((child) => {
    const answers = state.value.answers.get(child.id) ?? [];
    const findings = misconceptionEvidence(answers, today)
      .filter(({ isNamed }) => isNamed)
      .flatMap(({ misconception, fitting, chances, questionIds }) => {
        const known = misconceptionOf(misconception);
        if (!known) return [];
        const examples = answers
          .filter(({ questionId, right }) => !right && questionIds.includes(questionId))
          .slice(-3);
        return [
          {
            misconception,
            does: known.does,
            help: known.help,
            seen: fitting,
            chances,
            examples: examples.map(({ question, typed }) => `${question.text} → ${typed}`),
          },
        ];
      });
    return {
      childId: child.id,
      shownAs: child.shownAs,
      year: child.year,
      answers: answers.length,
      skills: skillSummaries(model, child.id).map(toStanding),
      findings,
    };
  });
  const boards = new Set([...state.value.answers.values()].flat().map(({ on }) => on));
  const standings = classSummary(model);
  return {
    ok: true,
    value: {
      skills,
      class: standings.map(({ skill, chance, counts, needTeaching }) => ({
        skillId: skill,
        chance,
        counts,
        needTeaching: [...needTeaching],
        answers: children.reduce(
          (sum, child) => sum + (child.skills.find(({ skillId }) => skillId === skill)?.answers ?? 0),
          0,
        ),
      })),
      children,
      sentences: sentencesFor(children, standings, state.value.schoolClass.years),
      markedBoards: boards.size,
    },
  };
}

function toStanding({ skill, standing, chance, low, high, answers }: SkillSummary): SkillStanding {
  return { skillId: skill, state: standing, chance, low, high, answers };
}

/** The answers behind one child's standing at one skill, newest first, with what each of them moved. */
export async function evidenceView(
  services: Services,
  childId: string,
  skillId: string,
): Promise<Result<EvidenceView>> {
  const skill = skillById(skillId);
  if (!skill) return refuse('skill.unknown', `There is no skill “${skillId}”.`, 'Choose one from the list.');
  const stored = await services.store.children.get(childId);
  if (!stored.ok) return stored;
  const { today } = services.clock();
  const state = await readClassState(services, stored.value.classId, today);
  if (!state.ok) return state;
  const child = state.value.children.find(({ id }) => id === childId);
  if (!child) return refuse('child.missing', 'This child is no longer in the class.', 'Reload the page.');
  const summary = skillSummaries(modelOn(state.value, today, [child]), childId).find(
    (one) => one.skill === skillId,
  );
  const explanation = explainSkill(
    recordOf(state.value, child),
    skillId,
    today,
    SKILLS,
    state.value.schoolYear,
  );
  if (!summary || !explanation)
    return refuse('skill.unknown', `Nothing is known about “${skill.title}” yet.`, 'Mark a board first.');
  const records = state.value.answers.get(childId) ?? [];
  const locale = localeOf(state.value.settings.locale);
  let ability = explanation.start;
  const answers: EvidenceView['answers'] = [];
  for (const change of explanation.changes) {
    const before = logistic(ability - PLAIN_CASE);
    ability += change.by;
    const moved = 100 * (logistic(ability - PLAIN_CASE) - before);
    const record =
      change.questionId === null
        ? undefined
        : records.find(({ questionId }) => questionId === change.questionId);
    if (!record || (change.askedSkill !== skillId && Math.abs(moved) < 1)) continue;
    const slips =
      record.state === 'wrong' && record.typed !== ''
        ? checkAnswer(record.question, record.typed, locale).slips
        : [];
    answers.push({
      date: record.on,
      isOwn: change.askedSkill === skillId,
      text: record.question.text,
      answer: record.question.answer.text,
      state: record.state,
      typed: record.typed,
      findings: slips.flatMap(({ misconception }) => {
        const known = misconceptionOf(misconception);
        return known ? [{ misconception, does: known.does, help: known.help }] : [];
      }),
      moved: Math.round(moved),
    });
  }
  return {
    ok: true,
    value: {
      skill: { id: skill.id, title: skill.title, strand: skill.strand, year: skill.year },
      standing: toStanding(summary),
      sentence: evidenceSentence(child.shownAs, summary),
      answers: answers.reverse(),
    },
  };
}

function evidenceSentence(name: string, { chance, low, high, answers }: SkillSummary): string {
  const percent = (share: number) => Math.round(share * 100);
  const basis =
    answers === 0
      ? 'No question of this skill has been answered yet; this is told from the year level and from the skills nearest to it'
      : `This rests on ${answers} ${answers === 1 ? 'answer' : 'answers'} to this skill, and on those to the skills nearest to it`;
  return `${name} would get about ${Math.round(chance * 10)} in 10 plain questions right, most likely between ${percent(low)} and ${percent(high)} in 100. ${basis}.`;
}
