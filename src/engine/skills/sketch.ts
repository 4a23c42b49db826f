// From a short sketch of a question around one number to a full template: free and on the day's number alike.
import type { WrittenDecimal } from '../questions/slips/decimal-operations.js';
import type { Written } from '../questions/slips/fraction-operations.js';
import type { FigureSpec } from '../figures/figure.js';
import type { DayKind } from '../numbers/day-number.js';
import type { Locale } from '../numbers/locale.js';
import type { Rational } from '../numbers/rational.js';
import { partName } from '../numbers/words.js';
import { amountAnswer, amountExpression, amountText, exact } from '../questions/amount.js';
import { choiceAnswer, decimalAnswer, writtenAnswer } from '../questions/answer.js';
import type { Features } from '../questions/difficulty.js';
import type { Draft, DraftSlip, Template, TemplateContext } from '../questions/draft.js';
import type { MisconceptionId } from '../questions/misconceptions.js';
import type { Answer } from '../questions/question.js';
import type { Rng } from '../random/rng.js';

/**
 * A wrong value, or a wrong choice as text, and the misconception behind it; null values are left out. The value is
 * written in the answer's form unless `as` says how children write it: 11.1. A fraction given by
 * top and bottom is written with just these: 4/6; a decimal given with its places with just so many: 8.10.
 */
export type SketchSlip = readonly [
  misconception: MisconceptionId,
  wrong: Rational | Written | WrittenDecimal | number | string | null,
  as?: DayKind,
];

/** One question around a number; the form of the answer is the number's own unless `form` says otherwise. */
export interface Sketch {
  readonly text: string;
  /** The right value, or the right choice as text. */
  readonly value: Rational | number | string;
  readonly form?: DayKind;
  readonly expression: string | null;
  readonly features: Features;
  readonly strategy: readonly string[];
  readonly slips: readonly SketchSlip[];
  readonly uses: string;
  readonly figure?: FigureSpec | undefined;
  /** Further forms of the right answer. */
  readonly accepts?: readonly string[];
}

/** The number a question is built around, with the means to write others in the same form. */
export interface Subject {
  readonly value: Rational;
  /** Numerator and denominator in lowest terms; `n` is the number itself when it is whole. */
  readonly n: number;
  readonly d: number;
  readonly form: DayKind;
  readonly text: string;
  /** mathjs syntax. */
  readonly expr: string;
  readonly rng: Rng;
  /** One item; gives the question up when there is none to choose from. */
  readonly pick: <T>(items: readonly T[]) => T;
  readonly locale: Locale;
  /** The text of another value in this form; gives the question up when the form cannot show it. */
  readonly t: (value: Rational | number, form?: DayKind) => string;
  readonly e: (value: Rational | number) => string;
  /** "quarters": the name of parts; gives the question up when classes have no name for them. */
  readonly parts: (d: number, count?: number) => string;
}

/** Thrown inside a sketch whose number turns out not to suit; never leaves {@link numericTemplate}. One instance, since stacks cost time. */
const UNSUITED = new Error('the number does not suit');

export interface NumericTemplate {
  readonly id: string;
  /** Kinds of the day's number it may take. Free questions use the first unless `freeForm` is given. */
  readonly kinds: readonly DayKind[];
  readonly freeForm?: DayKind;
  readonly free: (rng: Rng) => Rational | number;
  /** Whether the number is inside the range of the skill's year. */
  readonly suits: (value: Rational, form: DayKind) => boolean;
  /** The question, or null when the random choices made do not fit; it is then tried again. */
  readonly make: (subject: Subject) => Sketch | null;
}

/** Parts that primary classes name. Common practice. */
const NAMED_PARTS: ReadonlySet<number> = new Set([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 15, 16, 20, 24, 100]);

const TRIES_ON_DAY = 8;
const TRIES_FREE = 400;

function subjectOf(value: Rational, form: DayKind, { rng, locale }: TemplateContext): Subject | null {
  const text = amountText(value, form, locale);
  if (text === null) return null;
  const t = (other: Rational | number, otherForm: DayKind = form): string => {
    const written = amountText(other, otherForm, locale);
    if (written === null) throw UNSUITED;
    return written;
  };
  const parts = (d: number, count = 2): string => {
    if (!NAMED_PARTS.has(d)) throw UNSUITED;
    return partName(d, count, locale);
  };
  const pick = <T>(items: readonly T[]): T => {
    if (items.length === 0) throw UNSUITED;
    return rng.pick(items);
  };
  return {
    value,
    n: value.n,
    d: value.d,
    form,
    text,
    expr: amountExpression(value),
    rng,
    pick,
    locale,
    t,
    e: amountExpression,
    parts,
  };
}

function answerOf(value: Rational | number | string, form: DayKind, locale: Locale): Answer | null {
  return typeof value === 'string' ? choiceAnswer(value) : amountAnswer(value, form, locale);
}

function wrongAnswerOf(
  wrong: Rational | Written | WrittenDecimal | number | string,
  as: DayKind,
  locale: Locale,
): Answer | null {
  if (typeof wrong === 'object' && 'top' in wrong) return writtenAnswer(wrong);
  if (typeof wrong === 'object' && 'places' in wrong) return decimalAnswer(wrong.value, locale, wrong.places);
  const answer = answerOf(wrong, as, locale);
  // Nobody who is asked for a whole number arrives at 12 499 79/80.
  return as === 'whole' && answer?.kind === 'fraction' ? null : answer;
}

function draftOf(sketch: Sketch, subject: Subject, onDay: boolean): Draft | null {
  const form = sketch.form ?? subject.form;
  const answer = answerOf(sketch.value, form, subject.locale);
  if (answer === null) return null;
  const slips: DraftSlip[] = [];
  for (const [misconception, wrong, as = form] of sketch.slips) {
    const slip = wrong === null ? null : wrongAnswerOf(wrong, as, subject.locale);
    if (slip !== null) slips.push({ misconception, answer: slip });
  }
  return {
    text: sketch.text,
    answer,
    expression: sketch.expression,
    features: sketch.features,
    strategy: sketch.strategy,
    slips,
    ...(sketch.accepts ? { accepts: sketch.accepts } : {}),
    ...(sketch.figure ? { figure: sketch.figure } : {}),
    ...(onDay ? { usesNumber: sketch.uses } : {}),
  };
}

function attempt(
  spec: NumericTemplate,
  value: Rational,
  form: DayKind,
  context: TemplateContext,
  onDay: boolean,
): Draft | null {
  const subject = subjectOf(value, form, context);
  if (subject === null) return null;
  try {
    const sketch = spec.make(subject);
    return sketch === null ? null : draftOf(sketch, subject, onDay);
  } catch (error) {
    if (error === UNSUITED) return null;
    throw error;
  }
}

/** A template whose questions are all built around one number, given or drawn. */
export function numericTemplate(spec: NumericTemplate): Template {
  const freeForm = spec.freeForm ?? spec.kinds[0] ?? 'whole';
  return {
    id: spec.id,
    ask: (context) => {
      for (let i = 0; i < TRIES_FREE; i++) {
        const value = exact(spec.free(context.rng));
        const draft = spec.suits(value, freeForm) ? attempt(spec, value, freeForm, context, false) : null;
        if (draft !== null) return draft;
      }
      throw new Error(`template ${spec.id} found no number that suits it`);
    },
    dayKinds: spec.kinds,
    askOn: (day, context) => {
      if (!spec.kinds.includes(day.kind) || !spec.suits(day.value, day.kind)) return null;
      for (let i = 0; i < TRIES_ON_DAY; i++) {
        const draft = attempt(spec, day.value, day.kind, context, true);
        if (draft !== null) return draft;
      }
      return null;
    },
  };
}

/** True for whole values from `low` to `high`: the usual range test of a template. */
export function wholeWithin(low: number, high: number): (value: Rational) => boolean {
  return (value) => value.d === 1 && value.n >= low && value.n <= high;
}
