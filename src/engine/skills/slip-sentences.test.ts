// Whether the sentence about a wrong answer fits its question: what it speaks of must be there, and be able to mislead.
import { describe, expect, it } from 'vitest';
import { misfits, SAMPLES, SLIPS, sizeOf } from '../../../test/support/told-slips.js';
import { MISCONCEPTIONS, misconceptionOf } from '../questions/misconceptions.js';
import type { Question } from '../questions/question.js';

const isAbove = ({ answer }: Question, wrong: number) => wrong > sizeOf(answer.value);

describe('the sentence beside a wrong answer', () => {
  it('writes percents closed up and takes no digit “by itself” where it means on its own', () => {
    const texts = Object.values(MISCONCEPTIONS).flatMap(({ does, help }) => [does, help]);
    expect(texts.filter((text) => /\d[\s\u00a0]%|divides .* by itself and/.test(text))).toEqual([]);
  });

  it('speaks of rounding up where the wrong answer is above the right one, of cutting off where it is below', () => {
    const isEstimate = ({ text }: Question) =>
      /round .* first|to the nearest/.test(text) && !/rounds to/.test(text);
    expect(
      misfits(['round.always-up', 'money.rounds-up'], (question, wrong) =>
        isEstimate(question) ? isAbove(question, wrong) : null,
      ),
    ).toEqual([]);
    expect(
      misfits(['round.cut-off', 'money.rounds-down'], (question, wrong) =>
        isEstimate(question) ? !isAbove(question, wrong) : null,
      ),
    ).toEqual([]);
  });

  it('offers only the choices that the question names', () => {
    const choice = /^(?:Which (?:is|day|amount)[^:]*:|Is \S+(?: \S+)? nearer to) (.+)\?$/;
    const strange = SLIPS.filter(({ question, slip }) => {
      const named = choice.exec(question.text)?.[1]?.split(/, | or /);
      return named !== undefined && named.length > 1 && !named.includes(slip.text);
    });
    expect(strange.map(({ question, slip }) => `${question.text} ✗ ${slip.text}`)).toEqual([]);
  });

  it('speaks of minutes of an hour and of seconds of a minute where the question does', () => {
    const asksForSeconds = ({ text }: Question) => text.includes('seconds');
    expect(misfits('time.hundred-minutes', (question) => !asksForSeconds(question))).toEqual([]);
    expect(misfits('time.hundred-seconds', asksForSeconds)).toEqual([]);
  });

  it('speaks of the afternoon and of decimals only where the question does', () => {
    const isMorning = ({ text }: Question) => /\bam written/.test(text);
    expect(misfits('time.twelve-left-out', (question) => !isMorning(question))).toEqual([]);
    expect(misfits('time.am-as-pm', isMorning)).toEqual([]);
    expect(
      misfits('fractions.digits-after-point', ({ text }) => /%|percent|decimal|digits|\d\.\d/.test(text)),
    ).toEqual([]);
  });

  it('names dividing, multiplying and percents the way the wrong answer went', () => {
    const times = (question: Question) => question.text.includes('×');
    expect(misfits('times.as-divide', times)).toEqual([]);
    expect(
      misfits(['divide.as-times', 'fractions.divides-as-times'], (question) => !times(question)),
    ).toEqual([]);
    expect(misfits('percent.times-it', isAbove)).toEqual([]);
    expect(
      misfits('percent.divides-by-it', ({ text, answer }, wrong) =>
        [...text.matchAll(/(\d+)% of /g)].some(([, percent]) => {
          const whole = (100 * sizeOf(answer.value)) / Number(percent);
          return Math.abs(wrong * Number(percent) - whole) < 1e-6 * whole;
        }),
      ),
    ).toEqual([]);
  });

  it('blames the numbers, the price or the unit only where they mislead', () => {
    const numbersIn = (text: string) =>
      text
        .replace(/^.*?: /, '')
        .match(/\d+/g)
        ?.map(Number) ?? [];
    expect(
      misfits('time.order-by-number', ({ text }, _, slip) => {
        const extreme = text.includes('shortest') ? Math.min : Math.max;
        return Number.parseInt(slip.text, 10) === extreme(...numbersIn(text));
      }),
    ).toEqual([]);
    const priceOf = (offer: string) => {
      const paid = / for ([$£]?)([\d.]+)/.exec(offer);
      return Number(paid?.[2]) * (paid?.[1] ? 100 : 1);
    };
    expect(
      misfits('money.price-only', ({ answer }, _, slip) => priceOf(slip.text) < priceOf(answer.text)),
    ).toEqual([]);
    const seen = (text: string) => Number(text.replace(/[^\d.]/g, ''));
    expect(
      misfits('money.unit-ignored', ({ text, answer }, _, slip) =>
        text.startsWith('Which is more') ? seen(slip.text) > seen(answer.text) : null,
      ),
    ).toEqual([]);
  });

  it('counts the starting day where it is named', () => {
    expect(
      misfits('time.day-counted-twice', ({ text }, _, slip) =>
        /just after|just before/.test(text) ? text.includes(slip.text) : null,
      ),
    ).toEqual([]);
  });
});

/** What stands after the number of an answer: "cm", "day" for one or more of them, or nothing. */
const unitOf = (answer: string): string => answer.replace(/^[−£$]?\d[\d\s\u00a0.,/]*/, '').replace(/s$/, '');

/** What a sentence about a child speaks of, and what must then be in the question, its answer or the skill's title. */
const SPEAKS_OF: readonly (readonly [said: RegExp, asked: RegExp])[] = [
  [/\bperimeter\b/, /perimeter/],
  [/\bsolid\b|\bface\b/, /box|cube|solid|prism|pyramid|cylinder|cone|sphere|net|fold/i],
  [/\bsymmetry\b/, /symmetry/],
  [/\bnames? of the angles\b/, /acute|obtuse/],
  [/\bnames of the triangles\b/, /equilateral/],
  [/\bstarting day or month\b/, /day|month|week/i],
  [/\ba unit\b/, /unit/],
  [
    /\bpower of ten\b/,
    /\d[\s\u00a0](?:mm|cm|m|km|g|kg|m?[Ll])\b|\bof a \w*(?:met|lit)(?:re|er)|of a \w*gram/,
  ],
  [/\bturns the other way\b/, /turn/],
  [/\bspecial shape\b/, /\bIs (?:every|a)\b/],
];

describe('the sentences about wrong answers', () => {
  const told = ({ skill, question, slip }: (typeof SLIPS)[number]) =>
    `${skill.id}: ${question.text} [${slip.text}, ${slip.misconception}]`;

  it('speak of what is in the question', () => {
    const unfit = SLIPS.filter(({ skill, question, slip }) => {
      const does = misconceptionOf(slip.misconception)?.does ?? '';
      const asked = `${skill.title} ${question.text} ${question.answer.text}`;
      return SPEAKS_OF.some(([said, needed]) => said.test(does) && !needed.test(asked));
    });
    expect([...new Set(unfit.map(told))]).toEqual([]);
  });

  it('belong to a wrong answer in the unit of the right one', () => {
    // A choice may be offered in another unit, and a length of time come out in whole hours.
    const unlike = SLIPS.filter(
      ({ question: { answer }, slip }) =>
        /^(?:number|decimal|fraction)$/.test(answer.kind) && unitOf(answer.text) !== unitOf(slip.text),
    );
    expect([...new Set(unlike.map(told))]).toEqual([]);
  });
});

/** What a question must have, or must not have, for a child to be able to do what the sentence says. Its figure counts as text. */
const ROOM: Readonly<Record<string, { readonly needs?: RegExp; readonly bars?: RegExp }>> = {
  'equals.answer-next': { needs: /=/ },
  'equals.carries-on': { needs: /=/ },
  'equals.wrong-way': { needs: /=.*\+|\+.*=/, bars: /\u2212/ },
  'equals.difference-wrong-way': { needs: /\u2212.*=.*\u2212/ },
  'inequality.end-included': { bars: /[≤≥]/ },
  'inequality.end-left-out': { needs: /[≤≥]/ },
  'order.brackets-ignored': { needs: /\(/ },
  'letter.joined': { needs: /[nab]/ },
  'pattern.adds-one': { bars: /goes up (?:in|by)/ },
  'graph.value-not-change': { needs: /change|rise|fall|moves|longer|taller|warmer|more/ },
  'data.other-row': { needs: /^Which/ },
  'data.other-bar': { needs: /column graph|bar graph|bar chart/ },
  'table.other-line': { needs: /table|bus schedule/ },
  'data.larger-given': {
    needs: /more|than|difference|cheaper|dearer|save|taller|longer|warmer|colder|rise|fall/,
  },
};

describe('what a child seems to do', () => {
  it('is something that the question leaves room for', () => {
    const wrong = SAMPLES.flatMap(({ skill, question }) =>
      question.slips.flatMap(({ misconception }) => {
        const room = ROOM[misconception];
        const fits =
          room === undefined ||
          ((room.needs?.test(question.text) ?? true) && !(room.bars?.test(question.text) ?? false));
        return fits ? [] : [`${skill.id}: ${misconception}: ${question.text}`];
      }),
    );
    expect([...new Set(wrong)]).toEqual([]);
  });

  it('are not said to compare, mix up or give what the question does not have', () => {
    const remainders = /remainder|left over|and \?\//;
    const needs: Readonly<Record<string, RegExp>> = {
      'divide.quotient-for-remainder': remainders,
      'divide.gap-for-rest': remainders,
      'fractions.multiplies-both': /×|÷|share|swims|need/,
      'times.as-plus': /^(?!.*\d \+ \d).*/,
    };
    const strange = SAMPLES.flatMap(({ question }) =>
      question.slips
        .filter(({ misconception }) => needs[misconception]?.test(question.text) === false)
        .map(({ misconception, text }) => `${question.text} ${text}: ${misconception}`),
    );
    expect([...new Set(strange)]).toEqual([]);
  });
});
