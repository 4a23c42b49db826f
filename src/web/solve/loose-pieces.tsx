// The loose pieces beside the mat, each in a place of its own that stays empty while the piece lies on the mat.
import { type KeyboardEvent, type MouseEvent, type PointerEvent, useState } from 'react';
import { ARROWS } from './arrows.js';
import { DrawnView } from './drawn-view.js';
import type { MatFit } from './fit-mat.js';
import { looseOn } from './mat.js';
import type { MatPieces } from './mat-pieces.js';
import styles from './mat-table.module.css';
import { boxStyle } from './spot-style.js';
import type { MatMoves } from './use-mat.js';

interface Props {
  readonly pieces: MatPieces;
  readonly moves: MatMoves;
  readonly fit: MatFit;
  /** Pieces that are in the air. */
  readonly away: ReadonlySet<number>;
  readonly onPress: (event: MouseEvent, piece: number) => void;
  readonly onTake: (event: PointerEvent<HTMLElement>, piece: number) => void;
}

export function LoosePieces({ pieces, moves, fit, away, onPress, onTake }: Props) {
  const { mat, held, putBack } = moves;
  const [focused, setFocused] = useState<number | null>(null);
  const loose = looseOn(mat).filter((piece) => piece !== held?.piece);
  const stop = loose.includes(focused ?? -1) ? focused : loose[0];
  const onKey = (event: KeyboardEvent<HTMLElement>, piece: number) => {
    const move = ARROWS[event.key];
    const to = (next: number | undefined) =>
      event.currentTarget.closest('ul')?.querySelector<HTMLElement>(`[data-piece="${next}"]`)?.focus();
    if (move) to(loose[loose.indexOf(piece) + move[0] + move[1]]);
    else if (event.key === 'Home') to(loose[0]);
    else if (event.key === 'End') to(loose.at(-1));
    else if (event.key === 'Escape') putBack();
    else return;
    event.preventDefault();
  };
  return (
    <ul
      className={styles.tray}
      aria-label="Loose pieces"
      data-tray=""
      style={fit.isBeside ? { width: `${fit.trayPx}px` } : undefined}
    >
      {mat.homes.map((piece, at) => {
        const drawn = pieces.pieces[piece];
        const spot = fit.spots[at];
        if (mat.places[piece] || held?.piece === piece || !drawn || !spot) return null;
        return (
          <li
            key={piece}
            className={away.has(piece) ? styles.away : undefined}
            style={{ left: `${spot.x}px`, top: `${spot.y}px` }}
          >
            <DrawnView drawn={drawn} cellPx={fit.cellPx} />
            <button
              type="button"
              data-piece={piece}
              className={styles.loose}
              style={boxStyle(pieces.shape, piece, fit.cellPx)}
              aria-label={drawn.words}
              aria-describedby="how-to-move"
              tabIndex={piece === stop ? 0 : -1}
              onFocus={() => setFocused(piece)}
              onClick={(event) => onPress(event, piece)}
              onPointerDown={(event) => onTake(event, piece)}
              onKeyDown={(event) => onKey(event, piece)}
            />
          </li>
        );
      })}
    </ul>
  );
}
