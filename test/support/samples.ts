// Questions of every skill in all four classrooms: free ones, and ones about numbers of the day of every kind and size.
import { parseDayNumber } from '#engine/numbers/day-number.js';
import { LOCALES, type LocaleId, localeOf } from '#engine/numbers/locale.js';
import { generateQuestions, questionsAbout } from '#engine/questions/generate.js';
import type { Question } from '#engine/questions/question.js';
import { Rng } from '#engine/random/rng.js';
import { SKILLS } from '#engine/skills/map.js';
import type { Skill } from '#engine/skills/skill.js';

export interface Sample {
  readonly skill: Skill;
  readonly locale: LocaleId;
  readonly question: Question;
}

/** A question about a number of the day, and the number as the board writes it. */
export interface DaySample extends Sample {
  readonly day: string;
}

/** "$" stands for the country's own sign, "," for its gap between groups of digits. */
const WHOLE_DAYS = ['1', '8', '11', '24', '96', '100', '508', '1,234', '40,000', '999,999', '1,000,000'];
const OTHER_DAYS = ['0.7', '12.06', '$0.85', '$1', '$12.35', '$100', '3/4', '1 1/2', '12 5/6', '345 1/2'];
const DAYS = [...WHOLE_DAYS, ...OTHER_DAYS];

/** Twenty free questions of every skill in each classroom. */
export function freeSamples(seed: number): Sample[] {
  return LOCALES.flatMap((locale) =>
    SKILLS.flatMap((skill) =>
      generateQuestions(skill, 20, seed, localeOf(locale)).map((question) => ({ skill, locale, question })),
    ),
  );
}

/** Questions of every skill about each of the {@link DAYS} that it takes, in each classroom. */
export function daySamples(seed: number): DaySample[] {
  return LOCALES.flatMap((id) => {
    const locale = localeOf(id);
    return DAYS.flatMap((input) => {
      const written = input.replace('$', locale.currency.symbol).replaceAll(',', locale.groupSeparator);
      const day = parseDayNumber(written, locale);
      if (!day.ok) throw new Error(`${written} (${id}): ${day.error.message}`);
      return SKILLS.flatMap((skill) =>
        questionsAbout(skill, day.value, new Rng(seed).fork(skill.id), locale, 3).map((question) => ({
          skill,
          locale: id,
          question,
          day: day.value.text,
        })),
      );
    });
  });
}
