// Rosters as they really arrive. Column names of OneRoster are those of the 1EdTech OneRoster 1.2 CSV binding (from memory).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RosterReading } from '#api/class.js';
import { LONGEST_ROSTER, readRoster } from './read-roster.js';

const read = (text: string, defaultYear = 4): RosterReading => readRoster({ text, defaultYear });
const names = (reading: RosterReading) =>
  reading.children.map(({ givenName, familyName, year }) => `${givenName}|${familyName}|${year}`);

describe('pasted names', () => {
  it('reads one child a line, either way round, with list marks and years', () => {
    const reading = read(
      '1. Amara Brindlewick\n• Fernhollow, Noah (Year 5)\n\nPriya Quillmere\t5\nLeo\n- Mei Tarnbridge, Yr 5',
    );
    expect(names(reading)).toEqual([
      'Amara|Brindlewick|4',
      'Noah|Fernhollow|5',
      'Priya|Quillmere|5',
      'Leo||4',
      'Mei|Tarnbridge|5',
    ]);
    expect(reading.problems).toEqual([]);
  });
  it('keeps any script, accent and emoji', () => {
    const text =
      'Zoë Ångström-Ñuñez\n李 小龍\nمحمد بن علي\nאביגיל כהן\nOlga Żółć\nऋषि शर्मा\n🦊 Fox\nD’Arcy O’Neill\nNgọc Ánh Nguyễn\n👩🏽‍🚀 Nova';
    const reading = read(text);
    expect(reading.problems).toEqual([]);
    expect(reading.children).toHaveLength(10);
    expect(reading.children[6]?.givenName).toBe('🦊');
  });
  it('survives any text whatever, and says where each problem is', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 400 }),
        fc.integer({ min: 0, max: 6 }),
        (text, year) => {
          const reading = read(text, year);
          for (const { givenName } of reading.children) expect(givenName.trim()).toBe(givenName);
          for (const problem of reading.problems) {
            expect(problem.message).toMatch(/\.$/);
            expect(problem.hint).toMatch(/\.$/);
            expect(problem.row).toBeGreaterThanOrEqual(0);
          }
          expect(reading.children.length + reading.problems.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('CSV', () => {
  it('reads headings in the words that schools use', () => {
    const reading = read(
      'Surname;First Name;Preferred;Yr;Nickname\nTarnbridge;Mei;;05;Mimi\n"Oak, Spindle";Zahra;;4;',
    );
    expect(names(reading)).toEqual(['Mei|Tarnbridge|5', 'Zahra|Oak, Spindle|4']);
    expect(reading.children[0]?.alias).toBe('Mimi');
  });
  it('reads a single name column', () => {
    expect(names(read('Student name,Year\n"Wrenfield, Tomas",4\nIsla Copperbeck,5'))).toEqual([
      'Tomas|Wrenfield|4',
      'Isla|Copperbeck|5',
    ]);
  });
});

const USERS =
  'sourcedId,status,dateLastModified,enabledUser,username,givenName,familyName,grades,preferredGivenName\n' +
  'u1,active,2026-01-20T00:00:00Z,true,a,Amara,Brindlewick,04,\n' +
  'u2,active,2026-01-20T00:00:00Z,true,b,Noah,Fernhollow,"05,06",Noe\n' +
  'u3,tobedeleted,2026-01-20T00:00:00Z,true,c,Gone,Away,05,\n' +
  'u4,active,2026-01-20T00:00:00Z,true,d,Kit,Kindly,KG,\n';
const CLASSES = 'sourcedId,status,title,classType\nc1,active,4/5 Banksia,homeroom\n';
const ENROLLMENTS =
  'sourcedId,status,classSourcedId,userSourcedId,role\ne1,active,c1,u1,student\ne2,active,c1,u2,student\ne3,active,c2,u4,student\n';

describe('OneRoster', () => {
  it('takes active students, preferred names and the first grade', () => {
    const reading = readRoster({ text: USERS, classesCsv: CLASSES, defaultYear: 4 });
    expect(reading.format).toBe('oneroster');
    expect(reading.className).toBe('4/5 Banksia');
    expect(names(reading)).toEqual(['Amara|Brindlewick|4', 'Noe|Fernhollow|5', 'Kit|Kindly|0']);
  });
  it('narrows to the class when enrolments are given', () => {
    const reading = readRoster({
      text: USERS,
      classesCsv: CLASSES,
      enrollmentsCsv: ENROLLMENTS,
      defaultYear: 4,
    });
    expect(names(reading)).toEqual(['Amara|Brindlewick|4', 'Noe|Fernhollow|5']);
  });
  it('does not guess among several classes', () => {
    const reading = readRoster({
      text: USERS,
      classesCsv: `${CLASSES}c2,active,1 Wattle,homeroom\n`,
      defaultYear: 4,
    });
    expect(reading.children).toEqual([]);
    expect(reading.problems[0]?.hint).toContain('enrollments.csv');
  });
});

const HEAD = 'Given name,Family name,Year\n';
const GOOD = 'Amara,Brindlewick,4\nNoah,Fernhollow,5\nPriya,Quillmere,4\n';
/** Kinds of bad file: [what, text, good rows that must still be there, where the first problem is]. */
const BAD: readonly (readonly [what: string, text: string, good: number, row: number])[] = [
  ['nothing', '', 0, 0],
  ['only spaces', '  \n \t \n', 0, 0],
  ['only a heading', HEAD, 0, 0],
  ['a byte-order mark and nothing', '\ufeff', 0, 0],
  ['an open quotation mark', `${HEAD}${GOOD}"Leo,Dapplestone,4\n`, 0, 5],
  ['a quotation mark inside a cell', `${HEAD}Am"ara,Brindlewick,4\n"No"ah,Fernhollow,5\n`, 0, 3],
  ['too many cells', `${HEAD}${GOOD}Leo,Dapplestone,4,9,9\n`, 3, 5],
  ['a comma in a name', `${HEAD}${GOOD}Leo,Dapplestone, Jr,4\n`, 3, 5],
  ['no name column', `Colour,Year\nred,4\n`, 0, 1],
  ['a heading twice', `Given name,Given name,Year\nA,B,4\n`, 0, 1],
  ['an unknown year', `${HEAD}${GOOD}Leo,Dapplestone,9\n`, 3, 5],
  ['a year in words', `${HEAD}${GOOD}Leo,Dapplestone,four\n`, 3, 5],
  ['a negative year', `${HEAD}${GOOD}Leo,Dapplestone,-1\n`, 3, 5],
  ['a decimal year', `${HEAD}${GOOD}Leo,Dapplestone,4.5\n`, 3, 5],
  ['a year of birth', `${HEAD}${GOOD}Leo,Dapplestone,2016\n`, 3, 5],
  ['a date for a year', `${HEAD}${GOOD}Leo,Dapplestone,2016-05-01\n`, 3, 5],
  ['no given name', `${HEAD}${GOOD},Dapplestone,4\n`, 3, 5],
  ['a name of dots', `${HEAD}${GOOD}...,Dapplestone,4\n`, 3, 5],
  ['a name of dashes', `${HEAD}${GOOD}--,--,4\n`, 3, 5],
  ['a very long name', `${HEAD}${GOOD}${'L'.repeat(81)},Dapplestone,4\n`, 3, 5],
  ['a very long family name', `${HEAD}${GOOD}Leo,${'D'.repeat(300)},4\n`, 3, 5],
  ['the same child twice', `${HEAD}${GOOD}Noah,Fernhollow,5\n`, 3, 5],
  ['the same child in other letters', `${HEAD}${GOOD}NOAH,FERNHOLLOW,5\n`, 3, 5],
  ['a zero byte', `${HEAD}${GOOD}Le\u0000o,Dapplestone,4\n`, 0, 0],
  ['a bell character', `${HEAD}${GOOD}Le\u0007o,Dapplestone,4\n`, 3, 5],
  ['an escape character', `${HEAD}${GOOD}\u001b[31mLeo,Dapplestone,4\n`, 3, 5],
  ['text turned round', `${HEAD}${GOOD}Leo\u202eoeL,Dapplestone,4\n`, 3, 5],
  ['letters lost in transit', `${HEAD}${GOOD}Zo\ufffd,Dapplestone,4\n`, 3, 5],
  ['lost letters in the family name', `${HEAD}${GOOD}Zoe,Dapplest\ufffdne,4\n`, 3, 5],
  ['a hidden isolate mark', `${HEAD}${GOOD}\u2066Leo,Dapplestone,4\n`, 3, 5],
  ['a deleted character', `${HEAD}${GOOD}Leo\u007f,Dapplestone,4\n`, 3, 5],
  ['a name of one question mark', `${HEAD}${GOOD}?,Dapplestone,4\n`, 3, 5],
  ['61 children', HEAD + Array.from({ length: 61 }, (_, at) => `Child ${at},Row,4\n`).join(''), 60, 62],
  ['500 children', HEAD + Array.from({ length: 500 }, (_, at) => `Child ${at},Row,4\n`).join(''), 60, 62],
  [
    'a long alias',
    `Given name,Family name,Year,Alias\nAmara,Brindlewick,4,\nLeo,Dapplestone,4,${'L'.repeat(41)}\n`,
    1,
    3,
  ],
  [
    'an alias of dots',
    `Given name,Family name,Year,Alias\nAmara,Brindlewick,4,\nLeo,Dapplestone,4,...\n`,
    1,
    3,
  ],
  ['a whole book', 'word '.repeat(LONGEST_ROSTER / 4), 0, 0],
  ['ten megabytes', 'x'.repeat(10_000_000), 0, 0],
  ['a picture', '\u0089PNG\r\n\u001a\n\u0000\u0000\u0000\rIHDR', 0, 0],
  ['two-byte text read as one-byte', 'G\u0000i\u0000v\u0000e\u0000n\u0000', 0, 0],
  ['a web page', '<!doctype html>\n<html>\n<body>\u0001</body>', 2, 3],
  [
    'semicolons and a bad year',
    'Given name;Family name;Year\nAmara;Brindlewick;4\nLeo;Dapplestone;x\n',
    1,
    3,
  ],
  [
    'tabs and a bad year',
    'Given name\tFamily name\tYear\nAmara\tBrindlewick\t4\nLeo\tDapplestone\tx\n',
    1,
    3,
  ],
  [
    'old line ends and a bad year',
    'Given name,Family name,Year\rAmara,Brindlewick,4\rLeo,Dapplestone,x\r',
    1,
    3,
  ],
  ['OneRoster without names', 'sourcedId,givenName\nu1,Amara\n', 0, 1],
  ['OneRoster with a secondary grade', USERS.replace(',04,', ',11,'), 2, 2],
  ['OneRoster with an open quotation mark', `${USERS}u5,active,,true,e,"Open,Quote,05,\n`, 0, 6],
  ['OneRoster with too many cells', `${USERS}u5,active,,true,e,Leo,Dapplestone,05,,extra,more\n`, 3, 6],
  ['OneRoster with an empty name', `${USERS}u5,active,,true,e,,Dapplestone,05,\n`, 3, 6],
  ['OneRoster with a child twice', `${USERS}u5,active,,true,e,Amara,Brindlewick,04,\n`, 3, 6],
];

describe('a bad file', () => {
  it('comes in at least fifty kinds', () => expect(BAD.length).toBeGreaterThanOrEqual(50));
  it.each(BAD)('with %s', (_, text, good, row) => {
    const reading = read(text);
    expect(reading.children).toHaveLength(good);
    expect(reading.problems.length).toBeGreaterThan(0);
    const [first] = reading.problems;
    expect(first?.row).toBe(row);
    expect(first?.message).toMatch(/^[^\n]{5,200}\.$/);
    expect(first?.hint).toMatch(/^[^\n]{5,200}\.$/);
  });
});
