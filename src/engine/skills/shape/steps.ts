// Steps from place to place, on a plan and between coordinates.

export type Place = readonly [x: number, y: number];

/** "3 right", or "3 left" for -3. */
export const right = (steps: number) => `${steps} ${steps < 0 ? 'left' : 'right'}`.replace('-', '');

/** "2 up", or "2 down" for -2. */
export const up = (steps: number) => `${steps} ${steps < 0 ? 'down' : 'up'}`.replace('-', '');
