// How far the map reaches into the three standards: nothing claimed that is not there, and enough of number and algebra.
import { describe, expect, it } from 'vitest';
import { SKILLS, skillById } from '../skills/map.js';
import { countCoverage, coverageOf, FACT_STATEMENTS, isNumberOrAlgebra, statementsOf } from './coverage.js';
import { FURTHER_CODES } from './coverage/further-codes.js';
import { IN_PART } from './coverage/in-part.js';
import { NOT_ASKED } from './coverage/not-asked.js';
import { statementOf } from './standards.js';
import { STANDARD_IDS } from './statement.js';

describe.each(STANDARD_IDS)('%s', (standard) => {
  const rows = coverageOf(standard);
  const asked = new Set(
    rows.filter(({ skills }) => skills.length > 0).map(({ statement }) => statement.code),
  );

  it('further codes name statements and skills that exist, and none that the skill already names', () => {
    for (const [code, skills] of Object.entries(FURTHER_CODES[standard])) {
      expect(statementOf(standard, code), code).not.toBeNull();
      expect(new Set(skills).size, code).toBe(skills.length);
      for (const id of skills) {
        expect(skillById(id), `${code}: ${id}`).not.toBeNull();
        expect(skillById(id)?.codes[standard], `${id} names ${code} itself`).not.toContain(code);
      }
    }
  });

  it('gives a reason only for what is not asked, and leaves out a part only of what is', () => {
    for (const code of Object.keys(NOT_ASKED[standard])) {
      expect(statementOf(standard, code), code).not.toBeNull();
      expect(asked.has(code), `${code} has a reason and skills`).toBe(false);
    }
    for (const code of Object.keys(IN_PART[standard])) {
      expect(asked.has(code), `${code} is asked in part by no skill`).toBe(true);
    }
  });

  it('has every statement that expects facts or tables', () => {
    for (const code of FACT_STATEMENTS[standard]) expect(asked.has(code), code).toBe(true);
  });

  it('is read from the side of a skill as from the side of a statement', () => {
    for (const { id } of SKILLS) {
      expect(statementsOf(standard, id).map(({ code }) => code)).toEqual(
        rows.filter(({ skills }) => skills.includes(id)).map(({ statement }) => statement.code),
      );
    }
  });
});

describe('number and algebra of Years 1 to 6', () => {
  // How many of each standard there are was counted in the published lists, see standards.test.ts.
  it.each([
    ['ac9', 62, 0.9],
    ['england', 216, 0.9],
    ['ccss', 138, 0.9],
  ] as const)('%s: of %i statements at least %f are exercised', (standard, statements, share) => {
    const counted = countCoverage(
      coverageOf(standard).filter(({ statement }) => isNumberOrAlgebra(standard, statement)),
    );
    expect(counted.statements).toBe(statements);
    expect(counted.exercised / counted.statements).toBeGreaterThanOrEqual(share);
  });
});
