// What the marks say: skills of the class and of each child, with how sure we are.
import { SKILL_STANDINGS } from '#engine/learning/summary.js';
import { z } from 'zod';
import { Finding } from './marking.js';

export const SkillStanding = z.object({
  skillId: z.string(),
  state: z.enum(SKILL_STANDINGS),
  /** Chance of success on a plain question of the skill, 0 to 1. */
  chance: z.number(),
  /** Where that chance lies in four cases out of five. */
  low: z.number(),
  high: z.number(),
  /** How many answers it rests on. */
  answers: z.number(),
});
export type SkillStanding = z.infer<typeof SkillStanding>;

export const SkillInfo = z.object({
  id: z.string(),
  title: z.string(),
  strand: z.string(),
  year: z.number(),
});
export type SkillInfo = z.infer<typeof SkillInfo>;

export const ChildStanding = z.object({
  childId: z.string(),
  shownAs: z.string(),
  year: z.number(),
  answers: z.number(),
  skills: z.array(SkillStanding),
  /** Patterns in wrong answers that have been seen often enough to be worth a look. */
  findings: z.array(Finding.extend({ seen: z.number(), chances: z.number(), examples: z.array(z.string()) })),
});
export type ChildStanding = z.infer<typeof ChildStanding>;

/** The class at one skill: predicted share that does its plain case, and how many children stand where. */
export const ClassStanding = z.object({
  skillId: z.string(),
  chance: z.number(),
  counts: z.record(z.enum(SKILL_STANDINGS), z.number()),
  needTeaching: z.array(z.string()),
  answers: z.number(),
});
export type ClassStanding = z.infer<typeof ClassStanding>;

/** One sentence of what the marks say, and what it opens to: the child's answers, or the skill's row. */
export const Saying = z.object({
  text: z.string(),
  childId: z.string().nullable(),
  skillId: z.string().nullable(),
});
export type Saying = z.infer<typeof Saying>;

export const UnderstandingView = z.object({
  skills: z.array(SkillInfo),
  class: z.array(ClassStanding),
  children: z.array(ChildStanding),
  /** Three sentences at most: who to see, what to reteach and to whom, who to stretch. */
  sentences: z.array(Saying),
  /** Days with marked boards. */
  markedBoards: z.number(),
});
export type UnderstandingView = z.infer<typeof UnderstandingView>;

/** The answers behind one child's standing in one skill, newest first. */
export const EvidenceView = z.object({
  skill: SkillInfo,
  standing: SkillStanding,
  sentence: z.string(),
  answers: z.array(
    z.object({
      date: z.string(),
      /** True when this very skill was asked; else a neighbour that moves with it. */
      isOwn: z.boolean(),
      text: z.string(),
      answer: z.string(),
      state: z.enum(['right', 'wrong', 'blank']),
      typed: z.string(),
      findings: z.array(Finding),
      /** How far this answer moved the chance of success, in percentage points. */
      moved: z.number(),
    }),
  ),
});
export type EvidenceView = z.infer<typeof EvidenceView>;
