// docs/curriculum-coverage.md: every statement of the three standards, with the skills that ask it or the reason why none does.
import { countCoverage, coverageOf, isNumberOrAlgebra } from '#engine/curriculum/coverage.js';
import { STANDARDS } from '#engine/curriculum/standards.js';
import { yearName } from '#engine/curriculum/years.js';
import { SKILLS, skillById } from '#engine/skills/map.js';

const LOCALE = { ac9: 'en-AU', england: 'en-GB', ccss: 'en-US' };

const cell = (text) => text.replaceAll('|', '\\|');
const share = ({ statements, exercised }) =>
  `${exercised} of ${statements}, ${((100 * exercised) / statements).toFixed(1)} %`;

function answerTo({ skills, leftOut, reason }) {
  if (skills.length > 0) {
    const titles = skills.map((id) => skillById(id)?.title ?? id).join('; ');
    return [titles, leftOut ?? ''];
  }
  return ['none', reason ?? 'No skill asks it yet.'];
}

function standardPart({ id, title, version, licence, notes }) {
  const rows = coverageOf(id);
  const years = [...new Set(rows.map(({ statement }) => statement.year))];
  return [
    `## ${title}`,
    '',
    `Version: ${version}. ${licence}`,
    '',
    ...notes.map((note) => `- ${note}`),
    '',
    ...years.flatMap((year) => [
      `### ${yearName(year, LOCALE[id])}`,
      '',
      '| code | what it says, in our words | skills that ask it | left out, or why not |',
      '| --- | --- | --- | --- |',
      ...rows
        .filter(({ statement }) => statement.year === year)
        .map(
          (row) =>
            `| ${[row.statement.code, row.statement.summary, ...answerTo(row)].map(cell).join(' | ')} |`,
        ),
      '',
    ]),
  ];
}

/** The page, by its path. */
export function coveragePages() {
  const table = STANDARDS.map(({ id, name }) => {
    const rows = coverageOf(id);
    const all = countCoverage(rows);
    const core = countCoverage(rows.filter(({ statement }) => isNumberOrAlgebra(id, statement)));
    return `| ${name} | ${share(all)} | ${all.inPart} | **${share(core)}** | ${core.inPart} |`;
  });
  const page = [
    '# Curriculum coverage',
    '',
    '<!-- Made by scripts/coverage.mjs from the skill map and the standards; changes by hand are lost. -->',
    '',
    `Which statements of three published standards the ${SKILLS.length} skills ask, one by one. A statement counts as asked when questions of`,
    'a skill put it to the child; where a short question can only take part of it, the last column says what is left to the rest',
    'of the lesson. Where no skill asks it, the last column says why. The summaries are our own words, and the years each',
    'standard’s own.',
    '',
    '| standard | asked, all strands | of these in part | number and algebra, Years 1 to 6 | of these in part |',
    '| --- | --- | --- | --- | --- |',
    ...table,
    '',
    'What to make of it: a warm-up keeps what was taught, it does not teach it. The whole of a statement is the work of lessons.',
    'Which skill comes before which is drawn in [the skill map](skill-map.md).',
    '',
    ...STANDARDS.flatMap(standardPart),
  ];
  return new Map([['docs/curriculum-coverage.md', `${page.join('\n').trimEnd()}\n`]]);
}
