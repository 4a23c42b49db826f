import { describe, expect, it } from 'vitest';
import { textWidth } from '../../../figures/text-width.js';
import { composeTrail, type TrailRequest } from '../compose.js';
import { tileSideMm } from '../sizes.js';
import { THEMES, type Trail } from '../trail.js';
import { cellName, drawMat, drawSolved, RIM_MM } from './draw-mat.js';
import { routeOf } from './layout-of.js';
import { storyOf } from './scenes.js';

function trailOf(seed: number, more: Partial<TrailRequest> = {}): Trail {
  const made = composeTrail({ years: [3, 4], rows: 4, columns: 4, seed, locale: 'en-AU', ...more });
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

const TRAILS = [
  ...THEMES.map((theme, i) => trailOf(40 + i, { theme, years: i % 2 ? [1, 2] : [5, 6] })),
  trailOf(60, { rows: 6, columns: 6 }),
  trailOf(61, { rows: 3, columns: 6, years: [5, 6] }),
];

/** Each cell's own markup: cells are the groups moved to a corner of the grid. */
function cellsOf(svg: string, trail: Trail): { cell: number; body: string }[] {
  const side = tileSideMm(trail.rows, trail.columns);
  return trail.cells.map((_, cell) => {
    const x = RIM_MM.beside + (cell % trail.columns) * side;
    const y = RIM_MM.above + Math.floor(cell / trail.columns) * side;
    const from = svg.lastIndexOf(`<g transform="translate(${x} ${y})">`);
    expect(from).toBeGreaterThan(0);
    let [depth, at] = [0, from];
    for (const tag of svg.slice(from).matchAll(/<(\/?)g[ >]/g)) {
      depth += tag[1] ? -1 : 1;
      at = from + tag.index;
      if (depth === 0) break;
    }
    return { cell, body: svg.slice(from, at) };
  });
}

describe('drawMat', () => {
  it('keeps the words of every question inside its cell, 2 mm or more from its lines', () => {
    for (const trail of TRAILS) {
      const side = tileSideMm(trail.rows, trail.columns);
      for (const { cell, body } of cellsOf(drawMat(trail).svg, trail)) {
        const own = body.slice(0, body.indexOf('scale(') < 0 ? undefined : body.indexOf('scale('));
        const texts = [
          ...own.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"[^>]*font-size="([\d.]+)"[^>]*>([^<]+)</g),
        ];
        expect(texts.length).toBeGreaterThan(0);
        for (const [, x, y, size, words] of texts) {
          const half =
            (textWidth((words as string).replaceAll('&lt;', '<').replaceAll('&gt;', '>')) * Number(size)) / 2;
          const sides = [
            Number(x) - half,
            side - Number(x) - half,
            Number(y) - 0.75 * Number(size),
            side - Number(y),
          ];
          expect(Math.min(...sides), `seed ${trail.seed} cell ${cell} “${words}”`).toBeGreaterThan(2);
          expect(Number(size)).toBeGreaterThan(2.3);
          expect(words).not.toMatch(/\d\/\d/);
        }
      }
    }
  });

  it('shows every question, and a figure in exactly the cells that have one', () => {
    for (const trail of TRAILS) {
      for (const { cell, body } of cellsOf(drawMat(trail).svg, trail)) {
        const { figure } = (trail.cells[cell] as Trail['cells'][number]).question;
        expect(body.includes('scale('), `seed ${trail.seed} cell ${cell}`).toBe(figure !== null);
      }
      const { alt } = drawMat(trail);
      expect(alt).toContain(storyOf(trail));
      trail.cells.forEach(({ question }, cell) =>
        expect(alt).toContain(`${cellName(trail, cell)}: ${question.text}`),
      );
    }
  });

  it('stacks a fraction that is tied to its unit, or has a part to find', () => {
    const [trail] = TRAILS as [Trail];
    const cells = trail.cells.map(({ question }) => ({
      question: { ...question, text: '?/5 of 3/4\u00a0L', figure: null },
    }));
    const { svg } = drawMat({ ...trail, cells });
    expect(svg).not.toMatch(/>[^<]*3\/4[^<]*<\/text>/);
    for (const part of ['?', '5', '3', '4'])
      expect(svg.split(`>${part}</text>`), part).toHaveLength(cells.length + 1);
  });

  it('fits on A4 and on Letter with 6 mm around it and room for a heading', () => {
    for (const trail of TRAILS) {
      const { widthMm, heightMm } = drawMat(trail);
      expect(widthMm).toBeLessThanOrEqual(210 - 12);
      expect(heightMm).toBeLessThanOrEqual(279.4 - 40);
    }
  });
});

describe('drawSolved', () => {
  it('lays every tile on its cell, the path from the way in to the way out', () => {
    for (const trail of TRAILS) {
      const route = routeOf(trail);
      expect([route[0], route.at(-1)]).toEqual([trail.entry.cell, trail.exit.cell]);
      for (const { cell, body } of cellsOf(drawSolved(trail).svg, trail)) {
        expect(body).toContain('data-part="answer"');
        if (route.includes(cell)) expect(body).toContain('data-part="path"');
      }
    }
  });
});
