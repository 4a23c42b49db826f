// A trail on the wire; docs/architecture.md explains each field.
import {
  EDGE_CODES,
  SIDES,
  THEMES,
  TRAIL_SIZE,
  type Trail as EngineTrail,
} from '#engine/activities/trail/trail.js';
import { PITCHES } from '#engine/activities/pitch.js';
import { whyNotDrawable } from '#engine/activities/trail/draw/drawable.js';
import { LOCALES } from '#engine/numbers/locale.js';
import { z } from 'zod';
import { Answer, Question } from './question.js';

const size = z.number().int().min(TRAIL_SIZE.least).max(TRAIL_SIZE.most);
const count = z.number().int().min(0);
const edge = z.enum(EDGE_CODES);
const side = z.enum(SIDES);
const rim = z.array(edge).min(TRAIL_SIZE.least).max(TRAIL_SIZE.most);
const door = z.object({ cell: count, side });

export const Trail: z.ZodType<EngineTrail> = z
  .object({
    kind: z.literal('trail'),
    seed: z.number().int(),
    rows: size,
    columns: size,
    years: z.array(z.number().int().min(0).max(12)),
    pitch: z.enum(PITCHES),
    locale: z.enum(LOCALES),
    theme: z.enum(THEMES),
    cells: z.array(z.object({ question: Question })),
    tiles: z.array(
      z.object({
        answer: Answer,
        edges: z.array(edge).length(4),
        path: z.array(z.tuple([side, side])).max(2),
        ends: z.array(side).max(4),
      }),
    ),
    frame: z.object({ north: rim, east: rim, south: rim, west: rim }),
    entry: door,
    exit: door,
    proof: z.object({
      arrangements: count,
      swapsShown: count,
      swaps: count,
      leastBreaks: count,
      pictureOnlyNodes: count,
    }),
  })
  .refine(
    ({ rows, columns, cells, tiles }) => cells.length === rows * columns && tiles.length === rows * columns,
    {
      message: 'expected one cell and one tile for each of rows x columns',
      abort: true,
    },
  )
  .superRefine((trail, context) => {
    const reason = whyNotDrawable(trail);
    if (reason)
      context.addIssue({ code: 'custom', message: `a trail that can be drawn was expected, but ${reason}` });
  });
