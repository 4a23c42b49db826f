// What a key press means in the marking grid: a pure rule, so that presses can be counted and every key be tested.
//
// A slip is mostly right answers, with the others gathered on the last rungs. So one press ends a slip: Enter makes all
// its open rungs right, Shift+Enter makes them blank from the focused one on, and both go on to the next child. Digits
// and letters begin an answer; Enter or an arrow ends it. A slip may be marked from its last question back: then only
// what is not right needs a key, and one Enter makes the others right.
import type { MarkState } from '#api/marking.js';

export interface Place {
  readonly row: number;
  readonly column: number;
}

/** What the rule needs to know of the grid. Rows are children, columns are rungs, both from 0. */
export interface Grid {
  readonly rowCount: number;
  readonly columnCount: number;
  readonly isAbsent: (row: number) => boolean;
  readonly stateAt: (place: Place) => MarkState | null;
  /** The way along a slip in which the focus goes on by itself. */
  readonly order: SlipOrder;
}

export const SLIP_ORDERS = ['first-to-last', 'last-to-first'] as const;
export type SlipOrder = (typeof SLIP_ORDERS)[number];

export interface Press {
  /** As KeyboardEvent.key has it. */
  readonly key: string;
  readonly shift?: boolean;
  readonly alt?: boolean;
  /** Ctrl, or Cmd on a Mac. */
  readonly command?: boolean;
}

export interface Entry extends Place {
  readonly state: MarkState | null;
  /** Not empty: an answer to be checked, and `state` is null. */
  readonly typed: string;
}

/** Where the marker stands; `typing` is the answer being written into the focused cell, null when none is. */
export interface Stand {
  readonly place: Place;
  readonly typing: string | null;
}

export interface Outcome extends Stand {
  readonly entries: readonly Entry[];
  readonly command: 'undo' | 'redo' | 'absent' | null;
  /** False: the key means nothing here and is left to the browser. */
  readonly isOurs: boolean;
}

/** Never the first character of an answer, and on every Latin keyboard without Shift. */
export const BLANK_KEY = ',';
export const WRONG_KEY = 'x';
const LONGEST_ANSWER = 80;

/** The next stand and the cells to change after one press. */
export function pressKey(grid: Grid, stand: Stand, press: Press): Outcome {
  if (press.command) return chord(grid, stand, press);
  if (press.alt) {
    const isAway = press.key.toLowerCase() === 'a' || press.key === 'å';
    return isAway ? { ...stay(commit(stand)), command: 'absent' } : ignore(stand);
  }
  if (stand.typing !== null) return whileTyping(grid, stand, stand.typing, press);
  const { place } = stand;
  const step = arrow(grid, place, press.key);
  if (step) return at(step);
  if (press.key === 'Enter') return endSlip(grid, place, press.shift ? 'blank' : 'right');
  if (grid.isAbsent(place.row)) return press.key === ' ' ? at(nextSlip(grid, place)) : ignore(stand);
  if (press.key === ' ') return mark(grid, place, 'right');
  if (press.key === BLANK_KEY) return mark(grid, place, 'blank');
  if (press.key.toLowerCase() === WRONG_KEY) return mark(grid, place, 'wrong');
  if (press.key === 'Backspace' || press.key === 'Delete')
    return grid.stateAt(place) === null
      ? at(place)
      : { ...at(place), entries: [{ ...place, state: null, typed: '' }] };
  return isCharacter(press.key) ? { ...at(place), typing: press.key } : ignore(stand);
}

/** The stand after the typed answer, if any, was entered; the place stays. */
export function commit({ place, typing }: Stand): { place: Place; entries: readonly Entry[] } {
  const typed = typing?.trim() ?? '';
  return { place, entries: typed === '' ? [] : [{ ...place, state: null, typed }] };
}

/** Where to go after the cell at `place` is done: the next rung in the marking order, or the next slip. */
export function nextPlace(grid: Grid, place: Place): Place {
  const column = place.column + (grid.order === 'first-to-last' ? 1 : -1);
  return column >= 0 && column < grid.columnCount ? { row: place.row, column } : nextSlip(grid, place);
}

/** What a press on an already focused cell makes of it: right, wrong, blank, open, and round again. */
export function nextState(state: MarkState | null): MarkState | null {
  if (state === null) return 'right';
  if (state === 'right') return 'wrong';
  return state === 'wrong' ? 'blank' : null;
}

/** Entries that give a state to every open rung of a slip, from `from` on. */
export function fillOpen(grid: Grid, row: number, state: MarkState, from: number): Entry[] {
  if (grid.isAbsent(row)) return [];
  return Array.from({ length: grid.columnCount }, (_, column) => ({ row, column }))
    .filter((place) => place.column >= from && grid.stateAt(place) === null)
    .map((place) => ({ ...place, state, typed: '' }));
}

function whileTyping(grid: Grid, stand: Stand, text: string, press: Press): Outcome {
  const { place } = stand;
  if (press.key === 'Escape') return at(place);
  if (press.key === 'Backspace') return { ...at(place), typing: text.length > 1 ? text.slice(0, -1) : null };
  if (isCharacter(press.key)) return { ...at(place), typing: (text + press.key).slice(0, LONGEST_ANSWER) };
  const { entries } = commit(stand);
  if (press.key === 'Enter' || (press.key === 'Tab' && !press.shift))
    return { ...at(nextPlace(grid, place)), entries };
  if (press.key === 'Tab') return { ...at(arrow(grid, place, 'ArrowLeft') ?? place), entries };
  const step = arrow(grid, place, press.key);
  return step ? { ...at(step), entries } : ignore(stand);
}

function chord(grid: Grid, stand: Stand, press: Press): Outcome {
  const key = press.key.toLowerCase();
  if (key === 'z') return { ...stay(commit(stand)), command: press.shift ? 'redo' : 'undo' };
  if (key === 'y') return { ...stay(commit(stand)), command: 'redo' };
  const { entries } = commit(stand);
  if (press.key === 'Home') return { ...at({ row: 0, column: 0 }), entries };
  if (press.key === 'End')
    return { ...at({ row: grid.rowCount - 1, column: grid.columnCount - 1 }), entries };
  return ignore(stand);
}

/** Left and right stay on the slip and go round; up and down stop at the edges. */
function arrow({ rowCount, columnCount }: Grid, { row, column }: Place, key: string): Place | null {
  switch (key) {
    case 'ArrowLeft':
      return { row, column: (column + columnCount - 1) % columnCount };
    case 'ArrowRight':
      return { row, column: (column + 1) % columnCount };
    case 'ArrowUp':
      return { row: Math.max(0, row - 1), column };
    case 'ArrowDown':
      return { row: Math.min(rowCount - 1, row + 1), column };
    case 'PageUp':
      return { row: Math.max(0, row - 10), column };
    case 'PageDown':
      return { row: Math.min(rowCount - 1, row + 10), column };
    case 'Home':
      return { row, column: 0 };
    case 'End':
      return { row, column: columnCount - 1 };
    default:
      return null;
  }
}

function mark(grid: Grid, place: Place, state: MarkState): Outcome {
  const entries = grid.stateAt(place) === state ? [] : [{ ...place, state, typed: '' }];
  return { ...at(nextPlace(grid, place)), entries };
}

function endSlip(grid: Grid, place: Place, state: 'right' | 'blank'): Outcome {
  const entries = fillOpen(grid, place.row, state, state === 'right' ? 0 : place.column);
  return { ...at(nextSlip(grid, place)), entries };
}

/** Where the next slip begins: its first open rung in the marking order; the same place when no child is left below. */
function nextSlip(grid: Grid, place: Place): Place {
  for (let row = place.row + 1; row < grid.rowCount; row++)
    if (!grid.isAbsent(row)) return { row, column: firstColumn(grid, row) };
  return place;
}

/** The first open rung of a slip in the marking order; the first of all when none is open. */
export function firstColumn(grid: Grid, row: number): number {
  const columns = Array.from({ length: grid.columnCount }, (_, column) => column);
  if (grid.order === 'last-to-first') columns.reverse();
  return columns.find((column) => grid.stateAt({ row, column }) === null) ?? columns[0] ?? 0;
}

function isCharacter(key: string): boolean {
  return [...key].length === 1;
}

function at(place: Place): Outcome {
  return { place, typing: null, entries: [], command: null, isOurs: true };
}

function stay({ place, entries }: { place: Place; entries: readonly Entry[] }): Outcome {
  return { ...at(place), entries };
}

function ignore(stand: Stand): Outcome {
  return { ...stand, entries: [], command: null, isOurs: false };
}
