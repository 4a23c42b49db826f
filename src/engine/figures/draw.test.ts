// Every kind of figure: its picture as last looked at, and what must hold for any valid specification.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { validSpecs } from '../../../test/figures/figure-arbitraries.js';
import { SAMPLES } from '../../../test/figures/figure-samples.js';
import { extentOf, numberOf, readSvg } from '../../../test/figures/read-svg.js';
import { LOCALES } from '../numbers/locale.js';
import { drawFigure, FIGURE_KINDS } from './draw.js';

describe('golden pictures', () => {
  it('cover every kind', () => {
    expect(new Set(Object.values(SAMPLES).map((spec) => spec.kind))).toEqual(new Set(FIGURE_KINDS));
  });

  for (const [name, spec] of Object.entries(SAMPLES)) {
    it(name, async () => {
      const { svg } = drawFigure(spec);
      await expect(svg).toMatchFileSnapshot(`../../../test/golden/figures/${name}.svg`);
    });
  }

  it('stay within the size of a place on a page', () => {
    for (const [name, spec] of Object.entries(SAMPLES)) {
      const { widthMm, heightMm } = drawFigure(spec);
      expect(widthMm, name).toBeLessThanOrEqual(90);
      expect(heightMm, name).toBeLessThanOrEqual(50);
    }
  });
});

// Nouns that alternative texts count: none may follow 1 in the plural or another number in the singular.
const COUNTED =
  'part|counter|row|dot|mark|square|sector|disc|line|stick|stroke|bundle|step|cube|coin|note|bill|circle|bar|frame|cat';
const WRONG_PLURAL = new RegExp(`(?<![$£.,/\\d])\\b(?:1|one) (?:[a-z]+ )?(?:${COUNTED}|boxe)s\\b`);
const WRONG_SINGULAR = new RegExp(
  `(?<![$£.,/\\d])\\b(?:0|[2-9]|\\d\\d+|two|three|four) (?:shaded |plain |dark |light |small |single |equal |empty )?(?:${COUNTED}|box)\\b(?! of)`,
);

describe.each(FIGURE_KINDS)('any %s', (kind) => {
  it('is well-formed, inside its own page, unnamed and told in words', () => {
    fc.assert(
      fc.property(validSpecs(kind), fc.constantFrom(...LOCALES), (spec, locale) => {
        const { svg, widthMm, heightMm, leastWidthMm, alt } = drawFigure(spec, { locale });
        const { root, children } = readSvg(svg);
        expect(root.attributes['viewBox']).toBe(`0 0 ${widthMm} ${heightMm}`);
        expect(root.attributes['width']).toBe(`${widthMm}mm`);
        expect(root.attributes['height']).toBe(`${heightMm}mm`);
        expect(root.attributes['aria-label']).toBe(alt);
        expect(svg).not.toMatch(/NaN|undefined|Infinity|\bid=|class=|style=|currentColor|\d\.\d{4}|e-\d/);
        expect(children.length).toBeGreaterThan(0);
        const letters = children.flatMap((one) => (one.name === 'text' ? [numberOf(one, 'font-size')] : []));
        // At its least width the smallest letter is 6 points (6 x 25.4 / 72 mm) or as drawn.
        const smallest = Math.min(...letters) * (leastWidthMm / widthMm);
        expect(smallest).toBeGreaterThanOrEqual(Math.min(2.11, ...letters));
        expect(leastWidthMm).toBeLessThanOrEqual(widthMm);
        for (const element of children) {
          const { left, top, right, bottom } = extentOf(element);
          const reach = [left, top, widthMm - right, heightMm - bottom];
          expect(Math.min(...reach), JSON.stringify(element)).toBeGreaterThanOrEqual(0);
          if (element.attributes['stroke'])
            expect(numberOf(element, 'stroke-width')).toBeGreaterThanOrEqual(0.2);
          if (element.name === 'text') expect(element.attributes['font-family']).toBe('Andika');
        }
        expect(alt).toMatch(/^[A-Z0-9][^]*\.$/);
        expect(alt).not.toMatch(/NaN|undefined|Infinity|null|  |\.\./);
        expect(alt).not.toMatch(WRONG_PLURAL);
        expect(alt).not.toMatch(WRONG_SINGULAR);
      }),
      { numRuns: 60 },
    );
  });
});

describe('alternative texts', () => {
  it('tell a mark by the label it stands at, whatever rounding its value carries', () => {
    expect(drawFigure({ kind: 'number-line', from: 0, to: 3, step: 0.1, mark: 5e-7 }).alt).toMatch(
      /An arrow points at 0\.$/,
    );
  });

  it('tell a clock by its hands, not by its time', () => {
    expect(drawFigure({ kind: 'clock', minutes: 465 }).alt).toBe(
      'A clock. The short hand points between 7 and 8; the long hand points at 9.',
    );
    expect(drawFigure({ kind: 'clock', minutes: 31 }).alt).toBe(
      'A clock. The short hand points between 12 and 1; the long hand points 1 small mark past 6.',
    );
  });

  it('count money in words with the right plural', () => {
    expect(drawFigure({ kind: 'money', currency: 'AUD', coins: [20, 20, 200], notes: [5] }).alt).toBe(
      'Money: one $5 note, two 20-cent coins and one $2 coin.',
    );
    expect(drawFigure({ kind: 'money', currency: 'USD', coins: [], notes: [1, 1] }).alt).toBe(
      'Money: two $1 bills.',
    );
  });

  it('are as wide as the notes of the country: all alike for American bills, wider as they rise elsewhere', () => {
    const widths = (currency: 'USD' | 'AUD') =>
      [5, 20, 100].map((note) => {
        const { svg } = drawFigure({ kind: 'money', currency, coins: [], notes: [note] });
        return Number(/<rect[^>]* width="([\d.]+)"/.exec(svg)?.[1]);
      });
    expect(new Set(widths('USD')).size).toBe(1);
    const [least = 0, middle = 0, most = 0] = widths('AUD');
    expect(least).toBeGreaterThan(0);
    expect(least < middle && middle < most).toBe(true);
  });

  // United States Mint, coin specifications; Reserve Bank of New Zealand, coin specifications by denomination.
  it.each([
    ['USD', { 1: 19.05, 5: 21.21, 10: 17.91, 25: 24.26 }],
    ['NZD', { 10: 20.5, 20: 21.75, 50: 24.75 }],
  ] as const)('draw the coins of %s in their true sizes to one another', (currency, diametersMm) => {
    const scales = Object.entries(diametersMm).map(([coin, mm]) => {
      const { svg } = drawFigure({ kind: 'money', currency, coins: [Number(coin)], notes: [] });
      return Number(/<circle[^>]* r="([\d.]+)"/.exec(svg)?.[1]) / mm;
    });
    for (const scale of scales) expect(scale).toBeCloseTo(scales[0] ?? 0, 2);
  });

  it('never name the shape or solid that is drawn', () => {
    const names =
      /triangle|rectangle|rhombus|parallelogram|trapezi|kite|gon|oval|cube|cuboid|cylinder|cone|sphere|pyramid|prism/i;
    for (const kind of ['shape', 'solid'] as const) {
      fc.assert(
        fc.property(validSpecs(kind), (spec) => {
          const alt = drawFigure(spec).alt.replace(/flat triangles?|flat rectangles?/g, '');
          expect(alt).not.toMatch(names);
        }),
      );
    }
  });

  it('point on a scale by counting marks from the last number', () => {
    const spec = {
      kind: 'scale',
      form: 'jug',
      from: 0,
      to: 500,
      step: 50,
      labelEvery: 100,
      unit: 'mL',
    } as const;
    expect(drawFigure({ ...spec, value: 350 }).alt).toContain('up to 1 small mark past 300.');
    expect(drawFigure({ ...spec, value: 375 }).alt).toContain(
      'half a step beyond the mark 1 small mark past 300.',
    );
  });

  it('follow the locale', () => {
    const angle = { kind: 'angle', degrees: 60 } as const;
    expect(drawFigure(angle, { locale: 'en-US' }).alt).toContain('counterclockwise');
    expect(drawFigure(angle).alt).toContain('anticlockwise');
    const line = { kind: 'number-line', from: 0, to: 20000, step: 10000 } as const;
    expect(drawFigure(line, { locale: 'en-GB' }).svg).toContain('>20,000<');
    expect(drawFigure(line).svg).toContain('>20\u00a0000<');
  });
});

describe('labels', () => {
  it('are escaped, and characters that XML forbids are dropped', () => {
    const { svg } = drawFigure({ kind: 'pattern', items: ['a<b&"c"\u0007'] });
    expect(svg).toContain('>a&lt;b&amp;&quot;c&quot;<');
    expect(() => readSvg(svg)).not.toThrow();
  });
});
