// Composes beside the page, so that the page answers while pieces are made.
import { composeWish } from './compose-wish.js';
import type { SolveWish } from './wish.js';

self.addEventListener('message', ({ data }: MessageEvent<SolveWish>) => {
  self.postMessage(composeWish(data));
});
