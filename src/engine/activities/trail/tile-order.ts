// The order in which loose tiles are handed out: on the sheet that is cut, and beside the mat on a screen.
import { Rng } from '../../random/rng.js';
import type { Trail } from './trail.js';

/** The numbers of the tiles, mixed by the trail's seed and answers, so that their places on a sheet tell nothing. */
export function tileOrder({ seed, tiles }: Pick<Trail, 'seed' | 'tiles'>): number[] {
  return new Rng(seed)
    .fork('trail')
    .fork('order')
    .fork(tiles.map(({ answer }) => answer.text).join('/'))
    .shuffle([...tiles.keys()]);
}
