import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rotaAhead } from './rota-ahead.js';
import type { RotationSet, RotationState, SetLoan } from './rotation-state.js';

const TODAY = '2026-02-02';
const sets: RotationSet[] = Array.from({ length: 12 }, (_, i) => ({
  id: `s${i + 1}`,
  number: i + 1,
  band: 'middle',
  isReady: true,
  skills: [],
}));
const childrenOf = (count: number, isAbsent = (_: number) => false) =>
  Array.from({ length: count }, (_, i) => ({ id: `c${i}`, band: 'middle' as const, isAbsent: isAbsent(i) }));
const stateOf = (loans: readonly SetLoan[], seed = 1): RotationState => ({
  date: TODAY,
  seed,
  sets,
  loans,
  dueSkills: [],
});
const has = (childId: string, setId: string): SetLoan => ({
  childId,
  setId,
  from: TODAY,
  to: null,
  isFinished: false,
});

describe('rotaAhead', () => {
  it('never has a set in two hands on one day nor twice with one child', () => {
    fc.assert(
      fc.property(
        fc.integer(),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 0, max: 12 }),
        (seed, count, held) => {
          const children = childrenOf(count, (i) => i % 5 === 4);
          const loans = children.slice(0, held).map(({ id }, i) => has(id, `s${i + 1}`));
          const rows = [...rotaAhead(stateOf(loans, seed), children, 5).values()];
          expect(rows.map((row) => row[0] ?? null)).toEqual(
            children.map((_, i) => (i < held ? `s${i + 1}` : null)),
          );
          for (let day = 0; day < 5; day++) {
            const given = rows.flatMap((row) => row[day] ?? []);
            expect(new Set(given).size).toBe(given.length);
          }
          for (const row of rows) {
            expect(row).toHaveLength(5);
            const own = row.flatMap((id) => id ?? []);
            expect(new Set(own).size).toBe(own.length);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('leaves a gap where nothing is left, and counts on children who are away today', () => {
    const [one] = sets as [RotationSet];
    const rows = rotaAhead(
      { ...stateOf([has('c0', 's1')]), sets: [one] },
      childrenOf(2, (i) => i === 1),
      3,
    );
    expect(rows.get('c1')?.[1]).toBe('s1');
    expect(rows.get('c0')?.slice(0, 2)).toEqual(['s1', null]);
  });
});
