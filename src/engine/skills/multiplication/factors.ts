// Multiples, factors, primes, squares.
import { gcd, lcm, multiply } from '../../numbers/rational.js';
import { numericTemplate, wholeWithin } from '../sketch.js';
import type { Skill } from '../skill.js';

function factorsOf(n: number): number[] {
  const out: number[] = [];
  for (let f = 1; f * f <= n; f++) {
    if (n % f === 0) out.push(f, ...(f * f === n ? [] : [n / f]));
  }
  return out.sort((a, b) => a - b);
}

function isPrime(n: number): boolean {
  return n > 1 && factorsOf(n).length === 2;
}

function carriesTimes(n: number, digit: number): number {
  return [...String(n)].filter((d, i, all) => i > 0 && Number(d) * digit >= 10 && all.length > 1).length;
}

/** A middle-sized factor pair strategy line for a product. */
function pairLine(a: number, b: number): string {
  return `${a} × ${b} = ${a * b}`;
}

export const FACTOR_SKILLS: readonly Skill[] = [
  {
    id: 'mult.multiples',
    title: 'Find and recognise multiples',
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
              ['divide.neighbour', x.n % of === 0 ? x.n : below * of],
              ['factors.multiple-mixed-up', of * x.n],
            ],
            uses: `finds the next multiple after ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'to-the-multiple',
        kinds: ['whole'],
        free: (rng) => rng.int(21, 90),
        suits: wholeWithin(11, 1000),
        make: (x) => {
          const of = x.pick([3, 4, 5, 9, 10]);
          const short = (of - (x.n % of)) % of;
          return short === 0
            ? null
            : {
                text: `${x.text} + ? is a multiple of ${of}. What is the smallest whole number for the gap?`,
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
                  ['divide.quotient-for-remainder', x.n % of],
                ],
                uses: `adds to ${x.text} to reach a multiple`,
              };
        },
      }),
      numericTemplate({
        id: 'pick-the-multiple',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 90),
        suits: wholeWithin(4, 999),
        make: (x) => {
          const of = x.pick([2, 5, 10, 3, 4]);
          const near = [x.n - 1, x.n, x.n + 1];
          const right = near.filter((k) => k % of === 0);
          if (right.length !== 1) return null;
          const answer = right[0] as number;
          return {
            text: `Which of these is a multiple of ${of}: ${near
              .map((k) => x.t(k))
              .join(', ')
              .replace(/, ([^,]*)$/, ' or $1')}?`,
            value: answer,
            expression: `${of} * ${answer / of}`,
            features: {
              fewChoices: true,
              rule: of === 2 || of === 10 || of === 5,
              size: of === 3 || of === 4 ? 1 : 0,
            },
            strategy: [pairLine(answer / of, of)],
            slips: near.filter((k) => k !== answer).map((k) => ['divide.neighbour', k] as const),
            uses: `looks for a multiple around ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'mult.factors',
    title: 'Find factor pairs and factors',
    year: 5,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.multiples', 'div.table.69'],
    codes: {
      ac9: ['AC9M5N02'],
      england: ['NC-Y5-multdiv-1', '5MD-2', 'NC-Y4-multdiv-3'],
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
          const by = x.pick([2, 3, 4, 5, 9, 10]);
          const fits = x.n % by === 0;
          const digits = [...String(x.n)].map(Number);
          const sum = digits.reduce((total, digit) => total + digit, 0);
          const rule =
            by === 3 || by === 9
              ? [`${digits.join(' + ')} = ${sum}`, `${sum} is ${fits ? '' : 'not '}in the ${by} times table`]
              : by === 4
                ? [`${x.n % 100} is ${fits ? '' : 'not '}in the 4 times table`]
                : [`The last digit is ${x.n % 10}`];
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
            slips: [['factors.last-digit-rule', fits ? 'no' : 'yes']],
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
          const pairs = all.filter((f) => f * f <= x.n).map((f) => pairLine(f, x.n / f));
          return {
            text: `How many factors has ${x.text}, counting 1 and ${x.text}?`,
            value: all.length,
            expression: `count([${all.join(', ')}])`,
            features: {
              extraSteps: Math.min(3, pairs.length - 1),
              size: x.n > 50 ? 1 : 0,
              adjust: all.length === 2 ? 0.6 : 0 /* ruling everything out */,
            },
            strategy: pairs,
            slips: [
              ['factors.ends-forgotten', all.length > 2 ? all.length - 2 : null],
              ['factors.ends-forgotten', all.length - 1],
              ['factors.pair-by-adding', pairs.length],
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
            strategy: [pairLine(x.n / answer, answer)],
            slips: [
              ['factors.multiple-mixed-up', 2 * x.n],
              ['factors.pair-by-adding', x.n - 1],
              ['factors.pair-by-adding', x.n / answer],
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
    codes: { ac9: ['AC9M6N02'], england: ['NC-Y5-multdiv-2', 'NC-Y5-multdiv-3'], ccss: ['4.OA.B.4'] },
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
              ? [`${x.text} = 1 × ${x.text} is its only pair`]
              : [pairLine(smallest, x.n / smallest)],
            slips: [[prime ? 'primes.even-only-composite' : 'primes.odd-means-prime', prime ? 'no' : 'yes']],
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
          let answer = x.n + 1;
          while (!isPrime(answer)) answer++;
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
              ...between.map((k) => pairLine(factorsOf(k)[1] ?? 1, k / (factorsOf(k)[1] ?? 1))),
              `${answer} has only the pair 1 and ${answer}`,
            ],
            slips: [
              ['primes.odd-means-prime', nextOdd],
              ['primes.odd-means-prime', nextOdd + 2],
              ['divide.neighbour', x.n + 1],
            ],
            uses: `finds the first prime after ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'smallest-prime-factor',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 99),
        suits: wholeWithin(6, 1000),
        make: (x) => {
          const answer = factorsOf(x.n)[1] as number;
          const largest = factorsOf(x.n).filter(isPrime).pop() as number;
          if (answer === largest) return null;
          return {
            text: `What is the largest prime factor of ${x.text}?`,
            value: largest,
            expression: `${x.n} / ${x.n / largest}`,
            features: { extraSteps: 1, size: x.n > 100 ? 1 : 0 },
            strategy: [pairLine(x.n / largest, largest)],
            slips: [
              ['factors.ends-forgotten', answer],
              [
                'primes.odd-means-prime',
                factorsOf(x.n)
                  .filter((f) => f < x.n && f % 2 === 1)
                  .pop() ?? null,
              ],
              ['factors.pair-by-adding', x.n / answer],
            ],
            uses: `finds the prime factors of ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'mult.squares',
    title: 'Square and cube numbers and square roots',
    year: 5,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.table.7', 'mult.table.8', 'mult.table.9'],
    codes: { ac9: ['AC9M6N02'], england: ['NC-Y5-multdiv-8'], ccss: ['6.EE.A.1'] },
    templates: [
      numericTemplate({
        id: 'square',
        kinds: ['whole', 'decimal', 'fraction'],
        free: (rng) => rng.int(3, 15),
        suits: (value, form) =>
          form === 'whole'
            ? value.n >= 2 && value.n <= 99
            : form === 'decimal'
              ? value.d === 10 && value.n < 100
              : value.d <= 12 && value.n <= 24,
        make: (x) => {
          const answer = multiply(x.value, x.value);
          const tens = x.n - (x.n % 10);
          const ones = x.n % 10;
          return {
            text: `${x.text} × ${x.text}`,
            value: answer,
            expression: `${x.expr} * ${x.expr}`,
            features: {
              tie: x.n <= 12 && x.d === 1,
              size: x.d > 1 ? 1 : x.n <= 6 ? 0 : x.n <= 12 ? 1 : 2,
              extraSteps: x.d > 1 ? 2 : x.n <= 12 ? 0 : x.n <= 20 ? 2 : 3,
              carries: x.d === 1 && x.n > 20 && ones > 0 ? 2 : 0,
              rule: x.d === 1 && ones === 0,
              unlike: x.form === 'fraction' && x.n > x.d,
              adjust:
                x.form === 'decimal'
                  ? 1.6
                  : x.form === 'fraction'
                    ? 0.8
                    : x.n > 20 && x.n % 10 !== 0
                      ? 0.7
                      : 0,
            },
            strategy:
              x.d > 1 || tens === 0 || ones === 0 || x.n <= 12
                ? [`${x.text} × ${x.text} = ${x.t(answer)}`]
                : [
                    `${x.n} × ${tens} = ${x.t(x.n * tens)}`,
                    `${x.n} × ${ones} = ${x.t(x.n * ones)}`,
                    `${x.t(x.n * tens)} + ${x.t(x.n * ones)} = ${x.t(x.n * x.n)}`,
                  ],
            slips: [
              ['times.square-doubles', multiply(x.value, { n: 2, d: 1 })],
              ['times.cross-forgotten', x.d === 1 && tens > 0 && ones > 0 ? tens * tens + ones * ones : null],
              ['times.neighbour', x.d === 1 ? x.n * (x.n - 1) : null],
            ],
            uses: `squares ${x.text}`,
            figure:
              x.d === 1 && x.n <= 8 && x.rng.chance(0.3)
                ? { kind: 'array', rows: x.n, columns: x.n }
                : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'cube',
        kinds: ['whole'],
        free: (rng) => rng.int(2, 6),
        suits: wholeWithin(2, 12),
        make: (x) => ({
          text: `${x.text} × ${x.text} × ${x.text}`,
          value: x.n ** 3,
          expression: `${x.n} ^ 3`,
          features: {
            extraSteps: x.n > 5 ? 2 : 1,
            size: x.n > 5 ? 2 : x.n > 3 ? 1 : 0,
            carries: carriesTimes(x.n * x.n, x.n),
            rule: x.n === 10,
          },
          strategy: [`${x.text} × ${x.text} = ${x.n * x.n}`, `${x.n * x.n} × ${x.text} = ${x.t(x.n ** 3)}`],
          slips: [
            ['times.step-forgotten', x.n * x.n],
            ['times.square-doubles', 3 * x.n],
            ['times.neighbour', x.n ** 3 - x.n * x.n],
          ],
          uses: `cubes ${x.text}`,
        }),
      }),
      numericTemplate({
        id: 'root',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 12) ** 2,
        suits: (value) =>
          value.d === 1 && value.n >= 4 && value.n <= 400 && Number.isInteger(Math.sqrt(value.n)),
        make: (x) => {
          const root = Math.round(Math.sqrt(x.n));
          return {
            text: x.pick([
              `Which number times itself makes ${x.text}?`,
              `A square has ${x.text} tiles. How many tiles long is each side?`,
            ]),
            value: root,
            expression: `sqrt(${x.n})`,
            features: { unknownInside: true, size: root > 9 ? 1 : 0 },
            strategy: [`${root} × ${root} = ${x.text}`],
            slips: [
              ['times.square-doubles', x.n % 2 === 0 ? x.n / 2 : null],
              ['times.neighbour', root - 1],
              ['divide.halves-once', x.n % 4 === 0 ? x.n / 4 : null],
            ],
            uses: `finds what squares to ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'nearest-square',
        kinds: ['whole'],
        free: (rng) => rng.int(11, 99),
        suits: wholeWithin(5, 400),
        make: (x) => {
          const root = Math.floor(Math.sqrt(x.n));
          if (root * root === x.n) return null;
          return {
            text: `What is the largest square number less than ${x.text}?`,
            value: root * root,
            expression: `${root} * ${root}`,
            features: { extraSteps: 1, size: root > 9 ? 1 : 0 },
            strategy: [
              `${root} × ${root} = ${root * root}`,
              `${root + 1} × ${root + 1} = ${(root + 1) ** 2}, too many`,
            ],
            slips: [
              ['factors.multiple-mixed-up', root],
              ['times.neighbour', (root - 1) ** 2],
              ['times.neighbour', (root + 1) ** 2],
            ],
            uses: `finds the square number below ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'mult.common',
    title: 'Highest common factor and lowest common multiple',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.factors'],
    codes: {
      ac9: ['AC9M6N02'],
      england: ['NC-Y5-multdiv-1', '5MD-2', 'NC-Y6-fractions-1'],
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
            text: `What is the largest number that divides both ${x.text} and ${other}?`,
            value: g,
            expression: `gcd(${x.n}, ${other})`,
            features: { extraSteps: 1, size: (g > 6 ? 1 : 0) + (x.n > 60 ? 0.5 : 0) },
            strategy: [pairLine(g, x.n / g), pairLine(g, other / g)],
            slips: [
              ['factors.multiple-mixed-up', lcm(x.n, other)],
              ['factors.ends-forgotten', 1],
              ['factors.ends-forgotten', factorsOf(g).slice(-2)[0] ?? null],
            ],
            uses: `finds a common factor of ${x.text} and ${other}`,
          };
        },
      }),
      numericTemplate({
        id: 'lowest-common-multiple',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 12),
        suits: wholeWithin(2, 60),
        make: (x) => {
          const other = x.rng.int(2, 12);
          if (other === x.n || other === 11) return null;
          const m = lcm(x.n, other);
          return {
            text: `What is the smallest number in both the ${x.text} and the ${other} times tables, after 0?`,
            value: m,
            expression: `lcm(${x.n}, ${other})`,
            features: {
              extraSteps: m === x.n || m === other ? 0 : 1,
              size: (m === x.n * other ? 0 : 1) + (x.n > 12 ? 1 : 0),
              adjust: x.n <= 5 && other <= 5 ? -0.4 : 0,
            },
            strategy: [pairLine(m / x.n, x.n), pairLine(m / other, other)],
            slips: [
              ['factors.multiple-mixed-up', gcd(x.n, other)],
              ['multiples.adds-the-step', x.n + other],
              ['times.step-forgotten', x.n * other],
            ],
            uses: `finds a common multiple of ${x.text} and ${other}`,
          };
        },
      }),
    ],
  },
];
