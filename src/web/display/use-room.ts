// The room's screen size and depth, remembered on this computer.
import { useState } from 'react';
import { type Room, USUAL_ROOM } from './legibility.js';

const KEY = 'afterbell.room';

function remembered(): Room {
  try {
    const stored = JSON.parse(localStorage.getItem(KEY) ?? 'null') as Partial<Room> | null;
    const { diagonalInches, distanceM } = { ...USUAL_ROOM, ...stored };
    const isUsable = diagonalInches >= 10 && diagonalInches <= 200 && distanceM >= 1 && distanceM <= 20;
    return isUsable ? { diagonalInches, distanceM } : USUAL_ROOM;
  } catch {
    return USUAL_ROOM;
  }
}

/** The room and a way to change it. */
export function useRoom(): [Room, (room: Room) => void] {
  const [room, setRoom] = useState(remembered);
  return [
    room,
    (next) => {
      setRoom(next);
      try {
        localStorage.setItem(KEY, JSON.stringify(next));
      } catch {
        // A browser that keeps nothing still shows this room until the page is closed.
      }
    },
  ];
}
