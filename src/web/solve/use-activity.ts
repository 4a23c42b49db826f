// The activity of an address: a kept set as it was kept, or one made in the Make room's own thread from the same wish.
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { Chain } from '#engine/activities/chain/chain.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import type { Trail } from '#engine/activities/trail/trail.js';
import { sentencesOf } from '../app/client.js';
import { classQuery, makeQuery, setQuery } from '../app/queries.js';
import { useWords } from '../app/use-words.js';
import { useMaker } from '../screens/make/use-maker.js';
import { orderOf } from '../screens/make/order-of.js';
import { wishOf } from '../screens/make/wish.js';
import type { MakeOrder, Refusal } from '../screens/make/worker/messages.js';
import type { SolveSearch } from './solve-address.js';

export type Activity = Chain | Trail | Jigsaw;

export type Found =
  | {
      readonly ok: true;
      readonly activity: Activity;
      /** Tells these pieces from all others. */
      readonly name: string;
      /** What is printed on the box or on the page: "set 12" or "number 3". */
      readonly number: string;
    }
  | { readonly ok: false; readonly refusal: Refusal };

/** Number of the pieces when an address names none. */
const USUAL_SEED = 1;
const FOR_EVER = { staleTime: Number.POSITIVE_INFINITY };

/** The activity of an address, or why there is none; null while it is being looked up or made. */
export function useActivity(classId: string, search: SolveSearch): Found | null {
  const kept = useKeptSet(search.set);
  const made = useMade(classId, search);
  return search.set === undefined ? made : kept;
}

function useKeptSet(setId: string | undefined): Found | null {
  const { data, error } = useQuery({ ...setQuery(setId ?? ''), ...FOR_EVER, enabled: setId !== undefined });
  if (error) return { ok: false, refusal: sentencesOf(error) };
  if (!data) return null;
  // The server keeps what a composer made and gives it back as it was.
  const activity = data.content as unknown as Activity;
  return { ok: true, activity, name: `set ${data.set.id}`, number: `set ${data.set.number}` };
}

function useMade(classId: string, search: SolveSearch): Found | null {
  const isWanted = search.set === undefined;
  const room = useQuery({ ...classQuery(classId), ...FOR_EVER, enabled: isWanted });
  const view = useQuery({ ...makeQuery(classId), ...FOR_EVER, enabled: isWanted });
  const { locale } = useWords();
  const wished = JSON.stringify(search);
  const order = useMemo<MakeOrder | null>(() => {
    if (!isWanted || !room.data || !view.data) return null;
    const wish = wishOf(
      { ...(JSON.parse(wished) as SolveSearch), count: 1 },
      { years: room.data.years, seed: USUAL_SEED },
    );
    return orderOf(wish, locale, view.data);
  }, [isWanted, wished, room.data, view.data, locale]);
  const maker = useMaker(order);
  const failure = room.error ?? view.error;
  if (failure) return { ok: false, refusal: sentencesOf(failure) };
  if (maker.refusal) return { ok: false, refusal: maker.refusal };
  const activity = maker.isOld ? undefined : maker.sets[0]?.activity;
  if (!activity || !order) return null;
  return { ok: true, activity, name: JSON.stringify(order), number: `number ${activity.seed}` };
}
