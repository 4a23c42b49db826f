import { describe, expect, it } from 'vitest';
import { composeJigsaw } from '#engine/activities/jigsaw/compose.js';
import { composeTrail } from '#engine/activities/trail/compose.js';
import { jigsawPieces } from './jigsaw-pieces.js';
import { emptyMat, layOn, type Mat, type Place } from './mat.js';
import type { MatPieces } from './mat-pieces.js';
import { trailPieces } from './trail-pieces.js';

function composed<T>(made: { ok: true; value: T } | { ok: false; error: { message: string } }): T {
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}
const trail = composed(composeTrail({ years: [3, 4], rows: 3, columns: 3, seed: 2, locale: 'en-AU' }));
const jigsaw = composed(
  composeJigsaw({ years: [3, 4], rows: 4, columns: 5, rowKind: 'sentences', seed: 3, locale: 'en-AU' }),
);

function laid(pieces: MatPieces, places: readonly (readonly [piece: number, place: Place])[]): Mat {
  return places.reduce(
    (mat, [piece, place]) => layOn(pieces.shape, mat, piece, place),
    emptyMat(pieces.homes),
  );
}

describe('a trail on the table', () => {
  const pieces = trailPieces(trail);
  const cell = (at: number): Place => [Math.floor(at / 3), at % 3];
  const solved = laid(
    pieces,
    trail.tiles.map((_, tile) => [tile, cell(tile)] as const),
  );
  /** [own, beside] of each side named by the words about a laid tile. */
  const pairs = (words: string) =>
    [
      ...words.matchAll(
        /(?:Above|To the right|Below|To the left): (.+?), on the (?:rim|tile beside it) (.+?)\./g,
      ),
    ].map(([, own, beside]) => [own, beside]);

  it('lies loose in an order that does not follow the cells', () => {
    expect([...pieces.homes].toSorted()).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
    expect(pieces.homes).not.toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
  });
  it('tells the same of both sides of every edge when all lies right, and not so after any swap', () => {
    trail.tiles.forEach((_, tile) => {
      const told = pairs(pieces.laidWords(solved, tile));
      expect(told).toHaveLength(4);
      for (const [own, beside] of told) expect(own).toBe(beside);
    });
    for (let other = 1; other < 9; other++) {
      const swapped = layOn(pieces.shape, solved, 0, cell(other));
      const told = [0, other].flatMap((tile) => pairs(pieces.laidWords(swapped, tile)));
      expect(told.some(([own, beside]) => own !== beside)).toBe(true);
    }
  });
  it('tells of a cell its question, and the tile that lies on it', () => {
    expect(pieces.cellWords(emptyMat(pieces.homes), [0, 1])).toContain(trail.cells[1]?.question.text);
    expect(pieces.cellWords(solved, [0, 1])).toContain(`Tile ${trail.tiles[1]?.answer.text} lies here`);
  });
  it('asks about the first bare cell, or the one that was pressed', () => {
    const some = laid(pieces, [[0, [0, 0]]]);
    expect(pieces.hints(some, null).hints[0]?.text).toBe(`A2: ${trail.cells[1]?.question.text}`);
    expect(pieces.hints(some, [2, 2]).hints[0]?.text).toBe(`C3: ${trail.cells[8]?.question.text}`);
    expect(pieces.hints(solved, null).hints[0]?.text).toMatch(/\?$/);
  });
});

describe('a jigsaw on the table', () => {
  const pieces = jigsawPieces(jigsaw);
  const box = (piece: number): Place => {
    const cells = jigsaw.pieces[piece]?.cells ?? [];
    return [Math.min(...cells.map(([row]) => row)), Math.min(...cells.map(([, column]) => column))];
  };
  const solved = laid(
    pieces,
    jigsaw.pieces.map((_, piece) => [piece, box(piece)] as const),
  );

  it('reads the rows that a piece touches, with gaps', () => {
    const rows = new Set(jigsaw.pieces[0]?.cells.map(([row]) => row));
    const words = pieces.laidWords(laid(pieces, [[0, box(0)]]), 0);
    expect(words.match(/Row \d/g)).toHaveLength(rows.size);
    expect(words).toContain('gap');
    expect(pieces.laidWords(solved, 0)).not.toContain('gap');
  });
  it('tells of a cell what is printed there, what it is for, or what lies on it', () => {
    const all = jigsaw.cells.map((_, at): Place => [Math.floor(at / 5), at % 5]);
    const bare = all.map((cell) => pieces.cellWords(emptyMat(pieces.homes), cell));
    expect(bare.filter((words) => words.includes('a ring for a sign')).length).toBeGreaterThan(2);
    expect(bare.filter((words) => words.includes('Printed')).length).toBe(
      jigsaw.given.filter(([row, column]) => jigsaw.cells[row * 5 + column]?.text !== '').length,
    );
    all.forEach((cell, at) =>
      expect(pieces.cellWords(solved, cell)).toContain(jigsaw.cells[at]?.text || 'blank'),
    );
  });
  it('hints with a question, then the step, until every piece lies in its place', () => {
    let mat = emptyMat(pieces.homes);
    for (let laidPieces = 0; laidPieces < jigsaw.pieces.length; laidPieces++) {
      const { hints } = pieces.hints(mat, null);
      const step = hints.at(-1)?.text ?? '';
      for (const { text } of hints.slice(0, -1)) expect(text).toMatch(/\?|Try one/);
      // The step names its piece; laying it there leads to the next.
      const next = jigsaw.pieces.findIndex(
        (_, piece) => !mat.places[piece] && new RegExp(`\\b${String.fromCharCode(65 + piece)}\\b`).test(step),
      );
      expect(next, step).toBeGreaterThanOrEqual(0);
      const candidates = jigsaw.pieces.map((_, piece) => piece).filter((piece) => !mat.places[piece]);
      const before = pieces.hints(mat, null).about;
      const truly = candidates.find((piece) => {
        const after = layOn(pieces.shape, mat, piece, box(piece));
        return pieces.hints(after, null).about.split(' ')[0] !== before.split(' ')[0];
      });
      mat = layOn(pieces.shape, mat, truly ?? next, box(truly ?? next));
    }
    expect(mat.places.every((place) => place !== null)).toBe(true);
    expect(pieces.hints(mat, null).hints).toHaveLength(1);
  });
});
