import { describe, expect, it } from 'vitest';
import { composeTrail } from '#engine/activities/trail/compose.js';
import type { Trail as EngineTrail } from '#engine/activities/trail/trail.js';
import { Trail } from './trail.js';

const made = composeTrail({ years: [3, 4], rows: 4, columns: 4, seed: 6, locale: 'en-AU' });
if (!made.ok) throw new Error(made.error.message);
const trail = made.value;

/** The trail with one tile changed. */
function withTile(index: number, change: Partial<EngineTrail['tiles'][number]>): EngineTrail {
  return { ...trail, tiles: trail.tiles.map((tile, i) => (i === index ? { ...tile, ...change } : tile)) };
}

describe('a trail on the wire', () => {
  it('is read as it was written', () => {
    expect(Trail.parse(JSON.parse(JSON.stringify(trail)))).toEqual(trail);
  });

  it.each([
    [{ ...trail, tiles: trail.tiles.slice(1) }, 'one cell and one tile'],
    [{ ...trail, frame: { ...trail.frame, north: ['0', 'a', '0'] } }, 'the frame does not have one code'],
    [{ ...trail, exit: { ...trail.exit, cell: trail.exit.cell - 4 } }, 'no path runs from the entry'],
    [withTile(trail.entry.cell, { path: [] }), 'no path runs from the entry'],
    [withTile(trail.entry.cell, { edges: ['c', 'c', 'c', 'c'] }), 'would touch each other'],
    [
      withTile(3, { answer: { kind: 'word', text: 'an answer of many many words '.repeat(6), value: null } }),
      'the answer of tile 3 is too long',
    ],
  ])('%#: is refused when it cannot be drawn', (wrong, reason) => {
    const parsed = Trail.safeParse(wrong);
    expect(parsed.success).toBe(false);
    expect(parsed.error?.issues.map(({ message }) => message).join()).toContain(reason);
  });
});
