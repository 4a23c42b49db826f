// Draft -> Question: the single door through which every question passes, so that guarantee 1 is checked in one place.
import { hashText } from '../random/rng.js';
import type { Locale } from '../numbers/locale.js';
import type { Skill } from '../skills/skill.js';
import { answersEqual } from './equivalence.js';
import type { Draft } from './draft.js';
import { difficultyOf } from './difficulty.js';
import type { Question, Slip } from './question.js';
import { withUnitSigns } from './unit-signs.js';

/** A space between a number and the unit that follows it. */
const GAP = /(?<=\d) (?=(?:mm|cm|m|km|g|kg|m?[Ll]|min|h|°[CF]|o’clock)(?![\w]))/g;

/** The sentence with each number and its unit held together, so that no line ends between them. */
const heldTogether = (sentence: string): string => sentence.replace(GAP, '\u00a0');

/** The finished question of a draft. Slips equal to the right answer, to an accepted form or to one another are dropped. */
export function finishQuestion(skill: Skill, templateId: string, written: Draft, locale: Locale): Question {
  const draft = withUnitSigns(written, locale);
  const accepts = [...new Set([draft.answer.text, ...(draft.accepts ?? [])])];
  const slips: Slip[] = [];
  for (const { misconception, answer } of draft.slips) {
    const slip = { misconception, text: answer.text, value: answer.value };
    const isRight =
      answersEqual(slip, draft.answer) ||
      accepts.some((form) => answersEqual(slip, { text: form, value: null }));
    if (!isRight && !slips.some((other) => answersEqual(other, slip))) slips.push(slip);
  }
  const figureKey = draft.figure ? JSON.stringify(draft.figure) : '';
  return {
    id: `${skill.id}:${hashText(`${templateId}|${draft.text}|${figureKey}|${draft.answer.text}`).toString(36)}`,
    skill: skill.id,
    year: skill.year,
    strand: skill.strand,
    text: heldTogether(draft.text),
    figure: draft.figure ?? null,
    answer: draft.answer,
    accepts,
    expression: draft.expression,
    difficulty: difficultyOf(draft.features, skill.shift),
    slips,
    strategy: draft.strategy.map(heldTogether),
    usesNumber: draft.usesNumber ?? null,
  };
}
