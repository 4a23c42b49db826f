// Which characters a TrueType face can print. Read from its `cmap` table, formats 4 and 12 (OpenType 1.9, "cmap").

/** Tells whether a face has a glyph for a code point. */
export type Coverage = (codePoint: number) => boolean;

/** The coverage of one TrueType file. Throws RangeError when the file has no Unicode character map. */
export function coverageOf(face: Uint8Array): Coverage {
  const view = new DataView(face.buffer, face.byteOffset, face.byteLength);
  const cmap = tableOffset(view, 'cmap');
  const ranges: [number, number][] = [];
  for (let i = 0; i < view.getUint16(cmap + 2); i++) {
    const record = cmap + 4 + i * 8;
    const isUnicode = [0, 3].includes(view.getUint16(record));
    if (isUnicode) readRanges(view, cmap + view.getUint32(record + 4), ranges);
  }
  if (ranges.length === 0) throw new RangeError('the typeface file has no Unicode character map');
  const codes = new Set<number>();
  for (const [first, last] of ranges) for (let code = first; code <= last; code++) codes.add(code);
  return (codePoint) => codes.has(codePoint);
}

function tableOffset(view: DataView, tag: string): number {
  for (let i = 0; i < view.getUint16(4); i++) {
    const record = 12 + i * 16;
    const name = String.fromCharCode(...[0, 1, 2, 3].map((k) => view.getUint8(record + k)));
    if (name === tag) return view.getUint32(record + 8);
  }
  throw new RangeError(`the typeface file has no ${tag} table`);
}

function readRanges(view: DataView, at: number, ranges: [number, number][]): void {
  const format = view.getUint16(at);
  if (format === 12) {
    for (let i = 0; i < view.getUint32(at + 12); i++) {
      const group = at + 16 + i * 12;
      ranges.push([view.getUint32(group), view.getUint32(group + 4)]);
    }
  } else if (format === 4) readSegments(view, at, ranges);
}

function readSegments(view: DataView, at: number, ranges: [number, number][]): void {
  const twice = view.getUint16(at + 6);
  for (let s = 0; s < twice; s += 2) {
    const last = view.getUint16(at + 14 + s);
    const first = view.getUint16(at + 16 + twice + s);
    const delta = view.getUint16(at + 16 + 2 * twice + s);
    const offsetAt = at + 16 + 3 * twice + s;
    const offset = view.getUint16(offsetAt);
    for (let code = first; code <= last && code !== 0xffff; code++) {
      const listed = offset === 0 ? code : view.getUint16(offsetAt + offset + 2 * (code - first));
      const glyph = offset !== 0 && listed === 0 ? 0 : (listed + delta) & 0xffff;
      if (glyph !== 0) ranges.push([code, code]);
    }
  }
}
