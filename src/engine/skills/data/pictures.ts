// Picture graphs with a key.
import { pictureGraph } from '../../figures/words.js';
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { didText, titleOf, TOPICS, type Topic } from './topics.js';

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

const THINGS = ['books', 'trees', 'birds', 'goals', 'visitors'] as const;

function picturesStand(count: number, each: number, { rng, locale }: TemplateContext): Draft {
  const things = rng.pick(THINGS);
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
  const things = rng.pick(THINGS);
  const count = total / each;
  return {
    text: `One picture stands for ${each} ${things}. How many pictures show ${formatWhole(total, locale)} ${things}?`,
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

export const PICTURE_SKILLS: readonly Skill[] = [
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
          // A row of more than twenty pictures would want a larger key.
          const divisors = [2, 4, 5, 10, 20, 50].filter(
            (each) => count % each === 0 && count / each > 1 && count / each <= 20,
          );
          // So many pictures are not drawn in a row; there the number is what they stand for.
          const isTotal = count > 60 || rng.chance(0.5);
          if (isTotal && divisors.length > 0)
            return using(
              picturesNeeded(count, rng.pick(divisors), context),
              `shows ${day.text} in a ${pictureGraph(context.locale)}`,
            );
          if (count > 60) return null;
          return using(picturesStand(count, rng.pick([2, 5, 10, 4]), context), `reads ${day.text} pictures`);
        },
      },
    ],
  },
];
