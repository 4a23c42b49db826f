// afterbell sets: the shelf of printed sets
import { z } from 'zod';
import { type LibrarySet, SetContent, type SetOrder } from '#api/sets.js';
import { JIGSAW_LEVELS, ROW_KINDS } from '#engine/activities/jigsaw/jigsaw.js';
import { BANDS } from '#engine/curriculum/bands.js';
import { SET_KINDS, SET_STEPS } from '#engine/planning/set-shelf.js';
import {
  keepSets,
  library,
  makeSets,
  markSets,
  noteSet,
  removeSet,
  setWithContent,
} from '#server/app/desk/sets.js';
import type { Services } from '#server/app/services.js';
import { chooseClass } from '../class-choice.js';
import { withServices } from '../data-folder.js';
import { UsageFailure, valueOf } from '../failure.js';
import { LARGEST_SEED } from '../made.js';
import { readJson } from '../input.js';
import { readNames, readWhole, readWord } from '../options.js';
import { printJson, printText } from '../output.js';
import { chooseSet, chooseSets, setName } from '../set-choice.js';

interface Common {
  readonly class?: string;
  readonly json?: boolean;
}

interface MakeOptions extends Common {
  readonly kind: string;
  readonly band: string;
  readonly count: string;
  readonly skills?: string;
  readonly due?: boolean;
  readonly seed?: string;
  readonly cards?: string;
  readonly rows?: string;
  readonly columns?: string;
  readonly level?: string;
  readonly rowsOf?: string;
}

const LARGEST_SIZE = 99;

/** Runs `work` on the class that the options name. */
function inClass<T>(options: Common, work: (services: Services, classId: string) => Promise<T>): Promise<T> {
  return withServices(async (services) => work(services, (await chooseClass(services, options.class)).id));
}

export async function listSets(options: Common & { readonly kind?: string }): Promise<void> {
  const kind = options.kind === undefined ? null : readWord('--kind', options.kind, SET_KINDS);
  const { sets } = await inClass(options, async (services, id) => valueOf(await library(services, id)));
  show(
    sets.filter((set) => kind === null || set.kind === kind),
    options,
  );
}

export async function makeMore(options: MakeOptions): Promise<void> {
  const size = (option: string, text: string | undefined) =>
    text === undefined ? undefined : readWhole(option, text, 1, LARGEST_SIZE);
  const order: SetOrder = {
    kind: readWord('--kind', options.kind, SET_KINDS),
    band: readWord('--band', options.band, BANDS),
    count: readWhole('--count', options.count, 1, 10),
    skills: options.skills === undefined ? undefined : readNames('--skills', options.skills),
    dueFirst: options.due,
    seed: options.seed === undefined ? undefined : readWhole('--seed', options.seed, 0, LARGEST_SEED),
    cards: size('--cards', options.cards),
    rows: size('--rows', options.rows),
    columns: size('--columns', options.columns),
    level: options.level === undefined ? undefined : readWord('--level', options.level, JIGSAW_LEVELS),
    rowKind: options.rowsOf === undefined ? undefined : readWord('--rows-of', options.rowsOf, ROW_KINDS),
  };
  const made = await inClass(options, async (services, id) => valueOf(await makeSets(services, id, order)));
  show(made.sets, options);
}

const Kept = z.union([SetContent, z.object({ items: z.array(SetContent).min(1).max(100) })]);

export async function keep(file: string, options: Common & { readonly band: string }): Promise<void> {
  const band = readWord('--band', options.band, BANDS);
  const json = readJson(file, z.looseObject({}));
  const parsed = Kept.safeParse(json);
  if (!parsed.success)
    throw new UsageFailure(
      `${file}: this is no chain, trail or jigsaw. Give it what "make chain --json" printed.`,
    );
  const contents = 'items' in parsed.data ? (parsed.data.items as SetContent[]) : [parsed.data];
  const kept = await inClass(options, async (services, id) =>
    valueOf(await keepSets(services, id, band, contents)),
  );
  show(kept.sets, options);
}

/** The sets as "make" prints them, so that "print" can read them. */
export async function showSets(names: readonly string[], options: Common): Promise<void> {
  const contents = await inClass(options, async (services, id) => {
    const sets = await chooseSets(services, id, names);
    const found = [];
    for (const set of sets) found.push(valueOf(await setWithContent(services, set.id)).content);
    return found;
  });
  printJson(contents.length === 1 ? contents[0] : { items: contents });
}

export async function tick(
  names: readonly string[],
  options: Common & { readonly step: string; readonly off?: boolean },
): Promise<void> {
  const step = readWord('--step', options.step, SET_STEPS);
  const marked = await inClass(options, async (services, id) => {
    const sets = await chooseSets(services, id, names);
    const change = { setIds: sets.map((set) => set.id), step, done: !options.off };
    return valueOf(await markSets(services, id, change));
  });
  show(marked.sets, options);
}

export async function noteOn(name: string, text: string, options: Common): Promise<void> {
  const noted = await inClass(options, async (services, id) =>
    valueOf(await noteSet(services, (await chooseSet(services, id, name)).id, text)),
  );
  show([noted.set], options);
}

export async function remove(name: string, options: Common): Promise<void> {
  await inClass(options, async (services, id) =>
    valueOf(await removeSet(services, (await chooseSet(services, id, name)).id)),
  );
  if (options.json) printJson({});
  else printText(`${name} is off the shelf.`);
}

function show(sets: readonly LibrarySet[], { json }: Common): void {
  if (json) printJson({ sets });
  else if (sets.length === 0) printText('There are no sets yet. Make some with "afterbell sets make".');
  else for (const set of sets) printText(lineOf(set));
}

function lineOf(set: LibrarySet): string {
  const { box, steps, heldBy, finishes, note, topics } = set;
  const where = heldBy === null ? '' : `, with ${heldBy}`;
  const done = finishes === 0 ? '' : `, finished ${finishes} ${finishes === 1 ? 'time' : 'times'}`;
  return `${setName(set).padEnd(17)} box ${box}  ${steps.join(', ') || 'not printed yet'}${where}${done}  ${note || topics.join('; ')}`;
}
