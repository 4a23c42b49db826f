// Whether a wrong whole number follows from what its sentence says of the child, wherever that can be worked out again.
import { describe, expect, it } from 'vitest';
import { misfits, offered, questionsOf, SAMPLES, sizeOf } from '../../../test/support/told-slips.js';
import { parseDayNumber } from '../numbers/day-number.js';
import { localeOf } from '../numbers/locale.js';
import { questionsAbout } from '../questions/generate.js';
import type { Question, Slip } from '../questions/question.js';
import { Rng } from '../random/rng.js';
import { SKILLS } from './map.js';

const valueOf = (question: Question) => Number(question.answer.value);

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

  it('nothing is off by one where the wrong number stands in the question', () => {
    // "12,500", "$4.85", "85c", "1 3/4"
    const numbersIn = (text: string): readonly string[] =>
      text
        .replace(/(?<=\d)[\u00a0,](?=\d{3}\b)/g, '')
        .match(/[$£]?\d+(?:\.\d+)?(?:\s\d+\/\d+|\/\d+)?[c¢p]?/g) ?? [];
    expect(
      misfits(['fact.one-out', 'count.off-by-one'], ({ strand, text }, _, slip) =>
        strand === 'algebra' ? !numbersIn(text).includes(numbersIn(slip.text)[0] ?? '') : null,
      ),
    ).toEqual([]);
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

  it('one zero too many or too few is one zero, and no point is multiplied', () => {
    const isOneZero = ({ text, answer }: Question, wrong: number, slip: Slip) => {
      const right = sizeOf(answer.value);
      const hasPoint =
        /\.\d/.test(answer.text + slip.text) || (text.includes('×') && /\d\.\d|\d[cp¢]/.test(text));
      return (wrong === 10 * right || 10 * wrong === right) && !hasPoint;
    };
    // Of a product in two parts only one is ten times too small.
    const isInParts = ({ skill }: Question) => skill === 'mult.2d2d';
    expect(
      misfits('times.zero-count', (question, wrong, slip) =>
        isInParts(question) ? null : isOneZero(question, wrong, slip),
      ),
    ).toEqual([]);
    const locale = localeOf('en-AU');
    const aboutDays = ['100', '300', '3.6', '$12.35', '$0.85'].flatMap((input) => {
      const day = parseDayNumber(input, locale);
      if (!day.ok) throw new Error(day.error.message);
      return SKILLS.filter(({ strand }) => /multiplication|division/.test(strand)).flatMap((skill) =>
        questionsAbout(skill, day.value, new Rng(5).fork(skill.id), locale, 8),
      );
    });
    const odd = aboutDays.flatMap((question) =>
      question.slips
        .filter(({ misconception }) => misconception === 'times.zero-count')
        .filter((slip) => !isInParts(question) && !isOneZero(question, sizeOf(slip.value), slip))
        .map((slip) => `${question.text} [${slip.text}]`),
    );
    expect(odd).toEqual([]);
  });

  it('an end that the question names is nobody’s middle', () => {
    for (const id of ['place.halfway', 'place.halfway.parts']) {
      const asked = questionsOf(id, 300);
      expect(asked.length).toBeGreaterThan(100);
      const ends = asked.filter(({ text, slips }) =>
        slips.some((slip) => slip.misconception === 'fact.one-out' && text.endsWith(` and ${slip.text}?`)),
      );
      expect(ends.map(({ text }) => text)).toEqual([]);
    }
  });

  it('a ten moves on only where the ones fill one', () => {
    expect(
      misfits('complement.extra-ten', (question, wrong) => {
        const found = /^(\d+) - (\d+)$/.exec(question.expression ?? '');
        if (found === null || wrong !== valueOf(question) + 10) return null;
        if (/%/.test(question.text) && Number(found[2]) < 10) return false;
        return (Number(found[2]) % 10) + (valueOf(question) % 10) > 9;
      }),
    ).toEqual([]);
  });

  it('a year is written as a year, right or wrong', () => {
    const slips = SAMPLES.filter(({ question }) => question.text.includes('Which year is that?')).flatMap(
      ({ question }) => question.slips,
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

/** What the sentence of a misconception says about the wrong number beside the right one. */
const SAID: Readonly<Record<string, (wrong: number, right: number) => boolean>> = {
  'round.cut-off': (wrong, right) => wrong < right,
  'decimals.cut-short': (wrong, right) => wrong < right,
  'money.rounds-down': (wrong, right) => wrong < right,
  'round.always-up': (wrong, right) => wrong > right,
  'decimals.rounds-up-always': (wrong, right) => wrong > right,
  'money.rounds-up': (wrong, right) => wrong > right,
  'divide.neighbour': (wrong, right) => Math.abs(Math.abs(wrong - right) - 1) < 1e-9,
  'group.rounds-up': (wrong, right) => wrong === right + 1,
  'divide.remainder-as-one': (wrong, right) => wrong === Math.ceil(right),
};
/** Asks which number is the last to be rounded there: who cuts off goes too far. */
const ASKS_BACKWARDS = 'place.round.back';

describe('wrong answers', () => {
  it('come out as their sentence says', () => {
    const told = new Set<string>();
    const untrue = SAMPLES.filter(({ skill }) => skill.id !== ASKS_BACKWARDS).flatMap(({ question }) =>
      question.slips.flatMap(({ misconception, text, value }) => {
        const [wrong, right] = [sizeOf(value), sizeOf(question.answer.value)];
        const isTrue = SAID[misconception];
        if (isTrue === undefined || Number.isNaN(wrong) || Number.isNaN(right)) return [];
        told.add(misconception);
        return isTrue(wrong, right) ? [] : [`${question.text} ${text}: ${misconception}`];
      }),
    );
    expect([...new Set(untrue)]).toEqual([]);
    expect([...told].sort()).toEqual(Object.keys(SAID).sort());
  });
});

describe('what a wrong answer is said to tell', () => {
  /** The two numbers of a bare "a + b", "a − b" or "a × b", or null. */
  const twoNumbers = (text: string, sign: string): [number, number] | null => {
    const [first, second, ...more] = text
      .replace(/(?<=\d)[\u00a0,](?=\d{3}\b)/g, '')
      .split(` ${sign} `)
      .map(Number);
    return first === undefined || second === undefined || more.length > 0 || Number.isNaN(first + second)
      ? null
      : [first, second];
  };
  it('counts the start as a step: one too few when adding, one too many when taking away', () => {
    expect(
      misfits('count.off-by-one', ({ text }, wrong) => {
        const added = twoNumbers(text, '+');
        if (added !== null) return wrong === added[0] + added[1] - 1;
        const taken = twoNumbers(text, '−');
        return taken === null ? null : wrong === taken[0] - taken[1] + 1;
      }),
    ).toEqual([]);
  });

  it('adds the two numbers only where there are two, to just that sum', () => {
    expect(
      misfits('times.as-plus', ({ text }, wrong) => {
        const factors = twoNumbers(text, '×');
        if (factors !== null) return Math.abs(wrong - factors[0] - factors[1]) < 1e-9;
        return !/^Double|^What is twice| × \S+ × | × \? = /.test(text);
      }),
    ).toEqual([]);
  });

  it('leaves a number as it is when multiplying by zero only where there is a zero to multiply by', () => {
    expect(
      misfits('times.zero-keeps', ({ text }) => /(?:^| )0(?: |$)/.test(text) || /\?/.test(text)),
    ).toEqual([]);
  });

  it('takes the next odd number for the next prime', () => {
    expect(
      misfits('primes.odd-means-prime', ({ text }, wrong) => {
        const after = Number(/first prime number after (\d+)/.exec(text)?.[1] ?? Number.NaN);
        return after >= 0 ? wrong === after + 1 + (after % 2) : null;
      }),
    ).toEqual([]);
  });
});
