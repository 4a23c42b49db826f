// What stands on a printed rota: the sets of today, and those that would come next.
import type { Result } from '#api/problem.js';
import { rotaAhead } from '#engine/planning/rota-ahead.js';
import type { SetKind } from '#engine/planning/set-shelf.js';
import type { RotaSheet } from '#print/request.js';
import type { Services } from '../services.js';
import { readRota, type RotaPlace, toRotaSet } from './rota.js';

/** Sets in a row: the one of today and three to follow. */
const SETS_SHOWN = 4;

const TITLES: Readonly<Record<SetKind, string>> = {
  chain: 'Who has which chain',
  trail: 'Who has which trail',
  jigsaw: 'Who has which jigsaw',
};

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
