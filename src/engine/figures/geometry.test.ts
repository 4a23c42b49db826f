// What a child would read off the picture, measured back from its markup, must be what the specification says.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { validSpecs } from '../../../test/figures/figure-arbitraries.js';
import {
  apart,
  bearing,
  drawn,
  interpolate,
  numeric,
  only,
  polygonArea,
  texts,
} from '../../../test/figures/measured-marks.js';
import { extentOf, numberOf, partsOf, pointsOf, type Element } from '../../../test/figures/read-svg.js';
import { localeOf } from '../numbers/locale.js';
import { generateQuestions } from '../questions/generate.js';
import { SKILLS } from '../skills/map.js';

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
