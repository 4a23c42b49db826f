// afterbell questions
import { practiceQuestions } from '#engine/questions/practice.js';
import { skillById } from '#engine/skills/map.js';
import { UsageFailure } from '../failure.js';
import { readLocale, readNames, readWhole } from '../options.js';
import { printJson, printText } from '../output.js';

export function questions(options: {
  skill: string;
  count: string;
  seed: string;
  locale: string;
  json?: boolean;
}): void {
  const skills = readNames('--skill', options.skill).map((id) => {
    const skill = skillById(id);
    if (!skill)
      throw new UsageFailure(`--skill ${id}: there is no such skill. "afterbell skills" lists them all.`);
    return skill;
  });
  const count = readWhole('--count', options.count, 1, 100_000);
  const seed = readWhole('--seed', options.seed, 0, 2_147_483_647);
  const items = practiceQuestions(skills, count, seed, readLocale(options.locale));
  if (options.json) printJson({ items });
  else for (const { text, answer } of items) printText(`${text}\t${answer.text}`);
}
