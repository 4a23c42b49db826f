// The solver against counts that are published; sources beside each.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Covering, countCovers, searchCovers } from './exact-cover.js';

describe('published counts', () => {
  it('8 queens: 92 (OEIS A000170); also 5 to 7', () => {
    const queens = (n: number) => {
      const options: Covering[][] = [];
      for (let row = 0; row < n; row++) {
        for (let column = 0; column < n; column++) {
          options.push([
            { item: row },
            { item: n + column },
            { item: 2 * n + row + column },
            { item: 4 * n - 1 + row - column + n - 1 },
          ]);
        }
      }
      return searchCovers({ primary: 2 * n, secondary: 4 * n - 2, options }).covers;
    };
    expect([5, 6, 7, 8].map(queens)).toEqual([10, 4, 40, 92]);
  });

  it('Latin squares of order 4: 576 (OEIS A002860)', () => {
    const options: Covering[][] = [];
    for (let row = 0; row < 4; row++)
      for (let column = 0; column < 4; column++)
        for (let n = 0; n < 4; n++)
          options.push([
            { item: 4 * row + column },
            { item: 16 + 4 * row + n },
            { item: 32 + 4 * column + n },
          ]);
    expect(searchCovers({ primary: 48, options }).covers).toBe(576);
    expect(countCovers({ primary: 48, options })).toBe(576n);
  });

  it('magic squares of order 3: 8 in all (OEIS A006052: 1 up to symmetry), with colours for the cells', () => {
    const lines = [
      [0, 1, 2],
      [3, 4, 5],
      [6, 7, 8],
      [0, 3, 6],
      [1, 4, 7],
      [2, 5, 8],
      [0, 4, 8],
      [2, 4, 6],
    ];
    const options: Covering[][] = [];
    lines.forEach((cells, line) => {
      for (let a = 1; a <= 9; a++)
        for (let b = 1; b <= 9; b++) {
          const numbers = [a, b, 15 - a - b];
          if (new Set(numbers).size < 3 || numbers.some((n) => n < 1 || n > 9)) continue;
          options.push([
            { item: line },
            ...(line < 3 ? numbers.map((n) => ({ item: 7 + n })) : []),
            ...cells.map((cell, i) => ({ item: 17 + cell, colour: numbers[i] as number })),
          ]);
        }
    });
    expect(searchCovers({ primary: 17, secondary: 9, options }).covers).toBe(8);
  });

  it('pentominoes in 6 x 10: 2339 up to symmetry, 9356 in all (classic)', () => {
    const shapes: readonly (readonly [number, number][])[] = [
      [
        [0, 1],
        [1, 0],
        [1, 1],
        [1, 2],
        [2, 1],
      ],
      [
        [0, 0],
        [0, 1],
        [0, 2],
        [0, 3],
        [0, 4],
      ],
      [
        [0, 1],
        [0, 2],
        [1, 0],
        [1, 1],
        [2, 1],
      ],
      [
        [0, 0],
        [1, 0],
        [2, 0],
        [3, 0],
        [3, 1],
      ],
      [
        [0, 1],
        [1, 1],
        [2, 0],
        [2, 1],
        [3, 0],
      ],
      [
        [0, 0],
        [0, 1],
        [1, 0],
        [1, 1],
        [2, 0],
      ],
      [
        [0, 0],
        [0, 1],
        [0, 2],
        [1, 1],
        [2, 1],
      ],
      [
        [0, 0],
        [0, 2],
        [1, 0],
        [1, 1],
        [1, 2],
      ],
      [
        [0, 0],
        [1, 0],
        [2, 0],
        [2, 1],
        [2, 2],
      ],
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [2, 1],
        [2, 2],
      ],
      [
        [0, 1],
        [1, 0],
        [1, 1],
        [2, 1],
        [3, 1],
      ],
      [
        [0, 0],
        [0, 1],
        [1, 1],
        [2, 1],
        [2, 2],
      ],
    ];
    const options: Covering[][] = [];
    shapes.forEach((shape, piece) => {
      const seen = new Set<string>();
      for (let turn = 0; turn < 8; turn++) {
        const turned = shape.map(([r, c]): [number, number] => {
          const [a, b] = turn & 1 ? [c, r] : [r, c];
          return [turn & 2 ? -a : a, turn & 4 ? -b : b];
        });
        const [top, left] = [Math.min(...turned.map(([r]) => r)), Math.min(...turned.map(([, c]) => c))];
        const cells = turned.map(([r, c]): [number, number] => [r - top, c - left]);
        const name = JSON.stringify(cells.map(String).sort());
        if (seen.has(name)) continue;
        seen.add(name);
        for (let row = 0; row < 6; row++)
          for (let column = 0; column < 10; column++) {
            const placed = cells.map(([r, c]): [number, number] => [r + row, c + column]);
            if (placed.some(([r, c]) => r > 5 || c > 9)) continue;
            // The cross looks the same from all sides: with its middle in one quarter, one of each four placings is left.
            if (piece === 0 && (row + 1 > 2 || column + 1 > 4)) continue;
            options.push([{ item: piece }, ...placed.map(([r, c]) => ({ item: 12 + 10 * r + c }))]);
          }
      }
    });
    expect(searchCovers({ primary: 72, options }).covers).toBe(2339);
  });

  it('domino tilings of 2n x 2n: 36, 6728, 12 988 816 (OEIS A004003); 2x10 and 4x5: 89 and 95', () => {
    const dominoes = (rows: number, columns: number) => {
      const options: Covering[][] = [];
      for (let r = 0; r < rows; r++)
        for (let c = 0; c < columns; c++) {
          const item = r * columns + c;
          if (c + 1 < columns) options.push([{ item }, { item: item + 1 }]);
          if (r + 1 < rows) options.push([{ item }, { item: item + columns }]);
        }
      return { primary: rows * columns, options };
    };
    expect(
      [
        [4, 4],
        [6, 6],
        [8, 8],
        [2, 10],
        [4, 5],
      ].map(([r = 0, c = 0]) => countCovers(dominoes(r, c))),
    ).toEqual([36n, 6728n, 12988816n, 89n, 95n]);
    expect(searchCovers(dominoes(6, 6)).covers).toBe(6728);
  });
});

describe('any small problem', () => {
  const problem = fc.record({
    options: fc.array(
      fc.record({
        primary: fc.uniqueArray(fc.nat(4), { minLength: 1, maxLength: 3 }),
        secondary: fc.uniqueArray(fc.record({ item: fc.nat(2), colour: fc.nat(2) }), {
          maxLength: 2,
          selector: ({ item }) => item,
        }),
      }),
      { maxLength: 12 },
    ),
  });

  it('has as many covers as trying every subset of options finds', () => {
    fc.assert(
      fc.property(problem, ({ options }) => {
        const coverings = options.map((option): Covering[] => [
          ...option.primary.map((item) => ({ item })),
          ...option.secondary.map(({ item, colour }) =>
            colour === 0 ? { item: 5 + item } : { item: 5 + item, colour },
          ),
        ]);
        let covers = 0;
        for (let subset = 0; subset < 1 << options.length; subset++) {
          const chosen = options.filter((_, i) => (subset >> i) & 1);
          const count = (item: number) => chosen.filter((option) => option.primary.includes(item)).length;
          const isExact = [0, 1, 2, 3, 4].every((item) => count(item) === 1);
          const agrees = [0, 1, 2].every((item) => {
            const shades = chosen.flatMap((option) => option.secondary.filter((s) => s.item === item));
            return (
              shades.length < 2 ||
              (shades[0]?.colour !== 0 && new Set(shades.map((s) => s.colour)).size === 1)
            );
          });
          if (isExact && agrees) covers++;
        }
        expect(searchCovers({ primary: 5, secondary: 3, options: coverings }).covers).toBe(covers);
      }),
    );
  });

  it('stops at its limits and says so', () => {
    const options = [0, 1].flatMap((item) => [[{ item }], [{ item }], [{ item }]]);
    expect(searchCovers({ primary: 2, options })).toMatchObject({ covers: 9, isComplete: true });
    expect(searchCovers({ primary: 2, options }, { covers: 2 })).toMatchObject({
      covers: 2,
      isComplete: false,
    });
    expect(searchCovers({ primary: 2, options }, { nodes: 3 }).isComplete).toBe(false);
    expect(() => searchCovers({ primary: 1, options })).toThrow(RangeError);
  });
});
