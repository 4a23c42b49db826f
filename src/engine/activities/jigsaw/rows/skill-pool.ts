// Rows from chosen skills: what their questions give as sentences, drawn once for a jigsaw and then dealt out to rows.
import { localeOf } from '../../../numbers/locale.js';
import { compare, equals } from '../../../numbers/rational.js';
import { isOwnId } from '../../../own-questions/own-question.js';
import type { Question } from '../../../questions/question.js';
import type { Rng } from '../../../random/rng.js';
import { skillById } from '../../../skills/map.js';
import { drawQuestions, planSupply, type SupplyError, type SupplyRequest } from '../../supply.js';
import { signCell } from '../cells.js';
import type { JigsawCell, RowKind } from '../jigsaw.js';
import { questionPart, type QuestionPart } from './question-part.js';

export interface SkillPool {
  readonly parts: readonly QuestionPart[];
}

export type PoolResult =
  | { readonly ok: true; readonly value: SkillPool }
  | { readonly ok: false; readonly error: PoolError };

export interface PoolError {
  readonly code: SupplyError['code'] | 'jigsaw.skills';
  readonly message: string;
  readonly hint: string;
}

/** Draws for each chosen skill, and in all. */
const DRAWS_A_SKILL = 24;
const MOST_DRAWS = 160;
const LONGEST_TEXT = 16;

/** The sentences that the skills give, or which skill gives none. `wants` says which row kind they are for. */
export function poolOf(request: SupplyRequest, wants: RowKind): PoolResult {
  const isMade = wants === 'steps' || wants === 'repeats';
  if (isMade) {
    return fail(
      `Rows ${wants === 'steps' ? 'of steps' : 'that repeat'} are not made from ${request.own ? 'your own questions' : 'skills'}.`,
      `Leave ${request.own ? 'your questions' : 'the skills'} out, or choose mixed rows or number sentences.`,
    );
  }
  const plan = planSupply(request);
  if (!plan.ok) return plan;
  const locale = localeOf(request.locale);
  const parts = new Map<string, QuestionPart>();
  const giving = new Set<string>();
  const draws = Math.min(MOST_DRAWS, DRAWS_A_SKILL * plan.value.skills.length);
  for (const { question } of drawQuestions(plan.value, draws, true)) {
    const part = questionPart(isOwnId(question.skill) ? asSum(question) : question, locale);
    if (part === null || (wants === 'equivalents' && (part.left.length > 1 || part.sign !== '=='))) continue;
    if (
      [...part.left, part.right].some((cell) => cell.text.length > LONGEST_TEXT && cell.figure === undefined)
    )
      continue;
    // Where skills were not chosen, own questions stand alone: fillers would leave them out of most rows.
    if (request.own && !request.skills?.length && !isOwnId(question.skill)) break;
    giving.add(question.skill);
    parts.set(nameOf(part), part);
  }
  if (request.own && ![...giving].some(isOwnId)) {
    return fail(
      'None of your questions is a number sentence that fits a row.',
      'Write some as “{n} + {n + 2}”, with the sum as its answer, or choose skills instead.',
    );
  }
  const chosen = request.skills?.length ? plan.value.skills : [];
  const barren = chosen.find((skill) => !giving.has(skill.id));
  if (barren !== undefined) {
    const what = wants === 'equivalents' ? 'two forms of a number' : 'a true sentence of numbers';
    return fail(
      `The skill “${barren.title}” (${barren.id}) makes no rows: its questions do not give ${what}.`,
      `Leave it out, or choose a skill that does, such as ${wants === 'equivalents' ? 'place.words.100' : exampleSkill()}.`,
    );
  }
  return { ok: true, value: { parts: [...parts.values()] } };
}

/**
 * An own question with the sum that its text or its answer is worked out by, so that it can stand as a row: 37 + 39 = 76
 * for “37 + 39 = ?”, 2 × 37 = 74 for “What is double 37?”.
 */
function asSum(question: Question): Question {
  const [, sum] = /^([\d.+\-−×÷*/ ]+?)(?: ?= ?\??)?$/.exec(question.text) ?? [];
  const written = sum
    ?.replaceAll(/\s*([+\-−×÷*/])\s*/g, ' $1 ')
    .replaceAll('−', '-')
    .replaceAll('×', '*')
    .replaceAll('÷', '/');
  const expression = written ?? question.expression?.replaceAll(/[()]/g, '') ?? null;
  return { ...question, expression, text: `${question.text} ${expression ?? ''}` };
}

function exampleSkill(): string {
  const skill = skillById('add.2d2d');
  return skill === null ? 'one that adds' : `“${skill.title}” (${skill.id})`;
}

function fail(message: string, hint: string): { ok: false; error: PoolError } {
  return { ok: false, error: { code: 'jigsaw.skills', message, hint } };
}

/** Which cells a part has, whatever their order. */
function nameOf({ left, right }: QuestionPart): string {
  return [...left, right]
    .map((cell) => cell.text)
    .toSorted()
    .join(' ');
}

/** One sentence of so many cells from the pool, or null when it gives none of that length; `isEqual` leaves < and > out. */
export function dealtSentence(
  length: number,
  { parts }: SkillPool,
  rng: Rng,
  isEqual = false,
): JigsawCell[] | null {
  const whole = parts.filter((part) => part.left.length + 2 === length);
  const pairs = length >= 7 ? pairOf(length, parts, rng, isEqual) : null;
  if (whole.length === 0 || (pairs !== null && rng.chance(0.5))) return pairs;
  const { left, sign, right } = rng.pick(whole);
  const exchanged = sign === '==' ? sign : '<';
  return rng.chance(0.6) ? [...left, signCell(sign), right] : [right, signCell(exchanged), ...left];
}

const PAIR_TRIES = 30;

/** Two calculations compared: equal where the pool has such, else with < or >. */
function pairOf(
  length: number,
  parts: readonly QuestionPart[],
  rng: Rng,
  mustBeEqual: boolean,
): JigsawCell[] | null {
  const calculations = parts.filter((part) => part.left.length >= 3);
  if (calculations.length < 2) return null;
  let found: JigsawCell[] | null = null;
  for (let i = 0; i < PAIR_TRIES; i++) {
    const [a, b] = [rng.pick(calculations), rng.pick(calculations)];
    if (a === b || a.left.length + b.left.length + 1 !== length) continue;
    if (a.left.some((cell, at) => at % 2 === 0 && b.left.some((other) => other.text === cell.text))) continue;
    const isEqual = equals(a.value, b.value);
    const sign = isEqual ? '==' : compare(a.value, b.value) < 0 ? '<' : '>';
    const sentence = [...a.left, signCell(sign), ...b.left];
    if (isEqual) return sentence;
    if (!mustBeEqual) found = sentence;
  }
  return found;
}
