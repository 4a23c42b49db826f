// The rota: who has which set of one kind today. Every tap is one turn in the store, all or nothing, and can be undone.
import type { Result } from '#api/problem.js';
import type { RotaChild, RotaSet, RotaView } from '#api/sets.js';
import { type Band, bandOfYear } from '#engine/curriculum/bands.js';
import { daysBetween } from '#engine/numbers/calendar.js';
import { assignDay, assignNext } from '#engine/planning/rotation.js';
import {
  finishesOf,
  isInUse,
  loanOf,
  REVIEW_GAP_DAYS,
  type RotationChild,
  type RotationState,
} from '#engine/planning/rotation-state.js';
import { boxOf, isReady, SET_KINDS, type SetKind } from '#engine/planning/set-shelf.js';
import { hashText } from '#engine/random/rng.js';
import type { CardSet, Loan, Turn } from '#store/records.js';
import { refuse } from '../problems.js';
import type { Services } from '../services.js';
import { absentOn, noteAbsent } from './absences.js';
import { toScreen } from './classes.js';
import { dueOn } from './day-plan.js';
import { skillsOf } from './sets.js';

/** Which rota: `kind` as it stands in the address. */
export interface RotaPlace {
  readonly classId: string;
  readonly kind: string;
}

interface Child extends RotationChild {
  readonly shownAs: string;
  readonly year: number;
  readonly bandChosen: boolean;
}

interface Rota {
  readonly classId: string;
  readonly kind: SetKind;
  readonly state: RotationState;
  readonly children: readonly Child[];
  readonly sets: readonly CardSet[];
}

/** The rota of today. */
export async function rotaView(services: Services, place: RotaPlace): Promise<Result<RotaView>> {
  const rota = await readRota(services, place);
  return rota.ok ? viewOf(services, rota.value) : rota;
}

/** Gives a set to everyone who is here and has none. */
export async function handOut(services: Services, place: RotaPlace): Promise<Result<RotaView>> {
  const rota = await readRota(services, place);
  if (!rota.ok) return rota;
  const day = assignDay(rota.value.state, rota.value.children);
  const open = day.flatMap(({ childId, next }) => (next.ok ? [{ childId, setId: next.value.setId }] : []));
  if (open.length > 0) return record(services, rota.value, { close: [], open });
  const stuck = day.flatMap(({ next }) =>
    !next.ok && (next.error.code === 'rotation.none-ready' || next.error.code === 'rotation.all-held')
      ? [next.error]
      : [],
  );
  return stuck[0]
    ? { ok: false, error: stuck[0] }
    : refuse(
        'rota.complete',
        'Everyone who is here has a set already.',
        'Press “Finished, next” when a child is done.',
      );
}

/**
 * The child's set is done; it gets the next one where there is one. With `setId`, refused when the child has another set
 * by now: somebody else was quicker.
 */
export async function finishSet(
  services: Services,
  place: RotaPlace,
  childId: string,
  setId?: string,
): Promise<Result<RotaView>> {
  const rota = await readRota(services, place);
  if (!rota.ok) return rota;
  const child = childIn(rota.value, childId);
  if (!child.ok) return child;
  if (child.value.isAbsent)
    return refuse('rotation.away', 'This child is away today and keeps its set.', 'Take “away” back first.');
  const { state } = rota.value;
  const held = loanOf(state, childId);
  if (setId !== undefined && held && held.setId !== setId)
    return refuse('conflict', 'This child has another set by now.', 'Look at the rota again.');
  const loans = state.loans.map((loan) =>
    loan.childId === childId && loan.to === null ? { ...loan, to: state.date, isFinished: true } : loan,
  );
  const next = assignNext({ ...state, loans }, child.value);
  return record(services, rota.value, {
    close: [{ childId, finished: true }],
    open: next.ok ? [{ childId, setId: next.value.setId }] : [],
  });
}

/** Gives the child the set that the teacher chose, whatever the rotation would do; the set it has goes back unfinished. */
export async function giveSet(
  services: Services,
  place: RotaPlace,
  childId: string,
  setId: string,
): Promise<Result<RotaView>> {
  const rota = await readRota(services, place);
  if (!rota.ok) return rota;
  const child = childIn(rota.value, childId);
  if (!child.ok) return child;
  const set = rota.value.sets.find(({ id }) => id === setId);
  if (!set) return refuse('not.found', 'This set is not here any more.', 'Look at the rota again.');
  if (!isReady(set.steps))
    return refuse('rota.not-ready', 'This set is not in its box yet.', 'Tick “in the box” once it is.');
  const has = rota.value.state.loans.some((loan) => loan.childId === childId && loan.to === null);
  return record(services, rota.value, {
    close: has ? [{ childId, finished: false }] : [],
    open: [{ childId, setId }],
  });
}

/** The child's set goes back to its box unfinished. */
export async function takeBackSet(
  services: Services,
  place: RotaPlace,
  childId: string,
): Promise<Result<RotaView>> {
  const rota = await readRota(services, place);
  return rota.ok ? record(services, rota.value, { close: [{ childId, finished: false }], open: [] }) : rota;
}

/** The rota as it was before the last turn of today. */
export async function undoRota(services: Services, place: RotaPlace): Promise<Result<RotaView>> {
  const kind = kindOf(place.kind);
  if (!kind.ok) return kind;
  const undone = await services.store.loans.undo(place.classId, kind.value, services.clock().today);
  return undone.ok ? rotaView(services, place) : undone;
}

/** Notes that a child is away today, or is there after all. */
export function changeAway(
  services: Services,
  classId: string,
  { childId, absent }: { readonly childId: string; readonly absent: boolean },
): Promise<Result<Record<string, never>>> {
  const date = services.clock().today;
  return noteAbsent(services, {
    classId,
    date,
    childId,
    absent,
    unrecorded: { number: null, activity: null },
  });
}

/** Chooses the child's band; null lets it follow from the year. */
export async function changeBand(
  services: Services,
  childId: string,
  band: Band | null,
): Promise<Result<Record<string, never>>> {
  const changed = await services.store.bands.put(childId, band);
  return changed.ok ? { ok: true, value: {} } : changed;
}

function kindOf(kind: string): Result<SetKind> {
  const known = SET_KINDS.find((one) => one === kind);
  return known === undefined
    ? refuse('not.found', 'There is no such kind of set.', 'Choose chain, trail or jigsaw.')
    : { ok: true, value: known };
}

function childIn(rota: Rota, childId: string): Result<Child> {
  const child = rota.children.find(({ id }) => id === childId);
  return child
    ? { ok: true, value: child }
    : refuse('child.missing', 'This child is not in this class.', 'Reload the page.');
}

/** What the rotation of a class and kind knows today. */
export async function readRota(services: Services, place: RotaPlace): Promise<Result<Rota>> {
  const kind = kindOf(place.kind);
  if (!kind.ok) return kind;
  const { classId } = place;
  const date = services.clock().today;
  const sets = await services.store.sets.list(classId, kind.value);
  if (!sets.ok) return sets;
  const stored = await services.store.children.list(classId);
  if (!stored.ok) return stored;
  const bands = await services.store.bands.list(classId);
  if (!bands.ok) return bands;
  const absent = await absentOn(services, classId, date);
  if (!absent.ok) return absent;
  const loans = await services.store.loans.list(classId, kind.value);
  if (!loans.ok) return loans;
  // The plan of the day is worked out only where a set could come back for review.
  const due = loans.value.some(({ to }) => to !== null && daysBetween(to, date) >= REVIEW_GAP_DAYS)
    ? await dueOn(services, classId, date)
    : { ok: true as const, value: [] };
  if (!due.ok) return due;
  const chosen = new Map(bands.value.map(({ childId, band }) => [childId, band]));
  return {
    ok: true,
    value: {
      classId,
      kind: kind.value,
      sets: sets.value,
      children: toScreen(stored.value).map(({ id, shownAs, year }) => ({
        id,
        shownAs,
        year,
        band: chosen.get(id) ?? bandOfYear(year),
        bandChosen: chosen.has(id),
        isAbsent: absent.value.includes(id),
      })),
      state: {
        date,
        seed: hashText(`${classId}/${kind.value}`) >>> 1,
        sets: sets.value.map((set) => ({
          id: set.id,
          number: set.number,
          band: set.band,
          isReady: isReady(set.steps),
          skills: skillsOf(set.content),
        })),
        loans: loans.value.map(({ finished, ...loan }: Loan) => ({ ...loan, isFinished: finished })),
        dueSkills: due.value,
      },
    },
  };
}

async function record(
  services: Services,
  { classId, kind, state }: Rota,
  turn: Pick<Turn, 'close' | 'open'>,
): Promise<Result<RotaView>> {
  const recorded = await services.store.loans.record({ classId, kind, date: state.date, ...turn });
  return recorded.ok ? rotaView(services, { classId, kind }) : recorded;
}

async function viewOf(
  services: Services,
  { classId, kind, state, children, sets }: Rota,
): Promise<Result<RotaView>> {
  const canUndo = await services.store.loans.canUndo(classId, kind, state.date);
  if (!canUndo.ok) return canUndo;
  const byId = new Map(sets.map((set) => [set.id, toRotaSet(set)]));
  return {
    ok: true,
    value: {
      date: state.date,
      kind,
      children: children.map((child) => showChild(state, child, byId)),
      free: sets.flatMap((set) => (isReady(set.steps) && !isInUse(state, set.id) ? [toRotaSet(set)] : [])),
      canUndo: canUndo.value,
    },
  };
}

/** A stored set as the rota names it. */
export function toRotaSet({ id, band, number }: CardSet): RotaSet {
  return { id, band, number, box: boxOf(number) };
}

function showChild(state: RotationState, child: Child, sets: ReadonlyMap<string, RotaSet>): RotaChild {
  const loan = state.loans.find(({ childId, to }) => childId === child.id && to === null);
  const held = loan && sets.get(loan.setId);
  const next = loan || child.isAbsent ? null : assignNext(state, child);
  return {
    id: child.id,
    shownAs: child.shownAs,
    year: child.year,
    band: child.band,
    bandChosen: child.bandChosen,
    absent: child.isAbsent,
    holds: loan && held ? { ...held, since: loan.from, why: whyThis(state, child, loan.setId) } : null,
    had: state.sets.flatMap(({ id }) => (finishesOf(state, child.id, id).length > 0 ? [id] : [])),
    waiting: next && !next.ok ? { message: next.error.message, hint: next.error.hint } : null,
  };
}

function whyThis(state: RotationState, child: Child, setId: string): string {
  const set = state.sets.find(({ id }) => id === setId);
  const isNew = (id: string) => finishesOf(state, child.id, id).length === 0;
  if (set?.band !== child.band) return 'From another band than the child’s.';
  if (isNew(setId)) return 'New to this child.';
  return state.sets.some(({ id, band, isReady: ready }) => ready && band === child.band && isNew(id))
    ? 'Had before; back because its topics are due for review, or chosen by hand.'
    : 'Had before: this child has finished every set of the band.';
}
