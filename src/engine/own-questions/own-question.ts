// A teacher's own question: plain text with formulas on the day's number in braces, and the formula of its answer.
import { STRANDS, type StrandId } from '../curriculum/strands.js';
import type { DayKind, DayNumber } from '../numbers/day-number.js';
import type { Locale } from '../numbers/locale.js';
import { decimalPlaces, type Rational } from '../numbers/rational.js';
import { amountAnswer, amountText } from '../questions/amount.js';
import { wordAnswer } from '../questions/answer.js';
import { difficultyOf } from '../questions/difficulty.js';
import { answersEqual } from '../questions/equivalence.js';
import type { Answer, Question, Slip } from '../questions/question.js';
import { hashText } from '../random/rng.js';
import { expressionOf, type Formula, type FormulaResult, readFormula, valueOfFormula } from './formula.js';

/** The columns of a teacher's list, as they are written. All but `question` and `answer` may be empty. */
export interface OwnQuestionSource {
  /** "What is double {n}?" */
  readonly question: string;
  /** "2 × n" */
  readonly answer: string;
  /** Typical wrong answers, formulas between semicolons: "n + 2; n". */
  readonly slips: string;
  /** One way to get there, steps between semicolons, formulas in braces. */
  readonly way: string;
  /** Only for numbers for which this holds: "n > 20 and n mod 2 = 0". */
  readonly when: string;
  /** 0 to 6; 3 unless given. */
  readonly year: string;
  /** Id or title of a strand; patterns and algebra unless given. */
  readonly strand: string;
}

/** What is wrong with one part of a source, in a sentence. */
export interface OwnFault {
  readonly part: keyof OwnQuestionSource;
  readonly message: string;
}

type TextPart = string | Formula;

/** A source that was read: it makes a question for any number that suits it. */
export interface OwnQuestion {
  /** "own." and letters that follow from question and answer: stands where a skill of the map has its id. */
  readonly id: string;
  readonly text: readonly TextPart[];
  readonly answer: Formula;
  readonly slips: readonly Formula[];
  readonly way: readonly (readonly TextPart[])[];
  readonly when: Formula | null;
  readonly year: number;
  readonly strand: StrandId;
}

/** Under which the slips of own questions are counted: the teacher expected them, and nobody has said what they tell. */
const EXPECTED = 'own.expected';
/** How the ids of own questions begin. No skill of the map is called so. */
const OWN = 'own.';
const LONGEST_TEXT = 160;

/** The question that a source describes, or every fault in it. */
export function readOwnQuestion(
  source: OwnQuestionSource,
):
  | { readonly ok: true; readonly value: OwnQuestion }
  | { readonly ok: false; readonly faults: readonly OwnFault[] } {
  const faults: OwnFault[] = [];
  const take = <T>(part: keyof OwnQuestionSource, result: FormulaResult<T>): T | null => {
    if (result.ok) return result.value;
    faults.push({ part, message: result.message });
    return null;
  };
  const list = (text: string) =>
    text
      .split(';')
      .map((one) => one.trim())
      .filter((one) => one !== '');
  const text = take('question', readText(source.question));
  const answer = take('answer', readFormula(source.answer));
  const slips = list(source.slips).flatMap((one) => take('slips', readFormula(one)) ?? []);
  const way = list(source.way).flatMap((one) => {
    const step = take('way', readText(one));
    return step ? [step] : [];
  });
  const when = source.when.trim() === '' ? null : take('when', readFormula(source.when));
  const year = take('year', readYear(source.year));
  const strand = take('strand', readStrand(source.strand));
  if (faults.length > 0 || text === null || answer === null || year === null || strand === null)
    return { ok: false, faults };
  const id = `${OWN}${hashText(`${source.question.trim()}|${source.answer.trim()}`).toString(36)}`;
  return { ok: true, value: { id, text, answer, slips, way, when, year, strand } };
}

function readText(text: string): FormulaResult<TextPart[]> {
  const line = text.replace(/\s+/g, ' ').trim();
  if (line === '') return { ok: false, message: 'There is no text.' };
  if (line.length > LONGEST_TEXT)
    return { ok: false, message: `The text is longer than ${LONGEST_TEXT} characters.` };
  const parts: TextPart[] = [];
  for (const [at, piece] of line.split(/[{}]/).entries()) {
    if (at % 2 === 0) {
      if (piece !== '') parts.push(piece);
      continue;
    }
    const formula = readFormula(piece);
    if (!formula.ok) return formula;
    parts.push(formula.value);
  }
  const [open, close] = [line.split('{').length, line.split('}').length];
  if (open !== close || /\{[^}]*\{|\}[^{]*\}/.test(line))
    return { ok: false, message: `Every { in “${line}” needs its }, and none stands in another.` };
  return { ok: true, value: parts };
}

function readYear(text: string): FormulaResult<number> {
  const word = text.trim();
  if (word === '') return { ok: true, value: 3 };
  if (/^f$/i.test(word)) return { ok: true, value: 0 };
  return /^[0-6]$/.test(word)
    ? { ok: true, value: Number(word) }
    : { ok: false, message: `“${word}” is not a year from F to 6.` };
}

function readStrand(text: string): FormulaResult<StrandId> {
  const word = text.trim().toLowerCase();
  if (word === '') return { ok: true, value: 'algebra' };
  const found = STRANDS.find(({ id, title }) => id === word || title.toLowerCase() === word);
  return found
    ? { ok: true, value: found.id }
    : {
        ok: false,
        message: `“${text.trim()}” is none of the strands ${STRANDS.map(({ title }) => title).join(', ')}.`,
      };
}

/** True for the id of an own question where a skill's id may stand. */
export function isOwnId(skill: string): boolean {
  return skill.startsWith(OWN);
}

/**
 * The question for the day's number, exact and complete; null where the source says that the number does not suit; a
 * message where a formula comes to nothing that can be asked (division by 0, an answer below 0, a decimal without end).
 */
export function askOwn(own: OwnQuestion, day: DayNumber, locale: Locale): FormulaResult<Question | null> {
  const { value: n } = day;
  if (own.when) {
    const holds = valueOfFormula(own.when, n);
    if (!holds.ok) return holds;
    if (typeof holds.value !== 'boolean')
      return { ok: false, message: `“${own.when.text}” is not something that holds or not, such as n > 10.` };
    if (!holds.value) return { ok: true, value: null };
  }
  const text = fill(own.text, day, locale);
  if (!text.ok) return text;
  const answer = answerOf(own.answer, day, locale);
  if (!answer.ok) return answer;
  const slips: Slip[] = [];
  for (const formula of own.slips) {
    const wrong = answerOf(formula, day, locale);
    // A slip that comes to nothing, or to what is right, is no slip for this number.
    if (!wrong.ok || answersEqual(wrong.value, answer.value)) continue;
    if (slips.some((other) => answersEqual(other, wrong.value))) continue;
    slips.push({ misconception: EXPECTED, text: wrong.value.text, value: wrong.value.value });
  }
  const strategy: string[] = [];
  for (const step of own.way) {
    const line = fill(step, day, locale);
    if (!line.ok) return line;
    strategy.push(line.value);
  }
  return {
    ok: true,
    value: {
      id: `own:${hashText(`${text.value}|${answer.value.text}`).toString(36)}`,
      skill: own.id,
      year: own.year,
      strand: own.strand,
      text: text.value,
      figure: null,
      answer: answer.value,
      accepts: [answer.value.text],
      expression: answer.value.value === null ? null : expressionOf(own.answer, n),
      difficulty: difficultyOf({}),
      slips,
      strategy: strategy.length > 0 ? strategy : [plainWay(own.answer, answer.value, day)],
      usesNumber: own.text.some((part) => typeof part !== 'string') ? `asks about ${day.text}` : null,
    },
  };
}

/** The form in which a number is written: that of the day's number, as far as it can show it. */
function formFor(value: Rational, kind: DayKind): DayKind {
  if (kind === 'money') return 'money';
  if (kind === 'fraction') return 'fraction';
  const places = decimalPlaces(value);
  return value.d === 1 ? 'whole' : places !== null && places <= 3 ? 'decimal' : 'fraction';
}

function fill(parts: readonly TextPart[], day: DayNumber, locale: Locale): FormulaResult<string> {
  let line = '';
  for (const part of parts) {
    if (typeof part === 'string') {
      line += part;
      continue;
    }
    const found = valueOfFormula(part, day.value);
    if (!found.ok) return found;
    if (typeof found.value === 'boolean')
      return { ok: false, message: `{${part.text}} comes to yes or no, not to a number or a word.` };
    const text =
      typeof found.value === 'string'
        ? found.value
        : amountText(found.value, formFor(found.value, day.kind), locale);
    if (text === null) return { ok: false, message: `{${part.text}} cannot be written for ${day.text}.` };
    line += text;
  }
  return { ok: true, value: line };
}

function answerOf(formula: Formula, day: DayNumber, locale: Locale): FormulaResult<Answer> {
  const found = valueOfFormula(formula, day.value);
  if (!found.ok) return found;
  if (typeof found.value === 'boolean') return { ok: true, value: wordAnswer(found.value ? 'yes' : 'no') };
  if (typeof found.value === 'string') return { ok: true, value: wordAnswer(found.value) };
  const answer = amountAnswer(found.value, formFor(found.value, day.kind), locale);
  return answer
    ? { ok: true, value: answer }
    : { ok: false, message: `The answer “${formula.text}” cannot be written for ${day.text}.` };
}

/** The answer's own sum where it is one, else just the answer: every question has a way to it. */
function plainWay({ text }: Formula, answer: Answer, day: DayNumber): string {
  if (!/^[n\d\s.+\-−*×/÷()]+$/.test(text)) return `The answer is ${answer.text}.`;
  const sum = text.replaceAll('*', '×').replaceAll('-', '−').replaceAll('/', '÷').replaceAll('n', day.text);
  return `${sum} = ${answer.text}`;
}
