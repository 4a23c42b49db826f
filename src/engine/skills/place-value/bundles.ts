// Bundles of ten, teens, which group has more, and the hundred square.
import type { Locale } from '../../numbers/locale.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { offered } from '../offered.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { countInPlaces, placeCount } from './place-templates.js';

const moreDots = templateOf<readonly [left: number, right: number, ask: 'more' | 'fewer']>({
  id: 'more-dots',
  free: (rng) => {
    const left = rng.int(2, 10);
    const others = [left - 2, left - 1, left + 1, left + 2].filter((n) => n > 0 && n <= 10);
    return [left, rng.pick(others), rng.pick(['more', 'more', 'fewer'] as const)];
  },
  draft: ([left, right, ask]) => {
    const isLeft = left > right === (ask === 'more');
    return offered({
      text: `Which group has ${ask}, left (${left}) or right (${right})?`,
      right: isLeft ? 'left' : 'right',
      wrong: [['compare.reversed', isLeft ? 'right' : 'left']],
      features: {
        drawn: true,
        size: Math.max(left, right) > 6 ? 0.6 : 0,
        adjust: ask === 'fewer' ? 0.3 : -0.2,
      },
      strategy: [
        ask === 'more'
          ? `${Math.max(left, right)} is more than ${Math.min(left, right)}`
          : `${Math.min(left, right)} is less than ${Math.max(left, right)}`,
      ],
      figure: { kind: 'dots', groups: [left, right], layout: 'row' },
    });
  },
});

const teenParts = templateOf<readonly [n: number, ask: 'ones' | 'whole' | 'ten']>({
  id: 'teen',
  free: (rng) => [rng.int(11, 19), rng.pick(['ones', 'whole', 'ten'] as const)],
  on: onWhole(11, 19, (n, rng) => [n, rng.pick(['ones', 'ten'] as const)]),
  draft: ([n, ask], { locale }) => {
    const ones = n - 10;
    return {
      text: ask === 'ones' ? `${n} = 10 + ?` : ask === 'ten' ? `${n} = ? + ${ones}` : `10 + ${ones}`,
      answer: wholeAnswer(ask === 'ones' ? ones : ask === 'ten' ? 10 : n, locale),
      expression: ask === 'ones' ? `${n} - 10` : ask === 'ten' ? `${n} - ${ones}` : `10 + ${ones}`,
      features: { drawn: true, unknownInside: ask !== 'whole', adjust: -0.3 },
      strategy: [`One full frame is 10, and ${ones} more ${ones === 1 ? 'makes' : 'make'} ${n}`],
      slips: wholeSlips(
        ask === 'ones'
          ? [
              ['missing.adds-all', n + 10],
              ['fact.one-out', ones + 1],
            ]
          : ask === 'ten'
            ? [
                ['place.face-value', 1],
                ['missing.adds-all', n + ones],
              ]
            : [
                ['place.written-as-heard', Number(`10${ones}`)],
                ['place.face-value', 1 + ones],
              ],
        locale,
      ),
      figure: { kind: 'ten-frame', filled: n },
      usesNumber: `takes ${n} apart into ten and ones`,
    };
  },
});

interface Bundle {
  readonly count: number;
  readonly unit: 10 | 100;
  readonly ask: 'count' | 'worth';
}

const NAMES: Readonly<Record<10 | 100, readonly [one: string, many: string]>> = {
  10: ['ten', 'tens'],
  100: ['hundred', 'hundreds'],
};

function bundles(id: string, unit: 10 | 100) {
  return templateOf<Bundle>({
    id,
    free: (rng) => ({
      count: rng.int(2, unit === 10 ? 9 : 9),
      unit,
      ask: rng.pick(['count', 'worth'] as const),
    }),
    on: onWhole(unit, unit * 9, (n) => (n % unit === 0 ? { count: n / unit, unit, ask: 'count' } : null)),
    draft: ({ count, ask }, { locale }) => {
      const value = count * unit;
      const [one, many] = NAMES[unit];
      return {
        text:
          ask === 'count'
            ? `How many ${many} make ${value}?`
            : `What number is ${count} ${count === 1 ? one : many}?`,
        answer: wholeAnswer(ask === 'count' ? count : value, locale),
        expression: ask === 'count' ? `${value} / ${unit}` : `${count} * ${unit}`,
        features: { drawn: true, size: count / 9, adjust: -0.2 },
        strategy: [
          countInPlaces(count, unit, locale),
          ...(ask === 'count' ? [`That is ${placeCount(count, unit)}`] : []),
        ],
        slips: wholeSlips(
          ask === 'count'
            ? [
                ['place.value-for-count', value],
                ['count.too-far', count + 1],
              ]
            : [
                ['place.face-value', count],
                ['times.zero-count', value * 10],
                ['place.count-added', count + unit],
              ],
          locale,
        ),
        figure:
          unit === 10
            ? { kind: 'base-ten', hundreds: 0, tens: count, ones: 0 }
            : { kind: 'base-ten', hundreds: count, tens: 0, ones: 0 },
        usesNumber: `counts the ${many} in ${value}`,
      };
    },
  });
}

/** How to find what makes a bundle by counting; a hundred ones are counted ten by ten. */
function sizeSteps(part: 1 | 10, unit: 10 | 100, locale: Locale): string[] {
  if (unit === 10) return [countInPlaces(10, 1, locale)];
  const inTens = countInPlaces(10, 10, locale);
  return part === 10 ? [inTens, `That is ${placeCount(10, 10)}`] : ['One ten is 10 ones', inTens];
}

type BundleSize = readonly [part: 1 | 10, unit: 10 | 100];

function bundleSize(sizes: readonly BundleSize[]) {
  return templateOf<BundleSize>({
    id: 'bundle-size',
    free: (rng) => rng.pick(sizes),
    draft: ([part, unit], { locale }) => {
      const count = unit / part;
      return {
        text: `How many ${part === 1 ? 'ones' : 'tens'} make one ${unit === 10 ? 'ten' : 'hundred'}?`,
        answer: wholeAnswer(count, locale),
        expression: `${unit} / ${part}`,
        features: { rule: true, size: unit === 100 ? 0.6 : 0 },
        strategy: sizeSteps(part, unit, locale),
        slips: wholeSlips(
          [
            [part === 1 ? 'place.neighbour' : 'place.value-for-count', count === 10 ? 100 : 10],
            ['place.face-value', 1],
          ],
          locale,
        ),
      };
    },
  });
}

const AROUND = [
  ['directly under', 10],
  ['directly over', -10],
  ['just to the right of', 1],
  ['just to the left of', -1],
] as const;

const squareName = ({ id }: Locale) => (id === 'en-US' ? 'hundreds chart' : 'hundred square');

/** A number of the hundred square found from its neighbour: rows go on by ten. */
const inSquare = templateOf<readonly [n: number, way: (typeof AROUND)[number]]>({
  id: 'in-square',
  free: (rng) => [10 * rng.int(1, 7) + rng.int(2, 8), rng.pick(AROUND)],
  on: onWhole(12, 88, (n, rng) => (n % 10 < 2 || n % 10 > 8 ? null : [n, rng.pick(AROUND)])),
  draft: ([n, [words, step]], { locale }) => {
    const value = n + step;
    return {
      text: `In the ${squareName(locale)}, which number is ${words} ${n}?`,
      answer: wholeAnswer(value, locale),
      expression: `${n} ${step < 0 ? '-' : '+'} ${Math.abs(step)}`,
      features: { drawn: true, size: Math.abs(step) > 1 ? 0.6 : 0, adjust: step < 0 ? 0.2 : -0.2 },
      strategy: [
        Math.abs(step) > 1
          ? `One row ${step > 0 ? 'down is ten more' : 'up is ten less'}: ${n} ${step > 0 ? '+' : '−'} 10 = ${value}`
          : `One place to the ${step > 0 ? 'right is one more' : 'left is one less'}: ${n} ${step > 0 ? '+' : '−'} 1 = ${value}`,
      ],
      slips: wholeSlips(
        [
          ['count.wrong-way', n - step],
          ['place.wrong-step', Math.abs(step) > 1 ? n + step / 10 : n + step * 10],
        ],
        locale,
      ),
      figure: { kind: 'hundred-square', from: n - 11, rows: 3, columns: 3, hidden: [value] },
      usesNumber: `looks around ${n} in the ${squareName(locale)}`,
    };
  },
});

export const BUNDLE_SKILLS: readonly Skill[] = [
  {
    id: 'place.more-dots',
    title: 'See which group has more',
    year: 0,
    fluentYear: 0,
    strand: 'place-value',
    prerequisites: ['place.glance'],
    codes: { ac9: ['AC9MFN03'], england: ['NC-Y1-place-4'], ccss: ['K.CC.C.6', 'K.CC.C.7'] },
    templates: [moreDots],
  },
  {
    id: 'place.teens',
    title: 'See a teen number as ten and some ones',
    year: 0,
    fluentYear: 1,
    strand: 'place-value',
    prerequisites: ['place.next.20'],
    codes: { ac9: ['AC9M1N02'], england: ['NC-Y1-place-4'], ccss: ['K.NBT.A.1', '1.NBT.B.2b'] },
    templates: [teenParts],
  },
  {
    id: 'place.bundles',
    title: 'Bundles of ten',
    year: 1,
    fluentYear: 1,
    strand: 'place-value',
    prerequisites: ['place.teens'],
    codes: { ac9: ['AC9M1N02'], england: ['NC-Y2-place-2'], ccss: ['1.NBT.B.2', '1.NBT.B.2a', '1.NBT.B.2c'] },
    templates: [
      bundles('tens', 10),
      bundleSize([
        [1, 10],
        [10, 100],
      ]),
    ],
  },
  {
    id: 'place.hundred-square',
    title: 'Find the numbers beside a number in rows of ten',
    year: 1,
    fluentYear: 2,
    strand: 'place-value',
    prerequisites: ['place.bundles'],
    codes: { ac9: ['AC9M1N01'], england: ['NC-Y1-place-1', 'NC-Y1-place-3'], ccss: ['1.NBT.C.5'] },
    templates: [inSquare],
  },
  {
    id: 'place.bundles.hundred',
    title: 'Bundles of a hundred',
    year: 2,
    fluentYear: 2,
    strand: 'place-value',
    prerequisites: ['place.bundles', 'place.tens-ones'],
    codes: {
      ac9: ['AC9M2N01'],
      england: ['NC-Y3-place-2', '3NPV-1'],
      ccss: ['2.NBT.A.1', '2.NBT.A.1a', '2.NBT.A.1b'],
    },
    templates: [
      bundles('hundreds', 100),
      bundleSize([
        [10, 100],
        [1, 100],
      ]),
    ],
  },
];
