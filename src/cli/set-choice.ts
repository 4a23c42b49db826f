// Which sets and which child a verb means.
import type { LibrarySet } from '#api/sets.js';
import { type Band, BANDS } from '#engine/curriculum/bands.js';
import { SET_KINDS, type SetKind } from '#engine/planning/set-shelf.js';
import { listChildren } from '#server/app/desk/classes.js';
import { library } from '#server/app/desk/sets.js';
import type { Services } from '#server/app/services.js';
import { UsageFailure, valueOf } from './failure.js';

const MOST_SETS = 100;

/** "chain-middle-7": how a set is named on the command line. */
export function setName({ kind, band, number }: Pick<LibrarySet, 'kind' | 'band' | 'number'>): string {
  return `${kind}-${band}-${number}`;
}

interface Run {
  readonly kind: SetKind;
  readonly band: Band;
  readonly from: number;
  readonly to: number;
}

/** The sets that are named "chain-middle-7" or, several at once, "chain-middle-1..10"; each once, in the order named. */
export async function chooseSets(
  services: Services,
  classId: string,
  names: readonly string[],
): Promise<LibrarySet[]> {
  const { sets } = valueOf(await library(services, classId));
  const chosen = new Map<string, LibrarySet>();
  for (const name of names) {
    const { kind, band, from, to } = readRun(name);
    if (to - from >= MOST_SETS)
      throw new UsageFailure(`${name}: that is more than ${MOST_SETS} sets at once. Name fewer.`);
    for (let number = from; number <= to; number++) {
      const set = sets.find((one) => one.kind === kind && one.band === band && one.number === number);
      if (!set)
        throw new UsageFailure(
          `There is no set ${setName({ kind, band, number })} in this class. "afterbell sets list" shows all.`,
        );
      chosen.set(set.id, set);
    }
  }
  return [...chosen.values()];
}

/** The one set with this name. */
export async function chooseSet(services: Services, classId: string, name: string): Promise<LibrarySet> {
  const [set, ...others] = await chooseSets(services, classId, [name]);
  if (!set || others.length > 0)
    throw new UsageFailure(`${name} names several sets. Name one, such as chain-middle-7.`);
  return set;
}

function readRun(name: string): Run {
  const match = /^(\w+)-(\w+)-(\d{1,4})(?:\.\.(\d{1,4}))?$/.exec(name.trim().toLowerCase());
  const kind = SET_KINDS.find((one) => one === match?.[1]);
  const band = BANDS.find((one) => one === match?.[2]);
  const from = Number(match?.[3]);
  const to = Number(match?.[4] ?? match?.[3]);
  if (!match || !kind || !band || from < 1 || to < from)
    throw new UsageFailure(
      `“${name}” names no set. Write kind, band and number, such as chain-middle-7 or chain-middle-1..10.`,
    );
  return { kind, band, from, to };
}

/** The id of the child with this id or shown name. */
export async function chooseChild(services: Services, classId: string, wanted: string): Promise<string> {
  const children = valueOf(await listChildren(services, classId));
  const found = children.filter(
    ({ id, shownAs }) => id === wanted || shownAs.toLowerCase() === wanted.toLowerCase(),
  );
  const [child] = found;
  if (!child || found.length > 1)
    throw new UsageFailure(
      `${found.length === 0 ? 'No child' : 'More than one child'} is shown as “${wanted}” in this class. "afterbell rota show" lists the names.`,
    );
  return child.id;
}
