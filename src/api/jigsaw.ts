// A composed jigsaw on the wire: what `make jigsaw --json` prints and `print` reads.
import {
  type Jigsaw as EngineJigsaw,
  JIGSAW_LEVELS,
  LEAST_COLUMNS,
  LEAST_ROWS,
  MOST_COLUMNS,
  MOST_ROWS,
  ROW_KINDS,
  ROW_RULES,
} from '#engine/activities/jigsaw/jigsaw.js';
import type { FigureSpec } from '#engine/figures/figure.js';
import { LOCALES } from '#engine/numbers/locale.js';
import { z } from 'zod';

const Place = z.tuple([
  z
    .number()
    .int()
    .min(0)
    .max(MOST_ROWS - 1),
  z
    .number()
    .int()
    .min(0)
    .max(MOST_COLUMNS - 1),
]);

const Cell = z.object({
  text: z.string().max(60),
  expression: z.string().max(60),
  figure: z
    .looseObject({ kind: z.string() })
    .transform((spec) => spec as unknown as FigureSpec)
    .optional(),
});

/** A jigsaw whose pieces cover every cell once; anything else is refused with the path of what is wrong. */
export const Jigsaw: z.ZodType<EngineJigsaw> = z
  .object({
    kind: z.literal('jigsaw'),
    seed: z.number().int(),
    years: z.array(z.number().int().min(0).max(12)).min(1),
    locale: z.enum(LOCALES),
    rowKind: z.enum(ROW_KINDS),
    rows: z.number().int().min(LEAST_ROWS).max(MOST_ROWS),
    columns: z.number().int().min(LEAST_COLUMNS).max(MOST_COLUMNS),
    cells: z.array(Cell),
    rowRule: z.enum(ROW_RULES),
    pieces: z.array(z.object({ cells: z.array(Place).min(1).max(12) })).min(1),
    given: z.array(Place),
    proof: z.object({
      assemblies: z.number().int(),
      outlineFits: z.number().int(),
      wrongTries: z.number().int(),
      level: z.enum(JIGSAW_LEVELS),
    }),
  })
  .refine(({ cells, rows, columns }) => cells.length === rows * columns, {
    message: 'one cell for every row and column',
    path: ['cells'],
  })
  .refine(
    ({ pieces, rows, columns }) => {
      const covered = pieces.flatMap((piece) => piece.cells);
      return (
        covered.every(([row, column]) => row < rows && column < columns) &&
        covered.length === rows * columns &&
        new Set(covered.map((place) => place.join())).size === covered.length
      );
    },
    { message: 'every cell lies on one piece', path: ['pieces'] },
  )
  .refine(({ given, rows, columns }) => given.every(([row, column]) => row < rows && column < columns), {
    message: 'printed cells lie in the frame',
    path: ['given'],
  }) as unknown as z.ZodType<EngineJigsaw>;
