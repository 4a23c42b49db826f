// The arrangements of a trail counted by two solvers of other makers: MiniSat (the package logic-solver) and the exact cover
// solver dancing-links. Both get the plain rules: one tile a cell, one cell a tile, touching edges equal.
import { DancingLinks } from 'dancing-links';
import Logic from 'logic-solver';
import { beside, edgeOf, type Trail } from './trail-checker.js';

const CODES = ['0', 'a', 'b', 'c', 'd'];

function rimFits(trail: Trail, tile: number, cell: number): boolean {
  return (['north', 'east', 'south', 'west'] as const).every((side) => {
    const other = beside(trail, cell, side);
    return typeof other !== 'string' || other === edgeOf(trail, tile, side);
  });
}

/** Arrangements up to `most`, by MiniSat: each one found is forbidden and the next one asked for. */
export function countByMinisat(trail: Trail, most: number): number {
  const all = trail.tiles.map((_, i) => i);
  const at = (tile: number, cell: number) => `t${tile}c${cell}`;
  const solver = new Logic.Solver();
  for (const one of all) {
    solver.require(Logic.exactlyOne(...all.map((cell) => at(one, cell))));
    solver.require(Logic.exactlyOne(...all.map((tile) => at(tile, one))));
  }
  for (const cell of all) {
    for (const tile of all) if (!rimFits(trail, tile, cell)) solver.require(`-${at(tile, cell)}`);
    for (const [here, there] of [
      ['east', 'west'],
      ['south', 'north'],
    ] as const) {
      const other = beside(trail, cell, here);
      if (typeof other === 'string') continue;
      for (const tile of all) {
        const partners = all.filter(
          (one) => one !== tile && edgeOf(trail, one, there) === edgeOf(trail, tile, here),
        );
        solver.require(Logic.or(`-${at(tile, cell)}`, ...partners.map((one) => at(one, other))));
      }
    }
  }
  let count = 0;
  for (let found = solver.solve(); found && count < most; found = solver.solve()) {
    count++;
    solver.forbid(found.getFormula());
  }
  return count;
}

/**
 * Arrangements up to `most`, by dancing-links without colours: along an edge the tile before it covers the codes it does not
 * show there, the tile after it the code it does show, so that two that disagree collide.
 */
export function countByDancingLinks(trail: Trail, most: number): number {
  const all = trail.tiles.map((_, i) => i);
  const edges = all.flatMap((cell) =>
    (['east', 'south'] as const)
      .filter((side) => typeof beside(trail, cell, side) === 'number')
      .map((side) => `${cell} ${side}`),
  );
  const columns = new Map(
    edges.flatMap((edge) => CODES.map((code) => `${edge} ${code}`)).map((name, i) => [name, i]),
  );
  const solver = new DancingLinks<null>().createSolver({
    primaryColumns: 2 * all.length,
    secondaryColumns: columns.size,
  });
  for (const cell of all) {
    for (const tile of all) {
      if (!rimFits(trail, tile, cell)) continue;
      const secondary: number[] = [];
      const cover = (edge: string, code: string) => secondary.push(columns.get(`${edge} ${code}`) as number);
      for (const [here, there] of [
        ['east', 'west'],
        ['south', 'north'],
      ] as const) {
        if (typeof beside(trail, cell, here) === 'number')
          for (const code of CODES) if (code !== edgeOf(trail, tile, here)) cover(`${cell} ${here}`, code);
        const before = beside(trail, cell, there);
        if (typeof before === 'number') cover(`${before} ${here}`, edgeOf(trail, tile, there));
      }
      solver.addSparseConstraint(null, { primary: [cell, all.length + tile], secondary });
    }
  }
  return solver.find(most).length;
}
