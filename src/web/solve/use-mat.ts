// The moves of a table with a mat: what is laid, what is in hand, what was said about it, and where the keyboard is.
import { useState } from 'react';
import {
  canLie,
  emptyMat,
  isMat,
  layOn,
  looseOn,
  type Mat,
  pieceOn,
  type Place,
  placeWithin,
  takeOff,
} from './mat.js';
import type { MatPieces } from './mat-pieces.js';
import { shuffled } from './shuffled.js';
import { useKeptHistory } from './use-kept-history.js';

/** A piece picked up by key or press: shown over the mat, laid with Enter. */
interface Held {
  readonly piece: number;
  readonly at: Place;
}

/** Finds a cell of the mat among the page's elements. */
export function cellSelector([row, column]: Place): string {
  return `[data-cell="${row},${column}"]`;
}

/** `focus` puts the keyboard on the first element that a selector finds. */
export function useMat(pieces: MatPieces, name: string, focus: (selector: string) => void) {
  const { shape } = pieces;
  const table = useKeptHistory(
    name,
    () => emptyMat(pieces.homes),
    (kept): kept is Mat => isMat(kept, shape),
  );
  const mat = table.now;
  const [held, setHeld] = useState<Held | null>(null);
  const [said, setSaid] = useState('');
  const [cell, setCell] = useState<Place>([0, 0]);

  /** The cell of the mat by which a piece is pointed at. */
  const firstCell = (piece: number, [row, column]: Place): Place => {
    const [down, across] = shape.pieces[piece]?.[0] ?? [0, 0];
    return [row + down, column + across];
  };
  const focusPiece = (piece: number, now: Mat) => {
    const place = now.places[piece];
    focus(place ? cellSelector(firstCell(piece, place)) : `[data-piece="${piece}"]`);
  };
  const settle = (words: string) => {
    setHeld(null);
    setSaid(words);
  };
  const lay = (piece: number, place: Place) => {
    if (!canLie(shape, mat, piece, place)) {
      setSaid('It does not lie flat there: another piece is under it.');
      return;
    }
    const next = layOn(shape, mat, piece, place);
    const loose = looseOn(next);
    const following =
      mat.homes.slice(mat.homes.indexOf(piece)).find((one) => loose.includes(one)) ?? loose[0];
    setCell(firstCell(piece, place));
    table.step(() => next);
    settle(`Laid. ${pieces.laidWords(next, piece)}`);
    focusPiece(mat.places[piece] ? piece : (following ?? piece), next);
  };
  const hold = (piece: number, at: Place, before: string) => {
    const place = placeWithin(shape, piece, at);
    setHeld({ piece, at: place });
    setSaid(before + pieces.placeWords(piece, place));
    focus('[data-hand]');
  };
  const pickUp = (piece: number) => hold(piece, mat.places[piece] ?? cell, 'In hand. ');

  return {
    mat,
    held,
    said,
    cell,
    setCell,
    canStepBack: table.canStepBack,
    lay,
    pickUp,
    settle,
    moveHeld: (at: Place) => held && hold(held.piece, at, ''),
    putBack: () => {
      if (!held) return;
      focusPiece(held.piece, mat);
      settle('Put back.');
    },
    takeAway: (piece: number) => {
      const next = takeOff(mat, piece);
      if (next === mat) return;
      table.step(() => next);
      settle('Taken off the mat.');
      focus(cellSelector(cell));
    },
    /** A cell was pressed: what is in hand goes there, or what lies there is picked up; false when there is neither. */
    pressCell: (at: Place): boolean => {
      const under = pieceOn(shape, mat, at);
      setCell(at);
      if (held) {
        const [down, across] = shape.pieces[held.piece]?.[0] ?? [0, 0];
        const place = placeWithin(shape, held.piece, [at[0] - down, at[1] - across]);
        if (shape.pieces[held.piece]?.length === 1) lay(held.piece, place);
        else hold(held.piece, place, '');
      } else if (under !== null) pickUp(under);
      return held !== null || under !== null;
    },
    stepBack: () => {
      table.stepBack();
      settle('The last step is taken back.');
    },
    startAgain: () => {
      table.step((now) => emptyMat(now.homes));
      settle('All pieces lie loose again.');
    },
    shuffle: () => {
      table.step((now) => ({ ...now, homes: shuffled(now.homes) }));
      settle('The loose pieces are mixed.');
    },
  };
}

export type MatMoves = ReturnType<typeof useMat>;
