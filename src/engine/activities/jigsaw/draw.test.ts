import { describe, expect, it } from 'vitest';
import { must } from '../../../../test/support/must.js';
import { composeJigsaw } from './compose.js';
import { drawJigsawMat, drawJigsawPiece } from './draw.js';
import type { Place } from './jigsaw.js';
import { outlinesOfSize } from './outlines.js';
import { pieceOutline } from './piece-outline.js';

type Point = readonly [number, number];

/** The outline as a polygon: straight sides and each quarter circle as 32 chords, by the arc rules of SVG 2, B.2.4. */
function polygonsOf(outline: string): Point[][] {
  const rings: Point[][] = [];
  for (const [, letter, numbers = ''] of outline.matchAll(/([MLAZ])([^MLAZ]*)/g)) {
    const values = numbers.trim().split(/\s+/).map(Number);
    if (letter === 'M') rings.push([[values[0], values[1]] as Point]);
    const ring = rings.at(-1) as Point[];
    if (letter === 'L') ring.push([values[0], values[1]] as Point);
    if (letter === 'A') {
      const [radius, , , , sweep, x, y] = values as [number, number, number, number, number, number, number];
      const [x0, y0] = ring.at(-1) as Point;
      // A quarter circle: its centre is the corner of the square over the chord, on the side that the sweep flag names.
      const [mx, my] = [(x0 + x) / 2, (y0 + y) / 2];
      const side = sweep === 1 ? 1 : -1;
      const centre: Point = [mx - (side * (y - y0)) / 2, my + (side * (x - x0)) / 2];
      expect(Math.hypot(x0 - centre[0], y0 - centre[1])).toBeCloseTo(radius, 2);
      const from = Math.atan2(y0 - centre[1], x0 - centre[0]);
      for (let i = 1; i <= 32; i++) {
        const angle = from + (side * (i * Math.PI)) / 64;
        ring.push([centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)]);
      }
    }
  }
  return rings;
}

function areaOf(ring: readonly Point[]): number {
  return ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length] as Point;
    return sum + (x * v - u * y) / 2;
  }, 0);
}

const sample = await must(
  composeJigsaw({
    years: [3, 4],
    rowKind: 'mixed',
    rows: 5,
    columns: 7,
    level: 'easy',
    seed: 3,
    locale: 'en-AU',
  }),
);

describe('pieceOutline', () => {
  it('encloses the cells of every outline of up to five cells, less the four corners that are rounded off', () => {
    const cellMm = 20;
    const radius = 0.13 * cellMm;
    for (const size of [1, 2, 3, 4, 5]) {
      for (const outline of outlinesOfSize(size)) {
        const left = Math.min(...outline.map(([, across]) => across));
        const cells = outline.map(([down, across]): Place => [down, across - left]);
        const rings = polygonsOf(pieceOutline(cells, cellMm));
        const area = rings.reduce((sum, ring) => sum + areaOf(ring), 0);
        // In every ring there are four more corners that bulge than corners that bend in.
        const wanted = size * cellMm ** 2 - 4 * rings.length * (1 - Math.PI / 4) * radius ** 2;
        expect(Math.abs(area - wanted), outline.join(' ')).toBeLessThan(0.6);
      }
    }
  });

  it('goes round a hole in the other direction', () => {
    const ring = [0, 1, 2].flatMap((row) => [0, 1, 2].map((column): Place => [row, column]));
    const rings = polygonsOf(
      pieceOutline(
        ring.filter(([row, column]) => row !== 1 || column !== 1),
        10,
      ),
    );
    expect(rings.map((one) => Math.sign(areaOf(one)))).toEqual([1, -1]);
  });
});

describe('drawJigsawPiece', () => {
  it('is as large as its box of cells and shows all its texts', () => {
    for (const [i, piece] of sample.pieces.entries()) {
      const drawing = drawJigsawPiece(sample, i, 18);
      expect(drawing.widthMm).toBeCloseTo(18 * drawing.columns + 2 * drawing.marginMm);
      expect(drawing.heightMm).toBeCloseTo(18 * drawing.rows + 2 * drawing.marginMm);
      for (const [row, column] of piece.cells) {
        const { text } = sample.cells[row * sample.columns + column] as { text: string };
        for (const part of text.split(/[/ -]/))
          if (part !== '') expect(drawing.svg).toContain(part.replace('<', '&lt;').replace('>', '&gt;'));
      }
      expect(drawing.svg).toContain(drawing.outline);
      expect(drawJigsawPiece(sample, i, 18, { set: 12 }).svg).toContain('>set 12</text>');
      expect(drawJigsawPiece(sample, i, 18, { isNamed: false }).svg.length).toBeLessThan(drawing.svg.length);
    }
  });
});

describe('drawJigsawMat', () => {
  it('shows the printed cells only, and everything when it is solved', () => {
    const mat = drawJigsawMat(sample, 10);
    const shown = [...mat.svg.matchAll(/<text/g)].length;
    const solved = drawJigsawMat(sample, 10, { isSolved: true });
    expect(shown).toBeLessThanOrEqual(3 * sample.given.length);
    expect([...solved.svg.matchAll(/<path/g)]).toHaveLength(sample.pieces.length);
    expect([...solved.svg.matchAll(/<text/g)].length).toBeGreaterThan(sample.rows * sample.columns);
    expect(mat.alt).toContain('5 rows of 7 cells');
    expect(solved.alt).toContain('Row 5:');
  });
});
