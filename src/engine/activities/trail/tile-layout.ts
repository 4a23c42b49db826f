// The rule of what can be drawn: which lines a tile with given edges can carry so that none touches another, and where
// its answer can stand clear of all of them. Worked out once for every kind of tile and remembered.
import { BLANK, CODES, styleOf } from './codes.js';
import {
  CLEARANCE,
  discsOf,
  endStroke,
  joinStroke,
  type Stroke,
  whiteBetween,
  whiteToCuts,
  WOBBLE,
} from './tile-strokes.js';

/** A rectangle in tile units that no drawing comes near. */
export interface Room {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export interface TileLayout {
  /** The trail's own line first. */
  readonly strokes: readonly Stroke[];
  /** Where the answer can stand: no room lies within another. */
  readonly rooms: readonly Room[];
}

/** White around an answer, and between an answer and a cut: 3 mm on the smallest tiles, of 30 mm. */
const ROOM_WHITE = 3.2;
const ROOM_MARGIN = 10.5;
/** Every tile has room for an answer of two or three digits of a good size. */
const LEAST_ROOM = { w: 34, h: 17 } as const;
/** Rooms narrower or lower than this are of no use. */
const LEAST_SIDE = { w: 15, h: 10 } as const;
const CELL = 2.5;

const known = new Map<number, TileLayout | null>();

/**
 * The layout of a tile whose edges carry these codes (north, east, south, west); `through` is the pair of sides that the
 * trail joins, null on other tiles. Lines go on to another edge where they can, else they end. Null when that cannot be
 * drawn with white around everything.
 */
export function tileLayout(
  codes: readonly [number, number, number, number],
  through: readonly [number, number] | null,
): TileLayout | null {
  const key = codes.reduce(
    (sum, code) => sum * CODES + code,
    through ? 1 + 4 * Math.min(...through) + Math.max(...through) : 0,
  );
  let layout = known.get(key);
  if (layout === undefined) {
    layout = findLayout(codes, through);
    known.set(key, layout);
  }
  return layout;
}

/** A stroke with what is known of it alone. */
interface Candidate {
  readonly id: number;
  readonly stroke: Stroke;
  /** White enough to the cuts. */
  readonly isClear: boolean;
  /** For each row of cells where rooms are sought, the columns it blocks, as bits. */
  readonly blocked: Int32Array;
}

const candidates = new Map<number, Candidate>();
const arePartners = new Map<number, boolean>();
const MOST_CANDIDATES = 2048;

function candidateOf(key: number, make: () => Stroke): Candidate {
  let candidate = candidates.get(key);
  if (!candidate) {
    const stroke = make();
    const isClear = whiteToCuts(stroke) >= CLEARANCE + WOBBLE;
    candidate = { id: candidates.size, stroke, isClear, blocked: blockedBy(stroke) };
    candidates.set(key, candidate);
  }
  return candidate;
}

function joinOf(codes: readonly number[], from: number, to: number): Candidate {
  const [a, b] = [codes[from] as number, codes[to] as number];
  return candidateOf(((from * CODES + a) * 4 + to) * CODES + b, () => joinStroke(from, a, to, b));
}

function endOf(codes: readonly number[], from: number, ending: number): Candidate {
  const [length, lean] = ENDINGS[ending] as (typeof ENDINGS)[number];
  const code = codes[from] as number;
  return candidateOf(1000 + (from * CODES + code) * ENDINGS.length + ending, () =>
    endStroke(from, code, length, lean),
  );
}

function canLieTogether(a: Candidate, b: Candidate): boolean {
  const key = Math.min(a.id, b.id) * MOST_CANDIDATES + Math.max(a.id, b.id);
  let answer = arePartners.get(key);
  if (answer === undefined) {
    answer = whiteBetween(a.stroke, b.stroke) >= CLEARANCE + 2 * WOBBLE;
    arePartners.set(key, answer);
  }
  return answer;
}

function findLayout(codes: readonly number[], through: readonly [number, number] | null): TileLayout | null {
  const own = through ? [joinOf(codes, through[0], through[1])] : [];
  const open = [0, 1, 2, 3].filter((side) => codes[side] !== BLANK && !through?.includes(side));
  for (const joins of pairings(open, codes)) {
    const joined = joins.map(([a, b]) => joinOf(codes, a, b));
    const loose = open.filter((side) => !joins.some((pair) => pair.includes(side)));
    const whole = withEnds([...own, ...joined], loose, codes);
    if (whole) return whole;
  }
  return null;
}

/** Ways to join sides in pairs of one style, most pairs first. */
function pairings(open: readonly number[], codes: readonly number[]): (readonly [number, number])[][] {
  const all: (readonly [number, number])[][] = [];
  const choose = (rest: readonly number[], pairs: (readonly [number, number])[]): void => {
    const [side, ...others] = rest;
    if (side === undefined) {
      all.push(pairs);
      return;
    }
    for (const other of others) {
      if (styleOf(codes[side] as number) !== styleOf(codes[other] as number)) continue;
      choose(
        others.filter((each) => each !== other),
        [...pairs, [side, other]],
      );
    }
    choose(others, pairs);
  };
  choose(open, []);
  return all.sort((a, b) => b.length - a.length);
}

/** Ends a line can have, best first: long enough to look like a way on. */
const ENDINGS: readonly (readonly [length: number, lean: number])[] = [
  [42, 10],
  [42, -10],
  [36, 0],
  [34, 8],
  [34, -8],
  [28, 0],
  [27, 5],
  [27, -5],
  [22, 0],
];

function withEnds(
  laid: readonly Candidate[],
  loose: readonly number[],
  codes: readonly number[],
): TileLayout | null {
  const newest = laid.at(-1);
  if (
    newest &&
    !laid.every((one, i) => one.isClear && laid.slice(0, i).every((other) => canLieTogether(one, other)))
  )
    return null;
  const [side, ...others] = loose;
  if (side === undefined) return withRooms(laid);
  for (let ending = 0; ending < ENDINGS.length; ending++) {
    const whole = withEnds([...laid, endOf(codes, side, ending)], others, codes);
    if (whole) return whole;
  }
  return null;
}

function withRooms(laid: readonly Candidate[]): TileLayout | null {
  const rooms = roomsAround(laid);
  const hasRoom = rooms.some(({ w, h }) => w >= LEAST_ROOM.w && h >= LEAST_ROOM.h);
  return hasRoom ? { strokes: laid.map(({ stroke }) => stroke), rooms } : null;
}

/** Cells of the square where answers may stand: so many each way, the first one from the edge at FROM. */
const FROM = Math.ceil(ROOM_MARGIN / CELL);
const SPAN = Math.floor((100 - ROOM_MARGIN) / CELL) - FROM;

function blockedBy(stroke: Stroke): Int32Array {
  const rows = new Int32Array(SPAN);
  for (const { x, y, r } of discsOf(stroke)) {
    const reach = r + ROOM_WHITE + WOBBLE;
    for (let row = 0; row < SPAN; row++) {
      const top = (row + FROM) * CELL;
      const dy = Math.max(top - y, 0, y - top - CELL);
      if (dy >= reach) continue;
      const dx = Math.sqrt(reach * reach - dy * dy);
      for (let column = 0; column < SPAN; column++) {
        const left = (column + FROM) * CELL;
        if (left < x + dx && left + CELL > x - dx) rows[row] = (rows[row] as number) | (1 << column);
      }
    }
  }
  return rows;
}

/** The largest free rectangles, by the heights of free columns above each row. */
function roomsAround(laid: readonly Candidate[]): Room[] {
  const heights = Array.from({ length: SPAN }, () => 0);
  const rooms: Room[] = [];
  for (let row = 0; row < SPAN; row++) {
    const blocked = laid.reduce((bits, { blocked: rows }) => bits | (rows[row] as number), 0);
    for (let column = 0; column < SPAN; column++)
      heights[column] = (blocked >> column) & 1 ? 0 : (heights[column] as number) + 1;
    for (let left = 0; left < SPAN; left++) {
      let lowest = Number.POSITIVE_INFINITY;
      for (let right = left; right < SPAN; right++) {
        lowest = Math.min(lowest, heights[right] as number);
        if (lowest * CELL < LEAST_SIDE.h) break;
        const wide = right - left + 1;
        if (wide * CELL < LEAST_SIDE.w || (heights[right + 1] ?? 0) >= lowest) continue;
        if (left > 0 && (heights[left - 1] as number) >= lowest) continue;
        rooms.push({
          x: (left + FROM) * CELL,
          y: (row + 1 - lowest + FROM) * CELL,
          w: wide * CELL,
          h: lowest * CELL,
        });
      }
    }
  }
  return rooms.filter((room) => !rooms.some((other) => other !== room && holds(other, room)));
}

function holds(outer: Room, inner: Room): boolean {
  return (
    outer.x <= inner.x &&
    outer.y <= inner.y &&
    outer.x + outer.w >= inner.x + inner.w &&
    outer.y + outer.h >= inner.y + inner.h
  );
}
