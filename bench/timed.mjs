// How long forty equal forms of a level take to make, with their proof, warm: every level of the ladder.
import { composeTimed } from '#engine/activities/timed/compose.js';
import { LADDER } from '#engine/activities/timed/ladder.js';
import { median, timed } from './support/measure.mjs';
import { ms, tell } from './support/tell.mjs';

const FORMS = 40;
const ROUNDS = 6;
const TARGET_MS = 500;

const make = (level, seed) => composeTimed({ level, forms: FORMS, questions: 60, seed, locale: 'en-AU' });

const levels = [];
for (const level of LADDER) {
  const rounds = [];
  for (let seed = 0; seed < ROUNDS; seed++) {
    const time = await timed(() => make(level, seed));
    if (!time.value.ok) throw new Error(`${level.id}: ${time.value.error.message}`);
    // The first warms up.
    if (seed > 0) rounds.push(time);
  }
  levels.push({
    title: level.title,
    clockMs: median(rounds.map(({ clockMs }) => clockMs)),
    cpuMs: median(rounds.map(({ cpuMs }) => cpuMs)),
  });
}
const slowest = levels.toSorted((a, b) => b.clockMs - a.clockMs)[0];
tell({
  what: `${FORMS} equal forms of 60 questions, each of ${levels.length} levels, warm`,
  measured: `median level ${ms(median(levels.map(({ clockMs }) => clockMs)))}, slowest ${ms(slowest.clockMs)} (${slowest.title}); of the processor ${ms(median(levels.map(({ cpuMs }) => cpuMs)))} and ${ms(slowest.cpuMs)}`,
  target: `every level within ${TARGET_MS} ms`,
  met: slowest.clockMs <= TARGET_MS,
});
