// A fact of timed practice: two numbers and a sign, asked for the result or for one of the numbers.
import { formatDecimal } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { add, divide, isWhole, multiply, type Rational, subtract, toNumber } from '../../numbers/rational.js';
import { decimalAnswer } from '../../questions/answer.js';
import type { Features } from '../../questions/difficulty.js';
import { finishQuestion } from '../../questions/finish.js';
import type { Question } from '../../questions/question.js';
import { carriesOf } from '../../questions/slips/column-addition.js';
import { borrowsOf } from '../../questions/slips/column-subtraction.js';
import { skillById } from '../../skills/map.js';
import { factSlips } from './fact-slips.js';
import { factSteps } from './fact-steps.js';

export const SIGNS = ['+', '−', '×', '÷'] as const;
export type Sign = (typeof SIGNS)[number];

export interface Fact {
  readonly first: Rational;
  readonly sign: Sign;
  readonly second: Rational;
  /** What the child writes: the result, or the second number with the result printed ("7 + ? = 10"). */
  readonly asked: 'result' | 'second';
  /** The skill of the map that the fact belongs to. */
  readonly skill: string;
}

const WORK: Readonly<Record<Sign, (a: Rational, b: Rational) => Rational>> = {
  '+': add,
  '−': subtract,
  '×': multiply,
  '÷': divide,
};

/** mathjs signs. */
const OPERATOR: Readonly<Record<Sign, string>> = { '+': '+', '−': '-', '×': '*', '÷': '/' };
const UNDONE: Readonly<Record<Sign, string>> = { '+': '-', '−': '-', '×': '/', '÷': '/' };

/** What first and second make. */
export function resultOf({ first, sign, second }: Fact): Rational {
  return WORK[sign](first, second);
}

/** The fact as a question of its skill, with its strategy and typical slips. Throws when the skill is not in the map. */
export function factQuestion(fact: Fact, locale: Locale): Question {
  const skill = skillById(fact.skill);
  if (skill === null) throw new Error(`no skill ${fact.skill}`);
  const { first, sign, second } = fact;
  const result = resultOf(fact);
  const say = (value: Rational) => formatDecimal(value, locale);
  const asksResult = fact.asked === 'result';
  const answer = decimalAnswer(asksResult ? result : second, locale);
  return finishQuestion(
    skill,
    'timed',
    {
      text: asksResult ? `${say(first)} ${sign} ${say(second)}` : `${say(first)} ${sign} ? = ${say(result)}`,
      answer,
      expression: asksResult
        ? `${code(first)} ${OPERATOR[sign]} ${code(second)}`
        : missingExpression(fact, result),
      features: featuresOf(fact),
      strategy: factSteps(fact, result, say),
      slips: factSlips(fact, result, locale),
    },
    locale,
  );
}

/** The second number from the first and the result: 7 + ? = 10 and 12 − ? = 5 are differences, 3 × ? and 12 ÷ ? quotients. */
function missingExpression({ first, sign }: Fact, result: Rational): string {
  const undoing = UNDONE[sign];
  return sign === '+' || sign === '×'
    ? `${code(result)} ${undoing} ${code(first)}`
    : `${code(first)} ${undoing} ${code(result)}`;
}

/** A number in mathjs syntax; a fraction or a negative number in brackets. */
function code({ n, d }: Rational): string {
  const text = d === 1 ? String(n) : `${n}/${d}`;
  return d === 1 && n >= 0 ? text : `(${text})`;
}

/** What makes the fact easier or harder; the same effects as in the skills (see difficulty.ts). */
function featuresOf(fact: Fact): Features {
  const { first, sign, second, asked } = fact;
  const unknownInside = asked === 'second';
  if (!isWhole(first) || !isWhole(second) || first.n < 0 || second.n < 0)
    return { size: Math.min(4, Math.abs(toNumber(second)) / 10), unknownInside };
  const [a, b] = [first.n, second.n];
  if (sign === '+') {
    return {
      size: Math.min(a, b) <= 3 ? 0 : Math.min(a, b) <= 6 ? 0.7 : 1.2,
      tie: a === b,
      rule: a === 0 || b === 0,
      carries: a + b > 20 ? carriesOf(a, b) : 0,
      unknownInside,
    };
  }
  if (sign === '−') {
    return {
      size: b <= 3 ? 0 : b <= 6 ? 0.7 : 1.2,
      tie: a === 2 * b,
      rule: b === 0 || a === b,
      carries: a > 20 && a >= b ? borrowsOf(a, b).borrows : 0,
      unknownInside,
    };
  }
  const [of, lots] = sign === '×' ? [a, b] : [b, toNumber(resultOf(fact))];
  const larger = Math.max(of, lots);
  const smaller = Math.min(of, lots);
  const isRule = smaller <= 1 || of === 10 || lots === 10 || of >= 100 || lots >= 100;
  return {
    size: smaller <= 2 || isRule ? 0 : larger <= 5 ? 0.3 : smaller >= 6 ? 1.5 : 1,
    tie: of === lots,
    rule: isRule,
    fives: of === 5 || lots === 5,
    unknownInside,
  };
}
