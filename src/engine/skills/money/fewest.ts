// An amount made from the fewest coins and notes.
import type { Locale, LocaleId } from '../../numbers/locale.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Draft, Template, TemplateContext } from '../../questions/draft.js';
import { minorOn, price, smallestCoin, using, wholeOn } from '../measuring/quantity.js';
import { leastCounted, pieces, totalOf } from './pieces.js';

/** Pieces that exist but hardly come to hand, in minor units: the $2 bill and the half dollar. Common practice. */
const SELDOM_SEEN: Partial<Record<LocaleId, readonly number[]>> = { 'en-US': [50, 200] };

/** The largest that fits, again and again. */
function greedy(minor: number, from: readonly number[]): number[] {
  const out: number[] = [];
  let rest = minor;
  for (const piece of from.toSorted((a, b) => b - a)) for (; rest >= piece; rest -= piece) out.push(piece);
  return out;
}

/** The fewest coins and notes for an amount: largest first, which is best for 1-2-5 and for US pieces. */
export function fewestPieces(minor: number, locale: Locale, without = 0): number[] {
  return greedy(
    minor,
    pieces(locale).filter((piece) => piece !== without),
  );
}

/** ", without $2 bills": the seldom seen pieces that would make it fewer, so that only one answer is right. */
function withoutRare(minor: number, locale: Locale): string {
  const rare = SELDOM_SEEN[locale.id] ?? [];
  const named = [...new Set(greedy(minor, [...pieces(locale), ...rare]))]
    .filter((piece) => rare.includes(piece))
    .map((piece) => `${price(piece, locale)} ${piece >= 100 ? locale.currency.noteName[1] : 'coins'}`);
  return named.length === 0 ? '' : `, without ${named.join(' or ')}`;
}

/** What the amount is made of: "coins", "notes and coins" or "bills and coins". */
function piecesFor(minor: number, locale: Locale): string {
  return minor < leastNote(locale) ? 'coins' : `${locale.currency.noteName[1]} and coins`;
}

/** The least note in cents or pence. */
function leastNote(locale: Locale): number {
  return 100 * Math.min(...locale.currency.notes);
}

function fewest(minor: number, { locale }: TemplateContext): Draft {
  const best = fewestPieces(minor, locale);
  const largest = best[0] ?? 0;
  const second = best.find((piece) => piece < largest);
  const counts = [...new Set(best)].map((piece) => best.filter((other) => other === piece).length);
  const proposals = [
    fewestPieces(minor, locale, largest),
    second === undefined ? [] : fewestPieces(minor, locale, second),
  ].filter((paid) => totalOf(paid) === minor && paid.length > best.length);
  return {
    text: `What is the smallest number of ${piecesFor(minor, locale)} that make ${price(minor, locale)}${withoutRare(minor, locale)}?`,
    answer: wholeAnswer(best.length, locale),
    expression: counts.join(' + '),
    features: { size: Math.max(0, best.length - 2) * 0.7, adjust: best.length === 1 ? -1 : 0 },
    strategy:
      best.length === 1
        ? [
            `There is a ${price(minor, locale)} ${minor < leastNote(locale) ? 'coin' : locale.currency.noteName[0]}`,
          ]
        : [
            'Take the one worth most that fits, again and again',
            `${best.map((piece) => price(piece, locale)).join(' + ')} = ${price(minor, locale)}`,
            `That is ${best.length} in all`,
          ],
    slips: [
      ...proposals.map((list) => ({
        misconception: 'money.small-pieces' as const,
        answer: wholeAnswer(list.length, locale),
      })),
      ...(best.length > 1
        ? [{ misconception: 'money.piece-missed' as const, answer: wholeAnswer(best.length - 1, locale) }]
        : []),
    ],
  };
}

/** Amounts of which one is picked: below one dollar or pound, or whole ones, and never a single piece, seldom seen or not. */
function freeAmounts(locale: Locale): number[] {
  const least = leastCounted(locale);
  const small = Array.from({ length: Math.floor(95 / least) }, (_, i) => (i + 1) * least);
  const whole = Array.from({ length: 38 }, (_, i) => (i + 3) * 100);
  return [...small, ...whole].filter(
    (minor) => fewestPieces(minor, locale).length > 1 && !SELDOM_SEEN[locale.id]?.includes(minor),
  );
}

export const FEWEST: Template = {
  id: 'fewest',
  ask: (context) => fewest(context.rng.pick(freeAmounts(context.locale)), context),
  dayKinds: ['whole', 'money'],
  askOn: (day, context) => {
    const { locale } = context;
    const minor = day.kind === 'whole' ? (wholeOn(day, 1, 500) ?? 0) * 100 : minorOn(day, 5, 1_000_000);
    if (!minor || minor % smallestCoin(locale) !== 0) return null;
    const count = fewestPieces(minor, locale).length;
    if (count < 2 || count > 12) return null;
    return using(
      fewest(minor, context),
      `makes ${price(minor, locale)} with the fewest ${piecesFor(minor, locale)}`,
    );
  },
};
