// Places for the boxes of a graph: rows from top to bottom so that everything stands below what comes before it, few lines
// crossing, and no row wider than the page. A small layered layout: rows of limited width (after Coffman and Graham),
// order within a row by the mean place of neighbours, lines over several rows through a free lane in each.

const SWEEPS = 24;

/** The edges that are not told already by a longer way: "a before c" is dropped where a is before b and b before c. */
export function withoutDetours(edges) {
  const next = new Map();
  for (const [from, to] of edges) next.set(from, [...(next.get(from) ?? []), to]);
  const reaches = (from, to, seen = new Set()) =>
    (next.get(from) ?? []).some(
      (step) => step === to || (!seen.has(step) && (seen.add(step), reaches(step, to, seen))),
    );
  return edges.filter(
    ([from, to]) => !(next.get(from) ?? []).some((step) => step !== to && reaches(step, to)),
  );
}

/** Row number by node id: within a group (a year) every node below its predecessors, at most `most` to a row. */
export function rowsOf(nodes, edges, most) {
  const before = new Map(nodes.map(({ id }) => [id, []]));
  for (const [from, to] of edges) before.get(to).push(from);
  const row = new Map();
  let first = 0;
  for (const group of [...new Set(nodes.map((node) => node.group))].toSorted((a, b) => a - b)) {
    const fill = [];
    const waiting = nodes.filter((node) => node.group === group);
    while (waiting.length > 0) {
      const at = waiting.findIndex(({ id }) =>
        before.get(id).every((one) => !waiting.some((other) => other.id === one)),
      );
      if (at < 0) throw new Error(`the skills of group ${group} go round in a circle`);
      const [{ id }] = waiting.splice(at, 1);
      let place = 0;
      for (const one of before.get(id)) if (row.has(one)) place = Math.max(place, row.get(one) - first + 1);
      while ((fill[place] ?? 0) >= most) place++;
      fill[place] = (fill[place] ?? 0) + 1;
      row.set(id, first + place);
    }
    first += fill.length;
  }
  return row;
}

/**
 * Places: `x` of each node's middle, its row, and for each edge the points it passes. `slot` is the width of a box with its
 * gap, `lane` that of a line passing a row, `least` that of the page, which grows where a row needs it.
 */
export function layOut(nodes, edges, { most, slot, lane, least }) {
  const row = rowsOf(nodes, edges, most);
  const rows = Array.from({ length: Math.max(...row.values()) + 1 }, () => []);
  for (const { id } of nodes) rows[row.get(id)].push({ id, wide: slot, up: [], down: [] });
  const items = new Map(rows.flat().map((item) => [item.id, item]));
  const ways = edges.map(([from, to]) => {
    const way = [items.get(from)];
    for (let at = row.get(from) + 1; at < row.get(to); at++) {
      const pass = { id: null, wide: lane, up: [], down: [] };
      rows[at].push(pass);
      way.push(pass);
    }
    way.push(items.get(to));
    for (let i = 1; i < way.length; i++) {
      way[i - 1].down.push(way[i]);
      way[i].up.push(way[i - 1]);
    }
    return { from, to, way };
  });
  const width = Math.max(least, ...rows.map((line) => line.reduce((sum, item) => sum + item.wide, 0)));
  for (const line of rows) spread(line, width);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const isDown = sweep % 2 === 0;
    for (const line of isDown ? rows : rows.toReversed()) {
      for (const [place, item] of line.entries()) {
        const near = sweep < SWEEPS - 4 ? (isDown ? item.up : item.down) : [...item.up, ...item.down];
        item.wish = near.length > 0 ? near.reduce((sum, one) => sum + one.x, 0) / near.length : item.x;
        item.place = place;
      }
      line.sort((a, b) => a.wish - b.wish || a.place - b.place);
      settle(line, width);
    }
  }
  return {
    width,
    rowCount: rows.length,
    row,
    x: new Map([...items].map(([id, { x }]) => [id, x])),
    ways: ways.map(({ from, to, way }) => ({ from, to, x: way.map((item) => item.x) })),
  };
}

function spread(line, width) {
  const total = line.reduce((sum, item) => sum + item.wide, 0);
  let left = (width - total) / 2;
  for (const item of line) {
    item.x = left + item.wide / 2;
    left += item.wide;
  }
}

/** As near to each wish as order, widths and the page allow: pushed right where too close, then back from the edge. */
function settle(line, width) {
  let left = 0;
  for (const item of line) {
    item.x = Math.max(item.wish, left + item.wide / 2);
    left = item.x + item.wide / 2;
  }
  let right = width;
  for (const item of line.toReversed()) {
    item.x = Math.min(item.x, right - item.wide / 2);
    right = item.x - item.wide / 2;
  }
}
