// Desks by board: made once, kept for as long as the app is open, so that marks under way survive a change of screen.
import type { QueryClient } from '@tanstack/react-query';
import { useSyncExternalStore } from 'react';
import { CallFailure, call } from '../../app/client.js';
import { SLIP_ORDERS, type SlipOrder } from './keys.js';
import { type DeskView, MarkingDesk } from './marking-desk.js';

const STORAGE_PREFIX = 'afterbell.unsent.';
const ORDER_KEY = 'afterbell.slip-order';
/** Failures that may mend themselves: nobody answers, the disk is full, something broke. */
const PASSING = /^(unreachable|internal|disk|store)/;
const desks = new Map<string, MarkingDesk>();

/** The desk of a board. What an earlier page could not send is in it. */
export function deskOf(sheetId: string, classId: string, queries: QueryClient): MarkingDesk {
  const known = desks.get(sheetId);
  if (known) return known;
  const desk: MarkingDesk = new MarkingDesk({
    storageKey: STORAGE_PREFIX + sheetId,
    storage: localStorage,
    order: keptOrder(),
    send: (entries) => call('saveMarks', { sheetId }, { entries }),
    isFinal: (failure) => failure instanceof CallFailure && !PASSING.test(failure.code),
    later: (run, delayMs) => {
      const timer = window.setTimeout(run, delayMs);
      return () => window.clearTimeout(timer);
    },
    onSaved: () => {
      for (const queryKey of [
        ['understanding', classId],
        ['evidence'],
        ['day', classId],
        ['board-days', classId],
      ])
        void queries.invalidateQueries({ queryKey, refetchType: 'none' });
    },
    onAbsent: (child, absent) => {
      call('changeAbsent', { sheetId }, { childId: child.id, absent }).catch(() =>
        desk.setAbsent(child.id, child.absent),
      );
    },
  });
  desks.set(sheetId, desk);
  return desk;
}

/** What a desk shows now; drawn again after every change. */
export function useDeskView(desk: MarkingDesk): DeskView {
  return useSyncExternalStore(desk.subscribe, desk.view);
}

/** True while any board has marks that neither the server nor the browser's storage has. */
export function wouldLose(): boolean {
  return [...desks.values()].some((desk) => {
    const { unsent, isKept } = desk.view().outbox;
    return unsent > 0 && !isKept;
  });
}

/** Sends what earlier pages of this browser left behind for boards that are not open now. */
export function sendLeftovers(classId: string, queries: QueryClient): void {
  for (const key of Object.keys(localStorage)) {
    const sheetId = key.startsWith(STORAGE_PREFIX) ? key.slice(STORAGE_PREFIX.length) : '';
    if (sheetId !== '' && !desks.has(sheetId)) deskOf(sheetId, classId, queries).sendNow();
  }
}

function keptOrder(): SlipOrder {
  const kept = localStorage.getItem(ORDER_KEY);
  return SLIP_ORDERS.find((order) => order === kept) ?? 'first-to-last';
}

/** Remembers the way along a slip for the next board. */
export function keepOrder(order: SlipOrder): void {
  localStorage.setItem(ORDER_KEY, order);
}
