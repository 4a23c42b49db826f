// make board: two hundred seeds for each kind of number, judged from the JSON alone.
import { describe, expect, it } from 'vitest';
import { boardProblems } from './board-checker.js';
import { json, printed } from './command.js';

type Board = Parameters<typeof boardProblems>[0];

const NUMBERS = ['7', '47', '305', '3.6', '$4.85', '3/4'] as const;
const BOARDS_EACH = 200;

const boardOf = (number: string, ...more: readonly string[]) => [
  'make',
  'board',
  '--number',
  number,
  '--years',
  '4-5',
  ...more,
];

describe('make board', () => {
  it.each(NUMBERS)(`keeps every promise in ${BOARDS_EACH} boards of %s`, (number) => {
    const { items } = json<{ items: Board[] }>(
      boardOf(number, '--count', String(BOARDS_EACH), '--seed', '1'),
    );
    expect(items).toHaveLength(BOARDS_EACH);
    const problems = items.flatMap((board, at) =>
      boardProblems(board, { number, years: [4, 5] }).map((problem) => `board ${at}: ${problem}`),
    );
    expect(problems).toEqual([]);
    expect(new Set(items.map((board) => JSON.stringify(board))).size).toBe(BOARDS_EACH);
  });

  it.each([
    ['F-1', [0, 1], '7'],
    ['2', [2], '47'],
    ['6', [6], '3/4'],
  ] as const)('serves years %s', (years, list, number) => {
    for (const side of ['front', 'back']) {
      const board = json<Board>(['make', 'board', '--number', number, '--years', years, '--side', side]);
      expect(boardProblems(board, { number, years: [...list] })).toEqual([]);
    }
  });

  it('makes as many rungs as asked for', () => {
    for (const rungs of [6, 16]) {
      const board = json<Board>(boardOf('47', '--rungs', String(rungs)));
      expect(boardProblems(board, { number: '47', years: [4, 5], rungs })).toEqual([]);
    }
  });

  it('prints the same bytes for the same arguments, and others for another seed', () => {
    const args = boardOf('305', '--count', '3', '--json');
    expect(printed(args)).toBe(printed(args));
    expect(printed(args)).not.toBe(printed([...args, '--seed', '2']));
  });

  it('is judged by a checker that notices each broken promise', () => {
    type Loose = {
      rungs: { question: Record<string, unknown>; why: string; predicted: number }[];
      proof: object;
    };
    const broken = (spoil: (rungs: Loose['rungs']) => void): string => {
      const board = json<Loose>(boardOf('47'));
      spoil(board.rungs);
      return boardProblems(board as unknown as Board, { number: '47', years: [4, 5] }).join('\n');
    };
    const question = (rungs: Loose['rungs'], rung: number) => rungs[rung - 1]?.question ?? {};
    expect(broken((rungs) => (question(rungs, 3)['text'] = question(rungs, 2)['text']))).toContain(
      'Rung 3 repeats',
    );
    expect(broken((rungs) => rungs.reverse())).toContain('easier than the one before');
    expect(broken((rungs) => (question(rungs, 1)['expression'] = '1 + 1'))).toContain('but 1 + 1 is 2');
    expect(
      broken((rungs) => {
        const { answer } = question(rungs, 1);
        question(rungs, 1)['slips'] = [{ misconception: 'planted', ...(answer as object) }];
      }),
    ).toContain('reads as the answer');
    expect(
      broken((rungs) => {
        question(rungs, 5)['usesNumber'] = null;
        if (rungs[4]) rungs[4].why = 'A question.';
      }),
    ).toContain('Rung 5 does not use 47');
    expect(broken((rungs) => rungs.forEach((rung) => (rung.question['strand'] = 'time')))).toContain(
      '1 strands',
    );
    expect(broken((rungs) => rungs.splice(4, 1))).toContain('It has 11 rungs');
    expect(broken((rungs) => rungs.forEach((rung) => (rung.predicted = 0.5)))).toContain('misses its target');
    expect(broken((rungs) => rungs.forEach((rung) => (rung.why = '')))).toContain('why');
  });
});
