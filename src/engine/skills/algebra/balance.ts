// Missing numbers and the equals sign in additions and subtractions.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import {
  addDroppingCarries,
  carriesOf,
  complementWithExtraTen,
} from '../../questions/slips/column-addition.js';
import { columnSubtract } from '../../questions/slips/column-subtraction.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { addSteps, countUpSteps } from '../../questions/strategies/adding.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { unlessGiven } from './given.js';

const FORMS = ['a+?', '?+a', 'w-?', '?-a'] as const;

type Form = (typeof FORMS)[number];

const missing = templateOf<readonly [known: number, other: number, form: Form]>({
  id: 'missing',
  free: (rng) => [rng.int(12, 68), rng.int(11, 79), rng.pick(FORMS)],
  on: onWhole(4, 1_000_000, (n, rng) => [
    n,
    n < 30
      ? rng.int(6, 39)
      : n < 100
        ? rng.int(11, 79)
        : (n < 1000 ? 5 : n < 10_000 ? 50 : n < 100_000 ? 500 : 5000) * rng.int(5, 20),
    rng.pick(FORMS),
  ]),
  draft: ([known, other, form], { locale }) => {
    const say = (n: number) => formatWhole(n, locale);
    const whole = known + other;
    const features = {
      carries: carriesOf(known, other) - 1,
      size: known > 999 ? 1 : known > 99 ? 0.7 : 0,
      extraSteps: form === '?-a' ? 0.5 : form === 'w-?' ? 0.7 : 0,
    };
    if (form === '?-a')
      return {
        text: `? − ${say(other)} = ${say(known)}`,
        answer: wholeAnswer(whole, locale),
        expression: `${known} + ${other}`,
        features,
        strategy: ['Put back what was taken away', ...addSteps(known, other, say)],
        slips: wholeSlips(
          [
            ['missing.same-operation', Math.abs(known - other)],
            ['carry.dropped', addDroppingCarries(known, other)],
            ['fact.one-out', whole - 1],
          ],
          locale,
        ),
        usesNumber: `finds what was there before ${say(known)} was left`,
      };
    const text =
      form === 'a+?'
        ? `${say(known)} + ? = ${say(whole)}`
        : form === '?+a'
          ? `? + ${say(known)} = ${say(whole)}`
          : `${say(whole)} − ? = ${say(known)}`;
    return {
      text,
      answer: wholeAnswer(other, locale),
      expression: `${whole} - ${known}`,
      features,
      strategy: [
        `Think of the gap between ${say(known)} and ${say(whole)}`,
        ...countUpSteps(known, whole, say),
      ],
      slips: wholeSlips(
        [
          ['missing.adds-all', whole + known],
          ['borrow.smaller-from-larger', columnSubtract(whole, known, 'smaller-from-larger')],
          ['complement.extra-ten', complementWithExtraTen(known, other)],
          ['fact.one-out', unlessGiven(other + 1, known)],
        ],
        locale,
      ),
      usesNumber: `finds the number missing beside ${say(known)}`,
    };
  },
});

/** a + b = c + ? */
const balance = (
  id: string,
  free: (rng: Rng) => readonly [number, number, number],
  from: number,
  to: number,
  on: (n: number, rng: Rng) => readonly [number, number, number] | null,
  plainSize: number,
) =>
  templateOf<readonly [a: number, b: number, c: number]>({
    id,
    free,
    on: onWhole(from, to, on),
    draft: ([a, b, c], { locale, rng }) => {
      const say = (n: number) => formatWhole(n, locale);
      const answer = a + b - c;
      const change = Math.abs(c - a);
      const [left, right] = rng.chance(0.7) ? [say(c), '?'] : ['?', say(c)];
      return {
        text: `${say(a)} + ${say(b)} = ${left} + ${right}`,
        answer: wholeAnswer(answer, locale),
        expression: `${a} + ${b} - ${c}`,
        features: {
          size: Math.min(1.2, Math.max(0, (change - plainSize) / 6)) + (a > 99 ? 0.5 : 0),
          tie: c === b,
          rule: c === b,
          carries: carriesOf(a, b) > 0 ? 0.5 : 0,
        },
        strategy:
          c === b && left === '?'
            ? [`Both sides add ${say(b)}, so the other numbers are the same too: ${say(a)}`]
            : c === b
              ? [`The same two numbers in the other order: ${say(a)} + ${say(b)} = ${say(b)} + ${say(a)}`]
              : [
                  `${say(c)} is ${say(change)} ${c > a ? 'more' : 'less'} than ${say(a)}, so the other number is ${say(change)} ${c > a ? 'less' : 'more'} than ${say(b)}`,
                  `${say(b)} ${c > a ? '−' : '+'} ${say(change)} = ${say(answer)}`,
                ],
        slips: wholeSlips(
          [
            ['equals.answer-next', a + b],
            ['equals.carries-on', a + b + c],
            // With the same number in the same place there is no partner that changes.
            ['equals.wrong-way', c === b && left === '?' ? null : b + (c - a)],
          ],
          locale,
        ),
        usesNumber: `balances ${say(a)} + ${say(b)} with another sum`,
      };
    },
  });

const smallBalance = balance(
  'balance',
  (rng) => {
    const a = rng.int(3, 9);
    const b = rng.int(2, 9);
    return [
      a,
      b,
      rng.chance(0.25) && a !== b ? b : a > 3 && rng.chance(0.5) ? a - 1 : Math.min(a + b, a + rng.int(1, 2)),
    ];
  },
  2,
  18,
  (n, rng) => {
    const b = rng.int(2, Math.max(2, Math.min(9, 20 - n)));
    return [n, b, rng.chance(0.25) && n !== b ? b : rng.chance(0.5) ? n - 1 : n + rng.int(1, Math.min(2, b))];
  },
  1,
);

const largeBalance = balance(
  'balance',
  (rng) => {
    const a = 10 * rng.int(1, 8) + rng.int(6, 9);
    const c = rng.chance(0.6) ? 10 * Math.ceil(a / 10) : a - rng.int(2, 6);
    return [a, rng.int(15, 68), c];
  },
  12,
  1_000_000,
  (n, rng) => {
    const unit = n < 100 ? 10 : n < 1000 ? 50 : n < 100_000 ? 500 : 5000;
    const b =
      n < 100 ? rng.int(15, 68) : n < 1000 ? rng.int(55, 180) : (n < 100_000 ? 10 : 100) * rng.int(55, 180);
    const up = unit * Math.ceil((n + 1) / unit);
    return [n, b, rng.chance(0.5) ? up : rng.chance(0.5) ? n - rng.int(2, 9) : n + rng.int(2, 9)];
  },
  3,
);

const takeBalance = templateOf<readonly [a: number, b: number, c: number]>({
  id: 'balance-take',
  free: (rng) => {
    const a = rng.int(32, 88);
    return [a, rng.int(12, 29), a + rng.int(1, 5)];
  },
  on: onWhole(25, 999, (n, rng) => [n, rng.int(8, 19), n + rng.int(1, 6)]),
  draft: ([a, b, c], { locale }) => {
    const change = c - a;
    return {
      text: `${a} − ${b} = ${c} − ?`,
      answer: wholeAnswer(b + change, locale),
      expression: `${c} - (${a} - ${b})`,
      features: { extraSteps: 1, size: change > 2 ? 0.6 : 0, carries: a % 10 < b % 10 ? 0.5 : 0 },
      strategy: [
        `${c} is ${change} more than ${a}, so ${change} more must be taken away`,
        `${b} + ${change} = ${b + change}`,
        `So ${a} − ${b} = ${c} − ${b + change}`,
      ],
      slips: wholeSlips(
        [
          ['equals.answer-next', a - b],
          ['equals.difference-wrong-way', b - change],
          ['equals.carries-on', a - b + c],
        ],
        locale,
      ),
      usesNumber: `balances ${a} − ${b} with another subtraction`,
    };
  },
});

export const BALANCE_SKILLS: readonly Skill[] = [
  {
    id: 'alg.equal',
    family: 'both sides',
    title: 'Both sides of the equals sign, within 20',
    year: 1,
    fluentYear: 2,
    strand: 'algebra',
    prerequisites: ['add.bonds10'],
    codes: { ac9: ['AC9M1N04'], england: ['NC-Y1-addsub-1'], ccss: ['1.OA.D.7', '1.OA.D.8'] },
    shift: 0.6,
    templates: [smallBalance],
  },
  {
    id: 'alg.missing',
    title: 'Find the missing number by the inverse',
    year: 3,
    fluentYear: 4,
    strand: 'algebra',
    prerequisites: ['add.2d2d.carry', 'sub.difference'],
    codes: {
      ac9: ['AC9M3A01', 'AC9M4A01'],
      england: ['NC-Y2-addsub-5', 'NC-Y3-addsub-4', '3AS-3'],
      ccss: ['2.OA.A.1'],
    },
    shift: 0.5,
    templates: [missing],
  },
  {
    id: 'alg.balance',
    family: 'both sides',
    title: 'Balance both sides of an equation',
    year: 4,
    fluentYear: 5,
    strand: 'algebra',
    prerequisites: ['alg.equal', 'alg.missing'],
    codes: { ac9: ['AC9M4A01'], england: ['3AS-3', 'NC-Y5-multdiv-10'], ccss: ['1.OA.D.7'] },
    shift: 0.4,
    templates: [largeBalance, takeBalance],
  },
];
