// Division with something left over: as a remainder, in stories, as a fraction.
import { rational } from '../../numbers/rational.js';
import { remainderAsTenths } from '../../questions/slips/quotients.js';
import { DIGITS, friendlyParts, takenOff } from './dividing-steps.js';
import { numericTemplate, wholeWithin } from '../sketch.js';
import type { Skill } from '../skill.js';
import { countables, storyName } from '../story.js';

/** The skills on division with something left over: as a remainder, in stories, as a fraction. */
export const REMAINDER_SKILLS: readonly Skill[] = [
  {
    id: 'div.remainder',
    title: 'Divide with a remainder',
    year: 4,
    fluentYear: 5,
    strand: 'division',
    prerequisites: ['div.table.34', 'div.table.2510', 'sub.2d2d'],
    codes: { ac9: ['AC9M5N07'], england: ['4NF-2'], ccss: ['4.NBT.B.6', '4.OA.A.3'] },
    templates: [
      numericTemplate({
        id: 'remainder',
        kinds: ['whole'],
        free: (rng) => rng.int(13, 80),
        suits: wholeWithin(7, 120),
        make: (x) => {
          const k = x.pick(DIGITS.filter((d) => x.n % d !== 0 && x.n > 2 * d && x.n / d < 31));
          const q = Math.floor(x.n / k);
          const r = x.n % k;
          return {
            text: x.rng.chance(0.5)
              ? `${x.text} ÷ ${k} = ${q} remainder ?`
              : `What is the remainder of ${x.text} ÷ ${k}?`,
            value: r,
            expression: `mod(${x.n}, ${k})`,
            features: {
              size: (k > 5 ? 1 : 0) + (q > 10 && k > 2 ? 1 : 0),
              fives: k === 5,
              adjust: k === 2 ? -0.8 : 0,
            },
            strategy: [`${k} × ${q} = ${k * q}`, `${x.n} − ${k * q} = ${r}`],
            slips: [
              ['divide.quotient-for-remainder', q],
              ['divide.remainder-dropped', 0],
              ['divide.gap-for-rest', k - r],
            ],
            uses: `divides ${x.text} by ${k} with some left over`,
          };
        },
      }),
      numericTemplate({
        id: 'full-groups',
        kinds: ['whole'],
        free: (rng) => rng.int(14, 60),
        suits: wholeWithin(11, 120),
        make: (x) => {
          const k = x.pick(DIGITS.filter((d) => d > 2 && x.n % d !== 0 && x.n > 2 * d && x.n / d < 16));
          const q = Math.floor(x.n / k);
          const up = x.rng.chance(0.5);
          const things = countables(x.n, x.rng);
          return {
            text: up
              ? x.pick([
                  `A van holds ${k} children. How many vans do ${x.text} children need?`,
                  `${k} photos fit on a page. How many pages do ${x.text} photos need?`,
                ])
              : x.pick([
                  `${storyName(x.rng)} packs ${x.text} ${things} in bags of ${k}. How many bags are full?`,
                  `A team has ${k} players. How many full teams can ${x.text} children make?`,
                ]),
            value: up ? q + 1 : q,
            expression: up ? `ceil(${x.n} / ${k})` : `floor(${x.n} / ${k})`,
            features: { story: true, size: k > 5 ? 1 : 0, fives: k === 5, extraSteps: up ? 1 : 0 },
            strategy: up
              ? [
                  `${k} × ${q} = ${k * q}`,
                  `${k * q} + ${x.n % k} = ${x.n}, so ${x.n % k} more ${x.n % k === 1 ? 'needs' : 'need'} a place`,
                  `${q} + 1 = ${q + 1}`,
                ]
              : [`${k} × ${q} = ${k * q}`, `${k * q} + ${x.n % k} = ${x.n}, so ${q} and ${x.n % k} over`],
            slips: [
              [up ? 'divide.story-rounds-down' : 'group.rounds-up', up ? q : q + 1],
              ['group.left-over-given', x.n % k],
              ['divide.as-minus', x.n - k],
            ],
            uses: `makes groups from ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.remainder.large',
    title: 'Remainders with larger numbers',
    year: 5,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.remainder', 'div.3d1d'],
    codes: {
      ac9: ['AC9M5N07', 'AC9M5N02'],
      england: ['5MD-4', 'NC-Y5-multdiv-6', 'NC-Y6-fourops-3'],
      ccss: ['4.NBT.B.6', '4.OA.A.3'],
    },
    templates: [
      numericTemplate({
        id: 'remainder',
        kinds: ['whole'],
        free: (rng) => rng.int(102, 480),
        suits: wholeWithin(101, 9999),
        make: (x) => {
          const k = x.pick(DIGITS.filter((d) => d > 2 && x.n % d !== 0));
          const q = Math.floor(x.n / k);
          const r = x.n % k;
          const parts = friendlyParts(x.n, k);
          const [base = 0] = parts;
          return {
            text: `What is the remainder of ${x.text} ÷ ${k}?`,
            value: r,
            expression: `mod(${x.n}, ${k})`,
            features: {
              extraSteps: 1,
              size: (k > 5 ? 1 : 0) + (x.n > 1000 ? 1 : 0),
              fives: k === 5,
              rule: k === 5,
            },
            strategy:
              parts.length === 1
                ? [`${x.t(base / k)} × ${k} = ${x.t(base)}`, `${x.text} − ${x.t(base)} = ${r}`]
                : takenOff(x.n, parts, x.t),
            slips: [
              ['divide.quotient-for-remainder', q],
              ['divide.remainder-dropped', 0],
              ['divide.gap-for-rest', k - r],
            ],
            uses: `divides ${x.text} by ${k} with some left over`,
          };
        },
      }),
      numericTemplate({
        id: 'round-up-story',
        kinds: ['whole'],
        free: (rng) => rng.int(102, 320),
        suits: wholeWithin(101, 999),
        make: (x) => {
          const k = x.pick(([5, 6, 8, 10, 20] as const).filter((d) => x.n % d !== 0));
          const q = Math.floor(x.n / k);
          // A table reaches the number at once only where it is known that far.
          const parts = k % 10 === 0 ? [q * k] : friendlyParts(x.n, k);
          return {
            text: `A box holds ${k} eggs. How many boxes do ${x.text} eggs need?`,
            value: q + 1,
            expression: `ceil(${x.n} / ${k})`,
            features: {
              story: true,
              extraSteps: 1,
              size: k === 6 || k === 8 ? 1 : 0,
              fives: k === 5,
              rule: k === 10,
            },
            strategy: [
              ...takenOff(x.n, parts, x.t).flatMap((taken, i, all) => [
                `${x.t((parts[i] ?? 0) / k)} × ${k} = ${x.t(parts[i] ?? 0)}`,
                i + 1 < all.length ? taken : `${taken}, so one more box`,
              ]),
              `${[...parts.map((part) => part / k), 1].join(' + ')} = ${q + 1}`,
            ],
            slips: [
              ['divide.story-rounds-down', q],
              ['group.left-over-given', x.n % k],
            ],
            uses: `packs ${x.text} in boxes`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.exact-share',
    title: 'Divide and write the share with a fraction or decimal',
    year: 6,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.remainder', 'frac.mixed'],
    codes: {
      ac9: ['AC9M5N07'],
      england: ['5MD-4', 'NC-Y6-fractions-6', 'NC-Y6-fractions-9', 'NC-Y6-fourops-2'],
      ccss: ['5.NF.B.3'],
    },
    // Common practice.
    shift: 0.3,
    templates: [
      numericTemplate({
        id: 'mixed-share',
        kinds: ['whole'],
        free: (rng) => rng.int(5, 60),
        suits: wholeWithin(3, 400),
        make: (x) => {
          const k = x.pick(([2, 3, 4, 5, 8, 10] as const).filter((d) => x.n % d !== 0 && d < x.n));
          const q = Math.floor(x.n / k);
          const r = x.n % k;
          const story = x.rng.chance(0.4) && x.n <= 40;
          const answer = rational(x.n, k);
          // A pancake is cut into parts, not into tenths.
          const form = x.rng.chance(0.5) || story ? 'fraction' : 'whole';
          return {
            text: story
              ? `${k} friends share ${x.text} pancakes equally. How many does each get?`
              : `What exactly is ${x.text} ÷ ${k}?`,
            value: answer,
            form,
            expression: `${x.n} / ${k}`,
            features: {
              extraSteps: 1,
              story,
              size: q > 12 ? 1 : 0,
              adjust: k === 2 ? -0.9 : k === 8 ? 0.3 : k === 10 ? -0.3 : 0,
            },
            strategy: [
              `${x.n} ÷ ${k} = ${q} remainder ${r}`,
              `${r} ÷ ${k} = ${x.t(rational(r, k), form)}`,
              `${q} + ${x.t(rational(r, k), form)} = ${x.t(answer, form)}`,
            ],
            slips: [
              ['divide.remainder-dropped', q],
              ['divide.remainder-as-tenths', remainderAsTenths(x.n, k), 'decimal'],
              ['divide.remainder-as-one', q + 1],
            ],
            uses: `shares ${x.text} out to the last crumb`,
          };
        },
      }),
    ],
  },
];
