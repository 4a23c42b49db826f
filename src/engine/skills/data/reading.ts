// Reading data: tally marks, picture graphs, column graphs, and comparing counts.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import type { Rng } from '../../random/rng.js';
import { borrowsIn, carriesIn, sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

interface Topic {
  readonly title: string;
  readonly labels: readonly [string, string, string, string];
  /** "How many ... chose apples": the people or things counted. */
  readonly who: string;
  readonly did: string;
}

const TOPICS: readonly Topic[] = [
  {
    title: 'Favourite fruit',
    labels: ['apples', 'pears', 'grapes', 'bananas'],
    who: 'children',
    did: 'chose',
  },
  { title: 'Ways to school', labels: ['bus', 'bike', 'car', 'walking'], who: 'children', did: 'came by' },
  { title: 'Pets', labels: ['dogs', 'cats', 'birds', 'fish'], who: 'children', did: 'have' },
  { title: 'Sports', labels: ['soccer', 'netball', 'hockey', 'tennis'], who: 'children', did: 'play' },
];

/** Topics whose labels are plain things, so that every sentence about them reads well. */
const CHOSEN = TOPICS.filter((topic) => topic.did !== 'came by');

/** US spelling where the locale asks for it. */
function titleOf(topic: Topic, colour: string): string {
  return colour === 'color' ? topic.title.replace('Favourite', 'Favorite') : topic.title;
}

function didText(topic: Topic, label: string): string {
  return topic.did === 'came by' && label === 'walking' ? 'came on foot' : `${topic.did} ${label}`;
}

function readTally(count: number, topic: Topic, { locale }: TemplateContext): Draft {
  const bundles = Math.floor(count / 5);
  const rest = count % 5;
  const label = topic.labels[0];
  return {
    text: `The tally shows how many ${topic.who} ${didText(topic, label)}. How many are there?`,
    answer: wholeAnswer(count, locale),
    expression: `${bundles} * 5 + ${rest}`,
    features: { drawn: true, size: bundles > 4 ? 1 : bundles > 2 ? 0.5 : 0, adjust: -0.2 },
    strategy: [
      `${bundles} full ${bundles === 1 ? 'bundle' : 'bundles'}: ${bundles} × 5 = ${bundles * 5}`,
      ...(rest > 0 ? [`${bundles * 5} + ${rest} = ${count}`] : []),
    ],
    slips: [
      ...(bundles > 0
        ? [
            {
              misconception: 'data.bundle-of-four' as const,
              answer: wholeAnswer(bundles * 4 + rest, locale),
            },
            {
              misconception: 'data.bundle-of-ten' as const,
              answer: wholeAnswer(bundles * 10 + rest, locale),
            },
          ]
        : []),
      { misconception: 'shape.one-short', answer: wholeAnswer(count - 1, locale) },
    ],
    figure: { kind: 'tally', rows: [{ label, count }] },
  };
}

function tallyBundles(count: number, asksRest: boolean, { locale }: TemplateContext): Draft {
  const bundles = Math.floor(count / 5);
  const rest = count % 5;
  const text = formatWhole(count, locale);
  return {
    text: asksRest
      ? `${text} is shown as tally marks in bundles of five. How many single marks are left beside the full bundles?`
      : `${text} is shown as tally marks. How many full bundles of five are there?`,
    answer: wholeAnswer(asksRest ? rest : bundles, locale),
    expression: asksRest ? `mod(${count}, 5)` : rest === 0 ? `${count} / 5` : `floor(${count} / 5)`,
    features: {
      size: sizeOf(count) * 0.7,
      fives: true,
      rule: asksRest,
      extraSteps: rest === 0 || asksRest ? 0 : 0.5,
      adjust: -0.2,
    },
    strategy: [
      `${bundles} × 5 = ${formatWhole(bundles * 5, locale)}`,
      ...(rest > 0 ? [`${text} − ${formatWhole(bundles * 5, locale)} = ${rest}`] : []),
    ],
    slips: asksRest
      ? [
          { misconception: 'data.bundle-of-ten', answer: wholeAnswer(count % 10, locale) },
          { misconception: 'data.bundle-of-four', answer: wholeAnswer(count % 4, locale) },
          { misconception: 'group.left-over-given', answer: wholeAnswer(bundles, locale) },
        ]
      : [
          { misconception: 'data.bundle-of-four', answer: wholeAnswer(Math.floor(count / 4), locale) },
          { misconception: 'data.bundle-of-ten', answer: wholeAnswer(Math.floor(count / 10), locale) },
          { misconception: 'group.rounds-up', answer: wholeAnswer(bundles + 1, locale) },
        ],
  };
}

function pictures(
  each: number,
  shown: number,
  half: boolean,
  topic: Topic,
  { locale }: TemplateContext,
): Draft {
  const value = each * shown + (half ? each / 2 : 0);
  const label = topic.labels[1];
  const others = [each * 2, each * 3 + (half ? each / 2 : 0), each];
  return {
    text: `In the picture graph each picture stands for ${each} ${topic.who}. How many ${topic.who} ${didText(topic, label)}?`,
    answer: wholeAnswer(value, locale),
    expression: half ? `${shown} * ${each} + ${each} / 2` : `${shown} * ${each}`,
    features: {
      drawn: true,
      size: each > 5 ? 0.5 : 0,
      fives: each === 5 || each === 10,
      extraSteps: half ? 1 : 0,
    },
    strategy: [
      `${shown} × ${each} = ${shown * each}`,
      ...(half
        ? [`Half a picture: ${each} ÷ 2 = ${each / 2}`, `${shown * each} + ${each / 2} = ${value}`]
        : []),
    ],
    slips: [
      { misconception: 'data.key-ignored', answer: wholeAnswer(shown + (half ? 1 : 0), locale) },
      ...(half
        ? [{ misconception: 'data.key-ignored' as const, answer: wholeAnswer(shown * each + 1, locale) }]
        : []),
      { misconception: 'data.one-left-out', answer: wholeAnswer((shown - 1) * each || each + 1, locale) },
    ],
    figure: {
      kind: 'pictograph',
      title: titleOf(topic, locale.spelling.colour),
      each,
      rows: topic.labels
        .slice(0, 3)
        .map((name, index) => ({ label: name, value: index === 1 ? value : (others[index] ?? each) })),
    },
  };
}

function picturesStand(count: number, each: number, { rng, locale }: TemplateContext): Draft {
  const things = rng.pick(['books', 'trees', 'birds', 'goals', 'visitors']);
  const total = count * each;
  return {
    text: `In a picture graph each picture stands for ${each} ${things}. How many ${things} do ${formatWhole(count, locale)} pictures show?`,
    answer: wholeAnswer(total, locale),
    expression: `${count} * ${each}`,
    features: {
      size: sizeOf(count) * 0.7,
      fives: each === 5,
      rule: each === 10 || each === 100,
      carries: count > 10 && (count % 10) * each >= 10 && each < 10 ? 1 : 0,
    },
    strategy: [`${formatWhole(count, locale)} × ${each} = ${formatWhole(total, locale)}`],
    slips: [
      { misconception: 'data.key-ignored', answer: wholeAnswer(count, locale) },
      { misconception: 'money.added-not-multiplied', answer: wholeAnswer(count + each, locale) },
    ],
  };
}

function picturesNeeded(total: number, each: number, { rng, locale }: TemplateContext): Draft {
  const things = rng.pick(['books', 'trees', 'birds', 'goals', 'visitors']);
  const count = total / each;
  return {
    text: `In a picture graph each picture stands for ${each} ${things}. How many pictures show ${formatWhole(total, locale)} ${things}?`,
    answer: wholeAnswer(count, locale),
    expression: `${total} / ${each}`,
    features: { size: sizeOf(count) * 0.7, unknownInside: true, fives: each === 5, rule: each === 10 },
    strategy: [`${formatWhole(total, locale)} ÷ ${each} = ${formatWhole(count, locale)}`],
    slips: [
      { misconception: 'data.key-ignored', answer: wholeAnswer(total, locale) },
      { misconception: 'money.multiplied-not-shared', answer: wholeAnswer(total * each, locale) },
    ],
  };
}

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
  return {
    text: `In the column graph ${high} ${topic.who} ${did} and ${low} ${topic.did} ${b}. How many more ${did}?`,
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
  const other = values[(index + 1) % 3] ?? 0;
  return {
    text: `How many ${topic.who} ${didText(topic, topic.labels[index] ?? '')} in the column graph?`,
    answer: wholeAnswer(value, locale),
    expression: `${marks} * ${step}`,
    features: { drawn: true, size: step === 1 ? 0 : step === 10 || step === 5 ? 0.5 : 1, adjust: -0.5 },
    strategy: [
      step === 1
        ? 'Go across from the top of the column to the scale.'
        : `The scale goes up in steps of ${step}: ${marks} × ${step} = ${value}`,
    ],
    slips: [
      ...(step > 1
        ? [{ misconception: 'meas.scale-by-ones' as const, answer: wholeAnswer(marks, locale) }]
        : []),
      { misconception: 'data.other-bar', answer: wholeAnswer(other, locale) },
      { misconception: 'shape.one-short', answer: wholeAnswer(value - 1, locale) },
    ],
    figure: chart(values, topic, step, locale.spelling.colour),
  };
}

function total(values: readonly number[], topic: Topic, { locale }: TemplateContext): Draft {
  const sum = values.reduce((all, value) => all + value, 0);
  const first = (values[0] ?? 0) + (values[1] ?? 0);
  const named = values.map((value, index) => `${value} for ${topic.labels[index]}`);
  return {
    text: `In a survey there were ${named.slice(0, -1).join(', ')} and ${named[named.length - 1]}. How many answers is that in all?`,
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
      { misconception: 'data.larger-given', answer: wholeAnswer(Math.max(...values), locale) },
    ],
    figure: chart(values, topic, sum > 60 ? 10 : sum > 24 ? 5 : 2, locale.spelling.colour),
  };
}

function more(high: number, low: number, topic: Topic, { locale }: TemplateContext): Draft {
  const [a, b] = [topic.labels[0], topic.labels[1]];
  return {
    text: `In a survey there were ${formatWhole(high, locale)} for ${a} and ${formatWhole(low, locale)} for ${b}. How many more were for ${a}?`,
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

export const DATA_READING_SKILLS: readonly Skill[] = [
  {
    id: 'data.tally',
    title: 'Read tally marks',
    year: 1,
    fluentYear: 2,
    strand: 'data',
    prerequisites: ['alg.skip'],
    codes: { ac9: ['AC9M1ST02'], england: ['NC-Y2-stats-1'], ccss: ['1.MD.C.4'] },
    templates: [
      { id: 'read', ask: (context) => readTally(context.rng.int(4, 28), context.rng.pick(TOPICS), context) },
      {
        id: 'bundles',
        ask: (context) => tallyBundles(context.rng.int(6, 40), context.rng.chance(0.5), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const count = wholeOn(day, 6, 120);
          if (count === null) return null;
          return using(
            tallyBundles(count, count % 5 !== 0 && context.rng.chance(0.5), context),
            `shows ${day.text} as tally marks`,
          );
        },
      },
    ],
  },
  {
    id: 'data.pictures',
    title: 'Read a picture graph with a key',
    year: 3,
    fluentYear: 4,
    strand: 'data',
    prerequisites: ['data.tally', 'mult.table.5'],
    codes: {
      ac9: ['AC9M3ST02', 'AC9M4ST01'],
      england: ['NC-Y2-stats-1', 'NC-Y3-stats-2'],
      ccss: ['2.MD.D.10', '3.MD.B.3'],
    },
    templates: [
      {
        id: 'graph',
        ask: (context) =>
          pictures(
            context.rng.pick([2, 4, 10]),
            context.rng.int(2, 6),
            context.rng.chance(0.4),
            context.rng.pick(TOPICS),
            context,
          ),
      },
      {
        id: 'stand',
        ask: (context) => picturesStand(context.rng.int(3, 10), context.rng.pick([2, 5, 10]), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const { rng } = context;
          const count = wholeOn(day, 2, 500);
          if (count === null) return null;
          const divisors = [2, 5, 10, 4].filter(
            (each) => count % each === 0 && count / each > 1 && count / each <= 100,
          );
          if (divisors.length > 0 && rng.chance(0.5))
            return using(
              picturesNeeded(count, rng.pick(divisors), context),
              `shows ${day.text} in a picture graph`,
            );
          if (count > 60)
            return divisors.length > 0
              ? using(
                  picturesNeeded(count, rng.pick(divisors), context),
                  `shows ${day.text} in a picture graph`,
                )
              : null;
          return using(picturesStand(count, rng.pick([2, 5, 10, 4]), context), `reads ${day.text} pictures`);
        },
      },
    ],
  },
  {
    id: 'data.columns',
    title: 'Read a column graph',
    year: 2,
    fluentYear: 4,
    strand: 'data',
    prerequisites: ['data.tally'],
    codes: {
      ac9: ['AC9M2ST02', 'AC9M4ST01'],
      england: ['NC-Y3-stats-1', 'NC-Y3-stats-2'],
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
          const values = rng.chance(0.4)
            ? [first, rng.int(2, high)]
            : [first, rng.int(2, high), rng.int(2, high)];
          return using(total(values, rng.pick(CHOSEN), context), `adds ${day.text} answers to others`);
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
          const value = wholeOn(day, 3, 1000);
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
