import { describe, expect, it } from 'vitest';
import { textWidth } from '../../../figures/text-width.js';
import { composeTrail, type TrailRequest } from '../compose.js';
import { THEMES, type Trail } from '../trail.js';
import { drawTile } from './draw-tile.js';

type Dot = readonly [x: number, y: number];

function trailOf(seed: number, more: Partial<TrailRequest> = {}): Trail {
  const made = composeTrail({ years: [3, 4], rows: 4, columns: 4, seed, locale: 'en-AU', ...more });
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

/** Points along every outline of a path in SVG's words M, L, c and Z, one list a closed outline. */
function outlinesOf(d: string): Dot[][] {
  const outlines: Dot[][] = [];
  let here: Dot = [0, 0];
  const draw = (from: Dot, ...n: [number, number, number, number, number, number]) => {
    for (let i = 1; i <= 4; i++) {
      const t = i / 4;
      const along = (axis: 0 | 1) =>
        from[axis] +
        3 * (1 - t) ** 2 * t * (n[axis] as number) +
        3 * (1 - t) * t ** 2 * (n[2 + axis] as number) +
        t ** 3 * (n[4 + axis] as number);
      outlines.at(-1)?.push([along(0), along(1)]);
    }
    here = [from[0] + n[4], from[1] + n[5]];
  };
  for (const [, letter, rest = ''] of d.matchAll(/([MLcZ])([^MLcZ]*)/g)) {
    const n = (rest.match(/-?[\d.]+/g) ?? []).map(Number);
    if (letter === 'M') {
      outlines.push([]);
      here = [n[0] as number, n[1] as number];
      outlines.at(-1)?.push(here);
    } else if (letter === 'L') {
      const [dx, dy] = [(n[0] as number) - here[0], (n[1] as number) - here[1]];
      draw(here, dx / 3, dy / 3, (2 * dx) / 3, (2 * dy) / 3, dx, dy);
    } else
      for (let i = 0; i < n.length; i += 6)
        draw(here, ...(n.slice(i, i + 6) as [number, number, number, number, number, number]));
  }
  return outlines;
}

/** The ink of each line on a tile, one list of points a line. */
function linesOf(svg: string): { part: string; dots: Dot[] }[] {
  return [...svg.matchAll(/<path data-part="(path|line)" d="([^"]+)"/g)].map(([, part, d]) => ({
    part: part as string,
    dots: outlinesOf(d as string).flat(),
  }));
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Boxes around the letters of the answer: bold letters are at most 12 % wider than the regular ones whose widths are known. */
function lettersOf(svg: string): Box[] {
  const answer = svg.slice(
    svg.indexOf('data-part="answer"'),
    svg.indexOf('data-part="set"') + 1 || undefined,
  );
  const texts = answer.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"[^>]*font-size="([\d.]+)"[^>]*>([^<]+)</g);
  return [...texts].map(([, x, y, size, words]) => {
    const half = (textWidth((words as string).replaceAll('&amp;', '&')) * Number(size) * 1.12) / 2;
    return {
      left: Number(x) - half,
      right: Number(x) + half,
      top: Number(y) - 0.74 * Number(size),
      bottom: Number(y) + (/[gjpqy,;]/.test(words as string) ? 0.24 : 0.02) * Number(size),
    };
  });
}

const gapTo = (box: Box, [x, y]: Dot) =>
  Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));

const leastGap = (a: readonly Dot[], b: readonly Dot[]) =>
  Math.min(...a.map(([x, y]) => Math.min(...b.map(([u, v]) => Math.hypot(x - u, y - v)))));

const TRAILS = [
  ...THEMES.map((theme, i) => trailOf(i + 1, { theme })),
  trailOf(21, { rows: 6, columns: 6 }),
  trailOf(22, { rows: 5, columns: 5, years: [5, 6] }),
  trailOf(23, { rows: 3, columns: 3, years: [1, 2] }),
];
const drawn = TRAILS.map((trail) => ({ trail, tiles: trail.tiles.map((_, i) => drawTile(trail, i).svg) }));

describe('drawTile', () => {
  it('keeps every two lines of a tile at least 4 hundredths of a side apart', () => {
    const gaps = drawn.flatMap(({ tiles }) =>
      tiles.flatMap((svg) => {
        const lines = linesOf(svg);
        return lines.flatMap((one, i) => lines.slice(i + 1).map((other) => leastGap(one.dots, other.dots)));
      }),
    );
    expect(gaps.length).toBeGreaterThan(30);
    expect(Math.min(...gaps)).toBeGreaterThan(4);
  });

  it('keeps answers 3 hundredths of a side clear of every line and 3 mm of every cut', () => {
    for (const { trail, tiles } of drawn) {
      const cut = (3 / drawTile(trail, 0).widthMm) * 100;
      tiles.forEach((svg, index) => {
        const boxes = lettersOf(svg);
        expect(boxes.length, `seed ${trail.seed} tile ${index}`).toBeGreaterThan(0);
        for (const box of boxes) {
          expect(Math.min(box.left, box.top, 100 - box.right, 100 - box.bottom)).toBeGreaterThan(cut);
          for (const { dots } of linesOf(svg))
            expect(Math.min(...dots.map((dot) => gapTo(box, dot)))).toBeGreaterThan(3);
        }
      });
    }
  });

  it('crosses an edge at the very places of its code, and nowhere else comes near it', () => {
    const [PATH, LINE] = [
      [9, 6.3],
      [4.2, 1.15],
    ] as const;
    for (const { trail, tiles } of drawn) {
      tiles.forEach((svg, index) => {
        const dots = linesOf(svg).flatMap((line) => line.dots);
        const sides = [
          dots.map(([x, y]) => [x, y] as const),
          dots.map(([x, y]) => [y, 100 - x] as const),
          dots.map(([x, y]) => [x, 100 - y] as const),
          dots.map(([x, y]) => [y, x] as const),
        ];
        sides.forEach((seen, side) => {
          const code = trail.tiles[index]?.edges[side] as string;
          const near = seen.filter(([, depth]) => depth < 0.01).map(([along]) => along);
          const middle = code === 'a' || code === 'c' ? 30 : 70;
          const name = `seed ${trail.seed} tile ${index} side ${side}`;
          if (code === '0')
            expect(
              seen.filter(([, depth]) => depth < 4),
              name,
            ).toEqual([]);
          else if (code === 'a' || code === 'b')
            for (const off of PATH)
              for (const sign of [-1, 1])
                expect(
                  Math.min(...near.map((along) => Math.abs(along - middle - sign * off))),
                  name,
                ).toBeLessThan(0.02);
          else
            expect(near.every((along) => Math.abs(along - middle) < LINE[0]) && near.length > 0, name).toBe(
              true,
            );
        });
      });
    }
  });

  it('marks which way is up on every tile, clear of the lines', () => {
    for (const { tiles } of drawn) {
      for (const svg of tiles) {
        const [, d = ''] = /data-part="up" d="([^"]+)"/.exec(svg) ?? [];
        const mark = outlinesOf(d)[0] as Dot[];
        expect(Math.min(...mark.map(([, y]) => y))).toBe(mark[0]?.[1]);
        for (const { dots } of linesOf(svg)) expect(leastGap(dots, mark)).toBeGreaterThan(3);
      }
    }
  });

  it('finds room for the number of the set, clear of cuts, lines and the answer', () => {
    let [marked, all] = [0, 0];
    for (const { trail } of drawn) {
      trail.tiles.forEach((_, index) => {
        const { svg, widthMm } = drawTile(trail, index, { set: 123 });
        all++;
        const mark =
          /<text data-part="set" x="([\d.]+)" y="([\d.]+)"[^>]*font-size="([\d.]+)"[^>]*>([^<]+)</.exec(svg);
        if (!mark) return;
        marked++;
        const [x, y, size] = [Number(mark[1]), Number(mark[2]), Number(mark[3])];
        expect(mark[4]).toMatch(/^(set )?123$/);
        const box = {
          left: x,
          top: y - 0.74 * size,
          right: x + textWidth(mark[4] as string) * size,
          bottom: y,
        };
        expect(
          (Math.min(box.left, box.top, 100 - box.right, 100 - box.bottom) * widthMm) / 100,
        ).toBeGreaterThan(3);
        for (const { dots } of linesOf(svg))
          expect(Math.min(...dots.map((dot) => gapTo(box, dot)))).toBeGreaterThan(1);
        for (const other of lettersOf(svg)) {
          const isApart =
            other.left > box.right + 2 ||
            other.right < box.left - 2 ||
            other.top > box.bottom + 2 ||
            other.bottom < box.top - 2;
          expect(isApart, `seed ${trail.seed} tile ${index}`).toBe(true);
        }
      });
    }
    expect(marked / all).toBeGreaterThan(0.97);
  });

  it('draws a line below a number that is another one upside down', () => {
    const [trail] = TRAILS as [Trail];
    const showing = (text: string) => {
      const tiles = trail.tiles.map((tile, i) =>
        i === 0 ? { ...tile, answer: { ...tile.answer, text } } : tile,
      );
      return drawTile({ ...trail, tiles }, 0).svg;
    };
    const lined = (text: string) => /<g data-part="answer">.*<rect/.test(showing(text));
    expect(['6', '9', '68', '106', '1.6', '66'].filter(lined)).toEqual(['6', '9', '68', '106', '1.6', '66']);
    expect(['8', '101', '69', '26', '7', '$6'].filter(lined)).toEqual([]);
  });

  it('draws the same tile from the same trail, and tells a listener what is on each side', () => {
    const [trail] = TRAILS as [Trail];
    expect(drawTile(trail, 3)).toEqual(drawTile(trailOf(1, { theme: 'lantern' }), 3));
    expect(drawTile(trail, 0).alt).toMatch(/^.+\. Top: .+\. Right side: .+\. Bottom: .+\. Left side: .+\.$/);
  });
});
