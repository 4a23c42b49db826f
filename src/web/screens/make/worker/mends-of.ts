// What a composer's refusal proposes, as changes of the wish that a teacher takes with one press.
import type { SupplyMend } from '#engine/activities/supply.js';
import { skillById } from '#engine/skills/map.js';
import type { Wish } from '../wish.js';
import type { Mend, Refusal } from './messages.js';

export interface ComposerError {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
  readonly mend?: SupplyMend;
}

/** The refusal as the page shows it: without the ids of skills, which only the command line needs. */
export function refusalOf(error: ComposerError, wish: Wish): Refusal {
  const { message, hint } = error;
  return { message, hint: hint.replace(/ \([a-z0-9][a-z0-9.-]+\)/g, ''), mends: mendsOf(error, wish) };
}

function mendsOf({ code, mend = {} }: ComposerError, wish: Wish): readonly Mend[] {
  const mends: Mend[] = [];
  if (mend.cards !== undefined)
    mends.push({ label: `Make it ${mend.cards} strips`, change: { cards: mend.cards } });
  const skill = mend.skill === undefined ? null : skillById(mend.skill);
  if (skill) {
    mends.push({
      label: `Take “${skill.title}” too`,
      change: { source: 'chosen', skills: [...wish.skills, skill.id] },
    });
  }
  if (code === 'jigsaw.level' && wish.level !== 'easy')
    mends.push({ label: 'Make it easy', change: { level: 'easy' } });
  if (code.startsWith('jigsaw.') && wish.rowKind !== 'mixed')
    mends.push({ label: 'Mix the rows', change: { rowKind: 'mixed' } });
  return mends;
}
