// Weaving a picture: a trail and decoys on the edges of the cells, mended until the tiles fit in one arrangement only and
// every tile can be drawn.
import type { Rng } from '../../random/rng.js';
import { layByPicture, type TileSet } from './arrangements.js';
import { BLANK, EAST, LINE_CODES, NORTH, PATH_CODES, SOUTH, WEST } from './codes.js';
import { type Grid, isInner, makeGrid } from './grid.js';
import { drawRoute } from './route.js';
import { type TileLayout, tileLayout } from './tile-layout.js';

export interface Picture {
  readonly rows: number;
  readonly columns: number;
  /** Cells of the trail from entry to exit. */
  readonly route: readonly number[];
  /** Four codes a tile: north, east, south, west. */
  readonly codes: Uint8Array;
  readonly layouts: readonly TileLayout[];
  /** Tiles laid by the search that proved the picture unique. */
  readonly nodes: number;
}

const MOST_REPAIRS = 160;
/** Repairs after which the second line may be used more freely. */
const PATIENCE = 50;
const MOST_ATTEMPTS = 60;

/** How hard to try, by the number of cells. */
interface Effort {
  /** So many unique pictures are woven, and the one that gives least away is kept. */
  readonly pictures: number;
  /** A search that grows longer than this is given up: a seed must give the same picture on every machine, so no clock. */
  readonly mostNodes: number;
  /** The share of decoys drawn as the second line. The more, the easier it is to lay the tiles by picture. */
  readonly lineShare: number;
}

function effortFor(cells: number): Effort {
  if (cells <= 16) return { pictures: 8, mostNodes: 20_000, lineShare: 0.08 };
  if (cells <= 20) return { pictures: 4, mostNodes: 20_000, lineShare: 0.12 };
  if (cells <= 25) return { pictures: 2, mostNodes: 20_000, lineShare: 0.2 };
  return { pictures: 1, mostNodes: 20_000, lineShare: 0.45 };
}

type Pair = readonly [number, number];

interface Loom {
  readonly grid: Grid;
  readonly route: readonly number[];
  /** The code of each edge. */
  readonly edges: Uint8Array;
  readonly isTrail: Uint8Array;
  /** The sides that the trail joins on a cell. */
  readonly through: readonly (Pair | null)[];
}

/** The best of a few pictures for this size, or null when none could be made within the limits. */
export function weavePicture(rows: number, columns: number, rng: Rng): Picture | null {
  const effort = effortFor(rows * columns);
  const { pictures } = effort;
  let best: Picture | null = null;
  let made = 0;
  for (let attempt = 0; attempt < MOST_ATTEMPTS && made < pictures; attempt++) {
    const picture = weaveOnce(rows, columns, effort, rng.fork(attempt));
    if (!picture) continue;
    made++;
    if (!best || picture.nodes > best.nodes) best = picture;
  }
  return best;
}

function weaveOnce(
  rows: number,
  columns: number,
  { mostNodes, lineShare }: Effort,
  rng: Rng,
): Picture | null {
  const loom = setUp(makeGrid(rows, columns), drawRoute(rows, columns, rng), rng);
  if (!loom) return null;
  addDecoys(loom, lineShare, rng);
  for (let repair = 0; repair < MOST_REPAIRS; repair++) {
    const tiles = tilesOf(loom);
    const { rival, nodes, isComplete } = layByPicture(tiles, mostNodes);
    if (!isComplete) return null;
    if (!rival) return finish(loom, tiles, nodes);
    if (!mend(loom, rival, repair, rng)) return null;
  }
  return null;
}

function setUp(grid: Grid, route: readonly number[], rng: Rng): Loom | null {
  const edges = new Uint8Array(grid.edges);
  const isTrail = new Uint8Array(grid.edges);
  const through: (Pair | null)[] = Array.from({ length: grid.cells }, () => null);
  const sides = [
    NORTH,
    ...route.slice(1).map((cell, i) => sideTowards(route[i] as number, cell, grid.columns)),
    SOUTH,
  ];
  route.forEach((cell, i) => {
    const came = i === 0 ? NORTH : ((sides[i] as number) + 2) % 4;
    const goes = sides[i + 1] as number;
    through[cell] = [came, goes];
    for (const side of [came, goes]) isTrail[grid.edgeOf[4 * cell + side] as number] = 1;
  });
  const loom: Loom = { grid, route, edges, isTrail, through };
  // The trail alone: every bend can be drawn, but a bend back into the side beside it may not be.
  for (let attempt = 0; attempt < 20; attempt++) {
    for (let edge = 0; edge < grid.edges; edge++) if (isTrail[edge]) edges[edge] = rng.pick(PATH_CODES);
    if (route.every((cell) => canDraw(loom, cell))) return loom;
  }
  return null;
}

function sideTowards(from: number, to: number, columns: number): number {
  return to === from + columns ? SOUTH : to === from - columns ? NORTH : to === from + 1 ? EAST : WEST;
}

/** Decoys wherever they can be drawn, about two of three edges, most of them the same path as the trail. */
function addDecoys(loom: Loom, lineShare: number, rng: Rng): void {
  for (const edge of rng.shuffle(innerEdges(loom))) {
    if (loom.isTrail[edge] || rng.chance(0.25)) continue;
    for (const code of decoyOrder(rng, lineShare)) if (recode(loom, edge, code)) break;
  }
}

function decoyOrder(rng: Rng, lineShare: number): number[] {
  const paths = rng.shuffle(PATH_CODES);
  const lines = rng.shuffle(LINE_CODES);
  return rng.chance(lineShare) ? [...lines, ...paths] : [...paths, ...lines];
}

function innerEdges({ grid }: Loom): number[] {
  return Array.from({ length: grid.edges }, (_, edge) => edge).filter((edge) => isInner(grid, edge));
}

/** Recodes an edge of a tile that moved in the rival arrangement. */
function mend(loom: Loom, rival: Uint8Array, repair: number, rng: Rng): boolean {
  const { grid, edges, isTrail } = loom;
  const moved = Array.from(rival, (tile, cell) => (tile === cell ? -1 : cell)).filter((cell) => cell >= 0);
  for (const cell of rng.shuffle(moved)) {
    for (const side of rng.shuffle([NORTH, EAST, SOUTH, WEST])) {
      const edge = grid.edgeOf[4 * cell + side] as number;
      if (!isInner(grid, edge)) continue;
      const choices = isTrail[edge]
        ? PATH_CODES
        : [...decoyOrder(rng, repair < PATIENCE ? 0.3 : 0.6), ...(rng.chance(0.3) ? [] : [BLANK])];
      for (const code of choices) if (code !== edges[edge] && recode(loom, edge, code)) return true;
    }
  }
  return false;
}

/** Gives an edge another code if both its tiles can then be drawn. */
function recode(loom: Loom, edge: number, code: number): boolean {
  const { edges, grid } = loom;
  const before = edges[edge] as number;
  edges[edge] = code;
  if (canDraw(loom, grid.besides[2 * edge] as number) && canDraw(loom, grid.besides[2 * edge + 1] as number))
    return true;
  edges[edge] = before;
  return false;
}

function canDraw(loom: Loom, cell: number): boolean {
  return cell < 0 || layoutOf(loom, cell) !== null;
}

function layoutOf({ grid, edges, through }: Loom, cell: number): TileLayout | null {
  const code = (side: number) => edges[grid.edgeOf[4 * cell + side] as number] as number;
  return tileLayout([code(NORTH), code(EAST), code(SOUTH), code(WEST)], through[cell] as Pair | null);
}

function tilesOf({ grid, edges }: Loom): TileSet {
  return {
    rows: grid.rows,
    columns: grid.columns,
    codes: Uint8Array.from(grid.edgeOf, (edge) => edges[edge] as number),
  };
}

function finish(loom: Loom, tiles: TileSet, nodes: number): Picture {
  const layouts = Array.from({ length: loom.grid.cells }, (_, cell) => layoutOf(loom, cell) as TileLayout);
  return { rows: tiles.rows, columns: tiles.columns, route: loom.route, codes: tiles.codes, layouts, nodes };
}
