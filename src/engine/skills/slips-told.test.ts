// Whether a wrong answer follows from what its sentence says of the child, wherever that can be worked out again.
import { describe, expect, it } from 'vitest';
import { LOCALES, localeOf } from '../numbers/locale.js';
import { generateQuestions } from '../questions/generate.js';
import type { MisconceptionId } from '../questions/misconceptions.js';
import type { Question } from '../questions/question.js';
import { addSteps } from '../questions/strategies/adding.js';
import { SKILLS } from './map.js';

const QUESTIONS: readonly Question[] = LOCALES.flatMap((locale) =>
  SKILLS.flatMap((skill) => generateQuestions(skill, 20, 23, localeOf(locale))),
);

/** Wrong answers with this misconception that do not fit, as a teacher would read them; null marks what cannot be told. */
function misfits(id: MisconceptionId, fits: (question: Question, wrong: number) => boolean | null): string[] {
  const told = QUESTIONS.flatMap((question) =>
    question.slips
      .filter((slip) => slip.misconception === id)
      .map((slip) => ({ line: `${question.text} ${slip.text}`, fits: fits(question, Number(slip.value)) })),
  ).filter((one) => one.fits !== null);
  expect(told.length, id).toBeGreaterThan(0);
  return [...new Set(told.filter((one) => !one.fits).map(({ line }) => line))];
}

const valueOf = (question: Question) => Number(question.answer.value);

/** The numbers a question offers: "Which is greater: 61 or 51?" */
const offered = (text: string): number[] =>
  [...text.replace(/(?<=\d)[\u00a0,](?=\d{3}\b)/g, '').matchAll(/\d+/g)].map(Number);

const WORTH: Readonly<Record<string, number>> = { I: 1, V: 5, X: 10, L: 50, C: 100, D: 500, M: 1000 };

function romanValue(letters: string): number {
  const worths = [...letters].map((letter) => WORTH[letter] ?? 0);
  return worths.reduce((sum, worth, i) => sum + (worth < (worths[i + 1] ?? 0) ? -worth : worth), 0);
}

describe('a wrong answer follows from its sentence:', () => {
  it('the starting number counted as the first step ends one short', () => {
    expect(
      misfits('count.off-by-one', (question, wrong) => {
        const sum = /^(\d+) ([+-]) (\d+)$/.exec(question.expression ?? '');
        if (sum === null || question.strand === 'algebra') return null;
        return wrong === valueOf(question) + (sum[2] === '+' ? -1 : 1);
      }),
    ).toEqual([]);
  });

  it('a carry is forgotten only where there is one, and is one too many only where there is none', () => {
    const addends = (question: Question) =>
      /^\d+(?: \+ \d+)+$/.test(question.expression ?? '') ? offered(question.expression ?? '') : null;
    const columnsOf = (numbers: readonly number[]) => {
      const width = Math.max(...numbers.map((n) => String(n).length));
      return Array.from({ length: width }, (_, i) =>
        numbers.reduce((sum, n) => sum + (Math.floor(n / 10 ** i) % 10), 0),
      );
    };
    expect(
      misfits('carry.dropped', (question, wrong) => {
        const numbers = addends(question);
        if (numbers === null) return null;
        const columns = columnsOf(numbers);
        return (
          wrong === columns.reduce((sum, n, i) => sum + (i === columns.length - 1 ? n : n % 10) * 10 ** i, 0)
        );
      }),
    ).toEqual([]);
    expect(
      misfits('carry.extra', (question, wrong) => {
        const numbers = addends(question);
        // The column that the extra one would have come out of.
        const place = String(wrong - valueOf(question)).length - 2;
        return numbers && (columnsOf(numbers)[place] ?? 10) < 10;
      }),
    ).toEqual([]);
  });

  it('a step is added only to the number before a multiple, not to find a common one', () => {
    expect(misfits('multiples.adds-the-step', ({ text }) => !text.includes('common'))).toEqual([]);
  });

  it('squares next door and sides of a square are those of a square in the question', () => {
    expect(misfits('squares.next-door', (_, wrong) => Number.isInteger(Math.sqrt(wrong)))).toEqual([]);
    expect(misfits('squares.next-door', ({ text }) => text.includes('square'))).toEqual([]);
    expect(misfits('squares.divided-by-four', ({ text }) => text.includes('square'))).toEqual([]);
  });

  it('a sum is done as it is printed only where one is printed', () => {
    expect(misfits('divide.not-undone', ({ text }) => !text.startsWith('How many'))).toEqual([]);
  });

  it('a minus sign of a point is lost only where the point has one', () => {
    const bare = (pair: string) => pair.replaceAll('−', '');
    const signs = (pair: string) => pair.length - bare(pair).length;
    const lost = QUESTIONS.filter(({ text }) => text === 'What are the coordinates of point A?').flatMap(
      ({ answer, slips }) =>
        slips
          .filter(({ misconception }) => misconception === 'position.sign-lost')
          .map((slip) => [answer.text, slip.text] as const),
    );
    expect(lost.length).toBeGreaterThan(0);
    const added = lost.filter(
      ([right, wrong]) => bare(right) !== bare(wrong) || signs(wrong) >= signs(right),
    );
    expect(added).toEqual([]);
  });

  it('no number is left out where a number is doubled', () => {
    expect(misfits('addend.left-out', ({ text }) => !/double/i.test(text))).toEqual([]);
  });

  it('last digits mislead only where they differ', () => {
    expect(
      misfits('compare.last-digit', (question, wrong) => {
        const digits = offered(question.text).map((n) => n % 10);
        const best = /less|least/.test(question.text) ? Math.min(...digits) : Math.max(...digits);
        return wrong % 10 === best && valueOf(question) % 10 !== best;
      }),
    ).toEqual([]);
  });

  it('a minus sign is lost only from an answer that has one', () => {
    expect(
      misfits('negative.sign-lost', (question, wrong) =>
        Number.isFinite(wrong) && Number.isFinite(valueOf(question))
          ? valueOf(question) < 0 && wrong === -valueOf(question)
          : null,
      ),
    ).toEqual([]);
  });

  it('zero is counted twice only on the way across it', () => {
    expect(
      misfits('negative.zero-counted', (question, wrong) => {
        const last = /, (−?)(\d+), \?$/.exec(question.text);
        if (last === null) return null;
        const from = Number(last[2]) * (last[1] === '' ? 1 : -1);
        return from * valueOf(question) < 0 && Math.abs(wrong - valueOf(question)) === 1;
      }),
    ).toEqual([]);
  });

  it('half the gap on from the larger of two numbers is a whole gap beyond the middle', () => {
    expect(
      misfits('halfway.end', (question, wrong) => {
        const ends = /^\((\d+) \+ (\d+)\) \/ 2$/.exec(question.expression ?? '');
        return ends === null ? null : wrong - valueOf(question) === Number(ends[2]) - Number(ends[1]);
      }),
    ).toEqual([]);
  });

  it('a ten moves on only where the ones fill one', () => {
    expect(
      misfits('complement.extra-ten', (question, wrong) => {
        const found = /^(\d+) - (\d+)$/.exec(question.expression ?? '');
        if (found === null || wrong !== valueOf(question) + 10) return null;
        return (Number(found[2]) % 10) + (valueOf(question) % 10) > 9;
      }),
    ).toEqual([]);
  });

  it('a year is written as a year, right or wrong', () => {
    const slips = QUESTIONS.filter(({ text }) => text.includes('Which year is that?')).flatMap(
      (one) => one.slips,
    );
    expect(slips.length).toBeGreaterThan(0);
    expect(slips.map(({ text }) => text).filter((text) => !/^\d{4}$/.test(text))).toEqual([]);
  });

  it('one Roman letter read as another gives the wrong number', () => {
    expect(
      misfits('roman.letters-mixed', (question, wrong) => {
        const numeral = /(?:numeral|year) ([IVXLCDM]+)[?.]/.exec(question.text)?.[1];
        if (numeral === undefined) return null;
        return Object.keys(WORTH).some((letter) =>
          Object.keys(WORTH).some((other) => romanValue(numeral.replaceAll(letter, other)) === wrong),
        );
      }),
    ).toEqual([]);
  });

  it('only a product has its two numbers added instead of multiplied', () => {
    expect(misfits('times.as-plus', (question) => !/^\d+ \+ \d+$/.test(question.text))).toEqual([]);
  });

  it('only a missing number is passed over in adding all in sight', () => {
    expect(
      misfits('missing.adds-all', (question) => !/^[\d\u00a0,.]+ [+−] [\d\u00a0,.]+$/.test(question.text)),
    ).toEqual([]);
  });
});

describe('a strategy leads to the answer:', () => {
  it('starts with the larger number where it says so', () => {
    const astray: string[] = [];
    let said = 0;
    for (let a = 1; a < 100; a++)
      for (let b = 1; b < 100; b++) {
        const [first = '', second = ''] = addSteps(a, b, String);
        const start = /^Start with the larger number: (\d+ \+ )/.exec(first)?.[1];
        if (start === undefined) continue;
        said++;
        if (!second.startsWith(start)) astray.push(`${first}; ${second}`);
      }
    expect(said).toBeGreaterThan(0);
    expect(astray).toEqual([]);
  });

  it('makes a ten of the two numbers that make one', () => {
    const asked = SKILLS.filter((skill) => skill.id === 'add.three').flatMap((skill) =>
      generateQuestions(skill, 200, 23, localeOf('en-AU')),
    );
    const sums = asked.flatMap(({ text, strategy }) => {
      const parts = /^(\d+) \+ (\d+) \+ (\d+)$/.exec(text)?.slice(1).map(Number);
      return parts === undefined ? [] : [{ parts, text, strategy }];
    });
    const last = sums.filter(({ parts: [a = 0, b = 0, c = 0] }) => {
      return b + c === 10 && (a + b) % 10 !== 0 && (a + c) % 10 !== 0;
    });
    expect(last.length).toBeGreaterThan(0);
    const astray = last.filter(({ parts: [, b, c], strategy }) => !strategy.includes(`${b} + ${c} = 10`));
    expect(astray.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('counts up to a difference where that is the way', () => {
    const differences = SKILLS.filter((skill) => skill.id === 'sub.difference').flatMap((skill) =>
      generateQuestions(skill, 200, 23, localeOf('en-AU')),
    );
    expect(differences.length).toBeGreaterThan(0);
    const back = differences.filter(({ strategy }) => strategy.some((step) => step.includes('−')));
    expect(back.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('says the number in words where words are asked for', () => {
    const astray = QUESTIONS.filter(
      ({ text, answer, strategy }) =>
        /^How is .* written in words/.test(text) && strategy.at(-1)?.endsWith(answer.text) !== true,
    );
    expect(astray.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('gives no number as its own reason', () => {
    const parity = SKILLS.filter((skill) => skill.id === 'place.odd-even').flatMap((skill) =>
      generateQuestions(skill, 200, 23, localeOf('en-AU')),
    );
    expect(parity.some(({ text }) => /^Is \d odd or even\?$/.test(text))).toBe(true);
    const circles = parity.filter(({ strategy }) =>
      strategy.some((step) => /\b(\d+) is (odd|even), so \1 is \2\b/.test(step)),
    );
    expect(circles.map(({ text }) => text)).toEqual([]);
  });
});
