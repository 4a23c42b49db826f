// afterbell rota: who has which set today
import type { RotaChild, RotaView } from '#api/sets.js';
import { BANDS } from '#engine/curriculum/bands.js';
import { SET_KINDS } from '#engine/planning/set-shelf.js';
import {
  changeAway,
  changeBand,
  finishSet,
  giveSet,
  handOut,
  rotaView,
  takeBackSet,
  undoRota,
} from '#server/app/desk/rota.js';
import { rotaRequest } from '#server/app/desk/rota-sheet.js';
import type { Services } from '#server/app/services.js';
import { chooseClass } from '../class-choice.js';
import { withServices } from '../data-folder.js';
import { valueOf } from '../failure.js';
import { readWord } from '../options.js';
import { note, printJson, printText } from '../output.js';
import { chooseChild, chooseSet } from '../set-choice.js';
import { writeWhole } from './print.js';

export interface RotaOptions {
  readonly class?: string;
  readonly kind: string;
  readonly json?: boolean;
}

interface Place {
  readonly classId: string;
  readonly kind: string;
}

/** Does `act` on the rota that the options name, then shows the rota. */
async function onRota(
  options: RotaOptions,
  act: (services: Services, place: Place) => Promise<unknown>,
): Promise<void> {
  const kind = readWord('--kind', options.kind, SET_KINDS);
  const view = await withServices(async (services) => {
    const place = { classId: (await chooseClass(services, options.class)).id, kind };
    await act(services, place);
    return valueOf(await rotaView(services, place));
  });
  if (options.json) printJson(view);
  else printRota(view);
}

/** The same for one child. */
function onChild(
  name: string,
  options: RotaOptions,
  act: (services: Services, place: Place, childId: string) => Promise<unknown>,
): Promise<void> {
  return onRota(options, async (services, place) =>
    act(services, place, await chooseChild(services, place.classId, name)),
  );
}

export const showRota = (options: RotaOptions) => onRota(options, async () => null);

export const handOutSets = (options: RotaOptions) =>
  onRota(options, async (services, place) => valueOf(await handOut(services, place)));

export const undoTurn = (options: RotaOptions) =>
  onRota(options, async (services, place) => valueOf(await undoRota(services, place)));

export const finished = (name: string, options: RotaOptions) =>
  onChild(name, options, async (services, place, id) => valueOf(await finishSet(services, place, id)));

export const takeBack = (name: string, options: RotaOptions) =>
  onChild(name, options, async (services, place, id) => valueOf(await takeBackSet(services, place, id)));

export const give = (name: string, set: string, options: RotaOptions) =>
  onChild(name, options, async (services, place, id) =>
    valueOf(await giveSet(services, place, id, (await chooseSet(services, place.classId, set)).id)),
  );

export const away = (name: string, options: RotaOptions & { readonly back?: boolean }) =>
  onChild(name, options, async (services, { classId }, childId) =>
    valueOf(await changeAway(services, classId, { childId, absent: !options.back })),
  );

export const band = (name: string, word: string, options: RotaOptions) => {
  const chosen = readWord('band', word, [...BANDS, 'year']);
  return onChild(name, options, async (services, _, id) =>
    valueOf(await changeBand(services, id, chosen === 'year' ? null : chosen)),
  );
};

/** The rota as a page for the wall. */
export async function printRotaTo(options: RotaOptions & { readonly out: string }): Promise<void> {
  const kind = readWord('--kind', options.kind, SET_KINDS);
  const made = await withServices(async (services) => {
    const { id } = await chooseClass(services, options.class);
    const request = valueOf(await rotaRequest(services, { classId: id, kind }));
    return valueOf(await services.printing.print(request));
  });
  for (const warning of made.warnings) note(warning);
  writeWhole(options.out, made.pdf);
  note(`${options.out}: ${made.pages} ${made.pages === 1 ? 'page' : 'pages'}. Print at 100 %.`);
}

function printRota({ date, kind, children }: RotaView): void {
  printText(`${date}  ${kind}`);
  const width = Math.max(0, ...children.map(({ shownAs }) => shownAs.length));
  for (const child of children) printText(`${child.shownAs.padEnd(width)}  ${stateOf(child)}`);
}

function stateOf({ holds, absent, waiting, band: own, bandChosen }: RotaChild): string {
  const set = holds ? `${holds.band} ${holds.number} (box ${holds.box}, since ${holds.since})` : null;
  const chosen = bandChosen ? `  [${own} band]` : '';
  if (absent) return `away${set ? `, keeps ${set}` : ''}${chosen}`;
  return `${set ?? waiting?.message ?? 'no set yet'}${chosen}`;
}
