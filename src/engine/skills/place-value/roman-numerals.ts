// Roman numerals to a hundred and a thousand, and years written in them.
import { formatWhole } from '../../numbers/format.js';
import { toRoman } from '../../numbers/roman.js';
import { wholeAnswer, wordAnswer } from '../../questions/answer.js';
import type { Draft, DraftSlip, Template } from '../../questions/draft.js';
import type { MisconceptionId } from '../../questions/misconceptions.js';
import type { Answer } from '../../questions/question.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Locale } from '../../numbers/locale.js';
import { placeParts } from '../../questions/strategies/adding.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import type { NumberRange } from './place-templates.js';

const WORTH: Readonly<Record<string, number>> = { I: 1, V: 5, X: 10, L: 50, C: 100, D: 500, M: 1000 };

/** What the letters come to when every one is added, also those that are to be taken away. */
function allAdded(roman: string): number {
  return [...roman].reduce((sum, letter) => sum + (WORTH[letter] ?? 0), 0);
}

/** Groups of four for 4 and 9 in every place, as a child writes who only adds: 9 as VIIII. */
function onlyAdding(n: number): string {
  return toRoman(n)
    .replace('CM', 'DCCCC')
    .replace('CD', 'CCCC')
    .replace('XC', 'LXXXX')
    .replace('XL', 'XXXX')
    .replace('IX', 'VIIII')
    .replace('IV', 'IIII');
}

const TAKES_AWAY = /CM|CD|XC|XL|IX|IV/;

function splitSteps(n: number, locale: Locale): string[] {
  const parts = placeParts(n);
  const named = parts.map((part) => `${toRoman(part)} is ${formatWhole(part, locale)}`).join('; ');
  return parts.length > 1
    ? [named, `${parts.map((part) => formatWhole(part, locale)).join(' + ')} = ${formatWhole(n, locale)}`]
    : [named];
}

function features(n: number, adjust = 0): Draft['features'] {
  const roman = toRoman(n);
  return {
    size: Math.min(3, roman.length / 3),
    extraSteps: TAKES_AWAY.test(roman) ? 1 : 0,
    adjust: adjust - 0.3,
  };
}

/** Not on a day of that number, which then stands on the board. */
function read(range: NumberRange): Template {
  return templateOf<number>({
    id: 'read',
    free: range.free,
    draft: (n, { locale }) => ({
      text: `What number is the Roman numeral ${toRoman(n)}?`,
      answer: wholeAnswer(n, locale),
      expression: placeParts(n).join(' + '),
      features: features(n),
      strategy: splitSteps(n, locale),
      slips: wholeSlips(
        [
          ['roman.always-adds', allAdded(toRoman(n))],
          ['roman.letters-mixed', misread(n)],
        ],
        locale,
      ),
    }),
  });
}

/** Letters taken for one another, in the order in which they are looked for. */
const MIXED_LETTERS = [
  ['L', 'C'],
  ['V', 'X'],
  ['D', 'M'],
  ['C', 'L'],
  ['X', 'V'],
] as const;

/** The numeral as it stands to a child who takes one of its letters for another; null for I, II and III. */
function lettersMixed(roman: string): string | null {
  const mixed = MIXED_LETTERS.find(([letter]) => roman.includes(letter));
  return mixed === undefined ? null : roman.replaceAll(mixed[0], mixed[1]);
}

/** What letters in any order come to: a smaller one before a larger one is taken away. */
function readAsWritten(letters: string): number {
  const worths = [...letters].map((letter) => WORTH[letter] ?? 0);
  return worths.reduce((sum, worth, i) => (worth < (worths[i + 1] ?? 0) ? sum - worth : sum + worth), 0);
}

function misread(n: number): number | null {
  const mixed = lettersMixed(toRoman(n));
  return mixed === null ? null : readAsWritten(mixed);
}

function write(range: NumberRange): Template {
  return templateOf<number>({
    id: 'write',
    free: range.free,
    on: onWhole(range.from, range.to, (n) => n),
    draft: (n, { locale }) => {
      const slips: DraftSlip[] = TAKES_AWAY.test(toRoman(n))
        ? [{ misconception: 'roman.four-alike', answer: wordAnswer(onlyAdding(n)) }]
        : [];
      const mixed = lettersMixed(toRoman(n));
      if (mixed !== null) slips.push({ misconception: 'roman.letters-mixed', answer: wordAnswer(mixed) });
      return {
        text: `How is ${formatWhole(n, locale)} written in Roman numerals?`,
        answer: wordAnswer(toRoman(n)),
        expression: null,
        features: features(n, 0.3),
        strategy: [
          ...placeParts(n).map((part) => `${formatWhole(part, locale)} is ${toRoman(part)}`),
          ...(placeParts(n).length > 1 ? [`In a row: ${toRoman(n)}`] : []),
        ],
        slips,
        usesNumber: `writes ${formatWhole(n, locale)} in Roman numerals`,
      };
    },
  });
}

/** A year is written without a mark between its digits. */
const yearAnswer = (n: number): Answer => ({ kind: 'number', text: String(n), value: String(n) });

function slipToYear(misconception: MisconceptionId, n: number | null): DraftSlip[] {
  return n === null ? [] : [{ misconception, answer: yearAnswer(n) }];
}

/** Years that a film can bear: none before there were films, none still to come. */
const FILM_YEARS = [1901, 2025] as const;

const year = templateOf<number>({
  id: 'year',
  free: (rng) => rng.int(...FILM_YEARS),
  draft: (n, { locale }) => ({
    text:
      n >= FILM_YEARS[0] && n <= FILM_YEARS[1]
        ? `A film ends with the year ${toRoman(n)}. Which year is that?`
        : `Which year is ${toRoman(n)} in Roman numerals?`,
    answer: yearAnswer(n),
    expression: placeParts(n).join(' + '),
    features: { ...features(n), story: true },
    strategy: [
      ...placeParts(n).map((part) => `${toRoman(part)} is ${formatWhole(part, locale)}`),
      `${placeParts(n)
        .map((part) => formatWhole(part, locale))
        .join(' + ')} = ${n}`,
    ],
    slips: [
      ...slipToYear('roman.always-adds', allAdded(toRoman(n))),
      ...slipToYear('roman.letters-mixed', misread(n)),
    ],
  }),
});

const TO_100: NumberRange = { free: (rng) => rng.int(3, 100), from: 1, to: 100 };
const TO_1000: NumberRange = { free: (rng) => rng.int(101, 1000), from: 101, to: 1000 };

export const ROMAN_SKILLS: readonly Skill[] = [
  {
    id: 'place.roman.100',
    title: 'Roman numerals to a hundred',
    year: 4,
    fluentYear: 4,
    strand: 'place-value',
    prerequisites: ['place.three-digit'],
    codes: { ac9: [], england: ['NC-Y4-place-9', 'NC-Y3-measure-4'], ccss: [] },
    templates: [read(TO_100), write(TO_100)],
  },
  {
    id: 'place.roman.1000',
    title: 'Roman numerals to a thousand, and years',
    year: 5,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.roman.100', 'place.thousands'],
    codes: { ac9: [], england: ['NC-Y5-place-6'], ccss: [] },
    templates: [read(TO_1000), write(TO_1000), year],
  },
];
