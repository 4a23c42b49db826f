// afterbell questions
import { generateQuestions } from '#engine/questions/generate.js';
import { skillById } from '#engine/skills/map.js';
import { UsageFailure } from '../failure.js';
import { readLocale, readWhole } from '../options.js';
import { printJson, printText } from '../output.js';

export function questions(options: {
  skill: string;
  count: string;
  seed: string;
  locale: string;
  json?: boolean;
}): void {
  const skill = skillById(options.skill);
  if (!skill)
    throw new UsageFailure(
      `--skill ${options.skill}: there is no such skill. "afterbell skills" lists them all.`,
    );
  const count = readWhole('--count', options.count, 1, 100_000);
  const seed = readWhole('--seed', options.seed, 0, 2_147_483_647);
  const items = generateQuestions(skill, count, seed, readLocale(options.locale));
  if (options.json) printJson({ items });
  else for (const { text, answer } of items) printText(`${text}\t${answer.text}`);
}
