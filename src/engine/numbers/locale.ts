// What differs between Australian, New Zealand, British and US classrooms: separators, currency, number words, spelling.

/** The classrooms that Afterbell speaks to, by language tag (BCP 47). */
export const LOCALES = ['en-AU', 'en-NZ', 'en-GB', 'en-US'] as const;
export type LocaleId = (typeof LOCALES)[number];

/** The currencies whose coins and notes are drawn (ISO 4217). */
export type CurrencyCode = 'AUD' | 'NZD' | 'GBP' | 'USD';

/** A country's money as children handle it. Coins and notes are those in everyday use: from memory. */
export interface Currency {
  readonly code: CurrencyCode;
  /** Written before the amount: "$" or "£". */
  readonly symbol: string;
  /** Written after an amount below one main unit: "c", "p" or "¢". */
  readonly minorSymbol: string;
  readonly mainName: readonly [one: string, many: string];
  readonly minorName: readonly [one: string, many: string];
  /** Coin values in minor units, smallest first; only coins in use. */
  readonly coins: readonly number[];
  /** Diameters of the coins in millimetres, in the order of `coins`; across the flats where a coin is not round. */
  readonly coinDiametersMm: readonly number[];
  /** Note values in main units, smallest first. */
  readonly notes: readonly number[];
  readonly noteName: readonly [one: string, many: string];
  /** American bills are all of one size; elsewhere notes grow with what they are worth. */
  readonly notesAlike: boolean;
}

/** How one country's classrooms write and say numbers, money and measures. */
export interface Locale {
  readonly id: LocaleId;
  /** Between groups of three digits, from 10 000 up (from 1,000 up in Britain and the US). */
  readonly groupSeparator: string;
  readonly groupFrom: number;
  /** "one hundred and five" (true) or "one hundred five" (false). */
  readonly andInWords: boolean;
  readonly currency: Currency;
  /** The scale of thermometers and weather. */
  readonly degrees: '°C' | '°F';
  /** "Count in tens" or, in American classrooms, "count by tens". Common practice. */
  readonly countsWith: 'in' | 'by';
  /** The sign of the litre: the National Curriculum of England writes l and ml (Year 3 measures). */
  readonly litreSign: 'L' | 'l';
  /** metre or meter, colour or color, maths or math. */
  readonly spelling: {
    readonly metre: string;
    readonly litre: string;
    readonly colour: string;
    readonly maths: string;
  };
}

/** Australian: thin gap as the curriculum writes it (a no-break space here), coins of the Royal Australian Mint in circulation. */
const AUSTRALIAN: Locale = {
  id: 'en-AU',
  groupSeparator: '\u00a0',
  groupFrom: 10_000,
  andInWords: true,
  currency: {
    code: 'AUD',
    symbol: '$',
    minorSymbol: 'c',
    mainName: ['dollar', 'dollars'],
    minorName: ['cent', 'cents'],
    coins: [5, 10, 20, 50, 100, 200],
    // Royal Australian Mint; 5c, 10c and 50c from memory.
    coinDiametersMm: [19.41, 23.6, 28.65, 31.65, 25, 20.5],
    notes: [5, 10, 20, 50, 100],
    noteName: ['note', 'notes'],
    notesAlike: false,
  },
  degrees: '°C',
  countsWith: 'in',
  litreSign: 'L',
  spelling: { metre: 'metre', litre: 'litre', colour: 'colour', maths: 'maths' },
};

/** New Zealand: written and said as in Australia; no coin below ten cents (from memory). */
const NEW_ZEALAND: Locale = {
  ...AUSTRALIAN,
  id: 'en-NZ',
  currency: {
    ...AUSTRALIAN.currency,
    code: 'NZD',
    coins: [10, 20, 50, 100, 200],
    // Reserve Bank of New Zealand, "Coin specifications and images by denomination"; $1 and $2 from memory.
    coinDiametersMm: [20.5, 21.75, 24.75, 23, 26.5],
  },
};

const BRITISH: Locale = {
  id: 'en-GB',
  groupSeparator: ',',
  groupFrom: 1000,
  andInWords: true,
  currency: {
    code: 'GBP',
    symbol: '£',
    minorSymbol: 'p',
    mainName: ['pound', 'pounds'],
    minorName: ['penny', 'pence'],
    coins: [1, 2, 5, 10, 20, 50, 100, 200],
    // Royal Mint, as tabled in the encyclopaedia article "Coins of the pound sterling".
    coinDiametersMm: [20.3, 25.9, 18, 24.5, 21.4, 27.3, 23.43, 28.4],
    notes: [5, 10, 20, 50],
    noteName: ['note', 'notes'],
    notesAlike: false,
  },
  degrees: '°C',
  countsWith: 'in',
  litreSign: 'l',
  spelling: { metre: 'metre', litre: 'litre', colour: 'colour', maths: 'maths' },
};

const AMERICAN: Locale = {
  id: 'en-US',
  groupSeparator: ',',
  groupFrom: 1000,
  andInWords: false,
  currency: {
    code: 'USD',
    symbol: '$',
    minorSymbol: '¢',
    mainName: ['dollar', 'dollars'],
    minorName: ['cent', 'cents'],
    coins: [1, 5, 10, 25],
    // United States Mint, coin specifications: the dime is smaller than the penny and the nickel.
    coinDiametersMm: [19.05, 21.21, 17.91, 24.26],
    notes: [1, 5, 10, 20, 50, 100],
    noteName: ['bill', 'bills'],
    notesAlike: true,
  },
  degrees: '°F',
  countsWith: 'by',
  litreSign: 'L',
  spelling: { metre: 'meter', litre: 'liter', colour: 'color', maths: 'math' },
};

const BY_ID: Readonly<Record<LocaleId, Locale>> = {
  'en-AU': AUSTRALIAN,
  'en-NZ': NEW_ZEALAND,
  'en-GB': BRITISH,
  'en-US': AMERICAN,
};

/** The locale with the given id. */
export function localeOf(id: LocaleId): Locale {
  return BY_ID[id];
}
