// Timed practice of a class on a day: levels, sheets, counts, suggestions; and each thing a teacher does with them.
import type { Result } from '#api/problem.js';
import type { TimedChild, TimedView } from '#api/timed-room.js';
import { composeTimed, MOST_FORMS } from '#engine/activities/timed/compose.js';
import { rateBand } from '#engine/activities/timed/criteria.js';
import type { LevelPlan } from '#engine/activities/timed/ladder.js';
import {
  type LevelGoal,
  personalBest,
  suggestMove,
  type TimedRecord,
  usualGoal,
} from '#engine/activities/timed/levelling.js';
import { openRedo, redoRow } from '#engine/activities/timed/redo.js';
import type { Timed } from '#engine/activities/timed/timed.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import { hashText } from '#engine/random/rng.js';
import type { TimedMove, TimedOutcome, TimedSheet } from '#store/records.js';
import { refuse } from '../../problems.js';
import type { Services } from '../../services.js';
import { absentOn } from '../absences.js';
import { toScreen } from '../classes.js';
import { readSettings } from '../settings.js';
import { isMarked, markedSheetOf, questionsOf, recordOf, toCount } from './counts.js';
import { type ClassLadder, readLadder, startLevel, toScreenLadder } from './ladder.js';

interface Place {
  readonly classId: string;
  readonly date: string;
}

/** Everything about a class's timed practice up to a day. */
export interface TimedRoom extends Place {
  readonly locale: LocaleId;
  readonly ladder: ClassLadder;
  readonly children: readonly RoomChild[];
}

export interface RoomChild {
  readonly id: string;
  readonly shownAs: string;
  readonly year: number;
  readonly absent: boolean;
  readonly level: LevelPlan;
  readonly moves: readonly TimedMove[];
  /** Up to the day, oldest first. */
  readonly sheets: readonly TimedSheet[];
}

/** The room as screens show it. */
export async function timedView(services: Services, place: Place): Promise<Result<TimedView>> {
  const room = await readRoom(services, place);
  return room.ok ? { ok: true, value: viewOf(room.value) } : room;
}

export async function readRoom(services: Services, { classId, date }: Place): Promise<Result<TimedRoom>> {
  const { store } = services;
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  const stored = await store.children.list(classId);
  if (!stored.ok) return stored;
  const ladder = await readLadder(services, classId);
  if (!ladder.ok) return ladder;
  const absent = await absentOn(services, classId, date);
  if (!absent.ok) return absent;
  const moves = await store.timed.moves(classId);
  if (!moves.ok) return moves;
  const sheets = await store.timed.list(classId, { to: date });
  if (!sheets.ok) return sheets;
  const children: RoomChild[] = [];
  for (const { id, shownAs, year } of toScreen(stored.value)) {
    const own = moves.value.filter((move) => move.childId === id);
    const level = levelOf(ladder.value.levels, year, own);
    if (level === null)
      return refuse('ladder.empty', 'The ladder has no level.', 'Put the usual ladder back, then change it.');
    children.push({
      id,
      shownAs,
      year,
      absent: absent.value.includes(id),
      level,
      moves: own,
      sheets: sheets.value.filter(({ childId }) => childId === id),
    });
  }
  return {
    ok: true,
    value: { classId, date, locale: settings.value.locale, ladder: ladder.value, children },
  };
}

/** The level of the last move that is still on the ladder, or where the child's year starts. */
function levelOf(levels: readonly LevelPlan[], year: number, moves: readonly TimedMove[]): LevelPlan | null {
  const moved = moves.findLast(({ levelId }) => levels.some(({ id }) => id === levelId));
  return levels.find(({ id }) => id === moved?.levelId) ?? startLevel(levels, year);
}

function viewOf({ date, locale, ladder, children }: TimedRoom): TimedView {
  const forms = new Map<string, TimedView['forms'][number]>();
  for (const sheet of children.flatMap(({ sheets }) => sheets)) {
    if (sheet.date !== date || forms.has(formKey(sheet))) continue;
    forms.set(formKey(sheet), {
      key: formKey(sheet),
      title: sheet.content.title,
      form: sheet.content.forms[0]?.form ?? '',
      questions: questionsOf(sheet).map(({ text, answer }) => ({ text, answer: answer.text })),
    });
  }
  return {
    date,
    ladder: toScreenLadder(ladder),
    children: children.map((child) => showChild(child, ladder, locale, date)),
    forms: [...forms.values()],
  };
}

function formKey({ content }: TimedSheet): string {
  return `${content.levelId}/${content.seed}/${content.forms[0]?.form ?? ''}`;
}

function showChild(child: RoomChild, ladder: ClassLadder, locale: LocaleId, date: string): TimedChild {
  const { id, shownAs, year, absent, level, moves, sheets } = child;
  const records = sheets.filter(isMarked).map(recordOf);
  const best = personalBest(records, level.id);
  const sheet = sheets.find((one) => one.date === date);
  return {
    id,
    shownAs,
    year,
    absent,
    levelId: level.id,
    chosen: moves.length > 0,
    sheet: sheet
      ? {
          id: sheet.id,
          formKey: formKey(sheet),
          levelId: sheet.levelId,
          minutes: ladder.minutes ?? sheet.content.minutes,
          redo: sheet.redo.map(({ text, answer }) => ({ text, answer: answer.text })),
          outcome: sheet.outcome === null ? null : copyOutcome(sheet.outcome),
          canUndo: sheet.canUndo,
        }
      : null,
    redo: openRedo(sheets.filter(isMarked).map(markedSheetOf)).map(({ question, since, times }) => ({
      text: question.text,
      since,
      times,
    })),
    counts: records.map(toCount),
    best: best === null ? null : toCount(best),
    suggestion: suggestionFor(records, child, ladder, locale),
    band: rateBand(year, locale),
    canUndoMove: moves.length > 0,
  };
}

function copyOutcome({ wrong, redoWrong, written, ...rest }: TimedOutcome) {
  return { ...rest, wrong: [...wrong], redoWrong: [...redoWrong], written: { ...written } };
}

function suggestionFor(
  records: readonly TimedRecord[],
  { level, year, moves }: RoomChild,
  { levels, digitsPerMinute }: ClassLadder,
  locale: LocaleId,
): TimedChild['suggestion'] {
  const usual = usualGoal(year, locale);
  const goal: LevelGoal = digitsPerMinute === null ? usual : { ...usual, digitsPerMinute };
  // Sheets from before the last move are about another time on this level.
  const since = moves.at(-1)?.date ?? '';
  const recent = records.filter(({ date }) => date >= since);
  const { move, evidence } = suggestMove(recent, level.id, goal);
  const at = levels.indexOf(level);
  const next = move === 'up' ? levels[at + 1] : move === 'back' ? levels[at - 1] : undefined;
  return next ? { move, levelId: next.id, evidence } : { move: 'stay', levelId: null, evidence };
}

/** A sheet for every child who is there: the next form of its level, with what was wrong first. */
export async function handOutTimed(services: Services, place: Place): Promise<Result<TimedView>> {
  const room = await readRoom(services, place);
  if (!room.ok) return room;
  const { locale, ladder, children } = room.value;
  const inputs = [];
  // Children of a level whose turn is the same get the same form.
  const forms = new Map<string, Result<Timed>>();
  for (const { id, absent, level, sheets } of children) {
    if (absent) continue;
    const earlier = sheets.filter(({ date }) => date < place.date);
    const turn = earlier.filter(({ levelId }) => levelId === level.id).length;
    const key = `${level.id}/${turn}`;
    const content = forms.get(key) ?? formAt(place.classId, level, turn, ladder.questions, locale);
    forms.set(key, content);
    if (!content.ok) return content;
    inputs.push({
      childId: id,
      content: content.value,
      redo: redoRow(openRedo(earlier.filter(isMarked).map(markedSheetOf))),
    });
  }
  if (inputs.length === 0)
    return refuse('timed.nobody', 'No child is there to hand a sheet to.', 'Take “away” back for a child.');
  const issued = await services.store.timed.issue({ ...place, sheets: inputs });
  return issued.ok ? timedView(services, place) : issued;
}

/** The form of a level whose turn it is: every child gets all of them in order before any comes again. */
function formAt(
  classId: string,
  level: LevelPlan,
  turn: number,
  questions: number,
  locale: LocaleId,
): Result<Timed> {
  const number = turn % MOST_FORMS;
  const made = composeTimed({
    level,
    forms: number + 1,
    questions,
    // The class's own forms, the same for all of its children.
    seed: hashText(`${classId}/${level.id}`) >>> 1,
    locale,
  });
  return made.ok ? { ok: true, value: { ...made.value, forms: made.value.forms.slice(number) } } : made;
}

/** Saves what came of sheets, all or nothing, on any day: a late one too. */
export async function recordTimed(
  services: Services,
  place: Place,
  entries: readonly { readonly sheetId: string; readonly outcome: TimedOutcome }[],
): Promise<Result<TimedView>> {
  const room = await readRoom(services, place);
  if (!room.ok) return room;
  const own = new Set(room.value.children.flatMap(({ sheets }) => sheets.map(({ id }) => id)));
  if (entries.some(({ sheetId }) => !own.has(sheetId)))
    return refuse('not.found', 'One of these sheets is not in this class.', 'Reload the page.');
  const saved = await services.store.timed.record(
    entries.map(({ sheetId, outcome }) => ({ sheetId, outcome: tidyOutcome(outcome) })),
    services.clock().now,
  );
  if (!saved.ok) return saved;
  // What was just stored takes its place in what was just read: a class of counts is typed fast, one answer a count.
  const stored = new Map(saved.value.map((sheet) => [sheet.id, sheet]));
  const children = room.value.children.map((child) => ({
    ...child,
    sheets: child.sheets.map((sheet) => stored.get(sheet.id) ?? sheet),
  }));
  return { ok: true, value: viewOf({ ...room.value, children }) };
}

function tidyOutcome(outcome: TimedOutcome): TimedOutcome {
  const ascending = (places: readonly number[]) => [...new Set(places)].toSorted((a, b) => a - b);
  return { ...outcome, wrong: ascending(outcome.wrong), redoWrong: ascending(outcome.redoWrong) };
}

/** Takes the last result of a sheet back. */
export async function undoTimed(
  services: Services,
  place: Place,
  sheetId: string,
): Promise<Result<TimedView>> {
  const undone = await services.store.timed.undo(sheetId);
  return undone.ok ? timedView(services, place) : undone;
}

/** Puts a child on a level; what was shown as the reason stays with it. */
export async function moveChild(
  services: Services,
  place: Place,
  childId: string,
  levelId: string,
): Promise<Result<TimedView>> {
  const room = await readRoom(services, place);
  if (!room.ok) return room;
  const child = room.value.children.find(({ id }) => id === childId);
  if (!child) return refuse('child.missing', 'This child is not in this class.', 'Reload the page.');
  if (!room.value.ladder.levels.some(({ id }) => id === levelId))
    return refuse('ladder.level', 'This level is not on the ladder any more.', 'Choose another level.');
  const records = child.sheets.filter(isMarked).map(recordOf);
  const suggestion = suggestionFor(records, child, room.value.ladder, room.value.locale);
  const evidence = suggestion.levelId === levelId ? suggestion.evidence : 'Chosen by the teacher.';
  const moved = await services.store.timed.move({ childId, date: place.date, levelId, evidence });
  return moved.ok ? timedView(services, place) : moved;
}

/** Puts a child back where it was before its last move. */
export async function undoMove(
  services: Services,
  place: Place,
  childId: string,
): Promise<Result<TimedView>> {
  const child = await services.store.children.get(childId);
  if (!child.ok) return child;
  if (child.value.classId !== place.classId)
    return refuse('child.missing', 'This child is not in this class.', 'Reload the page.');
  const undone = await services.store.timed.undoMove(childId);
  return undone.ok ? timedView(services, place) : undone;
}

/** Whose sheet a code is, and of which day. */
export async function timedPlace(
  services: Services,
  code: string,
): Promise<Result<{ classId: string; childId: string; date: string }>> {
  const sheet = await services.store.timed.find(code);
  if (!sheet.ok) return sheet;
  const { childId, date } = sheet.value;
  const child = await services.store.children.get(childId);
  return child.ok ? { ok: true, value: { classId: child.value.classId, childId, date } } : child;
}
