// Counting runs: paths from the first strip to the last through every strip, exactly, whatever the graph.

/**
 * The number of paths from node 0 to the last node that visit every node once. `arrows[i]` has bit j set when an arrow
 * leads from i to j. At most 20 nodes. Runs over (nodes visited, node reached) with a memory, so that even a dense
 * graph of n nodes costs at most n x 2^n steps (the scheme of Bellman 1962 and Held & Karp 1962, from memory).
 */
export function countFullRuns(arrows: readonly number[]): number {
  const size = arrows.length;
  if (size < 2) return size;
  if (size > MOST_NODES) throw new RangeError(`${size} strips are more than can be counted`);
  const last = 1 << (size - 1);
  const all = 2 ** size - 1;
  const incoming = arrows.map((_, to) =>
    arrows.reduce((bits, row, from) => bits | (((row >> to) & 1) << from), 0),
  );
  const known = new Map<number, number>();

  const runsFrom = (node: number, visited: number): number => {
    const missing = all & ~visited;
    if (missing === last) return (arrows[node] as number) & last ? 1 : 0;
    const open = (arrows[node] as number) & missing & ~last;
    if (open === 0) return 0;
    const key = visited * 32 + node;
    const before = known.get(key);
    if (before !== undefined) return before;
    // A missing node that no other missing node leads to must come next; two such nodes cannot both.
    const sources = missing | (1 << node);
    let forced = 0;
    for (let rest = missing; rest !== 0; rest &= rest - 1) {
      const to = 31 - Math.clz32(rest & -rest);
      const from = (incoming[to] as number) & sources;
      if (from === 0) return remember(known, key, 0);
      if (from === 1 << node) forced |= 1 << to;
    }
    if ((forced & (forced - 1)) !== 0) return remember(known, key, 0);
    let runs = 0;
    for (let rest = forced === 0 ? open : open & forced; rest !== 0; rest &= rest - 1) {
      const next = 31 - Math.clz32(rest & -rest);
      runs += runsFrom(next, visited | (1 << next));
    }
    return remember(known, key, runs);
  };
  return runsFrom(0, 1);
}

const MOST_NODES = 20;

function remember(known: Map<number, number>, key: number, runs: number): number {
  known.set(key, runs);
  return runs;
}
