import { describe, expect, it } from 'vitest';
import { coverageOf } from '#engine/curriculum/coverage.js';
import { SKILLS } from '#engine/skills/map.js';
import { type Found, findSkills } from './find-skills.js';

const ANY = { words: '', year: null, strand: null } as const;
const idsOf = (found: Found) => found.strands.flatMap(({ skills }) => skills.map(({ id }) => id));

describe('finding skills', () => {
  it('gives the whole map, by strand, when nothing is asked for', () => {
    const found = findSkills(ANY, 'ac9');
    expect(idsOf(found).toSorted()).toEqual(SKILLS.map(({ id }) => id).toSorted());
    expect(found).toMatchObject({ count: SKILLS.length, statement: null, isByStatement: false });
  });

  it('takes words in any order and case, all of which must be there', () => {
    const found = idsOf(findSkills({ ...ANY, words: ' table  TIMES 7 ' }, 'ac9'));
    expect(found).toContain('mult.table.7');
    expect(found).not.toContain('mult.table.8');
    expect(idsOf(findSkills({ ...ANY, words: 'zebra' }, 'ac9'))).toEqual([]);
  });

  it('narrows by year and strand', () => {
    const found = findSkills({ words: '', year: 4, strand: 'fractions' }, 'ac9');
    expect(idsOf(found)).toEqual(
      SKILLS.filter(({ year, strand }) => year === 4 && strand === 'fractions').map(({ id }) => id),
    );
    expect(found.count).toBeGreaterThan(3);
  });

  it.each([
    ['ac9', 'AC9M4A02', 'ac9m4a02'],
    ['england', '4NF-1', '4nf-1'],
    ['ccss', '3.OA.C.7', '3.oa.c.7'],
  ] as const)('finds what a code of %s is asked by, and says what it is', (standard, code, typed) => {
    const found = findSkills({ ...ANY, words: typed }, standard);
    expect(found.statement?.code).toBe(code);
    const asked = coverageOf(standard).find(({ statement }) => statement.code === code)?.skills ?? [];
    expect(asked.length).toBeGreaterThan(2);
    expect(idsOf(found).toSorted()).toEqual([...asked].toSorted());
    const other = standard === 'ccss' ? 'ac9' : 'ccss';
    expect(findSkills({ ...ANY, words: typed }, other)).toMatchObject({ count: 0, statement: null });
  });

  it('looks into the statements when no title has the words', () => {
    const found = findSkills({ ...ANY, words: 'regrouping' }, 'ac9');
    expect(found.isByStatement).toBe(true);
    expect(idsOf(found)).toContain('add.3d');
  });
});
