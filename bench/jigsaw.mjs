// How long a jigsaw takes to make, with its proof, warm: every kind of rows at the usual size and at the largest, each level
// that the kind has. Beside it dancing-links looks for all assemblies of the same jigsaws by outline and kind, MiniSat for
// those with true rows.
import process from 'node:process';
import { runnerImport } from 'vite';
import { composeJigsaw } from '#engine/activities/jigsaw/compose.js';
import { explainJigsaw } from '#engine/activities/jigsaw/explain.js';
import { JIGSAW_LEVELS, ROW_KINDS } from '#engine/activities/jigsaw/jigsaw.js';
import { countTrueAssemblies } from '#engine/activities/jigsaw/proof.js';
import { makePuzzle } from '#engine/activities/jigsaw/puzzle.js';
import { median, quantile, ROOT, timed } from './support/measure.mjs';
import { count, ms, tell } from './support/tell.mjs';

const CLASSES = [
  [1, 2],
  [3, 4],
  [5, 6],
];
const WARM_UP = 4;
const SIZES = [
  { rows: 5, columns: 7, seeds: 14, target: [30, 300] },
  { rows: 8, columns: 10, seeds: 5, target: [500, 5000] },
];
const PROVED_SIZES = [
  [4, 5],
  [5, 7],
  [6, 9],
  [8, 10],
];
const PROVED = 20;
/** Fits that dancing-links is asked for at most; it has no way to look at rows before all pieces lie. */
const MOST_FITS = 50_000;
const COMPARED = 10;

const { module: judge } = await runnerImport(`${ROOT}test/contract/jigsaw-solvers.ts`, {
  configFile: false,
  logLevel: 'error',
  root: ROOT,
  resolve: { conditions: ['afterbell-source', 'node'] },
});

const spread = (times) => `median ${ms(median(times))}, 99 of 100 within ${ms(quantile(times, 0.99))}`;
const levelsOf = (rowKind, rows, columns) =>
  JIGSAW_LEVELS.filter(
    (level) => composeJigsaw({ years: [3, 4], rowKind, rows, columns, level, seed: 1, locale: 'en-AU' }).ok,
  );

for (const { rows, columns, seeds, target } of SIZES) {
  for (const rowKind of ROW_KINDS) {
    const levels = levelsOf(rowKind, rows, columns);
    const made = [];
    for (let seed = 1; seed <= WARM_UP + seeds; seed++) {
      for (const years of CLASSES) {
        for (const level of levels) {
          const request = { years, rowKind, rows, columns, level, seed, locale: 'en-AU' };
          const time = await timed(() => composeJigsaw(request));
          if (seed > WARM_UP) made.push({ ...time, level });
        }
      }
    }
    const clock = made.map(({ clockMs }) => clockMs);
    const cpu = made.map(({ cpuMs }) => cpuMs);
    const byLevel = levels.map((level) => {
      const own = made.filter((time) => time.level === level).map(({ clockMs }) => clockMs);
      return `${level} ${ms(median(own))}`;
    });
    const refused = made.filter(({ value }) => !value.ok).length;
    tell({
      what: `a jigsaw of ${rows} x ${columns}, ${rowKind}, with its proof, warm (${made.length}: ${byLevel.join(', ')}; ${refused} refused)`,
      measured: `${spread(clock)}; of the processor ${ms(median(cpu))} and ${ms(quantile(cpu, 0.99))}`,
      target: `median ${ms(target[0])}, 99 of 100 within ${ms(target[1])}`,
      met: median(clock) <= target[0] && quantile(clock, 0.99) <= target[1],
    });
  }
}

for (const [rows, columns] of PROVED_SIZES) {
  const jigsaws = [];
  for (let seed = 1; jigsaws.length < PROVED; seed++) {
    const years = CLASSES[seed % CLASSES.length];
    const made = composeJigsaw({ years, rowKind: 'sentences', rows, columns, seed, locale: 'en-AU' });
    if (made.ok) jigsaws.push(made.value);
  }
  const proofs = [];
  for (const jigsaw of jigsaws) {
    proofs.push(await timed(() => countTrueAssemblies(makePuzzle(jigsaw), Number.POSITIVE_INFINITY)));
  }
  const told = [];
  for (const jigsaw of jigsaws) told.push((await timed(() => explainJigsaw(jigsaw))).clockMs);
  const beside = [];
  if (rows * columns <= 35) {
    const links = [];
    const sat = [];
    for (const jigsaw of jigsaws.slice(0, COMPARED)) {
      links.push(await timed(() => judge.countByDancingLinks(jigsaw, MOST_FITS)));
      sat.push((await timed(() => judge.countByMinisat(jigsaw, 2))).clockMs);
    }
    const unfinished = links.filter(({ value }) => value.fits >= MOST_FITS).length;
    const clock = links.map(({ clockMs }) => clockMs);
    beside.push(
      `dancing-links ${ms(median(clock))}${unfinished > 0 ? ` (${unfinished} of ${COMPARED} not finished)` : ''}`,
      `MiniSat ${ms(median(sat))}`,
    );
  }
  const nodes = proofs.map(({ value }) => value.nodes);
  tell({
    what: `the proof that one assembly is true, number sentences of ${rows} x ${columns} (${PROVED})`,
    measured: `${spread(proofs.map(({ clockMs }) => clockMs))}; ${count(median(nodes))} pieces laid, at most ${count(Math.max(...nodes))}; told in sentences ${ms(median(told))}`,
    beside: beside.join(', '),
  });
}
tell({
  what: 'greatest memory of the whole benchmark',
  measured: `${count(process.resourceUsage().maxRSS / 1024)} MB`,
});
