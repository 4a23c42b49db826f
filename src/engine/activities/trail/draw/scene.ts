// What a scene is made of. Its pictures are drawn in boxes of fixed size, in millimetres, with a few kinds of pen.
import { INK, mm } from '../../../figures/svg.js';

/** Outline, fine line, solid ink, thick line; all outlines are filled with white, so that what lies behind is covered. */
export const PENS = ['outline', 'fine', 'ink', 'thick'] as const;
export type Pen = (typeof PENS)[number];

/** One pull of a pen along an outline in SVG's words. */
export type Pull = readonly [pen: Pen, d: string];
export type Sketched = readonly Pull[];

/** Width and height of the box of the pictures at entry and exit; their foot stands on its lower edge. */
export const PICTURE_MM = { width: 24, height: 18 } as const;

export interface Scene {
  /** What the child does: one sentence. */
  readonly story: string;
  readonly entry: Sketched;
  readonly exit: Sketched;
  /** Small marks along the middle of the path, within 4 units of 0, 0, running to the right. */
  readonly tread: Sketched;
  /** Units from mark to mark. */
  readonly pace: number;
  /** What lies in the round end of a path, within 7 units of 0, 0. */
  readonly glade: Sketched;
  /** How the second line looks. */
  readonly line: 'vine' | 'rope' | 'beads';
  /** What the second line ends in, within 8 units of 0, 0. */
  readonly tip: Sketched;
  /** Small things to scatter above and below the cells, within 3.5 mm of 0, 0. */
  readonly sky: readonly Sketched[];
  readonly ground: readonly Sketched[];
}

const PAINT: Record<Pen, (weight: number) => string> = {
  outline: (weight) => `fill="#fff" stroke-width="${mm(weight * 0.8)}"`,
  fine: (weight) => `fill="none" stroke-width="${mm(weight * 0.45)}"`,
  ink: (weight) => `fill="${INK}" stroke-width="${mm(weight * 0.3)}"`,
  thick: (weight) => `fill="none" stroke-width="${mm(weight * 1.2)}"`,
};

/** Markup of a sketch; pens are so many times as wide as `weight` 1, at which an outline is 0.8 wide. */
export function sketched(pulls: Sketched, weight = 1): string {
  return penned(pullsAt(pulls, weight));
}

/** Markup of the same sketch at several places; `turn` in degrees. */
export function sketchedAt(
  pulls: Sketched,
  places: readonly { readonly x: number; readonly y: number; readonly turn: number }[],
  weight = 1,
): string {
  const each = places.map(
    ({ x, y, turn }) =>
      `<g transform="translate(${x.toFixed(1)} ${y.toFixed(1)})rotate(${turn.toFixed(0)})">`,
  );
  return penned(each.map((open) => `${open}${pullsAt(pulls, weight)}</g>`).join(''));
}

function pullsAt(pulls: Sketched, weight: number): string {
  return pulls.map(([pen, d]) => `<path d="${d}" ${PAINT[pen](weight)}/>`).join('');
}

function penned(body: string): string {
  return `<g stroke="${INK}" stroke-linecap="round" stroke-linejoin="round">${body}</g>`;
}
