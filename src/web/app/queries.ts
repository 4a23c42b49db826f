// What screens ask the server for, and under which keys the answers are kept.
import { queryOptions } from '@tanstack/react-query';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { SetKind } from '#engine/planning/set-shelf.js';
import { call } from './client.js';

export const stateQuery = queryOptions({ queryKey: ['state'], queryFn: () => call('state', {}, null) });

export const ownQuestionsQuery = queryOptions({
  queryKey: ['own-questions'],
  queryFn: () => call('ownQuestions', {}, null),
});

export function classQuery(classId: string) {
  return queryOptions({ queryKey: ['class', classId], queryFn: () => call('class', { classId }, null) });
}

export function todayQuery(classId: string, date: string) {
  return queryOptions({
    queryKey: ['day', classId, date],
    queryFn: () => call('today', { classId, date }, null),
  });
}

export function markingQuery(sheetId: string) {
  return queryOptions({ queryKey: ['marks', sheetId], queryFn: () => call('marking', { sheetId }, null) });
}

export function understandingQuery(classId: string) {
  return queryOptions({
    queryKey: ['understanding', classId],
    queryFn: () => call('understanding', { classId }, null),
  });
}

export function boardDaysQuery(classId: string) {
  return queryOptions({
    queryKey: ['board-days', classId],
    queryFn: () => call('boardDays', { classId }, null),
  });
}

export function libraryQuery(classId: string) {
  return queryOptions({ queryKey: ['library', classId], queryFn: () => call('library', { classId }, null) });
}

/** The standard that schools of the locale follow; it changes with the locale alone. */
export function standardQuery(locale: LocaleId) {
  return queryOptions({
    queryKey: ['standard', locale],
    queryFn: () => call('standard', {}, null),
    staleTime: Number.POSITIVE_INFINITY,
  });
}

/** What may help with each typical mistake; it changes with the program alone. */
export const mistakeHelpQuery = queryOptions({
  queryKey: ['mistake-help'],
  queryFn: () => call('mistakeHelp', {}, null),
  staleTime: Number.POSITIVE_INFINITY,
});

export function makeQuery(classId: string) {
  return queryOptions({ queryKey: ['make', classId], queryFn: () => call('make', { classId }, null) });
}

export function setQuery(setId: string) {
  return queryOptions({ queryKey: ['set', setId], queryFn: () => call('set', { setId }, null) });
}

export function timedQuery(classId: string, date: string) {
  return queryOptions({
    queryKey: ['timed', classId, date],
    queryFn: () => call('timed', { classId, date }, null),
  });
}

export function evidenceQuery(childId: string, skillId: string) {
  return queryOptions({
    queryKey: ['evidence', childId, skillId],
    queryFn: () => call('evidence', { childId, skillId }, null),
  });
}

export function rotaQuery(classId: string, kind: SetKind) {
  return queryOptions({
    queryKey: ['rota', classId, kind],
    queryFn: () => call('rota', { classId, kind }, null),
  });
}
