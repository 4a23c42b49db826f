// How many questions a second the engine makes, over the whole skill map, in one thread.
import { localeOf } from '#engine/numbers/locale.js';
import { generateQuestions } from '#engine/questions/generate.js';
import { SKILLS } from '#engine/skills/map.js';
import { median, timed } from './support/measure.mjs';
import { count, tell } from './support/tell.mjs';

const EACH = 40;
const ROUNDS = 5;
const locale = localeOf('en-AU');

const rates = [];
const processorRates = [];
const slowest = new Map();
for (let round = 0; round <= ROUNDS; round++) {
  const { clockMs, cpuMs } = await timed(() => {
    for (const skill of SKILLS) {
      const start = performance.now();
      generateQuestions(skill, EACH, round, locale);
      if (round > 0) slowest.set(skill.id, (slowest.get(skill.id) ?? 0) + performance.now() - start);
    }
  });
  // The first round warms the compiler up.
  if (round === 0) continue;
  rates.push((1000 * SKILLS.length * EACH) / clockMs);
  processorRates.push((1000 * SKILLS.length * EACH) / cpuMs);
}
const [id, ms] = [...slowest].sort((a, b) => b[1] - a[1])[0];
tell({
  what: `questions of ${SKILLS.length} skills, complete with slips, strategy and figure`,
  measured: `${count(median(rates))} a second (${count(median(processorRates))} a processor second); the slowest skill (${id}) ${count((1000 * EACH * ROUNDS) / ms)} a second`,
});
