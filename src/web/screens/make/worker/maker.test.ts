import { describe, expect, it } from 'vitest';
import { wishOf } from '../wish.js';
import { openMaker } from './maker.js';
import type { Made } from './make-one.js';
import type { FromMaker, MadeSet, MakeOrder, ToMaker } from './messages.js';

const orderOf = (count: number): MakeOrder => ({
  wish: wishOf({ count }, { years: [4], seed: 1 }),
  locale: 'en-AU',
  due: [],
  own: '',
});
const set = (name: string) => ({ activity: name, pictures: [], steps: [] }) as unknown as MadeSet;
const make = (id: number, count: number): ToMaker => ({ id, task: 'make', order: orderOf(count) });

function maker(
  makeOne: (order: MakeOrder, at: number) => Made,
  swapOne = (): Made => ({ ok: true, value: set('swapped') }),
) {
  const said: FromMaker[] = [];
  const rests: (() => void)[] = [];
  const take = openMaker({
    makeOne,
    swapOne,
    say: (report) => said.push(report),
    rest: () => new Promise((resolve) => rests.push(resolve)),
  });
  return { said, rests, take };
}

describe('a maker', () => {
  it('reports every set as soon as it is made, and the end once', async () => {
    const { said, rests, take } = maker((_, at) => ({ ok: true, value: set(`set ${at}`) }));
    const done = take(make(1, 3));
    expect(said).toEqual([{ id: 1, said: 'made', at: 0, set: set('set 0') }]);
    rests.shift()?.();
    await Promise.resolve();
    rests.shift()?.();
    await done;
    expect(said.map((report) => report.said)).toEqual(['made', 'made', 'made', 'ended']);
  });

  it('leaves an order between two sets when a newer one has come', async () => {
    const { said, rests, take } = maker((_, at) => ({ ok: true, value: set(`set ${at}`) }));
    const first = take(make(1, 10));
    const second = take(make(2, 1));
    rests.shift()?.();
    await Promise.all([first, second]);
    expect(said.filter(({ id }) => id === 1).map((report) => report.said)).toEqual(['made', 'ended']);
    expect(said.filter(({ id }) => id === 2).map((report) => report.said)).toEqual(['made', 'ended']);
  });

  it('stops at the first set that cannot be made, and says why', async () => {
    const refusal = { message: 'Too few answers.', hint: 'Choose 8 strips.' };
    const { said, rests, take } = maker((_, at) =>
      at === 1 ? { ok: false, error: refusal } : { ok: true, value: set(`set ${at}`) },
    );
    const done = take(make(1, 5));
    rests.shift()?.();
    await done;
    expect(said.slice(1)).toEqual([
      { id: 1, said: 'refused', at: 1, refusal },
      { id: 1, said: 'ended' },
    ]);
  });

  it('swaps one question of one set', async () => {
    const { said, take } = maker(() => ({ ok: true, value: set('never') }));
    await take({ id: 4, task: 'swap', order: orderOf(2), set: set('old'), at: 1, place: 3, turn: 1 });
    expect(said).toEqual([
      { id: 4, said: 'made', at: 1, set: set('swapped') },
      { id: 4, said: 'ended' },
    ]);
  });
});
