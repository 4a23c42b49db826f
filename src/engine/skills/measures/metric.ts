// Pairs of metric units, a larger and a smaller one.
import type { Locale } from '../../numbers/locale.js';
import { toNumber } from '../../numbers/rational.js';
import { type Quantity } from '../measuring/quantity.js';

/** A larger and a smaller metric unit of the same quantity. */
export interface UnitPair {
  readonly large: string;
  readonly small: string;
  readonly factor: number;
  readonly largeName: (locale: Locale) => string;
  readonly smallName: (locale: Locale) => string;
  /** What is commonly measured in these units, for one-sentence stories: up to `smallUpTo` large units, and beyond. */
  readonly things: readonly string[];
  readonly bigThings: readonly string[];
  readonly smallUpTo: number;
}

/** Metres and centimetres. */
export const M_CM: UnitPair = {
  large: 'm',
  small: 'cm',
  factor: 100,
  largeName: (locale) => locale.spelling.metre,
  smallName: (locale) => `centi${locale.spelling.metre}`,
  things: ['rope', 'ribbon', 'cable'],
  bigThings: ['rope', 'cable', 'fence wire'],
  smallUpTo: 6,
};
/** Centimetres and millimetres. */
export const CM_MM: UnitPair = {
  large: 'cm',
  small: 'mm',
  factor: 10,
  largeName: (locale) => `centi${locale.spelling.metre}`,
  smallName: (locale) => `milli${locale.spelling.metre}`,
  things: ['line', 'leaf', 'feather'],
  bigThings: ['line', 'strip of paper'],
  smallUpTo: 25,
};
/** Kilometres and metres. */
export const KM_M: UnitPair = {
  large: 'km',
  small: 'm',
  factor: 1000,
  largeName: (locale) => `kilo${locale.spelling.metre}`,
  smallName: (locale) => locale.spelling.metre,
  things: ['path', 'run', 'walk'],
  bigThings: ['bike trail', 'road'],
  smallUpTo: 12,
};
/** Kilograms and grams. */
export const KG_G: UnitPair = {
  large: 'kg',
  small: 'g',
  factor: 1000,
  largeName: () => 'kilogram',
  smallName: () => 'gram',
  things: ['bag of rice', 'block of clay'],
  bigThings: ['sack of rice', 'heap of sand'],
  smallUpTo: 6,
};
/** Litres and millilitres. */
export const L_ML: UnitPair = {
  large: 'L',
  small: 'mL',
  factor: 1000,
  largeName: (locale) => locale.spelling.litre,
  smallName: (locale) => `milli${locale.spelling.litre}`,
  things: ['bottle of juice', 'bucket of water', 'jug of lemonade'],
  bigThings: ['tank of water', 'drum of paint'],
  smallUpTo: 5,
};
/** All pairs, in the order of the strand. */
export const PAIRS = [M_CM, CM_MM, KM_M, KG_G, L_ML] as const;

/** "3/4 of a metre" or "3.6 m". */
export function largeText(amount: Quantity, pair: UnitPair, locale: Locale): string {
  return amount.style === 'fraction' && toNumber(amount.value) < 1
    ? `${amount.text} of a ${pair.largeName(locale)}`
    : `${amount.text}\u00a0${pair.large}`;
}
