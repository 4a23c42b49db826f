// Fingers on a touch board: several at once, each from one point to another.
import type { Locator, Page } from 'playwright-core';

interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Finger {
  readonly from: Point;
  readonly to: Point;
}

/** Puts all fingers down, moves them in small steps side by side, and lifts them. */
export async function dragFingers(page: Page, fingers: readonly Finger[]): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const at = (share: number) =>
    fingers.map(({ from, to }, id) => ({
      x: from.x + (to.x - from.x) * share,
      y: from.y + (to.y - from.y) * share,
      id,
    }));
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
  for (let step = 1; step <= 8; step++)
    await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(step / 8) });
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await session.detach();
}

/** The middle of an element, or another share of its width and height. */
export async function pointOn(target: Locator, across = 0.5, down = 0.5): Promise<Point> {
  const box = await target.boundingBox();
  if (!box) throw new Error(`${target.toString()} is not on the page`);
  return { x: box.x + box.width * across, y: box.y + box.height * down };
}
