// afterbell skills
import { STRANDS, strandTitle } from '#engine/curriculum/strands.js';
import { SKILLS } from '#engine/skills/map.js';
import { readWord, readYears } from '../options.js';
import { printJson, printText } from '../output.js';

export function skills(options: { year?: string; strand?: string; json?: boolean }): void {
  const years = options.year === undefined ? null : readYears('--year', options.year);
  const strand =
    options.strand === undefined
      ? null
      : readWord(
          '--strand',
          options.strand,
          STRANDS.map(({ id }) => id),
        );
  const chosen = SKILLS.filter(
    (skill) => (years?.includes(skill.year) ?? true) && (strand === null || skill.strand === strand),
  );
  if (options.json) {
    printJson(
      chosen.map(({ id, title, year, fluentYear, strand, prerequisites, codes }) => ({
        id,
        title,
        year,
        fluentYear,
        strand,
        prerequisites,
        codes,
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
