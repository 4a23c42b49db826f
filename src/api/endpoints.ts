// Every endpoint once: the server registers these, the web client calls them, and both take their types from here.
import { z } from 'zod';
import { AppState, Child, ClassDetail, NewChild, NewClass, RosterInput, RosterReading } from './class.js';
import { KitOrder } from './kits.js';
import { MakeView } from './make.js';
import { AbsentChange, BoardDay, MarkBatch, MarkingView, MarksSaved, SlipPlace } from './marking.js';
import { OwnQuestionsView, OwnTable, OwnTableRead } from './own-questions.js';
import { PracticeOrder, PrintOrder, PrintPreview } from './print.js';
import {
  AwayChange,
  BandChange,
  Library,
  NoteChange,
  RotaTap,
  RotaView,
  SetFinished,
  SetGiven,
  SetOrder,
  SetsToKeep,
  SetWithContent,
  StepChange,
} from './sets.js';
import { Settings } from './settings.js';
import { StandardView } from './standard.js';
import { MistakeHelp } from './mistake-help.js';
import { Alternative, LockChange, NumberChange, Reshuffle, Sheet, Swap, TodayView } from './today.js';
import { LadderChange, LevelChange, OutcomeBatch, TimedDay, TimedPlace, TimedView } from './timed-room.js';
import { EvidenceView, UnderstandingView } from './understanding.js';

const nothing = z.object({});

/** method, path with :names, body schema (null for none), answer schema. All bodies and answers are JSON. */
export const ENDPOINTS = {
  state: { method: 'GET', path: '/api/state', body: null, answer: AppState },
  saveSettings: { method: 'PUT', path: '/api/settings', body: Settings, answer: Settings },
  ownQuestions: { method: 'GET', path: '/api/own-questions', body: null, answer: OwnQuestionsView },
  saveOwnQuestions: {
    method: 'PUT',
    path: '/api/own-questions',
    body: OwnQuestionsView,
    answer: OwnQuestionsView,
  },
  readOwnTable: { method: 'POST', path: '/api/own-questions/table', body: OwnTable, answer: OwnTableRead },
  startDemo: { method: 'POST', path: '/api/demo', body: nothing, answer: ClassDetail },
  readRoster: { method: 'POST', path: '/api/roster', body: RosterInput, answer: RosterReading },
  createClass: { method: 'POST', path: '/api/classes', body: NewClass, answer: ClassDetail },
  class: { method: 'GET', path: '/api/classes/:classId', body: null, answer: ClassDetail },
  changeClass: {
    method: 'PUT',
    path: '/api/classes/:classId',
    body: NewClass.omit({ children: true }),
    answer: ClassDetail,
  },
  eraseClass: { method: 'DELETE', path: '/api/classes/:classId', body: null, answer: nothing },
  addChildren: {
    method: 'POST',
    path: '/api/classes/:classId/children',
    body: z.object({ children: z.array(NewChild).min(1).max(60) }),
    answer: ClassDetail,
  },
  changeChild: { method: 'PUT', path: '/api/children/:childId', body: NewChild, answer: Child },
  eraseChild: { method: 'DELETE', path: '/api/children/:childId', body: null, answer: nothing },
  today: { method: 'GET', path: '/api/classes/:classId/days/:date', body: null, answer: TodayView },
  changeNumber: {
    method: 'POST',
    path: '/api/classes/:classId/number',
    body: NumberChange,
    answer: TodayView,
  },
  reshuffle: { method: 'POST', path: '/api/reshuffle', body: Reshuffle, answer: Sheet },
  lockRungs: { method: 'PUT', path: '/api/sheets/:sheetId/locked', body: LockChange, answer: Sheet },
  alternatives: {
    method: 'GET',
    path: '/api/sheets/:sheetId/rungs/:rung/alternatives',
    body: null,
    answer: z.object({ alternatives: z.array(Alternative) }),
  },
  swapRung: { method: 'PUT', path: '/api/sheets/:sheetId/rungs/:rung', body: Swap, answer: Sheet },
  previewPrint: { method: 'POST', path: '/api/print/preview', body: PrintOrder, answer: PrintPreview },
  previewPractice: {
    method: 'POST',
    path: '/api/print/practice/preview',
    body: PracticeOrder,
    answer: PrintPreview,
  },
  marking: { method: 'GET', path: '/api/sheets/:sheetId/marks', body: null, answer: MarkingView },
  saveMarks: { method: 'PUT', path: '/api/sheets/:sheetId/marks', body: MarkBatch, answer: MarksSaved },
  undoMarks: { method: 'POST', path: '/api/sheets/:sheetId/undo', body: nothing, answer: MarksSaved },
  redoMarks: { method: 'POST', path: '/api/sheets/:sheetId/redo', body: nothing, answer: MarksSaved },
  changeAbsent: { method: 'PUT', path: '/api/sheets/:sheetId/absent', body: AbsentChange, answer: nothing },
  boardDays: {
    method: 'GET',
    path: '/api/classes/:classId/board-days',
    body: null,
    answer: z.object({ days: z.array(BoardDay) }),
  },
  slip: { method: 'GET', path: '/api/slips/:code', body: null, answer: SlipPlace },
  understanding: {
    method: 'GET',
    path: '/api/classes/:classId/understanding',
    body: null,
    answer: UnderstandingView,
  },
  previewKit: { method: 'POST', path: '/api/kits/preview', body: KitOrder, answer: PrintPreview },
  mistakeHelp: { method: 'GET', path: '/api/mistake-help', body: null, answer: MistakeHelp },
  standard: { method: 'GET', path: '/api/standard', body: null, answer: StandardView },
  make: { method: 'GET', path: '/api/classes/:classId/make', body: null, answer: MakeView },
  evidence: {
    method: 'GET',
    path: '/api/children/:childId/skills/:skillId',
    body: null,
    answer: EvidenceView,
  },
  library: { method: 'GET', path: '/api/classes/:classId/sets', body: null, answer: Library },
  makeSets: { method: 'POST', path: '/api/classes/:classId/sets', body: SetOrder, answer: Library },
  keepSets: { method: 'POST', path: '/api/classes/:classId/sets/kept', body: SetsToKeep, answer: Library },
  markSets: { method: 'PUT', path: '/api/classes/:classId/sets/steps', body: StepChange, answer: Library },
  set: { method: 'GET', path: '/api/sets/:setId', body: null, answer: SetWithContent },
  noteSet: { method: 'PUT', path: '/api/sets/:setId/note', body: NoteChange, answer: SetWithContent },
  removeSet: { method: 'DELETE', path: '/api/sets/:setId', body: null, answer: nothing },
  rota: { method: 'GET', path: '/api/classes/:classId/rota/:kind', body: null, answer: RotaView },
  handOut: {
    method: 'POST',
    path: '/api/classes/:classId/rota/:kind/hand-out',
    body: nothing,
    answer: RotaView,
  },
  finishSet: {
    method: 'POST',
    path: '/api/classes/:classId/rota/:kind/finished',
    body: SetFinished,
    answer: RotaView,
  },
  giveSet: {
    method: 'POST',
    path: '/api/classes/:classId/rota/:kind/give',
    body: SetGiven,
    answer: RotaView,
  },
  takeBackSet: {
    method: 'POST',
    path: '/api/classes/:classId/rota/:kind/take-back',
    body: RotaTap,
    answer: RotaView,
  },
  undoRota: {
    method: 'POST',
    path: '/api/classes/:classId/rota/:kind/undo',
    body: nothing,
    answer: RotaView,
  },
  changeAway: { method: 'PUT', path: '/api/classes/:classId/away', body: AwayChange, answer: nothing },
  changeBand: { method: 'PUT', path: '/api/children/:childId/band', body: BandChange, answer: nothing },
  timed: { method: 'GET', path: '/api/classes/:classId/timed/:date', body: null, answer: TimedView },
  timedSheet: { method: 'GET', path: '/api/timed/:code', body: null, answer: TimedPlace },
  handOutTimed: {
    method: 'POST',
    path: '/api/classes/:classId/timed',
    body: TimedDay,
    answer: TimedView,
  },
  recordTimed: {
    method: 'PUT',
    path: '/api/classes/:classId/timed/outcomes',
    body: OutcomeBatch,
    answer: TimedView,
  },
  undoTimed: {
    method: 'POST',
    path: '/api/classes/:classId/timed/sheets/:sheetId/undo',
    body: TimedDay,
    answer: TimedView,
  },
  moveLevel: {
    method: 'PUT',
    path: '/api/classes/:classId/timed/children/:childId/level',
    body: LevelChange,
    answer: TimedView,
  },
  undoLevel: {
    method: 'POST',
    path: '/api/classes/:classId/timed/children/:childId/undo',
    body: TimedDay,
    answer: TimedView,
  },
  changeLadder: { method: 'PUT', path: '/api/classes/:classId/ladder', body: LadderChange, answer: nothing },
} as const;

export type EndpointName = keyof typeof ENDPOINTS;
export type BodyOf<N extends EndpointName> = (typeof ENDPOINTS)[N]['body'] extends z.ZodType
  ? z.input<(typeof ENDPOINTS)[N]['body']>
  : null;
export type AnswerOf<N extends EndpointName> = z.output<(typeof ENDPOINTS)[N]['answer']>;

/** Paths that carry files instead of JSON. POST a {@link PrintOrder} to `print`, a {@link PracticeOrder} to `practice`, for a PDF. */
export const FILE_PATHS = {
  print: '/api/print',
  kits: '/api/kits',
  practice: '/api/print/practice',
  timed: '/api/print/timed',
  rotaPaper: '/api/classes/:classId/rota/:kind/paper',
  backup: '/api/backup',
  restore: '/api/restore',
} as const;

/** Where the rota of a class and kind of set is as a PDF. */
export function rotaPaperPath(classId: string, kind: string): string {
  return FILE_PATHS.rotaPaper
    .replace(':classId', encodeURIComponent(classId))
    .replace(':kind', encodeURIComponent(kind));
}
