// Puts the aggregates together into a Store over an open database.
import { bandStore } from './aggregates/bands.js';
import { childStore } from './aggregates/children.js';
import { classStore } from './aggregates/classes.js';
import { dayStore } from './aggregates/days.js';
import { loanStore } from './aggregates/loans.js';
import { markStore } from './aggregates/marks.js';
import { placementStore } from './aggregates/placements.js';
import { setStore } from './aggregates/sets.js';
import { settingsStore } from './aggregates/settings.js';
import { sheetStore } from './aggregates/sheets.js';
import { slipStore } from './aggregates/slips.js';
import { loadSnapshot, takeSnapshot } from './aggregates/snapshots.js';
import { timedStore } from './aggregates/timed.js';
import type { OpenedDatabase } from './session.js';
import type { Store } from './store.js';

/** The Store of the database's school; `now` is the clock that dates saved sheets. */
export function makeStore(kind: Store['kind'], opened: OpenedDatabase, now: () => Date): Store {
  const { session } = opened;
  return {
    kind,
    place: opened.place,
    school: session.school,
    settings: settingsStore(session),
    classes: classStore(session),
    children: childStore(session),
    sheets: sheetStore(session, now),
    slips: slipStore(session),
    marks: markStore(session),
    placements: placementStore(session),
    days: dayStore(session),
    sets: setStore(session, now),
    loans: loanStore(session),
    bands: bandStore(session),
    timed: timedStore(session, now),
    takeSnapshot: () => takeSnapshot(session),
    loadSnapshot: (snapshot, options) => loadSnapshot(session, snapshot, options),
    syncCounts: async () => ({ commits: session.commits(), syncs: await opened.syncs() }),
    close: () => opened.close(),
  };
}
