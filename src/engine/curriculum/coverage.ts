// How far the skill map reaches into each published standard: statement by statement, with the skills or the reason.
import { SKILLS } from '../skills/map.js';
import { FURTHER_CODES } from './coverage/further-codes.js';
import { IN_PART } from './coverage/in-part.js';
import { NOT_ASKED } from './coverage/not-asked.js';
import { STANDARDS, standardOf } from './standards.js';
import type { StandardId, Statement } from './statement.js';

/** One statement, the skills that exercise it, what they leave out of it, and where there are none, why. */
export interface StatementCoverage {
  readonly statement: Statement;
  /** Ids of skills in the order of the map. */
  readonly skills: readonly string[];
  /** What of it short questions leave out; null when all of it is asked, or none. */
  readonly leftOut: string | null;
  /** Why no skill exercises it; null when one does, or when it is still to come. */
  readonly reason: string | null;
}

/** How many statements there are, how many of them some skill exercises, and how many of those only in part. */
export interface CoverageCount {
  readonly statements: number;
  readonly exercised: number;
  readonly inPart: number;
}

/** The standards' own strands and domains that are number or algebra, as against measurement, space and data. */
const NUMBER_AND_ALGEBRA: Readonly<Record<StandardId, readonly string[]>> = {
  ac9: ['Number', 'Algebra'],
  england: [
    'Place value',
    'Addition and subtraction',
    'Multiplication and division',
    'Four operations',
    'Fractions',
    'Fractions and decimals',
    'Fractions, decimals and percentages',
    'Ratio and proportion',
    'Algebra',
    'Number facts',
    'Additive and multiplicative structure',
  ],
  ccss: [
    'Counting and Cardinality',
    'Operations and Algebraic Thinking',
    'Number and Operations in Base Ten',
    'Number and Operations: Fractions',
    'Ratios and Proportional Relationships',
    'The Number System',
    'Expressions and Equations',
  ],
};

/** Statements that expect facts or tables to be known by heart; found by reading each standard's summaries. */
export const FACT_STATEMENTS: Readonly<Record<StandardId, readonly string[]>> = {
  ac9: ['AC9M1N04', 'AC9M2A02', 'AC9M2A03', 'AC9M3A03', 'AC9M4A02'],
  england: [
    'NC-Y1-addsub-2',
    'NC-Y2-addsub-2',
    'NC-Y2-multdiv-1',
    'NC-Y3-multdiv-1',
    'NC-Y4-multdiv-1',
    '1NF-1',
    '2NF-1',
    '3NF-1',
    '3NF-2',
    '4NF-1',
    '5NF-1',
  ],
  ccss: ['K.OA.A.5', '1.OA.C.6', '2.OA.B.2', '3.OA.C.7'],
};

const EXERCISED: ReadonlyMap<StandardId, ReadonlyMap<string, readonly string[]>> = new Map(
  STANDARDS.map(({ id }) => [id, skillsByCode(id)]),
);

function skillsByCode(standard: StandardId): ReadonlyMap<string, readonly string[]> {
  const byCode = new Map<string, string[]>();
  const further = Object.entries(FURTHER_CODES[standard]);
  for (const skill of SKILLS) {
    const more = further.filter(([, skills]) => skills.includes(skill.id)).map(([code]) => code);
    for (const code of new Set([...skill.codes[standard], ...more]))
      byCode.set(code, [...(byCode.get(code) ?? []), skill.id]);
  }
  return byCode;
}

/** Every statement of a standard in its own order, with the skills that exercise it or the reason why none does. */
export function coverageOf(standard: StandardId): readonly StatementCoverage[] {
  return standardOf(standard).statements.map((statement) => {
    const skills = EXERCISED.get(standard)?.get(statement.code) ?? [];
    return {
      statement,
      skills,
      leftOut: IN_PART[standard][statement.code] ?? null,
      reason: NOT_ASKED[standard][statement.code] ?? null,
    };
  });
}

/** True for statements of the standard's number and algebra strands, Years (or Grades) 1 to 6. */
export function isNumberOrAlgebra(standard: StandardId, statement: Statement): boolean {
  return statement.year >= 1 && NUMBER_AND_ALGEBRA[standard].includes(statement.strand);
}

/** How many of the given statements are exercised, and how many of those in part. */
export function countCoverage(rows: readonly StatementCoverage[]): CoverageCount {
  const exercised = rows.filter((row) => row.skills.length > 0);
  return {
    statements: rows.length,
    exercised: exercised.length,
    inPart: exercised.filter((row) => row.leftOut !== null).length,
  };
}

/** The statements of a standard that a skill exercises, in the standard's order. */
export function statementsOf(standard: StandardId, skillId: string): readonly Statement[] {
  return standardOf(standard).statements.filter((one) =>
    EXERCISED.get(standard)?.get(one.code)?.includes(skillId),
  );
}
