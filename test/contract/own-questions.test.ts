// make … --own: a teacher's list in every activity that takes it, judged from the JSON by checkers of their own.
import { describe, expect, it } from 'vitest';
import { boardProblems } from './board-checker.js';
import { type Chain, chainProblems } from './chain-checker.js';
import { json, printed, refusal } from './command.js';
import { jigsawProblems } from './jigsaw-checker.js';
import { type TimedJson, timedProblems } from './timed-checker.js';
import { type Trail, trailProblems } from './trail-checker.js';

const TABLE = [
  'question,answer,slips,when,year,strand',
  'What is double {n}?,2 * n,n + 2; n,,2,Addition',
  'How far is {n} from the next ten?,10 - n mod 10,n mod 10,n mod 10 > 0,2,Place value',
  'What is {n} × 10?,n * 10,n + 10; n * 100,,3,Multiplication',
  '{n} + {n + 2} = ?,n + n + 2,n + 2; 2 * n,n < 50,3,Addition',
].join('\n');
const LINES = 'What is double {n}? | 2 * n | n + 2; n\n{n} + {n + 2} = ? | n + n + 2\n';

interface Asked {
  readonly question: { readonly skill: string; readonly text: string };
}
const own = (asked: readonly Asked[]) => asked.filter(({ question }) => question.skill.startsWith('own.'));
const make = (kind: string, ...more: readonly string[]) =>
  ['make', kind, '--years', '3', '--own', '-', '--seed', '5', ...more] as const;

describe('make --own', () => {
  it.each([
    ['a table', TABLE],
    ['lines', LINES],
  ])('a chain from %s', (_, input) => {
    const chain = json<Chain>(make('chain'), { input });
    expect(chainProblems(chain, { cards: 10, order: 'graded' })).toEqual([]);
    const asked = chain.cards.flatMap(({ question }) => (question ? [{ question }] : []));
    expect(own(asked as unknown as Asked[])).toHaveLength(9);
  });

  it('a trail', () => {
    const trail = json<Trail>(make('trail'), { input: TABLE });
    expect(trailProblems(trail, { rows: 4, columns: 4 })).toEqual([]);
    expect(own(trail.cells as unknown as Asked[])).toHaveLength(16);
  });

  it('a jigsaw', () => {
    const jigsaw = json<Parameters<typeof jigsawProblems>[0]>(make('jigsaw'), { input: TABLE });
    expect(jigsawProblems(jigsaw, { rows: 5, columns: 7, level: 'easy' })).toEqual([]);
  });

  it('timed practice', () => {
    const timed = json<TimedJson>(['make', 'timed', '--own', '-', '--forms', '2', '--seed', '5'], {
      input: TABLE,
    });
    expect(timedProblems(timed, { forms: 2, questions: 60 })).toEqual([]);
    const asked = (timed.forms[0]?.questions ?? []).map((question) => ({ question }));
    expect(own(asked as unknown as Asked[])).toHaveLength(60);
    const few = refusal(['make', 'timed', '--own', '-'], { input: 'How many legs have 3 spiders? | 24' });
    expect(few).toMatch(/only 1 question/);
  });

  it('a board', () => {
    const board = json<{ rungs: readonly Asked[] }>(make('board', '--number', '47'), { input: TABLE });
    expect(boardProblems(board as never, { number: '47', years: [3] })).toEqual([]);
    expect(own(board.rungs).length).toBeGreaterThanOrEqual(3);
  });

  it('with --number asks every question about that one number', () => {
    const text = printed(make('chain', '--number', '36'), { input: TABLE });
    expect(text).toContain('What is double 36?');
    expect(text.match(/What is double/g)).toHaveLength(1);
  });

  it('names the row and the part of a fault, and refuses --number alone', () => {
    const input = 'What is double {n}? | 2 * n\nHalf of {n}? | n ÷\n';
    expect(refusal(make('chain'), { input })).toMatch(/row 2, answer: /);
    expect(refusal(['make', 'trail', '--years', '3', '--number', '36'])).toMatch(/add --own/);
  });
});
