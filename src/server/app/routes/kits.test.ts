import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import { FILE_PATHS } from '#api/endpoints.js';
import type { KitOrder } from '#api/kits.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { openTestApp, problemOf, request, type TestApp } from '../../../../test/support/test-app.js';

let app: TestApp;
let room: ClassDetail;
beforeAll(async () => {
  app = await openTestApp();
  room = await app.call('startDemo', {}, {});
});
afterAll(() => app.close());
afterEach(() => expect(app.faults).toEqual([]));

function chainOf(seed: number) {
  const made = composeChain({ years: [4], seed, locale: 'en-AU' });
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

const order = (changes: Partial<KitOrder> = {}): KitOrder => ({
  classId: room.id,
  sets: [chainOf(3), chainOf(4)].map((activity, at) => ({ number: at + 7, activity })),
  document: 'cards',
  paper: 'A4',
  backs: true,
  cutting: 'by sheet',
  names: false,
  lowInk: false,
  largePrint: false,
  ...changes,
});
const print = (body: unknown) =>
  app.fetch(request(FILE_PATHS.kits, { method: 'POST', body: JSON.stringify(body) }));

describe('a kit', () => {
  it('is previewed and printed from composed sets as they were sent', async () => {
    const { pages, pageCount } = await app.call('previewKit', {}, order());
    expect(pages).toHaveLength(pageCount);
    const [first, again] = [await print(order()), await print(order())];
    expect(Number(first.headers.get('x-page-count'))).toBe(pageCount);
    expect(first.headers.get('content-type')).toBe('application/pdf');
    expect(first.headers.get('content-disposition')).toContain('afterbell-chain-cards.pdf');
    const bytes = Buffer.from(await first.arrayBuffer());
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect(Buffer.from(await again.arrayBuffer()).equals(bytes)).toBe(true);
  });

  it('has no backs when none are wanted', async () => {
    const pages = async (backs: boolean) =>
      Number((await print(order({ backs }))).headers.get('x-page-count'));
    expect(await pages(false)).toBe((await pages(true)) / 2);
  });

  it('is refused in one sentence when it is no whole set, too many, or two of a number', async () => {
    const set = { number: 1, activity: chainOf(3) };
    const cut = { ...set, activity: { ...set.activity, cards: set.activity.cards.slice(1) } };
    const bad: readonly unknown[] = [
      order({ sets: [cut] }),
      order({ sets: [] }),
      order({ sets: Array.from({ length: 11 }, (_, at) => ({ ...set, number: at + 1 })) }),
      order({ sets: [set, set] }),
      order({ sets: [{ ...set, number: 0 }] }),
      { ...order(), document: 'wallpaper' },
      null,
    ];
    for (const body of bad) {
      expect((await problemOf(await print(body))).status).toBe(400);
      expect((await app.refused('previewKit', {}, body)).status).toBe(400);
    }
    expect((await problemOf(await print(order({ classId: 'no' })))).status).toBe(404);
  });
});
