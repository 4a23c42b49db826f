// Colours as eyes meet them: every pair of tokens that stands as text on a ground, or as the edge of a control, in the
// light and in the dark scheme. Source of the formula and the bounds: WCAG 2.2, success criteria 1.4.3 and 1.4.11.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const WEB = fileURLToPath(new URL('../../src/web/', import.meta.url));
const TEXT = 4.5;
const EDGE = 3;

const TOKENS = readFileSync(join(WEB, 'design/tokens.css'), 'utf8');
const DARK_FROM = TOKENS.indexOf('@media (prefers-color-scheme: dark)');
const coloursIn = (css: string) =>
  new Map(
    [...css.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6})\b/g)].map((found) => [found[1] ?? '', found[2] ?? '']),
  );
const LIGHT = coloursIn(TOKENS.slice(0, DARK_FROM));
const SCHEMES = [
  ['light', LIGHT],
  ['dark', new Map([...LIGHT, ...coloursIn(TOKENS.slice(DARK_FROM))])],
] as const;

function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

function ratioIn(colours: ReadonlyMap<string, string>, front: string, ground: string): number {
  const [one, other] = [colours.get(front), colours.get(ground)];
  if (!one || !other) throw new Error(`no colour token ${one ? ground : front}`);
  return contrast(one, other);
}

const GROUNDS = ['paper', 'sheet', 'sheet-sunk'];
const TEXT_PAIRS: readonly (readonly [front: string, ground: string])[] = [
  ...['ink', 'ink-soft', 'act', 'brass', 'look'].flatMap((front) =>
    GROUNDS.map((ground) => [front, ground] as const),
  ),
  ...['brass-wash', 'look-wash', 'calm-wash'].map((ground) => ['ink', ground] as const),
  ['ink-soft', 'brass-wash'],
  ['ink-soft', 'look-wash'],
  ['ink-soft', 'calm-wash'],
  ['brass', 'brass-wash'],
  ['look', 'look-wash'],
  ['act', 'brass-wash'],
  ['on-act', 'act'],
  ['on-act', 'act-deep'],
];
const EDGE_PAIRS = ['rule-strong', 'focus', 'act', 'brass', 'look'].flatMap((front) =>
  GROUNDS.map((ground) => [front, ground] as const),
);

const STYLES = readdirSync(WEB, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.css') && !name.endsWith('tokens.css'))
  .map((name) => ({ name, css: readFileSync(join(WEB, name), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '') }));

/** Pairs that one rule sets together: a text colour and its ground. */
function pairsInRules(): { where: string; front: string; ground: string }[] {
  return STYLES.flatMap(({ name, css }) =>
    [...css.matchAll(/([^{}]+)\{([^{}]*)\}/g)].flatMap(([, selector = '', body = '']) => {
      const front = /(?:^|[;\s])color:\s*var\(--([a-z-]+)\)/.exec(body)?.[1];
      const ground = /background(?:-color)?:\s*var\(--([a-z-]+)\)/.exec(body)?.[1];
      return front && ground ? [{ where: `${name} ${selector.trim()}`, front, ground }] : [];
    }),
  );
}

describe.each(SCHEMES)('in the %s scheme', (_, colours) => {
  it.each(TEXT_PAIRS)('text in %s on %s has a contrast of 4.5', (front, ground) => {
    expect(ratioIn(colours, front, ground)).toBeGreaterThanOrEqual(TEXT);
  });

  it.each(EDGE_PAIRS)('an edge in %s on %s has a contrast of 3', (front, ground) => {
    expect(ratioIn(colours, front, ground)).toBeGreaterThanOrEqual(EDGE);
  });

  it('so has every text colour that a rule sets together with its ground', () => {
    const pairs = pairsInRules();
    expect(pairs.length).toBeGreaterThan(5);
    const weak = pairs.filter(({ front, ground }) => ratioIn(colours, front, ground) < TEXT);
    expect(weak).toEqual([]);
  });
});

describe('the formula', () => {
  it('gives the published extremes and a published pair', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrast('#ffffff', '#ffffff')).toBe(1);
    // The lightest grey on white that passes at 4.5 (WCAG techniques, from memory).
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });
});

describe('screens', () => {
  it('take every colour from a token, but for printed pages, which are white, and veils', () => {
    const stray = STYLES.flatMap(({ name, css }) =>
      [...css.matchAll(/#[0-9a-f]{3,8}\b|rgb\([^)]*\)/gi)]
        .map(([colour]) => ({ name, colour }))
        .filter(({ colour }) => colour !== '#fff' && !/^rgb\([^)]*%\)$/.test(colour)),
    );
    expect(stray).toEqual([]);
  });
});

describe('docs/design-language.md', () => {
  const page = readFileSync(fileURLToPath(new URL('../../docs/design-language.md', import.meta.url)), 'utf8');

  it('states each token with its colours and its contrasts as they are', () => {
    const rows = [
      ...page.matchAll(
        /^\| `--([a-z-]+)` \| `(#[0-9a-f]{6})` \| `(#[0-9a-f]{6})` \| ([^|]*) \| ([^|]*) \|/gm,
      ),
    ];
    const [light, dark] = [SCHEMES[0][1], SCHEMES[1][1]];
    expect(rows.map(([, token]) => token).sort()).toEqual([...LIGHT.keys()].sort());
    for (const [, token = '', inLight, inDark, onLight = '', onDark = ''] of rows) {
      expect([inLight, inDark], token).toEqual([light.get(token), dark.get(token)]);
      for (const [stated, colours] of [
        [onLight, light],
        [onDark, dark],
      ] as const) {
        for (const [, ratio, ground = ''] of stated.matchAll(/([\d.]+) on ([a-z-]+)/g))
          expect(Number(ratio), `${token} on ${ground}`).toBeCloseTo(ratioIn(colours, token, ground), 1);
      }
    }
  });
});
