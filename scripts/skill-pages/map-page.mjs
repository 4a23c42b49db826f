// docs/skill-map.md and its pictures: which skill comes before which.
import { STRANDS } from '#engine/curriculum/strands.js';
import { yearName } from '#engine/curriculum/years.js';
import { SKILLS, skillById } from '#engine/skills/map.js';
import { drawMap, drawStrand } from './drawing.mjs';

const FOLDER = 'docs/images/skill-map';

const cell = (text) => text.replaceAll('|', '\\|');

function strandPart({ id, title }) {
  const mine = SKILLS.filter((skill) => skill.strand === id);
  const rows = mine.map(({ id: skill, title: name, year, prerequisites }) => {
    const before = prerequisites.map((one) => skillById(one)?.title ?? one).join('; ');
    return `| ${cell(name)} | \`${skill}\` | ${yearName(year, 'en-AU')} | ${cell(before) || 'nothing'} |`;
  });
  return [
    `## ${title}`,
    '',
    `![${title}: ${mine.length} skills, the same as in the table below](images/skill-map/${id}.svg)`,
    '',
    '<details>',
    `<summary>The ${mine.length} skills in words</summary>`,
    '',
    '| skill | id | begins in | comes after |',
    '| --- | --- | --- | --- |',
    ...rows,
    '',
    '</details>',
    '',
  ];
}

/** The page and the pictures, by path. */
export function mapPages() {
  const lines = SKILLS.reduce((sum, { prerequisites }) => sum + prerequisites.length, 0);
  const page = [
    '# The skill map',
    '',
    '<!-- Made by scripts/coverage.mjs from the skill map; changes by hand are lost. -->',
    '',
    `${SKILLS.length} skills in ${STRANDS.length} strands, from Foundation to Year 6, and ${lines} times "this comes before that". The map hangs together,`,
    'and nothing on it comes before itself, so a child who is stuck can always be led one step back.',
    'Years are Australian ones; [curriculum coverage](curriculum-coverage.md) tells what each skill answers to in three standards.',
    '',
    'A dot is a skill; a line joins it with what comes before it.',
    '',
    '![The whole map: a row a strand, a column a year](images/skill-map/whole.svg)',
    '',
    'In the pictures below a line from box to box means "comes before". A skill that also rests on other strands names them in its',
    'last line, after a plus. A line that a longer way already tells is left out; the words under each picture have them all.',
    '',
    ...STRANDS.flatMap(strandPart),
  ];
  return new Map([
    ['docs/skill-map.md', `${page.join('\n').trimEnd()}\n`],
    [`${FOLDER}/whole.svg`, drawMap(SKILLS)],
    ...STRANDS.map(({ id }) => [`${FOLDER}/${id}.svg`, drawStrand(id, SKILLS)]),
  ]);
}
