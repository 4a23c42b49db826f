// The shelf of printed sets: made, ticked off step by step, annotated.
import type { Result } from '#api/problem.js';
import type { Library, LibrarySet, SetContent, SetOrder } from '#api/sets.js';
import { ROW_KIND_NAMES } from '#engine/activities/jigsaw/request.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import type { Band } from '#engine/curriculum/bands.js';
import { boxOf, nextStep, SET_KINDS, type SetKind, type SetStep } from '#engine/planning/set-shelf.js';
import { hashText } from '#engine/random/rng.js';
import { skillById } from '#engine/skills/map.js';
import type { CardSet, Loan } from '#store/records.js';
import { refuse } from '../problems.js';
import type { Services } from '../services.js';
import { checkSet } from './check-set.js';
import { toScreen } from './classes.js';
import { composeSet } from './compose-set.js';
import { dueOn } from './day-plan.js';
import { readSettings } from './settings.js';

/** All sets of a class. */
export async function library(services: Services, classId: string): Promise<Result<Library>> {
  const sets = await services.store.sets.list(classId);
  return sets.ok ? toLibrary(services, classId, sets.value) : sets;
}

/**
 * Composes sets and keeps them under the next numbers; the answer is those sets. Where no seed was chosen it follows from
 * class, band and number, so that each set differs from all others.
 */
export async function makeSets(
  services: Services,
  classId: string,
  order: SetOrder,
): Promise<Result<Library>> {
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  const kept = await services.store.sets.list(classId, order.kind);
  if (!kept.ok) return kept;
  const numbers = kept.value.filter(({ band }) => band === order.band).map(({ number }) => number);
  const first = Math.max(0, ...numbers) + 1;
  const due = order.dueFirst
    ? await dueOn(services, classId, services.clock().today)
    : { ok: true as const, value: [] };
  if (!due.ok) return due;
  const contents: SetContent[] = [];
  for (let i = 0; i < order.count; i++) {
    const seed =
      order.seed === undefined
        ? hashText(`${classId}/${order.kind}/${order.band}/${first + i}`) >>> 1
        : (order.seed + i) % 2 ** 31;
    const made = composeSet(order, { seed, locale: settings.value.locale, due: due.value });
    if (!made.ok) return made;
    contents.push(made.value as SetContent);
  }
  return save(services, classId, order.band, contents);
}

/** Keeps composed activities as they are, under the next numbers, once their proofs hold; the answer is their sets. */
export async function keepSets(
  services: Services,
  classId: string,
  band: Band,
  contents: readonly SetContent[],
): Promise<Result<Library>> {
  for (const content of contents) {
    const checked = checkSet(content);
    if (!checked.ok) return checked;
  }
  return save(services, classId, band, contents);
}

async function save(
  services: Services,
  classId: string,
  band: Band,
  contents: readonly SetContent[],
): Promise<Result<Library>> {
  const saved = await services.store.sets.save({ classId, band, contents });
  return saved.ok ? toLibrary(services, classId, saved.value) : saved;
}

/** Ticks a step of sets, or takes the tick off; the answer is those sets. */
export async function markSets(
  services: Services,
  classId: string,
  change: { readonly setIds: readonly string[]; readonly step: SetStep; readonly done: boolean },
): Promise<Result<Library>> {
  const marked = await services.store.sets.mark({ ...change, classId, date: services.clock().today });
  return marked.ok ? toLibrary(services, classId, marked.value) : marked;
}

/** One set with what is on its pieces. */
export async function setWithContent(
  services: Services,
  setId: string,
): Promise<Result<{ set: LibrarySet; content: SetContent }>> {
  const set = await services.store.sets.get(setId);
  return set.ok ? toScreenSet(services, set.value) : set;
}

/** The set with this note in place of the one before. */
export async function noteSet(services: Services, setId: string, note: string) {
  const noted = await services.store.sets.note(setId, note);
  return noted.ok ? toScreenSet(services, noted.value) : noted;
}

/** Takes a set off the shelf that was never printed nor lent. */
export async function removeSet(services: Services, setId: string): Promise<Result<Record<string, never>>> {
  const erased = await services.store.sets.erase(setId);
  return erased.ok ? { ok: true, value: {} } : erased;
}

/** Ids of the skills that the questions of a set practise, each once, in the order in which they come. */
export function skillsOf(content: unknown): string[] {
  const found = new Set<string>();
  const look = (part: unknown): void => {
    if (Array.isArray(part)) for (const item of part) look(item);
    else if (typeof part === 'object' && part !== null) {
      const { question } = part as { question?: { skill?: unknown } | null };
      if (typeof question?.skill === 'string') found.add(question.skill);
      for (const item of Object.values(part)) if (Array.isArray(item)) look(item);
    }
  };
  look(content);
  return [...found];
}

/** What a set practises, in words. */
function topicsOf({ kind, content }: CardSet): string[] {
  if (kind !== 'jigsaw') return skillsOf(content).flatMap((skill) => skillById(skill)?.title ?? []);
  const { rowKind, rows, columns, proof } = content as unknown as Jigsaw;
  const name = ROW_KIND_NAMES[rowKind];
  return [`${name.charAt(0).toUpperCase()}${name.slice(1)}`, `${rows} by ${columns}, ${proof.level}`];
}

async function toScreenSet(services: Services, set: CardSet) {
  const shown = await toLibrary(services, set.classId, [set]);
  if (!shown.ok) return shown;
  const [first] = shown.value.sets;
  return first
    ? { ok: true as const, value: { set: first, content: set.content as SetContent } }
    : refuse('not.found', 'This set is not here any more.', 'Go back and choose again.');
}

async function toLibrary(
  services: Services,
  classId: string,
  sets: readonly CardSet[],
): Promise<Result<Library>> {
  const children = await services.store.children.list(classId);
  if (!children.ok) return children;
  const names = new Map(toScreen(children.value).map(({ id, shownAs }) => [id, shownAs]));
  const loans = await loansOf(services, classId, new Set(sets.map(({ kind }) => kind)));
  if (!loans.ok) return loans;
  return {
    ok: true,
    value: {
      sets: sets.map((set) => {
        const own = loans.value.filter(({ setId }) => setId === set.id);
        const holder = own.find(({ to }) => to === null)?.childId;
        return {
          id: set.id,
          kind: set.kind,
          band: set.band,
          number: set.number,
          box: boxOf(set.number),
          steps: [...set.steps],
          nextStep: nextStep(set.steps),
          note: set.note,
          topics: topicsOf(set),
          heldBy: holder === undefined ? null : (names.get(holder) ?? null),
          finishes: own.filter(({ finished }) => finished).length,
        };
      }),
    },
  };
}

async function loansOf(
  services: Services,
  classId: string,
  kinds: ReadonlySet<SetKind>,
): Promise<Result<readonly Loan[]>> {
  const all: Loan[] = [];
  for (const kind of SET_KINDS.filter((one) => kinds.has(one))) {
    const loans = await services.store.loans.list(classId, kind);
    if (!loans.ok) return loans;
    all.push(...loans.value);
  }
  return { ok: true, value: all };
}
