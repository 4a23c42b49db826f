// The marking of one board in this window: what every cell shows, where the marker stands, what can be taken back and
// what is still on its way to the server. It outlives the screen, so that leaving the page loses nothing.
import type { Finding, Mark, MarkEntry, MarkingView } from '#api/marking.js';
import { localeOf } from '#engine/numbers/locale.js';
import { checkAnswer } from '#engine/questions/check-answer.js';
import { misconceptionOf } from '#engine/questions/misconceptions.js';
import { sentenceFor } from './announce.js';
import {
  bringBack,
  type Content,
  type History,
  NO_HISTORY,
  OPEN,
  type Step,
  takeBack,
  withStep,
} from './history.js';
import {
  commit,
  type Entry,
  firstColumn,
  fillOpen,
  type Grid,
  nextState,
  type Place,
  type Press,
} from './keys.js';
import { pressKey, type SlipOrder, type Stand } from './keys.js';
import { Outbox, type OutboxParts, type OutboxState } from './outbox.js';

export interface Cell extends Content {
  readonly findings: readonly Pick<Finding, 'misconception' | 'does'>[];
}
/** One child's cells, by rung from 1 at index 0. */
export type Row = readonly Cell[];
export type Marked = MarkingView['children'][number];

const OPEN_CELL: Cell = { ...OPEN, findings: [] };

/** What the screen draws; a new object after every change. */
export interface DeskView extends Stand {
  readonly children: readonly Marked[];
  readonly rows: readonly Row[];
  readonly order: SlipOrder;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly outbox: OutboxState;
  /** What was done last, for those who listen. */
  readonly said: string;
  /** Counts up when the focus is to go to the grid, wherever it is now. */
  readonly calls: number;
}

export interface DeskParts extends Omit<OutboxParts, 'onChange'> {
  readonly order: SlipOrder;
  readonly onAbsent: (child: Marked, absent: boolean) => void;
}

export class MarkingDesk {
  readonly #outbox: Outbox;
  readonly #parts: DeskParts;
  readonly #listeners = new Set<() => void>();
  #sheet: MarkingView['sheet'] | null = null;
  #children: readonly Marked[] = [];
  #rows: readonly Row[] = [];
  #history: History = NO_HISTORY;
  #stand: Stand = { place: { row: 0, column: 0 }, typing: null };
  #order: SlipOrder;
  #said = '';
  #calls = 0;
  #answeredCalls = 0;
  #wantedChild: string | null = null;
  #view: DeskView | null = null;

  constructor(parts: DeskParts) {
    this.#parts = parts;
    this.#order = parts.order;
    this.#outbox = new Outbox({
      ...parts,
      onSaved: (saved) => {
        for (const mark of saved.marks) this.#takeMark(mark);
        parts.onSaved(saved);
      },
      onChange: () => this.#changed(),
    });
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  };
  readonly view = (): DeskView => {
    this.#view ??= {
      ...this.#stand,
      children: this.#children,
      rows: this.#rows,
      order: this.#order,
      canUndo: this.#history.done.length > 0,
      canRedo: this.#history.undone.length > 0,
      outbox: this.#outbox.state,
      said: this.#said,
      calls: this.#calls,
    };
    return this.#view;
  };

  /** Takes in what the server has; cells that are still on their way keep what was entered here. */
  load(view: MarkingView): void {
    const isFirst = this.#sheet === null;
    this.#sheet = view.sheet;
    this.#children = view.children;
    const open: Row = view.sheet.board.rungs.map(() => OPEN_CELL);
    this.#rows = view.children.map(() => open);
    for (const mark of view.marks) this.#setCell(mark.childId, mark.rung, mark);
    for (const { childId, rung, state, typed } of this.#outbox.entries)
      this.#setCell(childId, rung, this.#judge(rung, { state, typed }));
    const first = view.children.findIndex(
      ({ absent }, row) => !absent && this.#rows[row]?.some(({ state }) => state === null),
    );
    if (isFirst || this.#stand.place.row >= this.#rows.length) this.#goToRow(Math.max(0, first));
    if (this.#wantedChild) this.callChild(this.#wantedChild);
    if (this.#outbox.entries.length > 0) this.#outbox.sendNow();
    this.#changed();
  }

  /** Whether a child's absence is shown; the server is told by the caller. */
  setAbsent(childId: string, absent: boolean): void {
    this.#children = this.#children.map((child) => (child.id === childId ? { ...child, absent } : child));
    this.#changed();
  }
  setOrder(order: SlipOrder): void {
    this.#order = order;
    this.#goToRow(this.#stand.place.row);
    this.#changed();
  }

  /** True when the key was taken. */
  press(press: Press): boolean {
    const outcome = pressKey(this.#grid, this.#stand, press);
    if (!outcome.isOurs) return false;
    this.#stand = { place: outcome.place, typing: outcome.typing };
    this.#enter(outcome.entries);
    if (outcome.command === 'undo') this.undo();
    if (outcome.command === 'redo') this.redo();
    if (outcome.command === 'absent') this.toggleAbsent();
    this.#changed();
    return true;
  }

  /** Goes to a cell; an answer half typed elsewhere is entered first. */
  goTo(place: Place): void {
    if (place.row === this.#stand.place.row && place.column === this.#stand.place.column) return;
    this.endTyping();
    this.#stand = { place, typing: null };
    this.#changed();
  }
  endTyping(): void {
    if (this.#stand.typing === null) return;
    const { entries, place } = commit(this.#stand);
    this.#stand = { place, typing: null };
    this.#enter(entries);
    this.#changed();
  }
  /** Marks the focused cell without going on. */
  markHere(content: Content): void {
    const { place } = this.#stand;
    this.#stand = { place, typing: null };
    if (!this.#grid.isAbsent(place.row)) this.#enter([{ ...place, ...content }]);
    this.#changed();
  }
  /** What a click on the focused cell does: right, wrong, blank, open, and round again. */
  turnHere(): void {
    this.markHere({ state: nextState(this.#grid.stateAt(this.#stand.place)), typed: '' });
  }
  /** Gives every open rung of the focused slip a state, the blank ones from the focused rung on. */
  fillHere(state: 'right' | 'blank'): void {
    const { row, column } = this.#stand.place;
    this.#enter(fillOpen(this.#grid, row, state, state === 'right' ? 0 : column));
    this.#changed();
  }
  /**
   * Marks one question for everyone who is there, in one step: wrong for those named, right for the others. An answer
   * that was typed in stays as it is, unless it was right and its child is named.
   */
  markQuestion(column: number, missed: ReadonlySet<string>): void {
    const entries = this.#children.flatMap(({ id, absent }, row): Entry[] => {
      const cell = this.#rows[row]?.[column];
      if (absent || !cell) return [];
      if (missed.has(id)) return cell.state === 'wrong' ? [] : [{ row, column, state: 'wrong', typed: '' }];
      return cell.typed === '' ? [{ row, column, state: 'right', typed: '' }] : [];
    });
    this.#enter(entries);
    this.#stand = { place: { row: this.#stand.place.row, column }, typing: null };
    this.#changed();
  }
  toggleAbsent(): void {
    const child = this.#children[this.#stand.place.row];
    if (!child) return;
    this.#said = child.absent ? `${child.shownAs} was here` : `${child.shownAs} was away`;
    this.setAbsent(child.id, !child.absent);
    this.#parts.onAbsent(child, !child.absent);
  }
  undo(): void {
    this.#replay(takeBack(this.#history), 'Taken back');
  }
  redo(): void {
    this.#replay(bringBack(this.#history), 'Brought back');
  }
  /** Goes to a child's slip and calls the focus there; waits for the children when they are not known yet. */
  callChild(childId: string | null): void {
    const row = this.#children.findIndex(({ id }) => id === childId);
    this.#wantedChild = this.#sheet === null ? childId : null;
    if (row < 0) return;
    this.endTyping();
    this.#goToRow(row);
    this.#calls++;
    this.#changed();
  }
  /** True once for every call of the focus, `calls` being the view's count. */
  answerCall(calls: number): boolean {
    const isCalled = this.#answeredCalls < calls;
    this.#answeredCalls = calls;
    return isCalled;
  }
  sendNow(): void {
    this.#outbox.sendNow();
  }
  dropUnsent(): void {
    this.#outbox.drop();
  }

  get #grid(): Grid {
    return {
      rowCount: this.#rows.length,
      columnCount: this.#sheet?.board.rungs.length ?? 0,
      isAbsent: (row) => this.#children[row]?.absent ?? false,
      stateAt: ({ row, column }) => this.#rows[row]?.[column]?.state ?? null,
      order: this.#order,
    };
  }

  #goToRow(row: number): void {
    this.#stand = { place: { row, column: firstColumn(this.#grid, row) }, typing: null };
  }

  #enter(entries: readonly Entry[]): void {
    const step: Step = entries.flatMap(({ row, column, state, typed }) => {
      const child = this.#children[row];
      const before = this.#rows[row]?.[column];
      const rung = this.#sheet?.board.rungs[column]?.rung;
      if (!child || !before || rung === undefined) return [];
      const after = this.#judge(rung, { state, typed });
      return before.state === after.state && before.typed === after.typed
        ? []
        : [{ childId: child.id, rung, before, after }];
    });
    this.#history = withStep(this.#history, step);
    this.#write(step);
    if (step.length > 0) this.#said = this.#sentence(step);
  }

  #replay(stepped: { step: Step; history: History } | null, word: string): void {
    const first = stepped?.step[0];
    if (!stepped || !first) {
      this.#said = word === 'Taken back' ? 'There is nothing to take back' : 'There is nothing to bring back';
      this.#changed();
      return;
    }
    this.#history = stepped.history;
    this.#write(stepped.step);
    this.#said = `${word}: ${this.#sentence(stepped.step)}`;
    const row = this.#children.findIndex(({ id }) => id === first.childId);
    if (row >= 0) this.#stand = { place: { row, column: this.#columnOf(first.rung) }, typing: null };
    this.#changed();
  }

  #write(step: Step): void {
    if (step.length === 0) return;
    for (const { childId, rung, after } of step) this.#setCell(childId, rung, this.#judge(rung, after));
    this.#outbox.add(
      step.map(
        ({ childId, rung, after }): MarkEntry =>
          after.typed === ''
            ? { childId, rung, state: after.state, typed: '' }
            : { childId, rung, state: null, typed: after.typed },
      ),
    );
  }

  #takeMark(mark: Mark): void {
    if (!this.#outbox.holds(mark.childId, mark.rung)) this.#setCell(mark.childId, mark.rung, mark);
  }

  #setCell(childId: string, rung: number, cell: Cell): void {
    const row = this.#children.findIndex(({ id }) => id === childId);
    const cells = this.#rows[row];
    if (!cells) return;
    const { state, typed, findings } = cell;
    this.#rows = this.#rows.with(row, cells.with(this.#columnOf(rung), { state, typed, findings }));
  }

  #columnOf(rung: number): number {
    return Math.max(0, this.#sheet?.board.rungs.findIndex((one) => one.rung === rung) ?? 0);
  }

  /** The cell as the server will see it: a typed answer decides for itself. */
  #judge(rung: number, { state, typed }: Content): Cell {
    const board = this.#sheet?.board;
    const question = board?.rungs.find((one) => one.rung === rung)?.question;
    if (typed === '' || !board || !question) return { state, typed, findings: [] };
    const { verdict, slips } = checkAnswer(question, typed, localeOf(board.locale));
    const findings = slips.flatMap(({ misconception }) => {
      const known = misconceptionOf(misconception);
      return known ? [{ misconception, does: known.does }] : [];
    });
    return { state: verdict, typed, findings };
  }

  #sentence(step: Step): string {
    return sentenceFor(step, (childId) => this.#children.find(({ id }) => id === childId)?.shownAs ?? '');
  }

  #changed(): void {
    this.#view = null;
    for (const listener of this.#listeners) listener();
  }
}
