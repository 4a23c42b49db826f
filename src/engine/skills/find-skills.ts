// Looking for skills: by words, by a curriculum code, by year and strand.
import type { StatementCoverage } from '../curriculum/coverage.js';
import type { Statement } from '../curriculum/statement.js';
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

const INDEXES = new WeakMap<readonly StatementCoverage[], readonly Entry[]>();

function indexOf(rows: readonly StatementCoverage[]): readonly Entry[] {
  const known = INDEXES.get(rows);
  if (known) return known;
  const bySkill = new Map<string, Statement[]>();
  for (const { statement, skills } of rows)
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
  INDEXES.set(rows, made);
  return made;
}

/**
 * The skills that have all the words in their title, strand, id or codes; failing that, in the statements that they
 * exercise. Codes and statements are those of the given rows of one standard or of several (see curriculum/coverage.ts);
 * they are handed in, because the texts of the standards are large.
 */
export function findSkills(wanted: WantedSkills, rows: readonly StatementCoverage[]): FoundSkills {
  const { years, strand } = wanted;
  const terms = foldText(wanted.words).split(/\s+/).filter(Boolean);
  const within = indexOf(rows).filter(
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
  const row = rows.find(({ statement }) => foldText(statement.code) === typed);
  return {
    skills: found.map(({ skill }) => skill),
    statement: row?.statement ?? null,
    isByStatement: isSearched && found.length > 0,
  };
}
