// How long a board takes to compose, warm, for a class of 27 with a year behind it: numbers of all kinds, class years and
// both sides. Beside it the exact solver HiGHS, on tasks reduced to about eighty candidates, which it can finish.
import highsLoader from 'highs';
import { runnerImport } from 'vite';
import { composeBoard } from '#engine/activities/board/compose.js';
import { searchLadder } from '#engine/activities/board/search.js';
import { buildClassModel } from '#engine/learning/class-model.js';
import { parseDayNumber } from '#engine/numbers/day-number.js';
import { localeOf } from '#engine/numbers/locale.js';
import { SKILLS } from '#engine/skills/map.js';
import { CHILDREN, markedChildren, TODAY } from './support/marked-class.mjs';
import { median, quantile, ROOT, timed } from './support/measure.mjs';
import { ms, tell } from './support/tell.mjs';

const NUMBERS = ['7', '47', '305', '3.6', '$4.85', '3/4'];
const CLASSES = [
  [1, 2],
  [3, 4],
  [4, 5],
  [5, 6],
];
const ROUNDS = 6;
const TARGET_MS = 20;
const SOLVED_TASKS = 5;

const all = [];
const perClass = [];
for (const years of CLASSES) {
  const classModel = buildClassModel({ children: markedChildren(years), on: TODAY });
  const taken = [];
  for (let seed = 0; seed <= ROUNDS; seed++) {
    for (const text of NUMBERS) {
      const number = parseDayNumber(text, localeOf('en-AU')).value;
      for (const side of ['front', 'back']) {
        const time = await timed(() =>
          composeBoard({ number, years, side, seed, locale: 'en-AU', classModel }),
        );
        // The first round warms the compiler up.
        if (seed > 0) taken.push(time);
      }
    }
  }
  perClass.push(`years ${years.join('-')} ${ms(median(taken.map((time) => time.clockMs)))}`);
  all.push(...taken);
}
const clock = all.map((time) => time.clockMs);
const cpu = all.map((time) => time.cpuMs);
tell({
  what: `a board for ${CHILDREN} children with a year of answers, warm (${all.length} boards of ${NUMBERS.join(', ')}; ${SKILLS.length} skills)`,
  measured: `median ${ms(median(clock))}, 99 of 100 within ${ms(quantile(clock, 0.99))}; of the processor ${ms(median(cpu))} and ${ms(quantile(cpu, 0.99))}`,
  target: `median ${TARGET_MS} ms`,
  met: median(clock) <= TARGET_MS,
});
tell({ what: 'the same, median by class', measured: perClass.join(', ') });

const { module: judge } = await runnerImport(`${ROOT}test/support/ladder-program.ts`, {
  configFile: false,
  logLevel: 'error',
  root: ROOT,
  resolve: { conditions: ['afterbell-source', 'node'] },
});
const highs = await highsLoader();
const found = { search: [], solver: [], gaps: [] };
for (let seed = 1; seed <= SOLVED_TASKS; seed++) {
  const task = judge.sampledTask(seed);
  const program = judge.programOf(task);
  searchLadder(task);
  const search = await timed(() => searchLadder(task));
  const solver = await timed(() => highs.solve(program, { time_limit: 120, mip_rel_gap: 0.0001 }));
  found.search.push(search.clockMs);
  found.solver.push(solver.clockMs);
  found.gaps.push(search.value.objective / (solver.value.ObjectiveValue + judge.constantOf(task)) - 1);
}
const percent = (share) => `${(100 * Math.max(0, share)).toFixed(2)} %`;
tell({
  what: `the search alone, on ${SOLVED_TASKS} tasks of about 80 candidates`,
  measured: `median ${ms(median(found.search))}; above the exact optimum by ${percent(median(found.gaps))}, at most ${percent(Math.max(...found.gaps))}`,
  beside: `HiGHS, exact: median ${ms(median(found.solver))}`,
});
