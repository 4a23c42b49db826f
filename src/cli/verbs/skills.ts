// afterbell skills
import { coverageOf, statementsOf } from '#engine/curriculum/coverage.js';
import { type StandardId, STANDARD_IDS } from '#engine/curriculum/statement.js';
import { STRANDS, strandTitle } from '#engine/curriculum/strands.js';
import { findSkills } from '#engine/skills/find-skills.js';
import { UsageFailure } from '../failure.js';
import { readWord, readYears } from '../options.js';
import { printJson, printText } from '../output.js';

interface Options {
  readonly year?: string;
  readonly strand?: string;
  readonly code?: string;
  readonly text?: string;
  readonly json?: boolean;
}

/** Of all three standards. */
const ALL_STATEMENTS = STANDARD_IDS.flatMap(coverageOf);

export function skills(options: Options): void {
  const strand =
    options.strand === undefined
      ? null
      : readWord(
          '--strand',
          options.strand,
          STRANDS.map(({ id }) => id),
        );
  const years = options.year === undefined ? null : readYears('--year', options.year);
  const find = (words: string) => findSkills({ words, years, strand }, ALL_STATEMENTS);
  const ofCode = options.code === undefined ? null : find(readCode(options.code)).skills;
  const chosen = find(options.text ?? '').skills.filter((skill) => ofCode?.includes(skill) ?? true);
  if (options.json) {
    printJson(
      chosen.map(({ id, title, year, fluentYear, strand, prerequisites }) => ({
        id,
        title,
        year,
        fluentYear,
        strand,
        prerequisites,
        codes: Object.fromEntries(STANDARD_IDS.map((standard) => [standard, codesOf(standard, id)])),
      })),
    );
    return;
  }
  for (const skill of chosen) {
    printText(
      `${skill.id.padEnd(32)} ${skill.year === 0 ? 'F' : skill.year}  ${strandTitle(skill.strand).padEnd(20)} ${skill.title}`,
    );
  }
}

function codesOf(standard: StandardId, skillId: string): string[] {
  return statementsOf(standard, skillId).map(({ code }) => code);
}

/** A code as it stands, or the beginning of one: "AC9M4A02", "3.OA". */
function readCode(text: string): string {
  const code = text.trim();
  const { skills, isByStatement } = findSkills({ words: code, years: null, strand: null }, ALL_STATEMENTS);
  const isCode = /^\S*\d\S*$/.test(code) && !isByStatement && skills.length > 0;
  if (!isCode)
    throw new UsageFailure(
      `--code ${text}: no skill answers to such a code. docs/curriculum-coverage.md lists them all.`,
    );
  return code;
}
