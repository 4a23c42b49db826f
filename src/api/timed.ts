// Timed practice on the wire: what `make timed --json` prints and `print` reads.
import { ROOMS } from '#engine/activities/timed/ladder.js';
import type { Timed as EngineTimed } from '#engine/activities/timed/timed.js';
import { LOCALES } from '#engine/numbers/locale.js';
import { z } from 'zod';
import { Question } from './question.js';

const count = z.number().int().min(0);

export const TimedForm = z.object({
  form: z.string().regex(/^[A-Z]{1,2}$/, 'expected a letter or two'),
  questions: z.array(Question).min(1).max(120),
  meanDifficulty: z.number(),
  digits: count,
});

export const Timed: z.ZodType<EngineTimed> = z.object({
  kind: z.literal('timed'),
  seed: z.number().int(),
  locale: z.enum(LOCALES),
  level: z.number().int().min(1).nullable(),
  levelId: z.string().min(1).max(2000),
  title: z.string().min(1).max(400),
  room: z.enum(ROOMS),
  minutes: z.number().min(1).max(15),
  forms: z.array(TimedForm).min(1).max(100),
  proof: z.object({
    space: count,
    difficultyGap: z.number(),
    yearGap: z.number(),
    digitsGap: z.number(),
    fewestAsked: count,
    mostAsked: count,
  }),
}) as unknown as z.ZodType<EngineTimed>;
