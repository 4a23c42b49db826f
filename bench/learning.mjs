// What the learner model costs: a year of answers of a class, one more answer, one child, a class prediction.
import { buildClassModel, predictClass } from '#engine/learning/class-model.js';
import { afterAnswer } from '#engine/learning/update.js';
import { SKILLS } from '#engine/skills/map.js';
import { markedChildren, ANSWERS_EACH, CHILDREN, TODAY } from './support/marked-class.mjs';
import { median, timed } from './support/measure.mjs';
import { count, ms, tell } from './support/tell.mjs';

const children = markedChildren([4, 5]);
const builds = [];
const processor = [];
const singles = [];
let model = null;
for (let round = 0; round < 4; round++) {
  const built = await timed(() => buildClassModel({ children, on: TODAY }));
  model = built.value;
  const single = await timed(() => buildClassModel({ children: [children[round]], on: TODAY }));
  if (round === 0) continue;
  builds.push(built.clockMs);
  processor.push(built.cpuMs);
  singles.push(single.clockMs);
}
const answers = CHILDREN * ANSWERS_EACH;
tell({
  what: `class model from a year of answers (${CHILDREN} children x ${ANSWERS_EACH}, ${SKILLS.length} skills)`,
  measured: `${ms(median(builds))}, ${ms(median(builds) / answers)} an answer; of the processor ${ms(median(processor))}`,
});
tell({ what: `one child's model from ${ANSWERS_EACH} answers`, measured: ms(median(singles)) });

const { state } = model.children[0];
const updates = [];
for (let i = 0; i < 400; i++) {
  const { clockMs } = await timed(() => afterAnswer(state, i % SKILLS.length, 0, i % 3 > 0));
  if (i >= 100) updates.push(clockMs);
}
tell({ what: 'one more answer, all skills moved', measured: ms(median(updates)) });

// The same class is asked about hundreds of questions for a board; what does not change is kept between them.
const PREDICTIONS = 20_000;
const predict = () => {
  for (let i = 0; i < PREDICTIONS; i++) predictClass(model, SKILLS[i % SKILLS.length].id, (i % 7) / 3 - 1);
};
predict();
const { clockMs } = await timed(predict);
tell({
  what: 'predicted share of the class for a question',
  measured: `${count((1000 * PREDICTIONS) / clockMs)} a second`,
});
