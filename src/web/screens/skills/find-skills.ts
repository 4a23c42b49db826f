// Which skills a teacher looks for: by words, by a curriculum code, by year and strand.
import { coverageOf } from '#engine/curriculum/coverage.js';
import type { StandardId, Statement } from '#engine/curriculum/statement.js';
import { STRANDS, type StrandId, strandTitle } from '#engine/curriculum/strands.js';
import { foldText } from '#engine/numbers/fold-text.js';
import { SKILLS } from '#engine/skills/map.js';
import type { Skill } from '#engine/skills/skill.js';

export interface Wanted {
  /** Words of a title, or a curriculum code or its beginning. */
  readonly words: string;
  readonly year: number | null;
  readonly strand: StrandId | null;
}

export interface FoundStrand {
  readonly id: StrandId;
  readonly title: string;
  readonly skills: readonly Skill[];
}

export interface Found {
  readonly strands: readonly FoundStrand[];
  readonly count: number;
  /** The statement whose code was typed in full. */
  readonly statement: Statement | null;
  /** True when no title has the words and the curriculum statements were searched instead. */
  readonly isByStatement: boolean;
}

interface Entry {
  readonly skill: Skill;
  readonly title: string;
  readonly codes: readonly string[];
  readonly statements: string;
}

const INDEXES = new Map<StandardId, readonly Entry[]>();

function indexOf(standard: StandardId): readonly Entry[] {
  const known = INDEXES.get(standard);
  if (known) return known;
  const bySkill = new Map<string, Statement[]>();
  for (const { statement, skills } of coverageOf(standard))
    for (const id of skills) bySkill.set(id, [...(bySkill.get(id) ?? []), statement]);
  const made = SKILLS.map((skill) => {
    const statements = bySkill.get(skill.id) ?? [];
    return {
      skill,
      title: foldText(`${skill.title} ${strandTitle(skill.strand)} ${skill.id}`),
      codes: statements.map(({ code }) => foldText(code)),
      statements: foldText(statements.map(({ summary }) => summary).join(' ')),
    };
  });
  INDEXES.set(standard, made);
  return made;
}

/** The skills that have all the words in their title, strand or codes; failing that, in their curriculum statements. */
export function findSkills({ words, year, strand }: Wanted, standard: StandardId): Found {
  const terms = foldText(words).split(/\s+/).filter(Boolean);
  const within = indexOf(standard).filter(
    ({ skill }) => (year === null || skill.year === year) && (strand === null || skill.strand === strand),
  );
  const named = within.filter(({ title, codes }) =>
    terms.every((term) => title.includes(term) || codes.some((code) => code.startsWith(term))),
  );
  const isByStatement = named.length === 0 && terms.some((term) => term.length > 2);
  const found = isByStatement
    ? within.filter(({ statements }) => terms.every((term) => statements.includes(term)))
    : named;
  const typed = foldText(words.trim());
  const row = coverageOf(standard).find(({ statement }) => foldText(statement.code) === typed);
  return {
    strands: STRANDS.map(({ id, title }) => ({
      id,
      title,
      skills: found.flatMap(({ skill }) => (skill.strand === id ? [skill] : [])),
    })).filter(({ skills }) => skills.length > 0),
    count: found.length,
    statement: row?.statement ?? null,
    isByStatement: isByStatement && found.length > 0,
  };
}
