import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  canLie,
  cellsAt,
  emptyMat,
  isMat,
  layOn,
  looseOn,
  type Mat,
  type MatShape,
  pieceOn,
  placeWithin,
  takeOff,
} from './mat.js';

/** A corner of three cells, a bar of two and a single cell on two rows of three. */
const CUT: MatShape = {
  rows: 2,
  columns: 3,
  pieces: [
    [
      [0, 0],
      [0, 1],
      [1, 0],
    ],
    [
      [0, 0],
      [0, 1],
    ],
    [[0, 0]],
  ],
  whenTaken: 'stop',
};
const TILES: MatShape = {
  rows: 2,
  columns: 2,
  pieces: Array.from({ length: 4 }, () => [[0, 0]] as const),
  whenTaken: 'swap',
};

describe('pieces of several cells', () => {
  const laid = layOn(CUT, emptyMat([2, 0, 1]), 0, [0, 0]);
  it('cover their cells and no others', () => {
    expect(pieceOn(CUT, laid, [1, 0])).toBe(0);
    expect(pieceOn(CUT, laid, [1, 1])).toBeNull();
    expect(looseOn(laid)).toEqual([2, 1]);
  });
  it('cannot lie on one another or over the frame', () => {
    expect(canLie(CUT, laid, 1, [1, 1])).toBe(true);
    expect(canLie(CUT, laid, 1, [1, 0])).toBe(false);
    expect(canLie(CUT, laid, 1, [1, 2])).toBe(false);
    expect(layOn(CUT, laid, 1, [0, 1])).toBe(laid);
  });
  it('can be moved over their own cells', () => {
    expect(layOn(CUT, laid, 0, [0, 1]).places[0]).toEqual([0, 1]);
  });
  it('are kept within the frame while they are moved', () => {
    expect(placeWithin(CUT, 0, [-3, 9])).toEqual([0, 1]);
  });
});

describe('tiles', () => {
  const two = layOn(TILES, layOn(TILES, emptyMat([3, 2, 1, 0]), 0, [0, 0]), 1, [0, 1]);
  it('go back beside the mat when a loose one takes their place', () => {
    const next = layOn(TILES, two, 2, [0, 0]);
    expect(next.places).toEqual([null, [0, 1], [0, 0], null]);
    expect(looseOn(next)).toEqual([3, 0]);
  });
  it('change places when one that lies is moved onto another', () => {
    expect(layOn(TILES, two, 0, [0, 1]).places.slice(0, 2)).toEqual([
      [0, 1],
      [0, 0],
    ]);
  });
  it('change nothing where they lie already', () => {
    expect(layOn(TILES, two, 0, [0, 0])).toBe(two);
    expect(takeOff(two, 3)).toBe(two);
  });
});

describe('a mat', () => {
  it('never has a piece twice, two in one cell, or one over the frame, whatever is done', () => {
    const move = fc.record({
      piece: fc.nat(3),
      place: fc.tuple(fc.integer({ min: -1, max: 3 }), fc.integer({ min: -1, max: 3 })),
      isOff: fc.boolean(),
    });
    for (const shape of [CUT, TILES]) {
      fc.assert(
        fc.property(fc.array(move, { maxLength: 25 }), (moves) => {
          let mat: Mat = emptyMat(shape.pieces.map((_, piece) => piece));
          for (const { piece, place, isOff } of moves) {
            if (piece >= shape.pieces.length) continue;
            mat = isOff ? takeOff(mat, piece) : layOn(shape, mat, piece, place);
          }
          expect(isMat(mat, shape)).toBe(true);
          const covered = mat.places.flatMap((place, piece) =>
            place ? cellsAt(shape, piece, place).map(String) : [],
          );
          expect(new Set(covered).size).toBe(covered.length);
        }),
      );
    }
  });
  it('is told from anything else that was kept', () => {
    const homes = [0, 1, 2];
    expect(isMat({ places: [[0, 0], null, null], homes }, CUT)).toBe(true);
    expect(isMat({ places: [[0, 2], null, null], homes }, CUT)).toBe(false);
    expect(isMat({ places: [[0, 0], [0, 1], null], homes }, CUT)).toBe(false);
    expect(isMat({ places: [null, null], homes }, CUT)).toBe(false);
    expect(isMat({ places: [null, null, null], homes: [0, 1, 1] }, CUT)).toBe(false);
    expect(isMat({ places: [['0', 0], null, null], homes }, CUT)).toBe(false);
  });
});
