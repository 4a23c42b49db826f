// What can be printed of each activity, in a teacher's words.
import type { KitDocument } from '#api/kits.js';
import type { ActivityId } from './wish.js';

export interface KitChoice {
  readonly id: KitDocument;
  readonly label: string;
  readonly about: string;
}

const WHOLE: KitChoice = {
  id: 'kit',
  label: 'Everything',
  about: 'All of it in one file, in the order in which it is worked through.',
};
const REST: readonly KitChoice[] = [
  {
    id: 'pupil',
    label: 'Cut and paste',
    about: 'One sheet for each child’s book: cut apart and glued in, black and white.',
  },
  { id: 'labels', label: 'Labels', about: 'For the bags and the box, and name tags.' },
  { id: 'key', label: 'Check key', about: 'For an adult: one glance tells whether all is right.' },
];
const LOOSE: Readonly<Record<ActivityId, KitChoice>> = {
  chain: { id: 'cards', label: 'Strips', about: 'The strips on card, with the set’s number on the back.' },
  trail: {
    id: 'tiles',
    label: 'Mat and tiles',
    about: 'The mat, and the tiles on card with the set’s number on the back.',
  },
  jigsaw: {
    id: 'pieces',
    label: 'Mat and pieces',
    about: 'The mat, and the pieces on card with the set’s number on the back.',
  },
};

/** The documents of an activity, everything first. */
export function kitChoices(activity: ActivityId): readonly [KitChoice, ...KitChoice[]] {
  return [WHOLE, LOOSE[activity], ...REST];
}
