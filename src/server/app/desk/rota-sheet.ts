// What stands on a printed rota: the sets of today, and those that would come next.
import type { Result } from '#api/problem.js';
import { rotaAhead } from '#engine/planning/rota-ahead.js';
import type { SetKind } from '#engine/planning/set-shelf.js';
import type { PrintRequest, RotaSheet } from '#print/request.js';
import type { Services } from '../services.js';
import { readRota, type RotaPlace, toRotaSet } from './rota.js';
import { readSettings } from './settings.js';

/** Sets in a row: the one of today and three to follow. */
const SETS_SHOWN = 4;

const TITLES: Readonly<Record<SetKind, string>> = {
  chain: 'Who has which chain',
  trail: 'Who has which trail',
  jigsaw: 'Who has which jigsaw',
};

/** The rota of a class and kind as the print room wants it, on the school's paper. */
export async function rotaRequest(services: Services, place: RotaPlace): Promise<Result<PrintRequest>> {
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  const schoolClass = await services.store.classes.get(place.classId);
  if (!schoolClass.ok) return schoolClass;
  const rota = await rotaSheet(services, place);
  if (!rota.ok) return rota;
  return {
    ok: true,
    value: {
      document: 'rota',
      boards: [],
      rota: rota.value,
      paper: settings.value.paper,
      options: {
        locale: settings.value.locale,
        className: schoolClass.value.name,
        date: services.clock().today,
      },
    },
  };
}

/** The rota of today and the sets that follow it, in list order. */
export async function rotaSheet(services: Services, place: RotaPlace): Promise<Result<RotaSheet>> {
  const rota = await readRota(services, place);
  if (!rota.ok) return rota;
  const { state, children, sets, kind } = rota.value;
  const byId = new Map(sets.map((set) => [set.id, toRotaSet(set)]));
  const rows = rotaAhead(state, children, SETS_SHOWN);
  return {
    ok: true,
    value: {
      title: TITLES[kind],
      rows: children.map(({ id, shownAs, isAbsent }) => ({
        name: shownAs,
        isAway: isAbsent,
        cells: (rows.get(id) ?? []).map((setId) => (setId === null ? null : (byId.get(setId) ?? null))),
      })),
    },
  };
}
