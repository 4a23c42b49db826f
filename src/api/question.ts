// A question on the wire; docs/architecture.md explains each field.
import { STRANDS, type StrandId } from '#engine/curriculum/strands.js';
import type { FigureSpec } from '#engine/figures/figure.js';
import { ANSWER_KINDS, type Question as EngineQuestion } from '#engine/questions/question.js';
import { z } from 'zod';

const value = z.string().regex(/^-?\d{1,15}(\/\d{1,15})?$/, 'expected a whole number or n/d');

export const Answer = z.object({
  kind: z.enum(ANSWER_KINDS),
  text: z.string().min(1).max(200),
  value: value.nullable(),
});

export const Slip = z.object({
  misconception: z.string(),
  text: z.string().max(200),
  value: value.nullable(),
});

const strandIds = STRANDS.map((strand) => strand.id) as [StrandId, ...StrandId[]];

export const Question: z.ZodType<EngineQuestion> = z.object({
  id: z.string().min(1).max(120),
  skill: z.string().min(1).max(80),
  year: z.number().int().min(0).max(12),
  strand: z.enum(strandIds),
  text: z.string().min(1).max(400),
  figure: z
    .looseObject({ kind: z.string() })
    .transform((spec) => spec as unknown as FigureSpec)
    .nullable(),
  answer: Answer,
  accepts: z.array(z.string().max(200)).max(50),
  expression: z.string().max(400).nullable(),
  difficulty: z.number().min(-20).max(20),
  slips: z.array(Slip).max(50),
  strategy: z.array(z.string().max(400)).max(30),
  usesNumber: z.string().nullable().default(null),
}) as unknown as z.ZodType<EngineQuestion>;
