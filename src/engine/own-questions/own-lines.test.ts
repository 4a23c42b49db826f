import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OWN_PARTS, ownLineOf, ownQuestionsIn, readOwnLines } from './own-lines.js';
import { type OwnQuestionSource, readOwnQuestion } from './own-question.js';

const cell = fc.oneof(
  fc.constantFrom(
    '',
    '2 * n',
    'n + 2; n',
    'What is double {n}?',
    '{n} + {n} = {2 * n}',
    'n > 3',
    '4',
    'Time',
  ),
  fc.string({ maxLength: 20 }).map((text) => text.replaceAll('|', '/')),
);
const source: fc.Arbitrary<OwnQuestionSource> = fc.record({
  question: cell.filter((text) => text.trim() !== ''),
  answer: cell.filter((text) => text.trim() !== ''),
  slips: cell,
  way: cell,
  when: cell,
  year: cell,
  strand: cell,
});
const plain = (one: OwnQuestionSource) =>
  Object.fromEntries(OWN_PARTS.map((part) => [part, one[part].replace(/\s+/g, ' ').trim()]));

describe('a list of lines', () => {
  it('says of a row just what the row itself says', () => {
    fc.assert(
      fc.property(source, (row) => {
        const [line, ...more] = readOwnLines(ownLineOf(row));
        expect(more).toEqual([]);
        expect(line?.read).toEqual(readOwnQuestion(plain(row) as unknown as OwnQuestionSource));
      }),
      { numRuns: 500 },
    );
  });

  it('counts lines as an editor does, and leaves lines with a fault out', () => {
    const text = 'What is double {n}? | 2 * n\r\n\r\nHalf of {n}? | n ÷\n3 × 4 = ? | 12 | 7; 1\nno bar here';
    expect(readOwnLines(text).map(({ line, read }) => [line, read.ok])).toEqual([
      [1, true],
      [3, false],
      [4, true],
      [5, false],
    ]);
    expect(ownQuestionsIn(text).map(({ slips }) => slips.length)).toEqual([0, 2]);
    const faults = readOwnLines(text).flatMap(({ read }) => (read.ok ? [] : read.faults));
    expect(faults.map(({ part }) => part)).toEqual(['answer', 'answer']);
    expect(faults[1]?.message).toMatch(/upright bar/);
  });

  it('refuses more parts than a question has', () => {
    const [line] = readOwnLines('a | 1 | 2 | b | n > 0 | 3 | Time | more');
    expect(line?.read).toMatchObject({ ok: false, faults: [{ part: 'strand' }] });
  });
});
