import { describe, expect, it } from 'vitest';
import type { MarkState } from '#api/marking.js';
import { Rng } from '#engine/random/rng.js';
import {
  firstColumn,
  type Grid,
  type Place,
  type Press,
  pressKey,
  type SlipOrder,
  type Stand,
} from './keys.js';

interface Cell {
  readonly state: MarkState | null;
  readonly typed: string;
}

/** A grid that takes entries the way the screen does; every typed answer in these tests is a wrong one. */
class Desk implements Grid {
  readonly rowCount: number;
  readonly columnCount = 12;
  readonly cells = new Map<string, Cell>();
  readonly away = new Set<number>();
  stand: Stand;
  presses = 0;

  readonly order: SlipOrder;
  constructor(rowCount: number, order: SlipOrder = 'first-to-last') {
    this.rowCount = rowCount;
    this.order = order;
    this.stand = { place: { row: 0, column: firstColumn(this, 0) }, typing: null };
  }
  isAbsent = (row: number) => this.away.has(row);
  stateAt = ({ row, column }: Place) => this.cells.get(`${row}/${column}`)?.state ?? null;

  /** Presses keys one by one; a held Shift counts as a press of its own. */
  press(...presses: readonly (string | Press)[]) {
    for (const one of presses) {
      const press = typeof one === 'string' ? { key: one } : one;
      this.presses += 1 + (press.shift || press.command || press.alt ? 1 : 0);
      const outcome = pressKey(this, this.stand, press);
      for (const { row, column, state, typed } of outcome.entries)
        this.cells.set(`${row}/${column}`, { state: typed === '' ? state : 'wrong', typed });
      this.stand = outcome;
    }
    return this;
  }
  row(row: number) {
    return Array.from({ length: 12 }, (_, column) => {
      const cell = this.cells.get(`${row}/${column}`);
      return cell?.typed || { right: 'r', wrong: 'w', blank: '-' }[cell?.state as MarkState] || '.';
    }).join(' ');
  }
}

const SHIFT_ENTER = { key: 'Enter', shift: true };

describe('pressKey', () => {
  it('goes on by itself after right, blank and wrong', () => {
    const desk = new Desk(2).press(' ', ',', 'x', ' ');
    expect(desk.row(0)).toBe('r - w r . . . . . . . .');
    expect(desk.stand.place).toEqual({ row: 0, column: 4 });
  });
  it('makes a whole slip right with one press and goes to the next child', () => {
    const desk = new Desk(2).press('Enter');
    expect(desk.row(0)).toBe('r r r r r r r r r r r r');
    expect(desk.stand.place).toEqual({ row: 1, column: 0 });
  });
  it('keeps what is marked when the rest of a slip is filled', () => {
    const desk = new Desk(2).press(' ', 'x', 'Enter').press('ArrowRight', '7', 'Enter', SHIFT_ENTER);
    expect(desk.row(0)).toBe('r w r r r r r r r r r r');
    expect(desk.row(1)).toBe('. 7 - - - - - - - - - -');
  });
  it('begins an answer with any character and ends it with Enter, Tab or an arrow', () => {
    const desk = new Desk(2).press('1', ' ', '3', '/', '4', 'Enter', '4', 'q', 'Backspace', 'Tab');
    desk.press('n', 'o', 'ArrowRight', '9', 'ArrowLeft');
    expect(desk.row(0)).toBe('1 3/4 4 no 9 . . . . . . . .');
    expect(desk.stand).toMatchObject({ place: { row: 0, column: 2 }, typing: null });
  });
  it('lets go of an answer with Escape, or when its last character is deleted', () => {
    const desk = new Desk(1).press('4', 'Escape', '5', 'Backspace');
    expect(desk.row(0)).toBe('. . . . . . . . . . . .');
    expect(desk.stand.typing).toBeNull();
  });
  it('opens a marked cell again', () => {
    const desk = new Desk(1).press(' ', 'ArrowLeft', 'Delete');
    expect(desk.row(0)).toBe('. . . . . . . . . . . .');
  });
  it('goes round within a slip, and stops at the first and last child', () => {
    const desk = new Desk(2).press('ArrowLeft');
    expect(desk.stand.place).toEqual({ row: 0, column: 11 });
    expect(desk.press('ArrowRight', 'ArrowUp').stand.place).toEqual({ row: 0, column: 0 });
    expect(desk.press('End', 'ArrowDown', 'ArrowDown').stand.place).toEqual({ row: 1, column: 11 });
    expect(desk.press({ key: 'Home', command: true }).stand.place).toEqual({ row: 0, column: 0 });
  });
  it('goes back from the last rung when the slip is marked that way', () => {
    const desk = new Desk(2, 'last-to-first');
    expect(desk.press('4', 'Enter', ',', ' ', 'x', 'Enter').row(0)).toBe('r r r r r r r r w r - 4');
    expect(desk.stand.place).toEqual({ row: 1, column: 11 });
  });
  it('passes over children who were away and takes no marks for them', () => {
    const desk = new Desk(3);
    desk.away.add(1);
    expect(desk.press('Enter').stand.place).toEqual({ row: 2, column: 0 });
    desk.press('ArrowUp', '7', 'x', ',', 'Enter');
    expect(desk.row(1)).toBe('. . . . . . . . . . . .');
  });
  it('enters a half-typed answer before it takes something back', () => {
    const desk = new Desk(1).press('4');
    const outcome = pressKey(desk, desk.stand, { key: 'z', command: true });
    expect(outcome).toMatchObject({ command: 'undo', entries: [{ typed: '4' }], typing: null });
    expect(pressKey(desk, desk.stand, { key: 'Z', command: true, shift: true }).command).toBe('redo');
    expect(pressKey(desk, desk.stand, { key: 'y', command: true }).command).toBe('redo');
  });
  it('leaves keys that mean nothing here to the browser', () => {
    const desk = new Desk(1);
    for (const press of [{ key: 'Tab' }, { key: 'F5' }, { key: 'r', command: true }, { key: 'd', alt: true }])
      expect(pressKey(desk, desk.stand, press).isOurs).toBe(false);
  });
});

/** 25 slips with exactly 240 of 300 cells right; the later the rung, the likelier it is wrong or blank. */
function realisticClass(seed: number): string[][] {
  const rng = new Rng(seed);
  const slips = Array.from({ length: 25 }, () => Array.from({ length: 12 }, () => 'right'));
  const level = slips.map(() => 0.3 + 2 * rng.unit());
  for (let missed = 0; missed < 60; ) {
    const row = rng.int(0, 24);
    const rung = rng.int(0, 11);
    const slip = slips[row] as string[];
    if (slip[rung] !== 'right' || !rng.chance((level[row] as number) * ((rung + 1) / 12) ** 3 * 0.4))
      continue;
    slip[rung] = String(rng.chance(0.6) ? rng.int(10, 99) : rng.int(100, 999));
    missed++;
  }
  return slips;
}

/** Down the slip: rights one by one up to the last other rung, then one press ends it. */
function downTheSlip(desk: Desk, slip: readonly string[], wrongKeys: (answer: string) => string[]) {
  const last = slip.findLastIndex((answer) => answer !== 'right');
  const tail = slip.findLastIndex((answer) => answer !== 'blank') + 1;
  const isTailBlank = slip.length - tail >= 2;
  for (const answer of slip.slice(0, isTailBlank ? tail : last + 1)) {
    if (answer === 'right') desk.press(' ');
    else if (answer === 'blank') desk.press(',');
    else desk.press(...wrongKeys(answer));
  }
  if (isTailBlank) desk.press(SHIFT_ENTER);
  else if (last < slip.length - 1) desk.press('Enter');
}

/** Back from the last rung: only what is not right, then one press makes all the others right. */
function upTheSlip(desk: Desk, slip: readonly string[], wrongKeys: (answer: string) => string[]) {
  const first = slip.findIndex((answer) => answer !== 'right');
  for (let rung = slip.length - 1; first >= 0 && rung >= first; rung--) {
    const answer = slip[rung] as string;
    if (answer === 'right') desk.press(' ');
    else if (answer === 'blank') desk.press(',');
    else desk.press(...wrongKeys(answer));
  }
  if (first !== 0) desk.press('Enter');
}

interface Way {
  readonly markSlip: typeof downTheSlip;
  readonly order: SlipOrder;
}
const DOWN: Way = { markSlip: downTheSlip, order: 'first-to-last' };
const UP: Way = { markSlip: upTheSlip, order: 'last-to-first' };
const typedInFull = (answer: string) => [...answer, 'Enter'];
const oneKey = () => ['x'];

/** As a realistic class, but whatever is not right after a slip's last right answer was not reached and is blank. */
function withUnreached(seed: number): string[][] {
  return realisticClass(seed).map((slip) => {
    const last = slip.lastIndexOf('right');
    return slip.map((answer, rung) => (rung > last ? 'blank' : answer));
  });
}

/** Presses for 40 invented classes, the fewest and the most; throws when the grid ends up different from the slips. */
function countPresses(
  { markSlip, order }: Way,
  wrongKeys: (answer: string) => string[],
  slipsOf: typeof withUnreached,
) {
  const counts = Array.from({ length: 40 }, (_, seed) => {
    const slips = slipsOf(seed);
    const desk = new Desk(25, order);
    for (const slip of slips) markSlip(desk, slip, wrongKeys);
    slips.forEach((slip, row) =>
      expect(desk.row(row)).toBe(
        slip
          .map((answer) => ({ right: 'r', blank: '-' })[answer] ?? (wrongKeys === oneKey ? 'w' : answer))
          .join(' '),
      ),
    );
    return desk.presses;
  });
  return { fewest: Math.min(...counts), most: Math.max(...counts) };
}

describe('presses for 25 slips of 12 with 80 % right', () => {
  it.each([
    ['down the slip, wrong ones by one key', DOWN, oneKey, realisticClass, 300],
    ['up the slip, wrong ones by one key', UP, oneKey, realisticClass, 200],
    ['up the slip, unreached ones blank, wrong ones typed in full', UP, typedInFull, withUnreached, 340],
    ['up the slip, every one of the 60 typed in full', UP, typedInFull, realisticClass, 300],
  ] as const)('%s', (_, way, wrongKeys, slipsOf, most) => {
    expect(countPresses(way, wrongKeys, slipsOf).most).toBeLessThanOrEqual(most);
  });

  it('is honest about the slow way: down the slip with everything typed in full takes more', () => {
    const all = countPresses(DOWN, typedInFull, realisticClass);
    expect(all.fewest).toBeGreaterThan(340);
    expect(all.most).toBeLessThanOrEqual(440);
    expect(countPresses(DOWN, typedInFull, withUnreached).most).toBeLessThanOrEqual(380);
  });
});
