// Asking for paper.
import { z } from 'zod';
import { PAPERS } from './settings.js';

export const DOCUMENTS = ['poster', 'sheet', 'slips', 'key', 'relief', 'kit'] as const;
export type DocumentName = (typeof DOCUMENTS)[number];

export const PrintOrder = z.object({
  /** The boards to print: for a two-sided sheet the front first, then the back. */
  sheetIds: z.array(z.string()).min(1).max(8),
  document: z.enum(DOCUMENTS),
  paper: z.enum(PAPERS),
  /** A poster cut into A4 or Letter pages to be joined. */
  tiled: z.boolean().default(false),
  perPage: z.union([z.literal(6), z.literal(8)]).default(6),
  /** Print names: each child's on its slip (otherwise an empty name line), a group's on its sheet. */
  names: z.boolean().default(false),
  lowInk: z.boolean().default(false),
  largePrint: z.boolean().default(false),
});
export type PrintOrder = z.infer<typeof PrintOrder>;

export const PrintPreview = z.object({
  pages: z.array(z.string()),
  pageCount: z.number(),
  /** Whether the print has more pages than the preview shows. */
  isCut: z.boolean().optional(),
  warnings: z.array(z.string()),
});
export type PrintPreview = z.infer<typeof PrintPreview>;

/** A sheet of practice: questions of the skills in turn, made anew from the seed each time it is asked for. */
export const PracticeOrder = z.object({
  classId: z.string(),
  skills: z.array(z.string()).min(1).max(24),
  /** Questions on each copy. */
  questions: z.number().int().min(4).max(60),
  copies: z.number().int().min(1).max(60),
  seed: z.number().int().min(0).max(2_147_483_647),
  paper: z.enum(PAPERS),
  /** A last page with the answers. */
  withKey: z.boolean(),
  largePrint: z.boolean(),
});
export type PracticeOrder = z.infer<typeof PracticeOrder>;
