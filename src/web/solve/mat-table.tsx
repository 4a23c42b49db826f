// A mat to fill on the screen: tiles of a trail or pieces of a jigsaw, loose beside it, dragged or moved by key. Nothing but
// the pieces themselves says whether it goes well.
import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import { ARROWS } from './arrows.js';
import { DrawnView } from './drawn-view.js';
import { LoosePieces } from './loose-pieces.js';
import { boxOf, canLie, cellsAt, pieceOn, type Place, placeWithin } from './mat.js';
import { MatGrid } from './mat-grid.js';
import type { MatPieces } from './mat-pieces.js';
import styles from './mat-table.module.css';
import { boxStyle, cellsStyle, spotStyle } from './spot-style.js';
import { TableFrame } from './table-frame.js';
import { useDrag } from './use-drag.js';
import { useFocusOn } from './use-focus-on.js';
import { useHints } from './use-hints.js';
import { useMat } from './use-mat.js';
import { useMatFit } from './use-mat-fit.js';

interface Props {
  readonly pieces: MatPieces;
  readonly title: string;
  /** Tells these pieces from others in what the browser keeps. */
  readonly name: string;
  readonly onOther: (() => void) | null;
  readonly onLeave: () => void;
}

const HOW =
  'Drag a piece onto the mat, or press it and then the place where it should lie. By key: Tab goes from the mat to the loose ' +
  'pieces, arrow keys from one to the next. Enter picks a piece up, arrow keys then move it over the mat, Enter lays it, ' +
  'Escape puts it back. Delete takes a piece off the mat.';
/** How far from a place, in cells, a piece may be let go and still lie there. */
const CATCH = 0.7;

export function MatTable({ pieces, title, name, onOther, onLeave }: Props) {
  const { shape, ground } = pieces;
  const place = useRef<HTMLDivElement>(null);
  const moves = useMat(pieces, name, useFocusOn(place));
  const { mat, held, cell } = moves;
  const fit = useMatFit(place, pieces, mat.homes);
  const [asked, setAsked] = useState<Place | null>(null);
  const hints = useHints(() => pieces.hints(mat, asked), mat);

  const pressCell = (at: Place) => {
    if (moves.pressCell(at) || !pieces.hasQuestions) return;
    setAsked(at);
    hints.begin(pieces.hints(mat, at));
  };
  const dragging = useDrag<Place | 'tray'>({
    locate: ({ piece, x, y, grip }) => {
      const grid = place.current?.querySelector('[role="grid"]')?.getBoundingClientRect();
      if (!grid || !fit) return null;
      const box = boxOf(shape, piece);
      const row = (y - grid.top) / fit.cellPx - grip[1] * box.rows;
      const column = (x - grid.left) / fit.cellPx - grip[0] * box.columns;
      const near = placeWithin(shape, piece, [Math.round(row), Math.round(column)]);
      if (Math.abs(near[0] - row) <= CATCH && Math.abs(near[1] - column) <= CATCH) return near;
      const tray = place.current?.querySelector('[data-tray]')?.getBoundingClientRect();
      return tray && x >= tray.left && y >= tray.top ? 'tray' : null;
    },
    onDrop: ({ piece, over }) => {
      if (over === 'tray') moves.takeAway(piece);
      else if (over) moves.lay(piece, over);
    },
    onPress: (piece) => {
      if (held?.piece === piece) moves.lay(piece, held.at);
      else if (held && mat.places[piece]) pressCell(cell);
      else moves.pickUp(piece);
    },
  });
  const away = new Set(dragging.drags.map(({ piece }) => piece));
  const takeFromMat = (event: PointerEvent<HTMLElement>, piece: number, at: Place) => {
    const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
    const [row, column] = mat.places[piece] ?? at;
    const box = boxOf(shape, piece);
    moves.setCell(at);
    dragging.take(event, piece, [
      (at[1] - column + (event.clientX - left) / width) / box.columns,
      (at[0] - row + (event.clientY - top) / height) / box.rows,
    ]);
  };
  const onHandKey = (event: KeyboardEvent) => {
    const move = ARROWS[event.key];
    if (event.key === 'Escape') moves.putBack();
    else if (move && held) moves.moveHeld([held.at[0] + move[0], held.at[1] + move[1]]);
    else return;
    event.preventDefault();
  };
  const inHand = held ? pieces.pieces[held.piece] : undefined;

  return (
    <TableFrame
      title={title}
      how={HOW}
      said={moves.said}
      locale={pieces.locale}
      hint={hints.shown}
      isHintHigh={asked !== null && asked[0] >= shape.rows / 2}
      {...(fit?.isBeside ? { hintWidth: `${ground.width * fit.cellPx}px` } : {})}
      canStepBack={moves.canStepBack}
      onStepBack={moves.stepBack}
      onStartAgain={moves.startAgain}
      onShuffle={moves.shuffle}
      onHint={hints.next}
      onHideHint={hints.hide}
      onOther={onOther}
      onLeave={onLeave}
    >
      <div ref={place} className={styles.ground} data-table="" data-beside={fit?.isBeside}>
        {fit && (
          <>
            <div
              className={styles.mat}
              style={{ width: `${ground.width * fit.cellPx}px`, height: `${ground.height * fit.cellPx}px` }}
            >
              <DrawnView drawn={ground} cellPx={fit.cellPx} isWhole />
              <div className={styles.cells} style={cellsStyle(ground, fit.cellPx)}>
                <MatGrid
                  pieces={pieces}
                  moves={moves}
                  onPress={(event, at) => {
                    // A press on a piece was told of by its pointer already.
                    if (pieceOn(shape, mat, at) === null || !dragging.isEcho(event)) pressCell(at);
                  }}
                  onTake={takeFromMat}
                />
                {pieces.pieces.map((drawn, piece) => {
                  const spot = mat.places[piece];
                  if (!spot || held?.piece === piece) return null;
                  return (
                    <div
                      key={drawn.words}
                      data-edged={shape.whenTaken === 'swap'}
                      className={`${styles.laid} ${away.has(piece) ? styles.away : ''}`}
                      style={spotStyle(spot, fit.cellPx)}
                    >
                      <DrawnView drawn={drawn} cellPx={fit.cellPx} />
                    </div>
                  );
                })}
                {dragging.drags.flatMap(({ piece, over }) =>
                  over !== null && over !== 'tray' && canLie(shape, mat, piece, over)
                    ? cellsAt(shape, piece, over).map((at) => (
                        <div key={at.join()} className={styles.landing} style={spotStyle(at, fit.cellPx)} />
                      ))
                    : [],
                )}
                {held && inHand && (
                  <div className={styles.hand} style={spotStyle(held.at, fit.cellPx)}>
                    <DrawnView drawn={inHand} cellPx={fit.cellPx} />
                    <button
                      type="button"
                      data-hand=""
                      className={styles.loose}
                      style={boxStyle(shape, held.piece, fit.cellPx)}
                      aria-label={`In hand: ${inHand.words} ${pieces.placeWords(held.piece, held.at)}`}
                      aria-describedby="how-to-move"
                      onClick={(event) => dragging.isEcho(event) || moves.lay(held.piece, held.at)}
                      onPointerDown={(event) => dragging.take(event, held.piece)}
                      onKeyDown={onHandKey}
                    />
                  </div>
                )}
              </div>
            </div>
            <LoosePieces
              pieces={pieces}
              moves={moves}
              fit={fit}
              away={away}
              onPress={(event, piece) => dragging.isEcho(event) || moves.pickUp(piece)}
              onTake={dragging.take}
            />
            {dragging.drags.map(({ pointer, piece, x, y, grip }) => {
              const drawn = pieces.pieces[piece];
              const box = boxOf(shape, piece);
              const [left, top] = [
                x - grip[0] * box.columns * fit.cellPx,
                y - grip[1] * box.rows * fit.cellPx,
              ];
              return (
                drawn && (
                  <div
                    key={pointer}
                    className={styles.carried}
                    style={{ transform: `translate(${left}px, ${top}px)` }}
                  >
                    <DrawnView drawn={drawn} cellPx={fit.cellPx} />
                  </div>
                )
              );
            })}
          </>
        )}
      </div>
    </TableFrame>
  );
}
