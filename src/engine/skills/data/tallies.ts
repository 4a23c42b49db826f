// Tally marks and picture graphs.
import { pictureGraph } from '../../figures/words.js';
import { formatWhole } from '../../numbers/format.js';
import { choiceAnswer, wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { CHOSEN, didText, titleOf, TOPICS, type Topic } from './topics.js';

function whichMore(first: number, second: number, topic: Topic, { rng, locale }: TemplateContext): Draft {
  const [a, b] = rng.chance(0.5) ? [0, 1] : [1, 0];
  const [nameA, nameB] = [topic.labels[a] ?? '', topic.labels[b] ?? ''];
  const right = first > second ? nameA : nameB;
  const wrong = right === nameA ? nameB : nameA;
  const gap = Math.abs(first - second);
  return {
    text: `Which has more votes: ${nameA} (${formatWhole(first, locale)}) or ${nameB} (${formatWhole(second, locale)})?`,
    answer: choiceAnswer(right),
    expression: null,
    features: {
      fewChoices: true,
      drawn: true,
      size: Math.max(first, second) > 10 ? 0.5 : 0,
      adjust: gap > 2 ? -0.3 : 0,
    },
    strategy: [
      `${formatWhole(Math.max(first, second), locale)} is more than ${formatWhole(Math.min(first, second), locale)}`,
      `So more for ${right}`,
    ],
    slips: [{ misconception: 'data.other-row', answer: choiceAnswer(wrong) }],
    figure: {
      kind: 'tally',
      rows: [
        { label: nameA, count: first },
        { label: nameB, count: second },
      ],
    },
  };
}

function readTally(count: number, topic: Topic, { locale }: TemplateContext): Draft {
  const bundles = Math.floor(count / 5);
  const rest = count % 5;
  const label = topic.labels[0];
  return {
    text: `In the tally, how many ${topic.who} ${didText(topic, label)}?`,
    answer: wholeAnswer(count, locale),
    expression: `${bundles} * 5 + ${rest}`,
    features: { drawn: true, size: bundles > 4 ? 1 : bundles > 2 ? 0.5 : 0, adjust: -0.2 },
    strategy:
      bundles === 0
        ? [`There is no full bundle: count the single strokes, ${count}`]
        : [
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
      ? `You tally ${text} in bundles of five. How many single marks are left over?`
      : `You tally ${text}. How many full bundles of five do you draw?`,
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
      ...(rest > 0
        ? [`${text} − ${formatWhole(bundles * 5, locale)} = ${rest}`]
        : asksRest
          ? ['No single mark is left over']
          : []),
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
          ...(rest > 0
            ? [{ misconception: 'group.rounds-up' as const, answer: wholeAnswer(bundles + 1, locale) }]
            : []),
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
    text: `In the ${pictureGraph(locale)}, how many ${topic.who} ${didText(topic, label)}?`,
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
        ? [shown, shown + 1].map((count) => ({
            misconception: 'data.half-picture' as const,
            answer: wholeAnswer(count * each, locale),
          }))
        : []),
      { misconception: 'shape.one-short', answer: wholeAnswer(value - each, locale) },
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
    text: `One picture stands for ${each} ${things}. How many do ${formatWhole(count, locale)} pictures show?`,
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
    text: `One picture stands for ${each} ${things}. How many pictures show ${formatWhole(total, locale)}?`,
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

export const TALLY_SKILLS: readonly Skill[] = [
  {
    id: 'data.more',
    family: 'which is greater',
    title: 'Say which group has more',
    year: 0,
    fluentYear: 1,
    strand: 'data',
    prerequisites: ['place.compare.20'],
    codes: { ac9: ['AC9MFST01'], england: [], ccss: ['K.MD.B.3'] },
    templates: [
      {
        id: 'more',
        ask: (context) => {
          const first = context.rng.int(3, 14);
          const second = first + context.rng.pick([-1, 1]) * context.rng.int(1, 6);
          return whichMore(first, second < 2 ? first + 2 : second, context.rng.pick(CHOSEN), context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const first = wholeOn(day, 2, 20);
          if (first === null) return null;
          const second = first + context.rng.pick([-1, 1]) * context.rng.int(1, 6);
          return using(
            whichMore(first, second < 2 ? first + 2 : second, context.rng.pick(CHOSEN), context),
            `compares a group of ${day.text} with another`,
          );
        },
      },
    ],
  },
  {
    id: 'data.tally',
    title: 'Read tally marks',
    year: 1,
    fluentYear: 2,
    strand: 'data',
    prerequisites: ['data.more', 'alg.skip'],
    codes: { ac9: ['AC9M1ST02'], england: ['NC-Y2-stats-1', 'NC-Y2-stats-2'], ccss: ['1.MD.C.4'] },
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
              `shows ${day.text} in a ${pictureGraph(context.locale)}`,
            );
          if (count > 60)
            return divisors.length > 0
              ? using(
                  picturesNeeded(count, rng.pick(divisors), context),
                  `shows ${day.text} in a ${pictureGraph(context.locale)}`,
                )
              : null;
          return using(picturesStand(count, rng.pick([2, 5, 10, 4]), context), `reads ${day.text} pictures`);
        },
      },
    ],
  },
];
