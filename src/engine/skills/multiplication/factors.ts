// Factors and primes.
import type { MisconceptionId } from '../../questions/misconceptions.js';
import { factorsOf, isPrime, pairLine, primeAfter, primeSplit } from './factorization.js';
import { numericTemplate, wholeWithin } from '../sketch.js';
import type { Skill } from '../skill.js';

/** What the last digit tells, where it decides alone. */
const LAST_DIGITS: Readonly<Record<2 | 5 | 10, (fits: boolean) => string>> = {
  2: (fits) => `, which is ${fits ? 'even' : 'odd'}`,
  5: (fits) => (fits ? '' : ', not 0 or 5'),
  10: (fits) => (fits ? '' : ', not 0'),
};

/** From the pairs of factors of n, all told, to the number of factors. */
function countOfPairs(n: number, factors: number): string {
  const root = Math.sqrt(n);
  if (Number.isInteger(root))
    return `${root} × ${root} gives one factor only, so there are ${factors} in all`;
  return factors === 2 ? 'That is the only pair: 2 factors' : `${factors / 2} pairs make ${factors} factors`;
}

/** What may lie behind a wrong yes or no to "does `by` divide n?". */
function divisibilitySlip(n: number, by: number): MisconceptionId {
  const isWrongYes = n % by !== 0;
  const last = n % 10;
  // A last 0 leads nobody to a yes or a no.
  const lastMisleads = last > 0 && (last % by === 0) === isWrongYes;
  if ((by === 3 || by === 4 || by === 9) && lastMisleads) return 'factors.last-digit-rule';
  return isWrongYes ? 'divide.remainder-dropped' : 'factors.multiple-mixed-up';
}

/** The skills on factors and primes. */
export const FACTOR_SKILLS: readonly Skill[] = [
  {
    id: 'mult.factors',
    title: 'Find factor pairs and factors',
    year: 5,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.multiples', 'div.table.69'],
    codes: {
      ac9: ['AC9M5N02'],
      england: ['NC-Y5-multdiv-1', '5MD-2', 'NC-Y4-multdiv-3', 'NC-Y5-multdiv-9'],
      ccss: ['4.OA.B.4'],
    },
    templates: [
      numericTemplate({
        id: 'pair',
        kinds: ['whole'],
        free: (rng) => rng.pick([24, 30, 36, 42, 48, 54, 56, 60, 64, 72, 84, 90, 96, 100]),
        suits: (value) =>
          value.d === 1 && value.n >= 12 && value.n <= 1_000_000 && factorsOf(value.n).length > 2,
        make: (x) => {
          const inside = factorsOf(x.n)
            .slice(1, -1)
            .filter((f) => f <= 100 || f % 100 === 0);
          if (inside.length === 0) return null;
          const f = x.pick(inside);
          return {
            text: `${x.text} = ${x.t(f)} × ?`,
            value: x.n / f,
            expression: `${x.n} / ${f}`,
            features: {
              unknownInside: true,
              fives: f === 5,
              rule: f === 10,
              tie: f * f === x.n,
              size: (f > 5 && f !== 10 ? 1 : 0) + (x.n > 144 ? 1 : 0),
              adjust: f === 2 ? -0.8 : 0,
            },
            strategy: [`${x.text} ÷ ${x.t(f)} = ${x.t(x.n / f)}`],
            slips: [
              ['factors.pair-by-adding', x.n - f],
              ['divide.neighbour', x.n / f + 1],
              ['divide.neighbour', x.n / f - 1],
            ],
            uses: `splits ${x.text} into two factors`,
          };
        },
      }),
      numericTemplate({
        id: 'divisible',
        kinds: ['whole'],
        free: (rng) => rng.int(101, 2000),
        suits: (value) => value.d === 1 && value.n >= 41,
        make: (x) => {
          const by = x.pick([2, 3, 4, 5, 9, 10] as const);
          const fits = x.n % by === 0;
          const digits = [...String(x.n)].map(Number);
          const sum = digits.reduce((total, digit) => total + digit, 0);
          const rule =
            by === 3 || by === 9
              ? [`${digits.join(' + ')} = ${sum}`, `${sum} is ${fits ? '' : 'not '}in the ${by} times table`]
              : by === 4
                ? [
                    `The last two digits make ${x.n % 100}, which is ${fits ? '' : 'not '}in the 4 times table`,
                  ]
                : [`The last digit is ${x.n % 10}${LAST_DIGITS[by](fits)}`];
          return {
            text: `Does ${by} divide ${x.text} exactly, yes or no?`,
            value: fits ? 'yes' : 'no',
            expression: null,
            features: {
              fewChoices: true,
              rule: by === 2 || by === 5 || by === 10,
              extraSteps: by === 3 || by === 9 || by === 4 ? 1 : 0,
              adjust: by === 2 || by === 10 ? -0.4 : 0,
            },
            strategy: rule,
            slips: [[divisibilitySlip(x.n, by), fits ? 'no' : 'yes']],
            uses: `tests whether ${by} divides ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'count-factors',
        kinds: ['whole'],
        free: (rng) => rng.pick([9, 10, 12, 14, 15, 16, 18, 20, 21, 24, 25, 28, 30, 36]),
        suits: wholeWithin(6, 100),
        make: (x) => {
          const all = factorsOf(x.n);
          const pairs = all.filter((f) => f * f <= x.n).map((f) => pairLine(f, x.n / f, x.t));
          return {
            text: `How many factors does ${x.text} have, counting 1 and ${x.text}?`,
            value: all.length,
            expression: `count([${all.join(', ')}])`,
            features: {
              extraSteps: Math.min(3, pairs.length - 1),
              size: x.n > 50 ? 1 : 0,
              adjust: all.length === 2 ? 0.6 : 0 /* ruling everything out */,
            },
            strategy: [...pairs, countOfPairs(x.n, all.length)],
            slips: [
              ['factors.ends-forgotten', all.length > 2 ? all.length - 2 : null],
              ['factors.ends-forgotten', all.length - 1],
              ['factors.pairs-counted', pairs.length],
            ],
            uses: `counts the factors of ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'largest-factor',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 99),
        suits: wholeWithin(8, 400),
        make: (x) => {
          const all = factorsOf(x.n);
          const answer = all[all.length - 2] ?? 1;
          return {
            text: `What is the largest factor of ${x.text}, apart from ${x.text} itself?`,
            value: answer,
            expression: `${x.n} / ${x.n / answer}`,
            features: {
              size: answer * 2 === x.n ? 0 : answer === 1 ? 2 : 1,
              extraSteps: answer * 2 === x.n ? 0 : 1,
            },
            strategy: [pairLine(x.n / answer, answer, x.t)],
            slips: [
              ['factors.multiple-mixed-up', 2 * x.n],
              ['factors.pair-by-adding', x.n - 1],
              ['compare.other-way-round', answer > 1 ? x.n / answer : null],
            ],
            uses: `finds the largest factor of ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'mult.primes',
    title: 'Tell primes from composite numbers',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.factors'],
    codes: {
      ac9: ['AC9M6N02'],
      england: ['NC-Y5-multdiv-2', 'NC-Y5-multdiv-3', 'NC-Y6-fourops-5'],
      ccss: ['4.OA.B.4'],
    },
    templates: [
      numericTemplate({
        id: 'is-prime',
        kinds: ['whole'],
        free: (rng) =>
          rng.pick([
            11, 13, 15, 17, 19, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49, 51, 53, 57, 59, 63, 67, 71,
            73, 77, 79, 83, 87, 89, 91, 93, 97,
          ]),
        suits: wholeWithin(2, 400),
        make: (x) => {
          const prime = isPrime(x.n);
          const smallest = factorsOf(x.n)[1] ?? x.n;
          return {
            text: `Is ${x.text} a prime number, yes or no?`,
            value: prime ? 'yes' : 'no',
            expression: null,
            features: {
              fewChoices: true,
              size: x.n < 20 ? 0 : x.n < 60 ? 1 : 2,
              rule: x.n > 5 && (x.n % 2 === 0 || x.n % 5 === 0),
              adjust: smallest >= 7 && !prime ? 1 : 0 /* hidden factor, as in 91 */,
            },
            strategy: prime
              ? [`1 × ${x.text} is the only pair that makes ${x.text}`]
              : [pairLine(smallest, x.n / smallest, x.t)],
            slips: [
              [
                prime || x.n % 2 === 0 ? 'primes.words-swapped' : 'primes.even-only-composite',
                prime ? 'no' : 'yes',
              ],
            ],
            uses: `asks whether ${x.text} is prime`,
          };
        },
      }),
      numericTemplate({
        id: 'next-prime',
        kinds: ['whole'],
        free: (rng) => rng.int(7, 90),
        suits: wholeWithin(2, 120),
        make: (x) => {
          const answer = primeAfter(x.n);
          const between = Array.from({ length: answer - x.n - 1 }, (_, i) => x.n + 1 + i);
          const nextOdd = x.n % 2 === 0 ? x.n + 1 : x.n + 2;
          return {
            text: `What is the first prime number after ${x.text}?`,
            value: answer,
            expression: null,
            features: {
              size: x.n < 20 ? 0 : x.n < 60 ? 1 : 2,
              extraSteps: between.filter((k) => k % 2 === 1 && k % 5 !== 0).length,
            },
            strategy: [
              ...between.map((k) => pairLine(factorsOf(k)[1] ?? 1, k / (factorsOf(k)[1] ?? 1), x.t)),
              `${answer} has only the pair 1 and ${answer}`,
            ],
            slips: [
              ['primes.odd-means-prime', nextOdd],
              ['primes.first-passed-over', primeAfter(answer)],
            ],
            uses: `finds the first prime after ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'largest-prime-factor',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 99),
        suits: wholeWithin(6, 1000),
        make: (x) => {
          const answer = factorsOf(x.n)[1] as number;
          const largest = factorsOf(x.n).findLast(isPrime) as number;
          if (answer === largest) return null;
          return {
            text: `What is the largest prime factor of ${x.text}?`,
            value: largest,
            expression: `${x.n} / ${x.n / largest}`,
            features: { extraSteps: 1, size: x.n > 100 ? 1 : 0 },
            strategy: [`${primeSplit(x.n).join(' × ')} = ${x.text}`],
            slips: [
              ['compare.other-way-round', answer],
              ['primes.odd-means-prime', factorsOf(x.n).findLast((f) => f < x.n && f % 2 === 1) ?? null],
              ['primes.largest-factor', x.n / answer],
            ],
            uses: `finds the prime factors of ${x.text}`,
          };
        },
      }),
    ],
  },
];
