// How long a board takes to compose, warm, for a class of 27: over numbers of all kinds, class years and both sides; and
// how long the class model takes to build from a year of answers. Run after `npm run build`: node bench/compose.mjs
import { composeBoard } from '#engine/activities/board/compose.js';
import { buildClassModel, typicalClass } from '#engine/learning/class-model.js';
import { addDays } from '#engine/numbers/calendar.js';
import { parseDayNumber } from '#engine/numbers/day-number.js';
import { localeOf } from '#engine/numbers/locale.js';
import { Rng } from '#engine/random/rng.js';
import { SKILLS } from '#engine/skills/map.js';

const NUMBERS = ['7', '47', '305', '3.6', '$4.85', '3/4'];
const CLASSES = [
  [1, 2],
  [3, 4],
  [4, 5],
  [5, 6],
];
const ROUNDS = 6;
const TARGET_MS = 20;

function quantile(times, share) {
  return [...times].sort((a, b) => a - b)[Math.floor(share * (times.length - 1))];
}

/** Processor time, which other programs on the machine do not stretch, and time on the clock. */
function measure(run) {
  const cpu = process.cpuUsage();
  const start = process.hrtime.bigint();
  run();
  const clockMs = Number(process.hrtime.bigint() - start) / 1e6;
  const { user, system } = process.cpuUsage(cpu);
  return { clockMs, cpuMs: (user + system) / 1000 };
}

const all = [];
for (const years of CLASSES) {
  const classModel = typicalClass(years, 27);
  const taken = [];
  for (let seed = 0; seed < ROUNDS; seed++) {
    for (const text of NUMBERS) {
      const number = parseDayNumber(text, localeOf('en-AU')).value;
      for (const side of ['front', 'back']) {
        const time = measure(() => composeBoard({ number, years, side, seed, locale: 'en-AU', classModel }));
        // The first round warms the compiler up.
        if (seed > 0) taken.push(time);
      }
    }
  }
  all.push(...taken);
  report(`years ${years.join('-')}`, taken);
}
report(`compose, ${all.length} boards, ${SKILLS.length} skills, 27 children, target ${TARGET_MS} ms`, all);

function report(name, taken) {
  const cpu = taken.map((time) => time.cpuMs);
  const clock = taken.map((time) => time.clockMs);
  const [half, most] = [quantile(cpu, 0.5).toFixed(1), quantile(cpu, 0.9).toFixed(1)];
  console.log(
    `${name}: median ${half} ms of processor time, 9 of 10 within ${most} ms; median ${quantile(clock, 0.5).toFixed(1)} ms on the clock`,
  );
}

const rng = new Rng(1);
const children = Array.from({ length: 27 }, (_, i) => ({
  id: String(i),
  year: 4 + (i % 2),
  answers: Array.from({ length: 40 * 12 }, (_, k) => ({
    skill: rng.pick(SKILLS).id,
    difficulty: rng.unit() * 2 - 1,
    right: rng.chance(0.7),
    on: addDays('2026-02-06', 7 * Math.floor(k / 12)),
    questionId: `q${k}`,
    slips: [],
  })),
}));
const build = measure(() => buildClassModel({ children, on: '2026-12-01' }));
const answers = children.length * 480;
console.log(
  `class model from ${answers} answers of a year: ${build.cpuMs.toFixed(0)} ms of processor time, ${((1000 * build.cpuMs) / answers).toFixed(0)} µs an answer`,
);
const median = quantile(
  all.map((time) => time.cpuMs),
  0.5,
);
process.exitCode = median > TARGET_MS ? 1 : 0;
