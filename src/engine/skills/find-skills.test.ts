import { describe, expect, it } from 'vitest';
import { coverageOf } from '../curriculum/coverage.js';
import { STANDARD_IDS, type StandardId } from '../curriculum/statement.js';
import { type FoundSkills, findSkills as findIn, type WantedSkills } from './find-skills.js';
import { SKILLS } from './map.js';

/** Looks in the statements of these standards. */
const findSkills = (wanted: WantedSkills, standards: readonly StandardId[]) =>
  findIn(wanted, standards.flatMap(coverageOf));

const ANY = { words: '', years: null, strand: null } as const;
const idsOf = ({ skills }: FoundSkills) => skills.map(({ id }) => id);

describe('finding skills', () => {
  it('gives the whole map when nothing is asked for', () => {
    expect(findSkills(ANY, ['ac9'])).toEqual({ skills: SKILLS, statement: null, isByStatement: false });
  });

  it('takes words in any order and case, all of which must be there', () => {
    const found = idsOf(findSkills({ ...ANY, words: ' table  TIMES 7 ' }, ['ac9']));
    expect(found).toContain('mult.table.7');
    expect(found).not.toContain('mult.table.8');
    expect(idsOf(findSkills({ ...ANY, words: 'zebra' }, ['ac9']))).toEqual([]);
  });

  it('narrows by years and strand', () => {
    const found = idsOf(findSkills({ words: '', years: [4, 5], strand: 'fractions' }, ['ac9']));
    expect(found).toEqual(
      SKILLS.filter(({ year, strand }) => (year === 4 || year === 5) && strand === 'fractions').map(
        ({ id }) => id,
      ),
    );
    expect(found.length).toBeGreaterThan(3);
  });

  it.each([
    ['ac9', 'AC9M4A02', 'ac9m4a02'],
    ['england', '4NF-1', ' 4nf-1 '],
    ['ccss', '3.OA.C.7', '3.oa.c.7'],
  ] as const)('finds what a code of %s is asked by, and says what it is', (standard, code, typed) => {
    const found = findSkills({ ...ANY, words: typed }, [standard]);
    expect(found.statement?.code).toBe(code);
    const asked = coverageOf(standard).find(({ statement }) => statement.code === code)?.skills ?? [];
    expect(asked.length).toBeGreaterThan(2);
    expect(idsOf(found)).toEqual(asked);
    expect(idsOf(findSkills({ ...ANY, words: typed }, STANDARD_IDS))).toEqual(asked);
    const other = standard === 'ccss' ? 'ac9' : 'ccss';
    expect(findSkills({ ...ANY, words: typed }, [other])).toMatchObject({ skills: [], statement: null });
  });

  it('looks into the statements when no title has the words', () => {
    const found = findSkills({ ...ANY, words: 'regrouping' }, ['ac9']);
    expect(found.isByStatement).toBe(true);
    expect(idsOf(found)).toContain('add.3d');
  });
});
