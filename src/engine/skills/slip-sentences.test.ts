// Whether a wrong answer is what its sentence says: "always rounds up" must not stand beside a number rounded down.
import { describe, expect, it } from 'vitest';
import { localeOf } from '../numbers/locale.js';
import { generateQuestions } from '../questions/generate.js';
import { MISCONCEPTIONS, type MisconceptionId } from '../questions/misconceptions.js';
import type { Question, Slip } from '../questions/question.js';
import { SKILLS } from './map.js';

const QUESTIONS = SKILLS.flatMap((skill) => generateQuestions(skill, 40, 17, localeOf('en-AU')));

const SLIPS = QUESTIONS.flatMap((question) => question.slips.map((slip) => ({ question, slip })));

/** A value as a number: "3/4" is 0.75. */
function sizeOf(value: string | null): number {
  const [top = Number.NaN, bottom = 1] = (value ?? '').split('/').map(Number);
  return top / bottom;
}

/** Slips of the given misconceptions that fail the test, and that there are some to be tested. */
function misfits(
  ids: readonly MisconceptionId[],
  fits: (question: Question, slip: Slip) => boolean,
  where: (question: Question) => boolean = () => true,
): string[] {
  const meant = SLIPS.filter(
    ({ question, slip }) => ids.some((id) => id === slip.misconception) && where(question),
  );
  expect(meant.length, ids.join()).toBeGreaterThan(0);
  return meant
    .filter(({ question, slip }) => !fits(question, slip))
    .map(
      ({ question, slip }) => `${question.skill}: ${question.text} ✗ ${slip.text} (${slip.misconception})`,
    );
}

const isAbove = ({ answer }: Question, slip: Slip) => sizeOf(slip.value) > sizeOf(answer.value);

describe('the sentence beside a wrong answer', () => {
  it('writes percents closed up and takes no digit “by itself” where it means on its own', () => {
    const texts = Object.values(MISCONCEPTIONS).flatMap(({ does, help }) => [does, help]);
    expect(texts.filter((text) => /\d[\s\u00a0]%|divides .* by itself and/.test(text))).toEqual([]);
  });

  it('speaks of rounding up where the wrong answer is above the right one, of cutting off where it is below', () => {
    const isEstimate = ({ text }: Question) =>
      /round .* first|to the nearest/.test(text) && !/rounds to/.test(text);
    expect(misfits(['round.always-up', 'money.rounds-up'], isAbove, isEstimate)).toEqual([]);
    expect(
      misfits(
        ['round.cut-off', 'money.rounds-down'],
        (question, slip) => !isAbove(question, slip),
        isEstimate,
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
    expect(misfits(['time.hundred-minutes'], (question) => !asksForSeconds(question))).toEqual([]);
    expect(misfits(['time.hundred-seconds'], asksForSeconds)).toEqual([]);
  });

  it('speaks of the afternoon and of decimals only where the question does', () => {
    const isMorning = ({ text }: Question) => /\bam written/.test(text);
    expect(misfits(['time.twelve-left-out'], (question) => !isMorning(question))).toEqual([]);
    expect(misfits(['time.am-as-pm'], isMorning)).toEqual([]);
    expect(
      misfits(['fractions.digits-after-point'], ({ text }) => /%|percent|decimal|digits|\d\.\d/.test(text)),
    ).toEqual([]);
  });

  it('names dividing, multiplying and percents the way the wrong answer went', () => {
    const times = (question: Question) => question.text.includes('×');
    expect(misfits(['times.as-divide'], times)).toEqual([]);
    expect(
      misfits(['divide.as-times', 'fractions.divides-as-times'], (question) => !times(question)),
    ).toEqual([]);
    expect(misfits(['percent.times-it'], isAbove)).toEqual([]);
    expect(
      misfits(['percent.divides-by-it'], ({ text }, slip) =>
        [...text.matchAll(/(\d+)% of ([\d ]+)/g)].some(
          ([, percent, whole]) =>
            Math.abs(sizeOf(slip.value) * Number(percent) - Number(whole?.replace(/\s/g, ''))) < 1e-6,
        ),
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
      misfits(['time.order-by-number'], ({ text }, slip) => {
        const extreme = text.includes('shortest') ? Math.min : Math.max;
        return Number.parseInt(slip.text, 10) === extreme(...numbersIn(text));
      }),
    ).toEqual([]);
    const priceOf = (offer: string) => {
      const paid = / for (\$?)([\d.]+)/.exec(offer);
      return Number(paid?.[2]) * (paid?.[1] ? 100 : 1);
    };
    expect(
      misfits(['money.price-only'], ({ answer }, slip) => priceOf(slip.text) < priceOf(answer.text)),
    ).toEqual([]);
    const seen = (text: string) => Number(text.replace(/[^\d.]/g, ''));
    expect(
      misfits(
        ['money.unit-ignored'],
        ({ answer }, slip) => seen(slip.text) > seen(answer.text),
        ({ text }) => text.startsWith('Which is more'),
      ),
    ).toEqual([]);
  });

  it('counts the starting day where it is named', () => {
    expect(
      misfits(
        ['time.day-counted-twice'],
        ({ text }, slip) => text.includes(slip.text),
        ({ text }) => /just after|just before/.test(text),
      ),
    ).toEqual([]);
  });
});
