// Formulas judged by mathjs, questions by what their list says, and whatever is not in the grammar refused.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fractionMath as math } from '../../../test/support/exact-math.js';
import { parseDayNumber } from '../numbers/day-number.js';
import { localeOf } from '../numbers/locale.js';
import { rational, toValue } from '../numbers/rational.js';
import { expressionOf, readFormula, valueOfFormula } from './formula.js';
import { askOwn, type OwnQuestionSource, readOwnQuestion } from './own-question.js';

const AU = localeOf('en-AU');

function work(text: string, n = rational(47)) {
  const formula = readFormula(text);
  if (!formula.ok) throw new Error(formula.message);
  const found = valueOfFormula(formula.value, n);
  if (!found.ok) return `! ${found.message}`;
  return typeof found.value === 'object' ? toValue(found.value) : found.value;
}

describe('a formula', () => {
  it.each([
    ['2 × n + 5', '99'],
    ['2 + 3 * 4', '14'],
    ['(2 + 3) * 4', '20'],
    ['−3 + 5', '2'],
    ['10 - n mod 10', '3'],
    ['-7 mod 10', '3'],
    ['n ÷ 4', '47/4'],
    ['0.1 + 0.2', '3/10'],
    ['2 ^ 3 ^ 2', '512'],
    ['round(n, 10)', '50'],
    ['round(45, 10)', '50'],
    ['round(n / 2)', '24'],
    ['floor(n / 2)', '23'],
    ['ceil(n / 2)', '24'],
    ['abs(n - 50)', '3'],
    ['max(n, 50, 12) - min(n, 50)', '3'],
    ['gcd(36, 24) + lcm(4, 6)', '24'],
    ["if(n mod 2 = 0, 'even', 'odd')", 'odd'],
    ['if(n > 40 and not (n = 41), 1, 1 / 0)', '1'],
    ['n >= 47 or 1 / 0 = 1', true],
    ['“a” <> “b”', true],
  ])('%s comes to %s', (text, value) => expect(work(text)).toBe(value));

  it.each([
    ['1 / 0', /divides by 0/],
    ['5 mod 0', /divides by 0/],
    ["'a' + 1", /word stands where a number/],
    ['n and 1', /Something like/],
    ['gcd(1 / 2, 3)', /whole numbers/],
    ['9 ^ 10 ^ 2', /Powers|too large/],
    ['round(n, 0)', /unit above 0/],
  ])('%s comes to nothing, and says why', (text, why) => expect(work(text)).toMatch(why));

  it.each([
    '',
    'n +',
    '2n',
    'm + 1',
    'n.constructor',
    'constructor("return 1")()',
    'toString(1)',
    'hasOwnProperty(n)',
    '__proto__',
    'this',
    '[1, 2]',
    'n = > 1',
    'if(n, 1)',
    'round()',
    'n; n',
    '1e400',
    'true',
    '`n`',
    '9'.repeat(201),
  ])('%s is not one', (text) => expect(readFormula(text).ok).toBe(false));

  it('agrees with another library on every number, and its expression does too', () => {
    const leaf = fc.oneof(
      fc.integer({ min: 0, max: 99 }).map(String),
      fc.constant('n'),
      fc.constantFrom('0.5', '1.25', '12.75'),
    );
    const { tree } = fc.letrec<{ tree: string }>((tie) => ({
      tree: fc.oneof(
        { maxDepth: 3 },
        leaf,
        fc
          .tuple(tie('tree'), fc.constantFrom('+', '-', '*', '/', 'mod'), tie('tree'))
          .map(([a, op, b]) => `(${a} ${op} ${b})`),
        tie('tree').map((a) => `abs(${a})`),
        fc.tuple(tie('tree'), tie('tree')).map(([a, b]) => `max(${a}, ${b})`),
        tie('tree').map((a) => `floor(${a})`),
      ),
    }));
    let judged = 0;
    fc.assert(
      fc.property(tree, fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 8 }), (text, a, b) => {
        const n = rational(a, b);
        const formula = readFormula(text);
        if (!formula.ok) throw new Error(`${text}: ${formula.message}`);
        const ours = valueOfFormula(formula.value, n);
        const expression = expressionOf(formula.value, n);
        if (!ours.ok || typeof ours.value !== 'object' || expression === null) return;
        judged++;
        const theirs = math.evaluate(expression) as { toFraction: () => string };
        expect(theirs.toFraction().replace(/^-0$/, '0'), `${text} at ${a}/${b} as ${expression}`).toBe(
          toValue(ours.value),
        );
      }),
      { numRuns: 500 },
    );
    expect(judged).toBeGreaterThan(300);
  });
});

const EMPTY: OwnQuestionSource = {
  question: '',
  answer: '',
  slips: '',
  way: '',
  when: '',
  year: '',
  strand: '',
};

function ask(source: Partial<OwnQuestionSource>, number: string) {
  const read = readOwnQuestion({ ...EMPTY, ...source });
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join(' '));
  const day = parseDayNumber(number, AU);
  if (!day.ok) throw new Error(day.error.message);
  return askOwn(read.value, day.value, AU);
}

describe('a question of one’s own', () => {
  it('is a question as any other, worked out for the number', () => {
    const asked = ask(
      {
        question: 'What is double {n}?',
        answer: '2 × n',
        slips: 'n + 2; 2 * n; n + 2; n',
        way: '{n} + {n} = {2 * n}; done',
        year: '2',
        strand: 'Addition',
      },
      '47',
    );
    expect(asked).toMatchObject({
      ok: true,
      value: {
        text: 'What is double 47?',
        answer: { kind: 'number', text: '94', value: '94' },
        accepts: ['94'],
        slips: [
          { text: '49', value: '49' },
          { text: '47', value: '47' },
        ],
        strategy: ['47 + 47 = 94', 'done'],
        year: 2,
        strand: 'addition',
      },
    });
    const question = asked.ok ? asked.value : null;
    expect(String(math.evaluate(question?.expression ?? ''))).toBe('94');
  });

  it.each([
    ['3.6', '7.2'],
    ['$4.85', '$9.70'],
    ['1 3/4', '3 1/2'],
    ['1 000', '2000'],
  ])('is written as %s is: double is %s', (number, text) => {
    const asked = ask({ question: 'Double {n}', answer: 'n + n' }, number);
    expect(asked.ok && asked.value?.answer.text).toBe(text);
    const plain = number.replace(/^1 000$/, '1000');
    expect(asked.ok && asked.value?.strategy).toEqual([`${plain} + ${plain} = ${text}`]);
  });

  it('is asked only for numbers that suit', () => {
    const source = { question: 'Half of {n}', answer: 'n / 2', when: 'n mod 2 = 0' };
    expect(ask(source, '47')).toEqual({ ok: true, value: null });
    expect(ask(source, '48')).toMatchObject({ ok: true, value: { answer: { text: '24' } } });
    expect(ask({ question: '{n} − 50', answer: 'n - 50' }, '47').ok).toBe(false);
    expect(ask({ question: 'A third of {n}', answer: 'n / 3' }, '$4.85').ok).toBe(false);
  });

  it('may have a word or yes and no for an answer', () => {
    const word = ask({ question: 'Is {n} odd or even?', answer: "if(n mod 2 = 0, 'even', 'odd')" }, '47');
    expect(word).toMatchObject({
      ok: true,
      value: { answer: { kind: 'word', text: 'odd' }, expression: null },
    });
    expect(ask({ question: 'Is {n} above 40?', answer: 'n > 40' }, '47')).toMatchObject({
      ok: true,
      value: { answer: { text: 'yes' } },
    });
  });

  it('tells every fault by its part', () => {
    const read = readOwnQuestion({
      question: 'What is {n + }?',
      answer: '',
      slips: 'n; m',
      way: '{n} and {n',
      when: 'n ==',
      year: '9',
      strand: 'alchemy',
    });
    expect(read.ok || read.faults.map(({ part }) => part)).toEqual([
      'question',
      'answer',
      'slips',
      'way',
      'when',
      'year',
      'strand',
    ]);
  });
});
