// Glyph sizes straight from the face's own file (OpenType tables head, hhea, hmtx, cmap format 4, loca, glyf).
import { readFileSync } from 'node:fs';

export interface GlyphBox {
  /** In letter sizes; bottom is below 0 for letters that hang down. */
  readonly advance: number;
  readonly top: number;
  readonly bottom: number;
}

const font = readFileSync(
  new URL('../../node_modules/@expo-google-fonts/andika/Andika_400Regular.ttf', import.meta.url),
);
const tables = new Map<string, number>();
for (let index = 0; index < font.readUInt16BE(4); index++) {
  const entry = 12 + 16 * index;
  tables.set(font.toString('latin1', entry, entry + 4), font.readUInt32BE(entry + 8));
}
const table = (name: string) => tables.get(name) ?? 0;
const unitsPerEm = font.readUInt16BE(table('head') + 18);
const hasLongOffsets = font.readInt16BE(table('head') + 50) === 1;
const advances = font.readUInt16BE(table('hhea') + 34);
const segments = findSegments();

/** The glyph boxes of the text's characters; throws for a character the face lacks. */
export function glyphBoxes(words: string): GlyphBox[] {
  return Array.from(words, (character) => {
    const glyph = glyphOf(character.codePointAt(0) ?? 0);
    if (glyph === 0) throw new Error(`the face has no glyph for "${character}"`);
    const advance = font.readUInt16BE(table('hmtx') + 4 * Math.min(glyph, advances - 1)) / unitsPerEm;
    const start = offsetOf(glyph);
    if (offsetOf(glyph + 1) === start) return { advance, top: 0, bottom: 0 };
    const outline = table('glyf') + start;
    return {
      advance,
      top: font.readInt16BE(outline + 8) / unitsPerEm,
      bottom: font.readInt16BE(outline + 4) / unitsPerEm,
    };
  });
}

function offsetOf(glyph: number): number {
  const loca = table('loca');
  return hasLongOffsets ? font.readUInt32BE(loca + 4 * glyph) : 2 * font.readUInt16BE(loca + 2 * glyph);
}

function findSegments(): number {
  const cmap = table('cmap');
  for (let index = 0; index < font.readUInt16BE(cmap + 2); index++) {
    const at = cmap + font.readUInt32BE(cmap + 8 + 8 * index);
    if (font.readUInt16BE(at) === 4) return at;
  }
  throw new Error('no character map of format 4');
}

function glyphOf(code: number): number {
  const count = font.readUInt16BE(segments + 6) / 2;
  const [ends, starts] = [segments + 14, segments + 16 + 2 * count];
  for (let index = 0; index < count; index++) {
    if (code > font.readUInt16BE(ends + 2 * index)) continue;
    const start = font.readUInt16BE(starts + 2 * index);
    if (code < start) return 0;
    const delta = font.readInt16BE(starts + 2 * count + 2 * index);
    const rangeAt = starts + 4 * count + 2 * index;
    const range = font.readUInt16BE(rangeAt);
    if (range === 0) return (code + delta) & 0xffff;
    const glyph = font.readUInt16BE(rangeAt + range + 2 * (code - start));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  }
  return 0;
}
