import { describe, expect, it } from 'vitest';
import { localeOf } from '../../numbers/locale.js';
import { factQuestion } from './fact.js';
import { products } from './fact-sets.js';
import { openRedo, redoRow } from './redo.js';

const [a, b, c] = products([7], 4).map((fact) => factQuestion(fact, localeOf('en-AU')));
if (!a || !b || !c) throw new Error('the sevens are missing');

describe('openRedo', () => {
  it('keeps a wrong fact until it was right, and counts how often it was wrong', () => {
    const sheets = [
      { date: '2026-05-05', wrong: [a], right: [c] },
      { date: '2026-05-04', wrong: [a, b], right: [] },
    ];
    expect(openRedo(sheets)).toEqual([
      { question: a, since: '2026-05-04', times: 2 },
      { question: b, since: '2026-05-04', times: 1 },
    ]);
    expect(openRedo([...sheets, { date: '2026-05-06', wrong: [], right: [a, b] }])).toEqual([]);
  });

  it('puts the oldest eight on the next sheet', () => {
    const many = products([6, 7, 8], 5).map((fact) => factQuestion(fact, localeOf('en-AU')));
    const open = openRedo([
      { date: '2026-05-05', wrong: many, right: [] },
      { date: '2026-05-04', wrong: [a], right: [] },
    ]);
    expect(redoRow(open)).toHaveLength(8);
    expect(redoRow(open)[0]).toEqual(a);
  });

  it('starts afresh when a cleared fact goes wrong again, also on one sheet', () => {
    const sheets = [
      { date: '2026-05-04', wrong: [a], right: [] },
      { date: '2026-05-05', wrong: [a], right: [a] },
    ];
    expect(openRedo(sheets)).toEqual([{ question: a, since: '2026-05-05', times: 1 }]);
  });
});
