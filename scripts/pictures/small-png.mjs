// Screens as small PNG files: at most 256 colours, which flat screens and black-and-white pages need no more than.
import { crc32, deflateSync } from 'node:zlib';
import { PNG } from 'pngjs';

const MOST_COLOURS = 256;

function chunk(name, data) {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const out = Buffer.alloc(body.length + 8);
  out.writeUInt32BE(data.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc32(body), body.length + 4);
  return out;
}

/** The most frequent colours of a picture, and for each colour the place of the nearest of them. */
function paletteOf(data) {
  const counts = new Map();
  for (let at = 0; at < data.length; at += 4) {
    const colour = (data[at] << 16) | (data[at + 1] << 8) | data[at + 2];
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  // Shades along the edges of letters differ by little; one of each small cube of colours stands for all in it.
  const cubes = new Map();
  for (const [colour, count] of counts) {
    const cube = ((colour >> 20) << 8) | (((colour >> 12) & 15) << 4) | ((colour >> 4) & 15);
    const best = cubes.get(cube);
    if (!best || count > best.count) cubes.set(cube, { colour, count });
  }
  const first = [...cubes.values()].map(({ colour }) => colour);
  const often = [...counts].sort((a, b) => b[1] - a[1]).map(([colour]) => colour);
  const chosen = [
    ...new Set([...often.slice(0, 64), ...first.sort((a, b) => counts.get(b) - counts.get(a)), ...often]),
  ];
  const palette = chosen.slice(0, MOST_COLOURS);
  const parts = palette.map((colour) => [colour >> 16, (colour >> 8) & 255, colour & 255]);
  const places = new Map(palette.map((colour, place) => [colour, place]));
  for (const colour of counts.keys()) {
    if (places.has(colour)) continue;
    const [red, green, blue] = [colour >> 16, (colour >> 8) & 255, colour & 255];
    let nearest = 0;
    let least = Infinity;
    parts.forEach(([r, g, b], place) => {
      const distance = (r - red) ** 2 + (g - green) ** 2 + (b - blue) ** 2;
      if (distance < least) [nearest, least] = [place, distance];
    });
    places.set(colour, nearest);
  }
  return { palette: parts, places };
}

/** The same picture as a PNG with a palette. */
export function smallPng(bytes) {
  const { width, height, data } = PNG.sync.read(bytes);
  const { palette, places } = paletteOf(data);
  const rows = Buffer.alloc((width + 1) * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = 4 * (y * width + x);
      const colour = (data[at] << 16) | (data[at + 1] << 8) | data[at + 2];
      rows[y * (width + 1) + 1 + x] = places.get(colour);
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  // Eight bits a pixel, colours from the palette.
  header.set([8, 3, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(palette.flat())),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
