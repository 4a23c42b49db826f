// The maker's side of the talk: takes orders, makes set after set, and leaves an order as soon as a newer one is there.
import type { FromMaker, MadeSet, ToMaker } from './messages.js';
import type { makeOne, swapOne } from './make-one.js';

export interface MakerTools {
  readonly makeOne: typeof makeOne;
  readonly swapOne: typeof swapOne;
  readonly say: (report: FromMaker) => void;
  /** Lets waiting messages in; resolves when they have been taken. */
  readonly rest: () => Promise<void>;
}

/** The function that takes an order. Each order's reports end with "ended". */
export function openMaker({ makeOne, swapOne, say, rest }: MakerTools): (message: ToMaker) => Promise<void> {
  let newest = 0;
  return async (message) => {
    const { id, order } = message;
    newest = id;
    if (message.task === 'swap') {
      const { set, at, place, turn } = message;
      tell(id, at, () => swapOne(order, set, at, place, turn));
    } else {
      for (let at = 0; at < order.wish.count; at++) {
        if (at > 0) await rest();
        if (newest !== id || !tell(id, at, () => makeOne(order, at))) break;
      }
    }
    say({ id, said: 'ended' });
  };

  /** True when the set was made. */
  function tell(id: number, at: number, make: () => ReturnType<typeof makeOne>): boolean {
    const made = make();
    if (made.ok) say({ id, said: 'made', at, set: made.value satisfies MadeSet });
    else say({ id, said: 'refused', at, refusal: made.error });
    return made.ok;
  }
}
