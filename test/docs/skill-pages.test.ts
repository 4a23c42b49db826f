// The pages made from the skill map are those that the map would make now; and no picture hides a box behind another.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { SKILLS } from '#engine/skills/map.js';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

type Pages = ReadonlyMap<string, string>;
/** A program of scripts/, which is not typed. */
const scriptPart = async (path: string): Promise<Record<string, unknown>> =>
  (await import(join(ROOT, 'scripts', path))) as Record<string, unknown>;
const { coveragePages } = (await scriptPart('skill-pages/coverage-page.mjs')) as {
  coveragePages: () => Pages;
};
const { mapPages } = (await scriptPart('skill-pages/map-page.mjs')) as { mapPages: () => Pages };
const { withoutDetours } = (await scriptPart('skill-pages/layout.mjs')) as {
  withoutDetours: (edges: [string, string][]) => [string, string][];
};

const PAGES = new Map([...coveragePages(), ...mapPages()]);
const numberIn = (text: string, name: string) => Number(new RegExp(` ${name}="([-\\d.]+)"`).exec(text)?.[1]);

describe('pages of the skill map', () => {
  it.each([...PAGES.keys()])('%s is as "node scripts/coverage.mjs" makes it', (path) => {
    expect(readFileSync(join(ROOT, path), 'utf8') === PAGES.get(path), path).toBe(true);
  });

  it('show every skill once, and no box lies on another or outside the picture', () => {
    let boxes = 0;
    for (const [path, svg] of PAGES) {
      if (!path.endsWith('.svg') || path.endsWith('whole.svg')) continue;
      const [, width = 0, height = 0] = (/viewBox="0 0 (\d+) (\d+)"/.exec(svg) ?? []).map(Number);
      const placed = [...svg.matchAll(/<rect[^>]*rx[^>]*>/g)].map(([rect]) => ({
        left: numberIn(rect, 'x'),
        top: numberIn(rect, 'y'),
        right: numberIn(rect, 'x') + numberIn(rect, 'width'),
        bottom: numberIn(rect, 'y') + numberIn(rect, 'height'),
      }));
      boxes += placed.length;
      for (const [at, one] of placed.entries()) {
        expect(one.left >= 0 && one.right <= width && one.bottom <= height, `${path}: box ${at}`).toBe(true);
        for (const other of placed.slice(at + 1)) {
          const isApart =
            one.right <= other.left ||
            other.right <= one.left ||
            one.bottom <= other.top ||
            other.bottom <= one.top;
          expect(isApart, `${path}: box ${at} and another`).toBe(true);
        }
      }
    }
    expect(boxes).toBe(SKILLS.length);
    const dots = PAGES.get('docs/images/skill-map/whole.svg')?.match(/<circle/g) ?? [];
    expect(dots.length).toBe(SKILLS.length);
  });

  it('leaves out a line only where a longer way tells the same', () => {
    const edges: [string, string][] = [
      ['a', 'b'],
      ['b', 'c'],
      ['a', 'c'],
      ['c', 'd'],
      ['a', 'd'],
      ['a', 'e'],
    ];
    expect(withoutDetours(edges).map((edge) => edge.join(''))).toEqual(['ab', 'bc', 'cd', 'ae']);
  });
});
