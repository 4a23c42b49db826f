// A whole class before a scarce shelf: an outside solver says how many can be served.
import highsLoader from 'highs';
import { expect, it } from 'vitest';
import { BANDS } from '../curriculum/bands.js';
import { addDays } from '../numbers/calendar.js';
import { Rng } from '../random/rng.js';
import { assignDay, choicesFor } from './rotation.js';
import type { RotationChild, RotationSet, RotationState, SetLoan } from './rotation-state.js';

const DATE = '2026-06-01';

/** 27 children and 30 sets; most sets are done already, by anyone, in any order. */
function classOf(seed: number): { state: RotationState; children: RotationChild[] } {
  const rng = new Rng(seed);
  const sets = BANDS.flatMap((band) =>
    Array.from({ length: 10 }, (_, i): RotationSet => {
      return { id: `${band}-${i + 1}`, number: i + 1, band, isReady: rng.chance(0.9), skills: [] };
    }),
  );
  const children = Array.from({ length: 27 }, (_, i) => {
    return { id: `c${i}`, band: rng.pick(BANDS), isAbsent: rng.chance(0.1) };
  });
  const loans: SetLoan[] = [];
  for (const { id, band } of children)
    for (const set of sets.filter((one) => one.band === band))
      if (rng.chance(0.75)) {
        const to = addDays(DATE, -rng.int(1, 100));
        loans.push({ setId: set.id, childId: id, from: to, to, isFinished: true });
      }
  return { state: { date: DATE, seed, sets, loans, dueSkills: [] }, children };
}

/** Choosing a set for each of as many children as possible, as a program in LP format. */
function programOf(choices: readonly (readonly string[])[]): string {
  const pairs = choices.flatMap((sets, child) =>
    sets.map((set) => ({ child, set, name: `x${child}_${set}` })),
  );
  const atMostOne = (names: readonly string[]) => `${names.map((name) => `+ ${name}`).join(' ')} <= 1`;
  const rows = [
    ...choices.map((_, child) => pairs.filter((pair) => pair.child === child)),
    ...[...new Set(pairs.map(({ set }) => set))].map((set) => pairs.filter((pair) => pair.set === set)),
  ].filter((row) => row.length > 0);
  return [
    'Maximize',
    `obj: ${pairs.map(({ name }) => `+ ${name}`).join(' ')}`,
    'Subject To',
    ...rows.map((row, i) => `r${i}: ${atMostOne(row.map(({ name }) => name))}`),
    'Binary',
    ...pairs.map(({ name }) => name),
    'End',
  ].join('\n');
}

it('serves as many of a class as HiGHS can', async () => {
  const highs = await (highsLoader as unknown as typeof highsLoader.default)();
  let scarce = 0;
  for (let seed = 1; seed <= 25; seed++) {
    const { state, children } = classOf(seed);
    const here = children.filter(({ isAbsent }) => !isAbsent);
    const choices = here.map((child) => choicesFor(state, child).map(({ setId }) => setId.replace('-', '_')));
    const served = assignDay(state, children).filter(({ next }) => next.ok).length;
    expect(served, `seed ${seed}`).toBe(Math.round(highs.solve(programOf(choices)).ObjectiveValue));
    if (served < here.length) scarce++;
  }
  // Where everyone can be served, any way of giving out would do.
  expect(scarce).toBeGreaterThan(10);
});
