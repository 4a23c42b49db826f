// Measures in everyday words: half full, blocks long, what a tool measures, stories of lengths.
import type { Locale } from '../../numbers/locale.js';
import { unitAnswer, wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { offered } from '../offered.js';
import type { Skill } from '../skill.js';
import { countOf, twoNames } from '../story.js';
import { onWhole, templateOf } from '../template-of.js';
import { MILES, ROUGHLY } from './old-units.js';

const TOOLS = [
  ['how long a table is', 'a tape measure', ['kitchen scales', 'a clock']],
  ['how heavy an apple is', 'kitchen scales', ['a ruler', 'a thermometer']],
  ['how warm a room is', 'a thermometer', ['a tape measure', 'kitchen scales']],
  ['how long a song lasts', 'a clock', ['a ruler', 'a measuring jug']],
  ['how much water a pot holds', 'a measuring jug', ['a clock', 'a thermometer']],
  ['how wide a door is', 'a tape measure', ['a measuring jug', 'a clock']],
] as const;

/** What else a tool is called. */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  'a tape measure': ['a measuring tape', 'measuring tape', 'a tape', 'tape'],
};

/** American kitchens have a scale and a measuring cup. */
function toolIn(tool: string, locale: Locale): string {
  return locale.id === 'en-US'
    ? tool.replace('kitchen scales', 'a kitchen scale').replace('measuring jug', 'measuring cup')
    : tool;
}

const whichTool = templateOf<(typeof TOOLS)[number]>({
  id: 'tool',
  free: (rng) => rng.pick(TOOLS),
  draft: ([what, named, others], { rng, locale }) => {
    const [a, b, c] = rng.shuffle([named, ...others]).map((one) => toolIn(one, locale));
    const tool = toolIn(named, locale);
    return offered({
      text: `What shows ${what}: ${a}, ${b} or ${c}?`,
      right: tool,
      accepts: [tool.replace(/^a /, ''), ...(tool === named ? [] : [named]), ...(ALSO[tool] ?? [])],
      wrong: others.map((other) => ['meas.wrong-tool', toolIn(other, locale)] as const),
      features: { size: what.includes('how long a song') ? 0.5 : 0 },
      strategy: [`${tool.replace(/^./, (letter) => letter.toUpperCase())} can show ${what}`],
    });
  },
});

const FULL = [
  ['half', 2],
  ['a quarter', 4],
] as const;

/** In doubles and halves, since the youngest neither multiply nor divide yet. */
function fullSteps(part: number, d: 2 | 4, asksWhole: boolean): string[] {
  const double = (n: number) => `${n} and ${n} are ${2 * n}`;
  if (d === 2) return [asksWhole ? double(part) : `${double(part)}, so half is ${part}`];
  return asksWhole
    ? [`${double(part)}: half full`, `${double(2 * part)}: full`]
    : [`${double(2 * part)}, so half is ${2 * part}`, `${double(part)}, so a quarter is ${part}`];
}

const partFull = templateOf<readonly [part: (typeof FULL)[number], whole: number, asksWhole: boolean]>({
  id: 'part-full',
  free: (rng) => {
    const part = rng.pick(FULL);
    return [part, part[1] * rng.int(1, 5), rng.chance(0.3)];
  },
  on: onWhole(2, 40, (n, rng) => (n % 2 === 0 ? [n % 4 === 0 ? rng.pick(FULL) : FULL[0], n, false] : null)),
  draft: ([[words, d], whole, asksWhole], { locale }) => {
    const part = whole / d;
    // A jug of more than ten cups would be no jug.
    const [vessel, cups] = whole <= 10 ? ['jug', 'cups'] : ['bucket', 'cups of water'];
    return {
      text: asksWhole
        ? `A ${vessel} is ${words} full with ${countOf(part, 'cups')}${vessel === 'jug' ? '' : ' of water'}. How many cups can it hold?`
        : `A ${vessel} can hold ${whole} ${cups} and is ${words} full. How many ${cups} are in it?`,
      answer: wholeAnswer(asksWhole ? whole : part, locale),
      expression: asksWhole ? `${d} * ${part}` : `${whole} / ${d}`,
      features: { story: true, size: whole / 20, extraSteps: d === 4 ? 0.5 : 0, unknownInside: asksWhole },
      strategy: fullSteps(part, d, asksWhole),
      slips: wholeSlips(
        [
          ['part.half-for-quarter', d === 4 ? (asksWhole ? 2 * part : whole / 2) : null],
          ['part.rest-given', asksWhole ? part : whole - part],
          ['fact.one-out', asksWhole ? whole + 1 : part + 1],
        ],
        locale,
      ),
      usesNumber: `fills part of a ${vessel} of ${whole} cups`,
    };
  },
});

/** Things of which the shorter may well be half as long as the longer; the last two pairs suit any length. */
const THINGS = [
  ['a book', 'a pen'],
  ['a stick', 'a leaf'],
  ['a desk', 'a ruler'],
  ['a scarf', 'a belt'],
] as const;
/** No leaf or pen is much longer. */
const SMALL_BLOCKS = 20;
const thingsOf = (long: number) => (long > SMALL_BLOCKS ? THINGS.slice(2) : THINGS);

const inBlocks = templateOf<readonly [things: (typeof THINGS)[number], long: number, short: number]>({
  id: 'blocks',
  free: (rng) => {
    const short = rng.int(3, 9);
    return [rng.pick(THINGS), short + rng.int(2, Math.min(8, short)), short];
  },
  on: onWhole(5, 60, (n, rng) => [rng.pick(thingsOf(n)), n, rng.int(Math.ceil(n / 2), n - 2)]),
  draft: ([[a, b], long, short], { locale }) => ({
    text: `${a.replace('a', 'A')} is ${long} blocks long and ${b} ${short}. How many blocks longer is ${a.replace('a ', 'the ')}?`,
    answer: wholeAnswer(long - short, locale),
    expression: `${long} - ${short}`,
    features: { story: true, size: long / 20, carries: long % 10 < short % 10 ? 1 : 0 },
    strategy: [`${short} + ${long - short} = ${long}`],
    slips: wholeSlips(
      [
        ['difference.adds', long + short],
        ['count.off-by-one', long - short + 1],
        ['data.larger-given', long],
      ],
      locale,
    ),
    figure: { kind: 'bar-model', whole: String(long), parts: [String(short), '?'] },
    usesNumber: `compares a length of ${long} blocks with another`,
  }),
});

const lengthStory = templateOf<readonly [a: number, b: number, cut: boolean]>({
  id: 'length-story',
  free: (rng) => {
    const a = rng.int(25, 70);
    const cut = rng.chance(0.5);
    // Nobody cuts more off than there is.
    return [a, rng.int(8, cut ? Math.min(28, a - 5) : 28), cut];
  },
  on: onWhole(20, 100, (n, rng) => {
    const cut = n > 70 || rng.chance(0.5);
    return [n, rng.int(5, cut ? n - 10 : 100 - n), cut];
  }),
  draft: ([a, b, cut], { rng, locale }) => {
    const total = cut ? a - b : a + b;
    const crosses = cut ? a % 10 < b % 10 : (a % 10) + (b % 10) > 9;
    // A ten that was exchanged is forgotten, or one that was not is counted.
    const tenOut = crosses
      ? ([cut ? 'borrow.no-decrement' : 'carry.dropped', cut ? total + 10 : total - 10] as const)
      : ([cut ? 'borrow.needless' : 'carry.extra', cut ? total - 10 : total + 10] as const);
    const [one, other] = twoNames(rng);
    return {
      text: cut
        ? `${one} cuts ${b} cm off a ribbon of ${a} cm. How many cm are left?`
        : `${one}’s ribbon is ${a} cm. ${other}’s is ${b} cm longer. How long is ${other}’s?`,
      answer: unitAnswer(total, 'cm', locale),
      expression: `${a} ${cut ? '-' : '+'} ${b}`,
      features: {
        story: true,
        carries: crosses ? 1 : 0,
      },
      strategy:
        b >= 10 && b % 10 > 0
          ? [
              `${a} ${cut ? '−' : '+'} ${b - (b % 10)} = ${cut ? a - b + (b % 10) : a + b - (b % 10)}`,
              `${cut ? a - b + (b % 10) : a + b - (b % 10)} ${cut ? '−' : '+'} ${b % 10} = ${total}`,
            ]
          : [`${a} ${cut ? '−' : '+'} ${b} = ${total}`],
      slips: [
        ...(cut || a > b
          ? [
              {
                misconception: 'operation.swapped' as const,
                answer: unitAnswer(cut ? a + b : a - b, 'cm', locale),
              },
            ]
          : []),
        ...(tenOut[1] >= 0
          ? [{ misconception: tenOut[0], answer: unitAnswer(tenOut[1], 'cm', locale) }]
          : []),
      ],
      figure: cut
        ? { kind: 'bar-model', whole: `${a} cm`, parts: [`${b} cm`, '?'] }
        : { kind: 'bar-model', whole: '?', parts: [`${a} cm`, `${b} cm`] },
      usesNumber: cut ? `cuts a ribbon of ${a}\u00a0cm` : `finds a ribbon longer than one of ${a}\u00a0cm`,
    };
  },
});

export const EVERYDAY_SKILLS: readonly Skill[] = [
  {
    id: 'meas.tool',
    title: 'Know what to measure with',
    year: 0,
    fluentYear: 1,
    strand: 'measures',
    prerequisites: ['place.compare.20'],
    codes: {
      ac9: ['AC9MFM01', 'AC9M1M01'],
      england: ['NC-Y1-measure-1a', 'NC-Y1-measure-1b'],
      ccss: ['K.MD.A.1'],
    },
    templates: [whichTool],
  },
  {
    id: 'meas.full',
    title: 'Half full and a quarter full',
    year: 1,
    fluentYear: 2,
    strand: 'measures',
    prerequisites: ['div.half.small', 'meas.tool'],
    codes: { ac9: ['AC9M2M02'], england: ['NC-Y1-measure-1c'], ccss: [] },
    templates: [partFull],
  },
  {
    id: 'meas.blocks',
    title: 'Compare lengths in blocks',
    year: 1,
    fluentYear: 2,
    strand: 'measures',
    prerequisites: ['meas.compare', 'sub.within10'],
    codes: { ac9: ['AC9M1M02', 'AC9M2M01'], england: ['NC-Y1-measure-1a'], ccss: ['1.MD.A.2', '2.MD.A.4'] },
    templates: [inBlocks],
  },
  {
    id: 'meas.length-story',
    title: 'Lengths in stories',
    year: 2,
    fluentYear: 3,
    strand: 'measures',
    prerequisites: ['meas.blocks', 'add.2d2d', 'sub.2d2d'],
    codes: { ac9: ['AC9M2N04'], england: ['NC-Y2-addsub-1a', 'NC-Y3-measure-1'], ccss: ['2.MD.B.5'] },
    templates: [lengthStory],
  },
  {
    id: 'meas.rough',
    title: 'Inches, feet, pints and pounds beside metric units',
    year: 5,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.units', 'dec.double'],
    codes: { ac9: [], england: ['NC-Y5-measure-2'], ccss: [] },
    templates: [ROUGHLY],
  },
  {
    id: 'meas.miles',
    title: 'Miles and km',
    year: 6,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.rough', 'div.by10', 'mult.table.8'],
    codes: { ac9: [], england: ['NC-Y6-measure-3'], ccss: [] },
    templates: [MILES],
  },
];
