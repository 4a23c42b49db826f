// The activity of an address, made in the Make room's own thread so that it is the very same set.
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { sentencesOf } from '../app/client.js';
import { classQuery, makeQuery } from '../app/queries.js';
import { useWords } from '../app/use-words.js';
import { useMaker } from '../screens/make/use-maker.js';
import { wishOf } from '../screens/make/wish.js';
import type { Activity, MakeOrder, Refusal } from '../screens/make/worker/messages.js';
import type { SolveSearch } from './solve-address.js';

export type Found =
  | { readonly ok: true; readonly activity: Activity; readonly name: string }
  | { readonly ok: false; readonly refusal: Refusal };

/** Number of the set when an address names none. */
const USUAL_SEED = 1;

/** The activity and a name that no other has, or why there is none; null while it is being made. */
export function useActivity(classId: string, search: SolveSearch): Found | null {
  const forEver = { staleTime: Number.POSITIVE_INFINITY };
  const room = useQuery({ ...classQuery(classId), ...forEver });
  const view = useQuery({ ...makeQuery(classId), ...forEver });
  const { locale } = useWords();
  const wished = JSON.stringify(search);
  const order = useMemo<MakeOrder | null>(() => {
    if (!room.data || !view.data) return null;
    const wish = wishOf(
      { ...(JSON.parse(wished) as SolveSearch), count: 1 },
      { years: room.data.years, seed: USUAL_SEED },
    );
    return { wish, locale, due: wish.source === 'due' ? view.data.due.map(({ skillId }) => skillId) : [] };
  }, [wished, room.data, view.data, locale]);
  const maker = useMaker(order);
  const failure = room.error ?? view.error;
  if (failure) return { ok: false, refusal: sentencesOf(failure) };
  if (maker.refusal) return { ok: false, refusal: maker.refusal };
  const activity = maker.isOld ? undefined : maker.sets[0]?.activity;
  return activity ? { ok: true, activity, name: JSON.stringify(order) } : null;
}
