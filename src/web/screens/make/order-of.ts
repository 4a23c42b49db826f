// The order that a wish becomes once it is known what the class is due and what its teacher wrote.
import type { MakeView } from '#api/make.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { Wish } from './wish.js';
import type { MakeOrder } from './worker/messages.js';

export function orderOf(wish: Wish, locale: LocaleId, view: MakeView): MakeOrder {
  return {
    wish,
    locale,
    due: wish.source === 'due' ? view.due.map(({ skillId }) => skillId) : [],
    own: wish.source === 'own' ? view.own : '',
  };
}
