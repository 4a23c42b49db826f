// What a child would read off a chart, a set of things to count or a spinner must be what the specification says.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { validSpecs } from '../../../test/figures/figure-arbitraries.js';
import { bearing, drawn, only, polygonArea, texts } from '../../../test/figures/measured-marks.js';
import { extentOf, numberOf, partsOf, pointsOf } from '../../../test/figures/read-svg.js';
import { drawFigure } from './draw.js';
import type { FigureSpec } from './figure.js';

describe('pie chart', () => {
  it('marks on its rim the equal shares that no slice ends at, where eye alone cannot judge them', () => {
    const marked = (parts: readonly number[]) =>
      partsOf(
        drawn({ kind: 'pie-chart', title: '', slices: parts.map((count) => ({ label: 'a', parts: count })) }),
        'tick',
      ).map((tick) => Math.round((bearing(tick) + 180) % 360));
    expect(marked([3, 3, 2])).toEqual([45, 90, 180, 225, 315]);
    expect(marked([4, 2, 1, 1])).toEqual([45, 90, 135, 225]);
    expect(marked([2, 1, 1])).toEqual([]);
    expect(marked([1, 1, 1, 1, 1])).toEqual([]);
  });
});

describe('bar chart', () => {
  it('raises each bar to its value by the lines across', () => {
    fc.assert(
      fc.property(validSpecs('bar-chart'), (spec) => {
        const children = drawn(spec);
        const lines = partsOf(children, 'gridline').map((line) => numberOf(line, 'y1'));
        const bars = partsOf(children, 'bar');
        const foot = bars[0] ? numberOf(bars[0], 'y') + numberOf(bars[0], 'height') : 0;
        const perStep = (foot - (lines.at(-1) ?? 0)) / lines.length;
        const read = bars.map((bar) => (numberOf(bar, 'height') / perStep) * spec.step);
        const values = spec.bars.map((bar) => bar.value).filter((value) => value > 0);
        expect(read.length).toBe(values.length);
        read.forEach((value, index) => expect(Math.abs(value - (values[index] ?? 0))).toBeLessThan(0.05));
      }),
    );
  });
});

const count = (spec: FigureSpec, part: string) => partsOf(drawn(spec), part).length;

describe('things to count', () => {
  it('are as many as stated', () => {
    fc.assert(
      fc.property(validSpecs('tally'), (spec) => {
        expect(count(spec, 'stroke')).toBe(spec.rows.reduce((sum, row) => sum + row.count, 0));
      }),
    );
    fc.assert(
      fc.property(validSpecs('array'), (spec) => {
        expect(count(spec, 'dot')).toBe(spec.rows * spec.columns);
      }),
    );
    fc.assert(
      fc.property(validSpecs('base-ten'), (spec) => {
        const value = 100 * count(spec, 'hundred') + 10 * count(spec, 'ten') + count(spec, 'one');
        expect(value).toBe(100 * spec.hundreds + 10 * spec.tens + spec.ones);
      }),
    );
    fc.assert(
      fc.property(validSpecs('ten-frame'), (spec) => {
        expect(count(spec, 'dark-counter')).toBe(spec.filled);
        expect(count(spec, 'light-counter')).toBe(spec.second ?? 0);
      }),
    );
    fc.assert(
      fc.property(validSpecs('money'), (spec) => {
        expect(count(spec, 'coin')).toBe(spec.coins.length);
        expect(count(spec, 'note')).toBe(spec.notes.length);
      }),
    );
  });

  it('fill a pictograph to the stated values', () => {
    fc.assert(
      fc.property(validSpecs('pictograph'), (spec) => {
        const children = drawn(spec);
        const radius = partsOf(children, 'disc').map((disc) => numberOf(disc, 'r'))[0] ?? 3.1;
        const parts = partsOf(children, 'part-disc').reduce(
          (sum, part) => sum + polygonArea(pointsOf(part)),
          0,
        );
        const discs = partsOf(children, 'disc').length + parts / (Math.PI * radius ** 2);
        const total = spec.rows.reduce((sum, row) => sum + row.value, 0) / spec.each;
        expect(Math.abs(discs - total)).toBeLessThan(0.01 * spec.rows.length + 1e-9);
      }),
    );
  });
});

describe('spinner', () => {
  it('has one equal sector for every word', () => {
    fc.assert(
      fc.property(validSpecs('spinner'), (spec) => {
        const sectors = partsOf(drawn(spec), 'sector');
        expect(sectors.length).toBe(spec.sectors.length);
        const rim = only(drawn(spec), 'rim');
        const areas = sectors.map((sector) =>
          sector.name === 'circle' ? Math.PI * numberOf(rim, 'r') ** 2 : polygonArea(pointsOf(sector)),
        );
        expect(Math.max(...areas) - Math.min(...areas)).toBeLessThan(0.05);
      }),
    );
  });

  it.each([3, 4, 5, 6, 8, 10, 12])(
    'keeps the words of %i sectors off the lines and inside the rim',
    (count) => {
      for (const word of ['red', 'blue', 'green', 'yellow']) {
        const children = drawn({ kind: 'spinner', sectors: Array.from({ length: count }, () => word) });
        const rim = only(children, 'rim');
        const half = Math.PI / count;
        texts(children).forEach((element, index) => {
          const { left, right, top, bottom } = extentOf(element);
          const corners = [left, right].flatMap((x) => [top, bottom].map((y) => [x, y] as const));
          for (const [x, y] of corners) {
            const [dx, dy] = [x - numberOf(rim, 'cx'), y - numberOf(rim, 'cy')];
            const turned = Math.atan2(dx, -dy) - (2 * index + 1) * half;
            const off = Math.abs(Math.atan2(Math.sin(turned), Math.cos(turned)));
            expect(Math.hypot(dx, dy) * Math.sin(half - off), `${word} ${index}`).toBeGreaterThan(0.4);
          }
          const level = (top + bottom) / 2 - numberOf(rim, 'cy');
          for (const x of [left, right])
            expect(Math.hypot(x - numberOf(rim, 'cx'), level)).toBeLessThan(numberOf(rim, 'r') - 0.3);
        });
      }
    },
  );
});

describe('bars drawn to scale', () => {
  const widths = (whole: string, part: string): number[] =>
    [
      ...drawFigure({ kind: 'bar-model', whole, parts: [part, '?'] }).svg.matchAll(
        /<rect[^>]* width="([\d.]+)"/g,
      ),
    ].map(([, width]) => Number(width));

  it.each([
    ['80 000', '60 000'],
    ['80,000', '60,000'],
    ['80 cm', '60 cm'],
    ['$80', '$60'],
  ])('gives three quarters of a bar of %s to %s', (whole, part) => {
    const [first = 0, second = 0] = widths(whole, part);
    expect(first / (first + second)).toBeGreaterThan(0.65);
    expect(first / (first + second)).toBeLessThan(0.8);
  });
});
