import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beginLine, isLine, layAt, type Line, takeOut } from './line.js';

const start: Line = beginLine([3, 0, 2, 1, 4], 0);

describe('beginLine', () => {
  it('lays the first strip and leaves the others loose in their order', () => {
    expect(start).toEqual({ laid: [0], tray: [3, 2, 1, 4] });
  });
});

describe('layAt', () => {
  it('lays a loose strip at the end or between two', () => {
    const two = layAt(start, 4, 1);
    expect(two).toEqual({ laid: [0, 4], tray: [3, 2, 1] });
    expect(layAt(two, 2, 1)).toEqual({ laid: [0, 2, 4], tray: [3, 1] });
  });
  it('moves a strip that lies in the chain, counting places without it', () => {
    const line = { laid: [0, 1, 2, 3], tray: [4] };
    expect(layAt(line, 1, 2).laid).toEqual([0, 2, 1, 3]);
    expect(layAt(line, 3, 0).laid).toEqual([3, 0, 1, 2]);
  });
  it('changes nothing when the strip lies there already', () => {
    expect(layAt(start, 0, 0)).toBe(start);
    expect(layAt(start, 0, 9)).toBe(start);
  });
  it('takes any strip at any place, right or wrong', () => {
    expect(layAt(start, 3, 0).laid).toEqual([3, 0]);
  });
});

describe('takeOut', () => {
  it('puts a strip with the loose ones and closes the gap', () => {
    expect(takeOut({ laid: [0, 1, 2], tray: [] }, 1)).toEqual({ laid: [0, 2], tray: [1] });
    expect(takeOut(start, 3)).toBe(start);
  });
});

describe('a line', () => {
  it('holds every strip exactly once, whatever is done', () => {
    const move = fc.record({ piece: fc.nat(4), at: fc.integer({ min: -1, max: 7 }), isOut: fc.boolean() });
    fc.assert(
      fc.property(fc.array(move, { maxLength: 30 }), (moves) => {
        const line = moves.reduce(
          (now, { piece, at, isOut }) => (isOut ? takeOut(now, piece) : layAt(now, piece, at)),
          start,
        );
        expect([...line.laid, ...line.tray].toSorted()).toEqual([0, 1, 2, 3, 4]);
        expect(isLine(line, 5)).toBe(true);
      }),
    );
  });
  it('is told from anything else that was kept', () => {
    expect(isLine({ laid: [0, 1], tray: [2] }, 4)).toBe(false);
    expect(isLine({ laid: [0, 0], tray: [2] }, 3)).toBe(false);
    expect(isLine({ laid: 'abc', tray: [] }, 3)).toBe(false);
    expect(isLine(null, 3)).toBe(false);
  });
});
