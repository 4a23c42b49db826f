// Equal fractions, comparing, mixed and improper.
import { add, compare, floor, lcm, rational } from '../../numbers/rational.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';
import { isProper, properFraction } from './draw-fraction.js';

type Rat = ReturnType<typeof rational>;

/** The skills on equal fractions, comparing, mixed and improper. */
export const COMPARING_SKILLS: readonly Skill[] = [
  {
    id: 'frac.compare.like',
    family: 'which is greater',
    title: 'Compare fractions with equal tops or equal bottoms',
    year: 3,
    fluentYear: 4,
    strand: 'fractions',
    prerequisites: ['frac.parts'],
    codes: { ac9: ['AC9M5N03', 'AC9M3N02'], england: ['NC-Y3-fractions-6'], ccss: ['3.NF.A.3d'] },
    templates: [
      numericTemplate({
        id: 'same-parts',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5, 6, 8, 10]),
        suits: (value) => isProper(value) && value.d > 2,
        make: (x) => {
          const other = x.rng.int(1, x.d - 1);
          if (other === x.n || rational(other, x.d).d !== x.d) return null;
          const askMore = x.rng.chance(0.6);
          const first = askMore === x.n > other;
          const texts = x.rng.shuffle([`${x.n}/${x.d}`, `${other}/${x.d}`]);
          return {
            text: `Which is ${askMore ? 'greater' : 'less'}: ${texts[0]} or ${texts[1]}?`,
            value: first ? x.value : rational(other, x.d),
            expression: `${askMore ? 'max' : 'min'}(${x.n}/${x.d}, ${other}/${x.d})`,
            features: {
              fewChoices: true,
              size: x.d > 5 ? 0.5 : 0,
              adjust: askMore ? -0.6 : -0.3 /* same parts, only count them */,
            },
            strategy: [
              `${Math.max(x.n, other)} parts are more than ${Math.min(x.n, other)} of the same size`,
              `So ${first ? x.n : other}/${x.d} is ${askMore ? 'more' : 'less'} than ${first ? other : x.n}/${x.d}`,
            ],
            slips: [['fractions.smaller-numbers-bigger', first ? rational(other, x.d) : x.value]],
            uses: `compares ${x.text} with ${other}/${x.d}`,
          };
        },
      }),
      numericTemplate({
        id: 'same-tops',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5, 6, 8, 10]),
        suits: (value) => isProper(value) && value.d <= 25,
        make: (x) => {
          const d = x.pick([2, 3, 4, 5, 6, 8, 10, 12].filter((k) => k !== x.d && k > x.n));
          const other = rational(x.n, d);
          if (other.d !== d) return null;
          const askMore = x.rng.chance(0.6);
          const first = askMore === x.d < d;
          const texts = x.rng.shuffle([`${x.n}/${x.d}`, `${x.n}/${d}`]);
          return {
            text: `Which is ${askMore ? 'greater' : 'less'}: ${texts[0]} or ${texts[1]}?`,
            value: first ? x.value : other,
            expression: `${askMore ? 'max' : 'min'}(${x.n}/${x.d}, ${x.n}/${d})`,
            features: {
              fewChoices: true,
              adjust: 0.5 /* the bigger bottom number misleads */,
              size: x.n > 1 ? 0.5 : 0,
            },
            strategy: [
              `${x.parts(Math.min(x.d, d))} are bigger than ${x.parts(Math.max(x.d, d))}`.replace(/^./, (c) =>
                c.toUpperCase(),
              ),
              `So ${x.n}/${first ? x.d : d} is ${askMore ? 'more' : 'less'} than ${x.n}/${first ? d : x.d}`,
            ],
            slips: [['fractions.bigger-bottom-bigger', first ? other : x.value]],
            uses: `compares ${x.text} with ${x.n}/${d}`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.compare.unlike',
    family: 'which is greater',
    title: 'Compare fractions with different bottoms',
    year: 5,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.compare.like', 'frac.equal'],
    codes: {
      ac9: ['AC9M5N03', 'AC9M6N03'],
      england: ['NC-Y5-fractions-1', '6F-3', '6F-2'],
      ccss: ['4.NF.A.2'],
    },
    templates: [
      numericTemplate({
        id: 'which',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5, 6, 8]),
        suits: (value) => value.d <= 25 && value.n < 20 * value.d,
        make: (x) => {
          const d = x.pick([2, 3, 4, 5, 6, 8, 9, 10, 12].filter((k) => k !== x.d));
          const whole = floor(x.value);
          const other = add(rational(whole), rational(x.rng.int(1, d - 1), d));
          const gap = compare(x.value, other);
          const close = Math.abs(gap) / (x.d * other.d);
          if (gap === 0 || other.d !== d || close > 0.3) return null;
          const common = lcm(x.d, d);
          const askMore = x.rng.chance(0.6);
          const first = askMore === gap > 0;
          const texts = x.rng.shuffle([x.text, x.t(other)]);
          const [mine, theirs] = [x.n % x.d, other.n % other.d];
          const [less, more] =
            gap > 0
              ? [
                  { top: theirs, bottom: d },
                  { top: mine, bottom: x.d },
                ]
              : [
                  { top: mine, bottom: x.d },
                  { top: theirs, bottom: d },
                ];
          const slipNeeded =
            less.bottom < more.bottom
              ? 'fractions.smaller-bottom-bigger'
              : less.top > more.top
                ? 'fractions.bigger-numbers-bigger'
                : 'fractions.bigger-bottom-bigger';
          return {
            text: `Which is ${askMore ? 'greater' : 'less'}: ${texts[0]} or ${texts[1]}?`,
            value: first ? x.value : other,
            expression: `${askMore ? 'max' : 'min'}(${x.expr}, ${x.e(other)})`,
            features: {
              fewChoices: true,
              unlike: common !== Math.max(x.d, d),
              extraSteps: 1,
              size: (close < 0.1 ? 1 : 0) + (common > 24 ? 1 : 0),
            },
            strategy: [
              ...(common === x.d ? [] : [`${mine}/${x.d} = ${(mine * common) / x.d}/${common}`]),
              ...(common === d ? [] : [`${theirs}/${d} = ${(theirs * common) / d}/${common}`]),
              `So ${first ? x.text : x.t(other)} is ${askMore ? 'greater' : 'less'}`,
            ],
            slips: [[slipNeeded, first ? other : x.value]],
            uses: `compares ${x.text} with ${x.t(other)}`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.equal',
    title: 'Find equal fractions',
    year: 4,
    fluentYear: 5,
    strand: 'fractions',
    prerequisites: ['frac.parts', 'mult.table.2', 'mult.table.3'],
    codes: {
      ac9: ['AC9M4N03'],
      england: ['NC-Y3-fractions-4', 'NC-Y4-fractions-1', '5F-2'],
      ccss: ['3.NF.A.3b', '4.NF.A.1'],
    },
    templates: [
      numericTemplate({
        id: 'scale-up',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5, 6]),
        suits: isProper,
        make: (x) => {
          const k = x.pick([2, 2, 3, 4, 5, 10]);
          if (x.d * k > 100) return null;
          const askTop = x.rng.chance(0.6);
          return {
            text: askTop ? `${x.text} = ?/${x.d * k}` : `${x.text} = ${x.n * k}/?`,
            value: askTop ? x.n * k : x.d * k,
            form: 'whole',
            expression: askTop ? `(${x.n}/${x.d}) * ${x.d * k}` : `${x.n * k} / (${x.n}/${x.d})`,
            features: { unknownInside: true, size: k === 2 ? 0 : k === 10 ? 0.5 : 1, adjust: -0.3 },
            strategy: [
              `${x.d} × ${k} = ${x.d * k}`,
              `${x.n} × ${k} = ${x.n * k}`,
              `${x.text} = ${x.n * k}/${x.d * k}`,
            ],
            slips: [
              ['fractions.equal-by-adding', askTop ? x.n + x.d * k - x.d : x.d + x.n * k - x.n],
              ['fractions.top-unchanged', askTop ? x.n : x.d],
              ['times.neighbour', askTop ? x.n * (k + 1) : x.d * (k + 1)],
            ],
            uses: `renames ${x.text}`,
            figure:
              k === 2 && x.d <= 6 && x.rng.chance(0.4)
                ? { kind: 'fraction-bar', parts: x.d, shaded: x.n }
                : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'scale-down',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5, 6]),
        suits: (value) => isProper(value) && value.d <= 25,
        make: (x) => {
          const k = x.pick([2, 3, 4, 5, 10]);
          if (x.d * k > 100) return null;
          const askTop = x.rng.chance(0.6);
          return {
            text: askTop ? `${x.n * k}/${x.d * k} = ?/${x.d}` : `${x.n * k}/${x.d * k} = ${x.n}/?`,
            value: askTop ? x.n : x.d,
            form: 'whole',
            expression: askTop ? `(${x.n * k}/${x.d * k}) * ${x.d}` : `${x.n} / (${x.n * k}/${x.d * k})`,
            features: { unknownInside: true, size: k === 2 ? 0 : 1 },
            strategy: [`${x.d * k} ÷ ${k} = ${x.d}`, `${x.n * k} ÷ ${k} = ${x.n}`],
            slips: [
              ['fractions.equal-by-adding', askTop ? x.n * k - (x.d * k - x.d) : x.d * k - (x.n * k - x.n)],
              ['fractions.top-unchanged', askTop ? x.n * k : x.d * k],
              ['fractions.divisor-given', k],
            ],
            uses: `finds ${x.text} in other parts`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.mixed',
    title: 'Change between mixed numbers and fractions above one',
    year: 4,
    fluentYear: 5,
    strand: 'fractions',
    prerequisites: ['frac.count', 'frac.whole-part', 'mult.table.4'],
    codes: { ac9: ['AC9M4N04'], england: ['4F-2', 'NC-Y5-fractions-3'], ccss: ['4.NF.B.3b', '4.NF.B.3c'] },
    templates: [
      numericTemplate({
        id: 'to-parts',
        kinds: ['fraction'],
        free: (rng) => add(rational(rng.int(1, 4)), properFraction(rng, [2, 3, 4, 5, 8])),
        suits: (value) => value.n > value.d && value.d <= 25 && value.n < 12 * value.d,
        make: (x) => {
          const whole = floor(x.value);
          const rest = x.n - whole * x.d;
          return {
            text: x.rng.chance(0.5) ? `${x.text} = ?/${x.d}` : `How many ${x.parts(x.d)} are in ${x.text}?`,
            value: x.n,
            form: 'whole',
            expression: `${x.expr} * ${x.d}`,
            features: { size: (whole > 2 ? 1 : 0) + (x.d > 5 ? 0.5 : 0) },
            strategy: [`${whole} = ${whole * x.d}/${x.d}`, `${whole * x.d} + ${rest} = ${x.n}`],
            slips: [
              ['fractions.whole-as-one-part', whole + rest],
              ['fractions.digits-joined', Number(`${whole}${rest}`)],
              ['fractions.whole-ignored', rest],
            ],
            uses: `counts ${x.text} in equal parts`,
          };
        },
      }),
      numericTemplate({
        id: 'to-mixed',
        kinds: ['fraction'],
        free: (rng) => add(rational(rng.int(1, 4)), properFraction(rng, [2, 3, 4, 5, 8])),
        suits: (value) => value.n > value.d && value.d <= 25 && value.n < 12 * value.d,
        make: (x) => {
          const whole = floor(x.value);
          const rest = x.n - whole * x.d;
          const askWhole = x.rng.chance(0.4);
          return {
            text: askWhole
              ? `${x.n}/${x.d} = ? wholes and ${rest}/${x.d}`
              : `${x.n}/${x.d} = ${whole} and ?/${x.d}`,
            value: askWhole ? whole : rest,
            form: 'whole',
            expression: askWhole ? `floor(${x.n}/${x.d})` : `mod(${x.n}, ${x.d})`,
            features: { unknownInside: true, size: (whole > 2 ? 1 : 0) + (x.d > 5 ? 0.5 : 0), adjust: -0.3 },
            strategy: [
              `${whole} = ${whole * x.d}/${x.d}`,
              `${x.n} − ${whole * x.d} = ${rest}`,
              `${x.n}/${x.d} = ${x.text}`,
            ],
            slips: [
              [askWhole ? 'group.left-over-given' : 'divide.quotient-for-remainder', askWhole ? rest : whole],
              ['fractions.whole-as-one-part', askWhole ? null : x.n - whole],
              [askWhole ? 'divide.neighbour' : 'fact.one-out', askWhole ? whole + 1 : rest + 1],
            ],
            uses: `makes wholes out of ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'wholes-as-parts',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5, 8]),
        suits: (value) => isProper(value) && value.d <= 25,
        make: (x) => {
          const whole = x.rng.int(1, 4);
          const mixed: Rat = add(rational(whole), x.value);
          return {
            text: `How many ${x.parts(x.d)} are in ${x.t(mixed)}?`,
            value: mixed.n,
            form: 'whole',
            expression: `(${whole} + ${x.n}/${x.d}) * ${x.d}`,
            features: { size: (whole > 2 ? 1 : 0) + (x.d > 5 ? 0.5 : 0) },
            strategy: [`${whole} = ${whole * x.d}/${x.d}`, `${whole * x.d} + ${x.n} = ${mixed.n}`],
            slips: [
              ['fractions.whole-as-one-part', whole + x.n],
              ['fractions.digits-joined', Number(`${whole}${x.n}`)],
              ['fractions.whole-ignored', x.n],
            ],
            uses: `counts ${whole} and ${x.text} in equal parts`,
          };
        },
      }),
    ],
  },
];
