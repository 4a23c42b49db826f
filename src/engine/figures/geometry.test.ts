// What a child would read off the picture, measured back from its markup, must be what the specification says.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { validSpecs } from '../../../test/figures/figure-arbitraries.js';
import {
  type Element,
  extentOf,
  numberOf,
  partsOf,
  pointsOf,
  readSvg,
} from '../../../test/figures/read-svg.js';
import { localeOf } from '../numbers/locale.js';
import { generateQuestions } from '../questions/generate.js';
import { SKILLS } from '../skills/map.js';
import { drawFigure } from './draw.js';
import type { FigureSpec } from './figure.js';

const drawn = (spec: FigureSpec): Element[] => readSvg(drawFigure(spec).svg).children;

function only(children: readonly Element[], part: string): Element {
  const [found, ...others] = partsOf(children, part);
  if (!found || others.length > 0) throw new Error(`${others.length + (found ? 1 : 0)} of part ${part}`);
  return found;
}

/** Degrees clockwise from 12 o'clock of a line from its start to its end, 0 to 360. */
function bearing(line: Element): number {
  const dx = numberOf(line, 'x2') - numberOf(line, 'x1');
  const dy = numberOf(line, 'y2') - numberOf(line, 'y1');
  return ((Math.atan2(dx, -dy) * 180) / Math.PI + 360) % 360;
}

function apart(a: number, b: number): number {
  const off = Math.abs(a - b) % 360;
  return Math.min(off, 360 - off);
}

const texts = (children: readonly Element[]) => children.filter((element) => element.name === 'text');
const numeric = (words: string) => Number(words.replace('\u2212', '-').replace(/\u00a0/g, ''));

/** The value at a position, by the straight line through the first and last of the known positions. */
function interpolate(
  known: readonly (readonly [position: number, value: number])[],
  position: number,
): number {
  const [first, last] = [known[0], known.at(-1)];
  if (!first || !last || first === last) throw new Error('a scale needs two numbers');
  return first[1] + ((position - first[0]) / (last[0] - first[0])) * (last[1] - first[1]);
}

describe('clock', () => {
  it('turns both hands as a real clock does', () => {
    fc.assert(
      fc.property(validSpecs('clock'), (spec) => {
        const children = drawn(spec);
        expect(apart(bearing(only(children, 'minute-hand')), (spec.minutes % 60) * 6)).toBeLessThan(0.05);
        expect(apart(bearing(only(children, 'hour-hand')), (spec.minutes % 720) / 2)).toBeLessThan(0.05);
      }),
    );
  });

  it('has sixty marks and all twelve numerals in their places', () => {
    const children = drawn({ kind: 'clock', minutes: 100 });
    const rim = only(children, 'rim');
    const hands = 2;
    expect(children.filter((element) => element.name === 'line').length).toBe(60 + hands);
    const numerals = texts(children);
    expect(numerals.map((element) => Number(element.text)).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 12 }, (_, index) => index + 1),
    );
    for (const numeral of numerals) {
      // Digits stand 0.712 letter sizes high on the baseline.
      const middle = numberOf(numeral, 'y') - 0.356 * numberOf(numeral, 'font-size');
      const [dx, dy] = [numberOf(numeral, 'x') - numberOf(rim, 'cx'), middle - numberOf(rim, 'cy')];
      const turn = (Math.atan2(dx, -dy) * 180) / Math.PI;
      expect(apart(turn, Number(numeral.text) * 30)).toBeLessThan(0.2);
    }
  });
});

describe('fractions', () => {
  it('shade the stated share of a bar', () => {
    fc.assert(
      fc.property(validSpecs('fraction-bar'), (spec) => {
        const children = drawn(spec);
        const bars = partsOf(children, 'bar').map((bar) => numberOf(bar, 'width') * numberOf(bar, 'height'));
        const shaded = partsOf(children, 'shaded').map(
          (part) => numberOf(part, 'width') * numberOf(part, 'height'),
        );
        const wholes = shaded.reduce((sum, area) => sum + area, 0) / (bars[0] ?? 0);
        expect(wholes).toBeCloseTo(spec.shaded / spec.parts, 2);
      }),
    );
  });

  it('shade the stated share of a circle', () => {
    fc.assert(
      fc.property(validSpecs('fraction-circle'), (spec) => {
        const children = drawn(spec);
        const radius = numberOf(partsOf(children, 'circle')[0] ?? only(children, 'circle'), 'r');
        const areas = partsOf(children, 'shaded').map((part) =>
          part.name === 'circle' ? Math.PI * numberOf(part, 'r') ** 2 : polygonArea(pointsOf(part)),
        );
        const wholes = areas.reduce((sum, area) => sum + area, 0) / (Math.PI * radius ** 2);
        // Arcs are measured as 32 chords, which cut off at most 0.7 %.
        expect(Math.abs(wholes - spec.shaded / spec.parts)).toBeLessThanOrEqual(
          0.008 * (spec.shaded / spec.parts) + 1e-9,
        );
        expect(partsOf(children, 'shaded').length).toBe(spec.shaded);
      }),
    );
  });

  it('shade the stated counters of a set and ring equal groups', () => {
    fc.assert(
      fc.property(validSpecs('fraction-set'), (spec) => {
        const children = drawn(spec);
        expect(partsOf(children, 'shaded').length).toBe(spec.shaded);
        expect(partsOf(children, 'plain').length).toBe(spec.total - spec.shaded);
        const counters = [...partsOf(children, 'shaded'), ...partsOf(children, 'plain')];
        for (const ring of partsOf(children, 'group')) {
          const [left, top] = [numberOf(ring, 'x'), numberOf(ring, 'y')];
          const inside = counters.filter((counter) => {
            const [x, y] = [numberOf(counter, 'cx') - left, numberOf(counter, 'cy') - top];
            return x > 0 && y > 0 && x < numberOf(ring, 'width') && y < numberOf(ring, 'height');
          });
          expect(inside.length).toBe(spec.total / (spec.groups ?? 1));
        }
      }),
    );
  });
});

function polygonArea(points: readonly (readonly [number, number])[]): number {
  const doubled = points.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(doubled) / 2;
}

describe('number line', () => {
  it('points at the stated value between its printed numbers', () => {
    const marked = validSpecs('number-line').filter((spec) => spec.mark !== undefined);
    fc.assert(
      fc.property(marked, (spec) => {
        const children = drawn(spec);
        const known = texts(children).map((label) => [numberOf(label, 'x'), numeric(label.text)] as const);
        const [tip] = pointsOf(only(children, 'mark'));
        const read = interpolate(known, tip?.[0] ?? Number.NaN);
        expect(Math.abs(read - (spec.mark ?? 0))).toBeLessThan((spec.to - spec.from) / 5000);
      }),
    );
  });
});

describe('ruler', () => {
  it('lays the object from its stated start to its stated end', () => {
    const plain = validSpecs('ruler').filter((spec) => spec.object !== 'pencil');
    fc.assert(
      fc.property(plain, (spec) => {
        const children = drawn(spec);
        const known = texts(children)
          .filter((label) => /^\d+$/.test(label.text))
          .map((label) => [numberOf(label, 'x'), Number(label.text)] as const);
        const object = only(children, 'object');
        const left = numberOf(object, 'x');
        expect(interpolate(known, left)).toBeCloseTo(spec.objectFrom, 2);
        expect(interpolate(known, left + numberOf(object, 'width'))).toBeCloseTo(spec.objectTo, 2);
      }),
    );
  });

  it('is true to size up to 8 cm', () => {
    const children = drawn({ kind: 'ruler', lengthCm: 8, objectFrom: 0, objectTo: 5, object: 'ribbon' });
    expect(numberOf(only(children, 'object'), 'width')).toBeCloseTo(50, 3);
  });
});

describe('scale', () => {
  it('shows the stated value between its numbered marks', () => {
    fc.assert(
      fc.property(validSpecs('scale'), (spec) => {
        const children = drawn(spec);
        const ticks = partsOf(children, 'labelled-tick');
        const numbers = texts(children)
          .map((label) => label.text)
          .filter((words) => /^[\u2212\d]/.test(words))
          .map(numeric);
        expect(numbers.length).toBe(ticks.length);
        // A dial is read by turning, starting from its first mark; the others by height.
        const start = bearing(ticks[0] ?? only(children, 'labelled-tick'));
        const turned = (line: Element) => (bearing(line) - start + 360.05) % 360;
        const at = (line: Element) => (spec.form === 'dial' ? turned(line) : numberOf(line, 'y1'));
        const known = ticks.map((tick, index) => [at(tick), numbers[index] ?? Number.NaN] as const);
        const shown = {
          dial: () => turned(only(children, 'pointer')),
          jug: () =>
            spec.value === spec.from
              ? numberOf(only(children, 'floor'), 'y1')
              : numberOf(only(children, 'level'), 'y1'),
          thermometer: () => numberOf(only(children, 'column'), 'y'),
          balance: () => pointsOf(only(children, 'pointer'))[0]?.[1] ?? Number.NaN,
        }[spec.form]();
        expect(Math.abs(interpolate(known, shown) - spec.value)).toBeLessThan((spec.to - spec.from) / 1000);
      }),
    );
  });
});

describe('angle', () => {
  it('opens by the stated degrees, anticlockwise', () => {
    fc.assert(
      fc.property(validSpecs('angle'), (spec) => {
        const children = drawn(spec);
        const opened = bearing(only(children, 'first-arm')) - bearing(only(children, 'second-arm'));
        expect(apart(opened, spec.degrees)).toBeLessThan(0.02);
      }),
    );
  });
});

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

describe('triangle', () => {
  it('has the angles that its corners name', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 120 }), fc.integer({ min: 20, max: 40 }), (top, right) => {
        const children = drawn({ kind: 'shape', shape: 'triangle', corners: [`${top}°`, `${right}°`, '?'] });
        const corners = pointsOf(only(children, 'outline'));
        const angles = corners.map(([x, y], index) => {
          const [a, b] = [1, 2].map((step) => corners[(index + step) % 3] ?? [x, y]);
          const turn = (to: readonly number[] = []) =>
            (Math.atan2((to[1] ?? 0) - y, (to[0] ?? 0) - x) * 180) / Math.PI;
          return apart(turn(a), turn(b));
        });
        [top, right, 180 - top - right].forEach((angle, index) => {
          expect(Math.abs((angles[index] ?? 0) - angle)).toBeLessThan(0.05);
        });
      }),
    );
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

describe('coordinates', () => {
  it('keep every dot and every letter of a question off the numbers of the axes', () => {
    const skills = SKILLS.filter(({ id }) => id === 'shape.position.four');
    const figures = skills
      .flatMap((skill) => generateQuestions(skill, 400, 3, localeOf('en-AU')))
      .flatMap(({ figure }) => figure ?? []);
    expect(figures.length).toBeGreaterThan(100);
    for (const spec of figures) {
      const children = drawn(spec);
      const extents = [...texts(children), ...partsOf(children, 'point')].map(extentOf);
      extents.forEach((a, i) => {
        for (const b of extents.slice(i + 1)) {
          const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
          expect(apart, JSON.stringify(spec)).toBe(true);
        }
      });
    }
  });
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
