// Coins and notes as plain tokens: the value in large figures, coins in their true sizes to one another, no currency's artwork.
import type { FigureSpec } from '../figure.js';
import { type Currency, LOCALES, localeOf } from '../../numbers/locale.js';
import { fitSize } from '../label.js';
import { boxOf, circle, FINE_MM, BOLD_MM, type Mark, moved, PALE, rect, type Sketch, text } from '../svg.js';
import { countInWords, listOf } from '../words.js';

type MoneySpec = Extract<FigureSpec, { kind: 'money' }>;

const WIDTH_MM = 80;
const GAP_MM = 2;
/** The radius of a country's widest coin; the others are drawn in proportion. */
const WIDEST_RADIUS_MM = 7.9;
/** The radius of a coin that the country does not have. */
const USUAL_RADIUS_MM = 7;

/** Coin values in minor units, note values in main units; drawn in the given order, notes above coins. */
export function drawMoney(spec: MoneySpec): Sketch {
  const currency = currencyOf(spec.currency);
  const rows = [
    ...wrap(spec.notes.map((value) => note(value, currency))),
    ...wrap(spec.coins.map((value) => coin(value, currency))),
  ];
  const marks: Mark[] = [];
  let top = 0;
  for (const row of rows) {
    const height = Math.max(...row.map((token) => sizeOf(token).height));
    let left = 0;
    for (const token of row) {
      const { width, height: own } = sizeOf(token);
      marks.push(...moved(token, left - boxOf(token).left, top + (height - own) / 2 - boxOf(token).top));
      left += width + GAP_MM;
    }
    top += height + GAP_MM;
  }
  if (rows.length === 0) return { marks: [text('no money', [0, 0])], alt: 'No coins and no notes.' };
  const told = [
    ...tally(spec.notes, (value) => `${currency.symbol}${value} ${currency.noteName[0]}`),
    ...tally(spec.coins, (value) => `${coinName(value, currency)} coin`),
  ];
  return { marks, alt: `Money: ${listOf(told)}.` };
}

function coin(value: number, currency: Currency): Mark[] {
  const rank = currency.coins.indexOf(value);
  const diameter = currency.coinDiametersMm[rank];
  const radius =
    diameter === undefined
      ? USUAL_RADIUS_MM
      : (WIDEST_RADIUS_MM * diameter) / Math.max(...currency.coinDiametersMm);
  const words = value >= 100 ? `${currency.symbol}${value / 100}` : `${value}${currency.minorSymbol}`;
  const fill = value >= 100 ? PALE : '#ffffff';
  return [
    circle([0, 0], radius, { fill, widthMm: BOLD_MM, part: 'coin' }),
    circle([0, 0], radius - 1.1, { widthMm: FINE_MM }),
    text(words, [0, 0], fitSize(words, 2 * (radius - 2), 6)),
  ];
}

function note(value: number, currency: Currency): Mark[] {
  const rank = currency.notesAlike ? 3 : Math.max(0, currency.notes.indexOf(value));
  const width = 23 + rank * 1.2;
  const words = `${currency.symbol}${value}`;
  return [
    rect(0, 0, width, 12.6, { fill: '#ffffff', widthMm: BOLD_MM, part: 'note' }, 1),
    rect(1.4, 1.4, width - 2.8, 9.8, { fill: PALE, widthMm: FINE_MM }, 0.6),
    circle([width / 2, 6.3], width * 0.3, { fill: '#ffffff', stroke: 'none' }, 4.4),
    text(words, [width / 2, 6.3], fitSize(words, width * 0.52, 6.6)),
  ];
}

function coinName(value: number, currency: Currency): string {
  if (value >= 100) return `${currency.symbol}${value / 100}`;
  return currency.code === 'GBP' ? `${value}p` : `${value}-cent`;
}

function tally(values: readonly number[], name: (value: number) => string): string[] {
  return [...new Set(values)].map((value) =>
    countInWords(values.filter((other) => other === value).length, name(value)),
  );
}

// As few rows as the width allows, filled evenly.
function wrap(tokens: readonly Mark[][]): Mark[][][] {
  const fewest = fill(tokens, tokens.length).length;
  return fill(tokens, Math.ceil(tokens.length / Math.max(fewest, 1)));
}

function fill(tokens: readonly Mark[][], most: number): Mark[][][] {
  const rows: Mark[][][] = [];
  let used = 0;
  for (const token of tokens) {
    const { width } = sizeOf(token);
    const row = rows.at(-1);
    if (row && row.length < most && used + GAP_MM + width <= WIDTH_MM) {
      row.push(token);
      used += GAP_MM + width;
    } else {
      rows.push([token]);
      used = width;
    }
  }
  return rows;
}

function sizeOf(marks: readonly Mark[]): { width: number; height: number } {
  const box = boxOf(marks);
  return { width: box.right - box.left, height: box.bottom - box.top };
}

function currencyOf(code: MoneySpec['currency']): Currency {
  const id = LOCALES.find((one) => localeOf(one).currency.code === code) ?? 'en-AU';
  return localeOf(id).currency;
}
