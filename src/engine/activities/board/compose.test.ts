import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildClassModel, typicalClass } from '../../learning/class-model.js';
import type { Answered } from '../../learning/update.js';
import { type DayNumber, parseDayNumber } from '../../numbers/day-number.js';
import { localeOf } from '../../numbers/locale.js';
import { SKILLS } from '../../skills/map.js';
import type { Board } from './board.js';
import type { BoardRequest } from './board-request.js';
import { composeBoard } from './compose.js';
import { checkBoard } from './proof.js';
import { replaceRung, withRung } from './replace-rung.js';

const NUMBERS = ['7', '47', '305', '3.6', '$4.85', '3/4'] as const;
const CLASSES: readonly (readonly number[])[] = [
  [1, 2],
  [3, 4],
  [4, 5],
  [5, 6],
];
const MODELS = new Map(CLASSES.map((years) => [years, typicalClass(years)]));

function dayNumber(text: string): DayNumber {
  const parsed = parseDayNumber(text, localeOf('en-AU'));
  if (!parsed.ok) throw new Error(parsed.error.message);
  return parsed.value;
}

function request(over: Partial<BoardRequest> = {}): BoardRequest {
  return { number: dayNumber('47'), years: [4, 5], side: 'front', seed: 1, locale: 'en-AU', ...over };
}

function composed(over: Partial<BoardRequest> = {}): Board {
  const result = composeBoard(request(over));
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

/** The broken promises of a board after a trip through JSON. */
function problemsOf(board: Board): readonly string[] {
  const check = checkBoard(JSON.parse(JSON.stringify(board)) as Board);
  return check.ok ? [] : check.error.problems;
}

const anyRequest = fc.record({
  seed: fc.integer(),
  number: fc.constantFrom(...NUMBERS),
  years: fc.constantFrom(...CLASSES),
  side: fc.constantFrom('front' as const, 'back' as const),
  rungs: fc.integer({ min: 6, max: 16 }),
  due: fc.shuffledSubarray(
    SKILLS.map((skill) => skill.id),
    { maxLength: 6 },
  ),
});

describe('composeBoard', () => {
  it('keeps every promise for any seed, number, class, side, count of rungs and due reviews', () => {
    fc.assert(
      fc.property(anyRequest, ({ number, years, ...over }) => {
        const board = composed({
          ...over,
          number: dayNumber(number),
          years,
          classModel: MODELS.get(years) ?? typicalClass(years),
        });
        expect(problemsOf(board)).toEqual([]);
        expect(board.rungs).toHaveLength(over.rungs);
      }),
      { numRuns: 120, seed: 20260201 },
    );
  });

  it('gives the same bytes for the same request, and another board for another seed', () => {
    for (const number of NUMBERS) {
      const once = JSON.stringify(composed({ number: dayNumber(number) }));
      expect(JSON.stringify(composed({ number: dayNumber(number) }))).toBe(once);
      expect(JSON.stringify(composed({ number: dayNumber(number), seed: 2 }).rungs)).not.toBe(
        JSON.stringify(JSON.parse(once).rungs),
      );
    }
  });

  it('meets every target within 0.08 and keeps all rules where much can be asked: 47 in Years 3 to 5', () => {
    for (const years of [
      [3, 4],
      [4, 5],
    ]) {
      for (let seed = 1; seed <= 5; seed++) {
        const { proof } = composed({ years, seed });
        expect(proof.missedRungs).toEqual([]);
        expect(proof.relaxed).toBeUndefined();
        expect(proof.strands).toBeGreaterThanOrEqual(6);
      }
    }
  });

  it('places due reviews, also one that cannot use the number, and says so', () => {
    const due = ['mult.table.3', 'add.to20'].filter((id) => SKILLS.some((skill) => skill.id === id));
    const noWhole = SKILLS.find(
      (skill) => skill.year === 3 && skill.templates.every((template) => !template.askOn),
    );
    const wanted = [...due, ...(noWhole ? [noWhole.id] : [])];
    const { rungs, proof } = composed({ due: wanted });
    expect(proof.reviewsPlaced).toEqual(wanted);
    for (const rung of rungs.filter(({ question }) => wanted.includes(question.skill))) {
      expect(rung.why).toMatch(/^Brought back because it is due/);
      if (rung.question.usesNumber === null) expect(rung.why).toContain('cannot use 47');
    }
  });

  it('follows the class: a strong class gets harder questions than a struggling one', () => {
    const answers = (right: boolean): Answered[] =>
      SKILLS.filter((skill) => skill.year === 4)
        .slice(0, 24)
        .map((skill, i) => ({
          skill: skill.id,
          difficulty: -1,
          right,
          on: `2026-05-${String(1 + i).padStart(2, '0')}`,
          questionId: `q${i}`,
          slips: [],
        }));
    const classOf = (right: boolean) =>
      buildClassModel({
        on: '2026-06-01',
        children: Array.from({ length: 27 }, (_, i) => ({ id: String(i), year: 4, answers: answers(right) })),
      });
    const mean = (board: Board) =>
      board.rungs.reduce((sum, rung) => sum + rung.commonDifficulty, 0) / board.rungs.length;
    const strong = composed({ years: [4], classModel: classOf(true) });
    const struggling = composed({ years: [4], classModel: classOf(false) });
    expect(mean(strong)).toBeGreaterThan(mean(struggling) + 0.8);
  });

  it('keeps locked rungs, avoids texts, and refuses locks that contradict each other', () => {
    const board = composed();
    const [third, ninth] = [board.rungs[2], board.rungs[8]];
    if (!third || !ninth) throw new Error('a board of 12 has these rungs');
    const again = composed({
      seed: 9,
      fixed: new Map([
        [3, third.question],
        [9, ninth.question],
      ]),
      avoid: [board.rungs[4]?.question.text ?? ''],
    });
    expect(again.rungs[2]?.question).toEqual(third.question);
    expect(again.rungs[8]?.question).toEqual(ninth.question);
    expect(again.rungs.map((rung) => rung.question.text)).not.toContain(board.rungs[4]?.question.text);
    expect(problemsOf(again)).toEqual([]);
    const upsideDown = composeBoard(
      request({
        fixed: new Map([
          [3, ninth.question],
          [9, third.question],
        ]),
      }),
    );
    expect(upsideDown).toMatchObject({ ok: false, error: { code: 'board.locks' } });
  });

  it.each([
    [{ years: [] }, 'board.years'],
    [{ years: [9] }, 'board.years'],
    [{ rungs: 5 }, 'board.rungs'],
    [{ seed: 2 ** 40 }, 'board.seed'],
    [{ skills: [] }, 'board.candidates'],
  ] as const)('answers %j with an error that says how to mend it', (over, code) => {
    const result = composeBoard(request(over));
    expect(result).toMatchObject({ ok: false, error: { code } });
    expect(result.ok ? '' : result.error.hint).toMatch(/\.$/);
  });
});

describe('replaceRung', () => {
  it('offers several other skills for every rung, each keeping every promise once placed', () => {
    for (const number of ['47', '3/4']) {
      const asked = request({ number: dayNumber(number), seed: 3 });
      const board = composed(asked);
      for (const { rung, question } of board.rungs) {
        const others = replaceRung(board, rung, asked);
        if (number === '47') expect(others.length).toBeGreaterThanOrEqual(2);
        expect(new Set(others.map((other) => other.question.skill)).size).toBe(others.length);
        for (const other of others) {
          expect(other.question.text).not.toBe(question.text);
          expect(problemsOf(withRung(board, other, asked))).toEqual([]);
        }
      }
    }
  });

  it('has nothing for a rung that the board lacks', () => {
    expect(replaceRung(composed(), 13, request())).toEqual([]);
  });
});

describe('checkBoard', () => {
  const board = composed();
  const broken = (change: (rungs: Board['rungs'][number][]) => void, proof: Partial<Board['proof']> = {}) => {
    const rungs = JSON.parse(JSON.stringify(board.rungs)) as Board['rungs'][number][];
    change(rungs);
    return problemsOf({ ...board, rungs, proof: { ...board.proof, ...proof } }).join(' ');
  };
  const set = (rungs: Board['rungs'][number][], at: number, over: Partial<Board['rungs'][number]>) => {
    rungs[at] = { ...(rungs[at] as Board['rungs'][number]), ...over };
  };

  it('sees each promise broken', () => {
    const second = board.rungs[1] as Board['rungs'][number];
    expect(broken(() => {})).toBe('');
    expect(broken((rungs) => set(rungs, 4, { rung: 6 }))).toContain('numbered 6');
    expect(broken((rungs) => set(rungs, 4, { predicted: 0.99 }))).toContain('predicted easier');
    expect(broken((rungs) => set(rungs, 4, { commonDifficulty: -3 }))).toContain('another difficulty');
    expect(broken((rungs) => set(rungs, 4, { target: 0.99 }))).toContain('does not fall');
    expect(broken((rungs) => set(rungs, 4, { question: { ...second.question } }))).toContain(
      'stands on the board twice',
    );
    expect(
      broken((rungs) =>
        set(rungs, 2, {
          question: { ...(rungs[2] as typeof second).question, answer: second.question.answer },
        }),
      ),
    ).toContain('same answer');
    expect(
      broken((rungs) =>
        set(rungs, 4, { question: { ...(rungs[4] as typeof second).question, usesNumber: null } }),
      ),
    ).toContain('neither uses 47');
    expect(broken((rungs) => set(rungs, 4, { why: '' }))).toContain('does not say why');
    expect(broken(() => {}, { missedRungs: [3] })).toContain('missed rungs');
    expect(broken(() => {}, { worstMiss: 0.5 })).toContain('worst miss');
    expect(broken(() => {}, { strands: 2 })).toContain('strands stand');
    expect(broken(() => {}, { reviewsPlaced: ['x'] })).toContain('placed reviews');
    const oneStrand = (rungs: Board['rungs'][number][]) =>
      rungs.forEach((rung, i) => set(rungs, i, { question: { ...rung.question, strand: 'addition' } }));
    expect(broken(oneStrand, { strands: 1 })).toMatch(/Fewer than 4 strands.*12 rungs are addition/);
  });
});
