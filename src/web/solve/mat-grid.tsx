// The cells of the mat for fingers, keys and screen readers. What lies on them is drawn over them.
import type { CSSProperties, KeyboardEvent, MouseEvent, PointerEvent } from 'react';
import { ARROWS } from './arrows.js';
import { isSame, pieceOn, type Place } from './mat.js';
import type { MatPieces } from './mat-pieces.js';
import styles from './mat-table.module.css';
import { cellSelector, type MatMoves } from './use-mat.js';

interface Props {
  readonly pieces: MatPieces;
  readonly moves: MatMoves;
  readonly onPress: (event: MouseEvent, cell: Place) => void;
  readonly onTake: (event: PointerEvent<HTMLElement>, piece: number, cell: Place) => void;
}

export function MatGrid({ pieces, moves, onPress, onTake }: Props) {
  const { shape } = pieces;
  const { mat, cell: stop, setCell, takeAway } = moves;
  const onKey = (event: KeyboardEvent<HTMLElement>, [row, column]: Place) => {
    const move = ARROWS[event.key];
    const piece = pieceOn(shape, mat, [row, column]);
    if (move) {
      const next = event.currentTarget
        .closest('[role="grid"]')
        ?.querySelector<HTMLElement>(cellSelector([row + move[0], column + move[1]]));
      next?.focus();
    } else if ((event.key === 'Delete' || event.key === 'Backspace') && piece !== null) takeAway(piece);
    else return;
    event.preventDefault();
  };
  return (
    <div
      role="grid"
      aria-label="The mat"
      aria-rowcount={shape.rows}
      aria-colcount={shape.columns}
      className={styles.grid}
      style={{ '--columns': shape.columns } as CSSProperties}
    >
      {Array.from({ length: shape.rows }, (_, row) => (
        <div role="row" key={`row ${row + 1}`} className={styles.gridRow}>
          {Array.from({ length: shape.columns }, (_, column) => {
            const place: Place = [row, column];
            const piece = pieceOn(shape, mat, place);
            return (
              <button
                type="button"
                role="gridcell"
                key={place.join()}
                data-cell={place.join()}
                data-covered={piece !== null}
                className={styles.cell}
                aria-label={pieces.cellWords(mat, place)}
                tabIndex={isSame(place, stop) ? 0 : -1}
                onFocus={() => setCell(place)}
                onPointerDown={(event) => piece !== null && onTake(event, piece, place)}
                onClick={(event) => onPress(event, place)}
                onKeyDown={(event) => onKey(event, place)}
              />
            );
          })}
        </div>
      ))}
    </div>
  );
}
