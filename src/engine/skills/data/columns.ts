// Column graphs, and totals and differences in a survey.
import { countOf } from '../story.js';
import { columnGraph } from '../../figures/words.js';
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import type { Rng } from '../../random/rng.js';
import { borrowsIn, carriesIn, sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { CHOSEN, didText, titleOf, TOPICS, type Topic } from './topics.js';

function chart(values: readonly number[], topic: Topic, step: number, colour: string) {
  return {
    kind: 'bar-chart' as const,
    title: titleOf(topic, colour),
    unit: topic.who,
    bars: values.map((value, index) => ({ label: topic.labels[index] ?? 'other', value })),
    step,
  };
}

function howManyMore(
  values: readonly [number, number, number],
  topic: Topic,
  step: number,
  { locale }: TemplateContext,
): Draft {
  const [first, second] = values[0] >= values[1] ? [0, 1] : [1, 0];
  const high = values[first] ?? 0;
  const low = values[second] ?? 0;
  const [a, b] = [topic.labels[first] ?? '', topic.labels[second] ?? ''];
  const did = `${topic.did} ${a}`;
  const fewDid = low === 1 ? topic.did.replace(/^have$/, 'has').replace(/^like$/, 'likes') : topic.did;
  return {
    text: `${high} ${topic.who} ${did} and ${low} ${fewDid} ${b}. How many more ${did}?`,
    answer: wholeAnswer(high - low, locale),
    expression: `${high} - ${low}`,
    features: { drawn: true, size: sizeOf(high) * 0.6, carries: borrowsIn(high, low) },
    strategy: [`${low} + ${high - low} = ${high}`],
    slips: [
      { misconception: 'data.added-not-compared', answer: wholeAnswer(high + low, locale) },
      { misconception: 'data.larger-given', answer: wholeAnswer(high, locale) },
    ],
    figure: chart(values, topic, step, locale.spelling.colour),
  };
}

function readBar(
  values: readonly [number, number, number],
  topic: Topic,
  step: number,
  { rng, locale }: TemplateContext,
): Draft {
  const index = rng.int(0, 2);
  const value = values[index] ?? 0;
  const marks = value / step;
  const other = values[index === 2 ? 1 : index + 1] ?? 0;
  return {
    text: `In the ${columnGraph(locale)}, how many ${topic.who} ${didText(topic, topic.labels[index] ?? '')}?`,
    answer: wholeAnswer(value, locale),
    expression: `${marks} * ${step}`,
    features: { drawn: true, size: step === 1 ? 0 : step === 10 || step === 5 ? 0.5 : 1, adjust: -0.5 },
    strategy: [
      step === 1
        ? `Go across from the top of the column to the scale: ${value}`
        : `The scale goes up in steps of ${step}: ${marks} × ${step} = ${value}`,
    ],
    slips: [
      ...(step > 1
        ? [{ misconception: 'meas.scale-by-ones' as const, answer: wholeAnswer(marks, locale) }]
        : []),
      { misconception: 'data.other-bar', answer: wholeAnswer(other, locale) },
      ...(marks > 1
        ? [{ misconception: 'shape.one-short' as const, answer: wholeAnswer(value - step, locale) }]
        : []),
    ],
    figure: chart(values, topic, step, locale.spelling.colour),
  };
}

function total(values: readonly number[], topic: Topic, { locale }: TemplateContext): Draft {
  const sum = values.reduce((all, value) => all + value, 0);
  const first = (values[0] ?? 0) + (values[1] ?? 0);
  const named = values.map((value, index) => `${topic.labels[index]} ${formatWhole(value, locale)}`);
  return {
    text: `Votes: ${named.join(', ')}. How many votes in all?`,
    answer: wholeAnswer(sum, locale),
    expression: values.join(' + '),
    features: {
      size: sizeOf(sum) * 0.6,
      carries:
        carriesIn(values[0] ?? 0, values[1] ?? 0) +
        (values[2] === undefined ? 0 : carriesIn(first, values[2])),
      extraSteps: values.length - 2,
      story: true,
    },
    strategy: [
      `${values[0]} + ${values[1]} = ${first}`,
      ...(values[2] === undefined ? [] : [`${first} + ${values[2]} = ${sum}`]),
    ],
    slips: [
      {
        misconception: 'data.one-left-out',
        answer: wholeAnswer(sum - (values[values.length - 1] ?? 0), locale),
      },
    ],
    figure: chart(values, topic, sum > 60 ? 10 : sum > 24 ? 5 : 2, locale.spelling.colour),
  };
}

function more(high: number, low: number, topic: Topic, { locale }: TemplateContext): Draft {
  const [a, b] = [topic.labels[0], topic.labels[1]];
  return {
    text: `Votes: ${a} ${formatWhole(high, locale)}, ${b} ${formatWhole(low, locale)}. How many more for ${a}?`,
    answer: wholeAnswer(high - low, locale),
    expression: `${high} - ${low}`,
    features: { size: sizeOf(high) * 0.6, carries: borrowsIn(high, low), story: true },
    strategy: [
      `${formatWhole(low, locale)} + ${formatWhole(high - low, locale)} = ${formatWhole(high, locale)}`,
    ],
    slips: [
      { misconception: 'data.added-not-compared', answer: wholeAnswer(high + low, locale) },
      { misconception: 'data.larger-given', answer: wholeAnswer(high, locale) },
    ],
  };
}

function threeValues(rng: Rng, step: number, top: number): [number, number, number] {
  const first = rng.int(2, top - 1) * step;
  let second = rng.int(1, top) * step;
  if (second === first) second = first + step;
  return [first, second, rng.int(1, top) * step];
}

export const COLUMN_SKILLS: readonly Skill[] = [
  {
    id: 'data.columns',
    title: 'Read a graph of columns or bars',
    year: 2,
    fluentYear: 4,
    strand: 'data',
    prerequisites: ['data.tally'],
    codes: {
      ac9: ['AC9M2ST02', 'AC9M4ST01'],
      england: ['NC-Y3-stats-1', 'NC-Y3-stats-2', 'NC-Y2-stats-2'],
      ccss: ['2.MD.D.10', '3.MD.B.3'],
    },
    templates: [
      {
        id: 'read',
        ask: (context) => {
          const step = context.rng.pick([1, 1, 2, 5, 10]);
          return readBar(
            threeValues(context.rng, step, step === 1 ? 10 : 8),
            context.rng.pick(TOPICS),
            step,
            context,
          );
        },
      },
      {
        id: 'more',
        ask: (context) => {
          const step = context.rng.pick([1, 2, 5]);
          return howManyMore(threeValues(context.rng, step, 9), context.rng.pick(CHOSEN), step, context);
        },
      },
    ],
  },
  {
    id: 'data.survey',
    title: 'Find totals and differences in a survey',
    year: 3,
    fluentYear: 4,
    strand: 'data',
    prerequisites: ['data.columns', 'add.three', 'sub.difference'],
    codes: {
      ac9: ['AC9M3ST02'],
      england: ['NC-Y3-stats-2', 'NC-Y4-stats-2'],
      ccss: ['1.MD.C.4', '3.MD.B.3'],
    },
    templates: [
      {
        id: 'total',
        ask: (context) =>
          total(threeValues(context.rng, 1, 20), TOPICS[0] ?? context.rng.pick(TOPICS), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const { rng } = context;
          const first = wholeOn(day, 1, 200);
          if (first === null) return null;
          const high = Math.max(4, Math.min(60, first * 2));
          // A column of less than a twentieth of the tallest cannot be seen.
          const low = Math.max(2, Math.ceil(first / 20));
          const values = rng.chance(0.4)
            ? [first, rng.int(low, high)]
            : [first, rng.int(low, high), rng.int(low, high)];
          return using(
            total(values, rng.pick(CHOSEN), context),
            `adds ${countOf(day.value.n, 'answers', day.text)} to others`,
          );
        },
      },
      {
        id: 'more',
        ask: (context) => {
          const high = context.rng.int(12, 60);
          return more(high, context.rng.int(2, high - 2), context.rng.pick(CHOSEN), context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const { rng } = context;
          const value = wholeOn(day, 3, 1_000_000);
          if (value === null) return null;
          const topic = rng.pick(CHOSEN);
          const isHigh = rng.chance(0.6);
          const other = isHigh
            ? rng.int(1, value - 1)
            : value + rng.int(2, Math.max(5, Math.floor(value / 2)));
          return using(
            isHigh ? more(value, other, topic, context) : more(other, value, topic, context),
            `compares ${day.text} answers with others`,
          );
        },
      },
    ],
  },
];
