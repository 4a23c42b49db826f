// The day's boards under every edit: one current board for each place, and never a change to a board with marks.
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import type { Sheet, TodayView } from '#api/today.js';
import { checkBoard } from '#engine/activities/board/proof.js';
import { openTestApp, type TestApp } from '../../../../test/support/test-app.js';

let app: TestApp;
beforeAll(async () => {
  app = await openTestApp();
});
afterAll(() => app.close());

const PLACES = ['class front', 'class back', '4 front', '5 front'];
const placesOf = (day: TodayView) => day.sheets.map(({ group, board }) => `${group} ${board.side}`);
const lockedOf = ({ board }: Sheet) => board.rungs.filter(({ locked }) => locked).map(({ rung }) => rung);

let room: ClassDetail;
let dayNumber = 0;
let date: string;
beforeAll(async () => {
  const child = (givenName: string, year: number) => ({ givenName, familyName: '', alias: '', year });
  room = await app.call(
    'createClass',
    {},
    {
      name: 'Wattle',
      years: [4, 5],
      children: [child('Mia', 4), child('Omar', 5), child('李', 4)],
    },
  );
});
beforeEach(() => {
  // Each test has a day of its own.
  dayNumber++;
  date = `2026-06-${String(dayNumber).padStart(2, '0')}`;
});

const today = (classId = room.id) => app.call('today', { classId, date }, null);
async function classFront(): Promise<Sheet> {
  const [sheet] = (await today()).sheets;
  if (!sheet) throw new Error('no board');
  return sheet;
}
async function expectCurrent(sheet: Sheet): Promise<void> {
  const day = await today();
  expect(placesOf(day)).toEqual(PLACES);
  expect(day.sheets[0]).toEqual(sheet);
  for (const { board } of day.sheets) expect(checkBoard(board)).toMatchObject({ ok: true });
}

describe('a day', () => {
  it('is composed once and stays', async () => {
    const first = await today();
    expect(placesOf(first)).toEqual(PLACES);
    expect(await today()).toEqual(first);
  });

  it('is composed once also when it is asked for several times at once', async () => {
    const views = await Promise.all([today(), today(), today()]);
    expect(new Set(views.map((view) => JSON.stringify(view))).size).toBe(1);
    expect(placesOf(await today())).toEqual(PLACES);
  });

  it('has the right board after locking, unlocking and locking again', async () => {
    const before = await classFront();
    const locked = await app.call('lockRungs', { sheetId: before.id }, { locked: [2, 5] });
    expect(lockedOf(locked)).toEqual([2, 5]);
    await expectCurrent(locked);
    const unlocked = await app.call('lockRungs', { sheetId: locked.id }, { locked: [] });
    expect(unlocked.board).toEqual(before.board);
    await expectCurrent(unlocked);
    const again = await app.call('lockRungs', { sheetId: unlocked.id }, { locked: [2, 5] });
    expect(again.board).toEqual(locked.board);
    await expectCurrent(again);
    expect(await app.call('lockRungs', { sheetId: again.id }, { locked: [2, 5] })).toEqual(again);
    await expectCurrent(again);
  });

  it('refuses an edit of a board that another window has replaced', async () => {
    const before = await classFront();
    const locked = await app.call('lockRungs', { sheetId: before.id }, { locked: [3] });
    expect((await app.refused('lockRungs', { sheetId: before.id }, { locked: [4] })).status).toBe(409);
    await expectCurrent(locked);
  });

  it('goes to another number and back', async () => {
    const first = await today();
    const kept = await app.call('lockRungs', { sheetId: first.sheets[0]?.id ?? '' }, { locked: [1] });
    const other = await app.call('changeNumber', { classId: room.id }, { date, number: '3.6' });
    expect(placesOf(other)).toEqual(PLACES);
    expect(other.number).toBe('3.6');
    expect(other.sentence).toContain('3.6');
    expect(new Set(other.sheets.map(({ board }) => board.number))).toEqual(new Set(['3.6']));
    expect(await today()).toEqual(other);
    const back = await app.call('changeNumber', { classId: room.id }, { date, number: first.number });
    expect(back.sheets.map(({ board }) => board)).toEqual(first.sheets.map(({ board }) => board));
    expect(back.sheets[0]?.id).not.toBe(kept.id);
    expect(await today()).toEqual(back);
  });

  it.each(['$4.85', '3/4', '7', '305'])('takes the number %s', async (number) => {
    const view = await app.call('changeNumber', { classId: room.id }, { date, number });
    expect(placesOf(view)).toEqual(PLACES);
    for (const { board } of view.sheets) {
      expect(board.number).toBe(number);
      expect(checkBoard(board)).toMatchObject({ ok: true });
    }
  });

  it.each(['', 'forty', '0/0', '1e9', '9'.repeat(40), '--', '👍'])(
    'refuses the number “%s” and changes nothing',
    async (number) => {
      const before = await today();
      expect((await app.refused('changeNumber', { classId: room.id }, { date, number })).status).toBe(400);
      expect(await today()).toEqual(before);
    },
  );

  it('keeps locked rungs when the rest is chosen anew', async () => {
    const before = await classFront();
    const locked = await app.call('lockRungs', { sheetId: before.id }, { locked: [3, 8] });
    let last = locked;
    for (let times = 0; times < 3; times++) {
      const next = await app.call('reshuffle', {}, { sheetId: last.id });
      expect(lockedOf(next)).toEqual([3, 8]);
      for (const rung of [3, 8])
        expect(next.board.rungs[rung - 1]?.question).toEqual(before.board.rungs[rung - 1]?.question);
      const texts = (sheet: Sheet) => sheet.board.rungs.map(({ question }) => question.text);
      expect(texts(next)).not.toEqual(texts(last));
      await expectCurrent(next);
      last = next;
    }
  });

  it('swaps a rung for one of the questions offered, and for no other', async () => {
    const before = await classFront();
    const { alternatives } = await app.call('alternatives', { sheetId: before.id, rung: 4 }, null);
    expect(alternatives.length).toBeGreaterThan(0);
    const texts = before.board.rungs.map(({ question }) => question.text);
    for (const { question, why } of alternatives) {
      expect(texts).not.toContain(question.text);
      expect(why).toMatch(/\.$/);
    }
    expect(
      (await app.refused('swapRung', { sheetId: before.id, rung: 4 }, { questionId: 'none' })).status,
    ).toBe(409);
    const chosen = alternatives[0]?.question;
    const swapped = await app.call(
      'swapRung',
      { sheetId: before.id, rung: 4 },
      { questionId: chosen?.id ?? '' },
    );
    expect(swapped.board.rungs[3]?.question).toEqual(chosen);
    expect(lockedOf(swapped)).toEqual([4]);
    await expectCurrent(swapped);
    for (const rung of [0, 99, 'x', '1.5'])
      expect(
        (await app.refused('swapRung', { sheetId: swapped.id, rung }, { questionId: chosen?.id })).status,
      ).toBeGreaterThanOrEqual(400);
  });

  it('stays as the children saw it once there are marks', async () => {
    const sheet = await classFront();
    const entry = { childId: room.children[0]?.id ?? '', rung: 1, state: 'right' as const, typed: '' };
    await app.call('saveMarks', { sheetId: sheet.id }, { entries: [entry] });
    const params = { sheetId: sheet.id };
    const other = (await app.call('alternatives', { ...params, rung: 2 }, null)).alternatives[0]?.question.id;
    for (const { status, problem } of [
      await app.refused('lockRungs', params, { locked: [1] }),
      await app.refused('reshuffle', {}, params),
      await app.refused('swapRung', { ...params, rung: 2 }, { questionId: other }),
      await app.refused('changeNumber', { classId: room.id }, { date, number: '12' }),
    ])
      expect({ status, code: problem.code }).toEqual({ status: 409, code: 'board.marked' });
    await expectCurrent({ ...sheet, markCount: 1 });
    await app.call('saveMarks', params, { entries: [{ ...entry, state: null }] });
    expect(lockedOf(await app.call('lockRungs', params, { locked: [1] }))).toEqual([1]);
  });
});

describe('a class whose years change', () => {
  it('has boards for the new years, and keeps one that has marks', async () => {
    const child = { givenName: 'Ravi', familyName: '', alias: '', year: 4 };
    const made = await app.call('createClass', {}, { name: 'Banksia', years: [4, 5], children: [child] });
    const classId = made.id;
    const before = await today(classId);
    await app.call('changeClass', { classId }, { name: 'Banksia', years: [3, 4] });
    const changed = await today(classId);
    expect(placesOf(changed)).toEqual(['class front', 'class back', '3 front', '4 front']);
    expect(changed.sheets[0]?.board.years).toEqual([3, 4]);
    expect(changed.number).toBe(before.number);
    const marked = changed.sheets[0];
    const entry = { childId: made.children[0]?.id ?? '', rung: 1, state: 'right' as const, typed: '' };
    await app.call('saveMarks', { sheetId: marked?.id ?? '' }, { entries: [entry] });
    await app.call('changeClass', { classId }, { name: 'Banksia', years: [4] });
    const single = await today(classId);
    expect(placesOf(single)).toEqual(['class front', 'class back']);
    expect(single.sheets[0]).toMatchObject({ id: marked?.id, markCount: 1 });
    expect(single.sheets[1]?.board.years).toEqual([4]);
    expect(await today(classId)).toEqual(single);
  });
});
