// Number words and digits, both ways, from twenty to ten million.
import { formatWhole } from '../../numbers/format.js';
import { wholeToWords } from '../../numbers/words.js';
import { wholeAnswer, wordAnswer } from '../../questions/answer.js';
import type { Template } from '../../questions/draft.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { placeParts } from '../../questions/strategies/adding.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import type { NumberRange } from './place-templates.js';

/** The parts of a number as it is heard: 405 217 is 405 thousands and 217. */
function heardParts(n: number): number[] {
  const millions = Math.floor(n / 1_000_000) * 1_000_000;
  const thousands = Math.floor((n % 1_000_000) / 1000) * 1000;
  const rest = n % 1000;
  if (n < 1000)
    return rest % 100 < 20 ? [rest - (rest % 100), rest % 100].filter((part) => part > 0) : placeParts(n);
  return [millions, thousands, rest].filter((part) => part > 0);
}

/** The digits that come of writing every part out in full: 305 as 3005. */
function writtenAsHeard(n: number): number | null {
  const parts = heardParts(n);
  if (parts.length < 2) return null;
  const joined = Number(parts.join(''));
  return Number.isSafeInteger(joined) ? joined : null;
}

/** Without the zeros of the last empty place that something follows; to a thousand, also without those at the end. */
function withoutZeros(n: number): number | null {
  const digits = String(n);
  const short = n < 1000 ? digits.replaceAll('0', '') : digits.replace(/0+(?=[1-9]+0*$)/, '');
  return short !== digits && short !== '' ? Number(short) : null;
}

function swappedEnd(n: number): number | null {
  if (n < 13 || n % 10 === 0) return null;
  const digits = [...String(n)];
  const last = digits.length - 1;
  [digits[last - 1], digits[last]] = [digits[last] ?? '', digits[last - 1] ?? ''];
  return Number(digits.join(''));
}

/** The number whose name is mixed up with n's: thirteen and thirty, fifteen and fifty. */
function teenOrTy(n: number): number | null {
  const end = n % 100;
  if (end > 12 && end < 20) return n - end + 10 * (end - 10);
  return end >= 30 && end % 10 === 0 ? n - end + 10 + end / 10 : null;
}

const SLIPS_IN_WORDS = [
  ['place.reversed', swappedEnd],
  ['place.teen-and-ty', teenOrTy],
  ['place.next-word', (n: number) => (n < 13 ? n + 1 : null)],
] as const;

const sizeOfWords = (n: number) => heardParts(n).length * 0.3 + (String(n).includes('0') ? 0.4 : 0);

/** Not on a day of that number, which then stands on the board. */
function toDigits(range: NumberRange): Template {
  return templateOf<number>({
    id: 'to-digits',
    free: range.free,
    draft: (n, { locale }) => {
      const parts = heardParts(n);
      const say = (value: number) => formatWhole(value, locale);
      return {
        text: `How is ${wholeToWords(n, locale)} written in digits?`,
        answer: wholeAnswer(n, locale),
        expression: parts.join(' + ') || '0',
        features: { size: sizeOfWords(n) },
        strategy:
          parts.length > 1
            ? [
                `Hear the parts: ${parts.map((part) => `${wholeToWords(part, locale)} is ${say(part)}`).join(', ')}`,
                `${parts.map(say).join(' + ')} = ${say(n)}`,
              ]
            : [`“${wholeToWords(n, locale)}” stands for ${say(n)}`],
        slips: wholeSlips(
          [
            ['place.written-as-heard', writtenAsHeard(n)],
            ['place.zero-lost', withoutZeros(n)],
            ['place.reversed', swappedEnd(n)],
            ['place.teen-and-ty', teenOrTy(n)],
            ['place.next-word', n < 10 ? n + 1 : null],
          ],
          locale,
        ),
      };
    },
  });
}

function toWords(range: NumberRange): Template {
  return templateOf<number>({
    id: 'to-words',
    free: range.free,
    on: onWhole(range.from, range.to, (n) => n),
    draft: (n, { locale }) => {
      const say = (value: number) => formatWhole(value, locale);
      return {
        text: `How is ${say(n)} written in words?`,
        answer: wordAnswer(wholeToWords(n, locale)),
        expression: null,
        features: { size: sizeOfWords(n), adjust: 0.4 },
        strategy: [
          ...heardParts(n).map((part) => `${say(part)} is ${wholeToWords(part, locale)}`),
          ...(heardParts(n).length > 1 ? [`Together: ${wholeToWords(n, locale)}`] : []),
        ],
        slips: SLIPS_IN_WORDS.flatMap(([misconception, wrong]) => {
          const value = wrong(n);
          return value === null || value === n
            ? []
            : [{ misconception, answer: wordAnswer(wholeToWords(value, locale)) }];
        }),
        usesNumber: `writes ${say(n)} in words`,
      };
    },
  });
}

/** Mostly numbers with an empty place, where the mistakes are. */
function withZeros(rng: Rng, n: number): number {
  const place = rng.pick([10, 100, 1000]);
  return rng.chance(0.6) && n > 10 * place ? n - (Math.floor(n / place) % 10) * place : n;
}

const TO_20: NumberRange = { free: (rng) => rng.int(1, 20), from: 1, to: 20 };
const TO_100: NumberRange = { free: (rng) => rng.int(13, 99), from: 11, to: 100 };
const TO_1000: NumberRange = { free: (rng) => withZeros(rng, rng.int(101, 999)), from: 101, to: 1000 };
const LARGE: NumberRange = { free: (rng) => withZeros(rng, rng.int(1001, 99_999)), from: 1001, to: 99_999 };
const MILLIONS: NumberRange = {
  free: (rng) => withZeros(rng, rng.chance(0.5) ? rng.int(100_001, 999_999) : rng.int(101, 999) * 10_000),
  from: 100_001,
  to: 9_999_999,
};

export const NUMBER_WORD_SKILLS: readonly Skill[] = [
  {
    id: 'place.words.20',
    title: 'Number words to twenty',
    year: 1,
    fluentYear: 1,
    strand: 'place-value',
    prerequisites: ['place.next.20'],
    codes: { ac9: ['AC9MFN01'], england: ['NC-Y1-place-5', 'NC-Y1-place-2'], ccss: ['K.CC.A.3'] },
    templates: [toDigits(TO_20), toWords(TO_20)],
  },
  {
    id: 'place.words.100',
    title: 'Number words to a hundred',
    year: 2,
    fluentYear: 2,
    strand: 'place-value',
    prerequisites: ['place.words.20', 'place.tens-ones'],
    codes: { ac9: ['AC9M1N01'], england: ['NC-Y2-place-5'], ccss: ['1.NBT.A.1'] },
    templates: [toDigits(TO_100), toWords(TO_100)],
  },
  {
    id: 'place.words.1000',
    title: 'Number words to a thousand',
    year: 3,
    fluentYear: 3,
    strand: 'place-value',
    prerequisites: ['place.words.100', 'place.three-digit'],
    codes: { ac9: ['AC9M2N01'], england: ['NC-Y3-place-5'], ccss: ['2.NBT.A.3'] },
    templates: [toDigits(TO_1000), toWords(TO_1000)],
  },
  {
    id: 'place.words.large',
    title: 'Number words beyond a thousand',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.words.1000', 'place.thousands'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y5-place-1'], ccss: ['4.NBT.A.2'] },
    templates: [toDigits(LARGE), toWords(LARGE)],
  },
  {
    id: 'place.words.million',
    title: 'Number words to millions',
    year: 5,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.words.large', 'place.million'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y5-place-1', 'NC-Y6-place-1'], ccss: ['4.NBT.A.2'] },
    templates: [toDigits(MILLIONS)],
  },
];
