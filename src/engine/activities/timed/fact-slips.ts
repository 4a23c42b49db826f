// Typical wrong answers to a fact, each with the misconception behind it.
import type { Locale } from '../../numbers/locale.js';
import { isWhole, multiply, negate, type Rational, rational } from '../../numbers/rational.js';
import { decimalAnswer } from '../../questions/answer.js';
import type { DraftSlip } from '../../questions/draft.js';
import type { MisconceptionId } from '../../questions/misconceptions.js';
import {
  addDroppingCarries,
  addLeftAligned,
  carriesOf,
  complementWithExtraTen,
  smallestPlace,
} from '../../questions/slips/column-addition.js';
import { columnSubtract } from '../../questions/slips/column-subtraction.js';
import {
  appendZero,
  rightAligned,
  withoutPoint,
  type WrittenDecimal,
} from '../../questions/slips/decimal-operations.js';
import { tableNeighbours } from '../../questions/slips/products.js';
import type { Fact } from './fact.js';

type Wrong = readonly [misconception: MisconceptionId, value: number | Rational | WrittenDecimal | null];

/** Most slips that one fact keeps. */
const MOST = 4;

/** Up to four typical wrong answers to a fact whose numbers make `result`, most telling first. */
export function factSlips(fact: Fact, result: Rational, locale: Locale): DraftSlip[] {
  const wrong = fact.asked === 'second' ? missingSlips(fact, result) : resultSlips(fact, result);
  const right = fact.asked === 'second' ? fact.second : result;
  const canBeNegative = fact.first.n < 0 || fact.second.n < 0 || result.n < 0;
  const seen = new Set([`${right.n}/${right.d}`]);
  const slips: DraftSlip[] = [];
  for (const [misconception, value] of wrong) {
    if (value === null) continue;
    const { value: amount, places } = asWritten(value);
    const key = `${amount.n}/${amount.d}`;
    if (seen.has(key) || (amount.n < 0 && !canBeNegative)) continue;
    seen.add(key);
    slips.push({ misconception, answer: decimalAnswer(amount, locale, places) });
  }
  return slips.slice(0, MOST);
}

/** A wrong number with the places that a child gives it: as few as it needs where nothing else is said. */
function asWritten(wrong: number | Rational | WrittenDecimal): WrittenDecimal {
  if (typeof wrong === 'number') return { value: rational(wrong), places: 0 };
  return 'places' in wrong ? wrong : { value: wrong, places: 0 };
}

function resultSlips(fact: Fact, result: Rational): readonly Wrong[] {
  const { first, sign, second } = fact;
  if (first.n < 0 || second.n < 0 || result.n < 0) return belowZeroSlips(fact, result);
  if (!isWhole(first) || !isWhole(second) || !isWhole(result)) return decimalSlips(fact, result);
  const [a, b, answer] = [first.n, second.n, result.n];
  const unit = smallestPlace(a, b);
  if (sign === '+')
    return [
      ['carry.dropped', a + b > 20 && carriesOf(a, b) > 0 ? addDroppingCarries(a, b) : null],
      ['place.misaligned', Math.min(a, b) < 10 && Math.max(a, b) >= 20 ? addLeftAligned(a, b) : null],
      ['count.off-by-one', Math.min(a, b) < 10 && unit === 1 ? answer - 1 : null],
      ['operation.swapped', Math.abs(a - b)],
      ['fact.one-out', answer + unit],
    ];
  if (sign === '−')
    return [
      ['borrow.smaller-from-larger', a >= 20 ? columnSubtract(a, b, 'smaller-from-larger') : null],
      ['borrow.no-decrement', a >= 20 ? columnSubtract(a, b, 'borrow-no-decrement') : null],
      ['count.off-by-one', unit === 1 ? answer + 1 : null],
      ['operation.swapped', a + b],
      ['fact.one-out', answer - unit],
    ];
  if (sign === '×')
    return a >= 100 || b >= 100 || a % 10 === 0 || b % 10 === 0
      ? [
          ['times.zero-count', 10 * answer],
          ['times.zero-count', answer % 10 === 0 ? answer / 10 : null],
          ['times.as-plus', a + b],
        ]
      : [
          ['times.zero-keeps', a === 0 || b === 0 ? a + b : null],
          ['times.one-adds', a === 1 || b === 1 ? a + b : null],
          ...tableNeighbours(a, b).map((product) => ['times.neighbour', product] as const),
          ['times.as-plus', a + b],
        ];
  return [
    ['divide.neighbour', answer - 1],
    ['divide.neighbour', answer + 1],
    ['divide.as-minus', a - b],
    ['divide.one-or-self', b === 1 ? 1 : a === b ? a : null],
  ];
}

function missingSlips({ first, sign, second }: Fact, result: Rational): readonly Wrong[] {
  if (!isWhole(first) || !isWhole(second) || !isWhole(result)) return [];
  const [a, b, whole] = [first.n, second.n, result.n];
  switch (sign) {
    case '+':
      return [
        ['missing.adds-all', a + whole],
        ['complement.extra-ten', whole >= 20 ? complementWithExtraTen(a, b) : null],
        ['fact.one-out', b + 1],
        ['fact.one-out', b - 1],
      ];
    case '−':
      return [
        ['missing.adds-all', a + whole],
        ['fact.one-out', b + 1],
        ['fact.one-out', b - 1],
      ];
    case '×':
      return [
        ['divide.neighbour', b - 1],
        ['divide.neighbour', b + 1],
        ['divide.as-minus', whole - a],
      ];
    case '÷':
      return [
        ['divide.not-undone', a * whole],
        ['divide.neighbour', b + 1],
        ['divide.neighbour', b - 1],
      ];
  }
}

function belowZeroSlips({ first, sign, second }: Fact, result: Rational): readonly Wrong[] {
  const step = (by: number) => rational(result.n + by * result.d, result.d);
  const swapped = rational(sign === '+' ? first.n - second.n : first.n + second.n, first.d);
  return [
    ['negative.turned-round', negate(result)],
    // Zero can be counted twice only on the way across it.
    ['negative.zero-counted', first.n * result.n < 0 ? step(result.n < 0 ? 1 : -1) : null],
    ['negative.sign-lost', rational(Math.abs(first.n) + Math.abs(second.n), first.d)],
    ['operation.swapped', isWhole(first) && isWhole(second) ? swapped : null],
  ];
}

function decimalSlips({ first, sign, second }: Fact, result: Rational): readonly Wrong[] {
  if (sign === '+' || sign === '−')
    return [
      ['decimals.right-aligned', rightAligned(first, sign === '+' ? 1 : -1, second)],
      ['decimals.point-forgotten', withoutPoint(result)],
      ['fact.one-out', rational(result.n * 10 + result.d, result.d * 10)],
    ];
  const ten = rational(10);
  return [
    ['decimals.zero-appended', sign === '×' ? appendZero(first) : null],
    ['decimals.place-missed', multiply(result, ten)],
    ['decimals.place-missed', multiply(result, rational(1, 10))],
  ];
}
