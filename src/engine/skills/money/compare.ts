// Two amounts of money side by side: which is more.
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { choiceAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import type { MisconceptionId } from '../../questions/misconceptions.js';
import { price } from '../measuring/quantity.js';

/** Amount of small units as written: "458c". */
export function minorText(minor: number, locale: Locale): string {
  return `${formatWhole(minor, locale)}${locale.currency.minorSymbol}`;
}

interface Written {
  readonly minor: number;
  readonly text: string;
  /** The number a child sees, without its unit. */
  readonly seen: number;
  /** Whether it is written in dollars or pounds. */
  readonly isLargeUnit: boolean;
}

/** What may lead a child to the smaller of two amounts: the larger number, the larger unit, or the order itself. */
function whyLess(more: Written, less: Written): MisconceptionId {
  if (less.seen > more.seen) return 'money.unit-ignored';
  return less.isLargeUnit && !more.isLargeUnit ? 'money.large-unit-wins' : 'compare.other-way-round';
}

/** What to see before comparing: both in the small unit, or the small units alone where the large ones are alike. */
function firstThought(more: Written, less: Written, locale: Locale): string[] {
  const inLarge = [more, less].filter(({ isLargeUnit }) => isLargeUnit);
  if (inLarge.length === 1) return inLarge.map(({ text, minor }) => `${text} = ${minorText(minor, locale)}`);
  return inLarge.length === 2 && Math.floor(more.minor / 100) === Math.floor(less.minor / 100)
    ? [
        `The ${locale.currency.mainName[1]} are alike: ${minorText(more.minor % 100, locale)} > ${minorText(less.minor % 100, locale)}`,
      ]
    : [];
}

export function compareAmounts(
  first: Written,
  second: Written,
  adjust: number,
  { rng, locale }: TemplateContext,
): Draft {
  const more = first.minor > second.minor ? first : second;
  const less = more === first ? second : first;
  const shownInOrder = rng.chance(0.5) ? [first, second] : [second, first];
  return {
    text: `Which is more: ${shownInOrder[0]?.text} or ${shownInOrder[1]?.text}?`,
    answer: choiceAnswer(more.text),
    expression: null,
    features: { fewChoices: true, unlike: less.seen > more.seen, adjust },
    strategy: [...firstThought(more, less, locale), `${more.text} > ${less.text}`],
    slips: [{ misconception: whyLess(more, less), answer: choiceAnswer(less.text) }],
  };
}

export function writtenMain(minor: number, locale: Locale): Written {
  const isLargeUnit = minor >= 100;
  return { minor, text: price(minor, locale), seen: isLargeUnit ? minor / 100 : minor, isLargeUnit };
}

export function writtenMinor(minor: number, locale: Locale): Written {
  return { minor, text: minorText(minor, locale), seen: minor, isLargeUnit: false };
}

/** Something to compare an amount with: a plain smaller amount, swapped digits, or small units. */
export function compareOn(minor: number, context: TemplateContext): Draft {
  const { rng, locale } = context;
  const base = writtenMain(minor, locale);
  const dollars = Math.floor(minor / 100);
  const cents = minor % 100;
  const swapped = dollars * 100 + (cents % 10) * 10 + Math.floor(cents / 10);
  const way = rng.int(0, 2);
  if (way === 0 && dollars >= 2) {
    return compareAmounts(base, writtenMain(rng.int(1, dollars - 1) * 100, locale), -1.4, context);
  }
  if (way === 1 && swapped !== minor && swapped % 100 >= 10 && dollars >= 1) {
    return compareAmounts(base, writtenMain(swapped, locale), -0.6, context);
  }
  const step = rng.pick([-10, -5, 5, 10]) * (dollars >= 3 ? rng.int(1, 3) : 1);
  const other = minor + step > 0 ? minor + step : minor + 10;
  return compareAmounts(base, writtenMinor(other, locale), 0.2, context);
}
