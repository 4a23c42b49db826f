// Counts runs with MiniSat (the package logic-solver): one strip to a place, one place to a strip, neighbours joined by an
// arrow; each run found is forbidden and the next one asked for.
import Logic from 'logic-solver';

/** The number of runs, up to `most`. */
export function countRunsByMinisat(arrows: readonly (readonly number[])[], most: number): number {
  const size = arrows.length;
  const all = Array.from({ length: size }, (_, i) => i);
  const at = (strip: number, place: number) => `s${strip}p${place}`;
  const solver = new Logic.Solver();
  for (const one of all) {
    solver.require(Logic.exactlyOne(...all.map((place) => at(one, place))));
    solver.require(Logic.exactlyOne(...all.map((strip) => at(strip, one))));
  }
  solver.require(at(0, 0), at(size - 1, size - 1));
  for (const from of all)
    for (const to of all)
      if (from !== to && !arrows[from]?.includes(to))
        for (const place of all.slice(0, -1))
          solver.require(Logic.or(`-${at(from, place)}`, `-${at(to, place + 1)}`));
  let runs = 0;
  for (let found = solver.solve(); found && runs < most; found = solver.solve()) {
    runs++;
    solver.forbid(found.getFormula());
  }
  return runs;
}
