// Help with typical mistakes comes from here rather than with the page: its sentences would be a thirtieth of what the
// browser loads, and two screens show a few of them.
import type { MistakeHelp } from '#api/mistake-help.js';
import { MISCONCEPTIONS } from '#engine/questions/misconceptions.js';

export function mistakeHelp(): MistakeHelp {
  return Object.fromEntries(Object.entries(MISCONCEPTIONS).map(([id, { help }]) => [id, help]));
}
