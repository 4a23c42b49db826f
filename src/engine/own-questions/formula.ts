// The formulas of a teacher's own questions: "2 × n + 5", "round(n, 10)", "if(n mod 2 = 0, 'even', 'odd')". A general parser
// reads the form, and only what docs/own-questions.md lists is let through; the value is worked out exactly, never by code.
import jsep, { type Expression } from 'jsep';
import {
  add,
  compare,
  divide,
  floor,
  gcd,
  isWhole,
  lcm,
  multiply,
  negate,
  parseValue,
  type Rational,
  rational,
  subtract,
} from '../numbers/rational.js';

/** What a formula comes to: an exact number, a word, or whether something holds. */
export type FormulaValue = Rational | string | boolean;

export type FormulaResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly message: string };

/** A formula that was read: it can be worked out for any number of the day. */
export interface Formula {
  readonly text: string;
  readonly tree: Expression;
}

const LONGEST = 200;
const LARGEST = 1_000_000_000_000;

jsep.removeAllBinaryOps();
jsep.removeAllUnaryOps();
jsep.addUnaryOp('-');
jsep.addUnaryOp('not');
for (const [op, rank] of [
  ['or', 1],
  ['and', 2],
  ['=', 3],
  ['<>', 3],
  ['<', 4],
  ['>', 4],
  ['<=', 4],
  ['>=', 4],
  ['+', 5],
  ['-', 5],
  ['*', 6],
  ['/', 6],
  ['mod', 6],
] as const)
  jsep.addBinaryOp(op, rank);
jsep.addBinaryOp('^', 7, true);

class Unfit extends Error {}
const unfit = (message: string): never => {
  throw new Unfit(message);
};

/** The formula, or what in it cannot be read. × ÷ − and typographic quotes are read as * / - and '. */
export function readFormula(text: string): FormulaResult<Formula> {
  const plain = text
    .replace(/[×·]/g, '*')
    .replace(/[÷:]/g, '/')
    .replace(/[−–]/g, '-')
    .replace(/[‘’“”"]/g, "'")
    .replace(/≤/g, '<=')
    .replace(/≥/g, '>=')
    .replace(/≠/g, '<>')
    .trim();
  if (plain === '') return { ok: false, message: 'The formula is empty.' };
  if (plain.length > LONGEST)
    return { ok: false, message: `The formula is longer than ${LONGEST} characters.` };
  return attempt(() => {
    let tree: Expression;
    try {
      tree = jsep(plain);
    } catch {
      return unfit(`“${text.trim()}” cannot be read as a formula.`);
    }
    checkForm(tree, text.trim());
    return { text: text.trim(), tree };
  });
}

/** What the formula comes to for the number `n`, or why it comes to nothing. */
export function valueOfFormula({ tree }: Formula, n: Rational): FormulaResult<FormulaValue> {
  return attempt(() => evaluate(tree, n));
}

/** The formula in mathjs syntax with `n` put in; null for words. */
export function expressionOf({ tree }: Formula, n: Rational): string | null {
  try {
    return written(tree, n);
  } catch (error) {
    if (error instanceof Unfit) return null;
    throw error;
  }
}

function attempt<T>(work: () => T): FormulaResult<T> {
  try {
    return { ok: true, value: work() };
  } catch (error) {
    // Numbers beyond exact reach are refused by the arithmetic itself.
    if (error instanceof Unfit || error instanceof RangeError) return { ok: false, message: error.message };
    throw error;
  }
}

type Work = (args: readonly Rational[]) => Rational;
interface Known {
  readonly least: number;
  readonly most: number;
  readonly work: Work;
  readonly written: (args: readonly string[]) => string;
}
const first = (args: readonly Rational[]): Rational => args[0] ?? unfit('A number is missing.');
const second = (args: readonly Rational[]): Rational => args[1] ?? unfit('A number is missing.');
const wholeOf = (value: Rational): number =>
  isWhole(value) ? value.n : unfit('Only whole numbers have common factors and multiples.');
const upFrom = (value: Rational): Rational => rational(-floor(negate(value)));
const roundTo = (value: Rational, unit: Rational): Rational => {
  if (unit.n <= 0) return unfit('Rounding needs a unit above 0, such as round(n, 10).');
  return multiply(rational(floor(add(divide(value, unit), rational(1, 2)))), unit);
};
const call = (name: string) => (args: readonly string[]) => `${name}(${args.join(', ')})`;

const FUNCTIONS: Readonly<Record<string, Known>> = {
  round: {
    least: 1,
    most: 2,
    work: (args) => roundTo(first(args), args[1] ?? rational(1)),
    written: ([value, unit = '1']) => `floor((${value}) / (${unit}) + 1/2) * (${unit})`,
  },
  floor: { least: 1, most: 1, work: (args) => rational(floor(first(args))), written: call('floor') },
  ceil: { least: 1, most: 1, work: (args) => upFrom(first(args)), written: call('ceil') },
  abs: {
    least: 1,
    most: 1,
    work: (args) => (first(args).n < 0 ? negate(first(args)) : first(args)),
    written: call('abs'),
  },
  min: {
    least: 2,
    most: 8,
    work: (args) => args.reduce((a, b) => (compare(b, a) < 0 ? b : a)),
    written: call('min'),
  },
  max: {
    least: 2,
    most: 8,
    work: (args) => args.reduce((a, b) => (compare(b, a) > 0 ? b : a)),
    written: call('max'),
  },
  gcd: {
    least: 2,
    most: 2,
    work: (args) => rational(gcd(wholeOf(first(args)), wholeOf(second(args)))),
    written: call('gcd'),
  },
  lcm: {
    least: 2,
    most: 2,
    work: (args) => rational(lcm(wholeOf(first(args)), wholeOf(second(args)))),
    written: call('lcm'),
  },
};

/** Refuses what the grammar does not have, so that a formula that was read can only fail on its numbers. */
function checkForm(tree: Expression, text: string): void {
  const node = tree as Node;
  switch (node.type) {
    case 'Literal':
      if (typeof node.value === 'string') return;
      if (typeof node.value !== 'number' || parseValue(literalOf(node)) === null)
        unfit(`“${node.raw}” in “${text}” is not a number.`);
      return;
    case 'Identifier':
      if (node.name !== 'n') unfit(`“${node.name}” in “${text}” is not known; n is the day’s number.`);
      return;
    case 'UnaryExpression':
      return checkForm(node.argument, text);
    case 'BinaryExpression':
      checkForm(node.left, text);
      return checkForm(node.right, text);
    case 'CallExpression': {
      const name = node.callee.type === 'Identifier' ? String((node.callee as Expression & Named).name) : '';
      for (const argument of node.arguments) checkForm(argument, text);
      const count = node.arguments.length;
      if (name === 'if') {
        if (count !== 3) unfit('if needs three parts: if(when, then, otherwise).');
        return;
      }
      const known = Object.hasOwn(FUNCTIONS, name) ? FUNCTIONS[name] : undefined;
      if (!known)
        return unfit(
          `There is no “${name}” in formulas; there are ${Object.keys(FUNCTIONS).join(', ')} and if.`,
        );
      if (count < known.least || count > known.most)
        unfit(`${name} was given ${count} ${count === 1 ? 'number' : 'numbers'}.`);
      return;
    }
    default:
      unfit(`“${text}” has something that formulas do not have; use numbers, n, + − × ÷ and brackets.`);
  }
}

interface Named {
  readonly name: string;
}
type Node =
  | { readonly type: 'Literal'; readonly value: unknown; readonly raw: string }
  | ({ readonly type: 'Identifier' } & Named)
  | { readonly type: 'UnaryExpression'; readonly operator: string; readonly argument: Expression }
  | {
      readonly type: 'BinaryExpression';
      readonly operator: string;
      readonly left: Expression;
      readonly right: Expression;
    }
  | {
      readonly type: 'CallExpression';
      readonly callee: Expression;
      readonly arguments: readonly Expression[];
    };

/** "0.75" as "3/4": a literal's digits, exactly as they were written. */
function literalOf({ raw }: { readonly raw: string }): string {
  const match = /^(\d{1,13})(?:\.(\d{1,6}))?$/.exec(raw);
  if (!match) return raw;
  const places = match[2]?.length ?? 0;
  const value = rational(Number(`${match[1]}${match[2] ?? ''}`), 10 ** places);
  return value.d === 1 ? String(value.n) : `${value.n}/${value.d}`;
}

const numberOf = (value: FormulaValue): Rational =>
  typeof value === 'object' ? value : unfit('A word stands where a number is needed.');
const truthOf = (value: FormulaValue): boolean =>
  typeof value === 'boolean' ? value : unfit('Something like n > 10 is needed here.');

function bounded(value: Rational): Rational {
  if (Math.abs(value.n) > LARGEST || value.d > LARGEST) unfit('The formula comes to too large a number.');
  return value;
}

function evaluate(tree: Expression, n: Rational): FormulaValue {
  const node = tree as Node;
  switch (node.type) {
    case 'Literal':
      return typeof node.value === 'string'
        ? node.value
        : (parseValue(literalOf(node)) ?? unfit(`“${node.raw}” is not a number.`));
    case 'Identifier':
      return n;
    case 'UnaryExpression': {
      const value = evaluate(node.argument, n);
      return node.operator === 'not' ? !truthOf(value) : negate(numberOf(value));
    }
    case 'BinaryExpression':
      return combine(node.operator, evaluate(node.left, n), () => evaluate(node.right, n));
    case 'CallExpression': {
      const { name } = node.callee as Expression & Named;
      const [when, then, otherwise] = node.arguments;
      if (name === 'if' && when && then && otherwise)
        return evaluate(truthOf(evaluate(when, n)) ? then : otherwise, n);
      const args = node.arguments.map((one) => numberOf(evaluate(one, n)));
      return bounded(FUNCTIONS[name]?.work(args) ?? unfit(`There is no ${name}.`));
    }
  }
}

function combine(operator: string, left: FormulaValue, right: () => FormulaValue): FormulaValue {
  switch (operator) {
    case 'and':
      return truthOf(left) && truthOf(right());
    case 'or':
      return truthOf(left) || truthOf(right());
    case '=':
    case '<>': {
      const other = right();
      const isSame =
        typeof left === 'object' && typeof other === 'object' ? compare(left, other) === 0 : left === other;
      return isSame === (operator === '=');
    }
    default:
      return calculate(operator, numberOf(left), numberOf(right()));
  }
}

function calculate(operator: string, a: Rational, b: Rational): FormulaValue {
  switch (operator) {
    case '<':
      return compare(a, b) < 0;
    case '>':
      return compare(a, b) > 0;
    case '<=':
      return compare(a, b) <= 0;
    case '>=':
      return compare(a, b) >= 0;
    case '+':
      return bounded(add(a, b));
    case '-':
      return bounded(subtract(a, b));
    case '*':
      return bounded(multiply(a, b));
    case '/':
      return b.n === 0 ? unfit('The formula divides by 0.') : bounded(divide(a, b));
    case 'mod':
      return b.n === 0
        ? unfit('The formula divides by 0.')
        : bounded(subtract(a, multiply(b, rational(floor(divide(a, b))))));
    case '^':
      return power(a, b);
    default:
      return unfit(`“${operator}” is not known.`);
  }
}

const HIGHEST_POWER = 10;

function power(base: Rational, exponent: Rational): Rational {
  if (!isWhole(exponent) || exponent.n < 0 || exponent.n > HIGHEST_POWER)
    return unfit(`Powers go from 0 to ${HIGHEST_POWER}.`);
  let value = rational(1);
  for (let i = 0; i < exponent.n; i++) value = bounded(multiply(value, base));
  return value;
}

function written(tree: Expression, n: Rational): string {
  const node = tree as Node;
  switch (node.type) {
    case 'Literal':
      return typeof node.value === 'string' ? unfit('a word') : `(${literalOf(node)})`;
    case 'Identifier':
      return n.d === 1 ? `(${n.n})` : `(${n.n}/${n.d})`;
    case 'UnaryExpression':
      return node.operator === '-' ? `(-${written(node.argument, n)})` : unfit('a truth');
    case 'BinaryExpression':
      return /^(?:[-+*/^]|mod)$/.test(node.operator)
        ? `(${written(node.left, n)} ${node.operator} ${written(node.right, n)})`
        : unfit('a truth');
    case 'CallExpression': {
      const { name } = node.callee as Expression & Named;
      const [when, then, otherwise] = node.arguments;
      if (name === 'if' && when && then && otherwise)
        return written(truthOf(evaluate(when, n)) ? then : otherwise, n);
      return `(${FUNCTIONS[name]?.written(node.arguments.map((one) => written(one, n))) ?? unfit(name)})`;
    }
  }
}
