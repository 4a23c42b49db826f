// Which group has more, and tally marks.
import { formatWhole } from '../../numbers/format.js';
import { choiceAnswer, wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { CHOSEN, didText, TOPICS, type Topic } from './topics.js';

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
      `So there are more votes for ${right}`,
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

/** What full bundles make, counted by fives as children count before they multiply; many of them two at a time, by tens. */
function bundleSteps(bundles: number): string[] {
  const makes = (count: number) => `${count} bundles make ${count * 5}`;
  if (bundles === 1) return ['1 bundle makes 5'];
  if (bundles <= 6)
    return [`${bundles} bundles: ${Array.from({ length: bundles }, (_, i) => 5 * (i + 1)).join(', ')}`];
  const even = bundles - (bundles % 2);
  return [
    `2 bundles make 10, so ${makes(even)}`,
    ...(bundles > even ? [`With one more, ${makes(bundles)}`] : []),
  ];
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
        : [...bundleSteps(bundles), ...(rest > 0 ? [`${bundles * 5} + ${rest} = ${count}`] : [])],
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
      ...bundleSteps(bundles),
      ...(asksRest
        ? [
            rest > 0
              ? `${text} − ${formatWhole(bundles * 5, locale)} = ${rest}`
              : 'No single mark is left over',
          ]
        : rest > 0
          ? [
              `${rest} more ${rest === 1 ? 'mark is' : 'marks are'} too few for another: ${bundles} full ${bundles === 1 ? 'bundle' : 'bundles'}`,
            ]
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
];
