import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { openTestApp, type TestApp, TODAY } from '../../../../test/support/test-app.js';

let app: TestApp;
beforeAll(async () => {
  app = await openTestApp();
});
afterAll(() => app.close());
afterEach(() => expect(app.faults).toEqual([]));

const LIST = 'How many are 3 more than {n}? | n + 3 | n - 3 | | | 2 | Addition';

it('own questions are kept, come to the day’s board when wished, and no window writes over another', async () => {
  const empty = await app.call('ownQuestions', {}, null);
  expect(empty.text).toBe('');
  const saved = await app.call('saveOwnQuestions', {}, { ...empty, text: LIST, onBoards: true });
  expect(await app.call('ownQuestions', {}, null)).toEqual(saved);
  await expect(app.call('saveOwnQuestions', {}, { ...empty, text: 'other' })).rejects.toThrow(
    /another window/,
  );

  // Settings of other kinds leave the list alone.
  const { settings } = await app.call('state', {}, null);
  await app.call('saveSettings', {}, { ...settings, minutes: 7 });
  expect(await app.call('ownQuestions', {}, null)).toEqual(saved);

  const room = await app.call('createClass', {}, { name: 'Wattle', years: [3], children: [] });
  const asked = async (date: string) =>
    (await app.call('today', { classId: room.id, date }, null)).sheets.flatMap(({ board }) =>
      board.rungs.map(({ question }) => question.text),
    );
  expect((await asked(TODAY)).some((text) => text.startsWith('How many are 3 more than'))).toBe(true);
  await app.call('saveOwnQuestions', {}, { ...saved, onBoards: false });
  expect((await asked('2026-05-11')).some((text) => text.startsWith('How many are 3 more than'))).toBe(false);
});

it('a table becomes lines, rows with a fault too; a table without the columns is refused in words', async () => {
  const table = 'answer,question,year\n2 * n,"Double {n}, please",2\nn ÷,Half of {n}?,3\n';
  expect(await app.call('readOwnTable', {}, { name: 'mine.csv', text: table })).toEqual({
    lines: ['Double {n}, please | 2 * n |  |  |  | 2', 'Half of {n}? | n ÷ |  |  |  | 3'],
    problems: [],
  });
  const refused = await app.call('readOwnTable', {}, { name: 'mine.csv', text: 'a,b\n1,2\n' });
  expect(refused.lines).toEqual([]);
  expect(refused.problems[0]).toMatch(/no column “question”/);
});
