// First division: sharing, halving, dividing by one and by itself.
import { add, divide, multiply, rational, toNumber } from '../../numbers/rational.js';
import { divideDigits } from '../../questions/slips/quotients.js';
import { HALF, half, oddDigits } from './halving.js';
import { numericTemplate } from '../sketch.js';
import { writtenOne } from '../parts.js';
import type { Skill } from '../skill.js';
import { countables, storyName } from '../story.js';

/** The skills on first division: sharing, halving, dividing by one and by itself. */
export const SHARING_SKILLS: readonly Skill[] = [
  {
    id: 'div.share',
    title: 'Share equally and make equal groups',
    year: 1,
    fluentYear: 2,
    strand: 'division',
    prerequisites: ['mult.groups'],
    codes: {
      ac9: ['AC9M1N06', 'AC9M2N05', 'AC9MFN06'],
      england: ['NC-Y1-multdiv-1', '2MD-2'],
      ccss: ['3.OA.A.2'],
    },
    templates: [
      numericTemplate({
        id: 'share',
        kinds: ['whole'],
        free: (rng) => rng.pick([4, 6, 8, 10, 12, 15, 16, 18, 20]),
        suits: (value) => value.d === 1 && value.n >= 4 && value.n <= 30,
        make: (x) => {
          const sharers = x.pick([2, 2, 3, 4, 5]);
          if (x.n % sharers !== 0 || x.n === sharers) return null;
          const each = x.n / sharers;
          const things = countables(x.n, x.rng);
          return {
            text: x.pick([
              `${sharers} children share ${x.text} ${things} equally. How many does each get?`,
              `${storyName(x.rng)} puts ${x.text} ${things} in ${sharers} equal piles. How many are in each?`,
            ]),
            value: each,
            expression: `${x.n} / ${sharers}`,
            features: { story: true, size: (sharers > 2 ? 1 : 0) + (x.n > 12 ? 1 : 0) },
            strategy: [
              `${Array.from({ length: sharers }, () => each).join(' + ')} = ${x.n}`,
              `${x.n} is ${sharers} equal groups of ${each}`,
            ],
            slips: [
              ['divide.as-minus', x.n - sharers],
              ['divide.neighbour', each + 1],
              ['divide.neighbour', each - 1],
            ],
            uses: `shares ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'how-many-groups',
        kinds: ['whole'],
        free: (rng) => rng.pick([6, 8, 10, 12, 14, 15, 16, 18, 20]),
        suits: (value) => value.d === 1 && value.n >= 4 && value.n <= 30,
        make: (x) => {
          const size = x.pick([2, 3, 5, 10]);
          if (x.n % size !== 0 || x.n === size) return null;
          const groups = x.n / size;
          return {
            text: `How many groups of ${size} are in ${x.text}?`,
            value: groups,
            expression: `${x.n} / ${size}`,
            features: { size: (size === 3 ? 1 : 0) + (x.n > 12 ? 1 : 0), rule: size === 10 },
            strategy: [
              `${Array.from({ length: groups }, () => size).join(' + ')} = ${x.n}`,
              `${x.n} is ${groups} groups of ${size}`,
            ],
            slips: [
              ['divide.as-minus', x.n - size],
              ['divide.neighbour', groups + 1],
              ['divide.neighbour', groups - 1],
            ],
            uses: `counts groups in ${x.text}`,
            figure:
              x.rng.chance(0.4) && x.n <= 20 ? { kind: 'fraction-set', total: x.n, shaded: 0 } : undefined,
          };
        },
      }),
    ],
  },
  {
    id: 'div.half.small',
    family: 'half',
    title: 'Halve even numbers to 20',
    year: 1,
    fluentYear: 2,
    strand: 'division',
    prerequisites: ['mult.double.small'],
    codes: {
      ac9: ['AC9M1N06', 'AC9M2A03'],
      england: ['NC-Y1-fractions-1', 'NC-Y2-fractions-2'],
      ccss: ['2.OA.C.3'],
    },
    templates: [
      numericTemplate({
        id: 'half',
        kinds: ['whole'],
        free: (rng) => 2 * rng.int(1, 10),
        suits: (value) => value.d === 1 && value.n % 2 === 0 && value.n <= 20,
        make: (x) => half(x, { size: x.n / 10, rule: x.n === 2 || x.n === 20 }, false),
      }),
      numericTemplate({
        id: 'half-story',
        kinds: ['whole'],
        free: (rng) => 2 * rng.int(2, 10),
        suits: (value) => value.d === 1 && value.n % 2 === 0 && value.n >= 4 && value.n <= 20,
        make: (x) => ({
          ...half(x, { size: x.n / 10, story: true }),
          text: `${storyName(x.rng)} eats half of ${x.text} ${x.pick(['grapes', 'cherries', 'crackers', 'berries'])}. How many is that?`,
        }),
      }),
    ],
  },
  {
    id: 'div.half.2d',
    family: 'half',
    title: 'Halve even two-digit numbers',
    year: 2,
    fluentYear: 3,
    strand: 'division',
    prerequisites: ['div.half.small', 'mult.double.2d'],
    codes: {
      ac9: ['AC9M2A03', 'AC9M2N05'],
      england: ['NC-Y2-multdiv-4', 'NC-Y2-fractions-1'],
      ccss: ['3.OA.A.2'],
    },
    templates: [
      numericTemplate({
        id: 'half',
        kinds: ['whole'],
        free: (rng) => 2 * rng.int(11, 49),
        suits: (value) => value.d === 1 && value.n % 2 === 0 && value.n > 20 && value.n < 100,
        make: (x) => half(x, { carries: oddDigits(x.n), size: x.n > 50 ? 1 : 0, rule: x.n % 20 === 0 }),
      }),
      numericTemplate({
        id: 'half-story',
        kinds: ['whole'],
        free: (rng) => 2 * rng.int(11, 49),
        suits: (value) => value.d === 1 && value.n % 2 === 0 && value.n > 20 && value.n < 100,
        make: (x) => ({
          ...half(x, { carries: oddDigits(x.n), size: x.n > 50 ? 1 : 0, story: true }),
          text: x.pick([
            `${x.text} children make 2 equal teams. How many are in each team?`,
            `An album for ${x.text} photos is half full. How many photos is that?`,
          ]),
        }),
      }),
    ],
  },
  {
    id: 'div.half.large',
    family: 'half',
    title: 'Halve larger and odd numbers and amounts of money',
    year: 4,
    fluentYear: 5,
    strand: 'division',
    prerequisites: ['div.half.2d'],
    codes: {
      ac9: ['AC9M4N06'],
      england: ['NC-Y3-multdiv-2', '4NPV-4', 'NC-Y4-fractions-3'],
      ccss: ['4.NBT.B.6', '5.NF.B.3'],
    },
    templates: [
      numericTemplate({
        id: 'half',
        kinds: ['whole', 'money'],
        free: (rng) => (rng.chance(0.5) ? 2 * rng.int(50, 499) : 2 * rng.int(5, 49) + 1),
        suits: (value, form) =>
          form === 'money'
            ? value.n <= 100_000 * value.d
            : (value.n % 2 === 1 && value.n >= 3) || (value.n >= 100 && value.n <= 20_000),
        make: (x) =>
          half(x, {
            carries: x.d === 1 ? oddDigits(x.n) : 1,
            extraSteps: x.d === 1 && x.n % 2 === 1 ? 1 : 0,
            size: x.n > 1000 && x.n % 100 !== 0 ? 1 : 0,
            rule: x.d === 1 && x.n % 200 === 0,
            adjust: x.n < 20 * x.d ? -0.4 : 0,
          }),
      }),
      numericTemplate({
        id: 'quarter-by-halves',
        kinds: ['whole', 'money'],
        free: (rng) => 4 * rng.int(6, 60),
        suits: (value, form) =>
          form === 'money'
            ? value.n <= 200 * value.d
            : value.n >= 24 && value.n <= 20_000 && value.n % 4 === 0,
        make: (x) => {
          const once = multiply(x.value, HALF);
          const twice = multiply(once, HALF);
          return {
            text: x.pick([`${x.text} ÷ 4`, `A quarter of ${x.text}`.replace('quarter', x.parts(4, 1))]),
            value: twice,
            expression: `${x.expr} / 4`,
            features: {
              extraSteps: 1,
              carries: x.d === 1 ? Math.min(2, oddDigits(x.n)) : 1,
              rule: x.n % 400 === 0,
            },
            strategy: [`${x.text} ÷ 2 = ${x.t(once)}`, `${x.t(once)} ÷ 2 = ${x.t(twice)}`],
            slips: [
              ['divide.halves-once', once],
              ['divide.as-minus', add(x.value, rational(-4))],
              ['divide.digits-alone', x.d === 1 ? divideDigits(x.n, 4) : null],
            ],
            uses: `finds a quarter of ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.one-self',
    family: 'rules of 0 and 1',
    title: 'Divide by one and by the number itself',
    year: 3,
    fluentYear: 4,
    strand: 'division',
    prerequisites: ['div.share', 'mult.zero-one'],
    codes: { ac9: ['AC9M3N04'], england: ['NC-Y4-multdiv-2'], ccss: ['3.OA.B.6'] },
    templates: [
      numericTemplate({
        id: 'by-one',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(3, 200),
        suits: (value) => value.n > value.d || value.d > 1,
        make: (x) => ({
          text: `${x.text} ÷ 1`,
          value: x.value,
          expression: `${x.expr} / 1`,
          features: { rule: true, adjust: -0.4 },
          strategy: [`${x.text} × 1 = ${x.text}`],
          slips: [
            ['divide.as-minus', toNumber(x.value) > 1 ? add(x.value, rational(-1)) : null],
            ['divide.one-or-self', writtenOne(x.value, x.form)],
          ],
          uses: `divides ${x.text} by one`,
        }),
      }),
      numericTemplate({
        id: 'by-itself',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(3, 200),
        suits: (value) => value.n > value.d || value.d > 1,
        make: (x) => ({
          text: `${x.text} ÷ ${x.text}`,
          value: divide(x.value, x.value),
          form: 'whole',
          expression: `${x.expr} / ${x.expr}`,
          features: { rule: true, unlike: x.d > 1 },
          strategy: [`1 × ${x.text} = ${x.text}`],
          slips: [
            ['divide.as-minus', 0],
            ['divide.one-or-self', x.d === 1 ? x.n : null],
          ],
          uses: `divides ${x.text} by itself`,
        }),
      }),
    ],
  },
];
