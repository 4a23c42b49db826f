import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BANDS, bandOfYear, yearsOfBand } from '../curriculum/bands.js';
import { addDays } from '../numbers/calendar.js';
import { Rng } from '../random/rng.js';
import { assignDay, assignNext, choicesFor } from './rotation.js';
import type { RotationChild, RotationSet, RotationState, SetLoan } from './rotation-state.js';
import { boxOf, nextStep, SET_STEPS } from './set-shelf.js';

const MONDAY = '2026-02-02';

const set = (number: number, more: Partial<RotationSet> = {}): RotationSet => ({
  id: `set-${more.band ?? 'middle'}-${number}`,
  number,
  band: 'middle',
  isReady: true,
  skills: [],
  ...more,
});
const child = (id: string, more: Partial<RotationChild> = {}): RotationChild => ({
  id,
  band: 'middle',
  isAbsent: false,
  ...more,
});
const state = (more: Partial<RotationState>): RotationState => ({
  date: MONDAY,
  seed: 1,
  sets: [],
  loans: [],
  dueSkills: [],
  ...more,
});
const finished = (childId: string, of: RotationSet, from: string, to: string): SetLoan => ({
  setId: of.id,
  childId,
  from,
  to,
  isFinished: true,
});

/** A class that lives through many days: who is away, who finishes and who swaps bands is drawn from the seed. */
function liveThrough(seed: number, childCount: number, setCount: number, days: number) {
  const rng = new Rng(seed);
  const children = Array.from({ length: childCount }, (_, i) => ({ id: `c${i}`, band: rng.pick(BANDS) }));
  const sets = BANDS.flatMap((band) =>
    Array.from({ length: setCount }, (_, i) => set(i + 1, { band, isReady: rng.chance(0.9) })),
  );
  const loans: SetLoan[] = [];
  const log: { readonly before: RotationState; readonly given: SetLoan; readonly reason: string }[] = [];
  for (let day = 0; day < days; day++) {
    const date = addDays(MONDAY, day);
    const here = children.map((one) => ({ ...one, isAbsent: rng.chance(0.15) }));
    const now = () => state({ date, seed, sets, loans: [...loans] });
    const give = (before: RotationState, childId: string, setId: string, reason: string) => {
      const given: SetLoan = { setId, childId, from: date, to: null, isFinished: false };
      loans.push(given);
      log.push({ before, given, reason });
    };
    const morning = now();
    const assigned = assignDay(morning, here);
    expect(assignDay(morning, here)).toEqual(assigned);
    for (const { childId, next } of assigned)
      if (next.ok) give(morning, childId, next.value.setId, next.value.reason);
    for (const one of here) {
      const at = loans.findIndex((loan) => loan.childId === one.id && loan.to === null);
      if (at < 0 || one.isAbsent || !rng.chance(0.6)) continue;
      loans[at] = { ...(loans[at] as SetLoan), to: date, isFinished: rng.chance(0.9) };
      const before = now();
      const next = assignNext(before, one);
      if (next.ok) give(before, one.id, next.value.setId, next.value.reason);
    }
    const moved = rng.int(0, childCount - 1);
    if (rng.chance(0.2)) children[moved] = { id: `c${moved}`, band: rng.pick(BANDS) };
  }
  return { sets, loans, log };
}

const CLASSES = fc.record({
  seed: fc.integer(),
  childCount: fc.integer({ min: 1, max: 9 }),
  setCount: fc.integer({ min: 0, max: 12 }),
});

describe('over many days', () => {
  it('nobody gets a set again while one of the band is new to the child', () => {
    fc.assert(
      fc.property(CLASSES, ({ seed, childCount, setCount }) => {
        for (const { before, given, reason } of liveThrough(seed, childCount, setCount, 25).log) {
          const had = new Set(
            before.loans
              .filter((loan) => loan.childId === given.childId && loan.isFinished)
              .map((loan) => loan.setId),
          );
          const { band } = before.sets.find(({ id }) => id === given.setId) as RotationSet;
          const isAllHad = before.sets.every((one) => one.band !== band || !one.isReady || had.has(one.id));
          expect(had.has(given.setId)).toBe(isAllHad);
          expect(reason).toBe(isAllHad ? 'again' : 'new');
        }
      }),
      { numRuns: 60 },
    );
  });

  it('no set is in two hands on one day, and only sets in their boxes are handed out', () => {
    fc.assert(
      fc.property(CLASSES, ({ seed, childCount, setCount }) => {
        const { loans, sets } = liveThrough(seed, childCount, setCount, 25);
        const last = (loan: SetLoan) => loan.to ?? '9999-12-31';
        for (const [i, a] of loans.entries())
          for (const b of loans.slice(i + 1))
            expect(a.setId === b.setId && a.from <= last(b) && b.from <= last(a)).toBe(false);
        for (const { setId } of loans) expect(sets.find(({ id }) => id === setId)?.isReady).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});

/** The greatest number of children that can each have a set of their own, by trying everything. */
function mostServed(choices: readonly (readonly string[])[], taken: readonly string[] = []): number {
  const [first, ...rest] = choices;
  if (!first) return taken.length;
  const without = mostServed(rest, taken);
  return first
    .filter((one) => !taken.includes(one))
    .reduce((best, one) => Math.max(best, mostServed(rest, [...taken, one])), without);
}

describe('assignDay', () => {
  it('serves as many children as can be served', () => {
    const history = fc.array(
      fc.record({ of: fc.integer({ min: 1, max: 5 }), by: fc.integer({ min: 0, max: 5 }) }),
      { maxLength: 18 },
    );
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 1, max: 5 }), history, (seed, setCount, had) => {
        const sets = Array.from({ length: setCount }, (_, i) => set(i + 1));
        const loans = had.flatMap(({ of, by }) => {
          const one = sets[of - 1];
          return one ? [finished(`c${by}`, one, '2026-01-05', '2026-01-06')] : [];
        });
        const now = state({ seed, sets, loans });
        const children = Array.from({ length: 6 }, (_, i) => child(`c${i}`));
        const served = assignDay(now, children).filter(({ next }) => next.ok).length;
        const choices = children.map((one) => choicesFor(now, one).map(({ setId }) => setId));
        expect(served).toBe(mostServed(choices));
      }),
      { numRuns: 100 },
    );
  });

  it('leaves children alone who have a set or are away, and serves those who waited longest first', () => {
    const sets = [set(1), set(2)];
    const loans: SetLoan[] = [
      finished('late', sets[0] as RotationSet, '2026-01-20', '2026-01-30'),
      finished('early', sets[0] as RotationSet, '2026-01-05', '2026-01-06'),
      { setId: 'set-middle-1', childId: 'busy', from: '2026-01-31', to: null, isFinished: false },
    ];
    const day = assignDay(
      state({ sets, loans }),
      ['late', 'early', 'busy', 'away'].map((id) => child(id, { isAbsent: id === 'away' || id === 'busy' })),
    );
    expect(day.map(({ childId, next }) => [childId, next.ok ? next.value.setId : next.error.code])).toEqual([
      ['late', 'rotation.all-held'],
      ['early', 'set-middle-2'],
      ['busy', 'rotation.has-one'],
      ['away', 'rotation.away'],
    ]);
  });
});

describe('assignNext', () => {
  it('fills from the lowest box, in an order that depends on the seed', () => {
    const sets = Array.from({ length: 20 }, (_, i) => set(20 - i));
    const numbers = Array.from({ length: 30 }, (_, seed) => {
      const next = assignNext(state({ sets, seed }), child('c'));
      return next.ok ? Number(next.value.setId.split('-')[2]) : 0;
    });
    expect(Math.max(...numbers)).toBeLessThanOrEqual(10);
    expect(new Set(numbers).size).toBeGreaterThan(4);
  });

  it('says why there is none', () => {
    const one = set(1);
    expect(assignNext(state({ sets: [set(1, { isReady: false })] }), child('c'))).toMatchObject({
      error: { code: 'rotation.none-ready' },
    });
    expect(assignNext(state({ sets: [one] }), child('c', { band: 'upper' }))).toMatchObject({
      error: { code: 'rotation.none-ready' },
    });
    // Finished today by someone else: free from tomorrow.
    const loans = [finished('other', one, MONDAY, MONDAY)];
    expect(assignNext(state({ sets: [one], loans }), child('c'))).toMatchObject({
      error: { code: 'rotation.all-held' },
    });
    expect(assignNext(state({ sets: [one], loans, date: addDays(MONDAY, 1) }), child('c')).ok).toBe(true);
  });

  it('brings a set back for review when its topics are due, but not twice in a row and not too soon', () => {
    const old = set(1, { skills: ['add.bonds', 'sub.bonds'] });
    const sets = [old, set(2), set(3)];
    const loans = [finished('c', old, '2026-01-01', '2026-01-05')];
    const due = { sets, loans, dueSkills: ['add.bonds', 'mul.tens'] };
    expect(assignNext(state(due), child('c'))).toEqual({
      ok: true,
      value: { setId: old.id, reason: 'review' },
    });
    expect(assignNext(state({ ...due, date: '2026-02-01' }), child('c'))).toMatchObject({
      value: { reason: 'new' },
    });
    const again = [...loans, finished('c', old, MONDAY, MONDAY)];
    expect(assignNext(state({ ...due, loans: again, date: '2026-04-01' }), child('c'))).toMatchObject({
      value: { reason: 'new' },
    });
    expect(assignNext(state({ ...due, dueSkills: ['mul.tens'] }), child('c'))).toMatchObject({
      value: { reason: 'new' },
    });
  });

  it('starts over with the set that was had the least and the longest ago', () => {
    const sets = [set(1), set(2), set(3)];
    const [one, two, three] = sets as [RotationSet, RotationSet, RotationSet];
    const loans = [
      finished('c', three, '2026-01-05', '2026-01-06'),
      finished('c', one, '2026-01-07', '2026-01-08'),
      finished('c', two, '2026-01-09', '2026-01-12'),
      finished('c', three, '2026-01-13', '2026-01-14'),
    ];
    expect(assignNext(state({ sets, loans }), child('c'))).toEqual({
      ok: true,
      value: { setId: one.id, reason: 'again' },
    });
    expect(assignNext(state({ sets: [...sets, set(11)], loans }), child('c'))).toMatchObject({
      value: { setId: 'set-middle-11', reason: 'new' },
    });
  });
});

describe('bands, boxes and steps', () => {
  it('put two years to a band and ten sets to a box', () => {
    expect([0, 1, 2, 3, 4, 5, 6].map(bandOfYear)).toEqual([
      'lower',
      'lower',
      'lower',
      'middle',
      'middle',
      'upper',
      'upper',
    ]);
    for (const band of BANDS) expect(yearsOfBand(band).map(bandOfYear)).toEqual([band, band]);
    expect([1, 10, 11, 20, 21].map(boxOf)).toEqual([1, 1, 2, 2, 3]);
  });

  it('show the next step whatever was ticked first', () => {
    expect(nextStep([])).toBe('printed');
    expect(nextStep(['laminated', 'printed'])).toBe('cut');
    expect(nextStep(['printed', 'cut', 'laminated'])).toBe('boxed');
    expect(nextStep(['boxed'])).toBeNull();
    expect(nextStep(SET_STEPS)).toBeNull();
  });
});
