// The package's faces must hold what the product prints; see docs/decisions/002-print.md.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { andikaFaces } from './andika.js';
import { coverageOf } from './coverage.js';

const MATHS =
  '0123456789+\u2212\u00d7\u00f7=<>\u2264\u2265\u00bd\u00bc\u00be\u00b0%$\u00a3\u00a2\u221a\u00b2\u00b3/.,:;()?!\u2192\u2713\u2026\u201c\u201d\u2018\u2019\u2013\u00b7\u00a0';
/** Letters of names common in classrooms: Western and Central European, Vietnamese, Turkish, Yoruba, M\u0101ori, Cyrillic. */
const NAMES =
  '\u00e9\u00ef\u00f1\u00f8\u00e5\u00df\u0151\u0171\u0142\u017c\u010d\u0159\u1ecd\u1ea3\u01b0\u01a1\u0111\u011f\u0131\u015f\u1e63\u1eb9\u0101\u014d\u0169\u041b\u0438\u0457\u0491';

describe.each([0, 1] as const)('face %i', (index) => {
  const face = andikaFaces()[index];
  const covers = coverageOf(face);

  it.each([...MATHS, ...NAMES])('prints %s', (char) =>
    expect(covers(char.codePointAt(0) as number)).toBe(true),
  );

  it('lacks what is drawn or left out instead', () => {
    for (const char of '\u25a1\u738b\u0639\u{1f984}\u05d0')
      expect(covers(char.codePointAt(0) as number)).toBe(false);
  });

  it('has digits of one width', () => {
    const widths = new Set([...'0123456789'].map((digit) => advance(face, digit)));
    expect(widths.size).toBe(1);
  });
});

it('refuses a file that is no typeface', () => {
  expect(() =>
    coverageOf(
      readFileSync(createRequire(import.meta.url).resolve('@expo-google-fonts/andika/package.json')),
    ),
  ).toThrow(RangeError);
});

/** The width of a character in font units, read by way of a format 4 character map without a glyph array. */
function advance(face: Buffer, char: string): number {
  const table = (tag: string) => {
    for (let i = 0; i < face.readUInt16BE(4); i++) {
      const at = 12 + i * 16;
      if (face.toString('latin1', at, at + 4) === tag) return face.readUInt32BE(at + 8);
    }
    throw new Error(`no ${tag}`);
  };
  const glyph = glyphOf(face, table('cmap'), char.codePointAt(0) as number);
  const count = face.readUInt16BE(table('hhea') + 34);
  return face.readUInt16BE(table('hmtx') + 4 * Math.min(glyph, count - 1));
}

function glyphOf(face: Buffer, cmap: number, code: number): number {
  for (let i = 0; i < face.readUInt16BE(cmap + 2); i++) {
    const at = cmap + face.readUInt32BE(cmap + 4 + i * 8 + 4);
    if (face.readUInt16BE(at) !== 4) continue;
    const twice = face.readUInt16BE(at + 6);
    for (let s = 0; s < twice; s += 2) {
      const last = face.readUInt16BE(at + 14 + s);
      const first = face.readUInt16BE(at + 16 + twice + s);
      if (code < first || code > last) continue;
      const delta = face.readUInt16BE(at + 16 + 2 * twice + s);
      const offsetAt = at + 16 + 3 * twice + s;
      const offset = face.readUInt16BE(offsetAt);
      return offset === 0
        ? (code + delta) & 0xffff
        : (face.readUInt16BE(offsetAt + offset + 2 * (code - first)) + delta) & 0xffff;
    }
  }
  throw new Error(`no glyph for ${code}`);
}
