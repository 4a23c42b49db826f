// Edge codes as the search handles them: small numbers, one for each of EDGE_CODES.
import { EDGE_CODES, type EdgeCode, SIDES, type Side } from './trail.js';

export const NORTH = 0;
export const EAST = 1;
export const SOUTH = 2;
export const WEST = 3;

export const BLANK = 0;
export const PATH_CODES = [1, 2] as const;
export const LINE_CODES = [3, 4] as const;
/** How many codes there are; the table of candidates is this wide. */
export const CODES = EDGE_CODES.length;

/** "path" for the broad path, "line" for the thin second line; null for a blank edge. */
export function styleOf(code: number): 'path' | 'line' | null {
  return code === BLANK ? null : code <= 2 ? 'path' : 'line';
}

/** The code as written in a trail's JSON. */
export function codeName(code: number): EdgeCode {
  return EDGE_CODES[code] as EdgeCode;
}

/** The number of a code as written in a trail's JSON; -1 when there is no such code. */
export function codeNumber(name: string): number {
  return (EDGE_CODES as readonly string[]).indexOf(name);
}

export function sideName(side: number): Side {
  return SIDES[side] as Side;
}
