import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fractionMath as math } from '../../../test/support/exact-math.js';
import { localeOf } from '../numbers/locale.js';
import { rational, toValue } from '../numbers/rational.js';
import {
  choiceAnswer,
  clockAnswer,
  decimalAnswer,
  durationAnswer,
  fractionAnswer,
  listAnswer,
  moneyAnswer,
  unitAnswer,
  wholeAnswer,
  wordAnswer,
} from './answer.js';
import { type CheckableQuestion, checkAnswer } from './check-answer.js';
import type { Answer } from './question.js';

const AU = localeOf('en-AU');
const GB = localeOf('en-GB');
const US = localeOf('en-US');

function ask(answer: Answer, more: Partial<CheckableQuestion> = {}): CheckableQuestion {
  return { text: 'What is it?', figure: null, answer, accepts: [answer.text], slips: [], ...more };
}
const verdict = (question: CheckableQuestion, typed: string, locale = AU) =>
  checkAnswer(question, typed, locale).verdict;

/** Every `right` form is right, every `wrong` form is wrong. */
function expectForms(
  question: CheckableQuestion,
  right: readonly string[],
  wrong: readonly string[],
  locale = AU,
) {
  const of = (typed: string) => `${typed} -> ${verdict(question, typed, locale)}`;
  expect(right.map(of)).toEqual(right.map((typed) => `${typed} -> right`));
  expect(wrong.map(of)).toEqual(wrong.map((typed) => `${typed} -> wrong`));
}

describe('numbers', () => {
  it('takes whole numbers with any grouping, in words, with a sign', () => {
    expectForms(
      ask(wholeAnswer(12_500, AU)),
      [
        '12500',
        '12 500',
        '12\u00a0500',
        '12\u202f500',
        '12,500',
        ' 12500 ',
        '12500.0',
        '= 12500',
        'n = 12500',
        '12500.',
      ],
      ['12 50', '1,2500', '12.500', '125000', '12500 cats', '-12500', 'twelve', '1e4', '0x1', '12500/0'],
    );
    expectForms(
      ask(wholeAnswer(47, AU)),
      ['forty-seven', 'Forty seven', '94/2', '+47', '４７'],
      ['forty', '74'],
    );
    expectForms(ask(wholeAnswer(-3, AU)), ['-3', '\u22123', '– 3', 'minus three', 'negative three'], ['3']);
    expectForms(
      ask(wholeAnswer(12, AU), { text: 'How many apples?' }),
      ['12 apples', '12 apple'],
      ['12 pears'],
    );
  });

  it('takes any equal decimal or fraction', () => {
    const half = [
      '1/2',
      '½',
      '0.5',
      '.5',
      '0.50',
      '2/4',
      '50%',
      '1 / 2',
      'half',
      'one half',
      'zero point five',
    ];
    expectForms(ask(decimalAnswer(rational(1, 2), AU)), half, ['5', '.05', '1/3', '2', '1/0', '50']);
    expectForms(ask(fractionAnswer(rational(1, 2), AU)), half, ['5', '2/1', '0.2']);
    expectForms(
      ask(fractionAnswer(rational(7, 4), AU)),
      [
        '1 3/4',
        '7/4',
        '1¾',
        '1 ¾',
        '14/8',
        '1.75',
        '1 and 3/4',
        'one and three quarters',
        'seven quarters',
        '175%',
      ],
      ['13/4', '1-3/4', '1 3', '3/4', '1 4/3'],
    );
  });

  it('reads units, converts them, and refuses the wrong kind', () => {
    expectForms(
      ask(unitAnswer(47, 'cm', AU)),
      [
        '47',
        '47 cm',
        '47cm',
        '47 centimetres',
        '47 centimeters',
        '470 mm',
        '0.47 m',
        'forty-seven cm',
        '47 CM.',
      ],
      ['47 mm', '47 kg', '470', '47 cm²', '47%'],
    );
    expectForms(
      ask(unitAnswer(rational(5, 4), 'm', AU)),
      ['1.25 m', '1 m 25 cm', '125cm', '1 1/4 m'],
      ['125', '1 m'],
    );
    expectForms(
      ask(unitAnswer(24, 'cm²', AU)),
      ['24', '24 cm2', '24 sq cm', '24 square centimetres'],
      ['24 cm'],
    );
    expectForms(ask(unitAnswer(90, '°', AU)), ['90', '90°', '90 degrees'], ['90 cm', '90 °C']);
    expectForms(
      ask(unitAnswer(25, '%', AU)),
      ['25', '25%', '25 per cent', '25 percent'],
      ['0.25', '1/4', '2.5%'],
    );
    expectForms(ask(wholeAnswer(47, AU), { text: 'How many centimetres?' }), ['47', '47 cm'], ['0.47 m']);
    expectForms(ask(wholeAnswer(50, AU), { text: 'What per cent of 40 is 20?' }), ['50', '50%'], ['0.5']);
  });
});

describe('money', () => {
  it('reads amounts in main and minor units of the class’s own currency', () => {
    expectForms(
      ask(moneyAnswer(rational(97, 20), AU)),
      [
        '$4.85',
        '4.85',
        '485c',
        '485 cents',
        '4 dollars 85 cents',
        '4 dollars and 85 cents',
        '4 dollars 85',
        '$ 4.85',
      ],
      ['485', '£4.85', '$4.58', '485p', '$48.5', '$4.85c', '$', '4-85'],
    );
    expectForms(
      ask(moneyAnswer(rational(17, 20), AU)),
      ['85c', '85', '$0.85', '0.85', '.85'],
      ['$85', '8.5', '85p'],
    );
    expectForms(ask(moneyAnswer(rational(9, 2), AU)), ['$4.50', '4.5', '$4.5', '450c'], ['$4.05']);
    expectForms(
      ask(moneyAnswer(rational(97, 20), GB)),
      ['£4.85', '485p', '4 pounds 85 pence'],
      ['$4.85', '485c'],
      GB,
    );
    expectForms(ask(moneyAnswer(rational(97, 20), US)), ['$4.85', '485¢', '485c'], ['485p'], US);
    expectForms(
      ask(moneyAnswer(rational(12_500), AU)),
      ['$12 500', '$12,500', '12500', '$12500.00'],
      ['$12.5'],
    );
  });
});

describe('times', () => {
  it('matches a dial time that leaves the half of the day open', () => {
    expectForms(
      ask(clockAnswer(465)),
      [
        '7:45',
        '7.45',
        '07:45',
        '19:45',
        '7:45 am',
        'quarter to 8',
        'a quarter to eight',
        'seven forty-five',
        '0745',
      ],
      ['7:54', '8:45', '7:45 pm', '7', '745 min', '27:45', '7:75'],
    );
    const dial = ask(clockAnswer(465), { figure: { kind: 'clock', minutes: 465 } });
    expectForms(dial, ['7:45 pm', '7:45am', '19:45'], ['9:37']);
    expectForms(
      ask(clockAnswer(420)),
      ['7:00', '7', "7 o'clock", 'seven o’clock', '7 am'],
      ['12:35', '17:00'],
    );
  });

  it('keeps to the half of the day that the answer states', () => {
    expectForms(
      ask(clockAnswer(1185, 12, 'pm')),
      ['7:45 pm', '7:45pm', '7.45 p.m.', '19:45', 'quarter to eight in the evening', '07:45 PM'],
      ['7:45', '7:45 am', '07:45', 'quarter to eight', '19:45 am'],
    );
    expectForms(ask(clockAnswer(465, 12, 'am')), ['7:45 am', '07:45'], ['7:45', '7:45 pm']);
    expectForms(
      ask(clockAnswer(1185, 24)),
      ['19:45', '1945', '19.45', '7:45 pm'],
      ['7:45', '7:45 am', '07:45'],
    );
    expectForms(ask(clockAnswer(465, 24)), ['07:45', '7:45', '7:45 am'], ['19:45', '7:45 pm']);
    expectForms(ask(clockAnswer(30, 24)), ['00:30', '0:30', '12:30 am'], ['12:30', '12:30 pm']);
    const lenient = ask(clockAnswer(1185, 12, 'pm'), { accepts: ['7:45 pm', '7:45'] });
    expectForms(lenient, ['7:45', '7.45', 'quarter to 8'], ['7:45 am']);
  });

  it('reads lengths of time', () => {
    expectForms(
      ask(durationAnswer(85)),
      [
        '1 h 25 min',
        '85 min',
        '85',
        '1h25',
        '1 hr 25 mins',
        '1 hour and 25 minutes',
        '1:25',
        '5100 s',
        '1 hour 25',
      ],
      ['1.25', '1 h', '25 min', '125', '1.25 h', '85 h', '85 cm', '1 min 25 h', '25 min 1 h'],
    );
    expectForms(
      ask(durationAnswer(90)),
      ['1.5 h', '1½ hours', '1 and a half hours', 'an hour and a half', 'ninety minutes'],
      ['1.30 h', '1.3 h'],
    );
    expectForms(ask(durationAnswer(120)), ['2 h', '2', '120', '2 hours', '120 min'], ['200', '12']);
    expectForms(
      ask(durationAnswer(30)),
      ['30', '30 min', 'half an hour', '0.5 h', '1/2 hour'],
      ['half', '3'],
    );
  });
});

describe('words, choices and lists', () => {
  it('compares words without case, spelling or hyphens, and never by value', () => {
    expectForms(
      ask(wordAnswer('Triangle')),
      ['triangle', 'a triangle', ' TRIANGLE. '],
      ['tri angle', 'square', '3'],
    );
    expectForms(ask(wordAnswer('centimetres')), ['centimeters'], ['cm']);
    expectForms(
      ask(wordAnswer('one hundred and five')),
      ['One hundred five', 'a hundred and five'],
      ['105', '15'],
    );
    expectForms(
      ask(wordAnswer('quarter to eight')),
      ['a quarter to 8', 'Quarter to eight'],
      ['7:45', 'quarter to 7'],
    );
    expectForms(ask(wordAnswer('3/4')), ['3/4', '¾', '3 / 4'.replaceAll(' ', '')], ['6/8', '0.75']);
    expectForms(ask(wordAnswer('5 r 2')), ['5 r 2', '5r2', '5 remainder 2', '5 rem 2'], ['5', '52', '5.2']);
  });

  it('lets a choice be named, shortened or written as an equal number', () => {
    expectForms(ask(choiceAnswer('yes')), ['Yes', 'y'], ['no', 'n', 'ye']);
    expectForms(ask(choiceAnswer('1/2')), ['½', '1/2', '0.5'], ['1/3']);
    expectForms(ask(choiceAnswer('<')), ['<', '＜'], ['>', '=']);
  });

  it('takes a list in any spacing but in its order', () => {
    expectForms(
      ask(listAnswer(['1', '2', '3', '6'])),
      ['1, 2, 3, 6', '1,2,3,6', '1 2 3 6', '1; 2; 3; 6', '1, 2, 3 and 6', '1, 2, 3, and 6'],
      ['1, 2, 3', '1236', '6, 3, 2, 1', '1, 2, 3, 6, 12', ', , ,'],
    );
    expectForms(
      ask(listAnswer(['9\u00a0999', '10\u00a0000'])),
      ['9999, 10 000', '9,999, 10,000', '9999 10000'],
      ['9999'],
    );
    expectForms(ask(listAnswer(['1/4', '1 1/2'])), ['0.25, 1.5', '¼, 1½', '1/4 and 1 1/2'], ['1/4, 1/2']);
  });
});

describe('blanks and slips', () => {
  const question = ask(wholeAnswer(85, AU), {
    text: '47 + 38',
    slips: [
      { misconception: 'carry.dropped', text: '75', value: '75' },
      { misconception: 'digits.reversed', text: '58', value: '58' },
      { misconception: 'says.word', text: 'one hundred and five', value: null },
    ],
  });

  const names = (typed: string) => checkAnswer(question, typed, AU).slips.map((slip) => slip.misconception);

  it('tells blank from wrong', () => {
    expect(verdict(question, '')).toBe('blank');
    expect(verdict(question, ' \u00a0\t')).toBe('blank');
    expect(verdict(question, '?')).toBe('wrong');
  });

  it('names the slips that a wrong answer matches, in any of its forms', () => {
    expect(names('75')).toEqual(['carry.dropped']);
    expect(names('seventy-five')).toEqual(['carry.dropped']);
    expect(names('One hundred five')).toEqual(['says.word']);
    expect(names('76')).toEqual([]);
    expect(names('85')).toEqual([]);
  });
});

describe('whatever is typed', () => {
  const questions = [
    ask(wholeAnswer(12, AU)),
    ask(fractionAnswer(rational(3, 4), AU)),
    ask(moneyAnswer(rational(97, 20), AU)),
    ask(clockAnswer(465)),
    ask(durationAnswer(85)),
    ask(unitAnswer(47, 'cm', AU)),
    ask(wordAnswer('cube')),
    ask(choiceAnswer('yes')),
    ask(listAnswer(['1', '2'])),
  ];

  it.each([
    '999,999,999,999.999999',
    '999999 km 0.999999 mm',
    '999999999999 km 1 mm',
    '999999999999 999999/999999',
  ])('never throws for numbers as large as “%s”', (text) => {
    for (const question of questions) expect(verdict(question, text)).toBe('wrong');
  });

  it('never throws', () => {
    const pieces = fc.constantFrom(
      ...'0 1 9 12 999999999999 . , / : - \u2212 $ £ c % ½ h min m km and point half to past am pm r'.split(
        ' ',
      ),
      ' ',
      'hundred',
      'million',
      'quarter',
      'o’clock',
      '\u0000',
      '🙂',
      'É',
    );
    const typed = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.array(pieces, { maxLength: 12 }).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(typed, fc.constantFrom(...questions), (text, question) => {
        expect(['right', 'wrong', 'blank']).toContain(verdict(question, text));
      }),
      { numRuns: 4000 },
    );
  });

  it('agrees with mathjs on which fractions and decimals are equal', () => {
    const texts = fc.oneof(
      fc.tuple(fc.integer({ min: 0, max: 24 }), fc.integer({ min: 1, max: 12 })).map(([n, d]) => `${n}/${d}`),
      fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 99 })).map(([a, b]) => `${a}.${b}`),
    );
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 24 }), fc.integer({ min: 1, max: 12 }), texts, (n, d, text) => {
        const value = rational(n, d);
        const isEqual = math.evaluate(`${toValue(value)} == ${text}`) as boolean;
        expect(verdict(ask(fractionAnswer(value, AU)), text)).toBe(isEqual ? 'right' : 'wrong');
      }),
      { numRuns: 3000 },
    );
  });
});
