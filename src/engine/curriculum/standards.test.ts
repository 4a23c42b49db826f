import { describe, expect, it } from 'vitest';
import { homeStandard, STANDARDS, standardOf, statementOf } from './standards.js';
import { STANDARD_IDS } from './statement.js';

describe('the three standards', () => {
  it('are listed once each, in the order of their ids', () => {
    expect(STANDARDS.map((standard) => standard.id)).toEqual([...STANDARD_IDS]);
    expect(STANDARD_IDS.map((id) => standardOf(id).id)).toEqual([...STANDARD_IDS]);
  });

  it('holds as many statements as were counted in the published lists, less those left out', () => {
    // Sources: 139 Australian descriptions less 17; 242 English bullets less 8, and 79 criteria; 238 US codes less 14.
    expect(STANDARDS.map((standard) => standard.statements.length)).toEqual([122, 234 + 79, 224]);
    const england = standardOf('england').statements;
    expect(england.filter((one) => one.code.startsWith('NC-'))).toHaveLength(234);
    const ac9 = standardOf('ac9').statements;
    expect(ac9.filter((one) => one.strand === 'Number' || one.strand === 'Algebra')).toHaveLength(69);
  });

  // The published patterns of the codes, in which the year is written.
  const PATTERNS = {
    ac9: /^AC9M([F1-6])(N|A|M|SP|ST|P)\d{2}$/,
    england: /^(?:NC-Y([1-6])-[a-z]+-\d{1,2}[a-z]?|([1-6])(NPV|NF|AS|MD|F|G|AS\/MD)-\d{1,2})$/,
    ccss: /^([K1-6])\.[A-Z]{1,3}\.[A-Z]\.\d{1,2}[a-d]?$/,
  } as const;

  it.each(STANDARDS.map((standard) => [standard.id, standard] as const))(
    '%s: codes follow the pattern, differ, and name their own year',
    (id, standard) => {
      const codes = standard.statements.map((one) => one.code);
      expect(new Set(codes).size).toBe(codes.length);
      for (const { code, year, summary } of standard.statements) {
        const match = PATTERNS[id].exec(code);
        expect(match, code).not.toBeNull();
        const inCode = match?.[1] ?? match?.[2] ?? '';
        expect(/[FK]/.test(inCode) ? 0 : Number(inCode), code).toBe(year);
        expect(summary.length, code).toBeGreaterThan(15);
        expect(statementOf(id, code)?.summary).toBe(summary);
      }
    },
  );

  it('finds nothing for a code of another standard or none', () => {
    expect(statementOf('ccss', 'AC9M4N06')).toBeNull();
    expect(statementOf('ac9', 'AC9M4N06')?.year).toBe(4);
    expect(statementOf('ac9', 'toString')).toBeNull();
  });

  it('belongs to a locale', () => {
    expect((['en-AU', 'en-GB', 'en-US'] as const).map(homeStandard)).toEqual(['ac9', 'england', 'ccss']);
  });
});
