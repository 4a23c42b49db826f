// Chance as a number: fractions, the chance that something does not happen, what to expect.
import { countOf } from '../story.js';
import { formatWhole } from '../../numbers/format.js';
import { type Rational, rational, subtract, toNumber } from '../../numbers/rational.js';
import { choiceAnswer, fractionAnswer, wholeAnswer, writtenAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import {
  type Quantity,
  quantity,
  quantityAnswer,
  shown,
  sizeOf,
  using,
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { outOf } from './out-of.js';
import { COLOURS, spinner } from './spinners.js';

function fractionWord(chance: Quantity, { rng }: TemplateContext): Draft {
  const doubled = chance.value.n * 2 - chance.value.d;
  const event = rng.pick(['rain tomorrow', 'winning the game', 'a red spin', 'seeing a bird']);
  const right = doubled === 0 ? 'even' : doubled < 0 ? 'unlikely' : 'likely';
  const others = ['unlikely', 'even', 'likely'].filter((word) => word !== right);
  return {
    text: `The chance of ${event} is ${chance.text}. Is that unlikely, even or likely?`,
    answer: choiceAnswer(right),
    expression: null,
    features: { fewChoices: true, size: chance.value.d > 5 ? 0.7 : 0, adjust: -1 },
    strategy: [
      doubled === 0 ? 'Exactly one half is an even chance' : `${chance.text} ${doubled < 0 ? '<' : '>'} 1/2`,
      `So it is ${right}`,
    ],
    slips: others.map((word) => ({
      misconception:
        word === 'even'
          ? ('data.half-or-half' as const)
          : right === 'even'
            ? ('data.certain-likely' as const)
            : ('data.other-event' as const),
      answer: choiceAnswer(word),
    })),
  };
}

function chanceFraction(
  wanted: number,
  all: number,
  negated: boolean,
  what: 'spinner' | 'tickets' | 'bag',
  { rng, locale }: TemplateContext,
): Draft {
  const [colour, other] = rng.shuffle(COLOURS);
  const asked = negated ? all - wanted : wanted;
  const value = rational(asked, all);
  const allText = formatWhole(all, locale);
  const wantedText = formatWhole(wanted, locale);
  const text = {
    spinner: `A spinner has ${allText} equal parts, ${wantedText} ${colour}. What is the chance of ${negated ? 'not ' : ''}${colour}?`,
    tickets: `${wantedText} of ${allText} tickets ${wanted === 1 ? 'wins' : 'win'}. What is the chance that a ticket ${negated ? 'does not win' : 'wins'}?`,
    bag: `A bag has ${wantedText} ${colour} ${wanted === 1 ? 'counter' : 'counters'} and ${formatWhole(all - wanted, locale)} ${other} ${all - wanted === 1 ? 'one' : 'ones'}. You take one without looking. What is the chance of ${negated ? other : colour}?`,
  }[what];
  const rest = all - asked;
  return {
    text,
    answer: fractionAnswer(value, locale),
    expression:
      negated && what !== 'bag'
        ? `(${all} - ${wanted}) / ${all}`
        : what === 'bag'
          ? `${asked} / (${wanted} + ${all - wanted})`
          : `${asked} / ${all}`,
    features: {
      size: sizeOf(all) * 0.5,
      extraSteps: (negated ? 1 : 0) + (what === 'bag' ? 1 : 0),
      drawn: what === 'spinner' && all <= 12,
      adjust: -0.3,
    },
    strategy: [
      ...(what === 'bag'
        ? [`${wantedText} + ${formatWhole(all - wanted, locale)} = ${allText} counters in all`]
        : negated
          ? [`${allText} − ${wantedText} = ${formatWhole(asked, locale)}`]
          : []),
      outOf(asked, all, locale),
    ],
    slips: [
      // A whole number is no chance that a child would write.
      ...(rest > 0 && asked % rest !== 0
        ? [
            {
              misconception: 'data.part-to-part' as const,
              answer: writtenAnswer({ top: asked, bottom: rest }),
            },
          ]
        : []),
      { misconception: 'data.other-event', answer: writtenAnswer({ top: rest, bottom: all }) },
      { misconception: 'data.half-or-half', answer: fractionAnswer(rational(1, 2), locale) },
    ],
    ...(what === 'spinner' && all <= 12
      ? { figure: spinner(wanted, all, colour ?? 'red', other ?? 'blue') }
      : {}),
  };
}

function notHappening(chance: Quantity, { rng, locale }: TemplateContext): Draft {
  const value = subtract(rational(1), chance.value);
  const event = rng.pick(['rain tomorrow', 'winning the game', 'a red spin', 'a late bus']);
  const no =
    event === 'a red spin'
      ? 'of not red'
      : event === 'winning the game'
        ? 'of not winning'
        : event === 'rain tomorrow'
          ? 'of no rain'
          : 'that it is not late';
  const { n, d } = chance.value;
  const answer = (amount: Rational) => quantityAnswer(amount, chance.style, locale);
  const isFraction = chance.style === 'fraction';
  return {
    text: `The chance of ${event} is ${chance.text}. What is the chance ${no}?`,
    answer: answer(value),
    expression: `1 - ${chance.expression}`,
    features: { size: d > 10 ? 1 : 0, carries: isFraction ? 0 : 1, adjust: -0.3 },
    strategy: ['Both chances together make 1', `1 − ${chance.text} = ${shown(value, locale, chance.style)}`],
    slips: [
      { misconception: 'data.other-event', answer: answer(chance.value) },
      { misconception: 'data.half-or-half', answer: answer(rational(1, 2)) },
      ...(isFraction && n > 1
        ? [
            {
              misconception: 'data.part-to-part' as const,
              answer: writtenAnswer({ top: d - n, bottom: n }),
            },
          ]
        : []),
      ...(!isFraction
        ? [
            {
              misconception: 'data.whole-is-ten' as const,
              answer: answer(subtract(rational(10), chance.value)),
            },
          ]
        : []),
    ],
  };
}

function expected(chance: Rational, spins: number, { rng, locale }: TemplateContext): Draft {
  const [colour] = rng.shuffle(COLOURS);
  const value = (spins * chance.n) / chance.d;
  const one = spins / chance.d;
  const parts = chance.d;
  return {
    text: `A spinner is ${chance.n}/${parts} ${colour}. How often do you expect ${colour} in ${formatWhole(spins, locale)} spins?`,
    answer: wholeAnswer(value, locale),
    expression: `${chance.n} / ${chance.d} * ${spins}`,
    features: { size: sizeOf(spins) * 0.5, extraSteps: chance.n === 1 ? 1 : 2, fives: parts === 5 },
    strategy: [
      `${formatWhole(spins, locale)} ÷ ${parts} = ${formatWhole(one, locale)}`,
      ...(chance.n > 1 ? [`${chance.n} × ${formatWhole(one, locale)} = ${formatWhole(value, locale)}`] : []),
    ],
    slips: [
      ...(chance.n > 1
        ? [{ misconception: 'part.one-only' as const, answer: wholeAnswer(one, locale) }]
        : []),
      { misconception: 'data.other-event', answer: wholeAnswer(spins - value, locale) },
      ...(spins % 2 === 0
        ? [{ misconception: 'data.half-or-half' as const, answer: wholeAnswer(spins / 2, locale) }]
        : []),
      // More than all the spins is what no child expects.
      ...(2 * chance.n <= chance.d && (spins * chance.n) % (chance.d - chance.n) === 0
        ? [
            {
              misconception: 'data.part-to-part' as const,
              answer: wholeAnswer((spins * chance.n) / (chance.d - chance.n), locale),
            },
          ]
        : []),
    ],
    ...(parts <= 12
      ? { figure: spinner(chance.n, parts, colour ?? 'red', colour === 'blue' ? 'red' : 'blue') }
      : {}),
  };
}

export const CHANCE_SKILLS: readonly Skill[] = [
  {
    id: 'data.chance.fraction',
    title: 'Write a chance as a fraction',
    year: 6,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.chance.words', 'frac.parts'],
    codes: { ac9: ['AC9M6P01', 'AC9M5P01'], england: [], ccss: [] },
    templates: [
      {
        id: 'parts',
        ask: (context) => {
          const { rng } = context;
          const all = rng.pick([5, 6, 8, 10, 12]);
          return chanceFraction(
            rng.int(1, all - 1),
            all,
            rng.chance(0.4),
            rng.pick(['spinner', 'bag']),
            context,
          );
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const { rng } = context;
          const wanted = wholeOn(day, 1, 500);
          if (wanted === null) return null;
          if (wanted <= 10 && rng.chance(0.5))
            return using(
              chanceFraction(
                wanted,
                wanted + rng.int(1, 6),
                rng.chance(0.5),
                rng.pick(['spinner', 'bag']),
                context,
              ),
              `finds a chance with ${countOf(wanted, 'wanted outcomes', day.text)}`,
            );
          const isAll = wanted > 60 || (wanted > 12 && rng.chance(0.3));
          const all = isAll ? wanted : 100;
          const winners = isAll ? rng.int(1, Math.min(20, wanted - 1)) : wanted;
          return using(
            chanceFraction(winners, all, rng.chance(0.5), 'tickets', context),
            `counts ${countOf(day.value.n, 'tickets', day.text)}`,
          );
        },
      },
      {
        id: 'word',
        ask: (context) => {
          const bottom = context.rng.pick([4, 5, 8, 10]);
          return fractionWord(
            quantity(rational(context.rng.int(1, bottom - 1), bottom), context.locale, 'fraction'),
            context,
          );
        },
        dayKinds: ['fraction', 'decimal'],
        askOn: (day, context) => {
          if (toNumber(day.value) >= 1 || day.value.d > 100) return null;
          const draft = fractionWord(
            quantity(day.value, context.locale, day.kind === 'fraction' ? 'fraction' : 'decimal'),
            context,
          );
          return using(draft, `judges a chance of ${day.text}`);
        },
      },
    ],
  },
  {
    id: 'data.chance.not',
    title: 'Find the chance that something does not happen',
    year: 6,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.chance.fraction', 'frac.complement'],
    codes: { ac9: ['AC9M6P01'], england: [], ccss: [] },
    templates: [
      {
        id: 'not',
        ask: (context) => {
          const { rng, locale } = context;
          if (rng.chance(0.4)) return notHappening(quantity(rational(rng.int(1, 19), 20), locale), context);
          const bottom = rng.pick([3, 4, 5, 8, 10]);
          return notHappening(
            quantity(rational(rng.int(1, bottom - 1), bottom), locale, 'fraction'),
            context,
          );
        },
        dayKinds: ['fraction', 'decimal'],
        askOn: (day, context) => {
          if (toNumber(day.value) >= 1 || day.value.d > 1000) return null;
          const chance = quantity(
            day.value,
            context.locale,
            day.kind === 'fraction' ? 'fraction' : 'decimal',
          );
          return using(notHappening(chance, context), `starts from a chance of ${day.text}`);
        },
      },
    ],
  },
  {
    id: 'data.chance.expected',
    title: 'Say how often to expect an outcome',
    year: 6,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.chance.fraction', 'frac.nonunit-of'],
    codes: { ac9: ['AC9M6P01'], england: [], ccss: [] },
    templates: [
      {
        id: 'spins',
        ask: (context) => {
          const parts = context.rng.pick([3, 4, 5, 6, 8, 10]);
          const wanted = context.rng.pick(
            [1, 1, 2, 3].filter((count) => (count < parts && parts % count !== 0) || count === 1),
          );
          return expected(
            rational(wanted, parts),
            rational(wanted, parts).d * context.rng.int(4, 15),
            context,
          );
        },
        dayKinds: ['whole', 'fraction'],
        askOn: (day, context) => {
          const { rng } = context;
          if (day.kind === 'fraction') {
            if (toNumber(day.value) >= 1 || day.value.d > 12) return null;
            const spins = day.value.d * rng.pick([5, 6, 8, 10, 12, 15, 20, 25]);
            return using(expected(day.value, spins, context), `works with a chance of ${day.text}`);
          }
          const spins = wholeOn(day, 12, 1000);
          if (spins === null) return null;
          const parts = [2, 3, 4, 5, 6, 8, 10].filter((count) => spins % count === 0);
          if (parts.length === 0) return null;
          const all = rng.pick(parts);
          const chances = [1, 2, 3]
            .map((count) => rational(count, all))
            .filter((chance) => chance.d === all && chance.n < all);
          return using(expected(rng.pick(chances), spins, context), `spins ${day.text} times`);
        },
      },
    ],
  },
];
