// Simulated classes on real boards: children who hold a planted misconception are found, and few others are named.
import { describe, expect, it } from 'vitest';
import { composeBoard } from '../activities/board/compose.js';
import { addDays } from '../numbers/calendar.js';
import { localeOf } from '../numbers/locale.js';
import { parseDayNumber } from '../numbers/day-number.js';
import { checkAnswer } from '../questions/check-answer.js';
import type { Question } from '../questions/question.js';
import { Rng } from '../random/rng.js';
import { misconceptionEvidence, misconceptionGroups } from './diagnosis.js';
import type { Answered } from './update.js';

const LOCALE = localeOf('en-AU');
const MONDAY = '2026-05-04';
/** So many that chance moves the rates by about half a percent; with 30, one in twenty was passed or missed by luck. */
const CLASSES = 100;
const CHILDREN = 26;
const HOLDERS = 5;
/** A rule shows only where a question can show it: planted are those that three boards can show at least so often. */
const LEAST_CHANCES = 4;
/** How often a holder works by the faulty rule where it applies; children do so on and off. Common practice. */
const FOLLOWS_RULE = 0.85;

interface Asked {
  readonly question: Question;
  readonly predicted: number;
  readonly on: string;
}

/** Three boards of a class, a day apart. */
function boardsOf(seed: number): readonly Asked[] {
  const rng = new Rng(seed);
  return [0, 1, 2].flatMap((day) => {
    const number = parseDayNumber(String(rng.int(24, 240)), LOCALE);
    if (!number.ok) throw new Error(number.error.message);
    const board = composeBoard({
      number: number.value,
      years: [4, 5],
      side: 'front',
      seed: rng.int(1, 1_000_000),
      locale: 'en-AU',
    });
    if (!board.ok) throw new Error(board.error.message);
    return board.value.rungs.map(({ question, predicted }) => ({
      question,
      predicted,
      on: addDays(MONDAY, day),
    }));
  });
}

/** What a child writes: by the planted rule where it applies, otherwise right as often as predicted. */
function answer({ question, predicted, on }: Asked, planted: string | null, rng: Rng): Answered {
  const slip = question.slips.find(({ misconception }) => misconception === planted);
  const follows = slip !== undefined && rng.chance(FOLLOWS_RULE);
  const isRight = !follows && rng.chance(predicted);
  const careless = question.slips.length > 0 && rng.chance(0.3) ? rng.pick(question.slips).text : '?';
  const typed = follows ? slip.text : isRight ? question.answer.text : careless;
  const checked = checkAnswer(question, typed, LOCALE);
  return {
    skill: question.skill,
    difficulty: question.difficulty,
    right: checked.verdict === 'right',
    on,
    questionId: question.id,
    slips: checked.slips.map(({ misconception }) => misconception),
    chances: [...new Set(question.slips.map(({ misconception }) => misconception))],
    expected: predicted,
  };
}

/** A misconception that these questions can show often enough. */
function plantIn(asked: readonly Asked[], rng: Rng): string | null {
  const chances = new Map<string, number>();
  for (const { question } of asked)
    for (const id of new Set(question.slips.map(({ misconception }) => misconception)))
      chances.set(id, (chances.get(id) ?? 0) + 1);
  const often = [...chances].filter(([, count]) => count >= LEAST_CHANCES).map(([id]) => id);
  return often.length === 0 ? null : rng.pick(often);
}

describe('planted misconceptions', () => {
  const tally = { holders: 0, found: 0, others: 0, falselyNamed: 0, classes: 0, grouped: 0 };
  for (let seed = 1; seed <= CLASSES; seed++) {
    const rng = new Rng(seed).fork('children');
    const asked = boardsOf(seed);
    const planted = plantIn(asked, rng);
    if (planted === null) continue;
    tally.classes++;
    const children = Array.from({ length: CHILDREN }, (_, i) => ({
      id: `child ${i}`,
      holds: i < HOLDERS,
      answers: asked.map((one) => answer(one, i < HOLDERS ? planted : null, rng)),
    }));
    for (const { holds, answers } of children) {
      const named = misconceptionEvidence(answers).filter(({ isNamed }) => isNamed);
      if (holds) {
        tally.holders++;
        if (named.some(({ misconception }) => misconception === planted)) tally.found++;
      } else {
        tally.others++;
        if (named.length > 0) tally.falselyNamed++;
      }
    }
    const group = misconceptionGroups(children).find(({ misconception }) => misconception === planted);
    if ((group?.children.filter((id) => Number(id.slice(6)) < HOLDERS).length ?? 0) >= 3) tally.grouped++;
  }

  it('are found in at least nine of ten children after three boards', () => {
    expect(tally.classes).toBeGreaterThan(CLASSES / 2);
    expect(tally.found / tally.holders).toBeGreaterThanOrEqual(0.9);
  });

  it('bring the children together who share one', () => {
    expect(tally.grouped / tally.classes).toBeGreaterThanOrEqual(0.9);
  });

  it('are named in fewer than one in twenty of the others', () => {
    expect(tally.falselyNamed / tally.others).toBeLessThan(0.05);
  });
});
