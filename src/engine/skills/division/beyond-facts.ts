// Division beyond the tables: tens, splits, remainders, fraction quotients, missing numbers, large numbers.
import { multiply, rational } from '../../numbers/rational.js';
import { divideDigits, remainderAsTenths } from '../../questions/slips/quotients.js';
import { numericTemplate, wholeWithin } from '../sketch.js';
import type { Skill } from '../skill.js';
import { countables, storyName } from '../story.js';

const DIGITS = [2, 3, 4, 5, 6, 7, 8, 9] as const;

/** The largest friendly multiple (tens, hundreds of the divisor) not above n. */
function friendlyPart(n: number, divisor: number): number {
  let step = divisor;
  while (step * 10 <= n) step *= 10;
  return n - (n % step);
}

function dividingSteps(n: number, divisor: number, t: (value: number) => string): string[] {
  const steps: string[] = [];
  const shares: number[] = [];
  for (let rest = n; rest > 0; ) {
    const part = friendlyPart(rest, divisor);
    steps.push(`${t(part)} ÷ ${divisor} = ${t(part / divisor)}`);
    shares.push(part / divisor);
    rest -= part;
  }
  if (shares.length > 1) steps.push(`${shares.map((share) => t(share)).join(' + ')} = ${t(n / divisor)}`);
  return steps;
}

export const DERIVED_DIVISION_SKILLS: readonly Skill[] = [
  {
    id: 'div.by10',
    title: 'Divide whole numbers by 10, 100 and 1000',
    year: 4,
    fluentYear: 5,
    strand: 'division',
    prerequisites: ['mult.by100', 'div.table.2510'],
    codes: { ac9: ['AC9M4N05'], england: ['4MD-1', 'NC-Y5-multdiv-7'], ccss: ['4.NBT.A.1'] },
    templates: [
      numericTemplate({
        id: 'scaled-down',
        kinds: ['whole'],
        free: (rng) => rng.pick([10, 100]) * rng.int(2, 99),
        suits: (value) => value.d === 1 && value.n % 10 === 0 && value.n >= 20,
        make: (x) => {
          const by = x.pick([10, 100, 1000].filter((k) => x.n % k === 0 && x.n > k));
          return {
            text: `${x.text} ÷ ${x.t(by)}`,
            value: x.n / by,
            expression: `${x.n} / ${by}`,
            features: { rule: true, size: (by === 10 ? 0 : 1) + (x.n >= 10_000 ? 1 : 0), adjust: 0.3 },
            strategy: [`${x.t(x.n / by)} × ${x.t(by)} = ${x.text}`],
            slips: [
              ['times.zero-count', x.n / by / 10 >= 1 && x.n % (by * 10) === 0 ? x.n / by / 10 : null],
              ['times.zero-count', (x.n / by) * 10],
              ['divide.as-minus', x.n - by],
            ],
            uses: `divides ${x.text} by ${by}`,
          };
        },
      }),
      numericTemplate({
        id: 'tens-by-digit',
        kinds: ['whole'],
        free: (rng) => rng.int(2, 9) * rng.int(2, 9) * rng.pick([10, 100]),
        suits: (value) => value.d === 1 && value.n % 10 === 0 && value.n >= 60 && value.n <= 8100,
        make: (x) => {
          const unit = x.n % 100 === 0 && x.n >= 400 ? 100 : 10;
          const base = x.n / unit;
          const fits = DIGITS.filter((k) => base % k === 0 && base / k >= 2 && base / k <= 12);
          if (fits.length === 0) return null;
          const k = x.pick(fits);
          return {
            text: `${x.text} ÷ ${k}`,
            value: x.n / k,
            expression: `${x.n} / ${k}`,
            features: {
              size: (k > 5 ? 1 : 0) + (unit === 100 ? 0.5 : 0),
              fives: k === 5,
              extraSteps: 1,
              adjust: k === 2 ? -0.5 : 0,
            },
            strategy: [`${base} ÷ ${k} = ${base / k}`, `${base / k} × ${unit} = ${x.t(x.n / k)}`],
            slips: [
              ['times.zero-count', base / k],
              ['times.zero-count', (x.n / k) * 10],
              ['divide.neighbour', (base / k + 1) * unit],
            ],
            uses: `divides ${x.text} by ${k}`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.2d1d',
    title: 'Divide two-digit numbers by one digit beyond the tables',
    year: 4,
    fluentYear: 5,
    strand: 'division',
    prerequisites: ['div.table.34', 'mult.2d1d'],
    codes: {
      ac9: ['AC9M4N06', 'AC9M4A02'],
      england: ['NC-Y3-multdiv-2', 'NC-Y5-multdiv-5'],
      ccss: ['4.NBT.B.6', '3.OA.B.5'],
    },
    templates: [
      numericTemplate({
        id: 'split',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 7) * rng.int(12, 19),
        suits: (value) => value.d === 1 && value.n >= 36 && value.n <= 130,
        make: (x) => {
          const fits = DIGITS.filter((k) => k > 2 && x.n % k === 0 && x.n / k > 10);
          if (fits.length === 0) return null;
          const k = x.pick(fits);
          const q = x.n / k;
          const story = x.rng.chance(0.3);
          return {
            text: story
              ? `${storyName(x.rng)} ties ${x.text} balloons in ${k} equal bunches. How many balloons are in a bunch?`
              : `${x.text} ÷ ${k}`,
            value: q,
            expression: `${x.n} / ${k}`,
            features: { size: k > 5 ? 1 : 0, fives: k === 5, extraSteps: 1, rule: q % 10 === 0, story },
            strategy: dividingSteps(x.n, k, x.t),
            slips: [
              ['divide.digits-alone', divideDigits(x.n, k)],
              ['divide.one-part-only', friendlyPart(x.n, k) / k],
              ['divide.neighbour', q - 1],
              ['divide.neighbour', q + 1],
            ],
            uses: `divides ${x.text} by ${k}`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.3d1d',
    title: 'Divide three-digit numbers by one digit',
    year: 5,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.2d1d', 'div.by10'],
    codes: { ac9: ['AC9M5N07'], england: ['5MD-4', 'NC-Y5-multdiv-6'], ccss: ['4.NBT.B.6'] },
    templates: [
      numericTemplate({
        id: 'split',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 9) * rng.int(31, 99),
        suits: (value) => value.d === 1 && value.n >= 101 && value.n <= 2000,
        make: (x) => {
          const fits = DIGITS.filter((k) => k > 2 && x.n % k === 0);
          if (fits.length === 0) return null;
          const k = x.pick(fits);
          const q = x.n / k;
          const story = x.rng.chance(0.3);
          return {
            text: story
              ? x.pick([
                  `${x.text} seedlings go into ${k} equal beds. How many seedlings are in each bed?`,
                  `${k} classes share ${x.text} sheets of card equally. How many sheets does each class get?`,
                ])
              : `${x.text} ÷ ${k}`,
            value: q,
            expression: `${x.n} / ${k}`,
            features: {
              size: k > 5 ? 1 : 0,
              fives: k === 5,
              extraSteps: dividingSteps(x.n, k, x.t).length > 3 ? 2 : 1,
              rule: q % 10 === 0,
              story,
            },
            strategy: dividingSteps(x.n, k, x.t),
            slips: [
              ['divide.digits-alone', divideDigits(x.n, k)],
              ['divide.one-part-only', friendlyPart(x.n, k) / k],
              ['divide.neighbour', q + 1],
              ['divide.neighbour', q - 1],
            ],
            uses: `divides ${x.text} by ${k}`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.remainder',
    title: 'Divide with a remainder',
    year: 4,
    fluentYear: 5,
    strand: 'division',
    prerequisites: ['div.table.34', 'div.table.2510'],
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
              ['divide.neighbour', k - r],
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
                  `${x.text} children travel in vans that hold ${k} children each. How many vans are needed?`,
                  `${storyName(x.rng)} keeps ${x.text} photos in an album, ${k} to a page. How many pages are needed?`,
                ])
              : x.pick([
                  `${storyName(x.rng)} packs ${x.text} ${things} into full bags of ${k}. How many full bags are there?`,
                  `A game needs teams of exactly ${k}. How many full teams can ${x.text} children make?`,
                ]),
            value: up ? q + 1 : q,
            expression: up ? `ceil(${x.n} / ${k})` : `floor(${x.n} / ${k})`,
            features: { story: true, size: k > 5 ? 1 : 0, fives: k === 5, extraSteps: up ? 1 : 0 },
            strategy: up
              ? [`${k} × ${q} = ${k * q}`, `${k * q} + ${x.n % k} = ${x.n}, so ${x.n % k} more need a place`]
              : [`${k} × ${q} = ${k * q}`, `${k * q} + ${x.n % k} = ${x.n}`],
            slips: [
              [up ? 'divide.story-rounds-down' : 'divide.neighbour', up ? q : q + 1],
              ['divide.quotient-for-remainder', x.n % k],
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
      england: ['5MD-4', 'NC-Y5-multdiv-6'],
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
          const base = friendlyPart(x.n, k);
          const q = Math.floor(x.n / k);
          const r = x.n % k;
          const rest = x.n - base;
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
              rest < k
                ? [`${x.t(base / k)} × ${k} = ${x.t(base)}`, `${x.text} − ${x.t(base)} = ${r}`]
                : [`${x.text} − ${x.t(base)} = ${rest}`, `${rest} − ${rest - r} = ${r}`],
            slips: [
              ['divide.quotient-for-remainder', q],
              ['divide.remainder-dropped', 0],
              ['divide.neighbour', k - r],
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
          return {
            text: `${x.text} eggs are packed in boxes that hold ${k} eggs. How many boxes are needed for all the eggs?`,
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
              `${q} × ${k} = ${x.t(q * k)}`,
              `${x.text} − ${x.t(q * k)} = ${x.n % k}, so one more box`,
            ],
            slips: [
              ['divide.story-rounds-down', q],
              ['divide.quotient-for-remainder', x.n % k],
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
      england: ['5MD-4', 'NC-Y6-fractions-6', 'NC-Y6-fractions-9'],
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
          return {
            text: story
              ? `${k} friends share ${x.text} pancakes equally. How many pancakes does each friend get?`
              : `What exactly is ${x.text} ÷ ${k}?`,
            value: rational(x.n, k),
            form: x.rng.chance(0.5) ? 'fraction' : 'whole',
            expression: `${x.n} / ${k}`,
            features: {
              extraSteps: 1,
              story,
              size: q > 12 ? 1 : 0,
              adjust: k === 2 ? -0.9 : k === 8 ? 0.3 : k === 10 ? -0.3 : 0,
            },
            strategy: [`${x.n} ÷ ${k} = ${q} remainder ${r}`, `${r} ÷ ${k} = ${r}/${k}`],
            slips: [
              ['divide.remainder-dropped', q],
              ['divide.remainder-as-tenths', remainderAsTenths(x.n, k)],
              ['divide.neighbour', q + 1],
            ],
            uses: `shares ${x.text} out to the last crumb`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.unknown',
    title: 'Find the missing number in multiplications and divisions',
    year: 5,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.2d1d'],
    codes: {
      ac9: ['AC9M5A02', 'AC9M5A01'],
      england: ['NC-Y3-multdiv-3', '4MD-2'],
      ccss: ['3.OA.A.4', '6.EE.B.7'],
    },
    templates: [
      numericTemplate({
        id: 'dividend',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(11, 60),
        suits: (value, form) =>
          form === 'whole' ? value.n >= 3 && value.n <= 400 : value.n <= 20 * value.d && value.d <= 100,
        make: (x) => {
          const k = x.rng.int(2, x.d === 1 ? 9 : 5);
          const answer = multiply(x.value, rational(k));
          return {
            text: `? ÷ ${k} = ${x.text}`,
            value: answer,
            expression: `${x.expr} * ${k}`,
            features: {
              unknownInside: true,
              extraSteps: x.n > 12 * x.d || x.d > 1 ? 1 : 0,
              size: k > 5 ? 1 : 0,
              adjust: k === 2 ? -0.5 : 0,
              unlike: x.d > 1,
            },
            strategy: [`${k} × ${x.text} = ${x.t(answer)}`],
            slips: [
              ['divide.not-undone', x.n % (k * x.d) === 0 ? x.n / k / x.d : null],
              ['divide.as-minus', rational(x.n + k * x.d, x.d)],
              ['times.neighbour', multiply(x.value, rational(k - 1))],
            ],
            uses: `finds what gives ${x.text} when divided`,
          };
        },
      }),
      numericTemplate({
        id: 'factor',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 45),
        suits: wholeWithin(11, 250),
        make: (x) => {
          const k = x.rng.int(3, 9);
          return {
            text: `${x.text} × ? = ${x.t(x.n * k)}`,
            value: k,
            expression: `${x.n * k} / ${x.n}`,
            features: { unknownInside: true, extraSteps: 1, fives: k === 5, size: x.n > 50 ? 1 : 0 },
            strategy: [`${x.text} × ${k} = ${x.t(x.n * k)}`],
            slips: [
              ['divide.neighbour', k + 1],
              ['divide.neighbour', k - 1],
              ['divide.as-minus', x.n * k - x.n],
            ],
            uses: `finds how many lots of ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.large',
    title: 'Divide large round numbers',
    year: 5,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.by10', 'div.half.large'],
    codes: { ac9: ['AC9M5N07'], england: ['NC-Y5-multdiv-5', '6NPV-4', '4NPV-4'], ccss: ['5.NBT.B.6'] },
    templates: [
      numericTemplate({
        id: 'round-by-digit',
        kinds: ['whole'],
        free: (rng) => 1000 * rng.int(2, 60),
        suits: (value) => value.d === 1 && value.n >= 1000 && value.n % 100 === 0,
        make: (x) => {
          const k = x.pick([2, 3, 4, 5, 8].filter((d) => x.n % (d * 10) === 0));
          const unit = x.n % (1000 * k) === 0 ? 1000 : x.n % (100 * k) === 0 ? 100 : 10;
          return {
            text: k === 2 ? `Half of ${x.text}` : `${x.text} ÷ ${k}`,
            value: x.n / k,
            expression: `${x.n} / ${k}`,
            features: {
              extraSteps: unit === 1000 ? 0 : 1,
              size: (k > 4 ? 1 : 0) + (x.n >= 100_000 ? 0.5 : 0),
              adjust: k === 2 ? -0.8 : 0,
            },
            strategy: [
              `${x.t(x.n / unit)} ÷ ${k} = ${x.t(x.n / unit / k)}`,
              `${x.t(x.n / unit / k)} × ${x.t(unit)} = ${x.t(x.n / k)}`,
            ],
            slips: [
              ['times.zero-count', x.n / k / 10],
              ['times.zero-count', (x.n / k) * 10],
              ['divide.digits-alone', divideDigits(x.n, k)],
            ],
            uses: k === 2 ? `halves ${x.text}` : `divides ${x.text} by ${k}`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.by-two-digits',
    title: 'Divide by two-digit numbers through factors and friendly multiples',
    year: 6,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.3d1d', 'mult.factors'],
    codes: { ac9: ['AC9M6N02'], england: ['6AS/MD-2', 'NC-Y5-multdiv-5'], ccss: ['5.NBT.B.6', '6.NS.B.2'] },
    // Common practice.
    shift: 0.4,
    templates: [
      numericTemplate({
        id: 'through-factors',
        kinds: ['whole'],
        free: (rng) => rng.pick([12, 14, 15, 16, 18, 20, 24, 25, 30, 50]) * rng.int(6, 30),
        suits: (value) => value.d === 1 && value.n >= 60,
        make: (x) => {
          const fits = (
            [
              [12, 2, 6],
              [14, 2, 7],
              [15, 3, 5],
              [16, 2, 8],
              [18, 2, 9],
              [20, 10, 2],
              [24, 4, 6],
              [25, 5, 5],
              [30, 10, 3],
              [50, 10, 5],
            ] as const
          ).filter(([d]) => x.n % d === 0 && x.n / d >= 3);
          if (fits.length === 0) return null;
          const [d, a, b] = x.pick(fits);
          const q = x.n / d;
          return {
            text: `${x.text} ÷ ${d}`,
            value: q,
            expression: `${x.n} / ${d}`,
            features: {
              extraSteps: 1,
              size: (d % 10 === 0 ? 0 : 1) + (q > 20 ? 1 : 0),
              fives: d === 25 || d === 50,
            },
            strategy: [`${x.text} ÷ ${a} = ${x.t(x.n / a)}`, `${x.t(x.n / a)} ÷ ${b} = ${x.t(q)}`],
            slips: [
              ['times.step-forgotten', x.n / a],
              ['times.step-forgotten', x.n / b],
              ['times.zero-count', q * 10],
              ['divide.neighbour', q + 1],
            ],
            uses: `divides ${x.text} by ${d}`,
          };
        },
      }),
      numericTemplate({
        id: 'from-a-product',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 60),
        suits: wholeWithin(12, 99),
        make: (x) => {
          const k = x.rng.int(11, 19);
          const product = x.n * k;
          return {
            text: `${x.t(product)} ÷ ${x.text}`,
            value: k,
            expression: `${product} / ${x.n}`,
            features: { extraSteps: 2, size: x.n > 30 ? 1 : 0, rule: x.n % 10 === 0 },
            strategy: [
              `10 × ${x.text} = ${x.t(10 * x.n)}`,
              `${x.t(product)} − ${x.t(10 * x.n)} = ${x.t(product - 10 * x.n)}`,
              `${x.t(product - 10 * x.n)} ÷ ${x.text} = ${k - 10}`,
            ],
            slips: [
              ['divide.neighbour', k + 1],
              ['divide.neighbour', k - 1],
              ['divide.one-part-only', 10],
            ],
            uses: `divides by ${x.text}`,
          };
        },
      }),
    ],
  },
];
