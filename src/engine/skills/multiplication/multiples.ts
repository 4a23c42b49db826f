// Multiples, and what two numbers have in common.
import { gcd, lcm } from '../../numbers/rational.js';
import { factorsOf, pairLine } from './factorization.js';
import { inSentence } from '../offered.js';
import { numericTemplate, wholeWithin } from '../sketch.js';
import type { Skill } from '../skill.js';

/** The skills on multiples, and what two numbers have in common. */
export const MULTIPLE_SKILLS: readonly Skill[] = [
  {
    id: 'mult.multiples',
    title: 'Find and spot multiples',
    year: 4,
    fluentYear: 5,
    strand: 'multiplication',
    prerequisites: ['mult.table.3', 'mult.table.5'],
    codes: {
      ac9: ['AC9M4N09', 'AC9M5N02'],
      england: ['NC-Y5-multdiv-1', '4NF-1', '5MD-2'],
      ccss: ['4.OA.B.4'],
    },
    templates: [
      numericTemplate({
        id: 'next-multiple',
        kinds: ['whole'],
        free: (rng) => rng.int(11, 80),
        suits: wholeWithin(5, 400),
        make: (x) => {
          const of = x.pick([2, 3, 4, 5, 6, 7, 8, 9, 10].filter((k) => k < x.n));
          const below = Math.floor(x.n / of);
          return {
            text: `What is the first multiple of ${of} after ${x.text}?`,
            value: (below + 1) * of,
            expression: `(floor(${x.n} / ${of}) + 1) * ${of}`,
            features: {
              size: of > 5 && of < 10 ? 1 : 0,
              rule: of === 10,
              fives: of === 5,
              adjust: of === 2 ? -0.6 : x.n > 12 * of ? 0.6 : 0,
            },
            strategy: [`${below} × ${of} = ${below * of}`, `${below + 1} × ${of} = ${(below + 1) * of}`],
            slips: [
              ['multiples.adds-the-step', x.n + of],
              ['times.neighbour', x.n % of === 0 ? x.n : below * of],
              ['multiples.product', of * x.n],
            ],
            uses: `finds the next multiple after ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'to-the-multiple',
        kinds: ['whole'],
        free: (rng) => rng.int(21, 90),
        suits: wholeWithin(11, 1_000_000),
        make: (x) => {
          const of = x.pick(x.n > 1000 ? [4, 5, 10] : [3, 4, 5, 9, 10]);
          const short = (of - (x.n % of)) % of;
          return short === 0
            ? null
            : {
                text: `What is the least you can add to ${x.text} to get a multiple of ${of}?`,
                value: short,
                expression: `(${of} - mod(${x.n}, ${of}))`,
                features: {
                  extraSteps: 1,
                  rule: of === 10,
                  fives: of === 5,
                  size: x.n > 100 && of !== 10 ? 1 : 0,
                },
                strategy: [
                  `${x.text} + ${short} = ${x.t(x.n + short)}`,
                  `${x.t((x.n + short) / of)} × ${of} = ${x.t(x.n + short)}`,
                ],
                slips: [
                  ['multiples.adds-the-step', of],
                  ['divide.rest-for-gap', x.n % of],
                ],
                uses: `adds to ${x.text} to reach a multiple`,
              };
        },
      }),
      numericTemplate({
        id: 'pick-the-multiple',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 90),
        suits: wholeWithin(4, 1_000_000),
        make: (x) => {
          const of = x.pick(x.n > 999 ? [2, 5, 10] : [2, 5, 10, 3, 4]);
          const near = [x.n - 1, x.n, x.n + 1];
          const right = near.filter((k) => k % of === 0);
          if (right.length !== 1) return null;
          const answer = right[0] as number;
          return {
            text: `Which of these is a multiple of ${of}: ${inSentence(
              near.map((k) => x.t(k)),
              'or',
            )}?`,
            value: answer,
            expression: `${of} * ${answer / of}`,
            features: {
              fewChoices: true,
              rule: of === 2 || of === 10 || of === 5,
              size: of === 3 || of === 4 ? 1 : 0,
            },
            strategy: [pairLine(answer / of, of, x.t)],
            slips: near.filter((k) => k !== answer).map((k) => ['multiples.near-miss', k] as const),
            uses: `looks for a multiple around ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'mult.common',
    title: 'Highest (greatest) common factor and lowest (least) common multiple',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.factors'],
    codes: {
      ac9: ['AC9M5N02'],
      england: ['NC-Y5-multdiv-1', '5MD-2', 'NC-Y6-fractions-1', 'NC-Y6-fourops-5'],
      ccss: ['6.NS.B.4'],
    },
    // Common practice.
    shift: 0.3,
    templates: [
      numericTemplate({
        id: 'highest-common-factor',
        kinds: ['whole'],
        free: (rng) => 6 * rng.int(2, 14),
        suits: wholeWithin(6, 1000),
        make: (x) => {
          const f = x.pick(factorsOf(x.n).filter((k) => k > 1 && k <= 60));
          const other = f * x.rng.int(1, Math.max(2, Math.floor(90 / f)));
          if (other === x.n || other > 120) return null;
          const g = gcd(x.n, other);
          return {
            text: `What is the ${x.locale.id === 'en-US' ? 'greatest' : 'highest'} common factor of ${x.text} and ${other}?`,
            value: g,
            expression: `gcd(${x.n}, ${other})`,
            features: { extraSteps: 1, size: (g > 6 ? 1 : 0) + (x.n > 60 ? 0.5 : 0) },
            strategy: [pairLine(g, x.n / g, x.t), pairLine(g, other / g, x.t)],
            slips: [
              ['factors.multiple-mixed-up', lcm(x.n, other)],
              ['factors.common-not-highest', 1],
              ['factors.common-not-highest', factorsOf(g).slice(-2)[0] ?? null],
            ],
            uses: `finds a common factor of ${x.text} and ${other}`,
          };
        },
      }),
      numericTemplate({
        id: 'lowest-common-multiple',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 12),
        suits: wholeWithin(2, 20),
        make: (x) => {
          const other = x.rng.int(2, 12);
          if (other === x.n || other === 11) return null;
          const m = lcm(x.n, other);
          return {
            text: `What is the ${x.locale.id === 'en-US' ? 'least' : 'lowest'} common multiple of ${x.text} and ${other}?`,
            value: m,
            expression: `lcm(${x.n}, ${other})`,
            features: {
              extraSteps: m === x.n || m === other ? 0 : 1,
              size: (m === x.n * other ? 0 : 1) + (x.n > 12 ? 1 : 0),
              adjust: x.n <= 5 && other <= 5 ? -0.4 : 0,
            },
            strategy: [pairLine(m / x.n, x.n, x.t), pairLine(m / other, other, x.t)],
            slips: [
              ['factors.multiple-mixed-up', gcd(x.n, other)],
              ['multiples.sum', x.n + other],
              ['multiples.product', x.n * other],
            ],
            uses: `finds a common multiple of ${x.text} and ${other}`,
          };
        },
      }),
    ],
  },
];
