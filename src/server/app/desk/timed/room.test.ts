// Timed practice through its days: handed out, counted, put right, levelled, printed.
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import { FILE_PATHS } from '#api/endpoints.js';
import type { Outcome, TimedView } from '#api/timed-room.js';
import { addDays } from '#engine/numbers/calendar.js';
import {
  openTestApp,
  problemOf,
  request,
  type TestApp,
  TODAY,
} from '../../../../../test/support/test-app.js';

let app: TestApp;
beforeAll(async () => {
  app = await openTestApp();
});
afterAll(() => app.close());
beforeEach(() => app.turnTo(TODAY));
afterEach(() => expect(app.faults).toEqual([]));

async function classOf(...children: readonly (readonly [name: string, year: number])[]) {
  return app.call(
    'createClass',
    {},
    {
      name: 'Wattle',
      years: [2, 4],
      children: children.map(([givenName, year]) => ({ givenName, familyName: '', alias: '', year })),
    },
  );
}

function roomOf({ id: classId, children }: ClassDetail) {
  const child = (name: string) => children.find(({ shownAs }) => shownAs === name)?.id ?? name;
  return {
    child,
    look: (date = TODAY) => app.call('timed', { classId, date }, null),
    handOut: (date = TODAY) => app.call('handOutTimed', { classId }, { date }),
    move: (name: string, levelId: string, date = TODAY) =>
      app.call('moveLevel', { classId, childId: child(name) }, { date, levelId }),
    undoMove: (name: string) => app.call('undoLevel', { classId, childId: child(name) }, { date: TODAY }),
    record: (view: TimedView, outcomes: Readonly<Record<string, Partial<Outcome>>>) =>
      app.call(
        'recordTimed',
        { classId },
        {
          date: view.date,
          entries: Object.entries(outcomes).map(([name, outcome]) => ({
            sheetId: of(view, name).sheet?.id ?? '',
            outcome: { attempted: 0, wrong: [], written: {}, redoWrong: [], minutes: 2, ...outcome },
          })),
        },
      ),
  };
}

function of(view: TimedView, name: string) {
  const child = view.children.find(({ shownAs }) => shownAs === name);
  if (!child) throw new Error(`no ${name}`);
  return child;
}

function questionsFor(view: TimedView, name: string) {
  const key = of(view, name).sheet?.formKey;
  return view.forms.find((form) => form.key === key)?.questions ?? [];
}

describe('timed practice', () => {
  it('starts each child where the year before ended, and hands out a sheet to all who are there', async () => {
    const detail = await classOf(['Ana', 2], ['Bo', 4], ['Cy', 4]);
    const room = roomOf(detail);
    const before = await room.look();
    expect(before.children.map(({ levelId, chosen }) => [levelId, chosen])).toEqual([
      ['doubles', false],
      ['share-3-4', false],
      ['share-3-4', false],
    ]);
    expect(before.ladder.levels.length).toBeGreaterThanOrEqual(20);
    await app.call('changeAway', { classId: detail.id }, { childId: room.child('Cy'), absent: true });
    const view = await room.handOut();
    expect(view.children.map(({ sheet }) => sheet !== null)).toEqual([true, true, false]);
    expect(questionsFor(view, 'Bo')).toHaveLength(60);
    expect((await room.handOut()).children[0]?.sheet?.id).toBe(view.children[0]?.sheet?.id);
  });

  it('gives another form each day and brings back first what was wrong, until it is right', async () => {
    const room = roomOf(await classOf(['Ana', 4]));
    const monday = await room.handOut();
    const asked = questionsFor(monday, 'Ana');
    const counted = await room.record(monday, { Ana: { attempted: 30, wrong: [4, 9] } });
    const wrong = [asked[3]?.text, asked[8]?.text];
    expect(of(counted, 'Ana').redo.map(({ text, times }) => [text, times])).toEqual(
      [...new Set(wrong)].map((text) => [text, 1]),
    );
    const tuesday = addDays(TODAY, 3);
    const next = await room.handOut(tuesday);
    expect(of(next, 'Ana').sheet?.redo.map(({ text }) => text)).toEqual([...new Set(wrong)]);
    expect(questionsFor(next, 'Ana')).not.toEqual(asked);
    const again = await room.record(next, { Ana: { attempted: 20, redoWrong: [1] } });
    // Right in the redo row clears a fact; wrong again keeps it, whatever else the sheet says.
    expect(of(again, 'Ana').redo.map(({ text }) => text)).toEqual([wrong[0]]);
  });

  it('counts answers and digits a minute, the digits of wrong answers typed in too', async () => {
    const room = roomOf(await classOf(['Ana', 4]));
    const view = await room.handOut();
    const asked = questionsFor(view, 'Ana').slice(0, 10);
    const digits = asked.map(({ answer }) => answer.length);
    const place = asked.findIndex(({ answer }) => answer.length === 1) + 1;
    const counted = await room.record(view, {
      Ana: { attempted: 10, wrong: [place], written: { [place]: '77' }, minutes: 0.5 },
    });
    const whole = digits.reduce((sum, count) => sum + count, 0);
    const right = whole - 1 + (asked[place - 1]?.answer === '7' ? 1 : 0);
    expect(of(counted, 'Ana').counts).toEqual([
      {
        date: TODAY,
        levelId: 'share-3-4',
        attempted: 10,
        right: 9,
        digitsRight: right,
        digitsPerMinute: right * 2,
      },
    ]);
    expect(of(counted, 'Ana').best?.right).toBe(9);
  });

  it('takes results back, and records a late sheet on its own day', async () => {
    const detail = await classOf(['Ana', 4]);
    const room = roomOf(detail);
    const view = await room.handOut();
    await room.record(view, { Ana: { attempted: 12 } });
    await room.record(view, { Ana: { attempted: 21 } });
    const sheetId = of(view, 'Ana').sheet?.id ?? '';
    const undo = () => app.call('undoTimed', { classId: detail.id, sheetId }, { date: TODAY });
    expect(of(await undo(), 'Ana').sheet?.outcome?.attempted).toBe(12);
    expect(of(await undo(), 'Ana').sheet?.outcome).toBeNull();
    app.turnTo(addDays(TODAY, 5));
    expect(of(await room.record(view, { Ana: { attempted: 30 } }), 'Ana').counts[0]?.date).toBe(TODAY);
  });

  it('suggests a level up after good days, moves with one tap, and back without a trace', async () => {
    const room = roomOf(await classOf(['Ana', 4]));
    let view = await room.look();
    for (const day of [0, 3, 4]) {
      view = await room.handOut(addDays(TODAY, day));
      view = await room.record(view, { Ana: { attempted: 60, minutes: 1 } });
    }
    const { suggestion } = of(view, 'Ana');
    expect(suggestion).toEqual({
      move: 'up',
      levelId: 'table-6',
      evidence: '3 sheets of the last 3 reached 95 % right and 49 digits a minute or the whole sheet.',
    });
    const moved = await room.move('Ana', 'table-6', addDays(TODAY, 4));
    expect(of(moved, 'Ana')).toMatchObject({ levelId: 'table-6', chosen: true, best: null });
    expect(of(await room.undoMove('Ana'), 'Ana')).toMatchObject({ levelId: 'share-3-4', chosen: false });
  });

  it('takes a ladder of the teacher’s own, and refuses a level that cannot fill a sheet', async () => {
    const detail = await classOf(['Ana', 4]);
    const own = { id: 'own-1', title: 'Our halves', year: 3, room: 'line' as const, skills: ['div.half.2d'] };
    const change = (levels: object[]) =>
      app.call(
        'changeLadder',
        { classId: detail.id },
        { ladder: { levels: levels as never, minutes: 3, digitsPerMinute: 20, questions: 60 } },
      );
    await change([own]);
    const view = await roomOf(detail).handOut();
    expect(view.ladder).toMatchObject({ own: true, minutes: 3, levels: [own] });
    expect(of(view, 'Ana').sheet?.levelId).toBe('own-1');
    for (const [levels, code] of [
      [[own, own], 'ladder.twice'],
      [[{ ...own, id: 'x', skills: null }], 'ladder.level'],
      [[{ ...own, skills: ['time.clock.half'] }], 'timed.few'],
      [[{ ...own, skills: ['no.such'] }], 'timed.skill'],
    ] as const) {
      const ladder = { levels, minutes: null, digitsPerMinute: null, questions: 60 };
      expect((await app.refused('changeLadder', { classId: detail.id }, { ladder })).problem.code).toBe(code);
    }
    await app.call('changeLadder', { classId: detail.id }, { ladder: null });
    expect((await roomOf(detail).look()).ladder.own).toBe(false);
  });

  it('makes a level of the teacher’s own questions, and refuses one that is too small or cannot be read', async () => {
    const detail = await classOf(['Ana', 4]);
    const own = {
      id: 'own-harbour',
      title: 'Harbour sums',
      year: 3,
      room: 'roomy' as const,
      skills: null,
      lines: ['{n} + 9 | n + 9 | n + 10; n + 8', 'Double {n} | 2 * n'],
    };
    const ladderOf = (levels: object[]) => ({
      ladder: { levels: levels as never, minutes: null, digitsPerMinute: null, questions: 60 },
    });
    await app.call('changeLadder', { classId: detail.id }, ladderOf([own]));
    const view = await roomOf(detail).handOut();
    expect(view.ladder.levels).toEqual([own]);
    const [form] = view.forms;
    expect(form?.title).toBe('Harbour sums');
    expect(form?.questions).toHaveLength(60);
    for (const { text, answer } of form?.questions ?? []) {
      const [, plus, twice] = /^(?:(\d+) \+ 9|Double (\d+))$/.exec(text) ?? [];
      expect(Number(answer), text).toBe(plus === undefined ? 2 * Number(twice) : Number(plus) + 9);
    }
    for (const [change, code] of [
      [{ lines: ['What is 3 and 4? | 7'] }, 'timed.few'],
      [{ lines: ['What is 3 and 4?'] }, 'ladder.lines'],
      [{ id: 'add-10' }, 'ladder.level'],
    ] as const) {
      const refused = await app.refused(
        'changeLadder',
        { classId: detail.id },
        ladderOf([{ ...own, ...change }]),
      );
      expect(refused.problem.code).toBe(code);
    }
  });

  it('prints the sheets of a day, keys, records and copies, once they are handed out', async () => {
    const detail = await classOf(['Ana', 2], ['Bo', 4]);
    const print = (document: string) =>
      app.fetch(
        request(FILE_PATHS.timed, {
          method: 'POST',
          body: JSON.stringify({ classId: detail.id, date: TODAY, document }),
        }),
      );
    expect((await problemOf(await print('pupil'))).problem.code).toBe('timed.no-sheets');
    await roomOf(detail).handOut();
    for (const [document, pages] of [
      ['pupil', '4'],
      ['key', '2'],
      ['cover', '4'],
      ['spares', '1'],
    ] as const) {
      const answer = await print(document);
      expect([answer.status, answer.headers.get('X-Page-Count')]).toEqual([200, pages]);
    }
  });

  it('leads from the code on a sheet to its child and day', async () => {
    const detail = await classOf(['Ana', 4]);
    const code = of(await roomOf(detail).handOut(), 'Ana').sheet?.id ?? '';
    const typed = code.toLowerCase().replace(/^(.{4})/, '$1-');
    expect(await app.call('timedSheet', { code: typed }, null)).toEqual({
      classId: detail.id,
      childId: roomOf(detail).child('Ana'),
      date: TODAY,
    });
    expect((await app.refused('timedSheet', { code: 'K7Q2' }, null)).problem.code).toBe('input.invalid');
  });

  it('refuses what belongs to another class or to no level', async () => {
    const one = await classOf(['Ana', 4]);
    const other = await classOf(['Bo', 4]);
    const view = await roomOf(one).handOut();
    const entries = [
      {
        sheetId: of(view, 'Ana').sheet?.id,
        outcome: { attempted: 1, wrong: [], written: {}, redoWrong: [], minutes: null },
      },
    ];
    expect(
      (await app.refused('recordTimed', { classId: other.id }, { date: TODAY, entries })).problem.code,
    ).toBe('not.found');
    const childId = roomOf(one).child('Ana');
    expect(
      (await app.refused('moveLevel', { classId: one.id, childId }, { date: TODAY, levelId: 'no' })).problem
        .code,
    ).toBe('ladder.level');
    expect(
      (await app.refused('undoLevel', { classId: other.id, childId }, { date: TODAY })).problem.code,
    ).toBe('child.missing');
  });
});
