// What a chain says aloud: what stands on a strip and beside what it lies. Never whether it belongs there.
import type { ChainCard } from '#engine/activities/chain/chain.js';
import type { Line } from './line.js';

/** Where a strip lies or would lie: "Place 3 of 4, after “6 × 9”, before “54”." `laid` are the other strips of the chain. */
export function placeWords(cards: readonly ChainCard[], laid: readonly number[], at: number): string {
  const before = cards[laid[at - 1] ?? -1];
  const after = cards[laid[at] ?? -1];
  const parts = [`Place ${at + 1} of ${laid.length + 1}`];
  if (before) parts.push(before.question ? `after “${before.question.text}”` : 'after Finish');
  if (after) parts.push(after.answer ? `before “${after.answer.text}”` : 'before Start');
  return `${parts.join(', ')}.`;
}

/** After a strip was laid: where it lies, what it asks, and how many lie loose. */
export function laidWords(cards: readonly ChainCard[], line: Line, piece: number): string {
  const at = line.laid.indexOf(piece);
  const others = line.laid.filter((one) => one !== piece);
  const card = cards[piece];
  if (!card || at < 0) return '';
  const asks = card.question ? `It asks: ${closed(card.question.text)}` : 'It says Finish.';
  return `Laid. ${placeWords(cards, others, at)} ${asks} ${looseWords(line.tray.length)}`;
}

/** "3 strips lie loose." */
export function looseWords(count: number): string {
  if (count === 0) return 'No strip lies loose.';
  return count === 1 ? '1 strip lies loose.' : `${count} strips lie loose.`;
}

function closed(text: string): string {
  return /[.?!]$/.test(text) ? text : `${text}.`;
}
