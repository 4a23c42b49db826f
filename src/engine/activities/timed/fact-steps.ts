// How a child may think a fact through, in the fact's own numbers.
import { isWhole, type Rational, rational, subtract } from '../../numbers/rational.js';
import { addSteps, countUpSteps } from '../../questions/strategies/adding.js';
import { subtractSteps } from '../../questions/strategies/subtracting.js';
import { tableSteps } from '../../skills/multiplication/tables.js';
import type { Fact } from './fact.js';

type Say = (value: Rational) => string;

/** Steps for a fact whose numbers make `result`; every equation among them is true. */
export function factSteps(fact: Fact, result: Rational, say: Say): readonly string[] {
  const { first, sign, second, asked } = fact;
  const whole = `${say(first)} ${sign} ${say(second)} = ${say(result)}`;
  const isPlain = [first, second, result].every((value) => isWhole(value) && value.n >= 0);
  if (!isPlain) return throughParts(fact, result, say, whole);
  const sayWhole = (n: number) => say(rational(n));
  if (asked === 'second') {
    if (sign === '+') return first.n === result.n ? [whole] : countUpSteps(first.n, result.n, sayWhole);
    return sign === '−'
      ? [
          `What is left and what was taken make ${say(first)}: ${say(result)} + ${say(second)} = ${say(first)}`,
        ]
      : sign === '×'
        ? [whole]
        : [`${say(result)} × ${say(second)} = ${say(first)}`];
  }
  switch (sign) {
    case '+':
      return addSteps(first.n, second.n, sayWhole);
    case '−':
      return subtractSteps(first.n, second.n, sayWhole);
    case '×':
      return productSteps(first.n, second.n, whole);
    case '÷':
      return [`${say(second)} × ${say(result)} = ${say(first)}`, whole];
  }
}

function productSteps(a: number, b: number, whole: string): readonly string[] {
  if (a === 0 || b === 0) return [`No groups, or groups of nothing, make 0: ${whole}`];
  if (a === 1 || b === 1) return [`One group changes nothing: ${whole}`];
  const steps = tableSteps(Math.max(a, b), Math.min(a, b));
  return steps.length > 0 ? steps : [whole];
}

/** Below zero: first to zero, then on. Decimals and others: the fact itself, with its undoing. */
function throughParts(
  { first, sign, second }: Fact,
  result: Rational,
  say: Say,
  whole: string,
): readonly string[] {
  const crosses = sign === '−' && first.n > 0 && second.n > 0 && result.n < 0;
  if (crosses) {
    const rest = subtract(second, first);
    return [
      `${say(first)} − ${say(first)} = 0`,
      `${say(rest)} still to take: 0 − ${say(rest)} = ${say(result)}`,
    ];
  }
  const reaches = sign === '+' && first.n < 0 && second.n > 0 && result.n > 0;
  if (reaches) {
    const toZero = rational(-first.n, first.d);
    return [`${say(first)} + ${say(toZero)} = 0`, `0 + ${say(result)} = ${say(result)}`];
  }
  return [whole];
}
