// Simplest form, fractions above one in order, and whether a product grows or shrinks.
import { formatWhole } from '../../numbers/format.js';
import { compare, gcd, rational } from '../../numbers/rational.js';
import { choiceAnswer, wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { offered, worded } from '../offered.js';
import { partTemplates } from '../parts.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

interface Simple {
  readonly n: number;
  readonly d: number;
  readonly k: number;
}

const LOWEST = [
  [1, 2],
  [1, 3],
  [2, 3],
  [1, 4],
  [3, 4],
  [1, 5],
  [2, 5],
  [3, 5],
  [4, 5],
  [1, 6],
  [5, 6],
  [3, 8],
  [5, 8],
  [7, 10],
  [3, 10],
] as const;

const simplify = templateOf<Simple>({
  id: 'simplify',
  free: (rng) => {
    const [n, d] = rng.pick(LOWEST);
    return { n, d, k: rng.int(2, d > 6 ? 5 : 9) };
  },
  // The text is the answer: an equal fraction that is not in lowest terms would be the question again.
  draft: ({ n, d, k }) => {
    const [top, bottom] = [n * k, d * k];
    const half = [2, 3, 5].find((p) => k % p === 0 && k > p);
    return worded({
      text: `What is ${top}/${bottom} in its simplest form?`,
      right: `${n}/${d}`,
      wrong: [
        ...(half ? [['fractions.factor-missed', `${top / half}/${bottom / half}`] as const] : []),
        ['fractions.top-unchanged', `${top}/${d}`],
        ['fractions.equal-by-adding', n > 1 ? `${top - n}/${bottom - n}` : `${top - 1}/${bottom - 1}`],
      ],
      features: { size: Math.min(2, k / 4), extraSteps: half ? 0.5 : 0 },
      strategy: [
        `Both divide by ${k}: ${top} ÷ ${k} = ${n} and ${bottom} ÷ ${k} = ${d}`,
        `So it is ${n}/${d}`,
      ],
    });
  },
});

const biggestFactor = templateOf<Simple>({
  id: 'by-what',
  free: (rng) => {
    const [n, d] = rng.pick(LOWEST);
    return { n, d, k: rng.int(2, 9) };
  },
  on: (day) => {
    if (day.kind !== 'fraction' || day.value.n >= day.value.d || day.value.d > 20) return null;
    return { n: day.value.n, d: day.value.d, k: 6 };
  },
  kinds: ['fraction'],
  draft: ({ n, d, k }, { locale }) => ({
    text: `${n * k}/${d * k} = ${n}/?`,
    answer: wholeAnswer(d, locale),
    expression: `${n} / (${n * k}/${d * k})`,
    features: { unknownInside: true, size: Math.min(2, k / 4) },
    strategy: [`${n * k} ÷ ${k} = ${n}`, `${d * k} ÷ ${k} = ${d}`],
    slips: wholeSlips(
      [
        ['fractions.equal-by-adding', d * k - (n * k - n)],
        ['fractions.top-unchanged', d * k],
        ['divide.neighbour', d + 1],
      ],
      locale,
    ),
    usesNumber: `simplifies a fraction to ${n}/${d}`,
  }),
});

const canSimplify = templateOf<readonly [top: number, bottom: number]>({
  id: 'can-it',
  free: (rng) => {
    const bottom = rng.int(6, 24);
    return [rng.int(2, bottom - 1), bottom];
  },
  draft: ([top, bottom]) => {
    const shared = gcd(top, bottom);
    return offered({
      text: `Can ${top}/${bottom} be made simpler, yes or no?`,
      right: shared > 1 ? 'yes' : 'no',
      wrong: [shared > 1 ? ['fractions.factor-missed', 'no'] : ['fractions.factor-imagined', 'yes']],
      features: { size: bottom / 20, extraSteps: shared > 2 || shared === 1 ? 0.5 : 0 },
      strategy: [
        shared > 1
          ? `Both numbers divide by ${shared}: ${top} ÷ ${shared} = ${top / shared} and ${bottom} ÷ ${shared} = ${bottom / shared}`
          : `No number above 1 divides both ${top} and ${bottom}`,
      ],
    });
  },
});

/** Three fractions around one and a half, two of them above one. */
const greatest = templateOf<readonly [parts: readonly (readonly [number, number])[], least: boolean]>({
  id: 'greatest',
  free: (rng) => {
    for (;;) {
      const parts = Array.from({ length: 3 }, () => {
        const d = rng.pick([2, 3, 4, 5, 6, 8]);
        return [rng.int(d - 1, 2 * d - 1), d] as const;
      });
      const values = parts.map(([n, d]) => n / d);
      const isPlain = parts.every(([n, d]) => gcd(n, d) === 1 && n > 1);
      if (isPlain && new Set(values).size === 3 && new Set(parts.map(([, d]) => d)).size === 3)
        return [parts, rng.chance(0.3)];
    }
  },
  draft: ([parts, least]) => {
    const sorted = [...parts].sort(([a, b], [c, d]) => compare(rational(a, b), rational(c, d)));
    const text = ([n, d]: readonly [number, number]) => `${n}/${d}`;
    const ends = (list: readonly (readonly [number, number])[]) =>
      [list[0] ?? [1, 2], list.at(-1) ?? [1, 2]] as const;
    const [low, high] = ends(sorted);
    const [bigParts, smallParts] = ends([...parts].sort(([, b], [, d]) => b - d));
    const right = least ? low : high;
    const common = parts.reduce((all, [, d]) => (all * d) / gcd(all, d), 1);
    return {
      text: `Which is ${least ? 'least' : 'greatest'}: ${parts.slice(0, 2).map(text).join(', ')} or ${parts.slice(2).map(text).join('')}?`,
      answer: {
        kind: 'fraction',
        text: text(right),
        value: `${right[0]}/${right[1]}`,
      },
      expression: `${least ? 'min' : 'max'}(${parts.map(text).join(', ')})`,
      features: { fewChoices: true, unlike: true, extraSteps: 1, size: common > 30 ? 1 : 0 },
      strategy: [
        `Over ${common}: ${parts.map(([n, d]) => (d === common ? text([n, d]) : `${text([n, d])} = ${(n * common) / d}/${common}`)).join(', ')}`,
        `So ${text(right)} is ${least ? 'least' : 'greatest'}`,
      ],
      slips: [
        { misconception: 'compare.reversed', answer: fractionOf(least ? high : low) },
        {
          misconception: 'fractions.smaller-bottom-bigger',
          answer: fractionOf(least ? smallParts : bigParts),
        },
        {
          misconception: 'fractions.bigger-bottom-bigger',
          answer: fractionOf(least ? bigParts : smallParts),
        },
      ],
    };
  },
});

function fractionOf([n, d]: readonly [number, number]) {
  return { kind: 'fraction' as const, text: `${n}/${d}`, value: `${n}/${d}` };
}

const FACTORS = [
  ['1/2', 'less'],
  ['3/4', 'less'],
  ['5/6', 'less'],
  ['9/10', 'less'],
  ['5/4', 'more'],
  ['3/2', 'more'],
  ['7/6', 'more'],
  ['4/4', 'equal'],
] as const;

const inFull = (than: (typeof FACTORS)[number][1]): string =>
  than === 'equal' ? 'equal to' : `${than} than`;

/** What lies behind saying "more" or "less" where that is wrong. */
const RESIZED_WRONGLY = { more: 'times.always-more', less: 'fractions.always-less' } as const;

const growsOrShrinks = templateOf<readonly [factor: (typeof FACTORS)[number], n: number]>({
  id: 'grows',
  free: (rng) => [rng.pick(FACTORS), rng.int(7, 98)],
  on: onWhole(3, 1_000_000, (n, rng) => [rng.pick(FACTORS), n]),
  draft: ([[factor, than], n], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const [right, ...wrong] =
      than === 'equal' ? ['equal', 'less', 'more'] : [than, than === 'less' ? 'more' : 'less', 'equal'];
    return {
      text: `Is ${factor} × ${say(n)} less than, equal to or more than ${say(n)}?`,
      answer: choiceAnswer(right ?? ''),
      accepts: [inFull(than)],
      expression: null,
      features: { fewChoices: true, extraSteps: 0.5, size: /^(9|7|5)\/|4\/4/.test(factor) ? 0.5 : 0 },
      strategy: [
        than === 'equal'
          ? `${factor} is 1, and 1 × ${say(n)} = ${say(n)}`
          : `${factor} is ${than} than 1, so ${factor} of ${say(n)} is ${than} than ${say(n)}`,
      ],
      slips: wrong.slice(0, than === 'equal' ? 2 : 1).map((other) => ({
        misconception: RESIZED_WRONGLY[other as 'less' | 'more'],
        answer: choiceAnswer(other),
      })),
      usesNumber: `compares ${factor} of ${say(n)} with ${say(n)}`,
    };
  },
});

const resizedParts = partTemplates(
  'grows-part',
  ({ text, pick }) => {
    const [factor, than] = pick(FACTORS);
    return {
      text: `Is ${factor} × ${text} less than, equal to or more than ${text}?`,
      value: than,
      accepts: [inFull(than)],
      expression: null,
      features: { fewChoices: true, extraSteps: 0.5, unlike: true },
      strategy: [
        than === 'equal'
          ? `${factor} is 1, and 1 × ${text} = ${text}`
          : `${factor} is ${than} than 1, so ${factor} of ${text} is ${than} than ${text}`,
      ],
      slips: [
        [RESIZED_WRONGLY.more, than === 'more' ? null : 'more'],
        [RESIZED_WRONGLY.less, than === 'less' ? null : 'less'],
      ],
      uses: `compares ${factor} of ${text} with ${text}`,
    };
  },
  { wholeMoney: true },
);

export const SIMPLEST_SKILLS: readonly Skill[] = [
  {
    id: 'frac.simplest',
    title: 'Write a fraction in its simplest form',
    year: 6,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.equal', 'mult.common'],
    codes: { ac9: ['AC9M6N03'], england: ['NC-Y6-fractions-1', '6F-1'], ccss: ['4.NF.A.1', '3.NF.A.3a'] },
    templates: [simplify, biggestFactor, canSimplify],
  },
  {
    id: 'frac.compare.above-one',
    title: 'Order fractions above and below one',
    family: 'which is greater',
    year: 6,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.compare.unlike', 'frac.mixed'],
    codes: { ac9: ['AC9M6N03'], england: ['NC-Y6-fractions-2', '6F-3'], ccss: ['3.NF.A.3'] },
    templates: [greatest],
  },
  {
    id: 'frac.resize',
    title: 'Judge whether multiplying makes more or less',
    year: 6,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.times-whole'],
    codes: { ac9: [], england: ['NC-Y5-fractions-6'], ccss: ['5.NF.B.5', '5.NF.B.5a', '5.NF.B.5b'] },
    templates: [growsOrShrinks, ...resizedParts],
  },
];
