// One handler for each endpoint of the contract.
import type { AnswerOf, EndpointName } from '#api/endpoints.js';
import type { z } from 'zod';
import type { ENDPOINTS } from '#api/endpoints.js';
import type { Result } from '#api/problem.js';
import { boardDays } from './desk/board-days.js';
import {
  addChildren,
  changeChild,
  changeClass,
  classDetail,
  createClass,
  listClasses,
} from './desk/classes.js';
import { alternatives, lockRungs, reshuffle, swapRung } from './desk/board-edits.js';
import { changeNumber, dayView } from './desk/day.js';
import { startDemo } from './desk/demo.js';
import { makeView } from './desk/make-room.js';
import { ownQuestions, readOwnTable, saveOwnQuestions } from './desk/own-questions.js';
import { changeAbsent, markingView, saveMarks, stepMarks } from './desk/marking.js';
import {
  changeAway,
  changeBand,
  finishSet,
  giveSet,
  handOut,
  rotaView,
  takeBackSet,
  undoRota,
} from './desk/rota.js';
import { keepSets, library, makeSets, markSets, noteSet, removeSet, setWithContent } from './desk/sets.js';
import { readSettings, saveSettings } from './desk/settings.js';
import { mistakeHelp } from './desk/mistake-help.js';
import { homeStandardView } from './desk/standard.js';
import { changeLadder } from './desk/timed/ladder.js';
import {
  handOutTimed,
  moveChild,
  recordTimed,
  timedPlace,
  timedView,
  undoMove,
  undoTimed,
} from './desk/timed/room.js';
import { evidenceView, understandingView } from './desk/understanding.js';
import { readRoster } from './roster/read-roster.js';
import { previewPractice } from './routes/practice.js';
import { previewKit } from './routes/kits.js';
import { previewPrint } from './routes/print.js';
import type { Services } from './services.js';

type ParsedBody<N extends EndpointName> = (typeof ENDPOINTS)[N]['body'] extends z.ZodType
  ? z.output<(typeof ENDPOINTS)[N]['body']>
  : null;
type Params = Readonly<Record<string, string>>;
type Handler<N extends EndpointName> = (
  services: Services,
  params: Params,
  body: ParsedBody<N>,
) => Promise<Result<AnswerOf<N>>>;

const param = (params: Params, name: string): string => params[name] ?? '';
const classOf = (params: Params) => param(params, 'classId');
const rotaOf = (params: Params) => ({ classId: param(params, 'classId'), kind: param(params, 'kind') });

export const HANDLERS: { readonly [N in EndpointName]: Handler<N> } = {
  async state(services) {
    const settings = await readSettings(services);
    if (!settings.ok) return settings;
    const classes = await listClasses(services);
    if (!classes.ok) return classes;
    const { demo: _, ...shown } = settings.value;
    return {
      ok: true,
      value: {
        firstRun: classes.value.length === 0,
        today: services.clock().today,
        settings: shown,
        classes: classes.value,
      },
    };
  },
  saveSettings: (services, _, body) => saveSettings(services, body),
  ownQuestions: (services) => ownQuestions(services),
  saveOwnQuestions: (services, _, body) => saveOwnQuestions(services, body),
  readOwnTable: async (_services, _, body) => ({ ok: true, value: readOwnTable(body) }),
  standard: (services) => homeStandardView(services),
  mistakeHelp: async () => ({ ok: true, value: mistakeHelp() }),
  startDemo: (services) => startDemo(services),
  readRoster: async (_services, _, body) => ({ ok: true, value: readRoster(body) }),
  createClass: (services, _, body) => createClass(services, body),
  class: (services, params) => classDetail(services, param(params, 'classId')),
  changeClass: (services, params, body) => changeClass(services, param(params, 'classId'), body),
  async eraseClass(services, params) {
    const erased = await services.store.classes.erase(param(params, 'classId'));
    return erased.ok ? { ok: true, value: {} } : erased;
  },
  addChildren: (services, params, body) => addChildren(services, param(params, 'classId'), body.children),
  changeChild: (services, params, body) => changeChild(services, param(params, 'childId'), body),
  async eraseChild(services, params) {
    const erased = await services.store.children.erase(param(params, 'childId'));
    return erased.ok ? { ok: true, value: {} } : erased;
  },
  today: (services, params) => dayView(services, param(params, 'classId'), param(params, 'date')),
  changeNumber: (services, params, body) =>
    changeNumber(services, param(params, 'classId'), body.date, body.number),
  reshuffle: (services, _, body) => reshuffle(services, body.sheetId),
  lockRungs: (services, params, body) => lockRungs(services, param(params, 'sheetId'), body.locked),
  alternatives: (services, params) =>
    alternatives(services, param(params, 'sheetId'), Number(param(params, 'rung'))),
  swapRung: (services, params, body) =>
    swapRung(services, param(params, 'sheetId'), Number(param(params, 'rung')), body.questionId),
  previewPrint: (services, _, body) => previewPrint(services, body),
  previewPractice: (services, _, body) => previewPractice(services, body),
  marking: (services, params) => markingView(services, param(params, 'sheetId')),
  saveMarks: (services, params, body) => saveMarks(services, param(params, 'sheetId'), body),
  undoMarks: (services, params) => stepMarks(services, param(params, 'sheetId'), 'undo'),
  redoMarks: (services, params) => stepMarks(services, param(params, 'sheetId'), 'redo'),
  changeAbsent: (services, params, body) =>
    changeAbsent(services, param(params, 'sheetId'), body.childId, body.absent),
  boardDays: (services, params) => boardDays(services, param(params, 'classId')),
  async slip(services, params) {
    const slip = await services.store.slips.find(param(params, 'code'));
    return slip.ok ? { ok: true, value: { sheetId: slip.value.sheetId, childId: slip.value.childId } } : slip;
  },
  understanding: (services, params) => understandingView(services, param(params, 'classId')),
  previewKit: (services, _, body) => previewKit(services, body),
  make: (services, params) => makeView(services, param(params, 'classId')),
  evidence: (services, params) => evidenceView(services, param(params, 'childId'), param(params, 'skillId')),
  library: (services, params) => library(services, param(params, 'classId')),
  makeSets: (services, params, body) => makeSets(services, param(params, 'classId'), body),
  keepSets: (services, params, body) =>
    keepSets(services, param(params, 'classId'), body.band, body.contents),
  markSets: (services, params, body) => markSets(services, param(params, 'classId'), body),
  set: (services, params) => setWithContent(services, param(params, 'setId')),
  noteSet: (services, params, body) => noteSet(services, param(params, 'setId'), body.note),
  removeSet: (services, params) => removeSet(services, param(params, 'setId')),
  rota: (services, params) => rotaView(services, rotaOf(params)),
  handOut: (services, params) => handOut(services, rotaOf(params)),
  finishSet: (services, params, body) => finishSet(services, rotaOf(params), body.childId, body.setId),
  giveSet: (services, params, body) => giveSet(services, rotaOf(params), body.childId, body.setId),
  takeBackSet: (services, params, body) => takeBackSet(services, rotaOf(params), body.childId),
  undoRota: (services, params) => undoRota(services, rotaOf(params)),
  changeAway: (services, params, body) => changeAway(services, param(params, 'classId'), body),
  changeBand: (services, params, body) => changeBand(services, param(params, 'childId'), body.band),
  timed: (services, params) => timedView(services, { classId: classOf(params), date: param(params, 'date') }),
  timedSheet: (services, params) => timedPlace(services, param(params, 'code')),
  handOutTimed: (services, params, { date }) => handOutTimed(services, { classId: classOf(params), date }),
  recordTimed: (services, params, { date, entries }) =>
    recordTimed(services, { classId: classOf(params), date }, entries),
  undoTimed: (services, params, { date }) =>
    undoTimed(services, { classId: classOf(params), date }, param(params, 'sheetId')),
  moveLevel: (services, params, { date, levelId }) =>
    moveChild(services, { classId: classOf(params), date }, param(params, 'childId'), levelId),
  undoLevel: (services, params, { date }) =>
    undoMove(services, { classId: classOf(params), date }, param(params, 'childId')),
  async changeLadder(services, params, { ladder }) {
    const changed = await changeLadder(services, classOf(params), ladder);
    return changed.ok ? { ok: true, value: {} } : changed;
  },
};
