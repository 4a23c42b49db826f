// Is a typed answer right, and if not, which typical mistake does it show?
//
// The rule: an answer of equal value is right, however it is written. 6/8, 0.75, 75% and ¾ all answer 3/4; 0.47 m answers
// 47 cm. Where a question is about the form itself ("write 6/8 in its simplest form", "write 47 in words"), its answer
// carries no value (kind "word"): then only the texts of the answer and of `accepts` count, apart from case, spacing,
// spelling (metre, meter) and a missing hyphen or "and" in number words.
//
// Times of day: an answer that states the half of the day ("7:45 pm", "19:45", "07:45") must be met in that half, so a
// bare 7:45 does not answer 7:45 pm. An answer that leaves it open ("7:45") is met by any bare time at the same place of
// the 12-hour dial, so 19:45 does; a typed "am" or "pm" then counts only if the question shows no dial.
import type { Locale } from '../numbers/locale.js';
import { equals, parseValue, type Rational, rational } from '../numbers/rational.js';
import { parseClockWords } from '../numbers/time-words.js';
import { parseNumberWords } from '../numbers/words.js';
import { foldText } from '../numbers/fold-text.js';
import { readClock, readListWays, readNumber, readQuantity } from './parse-answer.js';
import type { Answer, Question, Slip } from './question.js';

export const VERDICTS = ['right', 'wrong', 'blank'] as const;
export type Verdict = (typeof VERDICTS)[number];

export interface CheckedAnswer {
  readonly verdict: Verdict;
  /** The question's slips that a wrong answer matches, in the question's order; empty when right or blank. */
  readonly slips: readonly Slip[];
}

/** What of a question the check needs; a whole {@link Question} will do. */
export type CheckableQuestion = Pick<Question, 'text' | 'figure' | 'answer' | 'accepts' | 'slips'>;

/** The verdict on what was typed for a question, and the typical mistakes that a wrong answer matches. Never throws. */
export function checkAnswer(question: CheckableQuestion, typed: string, locale: Locale): CheckedAnswer {
  const text = foldText(typed);
  if (text === '') return { verdict: 'blank', slips: [] };
  const { answer, accepts } = question;
  const isRight =
    meets(answer, text, question, locale) || accepts.some((form) => isForm(foldText(form), text, answer));
  if (isRight) return { verdict: 'right', slips: [] };
  const slips = question.slips.filter((slip) => meets(asAnswer(slip, answer), text, question, locale));
  return { verdict: 'wrong', slips };
}

/** True when the text is an accepted form, or the same bare number or time written otherwise. */
function isForm(form: string, text: string, answer: Answer): boolean {
  if (sameWords(form, text)) return true;
  if (answer.value === null) return answer.kind === 'word' && meetsWords(form, text);
  if (answer.kind === 'time') {
    const [clock, given] = [readClock(form), readClock(text)];
    return clock !== null && clock.minutes === given?.minutes && clock.halfKnown === given.halfKnown;
  }
  const [number, given] = [readNumber(form), readNumber(text)];
  return number !== null && given !== null && equals(number, given);
}

/** A slip has no kind of its own: it is read as the right answer would be. */
function asAnswer(slip: Slip, answer: Answer): Answer {
  if (slip.value === null) return { ...slip, kind: answer.value === null ? answer.kind : 'word' };
  return { ...slip, kind: answer.value === null ? 'number' : answer.kind };
}

type Judge = (answer: Answer, text: string, question: CheckableQuestion, locale: Locale) => boolean;

const JUDGES: Readonly<Record<Answer['kind'], Judge>> = {
  number: meetsQuantity,
  decimal: meetsQuantity,
  fraction: meetsQuantity,
  money: meetsQuantity,
  time: meetsTime,
  word: (answer, text) => meetsWords(foldText(answer.text), text),
  choice: (answer, text) => meetsChoice(foldText(answer.text), text),
  list: (answer, text) => meetsList(answer, text),
};

function meets(answer: Answer, text: string, question: CheckableQuestion, locale: Locale): boolean {
  if (sameWords(foldText(answer.text), text)) return true;
  return JUDGES[answer.kind](answer, text, question, locale);
}

/** a x sizeA = b x sizeB, exactly; big integers, since typed numbers may be large. */
function equalScaled(a: Rational, sizeA: Rational, b: Rational, sizeB: Rational): boolean {
  const left = BigInt(a.n) * BigInt(sizeA.n) * BigInt(b.d) * BigInt(sizeB.d);
  return left === BigInt(b.n) * BigInt(sizeB.n) * BigInt(a.d) * BigInt(sizeA.d);
}

const UNIT_SIZE = rational(1);
const HUNDREDTH = rational(1, 100);

function meetsQuantity(answer: Answer, text: string, question: CheckableQuestion, locale: Locale): boolean {
  const given = readQuantity(bareStatement(text), locale);
  const value = parseValue(answer.value ?? '');
  if (given === null || value === null) return false;
  const isValue = equalScaled(given.value, UNIT_SIZE, value, UNIT_SIZE);
  const printed = readQuantity(foldText(answer.text), locale);
  const isPrinted = printed !== null && equalScaled(given.value, UNIT_SIZE, printed.value, UNIT_SIZE);
  // A bare number takes the unit in which the answer is printed, or its main unit.
  if (given.unit === null && given.noun === '') return isValue || isPrinted;
  if (given.unit === null) return isValue && namesSame(given.noun, answer, question);
  if (printed?.unit) {
    const isSameQuantity = given.unit.quantity === printed.unit.quantity;
    return isSameQuantity && equalScaled(given.value, given.unit.size, printed.value, printed.unit.size);
  }
  if (given.unit.quantity === 'percent')
    return (
      equalScaled(given.value, HUNDREDTH, value, UNIT_SIZE) || (isValue && /%|per ?cent/i.test(question.text))
    );
  return isValue;
}

/** "n = 5", "= 5" and "5." say 5. */
function bareStatement(text: string): string {
  return text.replace(/^(?:[a-z] ?)?= ?/, '').replace(/ ?[=.!]$/, '');
}

/** True when every word after the number stands in the question or in its answer: "12 apples". */
function namesSame(noun: string, answer: Answer, question: CheckableQuestion): boolean {
  const known = foldText(`${question.text} ${answer.text}`).split(/[^a-z']+/);
  return noun.split(/[ -]/).every((word) => known.includes(word) || known.includes(`${word}s`));
}

function meetsTime(answer: Answer, text: string, question: CheckableQuestion, locale: Locale): boolean {
  const value = Number(answer.value);
  if (answer.value === null || !Number.isInteger(value)) return false;
  const printed = foldText(answer.text);
  const duration = readQuantity(printed, locale);
  if (duration?.unit?.quantity === 'duration') return meetsDuration(value, text, locale, duration.value);
  const asked = readClock(printed);
  const given = readClock(text);
  if (given === null) return false;
  if (asked?.halfKnown) {
    const isSuffixed = /m\.?$/.test(printed);
    if (given.halfKnown) return given.minutes === value;
    // On a 24-hour clock a bare 12:30 is half an hour past noon.
    return !isSuffixed && (given.minutes < 60 ? given.minutes + 720 : given.minutes) === value;
  }
  const isDial = question.figure?.kind === 'clock';
  const saysHalf = /[a-z]$|m\.$/.test(text) && given.halfKnown;
  return saysHalf && !isDial ? given.minutes === value : (given.minutes - value) % 720 === 0;
}

const SECONDS_PER_MINUTE = rational(60);

/** A length of time in minutes: any unit, "1:25" for hours and minutes, or a bare number of the printed unit or minutes. */
function meetsDuration(minutes: number, text: string, locale: Locale, printed: Rational): boolean {
  const asked = rational(minutes);
  const colon = /^(\d{1,2}):(\d{2})$/.exec(text);
  if (colon) return Number(colon[1]) * 60 + Number(colon[2]) === minutes;
  const given = readQuantity(text, locale);
  if (given === null || given.noun !== '') return false;
  if (given.unit === null)
    return [asked, printed].some((one) => equalScaled(given.value, UNIT_SIZE, one, UNIT_SIZE));
  return (
    given.unit.quantity === 'duration' && equalScaled(given.value, given.unit.size, asked, SECONDS_PER_MINUTE)
  );
}

/** Words as they are compared: British spelling, no leading article, no closing stop, no gaps in numbers, one way to write a remainder. */
function plainWords(text: string): string {
  return text
    .replace(/^(?:an?|the) (?=.)/, '')
    .replace(/(?<=.)[.!]$/, '')
    .replace(/(?<=\d)[ ,](?=\d{3}(?!\d))/g, '')
    .replace(/\b(\w*)(met|lit)er(s?)\b/g, (_, prefix, stem, plural) => `${prefix}${stem}re${plural}`)
    .replace(/\bcolor/g, 'colour')
    .replace(/\bgray\b/g, 'grey')
    .replace(/(\d) ?(?:r|rem|remainder)\.? ?(\d)/g, '$1 r $2');
}

function sameWords(a: string, b: string): boolean {
  return a === b || plainWords(a) === plainWords(b);
}

function meetsWords(answer: string, text: string): boolean {
  // Hyphens between words, not the minus signs of "(-3, 5)".
  const unhyphened = (words: string) => words.replace(/(?<=[a-z\d])-(?=[a-z])/g, ' ');
  if (sameWords(unhyphened(answer), unhyphened(text))) return true;
  const number = parseNumberWords(answer);
  const given = number && parseNumberWords(text);
  if (number && given) return number.n === given.n && number.d === given.d;
  // Clock times in words: "a quarter to 8" says "quarter to eight".
  const clock = /[a-z]{3}/.test(answer) ? parseClockWords(answer) : null;
  const givenClock = clock && /[a-z]{2}/.test(text) ? parseClockWords(text) : null;
  return clock !== null && givenClock !== null && clock.minutes === givenClock.minutes;
}

/** First letters that stand for a whole choice at the keyboard. */
const CHOICE_LETTERS: Readonly<Record<string, string>> = { yes: 'y', no: 'n', true: 't', false: 'f' };

function meetsChoice(answer: string, text: string): boolean {
  if (sameWords(answer, text) || CHOICE_LETTERS[answer] === text) return true;
  const number = readNumber(answer);
  const given = number && readNumber(text);
  return number !== null && given !== null && equalScaled(number, UNIT_SIZE, given, UNIT_SIZE);
}

function meetsList(answer: Answer, text: string): boolean {
  const items = answer.text.split(', ').map(foldText);
  return readListWays(text).some(
    (given) => given.length === items.length && items.every((item, i) => meetsChoice(item, given[i] ?? '')),
  );
}
