// The app at its edge: every endpoint answers in its schema, and whatever cannot be done is refused in plain words.
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import { ENDPOINTS, type EndpointName, FILE_PATHS } from '#api/endpoints.js';
import type { TodayView } from '#api/today.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { openTestApp, problemOf, request, type TestApp, TODAY } from '../../../test/support/test-app.js';

let app: TestApp;
let room: ClassDetail;
let day: TodayView;
beforeAll(async () => {
  app = await openTestApp();
  room = await app.call('startDemo', {}, {});
  day = await app.call('today', { classId: room.id, date: TODAY }, null);
});
afterAll(() => app.close());
afterEach(() => expect(app.faults).toEqual([]));

const sheetId = () => day.sheets[0]?.id ?? '';
const childId = () => room.children[0]?.id ?? '';
const practiceOrder = (classId: string, skills: string[]) => ({
  classId,
  skills,
  questions: 20,
  copies: 3,
  seed: 1,
  paper: 'A4' as const,
  withKey: true,
  largePrint: false,
});

describe('endpoints that read', () => {
  it('answer in their schema', async () => {
    const state = await app.call('state', {}, null);
    expect(state).toMatchObject({ firstRun: false, today: TODAY });
    expect(state.settings).not.toHaveProperty('demo');
    expect((await app.call('class', { classId: room.id }, null)).children).toHaveLength(27);
    expect(day.sheets.map(({ group, board }) => `${group} ${board.side}`)).toEqual([
      'class front',
      'class back',
      '4 front',
      '5 front',
    ]);
    expect((await app.call('marking', { sheetId: sheetId() }, null)).children).toHaveLength(27);
    expect((await app.call('boardDays', { classId: room.id }, null)).days).toHaveLength(4);
    const view = await app.call('understanding', { classId: room.id }, null);
    expect(view.markedBoards).toBe(3);
    const met = view.children[0]?.skills.find(({ answers }) => answers > 0)?.skillId ?? '';
    const evidence = await app.call('evidence', { childId: childId(), skillId: met }, null);
    expect(evidence.answers.length).toBeGreaterThan(0);
    expect(evidence.sentence).toMatch(/\.$/);
    const never = view.children[0]?.skills.find(({ answers }) => answers === 0)?.skillId ?? '';
    expect((await app.call('evidence', { childId: childId(), skillId: never }, null)).sentence).toMatch(
      /No question/,
    );
  });

  it('answer 404 to what is not there', async () => {
    const nowhere = {
      classId: 'no',
      sheetId: 'no',
      childId: 'no',
      code: 'no',
      rung: 1,
      date: TODAY,
      skillId: 'no',
      setId: 'no',
      kind: 'chain',
    };
    const chain = composeChain({ years: [3, 4], seed: 1, locale: 'en-AU' });
    const mark = { childId: 'x', rung: 1, state: 'right', typed: '' };
    const outcome = { attempted: 1, wrong: [], written: {}, redoWrong: [], minutes: null };
    const bodies: Partial<Record<EndpointName, unknown>> = {
      changeClass: { name: 'A', years: [4] },
      addChildren: { children: [{ givenName: 'A', familyName: '', alias: '', year: 4 }] },
      changeChild: { givenName: 'A', familyName: '', alias: '', year: 4 },
      changeNumber: { date: TODAY, number: '12' },
      reshuffle: { sheetId: 'no' },
      lockRungs: { locked: [1] },
      swapRung: { questionId: 'no' },
      previewPrint: { sheetIds: ['no'], document: 'key', paper: 'A4' },
      previewPractice: practiceOrder('no', ['add.within10']),
      previewKit: {
        classId: 'no',
        sets: [{ number: 1, activity: chain.ok && chain.value }],
        document: 'cards',
        paper: 'A4',
      },
      saveMarks: { entries: [mark] },
      changeAbsent: { childId: 'x', absent: true },
      undoMarks: {},
      redoMarks: {},
      makeSets: { kind: 'chain', band: 'middle', count: 1 },
      keepSets: { band: 'middle', contents: [chain.ok && chain.value] },
      markSets: { setIds: ['no'], step: 'cut', done: true },
      noteSet: { note: '' },
      handOut: {},
      finishSet: { childId: 'x' },
      giveSet: { childId: 'x', setId: 'x' },
      takeBackSet: { childId: 'x' },
      undoRota: {},
      changeAway: { childId: 'x', absent: true },
      changeBand: { band: 'upper' },
      handOutTimed: { date: TODAY },
      recordTimed: { date: TODAY, entries: [{ sheetId: 'no', outcome }] },
      undoTimed: { date: TODAY },
      moveLevel: { date: TODAY, levelId: 'add-5' },
      undoLevel: { date: TODAY },
      changeLadder: { ladder: null },
    };
    const names = Object.keys(ENDPOINTS) as EndpointName[];
    for (const name of names.filter(
      (one) => /:|reshuffle|preview/.test(ENDPOINTS[one].path) && one !== 'slip' && one !== 'timedSheet',
    )) {
      const { status } = await app.refused(name, nowhere, bodies[name] ?? null);
      expect(status, name).toBe(404);
    }
    expect((await app.refused('evidence', { childId: childId(), skillId: 'no' }, null)).status).toBe(404);
    expect((await app.refused('class', { classId: "x' or 1=1 --" }, null)).status).toBe(404);
    expect((await problemOf(await app.fetch(request('/api/nothing')))).status).toBe(404);
    expect((await problemOf(await app.fetch(request('/api/state', { method: 'DELETE' })))).status).toBe(404);
  });

  it.each(['2026-02-30', 'today', '2026-2-3', '0000-01-01', '2026-05-08T00:00', '%00'])(
    'refuse the day %s',
    async (date) => {
      expect((await app.refused('today', { classId: room.id, date }, null)).status).toBe(400);
      expect((await app.refused('changeNumber', { classId: room.id }, { date, number: '12' })).status).toBe(
        400,
      );
    },
  );
});

describe('a sheet of practice', () => {
  it('is previewed once, with its key, and printed in as many copies as were ordered', async () => {
    const order = practiceOrder(room.id, ['mult.table.6', 'frac.equal']);
    const { pages, pageCount } = await app.call('previewPractice', {}, order);
    expect(pages).toHaveLength(2);
    expect(pageCount).toBe(2);
    const printed = async (changes: Partial<typeof order>) => {
      const body = JSON.stringify({ ...order, ...changes });
      return app.fetch(request(FILE_PATHS.practice, { method: 'POST', body }));
    };
    const sheets = await printed({});
    expect(sheets.status).toBe(200);
    expect(sheets.headers.get('content-type')).toBe('application/pdf');
    expect(sheets.headers.get('x-page-count')).toBe('4');
    const bytes = Buffer.from(await sheets.arrayBuffer());
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect(Buffer.from(await (await printed({})).arrayBuffer()).equals(bytes)).toBe(true);
    expect((await printed({ withKey: false })).headers.get('x-page-count')).toBe('3');
  });

  it('is refused for a skill or a form that does not exist', async () => {
    const refused = await app.refused('previewPractice', {}, practiceOrder(room.id, ['add.nothing']));
    expect(refused.status).toBe(400);
    expect(refused.problem.code).toBe('print.skill');
    const body = JSON.stringify({ ...practiceOrder(room.id, ['add.within10']), questions: 1000 });
    expect((await app.fetch(request(FILE_PATHS.practice, { method: 'POST', body }))).status).toBe(400);
  });
});

describe('a request', () => {
  const state = (headers: Record<string, string>) => app.fetch(request('/api/state', {}, headers));

  it('from this page, this computer or a plain program is answered', async () => {
    for (const headers of [
      {},
      { origin: 'http://127.0.0.1:4680', 'sec-fetch-site': 'same-origin' },
      { 'sec-fetch-site': 'none' },
    ])
      expect((await state(headers as Record<string, string>)).status).toBe(200);
  });

  it('meant for another host, or sent by another page, is refused', async () => {
    for (const headers of [
      { host: 'evil.example' },
      { host: '127.0.0.1:4681' },
      { host: '127.0.0.1:4680.evil.example' },
      { origin: 'https://evil.example' },
      { origin: 'http://127.0.0.1:4680.evil.example' },
      { origin: 'null' },
      { origin: 'file://' },
      { 'sec-fetch-site': 'cross-site' },
      { 'sec-fetch-site': 'same-site' },
    ])
      expect(
        await problemOf(await state(headers as Record<string, string>)),
        JSON.stringify(headers),
      ).toMatchObject({
        status: 403,
        problem: { code: 'request.origin' },
      });
  });

  it('is answered with headers that keep other pages and caches out', async () => {
    const { headers } = await state({});
    expect(headers.get('cache-control')).toBe('no-store');
    expect(headers.get('content-security-policy')).toMatch(/default-src 'self'.*frame-ancestors 'none'/);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
  });

  it('that is too large, not JSON or of another form is refused', async () => {
    const post = (body: BodyInit) => app.fetch(request('/api/classes', { method: 'POST', body }));
    expect(await problemOf(await post('x'.repeat(10_000_000)))).toMatchObject({
      status: 413,
      problem: { code: 'request.size' },
    });
    const paste = { text: 'Mia\n'.repeat(2_500_000), defaultYear: 4 };
    expect(await app.refused('readRoster', {}, paste)).toMatchObject({ status: 413 });
    const stream = new ReadableStream({
      pull: (controller) => controller.enqueue(new Uint8Array(500_000)),
    });
    const streamed = new Request('http://127.0.0.1:4680/api/classes', {
      method: 'POST',
      body: stream,
      duplex: 'half',
      headers: { host: '127.0.0.1:4680' },
    } as RequestInit);
    expect((await problemOf(await app.fetch(streamed))).status).toBe(413);
    expect(await problemOf(await post('{"name":'))).toMatchObject({
      status: 400,
      problem: { code: 'request.json' },
    });
    expect(await problemOf(await post(''))).toMatchObject({ problem: { code: 'request.json' } });
    for (const body of [
      [],
      null,
      7,
      { name: '' },
      { name: 'A', years: [9], children: [] },
      { name: 'A', years: [4], children: [{}] },
    ])
      expect((await problemOf(await post(JSON.stringify(body)))).status).toBe(400);
  });
});

describe('settings', () => {
  it('are kept, and impossible dates are refused without changing them', async () => {
    const { settings } = await app.call('state', {}, null);
    const changed = {
      ...settings,
      minutes: 12,
      closedDays: [{ name: 'Show day', first: '2026-08-12', last: '2026-08-12' }],
    };
    expect(await app.call('saveSettings', {}, changed)).toEqual(changed);
    const term = (first: string, last: string, name = 'Term 1') => ({ name, first, last });
    for (const wrong of [
      { terms: [term('2026-02-30', '2026-04-01')] },
      { terms: [term('2026-04-02', '2026-02-01')] },
      { terms: [term('2026-02-01', '2026-04-01'), term('2026-03-01', '2026-06-01', 'Term 2')] },
      { closedDays: [{ name: 'Camp', first: '2026-13-01', last: '2026-13-02' }] },
      { closedDays: [{ name: 'Camp', first: '2026-06-02', last: '2026-06-01' }] },
      { closedDays: [{ name: 'Camp', first: '2026-06-02', last: '2036-06-01' }] },
    ])
      expect((await app.refused('saveSettings', {}, { ...changed, ...wrong })).status).toBe(400);
    expect((await app.call('state', {}, null)).settings).toEqual(changed);
    await app.call('saveSettings', {}, settings);
  });
});

describe('files', () => {
  it('are a PDF for an order, and a plain refusal for a wrong one', async () => {
    const print = (body: unknown) =>
      app.fetch(request(FILE_PATHS.print, { method: 'POST', body: JSON.stringify(body) }));
    const sheetIds = [sheetId()];
    const response = await print({ sheetIds, document: 'slips', paper: 'A4', names: true });
    expect(response.headers.get('content-type')).toBe('application/pdf');
    expect(Number(response.headers.get('x-page-count'))).toBe(Math.ceil(27 / 6));
    expect(new TextDecoder('latin1').decode((await response.arrayBuffer()).slice(0, 5))).toBe('%PDF-');
    const slips = await app.services.store.slips.list(sheetId());
    expect(slips.ok && slips.value).toHaveLength(27);
    for (const { id, childId: owner } of slips.ok ? slips.value.slice(0, 3) : [])
      expect(await app.call('slip', { code: id.toLowerCase() }, null)).toEqual({
        sheetId: sheetId(),
        childId: owner,
      });
    expect((await app.refused('slip', { code: 'no' }, null)).status).toBe(400);
    for (const wrong of [{ sheetIds: [] }, { document: 'cake' }, { paper: 'A7' }, { perPage: 7 }])
      expect(
        (await problemOf(await print({ sheetIds, document: 'key', paper: 'A4', ...wrong }))).status,
      ).toBe(400);
    const pages = await app.call('previewPrint', {}, { sheetIds, document: 'key', paper: 'A4' });
    expect(pages.pages[0]).toMatch(/^<svg/);
  });

  it('hold everything, and come back as they were', async () => {
    const before = await app.call('understanding', { classId: room.id }, null);
    const taken = await app.fetch(
      request(FILE_PATHS.backup, { method: 'POST', body: '{"passphrase":"kettle wombat"}' }),
    );
    expect(taken.status).toBe(200);
    const bytes = await taken.arrayBuffer();
    const put = (fields: Record<string, string>, file: BlobPart | null = bytes) => {
      const form = new FormData();
      if (file !== null) form.set('file', new Blob([file]));
      for (const [name, value] of Object.entries(fields)) form.set(name, value);
      return app.fetch(
        new Request(`http://127.0.0.1:4680${FILE_PATHS.restore}`, {
          method: 'POST',
          body: form,
          headers: { host: '127.0.0.1:4680' },
        }),
      );
    };
    expect((await problemOf(await put({ passphrase: 'kettle wombat' }))).status).toBe(409);
    expect((await problemOf(await put({ replace: 'yes' }))).status).toBe(400);
    expect((await problemOf(await put({ replace: 'yes', passphrase: 'wrong wombat' }))).status).toBe(400);
    expect((await problemOf(await put({ replace: 'yes' }, 'not a backup'))).status).toBe(400);
    expect((await problemOf(await put({ replace: 'yes' }, null))).status).toBe(400);
    expect(
      (await problemOf(await app.fetch(request(FILE_PATHS.restore, { method: 'POST', body: '{}' })))).status,
    ).toBe(400);
    expect((await put({ replace: 'yes', passphrase: 'kettle wombat' })).status).toBe(200);
    expect(await app.call('understanding', { classId: room.id }, null)).toEqual(before);
  });
});

describe('classes and children', () => {
  it('are made, changed and erased', async () => {
    const child = (givenName: string, alias = '') => ({ givenName, familyName: '', alias, year: 2 });
    const made = await app.call(
      'createClass',
      {},
      { name: '  Acacia ', years: [3, 2, 2], children: [child('Mia')] },
    );
    expect(made).toMatchObject({ name: 'Acacia', years: [2, 3], childCount: 1, demo: false });
    const params = { classId: made.id };
    const more = await app.call('addChildren', params, {
      children: [child('李 小龍'), child('🦊 Fox', '🦊')],
    });
    expect(more.children.map(({ shownAs }) => shownAs)).toEqual(['Mia', '李 小龍', '🦊']);
    const [first, , last] = more.children;
    const renamed = await app.call('changeChild', { childId: first?.id ?? '' }, child('Mïa'));
    expect(renamed).toMatchObject({ id: first?.id, givenName: 'Mïa', shownAs: 'Mïa' });
    expect(await app.call('changeClass', params, { name: 'Banksia', years: [2] })).toMatchObject({
      years: [2],
    });
    for (const name of ['\u0000', '  ', 'x'.repeat(200), '\u202eabc', '—'])
      expect((await app.refused('changeChild', { childId: first?.id ?? '' }, child(name))).status, name).toBe(
        400,
      );
    expect(
      (await app.refused('addChildren', params, { children: [child('Ok'), child('\u0007')] })).status,
    ).toBe(400);
    expect((await app.call('class', params, null)).children).toHaveLength(3);
    await app.call('eraseChild', { childId: last?.id ?? '' }, null);
    expect((await app.call('class', params, null)).children).toHaveLength(2);
    await app.call('eraseClass', params, null);
    expect((await app.refused('class', params, null)).status).toBe(404);
  });

  it('are read from a paste before anything is kept', async () => {
    const reading = await app.call('readRoster', {}, { text: 'Mia Long\nNoah (Year 9)', defaultYear: 4 });
    expect(reading.children.length + reading.problems.length).toBeGreaterThanOrEqual(2);
    expect((await app.call('state', {}, null)).classes).toHaveLength(1);
  });
});
