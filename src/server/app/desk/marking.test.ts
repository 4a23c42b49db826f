// Marking as the page does it: answers checked as typed, taken back and brought back, absences, names of any script.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import { FILE_PATHS } from '#api/endpoints.js';
import type { MarkEntry } from '#api/marking.js';
import type { Sheet } from '#api/today.js';
import { openTestApp, request, type TestApp, TODAY } from '../../../../test/support/test-app.js';

const NAMES = [
  'Zoë',
  '李 小龍',
  'محمد',
  'אביגיל',
  'ऋषि',
  '🦊',
  '👩🏽‍🚀 Nova',
  'D’Arcy',
  'Ngọc',
  'ᐃᓄᒃ',
  'Ọlá',
  '𐐨𐑌',
];

let app: TestApp;
let room: ClassDetail;
let sheet: Sheet;
beforeAll(async () => {
  app = await openTestApp();
  const children = NAMES.map((givenName, at) => ({
    givenName,
    familyName: '',
    alias: '',
    year: 4 + (at % 2),
  }));
  room = await app.call('createClass', {}, { name: 'Wattle', years: [4, 5], children });
  const [first] = (await app.call('today', { classId: room.id, date: TODAY }, null)).sheets;
  if (!first) throw new Error('no board');
  sheet = first;
});
afterAll(() => app.close());

const childId = (at: number) => room.children[at]?.id ?? '';
const save = (...entries: MarkEntry[]) => app.call('saveMarks', { sheetId: sheet.id }, { entries });
const view = () => app.call('marking', { sheetId: sheet.id }, null);
const typed = (at: number, rung: number, text: string): MarkEntry => ({
  childId: childId(at),
  rung,
  state: null,
  typed: text,
});
const noted = (at: number, rung: number, state: MarkEntry['state']): MarkEntry => ({
  childId: childId(at),
  rung,
  state,
  typed: '',
});

describe('marking', () => {
  it('shows every child under the whole name, whatever its script', async () => {
    expect((await view()).children.map(({ shownAs }) => shownAs)).toEqual(NAMES);
  });

  it('shows only the children of a year on the board of that year', async () => {
    const { sheets } = await app.call('today', { classId: room.id, date: TODAY }, null);
    const five = sheets.find(({ group }) => group === 5);
    const shown = await app.call('marking', { sheetId: five?.id ?? '' }, null);
    expect(new Set(shown.children.map(({ year }) => year))).toEqual(new Set([5]));
  });

  it('checks a typed answer and names the mistake it shows', async () => {
    const rung = sheet.board.rungs.find(({ question }) => question.slips.length > 0);
    const question = rung?.question;
    const at = rung?.rung ?? 0;
    const { marks } = await save(
      typed(0, at, question?.answer.text ?? ''),
      typed(1, at, question?.slips[0]?.text ?? ''),
      typed(2, at, 'no idea 🤷'),
      typed(3, at, '   '),
    );
    const of = (child: number) => marks.find((mark) => mark.childId === childId(child));
    expect(of(0)).toMatchObject({ state: 'right', findings: [] });
    expect(of(1)).toMatchObject({ state: 'wrong' });
    expect(of(1)?.findings.map(({ misconception }) => misconception)).toContain(
      question?.slips[0]?.misconception,
    );
    for (const { does, help } of of(1)?.findings ?? [])
      expect([does, help].join('')).not.toMatch(/undefined|null/);
    expect(of(2)).toMatchObject({ state: 'wrong', typed: 'no idea 🤷', findings: [] });
    expect(of(3)?.state ?? null).toBeNull();
    const stored = (await view()).marks;
    for (const mark of marks.filter(({ state }) => state !== null)) expect(stored).toContainEqual(mark);
  });

  it('takes back and brings back, step by step', async () => {
    const before = (await view()).marks;
    await save(noted(4, 1, 'right'));
    await save(noted(4, 1, 'wrong'), noted(4, 2, 'blank'));
    const after = (await view()).marks;
    const undo = () => app.call('undoMarks', { sheetId: sheet.id }, {});
    const redo = () => app.call('redoMarks', { sheetId: sheet.id }, {});
    expect((await undo()).marks).toHaveLength(2);
    expect(await undo()).toMatchObject({ canRedo: true });
    const key = (mark: { childId: string; rung: number }) => `${mark.childId} ${mark.rung}`;
    const sorted = (marks: typeof before) => [...marks].sort((a, b) => (key(a) < key(b) ? -1 : 1));
    expect(sorted((await view()).marks)).toEqual(sorted(before));
    await redo();
    expect(await redo()).toMatchObject({ canRedo: false, canUndo: true });
    expect(sorted((await view()).marks)).toEqual(sorted(after));
    expect(await view()).toMatchObject({ canUndo: true, canRedo: false });
    expect(await app.refused('redoMarks', { sheetId: sheet.id }, {})).toMatchObject({ status: 409 });
  });

  it('records all of a batch or nothing', async () => {
    const before = (await view()).marks;
    for (const bad of [
      { ...noted(5, 1, 'right'), rung: 14 },
      { ...noted(5, 1, 'right'), childId: 'nobody' },
      { ...noted(5, 1, 'right'), state: 'great' },
      { ...noted(5, 1, 'right'), typed: 'x'.repeat(81) },
    ]) {
      const { status } = await app.refused(
        'saveMarks',
        { sheetId: sheet.id },
        { entries: [noted(5, 2, 'right'), bad] },
      );
      expect(status).toBeGreaterThanOrEqual(400);
      expect(status).toBeLessThan(500);
    }
    expect((await app.refused('saveMarks', { sheetId: sheet.id }, { entries: [] })).status).toBe(400);
    const other = await app.call(
      'createClass',
      {},
      {
        name: 'Other',
        years: [4],
        children: [{ givenName: 'Mia', familyName: '', alias: '', year: 4 }],
      },
    );
    const stranger = other.children[0]?.id ?? '';
    const entries = [{ ...noted(5, 1, 'right'), childId: stranger }];
    expect((await app.refused('saveMarks', { sheetId: sheet.id }, { entries })).status).toBe(404);
    expect(
      (await app.refused('changeAbsent', { sheetId: sheet.id }, { childId: stranger, absent: true })).status,
    ).toBe(404);
    expect((await view()).marks).toEqual(before);
  });

  it('notes who was away, and takes it back', async () => {
    const away = async () =>
      (await view()).children.filter(({ absent }) => absent).map(({ shownAs }) => shownAs);
    const set = (at: number, absent: boolean) =>
      app.call('changeAbsent', { sheetId: sheet.id }, { childId: childId(at), absent });
    await set(1, true);
    await set(5, true);
    await set(5, true);
    expect(await away()).toEqual([NAMES[1], NAMES[5]]);
    await set(1, false);
    expect(await away()).toEqual([NAMES[5]]);
  });

  it('counts toward what is understood, with the answers behind it', async () => {
    const counted = await app.call('understanding', { classId: room.id }, null);
    expect(counted.markedBoards).toBe(1);
    const child = counted.children[1];
    const skillId = child?.skills.find(({ answers }) => answers > 0)?.skillId ?? '';
    const evidence = await app.call('evidence', { childId: child?.childId ?? '', skillId }, null);
    expect(evidence.answers[0]).toMatchObject({ date: TODAY, state: 'wrong' });
    expect(evidence.sentence).toContain(NAMES[1]);
  });

  it('goes on paper with names of any script', async () => {
    const body = JSON.stringify({
      sheetIds: [sheet.id],
      document: 'slips',
      paper: 'A4',
      perPage: 8,
      names: true,
    });
    const response = await app.fetch(request(FILE_PATHS.print, { method: 'POST', body }));
    expect(response.status).toBe(200);
    expect(Number(response.headers.get('x-page-count'))).toBe(Math.ceil(NAMES.length / 8));
    expect(app.faults).toEqual([]);
  });

  it('takes a whole class at once', async () => {
    const entries = room.children.flatMap((_, at) =>
      sheet.board.rungs.map(({ rung }) => noted(at, rung, 'right')),
    );
    await save(...entries);
    expect((await view()).sheet.markCount).toBe(NAMES.length * 12);
    const { days } = await app.call('boardDays', { classId: room.id }, null);
    expect(days[0]).toMatchObject({ date: TODAY, markCount: NAMES.length * 12 });
  });
});
