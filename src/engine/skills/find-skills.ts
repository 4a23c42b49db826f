// Looking for skills: by words, by a curriculum code, by year and strand.
import { coverageOf } from '../curriculum/coverage.js';
import type { StandardId, Statement } from '../curriculum/statement.js';
import { type StrandId, strandTitle } from '../curriculum/strands.js';
import { foldText } from '../numbers/fold-text.js';
import { SKILLS } from './map.js';
import type { Skill } from './skill.js';

export interface WantedSkills {
  /** Words of a title, or a curriculum code or its beginning. */
  readonly words: string;
  /** Only these years of introduction; null for all. */
  readonly years: readonly number[] | null;
  readonly strand: StrandId | null;
}

export interface FoundSkills {
  /** In the order of the map. */
  readonly skills: readonly Skill[];
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

const INDEXES = new Map<string, readonly Entry[]>();

function indexOf(standards: readonly StandardId[]): readonly Entry[] {
  const key = standards.join();
  const known = INDEXES.get(key);
  if (known) return known;
  const bySkill = new Map<string, Statement[]>();
  for (const { statement, skills } of standards.flatMap((id) => coverageOf(id)))
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
  INDEXES.set(key, made);
  return made;
}

/**
 * The skills that have all the words in their title, strand, id or codes of the given standards; failing that, in the
 * statements that they exercise.
 */
export function findSkills(wanted: WantedSkills, standards: readonly StandardId[]): FoundSkills {
  const { years, strand } = wanted;
  const terms = foldText(wanted.words).split(/\s+/).filter(Boolean);
  const within = indexOf(standards).filter(
    ({ skill }) =>
      (years === null || years.includes(skill.year)) && (strand === null || skill.strand === strand),
  );
  const named = within.filter(({ title, codes }) =>
    terms.every((term) => title.includes(term) || codes.some((code) => code.startsWith(term))),
  );
  // A letter or two is in every statement.
  const isSearched = named.length === 0 && terms.some((term) => term.length > 2);
  const found = isSearched
    ? within.filter(({ statements }) => terms.every((term) => statements.includes(term)))
    : named;
  const typed = terms.join(' ');
  const row = standards
    .flatMap((id) => coverageOf(id))
    .find(({ statement }) => foldText(statement.code) === typed);
  return {
    skills: found.map(({ skill }) => skill),
    statement: row?.statement ?? null,
    isByStatement: isSearched && found.length > 0,
  };
}
