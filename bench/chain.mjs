// How long a chain of ten takes to make, with its proof, warm: three pairs of years, both orders. Beside it MiniSat counts
// the runs of the same chains.
import { runnerImport } from 'vite';
import { composeChain } from '#engine/activities/chain/compose.js';
import { proveChain } from '#engine/activities/chain/proof.js';
import { localeOf } from '#engine/numbers/locale.js';
import { median, quantile, ROOT, timed } from './support/measure.mjs';
import { ms, tell } from './support/tell.mjs';

const CLASSES = [
  [1, 2],
  [3, 4],
  [5, 6],
];
const WARM_UP = 40;
const CHAINS = 200;
const COMPARED = 60;
const TARGET = { median: 2, most: 20 };
const locale = localeOf('en-AU');

const load = async (path) =>
  (
    await runnerImport(`${ROOT}${path}`, {
      configFile: false,
      logLevel: 'error',
      root: ROOT,
      resolve: { conditions: ['afterbell-source', 'node'] },
    })
  ).module;
const { countRunsByMinisat } = await load('test/contract/chain-runs-minisat.ts');
const { arrowsOf } = await load('test/contract/chain-checker.ts');

const spread = (times) => `median ${ms(median(times))}, 99 of 100 within ${ms(quantile(times, 0.99))}`;

for (const order of ['graded', 'mixed']) {
  const made = [];
  for (let seed = 0; seed < WARM_UP + CHAINS; seed++) {
    for (const years of CLASSES) {
      const time = await timed(() => composeChain({ years, cards: 10, order, seed, locale: 'en-AU' }));
      if (!time.value.ok) throw new Error(time.value.error.message);
      if (seed >= WARM_UP) made.push({ ...time, years, chain: time.value.value });
    }
  }
  const clock = made.map(({ clockMs }) => clockMs);
  const cpu = made.map(({ cpuMs }) => cpuMs);
  const byClass = CLASSES.map((years) => {
    const own = made.filter((time) => time.years === years).map(({ clockMs }) => clockMs);
    return `years ${years.join('-')} ${ms(median(own))}`;
  });
  tell({
    what: `a chain of 10 with its proof, ${order}, warm (${made.length} chains: ${byClass.join(', ')})`,
    measured: `${spread(clock)}; of the processor ${ms(median(cpu))} and ${ms(quantile(cpu, 0.99))}`,
    target: `median ${TARGET.median} ms, 99 of 100 within ${TARGET.most} ms`,
    met: median(clock) <= TARGET.median && quantile(clock, 0.99) <= TARGET.most,
  });

  const proofs = [];
  const bySat = [];
  for (const { chain } of made.slice(0, COMPARED)) {
    proofs.push((await timed(() => proveChain(chain.cards, locale))).clockMs);
    const arrows = arrowsOf(chain.cards);
    const counted = await timed(() => countRunsByMinisat(arrows, 2));
    if (counted.value !== chain.proof.fullRuns)
      throw new Error(`seed ${chain.seed}: MiniSat finds ${counted.value}`);
    bySat.push(counted.clockMs);
  }
  tell({
    what: `the proof alone, ${order} (${proofs.length} chains)`,
    measured: spread(proofs),
    beside: `the count alone: MiniSat ${spread(bySat)}`,
  });
}
