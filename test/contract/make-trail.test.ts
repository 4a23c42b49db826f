// make trail: many seeds for each age, judged from the JSON alone; two solvers of other makers count the arrangements too.
import process from 'node:process';
import { describe, expect, it, vi } from 'vitest';
import { json, printed, refusal } from './command.js';
import { brokenEdges, countArrangements, type Trail, trailProblems } from './trail-checker.js';
import { countByDancingLinks, countByMinisat } from './trail-solvers.js';

const AGES = ['1-2', '3-4', '5-6'] as const;
const SEEDS = Number(process.env['AFTERBELL_SEEDS'] ?? 40);
/** Generous, since a full count on a busy machine takes minutes. */
const PATIENCE_MS = 60_000 + 300 * SEEDS;
vi.setConfig({ testTimeout: PATIENCE_MS });

const made = new Map<string, readonly Trail[]>();
function trailsOf(years: string, rows = 4, columns = 4, count = SEEDS): readonly Trail[] {
  const key = `${years} ${rows} ${columns} ${count}`;
  const known = made.get(key);
  if (known) return known;
  const args = ['make', 'trail', '--years', years, '--rows', String(rows), '--columns', String(columns)];
  const { items } = json<{ items: Trail[] }>([...args, '--count', String(count), '--seed', '1']);
  made.set(key, items);
  return items;
}

const problemsOf = (trails: readonly Trail[], rows: number, columns: number) =>
  trails.flatMap((trail) =>
    trailProblems(trail, { rows, columns }).map((one) => `seed ${trail.seed}: ${one}`),
  );

describe('make trail', () => {
  it.each(AGES)(`keeps every promise in ${SEEDS} trails of 4 x 4 for years %s`, (years) => {
    const trails = trailsOf(years);
    expect(trails).toHaveLength(SEEDS);
    expect(problemsOf(trails, 4, 4)).toEqual([]);
    expect(new Set(trails.map((trail) => JSON.stringify(trail.cells))).size).toBe(SEEDS);
  });

  it.each([
    [3, 3],
    [3, 6],
    [5, 4],
    [5, 5],
    [6, 3],
    [6, 6],
  ])('keeps every promise in %i x %i', (rows, columns) => {
    expect(problemsOf(trailsOf('3-4', rows, columns, Math.ceil(SEEDS / 5)), rows, columns)).toEqual([]);
  });

  it('fits in one way by MiniSat and by dancing links too', () => {
    for (const trail of [
      ...trailsOf('3-4').slice(0, 6),
      ...trailsOf('3-4', 5, 5, Math.ceil(SEEDS / 5)).slice(0, 2),
    ]) {
      expect([countByMinisat(trail, 2), countByDancingLinks(trail, 2)], `seed ${trail.seed}`).toEqual([1, 1]);
    }
  });

  it('all counters agree on pictures with several arrangements', () => {
    let several = 0;
    for (const trail of trailsOf('3-4').slice(0, 12)) {
      // Without its second places and lines the picture says less, and often fits in more ways.
      const plain = (code: string) => (code === '0' ? '0' : 'a');
      const vague: Trail = {
        ...trail,
        tiles: trail.tiles.map((tile) => ({ ...tile, edges: tile.edges.map(plain) })),
        frame: {
          north: trail.frame.north.map(plain),
          east: trail.frame.east.map(plain),
          south: trail.frame.south.map(plain),
          west: trail.frame.west.map(plain),
        },
      };
      const count = countArrangements(vague, 6);
      if (count > 1) several++;
      expect([countByMinisat(vague, 6), countByDancingLinks(vague, 6)], `seed ${trail.seed}`).toEqual([
        count,
        count,
      ]);
    }
    expect(several).toBeGreaterThan(5);
  });

  it('shows any wrong arrangement of all tiles in two places or more', () => {
    const [trail] = trailsOf('3-4', 3, 3, Math.ceil(SEEDS / 5)) as [Trail];
    let [least, wrong] = [Number.POSITIVE_INFINITY, 0];
    const tryAll = (laid: number[]): void => {
      if (laid.length === 9) {
        if (laid.every((tile, cell) => tile === cell)) return;
        wrong++;
        least = Math.min(least, brokenEdges(trail, laid));
        return;
      }
      for (let tile = 0; tile < 9; tile++) if (!laid.includes(tile)) tryAll([...laid, tile]);
    };
    tryAll([]);
    expect(wrong).toBe(362_879);
    expect(least).toBeGreaterThanOrEqual(2);
  });

  it('keeps the work of laying by picture alone high', () => {
    const median = (trails: readonly Trail[]) =>
      trails.map(({ proof }) => proof.pictureOnlyNodes).sort((a, b) => a - b)[Math.floor(trails.length / 2)];
    expect(median(trailsOf('3-4'))).toBeGreaterThan(150);
    expect(median(trailsOf('3-4', 5, 5, Math.ceil(SEEDS / 5)))).toBeGreaterThan(600);
  });

  it('prints the same bytes for the same arguments, and others for another seed', () => {
    const args = ['make', 'trail', '--years', '3-4', '--count', '3', '--json'];
    expect(printed(args)).toBe(printed(args));
    expect(printed(args)).not.toBe(printed([...args, '--seed', '2']));
  });

  it('tells a person what a trail is and which answer belongs where', () => {
    const text = printed(['make', 'trail', '--years', '2', '--theme', 'kite']);
    expect(text).toMatch(/^A trail of 4 x 4 tiles \(kite, seed 1\): they fit in one way only/);
    expect(text.match(/^ {2}[A-D][1-4] .* {2}\| {2}\S/gm)).toHaveLength(16);
  });

  it.each([
    [['--rows', '2'], '--rows 2'],
    [['--columns', '7'], '--columns 7'],
    [['--theme', 'nothing'], '--theme nothing'],
    [['--skills', 'no.such'], '“no.such”'],
    [['--skills', 'add.bonds10', '--rows', '5'], 'or add a skill such as'],
  ])('refuses %j in one sentence', (more, part) => {
    expect(refusal(['make', 'trail', '--years', '2', ...more])).toContain(part);
  });
});
