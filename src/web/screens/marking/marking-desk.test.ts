import { beforeEach, describe, expect, it } from 'vitest';
import type { Mark, MarkEntry, MarkingView, MarksSaved } from '#api/marking.js';
import type { Board } from '#engine/activities/board/board.js';
import { MarkingDesk } from './marking-desk.js';

const rung = (place: number) => ({
  rung: place,
  target: 0.9,
  predicted: 0.9,
  commonDifficulty: 0,
  why: '',
  question: {
    id: `q${place}`,
    skill: 'add.2d2d.carry',
    year: 3,
    strand: 'addition',
    text: '47 + 38',
    figure: null,
    answer: { kind: 'number', text: '85', value: '85' },
    accepts: ['85'],
    expression: '47 + 38',
    difficulty: 0,
    slips: [{ misconception: 'carry.dropped', text: '75', value: '75' }],
    strategy: [],
    usesNumber: null,
  },
});
const board = { kind: 'board', locale: 'en-AU', rungs: [1, 2, 3, 4].map(rung) } as unknown as Board;
const view = (marks: Mark[] = []): MarkingView => ({
  sheet: { id: 's', classId: 'c', date: '2026-05-01', group: 'class', board, markCount: marks.length },
  children: [
    { id: 'a', shownAs: 'Mara', year: 3, absent: false },
    { id: 'b', shownAs: 'Tavi', year: 3, absent: true },
    { id: 'c', shownAs: 'Juno', year: 3, absent: false },
  ],
  marks,
  canUndo: false,
  canRedo: false,
});
const mark = (childId: string, place: number, state: Mark['state']): Mark => ({
  childId,
  rung: place,
  state,
  typed: '',
  findings: [],
});

let sent: { entries: MarkEntry[]; answer: (saved: MarksSaved) => void }[];
let away: [string, boolean][];
let kept: Map<string, string>;

function open(): MarkingDesk {
  return new MarkingDesk({
    order: 'first-to-last',
    storageKey: 'k',
    storage: {
      getItem: (key) => kept.get(key) ?? null,
      setItem: (key, value) => void kept.set(key, value),
      removeItem: (key) => void kept.delete(key),
    },
    send: (entries) => new Promise((answer) => void sent.push({ entries, answer })),
    isFinal: () => false,
    later: () => () => {},
    onSaved: () => {},
    onAbsent: (child, absent) => void away.push([child.id, absent]),
  });
}
const press = (desk: MarkingDesk, ...keys: string[]) => {
  for (const key of keys) desk.press({ key });
};
const row = (desk: MarkingDesk, index: number) =>
  desk.view().rows[index]?.map(({ state, typed }) => (typed === '' ? state : `${state} ${typed}`));

beforeEach(() => {
  sent = [];
  away = [];
  kept = new Map();
});

describe('MarkingDesk', () => {
  it('begins at the first open cell of a child who was there', () => {
    const desk = open();
    desk.load(view([1, 2, 3, 4].map((place) => mark('a', place, 'right'))));
    expect(desk.view().place).toEqual({ row: 2, column: 0 });
  });

  it('judges a typed answer at once, names a typical mistake, and says so', () => {
    const desk = open();
    desk.load(view());
    press(desk, '7', '5', 'Enter');
    expect(desk.view().said).toBe('Mara, question 1, wrong: 75');
    expect(desk.view().rows[0]?.[0]?.findings.map(({ misconception }) => misconception)).toEqual([
      'carry.dropped',
    ]);
    press(desk, '8', '5', 'Enter', 'Enter');
    expect(row(desk, 0)).toEqual(['wrong 75', 'right 85', 'right', 'right']);
    expect(desk.view().said).toBe('Mara, 2 questions, right');
    expect(desk.view().place).toEqual({ row: 2, column: 0 });
    expect(sent[0]?.entries).toEqual([{ childId: 'a', rung: 1, state: null, typed: '75' }]);
  });

  it('takes back and brings back step by step, and sends both', async () => {
    const desk = open();
    desk.load(view());
    press(desk, ' ', 'Enter');
    desk.undo();
    expect(row(desk, 0)).toEqual(['right', null, null, null]);
    expect(desk.view()).toMatchObject({ said: 'Taken back: Mara, 3 questions, not marked', canRedo: true });
    desk.undo();
    desk.undo();
    expect(desk.view()).toMatchObject({ said: 'There is nothing to take back', canUndo: false });
    desk.redo();
    sent[0]?.answer({ marks: [], canUndo: true, canRedo: false });
    await Promise.resolve();
    await Promise.resolve();
    expect(sent[1]?.entries).toContainEqual({ childId: 'a', rung: 3, state: null, typed: '' });
    expect(sent[1]?.entries).toContainEqual({ childId: 'a', rung: 1, state: 'right', typed: '' });
  });

  it('shows what is still unsent over what the server has', () => {
    const before = open();
    before.load(view());
    press(before, ' ', 'x');
    const after = open();
    after.load(view([mark('a', 1, 'blank'), mark('a', 4, 'blank')]));
    expect(row(after, 0)).toEqual(['right', 'wrong', null, 'blank']);
    expect(sent.at(-1)?.entries).toHaveLength(2);
  });

  it('turns a cell round with each click, without going on', () => {
    const desk = open();
    desk.load(view());
    const states = [1, 2, 3, 4].map(() => {
      desk.turnHere();
      return desk.view().rows[0]?.[0]?.state;
    });
    expect(states).toEqual(['right', 'wrong', 'blank', null]);
    expect(desk.view().place).toEqual({ row: 0, column: 0 });
  });

  it('enters a half-typed answer when the marker goes elsewhere', () => {
    const desk = open();
    desk.load(view());
    press(desk, '9');
    desk.goTo({ row: 2, column: 1 });
    expect(row(desk, 0)).toEqual(['wrong 9', null, null, null]);
  });

  it('marks a question for the whole class in one step that can be taken back, and leaves typed answers alone', () => {
    const desk = open();
    desk.load(view());
    press(desk, '7', '5', 'Enter');
    desk.markQuestion(0, new Set(['a']));
    expect([row(desk, 0)?.[0], row(desk, 1)?.[0], row(desk, 2)?.[0]]).toEqual(['wrong 75', null, 'right']);
    desk.markQuestion(1, new Set(['a']));
    expect([row(desk, 0)?.[1], row(desk, 2)?.[1]]).toEqual(['wrong', 'right']);
    desk.markQuestion(1, new Set(['c']));
    expect([row(desk, 0)?.[1], row(desk, 2)?.[1]]).toEqual(['right', 'wrong']);
    desk.undo();
    expect([row(desk, 0)?.[1], row(desk, 2)?.[1]]).toEqual(['wrong', 'right']);
  });

  it('notes an absence and takes no marks for the child', () => {
    const desk = open();
    desk.load(view());
    desk.press({ key: 'a', alt: true });
    expect(away).toEqual([['a', true]]);
    desk.markHere({ state: 'right', typed: '' });
    desk.fillHere('right');
    expect(row(desk, 0)).toEqual([null, null, null, null]);
  });

  it('goes to the child of a slip once the children are known', () => {
    const desk = open();
    desk.callChild('c');
    desk.load(view());
    expect(desk.view().place).toEqual({ row: 2, column: 0 });
    expect([desk.answerCall(1), desk.answerCall(1)]).toEqual([true, false]);
  });
});
