// afterbell questions
import { parseDayNumber } from '#engine/numbers/day-number.js';
import type { Locale } from '#engine/numbers/locale.js';
import { askOwn } from '#engine/own-questions/own-question.js';
import { practiceQuestions } from '#engine/questions/practice.js';
import type { Question } from '#engine/questions/question.js';
import { skillById } from '#engine/skills/map.js';
import { UsageFailure, valueOf } from '../failure.js';
import { readLocale, readNames, readWhole } from '../options.js';
import { readOwnFile } from '../own-list.js';
import { note, printJson, printText } from '../output.js';

interface Options {
  readonly skill?: string;
  readonly own?: string;
  readonly number?: string;
  readonly count: string;
  readonly seed: string;
  readonly locale: string;
  readonly json?: boolean;
}

export function questions(options: Options): void {
  const locale = readLocale(options.locale);
  const items = options.own === undefined ? ofSkills(options, locale) : ofOwn(options.own, options, locale);
  if (options.json) printJson({ items });
  else for (const { text, answer } of items) printText(`${text}\t${answer.text}`);
}

function ofSkills(options: Options, locale: Locale): Question[] {
  if (options.skill === undefined)
    throw new UsageFailure('Name a skill with --skill, or a list of your own questions with --own.');
  const skills = readNames('--skill', options.skill).map((id) => {
    const skill = skillById(id);
    if (!skill)
      throw new UsageFailure(`--skill ${id}: there is no such skill. "afterbell skills" lists them all.`);
    return skill;
  });
  const count = readWhole('--count', options.count, 1, 100_000);
  const seed = readWhole('--seed', options.seed, 0, 2_147_483_647);
  return practiceQuestions(skills, count, seed, locale);
}

/** Each question of the list that suits the number; what does not is told on stderr. */
function ofOwn(file: string, options: Options, locale: Locale): Question[] {
  if (options.skill !== undefined) throw new UsageFailure('Give either --skill or --own, not both.');
  if (options.number === undefined)
    throw new UsageFailure('--own needs the number that the questions are about: --number 47.');
  const day = valueOf(parseDayNumber(options.number, locale));
  const items: Question[] = [];
  for (const { row, question } of readOwnFile(file)) {
    const asked = askOwn(question, day, locale);
    if (!asked.ok) note(`Row ${row} is left out: ${asked.message}`);
    else if (asked.value === null) note(`Row ${row} is left out: it does not suit ${day.text}.`);
    else items.push(asked.value);
  }
  return items;
}
