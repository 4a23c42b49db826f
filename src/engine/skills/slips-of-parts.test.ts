// Whether a wrong fraction, decimal or percentage follows from what its sentence says of the child.
import { describe, expect, it } from 'vitest';
import { misfits, questionsOf, SAMPLES, SLIPS } from '../../../test/support/told-slips.js';
import type { Question, Slip } from '../questions/question.js';

describe('a wrong fraction or decimal', () => {
  it('a minus sign of a point is lost only where the point has one', () => {
    const bare = (pair: string) => pair.replaceAll('−', '');
    const signs = (pair: string) => pair.length - bare(pair).length;
    const lost = SAMPLES.filter(
      ({ question }) => question.text === 'What are the coordinates of point A?',
    ).flatMap(({ question: { answer, slips } }) =>
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

  it('tops and bottoms are added as they stand, and the sum is not brought to lowest terms', () => {
    const parts = (text: string) => /^(\d+)\/(\d+) \+ (\d+)\/(\d+)$/.exec(text)?.slice(1).map(Number);
    expect(
      misfits('fractions.add-tops-bottoms', ({ text }, _, slip) => {
        const [a = 0, b = 0, c = 0, d = 0] = parts(text) ?? [];
        return parts(text) ? slip.text === `${a + c}/${b + d}` : null;
      }),
    ).toEqual([]);
  });

  it('a whole number times top and bottom is written as it comes, and so are the parts that are left', () => {
    const whole = (text: string) =>
      /^(\d+) × (\d+)\/(\d+)$/.exec(text)?.slice(1) ??
      /^(\d+) (?:friends|children) share (\d+)\/(\d+) /.exec(text)?.slice(1);
    const turned = (text: string) => /^(\d+)\/(\d+) [×÷] (\d+)$/.exec(text)?.slice(1);
    const factors = (text: string) => {
      const [top, bottom, times] = turned(text) ?? [];
      return (whole(text) ?? [times, top, bottom]).map(Number);
    };
    expect(
      misfits('fractions.multiplies-both', ({ text }, _, slip) => {
        const [times = 0, top = 0, bottom = 0] = factors(text);
        return Number.isNaN(times) ? null : slip.text === `${times * top}/${times * bottom}`;
      }),
    ).toEqual([]);
    const onLine = (text: string) =>
      /there are (\d+) equal steps\. Which fraction is at step (\d+)/.exec(text)?.slice(1).map(Number);
    expect(
      misfits('fractions.marks-counted', ({ text }, _, slip) => {
        const [steps = 0, at = 0] = onLine(text) ?? [];
        return slip.text === `${at}/${steps + 1}`;
      }),
    ).toEqual([]);
    expect(
      misfits('fractions.part-left', ({ text }, _, slip) => {
        const [steps = 0, at = 0] = onLine(text) ?? [];
        return steps === 0 ? null : slip.text === `${steps - at}/${steps}`;
      }),
    ).toEqual([]);
    expect(
      misfits('data.other-event', ({ text }, _, slip) => {
        const [, one, other] = /^A bag has (\d+) \S+ counters? and (\d+) \S+ ones?\./.exec(text) ?? [];
        const all = Number(one) + Number(other);
        return slip.text.includes('/') && all > 0 ? slip.text.endsWith(`/${all}`) : null;
      }),
    ).toEqual([]);
  });

  it('the parts before and after a point worked apart keep every digit', () => {
    const sums = ['dec.add', 'dec.double'].flatMap((id) =>
      questionsOf(id, 200).flatMap(({ text, slips }) => {
        const [, a, b, c, d] = (/^(\d+)\.(\d+) \+ (\d+)\.(\d+)$/.exec(text) ?? []).map(Number);
        const slip = slips.find(({ misconception }) => misconception === 'decimals.parts-apart');
        if (slip === undefined || a === undefined || b === undefined || c === undefined || d === undefined)
          return [];
        return [{ text, wrong: slip.text, apart: `${a + c}.${b + d}` }];
      }),
    );
    expect(sums.some(({ wrong }) => wrong.endsWith('0'))).toBe(true);
    expect(sums.filter(({ wrong, apart }) => wrong !== apart)).toEqual([]);
  });

  it('digits that a fraction lends to a decimal are all there', () => {
    const lent = questionsOf('dec.fraction', 200).flatMap(({ text, slips }) => {
      const [, top, bottom] = /^What is (\d+)\/(\d+) as a decimal/.exec(text) ?? [];
      return top === undefined
        ? []
        : slips
            .filter(({ misconception }) => misconception === 'fractions.digits-after-point')
            .map((slip) => [slip.text.replace(/^0\.|\./, ''), `${top}${bottom}`] as const);
    });
    expect(lent.length).toBeGreaterThan(5);
    expect(lent.filter(([written, digits]) => written !== digits)).toEqual([]);
  });

  it('tops are taken apart in the order of the question', () => {
    expect(
      misfits('fractions.not-renamed', (question, wrong) => {
        const [, a, b, c, d] = (
          /^\(?(\d+)\/(\d+)\)? - \(?(\d+)\/(\d+)\)?$/.exec(question.expression ?? '') ?? []
        ).map(Number);
        if (a === undefined || b === undefined || c === undefined || d === undefined || a > b) return null;
        return a >= c && Math.abs(wrong - (a - c) / Math.max(b, d)) < 1e-9;
      }),
    ).toEqual([]);
  });

  it('keeps the part beyond the whole, or drops it', () => {
    const isWhole = (slip: string) => /^[$£]?\d+$/.test(slip);
    expect(misfits('exact.part-kept', (_, __, { text }) => !isWhole(text))).toEqual([]);
    expect(misfits('exact.part-dropped', (_, __, { text }) => isWhole(text))).toEqual([]);
  });

  it('keeps the bottom number of the fraction that a whole number or one part is added to', () => {
    const bottomOf = (text: string) => /\d\/(\d+)/.exec(text)?.[1];
    const topOf = (text: string) => Number(/(\d+)\/\d/.exec(text)?.[1]);
    const isKept = ({ text, answer }: Question, _: number, slip: Slip) =>
      /\d\/\d/.test(`${text} ${answer.text}`) && /\d\/\d/.test(slip.text)
        ? bottomOf(slip.text) === bottomOf(text)
        : null;
    expect(misfits('exact.whole-to-top', isKept)).toEqual([]);
    expect(misfits('exact.whole-to-top', (_, __, { text }) => topOf(text) > 0)).toEqual([]);
    // Off by one in a whole is off by one in a fact too; then the part stays as it is.
    const bare = SLIPS.filter(
      ({ skill, slip }) =>
        /^(?:add\.make-whole|sub\.part-from-whole|place\.halfway\.parts)$/.test(skill.id) &&
        slip.misconception === 'fact.one-out' &&
        slip.text.includes('/'),
    );
    expect(bare.length).toBeGreaterThan(20);
    expect(
      bare
        .filter(({ question, slip }) => bottomOf(slip.text) !== bottomOf(question.text))
        .map(({ question, slip }) => `${question.text} [${slip.text}]`),
    ).toEqual([]);
  });

  it('does at the last digit only what has a point', () => {
    expect(misfits('exact.point-ignored', ({ text }) => text.includes('.'))).toEqual([]);
    const blamed = questionsOf('add.whole-to-part', 300).flatMap(({ text, slips }) =>
      slips.flatMap(({ misconception }) =>
        misconception === 'exact.point-ignored' || misconception === 'money.unit-ignored'
          ? [{ text, isPoint: misconception === 'exact.point-ignored' }]
          : [],
      ),
    );
    expect(blamed.some(({ isPoint }) => !isPoint)).toBe(true);
    expect(blamed.filter(({ text, isPoint }) => text.includes('.') !== isPoint)).toEqual([]);
  });
});
