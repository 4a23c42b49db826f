// The grid: a row for each child, a column for each question; one cell is in the tab order and holds the focus.
import { memo, useEffect, useRef } from 'react';
import type { Board } from '#engine/activities/board/board.js';
import { stateInWords } from './announce.js';
import { CellGlyph } from './cell-glyph.js';
import type { Place } from './keys.js';
import type { DeskView, Marked, MarkingDesk, Row } from './marking-desk.js';
import styles from './marking-grid.module.css';
import marks from './marks.module.css';

interface Props {
  readonly board: Board;
  readonly view: DeskView;
  readonly desk: MarkingDesk;
}

export function MarkingGrid({ board, view, desk }: Props) {
  const grid = useRef<HTMLTableElement>(null);
  const { row, column } = view.place;

  // The browser's focus follows the marker while it is in the grid, and comes here when it is called or was nowhere.
  useEffect(() => {
    const { activeElement } = document;
    const isHere = grid.current?.contains(activeElement);
    const isNowhere = activeElement === document.body || activeElement?.tagName === 'A';
    if (desk.answerCall(view.calls) || isHere || isNowhere)
      grid.current?.querySelector<HTMLElement>(`[data-place="${row}/${column}"]`)?.focus();
  }, [desk, row, column, view.calls]);

  const onKeyDown = (event: React.KeyboardEvent) => {
    const isPlain = event.getModifierState('AltGraph');
    const taken = desk.press({
      key: event.key,
      shift: event.shiftKey,
      alt: event.altKey && !isPlain,
      command: (event.ctrlKey || event.metaKey) && !isPlain,
    });
    if (taken) event.preventDefault();
  };
  return (
    <table
      ref={grid}
      // A table that is worked in cell by cell is a grid in ARIA's own pattern.
      // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-to-interactive-role
      role="grid"
      aria-label="Marks"
      aria-rowcount={view.rows.length + 1}
      aria-colcount={board.rungs.length + 2}
      className={styles.grid}
      onKeyDown={onKeyDown}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) desk.endTyping();
      }}
    >
      <thead>
        <tr aria-rowindex={1}>
          <th scope="col" aria-colindex={1} className={styles.nameHead}>
            Child
          </th>
          {board.rungs.map(({ rung }, index) => (
            <th
              key={rung}
              scope="col"
              aria-colindex={index + 2}
              className={index === column ? styles.headHere : undefined}
            >
              <span className="unseen">Question </span>
              {rung}
            </th>
          ))}
          <th scope="col" aria-colindex={board.rungs.length + 2} className={styles.sumHead}>
            Right
          </th>
        </tr>
      </thead>
      <tbody>
        {view.children.map((child, index) => (
          <ChildRow
            key={child.id}
            child={child}
            cells={view.rows[index] ?? []}
            index={index}
            rungs={board.rungs}
            focusColumn={index === row ? column : null}
            typing={index === row ? view.typing : null}
            desk={desk}
          />
        ))}
      </tbody>
    </table>
  );
}

interface RowProps {
  readonly child: Marked;
  readonly cells: Row;
  readonly index: number;
  readonly rungs: Board['rungs'];
  readonly focusColumn: number | null;
  readonly typing: string | null;
  readonly desk: MarkingDesk;
}

/** Drawn again only when its own cells, focus or typing change. */
const ChildRow = memo(function ChildRow({ child, cells, index, rungs, focusColumn, typing, desk }: RowProps) {
  const pressedHere = useRef(false);
  const right = cells.filter(({ state }) => state === 'right').length;
  const isHere = (place: Place) => place.row === index && place.column === focusColumn;
  return (
    <tr
      aria-rowindex={index + 2}
      className={`${focusColumn === null ? '' : styles.rowHere} ${child.absent ? styles.away : ''}`}
    >
      <th scope="row" aria-colindex={1} className={styles.name}>
        {child.shownAs}
        {child.absent && <span className={styles.awayWord}> away</span>}
      </th>
      {cells.map((cell, column) => {
        const place = { row: index, column };
        const isFocus = isHere(place);
        const words = isFocus && typing !== null ? `writing ${typing}` : stateInWords(cell);
        return (
          <td
            key={rungs[column]?.rung}
            aria-colindex={column + 2}
            aria-label={`${child.shownAs}, question ${rungs[column]?.rung}, ${words}${cell.findings.length > 0 ? ', a typical mistake' : ''}`}
            aria-disabled={child.absent || undefined}
            tabIndex={isFocus ? 0 : -1}
            data-place={`${index}/${column}`}
            data-state={cell.state ?? 'open'}
            onPointerDown={() => {
              pressedHere.current = isFocus;
            }}
            onClick={() => {
              const wasHere = pressedHere.current;
              pressedHere.current = false;
              if (wasHere) desk.turnHere();
              else if (cell.state === null) desk.markHere({ state: 'right', typed: '' });
            }}
            onFocus={() => desk.goTo(place)}
          >
            <CellGlyph cell={cell} typing={isFocus ? typing : null} />
            {cell.findings.length > 0 && <span className={marks.flag} aria-hidden="true" />}
          </td>
        );
      })}
      <td aria-colindex={cells.length + 2} className={styles.sum}>
        {child.absent ? '' : cells.some(({ state }) => state !== null) ? `${right} of ${cells.length}` : ''}
      </td>
    </tr>
  );
});
