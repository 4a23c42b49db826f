// Fractions seen: shares of a shape, places on a line from 0 to 1, copies of a part, tenths as hundredths.
import { fractionAnswer, wholeAnswer, writtenAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { formatMixed } from '../../numbers/format.js';
import { partName } from '../../numbers/words.js';
import { gcd, rational } from '../../numbers/rational.js';
import type { FigureSpec } from '../../figures/figure.js';
import { worded } from '../offered.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';

const SHARES = [
  [2, 'halves', 'half'],
  [3, 'thirds', 'third'],
  [4, 'quarters', 'quarter'],
  [5, 'fifths', 'fifth'],
  [6, 'sixths', 'sixth'],
  [8, 'eighths', 'eighth'],
] as const;
const CUT = ['a cake', 'a pie', 'a sandwich', 'a sheet of paper'] as const;
const isRound = (what: string): boolean => what === 'a cake' || what === 'a pie';

const picture = (parts: number, shaded: number, round: boolean): FigureSpec =>
  round ? { kind: 'fraction-circle', parts, shaded } : { kind: 'fraction-bar', parts, shaded };

const nameShares = templateOf<readonly [parts: number, what: string]>({
  id: 'name',
  free: (rng) => [rng.pick(SHARES)[0], rng.pick(CUT)],
  draft: ([parts, what], { locale }) =>
    worded({
      text: `${what.replace('a', 'A')} is cut into ${parts} equal parts. What is one part called?`,
      right: `a ${partName(parts, 1, locale)}`.replace('a eighth', 'an eighth'),
      accepts: [
        partName(parts, 1, locale),
        partName(parts, 2, locale),
        `one ${partName(parts, 1, locale)}`,
        `1/${parts}`,
        ...(parts === 4 ? ['fourth', 'a fourth', 'quarter', 'a quarter'] : []),
      ],
      wrong: [
        // One part of two against the other would be a whole.
        ...(parts > 2 ? [['fractions.part-to-rest', `a ${partName(parts - 1, 1, locale)}`] as const] : []),
        ['shape.one-short', `a ${partName(parts + 1, 1, locale)}`],
      ],
      features: { drawn: true, size: parts / 8 },
      strategy: [`${parts} equal parts are ${partName(parts, 2, locale)}`],
      figure: picture(parts, 1, isRound(what)),
    }),
});

const howManyMake = templateOf<readonly [parts: number, what: string]>({
  id: 'make-whole',
  free: (rng) => [rng.pick(SHARES)[0], rng.pick(CUT)],
  draft: ([parts, what], { locale }) => ({
    text: `How many ${partName(parts, 2, locale)} make ${what.replace('a ', 'a whole ')}?`,
    answer: wholeAnswer(parts, locale),
    expression: `1 / (1/${parts})`,
    features: { drawn: true, size: parts / 8, rule: true },
    strategy: [`Cut into ${partName(parts, 2, locale)} means cut into ${parts} equal parts`],
    slips: wholeSlips(
      [
        ['shape.one-short', parts - 1],
        ['fractions.top-for-bottom', 1],
      ],
      locale,
    ),
    figure: picture(parts, 0, isRound(what)),
  }),
});

const shadedPart = templateOf<readonly [parts: number, shaded: number, round: boolean, rest: boolean]>({
  id: 'shaded',
  free: (rng) => {
    const parts = rng.pick(SHARES)[0];
    return [parts, rng.int(1, parts - 1), rng.chance(0.5), rng.chance(0.3)];
  },
  draft: ([parts, shaded, round, rest], { locale }) => {
    const top = rest ? parts - shaded : shaded;
    return {
      text: `What fraction of the ${round ? 'circle' : 'bar'} is ${rest ? 'not shaded' : 'shaded'}?`,
      answer: fractionAnswer(rational(top, parts), locale),
      expression: `${top} / ${parts}`,
      features: { drawn: true, size: parts / 8, extraSteps: rest ? 0.5 : 0 },
      strategy: [
        `${top} of ${parts} equal parts`,
        ...(gcd(top, parts) > 1
          ? [`${top}/${parts} = ${top / gcd(top, parts)}/${parts / gcd(top, parts)}`]
          : []),
      ],
      slips: [
        {
          misconception: rest ? 'part.rest-given' : 'fractions.part-left',
          answer: writtenAnswer({ top: parts - top, bottom: parts }),
        },
        ...(parts > top
          ? [
              {
                misconception: 'fractions.part-to-rest' as const,
                answer: writtenAnswer({ top, bottom: parts - top }),
              },
            ]
          : []),
      ],
      figure: picture(parts, shaded, round),
    };
  },
});

const onLine = templateOf<readonly [parts: number, at: number]>({
  id: 'on-line',
  free: (rng) => {
    const parts = rng.pick([2, 3, 4, 5, 6, 8, 10]);
    return [parts, rng.int(1, parts - 1)];
  },
  draft: ([parts, at], { locale }) => ({
    text: `From 0 to 1 there are ${parts} equal steps. Which fraction is at step ${at}?`,
    answer: fractionAnswer(rational(at, parts), locale),
    expression: `${at} / ${parts}`,
    features: { drawn: true, size: parts / 8 },
    strategy: [
      `Each step is 1/${parts}`,
      ...(at > 1 ? [`${at} steps are ${at}/${parts}`] : []),
      ...(formatMixed(rational(at, parts), locale) === `${at}/${parts}`
        ? []
        : [`${at}/${parts} = ${formatMixed(rational(at, parts), locale)}`]),
    ],
    slips: [
      { misconception: 'fractions.marks-counted', answer: writtenAnswer({ top: at, bottom: parts + 1 }) },
      { misconception: 'fractions.part-left', answer: writtenAnswer({ top: parts - at, bottom: parts }) },
    ],
    figure: { kind: 'number-line', from: 0, to: 1, step: 1 / parts, labels: [0, 1], mark: at / parts },
  }),
});

const nextToOne = templateOf<readonly [parts: number, more: number]>({
  id: 'steps-to',
  free: (rng) => [rng.pick([3, 4, 5, 6, 8, 10]), rng.int(1, 3)],
  draft: ([parts, more], { locale }) => ({
    text: `A line goes up in ${partName(parts, 2, locale)} from 0. How many steps to ${more}?`,
    answer: wholeAnswer(more * parts, locale),
    expression: `${more} / (1/${parts})`,
    features: { size: parts / 8, extraSteps: more > 1 ? 1 : 0 },
    strategy: [`1 is ${parts} steps`, ...(more > 1 ? [`${more} × ${parts} = ${more * parts}`] : [])],
    slips: wholeSlips(
      [
        ['count.off-by-one', more * parts + 1],
        ['fractions.whole-as-one-part', more],
      ],
      locale,
    ),
  }),
});

const copies = templateOf<readonly [top: number, bottom: number, ask: 'count' | 'fraction']>({
  id: 'copies',
  free: (rng) => {
    const bottom = rng.pick([3, 4, 5, 6, 8, 10]);
    return [rng.int(2, bottom + 2), bottom, rng.pick(['count', 'fraction'] as const)];
  },
  draft: ([top, bottom, ask], { locale }) => {
    const [t, b] = top === bottom ? [top - 1, bottom] : [top, bottom];
    return ask === 'count'
      ? {
          text: `${t}/${b} = ? × 1/${b}`,
          answer: wholeAnswer(t, locale),
          expression: `(${t}/${b}) / (1/${b})`,
          features: { unknownInside: true, size: t > b ? 0.6 : 0 },
          strategy: [`${t}/${b} is ${t} copies of 1/${b}`],
          slips: wholeSlips(
            [
              ['fractions.top-for-bottom', b],
              ['shape.one-short', t - 1],
            ],
            locale,
          ),
        }
      : {
          text: `${t} × 1/${b}`,
          answer: fractionAnswer(rational(t, b), locale),
          expression: `${t} * (1/${b})`,
          features: { size: t > b ? 0.6 : 0 },
          strategy: [
            `${t} copies of 1/${b} are ${t}/${b}`,
            ...(formatMixed(rational(t, b), locale) === `${t}/${b}`
              ? []
              : [`${t}/${b} = ${formatMixed(rational(t, b), locale)}`]),
          ],
          slips: [
            {
              misconception: 'fractions.multiplies-both',
              answer: writtenAnswer({ top: t, bottom: t * b }),
            },
            { misconception: 'fractions.parts-as-number', answer: wholeAnswer(t, locale) },
          ],
        };
  },
});

const tenthsAsHundredths = templateOf<readonly [tenths: number, hundredths: number]>({
  id: 'tenths-hundredths',
  free: (rng) => [rng.int(1, 9), rng.pick([0, rng.int(1, 9)])],
  draft: ([tenths, hundredths], { locale }) => {
    const total = 10 * tenths + hundredths;
    return {
      text: hundredths === 0 ? `${tenths}/10 = ?/100` : `${tenths}/10 + ${hundredths}/100 = ?/100`,
      answer: wholeAnswer(total, locale),
      expression: `(${tenths}/10${hundredths > 0 ? ` + ${hundredths}/100` : ''}) * 100`,
      features: { unlike: hundredths > 0, unknownInside: true },
      strategy: [
        `Each tenth is 10 hundredths: ${tenths}/10 = ${10 * tenths}/100`,
        ...(hundredths > 0 ? [`${10 * tenths} + ${hundredths} = ${total}`] : []),
      ],
      slips: wholeSlips(
        [
          ['fractions.top-unchanged', tenths + hundredths],
          hundredths > 0
            ? ['decimals.hundredths-as-tenths', tenths + 10 * hundredths]
            : ['times.zero-count', 100 * tenths],
        ],
        locale,
      ),
    };
  },
});

export const PICTURE_FRACTION_SKILLS: readonly Skill[] = [
  {
    id: 'frac.shares',
    title: 'Name equal shares',
    year: 1,
    fluentYear: 3,
    strand: 'fractions',
    prerequisites: ['div.share'],
    codes: {
      ac9: ['AC9M2M02'],
      england: ['NC-Y1-fractions-1', 'NC-Y1-fractions-2', 'NC-Y5-fractions-2'],
      ccss: ['1.G.A.3', '2.G.A.3', '3.G.A.2'],
    },
    templates: [nameShares, howManyMake, shadedPart],
  },
  {
    id: 'frac.line',
    title: 'Find fractions on a line',
    year: 3,
    fluentYear: 4,
    strand: 'fractions',
    prerequisites: ['frac.shares', 'frac.parts'],
    codes: { ac9: ['AC9M4N04'], england: ['NC-Y3-fractions-3', '3F-3'], ccss: ['3.NF.A.2a', '3.NF.A.2b'] },
    templates: [onLine, nextToOne],
  },
  {
    id: 'frac.copies',
    title: 'Build a fraction from copies of one part',
    year: 4,
    fluentYear: 4,
    strand: 'fractions',
    prerequisites: ['frac.parts', 'mult.table.3'],
    codes: { ac9: ['AC9M3N02'], england: ['3F-1'], ccss: ['4.NF.B.4a', '4.NF.B.4'] },
    templates: [copies],
  },
  {
    id: 'frac.tenths-hundredths',
    title: 'Rename tenths as hundredths',
    year: 4,
    fluentYear: 5,
    strand: 'fractions',
    prerequisites: ['frac.equal', 'mult.by10'],
    codes: { ac9: ['AC9M4N01'], england: ['NC-Y4-fractions-5'], ccss: ['4.NF.C.5'] },
    templates: [tenthsAsHundredths],
  },
];
