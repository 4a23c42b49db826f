// A level that a teacher makes: its name follows from what it asks, so that counts of one are never taken for another's.
import type { LadderLevel } from '#api/timed-room.js';
import { hashText } from '#engine/random/rng.js';

type Asked = Pick<LadderLevel, 'skills' | 'lines'>;

/** The level with room to jot, as nobody knows how long its answers take. */
export function madeLevel(title: string, year: number, asked: Asked): LadderLevel {
  const id = `own-${hashText(JSON.stringify([asked.skills, asked.lines])).toString(36)}`;
  return { id, title: title.trim(), year, room: 'roomy', ...asked };
}
