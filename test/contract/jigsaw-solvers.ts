// The assemblies of a jigsaw counted by two solvers of other makers: MiniSat (the package logic-solver) and the exact cover
// solver dancing-links. Both get the plain rules: every piece once, every cell covered once, printed cells met. Rows are
// judged afterwards, by mathjs.
import { DancingLinks } from 'dancing-links';
import Logic from 'logic-solver';
import { type Cell, isRowTrue, type Jigsaw, waysToLay } from './jigsaw-rows.js';

type Laid = ReturnType<typeof waysToLay>[number];

/** Rows of a filled frame that are not true, by their numbers. */
function falseRows({ rows, columns, rowRule }: Jigsaw, chosen: readonly Laid[]): number[] {
  const grid = new Map<number, Cell>();
  for (const { at, cells } of chosen) at.forEach((cell, i) => grid.set(cell, cells[i] as Cell));
  return Array.from({ length: rows }, (_, row) => row).filter((row) => {
    const line = Array.from({ length: columns }, (_, column) => grid.get(row * columns + column) as Cell);
    return !isRowTrue(line, rowRule);
  });
}

/** Assemblies up to `most`, by MiniSat: whatever makes a row false is forbidden, and so is each assembly found. */
export function countByMinisat(jigsaw: Jigsaw, most: number): number {
  const ways = waysToLay(jigsaw, { byKind: true });
  const name = (way: number) => `w${way}`;
  const solver = new Logic.Solver();
  const numbers = ways.map((_, i) => i);
  jigsaw.pieces.forEach((_, piece) => {
    solver.require(Logic.exactlyOne(...numbers.filter((i) => ways[i]?.piece === piece).map(name)));
  });
  jigsaw.cells.forEach((_, cell) => {
    solver.require(Logic.exactlyOne(...numbers.filter((i) => ways[i]?.at.includes(cell)).map(name)));
  });
  let count = 0;
  for (let found = solver.solve(); found && count < most; found = solver.solve()) {
    const chosen = found.getTrueVars().map((one) => Number(one.slice(1)));
    const wrong = falseRows(
      jigsaw,
      chosen.map((i) => ways[i] as Laid),
    );
    if (wrong.length === 0) {
      count++;
      solver.forbid(found.getFormula());
    }
    for (const row of wrong) {
      const inRow = chosen.filter((i) =>
        ways[i]?.at.some((cell) => Math.floor(cell / jigsaw.columns) === row),
      );
      solver.require(Logic.or(...inRow.map((i) => `-${name(i)}`)));
    }
  }
  return count;
}

/** All assemblies by dancing-links: every one that fits by outline and kind, and those of them with true rows. */
export function countByDancingLinks(jigsaw: Jigsaw, most: number): { fits: number; assemblies: number } {
  const ways = waysToLay(jigsaw, { byKind: true });
  const { pieces, cells } = jigsaw;
  const solver = new DancingLinks<Laid>().createSolver({ columns: pieces.length + cells.length });
  for (const way of ways) {
    solver.addSparseConstraint(way, [way.piece, ...way.at.map((cell) => pieces.length + cell)]);
  }
  const found = solver.find(most).map((solution) => solution.map(({ data }) => data));
  return {
    fits: found.length,
    assemblies: found.filter((chosen) => falseRows(jigsaw, chosen).length === 0).length,
  };
}
