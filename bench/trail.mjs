// How long a trail takes to make, with its proof, warm: both sizes the targets name, three pairs of years. Beside it two
// solvers of other makers count the arrangements of the same trails.
import process from 'node:process';
import { runnerImport } from 'vite';
import { composeTrail } from '#engine/activities/trail/compose.js';
import { drawMat, drawSolved } from '#engine/activities/trail/draw/draw-mat.js';
import { drawTile } from '#engine/activities/trail/draw/draw-tile.js';
import { proveTrail } from '#engine/activities/trail/proof.js';
import { Press } from '#print/press.js';
import { median, quantile, ROOT, timed } from './support/measure.mjs';
import { ms, tell } from './support/tell.mjs';

const CLASSES = [
  [1, 2],
  [3, 4],
  [5, 6],
];
const WARM_UP = 30;
const TRAILS = 150;
/** MiniSat takes a tenth of a second a trail. */
const COMPARED = { 16: 20, 36: 5 };
const TARGETS = {
  16: { median: 5, most: 50 },
  36: { median: 50, most: 500 },
};

const { module: judge } = await runnerImport(`${ROOT}test/contract/trail-solvers.ts`, {
  configFile: false,
  logLevel: 'error',
  root: ROOT,
  resolve: { conditions: ['afterbell-source', 'node'] },
});

const spread = (times) => `median ${ms(median(times))}, 99 of 100 within ${ms(quantile(times, 0.99))}`;

for (const [rows, columns] of [
  [4, 4],
  [6, 6],
]) {
  const cells = rows * columns;
  const made = [];
  const trails = [];
  for (let seed = 0; seed < WARM_UP + TRAILS; seed++) {
    for (const years of CLASSES) {
      const time = await timed(() => composeTrail({ years, rows, columns, seed, locale: 'en-AU' }));
      if (!time.value.ok) throw new Error(time.value.error.message);
      if (seed < WARM_UP) continue;
      made.push({ ...time, years });
      if (trails.length < 30) trails.push(time.value.value);
    }
  }
  const clock = made.map(({ clockMs }) => clockMs);
  const cpu = made.map(({ cpuMs }) => cpuMs);
  const byClass = CLASSES.map((years) => {
    const own = made.filter((time) => time.years === years).map(({ clockMs }) => clockMs);
    return `years ${years.join('-')} ${ms(median(own))}`;
  });
  const { median: half, most } = TARGETS[cells];
  tell({
    what: `a trail of ${rows} x ${columns} with its proof, warm (${made.length} trails: ${byClass.join(', ')})`,
    measured: `${spread(clock)}; of the processor ${ms(median(cpu))} and ${ms(quantile(cpu, 0.99))}`,
    target: `median ${half} ms, 99 of 100 within ${most} ms`,
    met: median(clock) <= half && quantile(clock, 0.99) <= most,
  });

  const proofs = [];
  const byLinks = [];
  const bySat = [];
  for (const trail of trails.slice(0, COMPARED[cells])) {
    proveTrail(trail);
    proofs.push((await timed(() => proveTrail(trail))).clockMs);
    byLinks.push((await timed(() => judge.countByDancingLinks(trail, 2))).clockMs);
    bySat.push((await timed(() => judge.countByMinisat(trail, 2))).clockMs);
  }
  tell({
    what: `the proof alone, ${rows} x ${columns} (${proofs.length} trails)`,
    measured: spread(proofs),
    beside: `the count alone: dancing-links median ${ms(median(byLinks))}, MiniSat ${ms(median(bySat))}`,
  });

  const drawn = [];
  for (const trail of trails) {
    const draw = () => [drawMat(trail), drawSolved(trail), ...trail.tiles.map((_, i) => drawTile(trail, i))];
    draw();
    drawn.push((await timed(draw)).clockMs);
  }
  tell({
    what: `drawing its mat, its tiles and the mat laid, ${rows} x ${columns}`,
    measured: spread(drawn),
  });
}

const SETS = 10;
const SETS_TARGET_MS = 3000;
const press = new Press();
const jobs = [];
let pages = 0;
for (let round = 0; round < 5; round++) {
  const job = await timed(async () => {
    const sets = Array.from({ length: SETS }, (_, at) => {
      const wish = { years: [3, 4], rows: 4, columns: 4, seed: 1000 * round + at, locale: 'en-AU' };
      return { number: at + 1, activity: composeTrail(wish).value };
    });
    const options = { locale: 'en-AU' };
    return press.printKit({ activity: 'trail', document: 'kit', sets, paper: 'A4', options });
  });
  if (!job.value.ok) throw new Error(job.value.error.message);
  pages = job.value.value.pages;
  if (round > 0) jobs.push(job);
}
const clocks = jobs.map(({ clockMs }) => clockMs);
tell({
  what: `${SETS} sets of 4 x 4 made and printed, the whole kit (${pages} pages)`,
  measured: `median ${ms(median(clocks))}; of the processor ${ms(median(jobs.map(({ cpuMs }) => cpuMs)))}`,
  target: `${ms(SETS_TARGET_MS)}`,
  met: median(clocks) <= SETS_TARGET_MS,
});
tell({
  what: 'most memory of this process, at any time of all the above',
  measured: `${Math.round(process.resourceUsage().maxRSS / 1024)} MB`,
});
