// The thread in which sets are made, so that the page never stands still.
import { makeOne, swapOne } from './make-one.js';
import { openMaker } from './maker.js';
import type { FromMaker, ToMaker } from './messages.js';

const take = openMaker({
  makeOne,
  swapOne,
  // A thread has no origin to name, unlike a window.
  // oxlint-disable-next-line unicorn/require-post-message-target-origin
  say: (report: FromMaker) => self.postMessage(report),
  rest: () => new Promise((resolve) => setTimeout(resolve)),
});

addEventListener('message', (event: MessageEvent<ToMaker>) => void take(event.data));
