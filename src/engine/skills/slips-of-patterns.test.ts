// Whether wrong answers in algebra, shape and data follow from what their sentences say of the child.
import { describe, expect, it } from 'vitest';
import { offered, SAMPLES, sizeOf } from '../../../test/support/told-slips.js';

describe('a wrong answer about patterns, shapes and data', () => {
  const slipsOf = (id: string) =>
    SAMPLES.filter(({ skill }) => skill.id === id).flatMap(({ question }) =>
      question.slips.map(({ misconception, value }) => ({
        misconception,
        wrong: sizeOf(value),
        right: sizeOf(question.answer.value),
        numbers: offered(question.text),
        text: question.text,
      })),
    );

  it('stops a step early where the first number is counted too, on the way down as on the way up', () => {
    const early = slipsOf('alg.think').filter(({ misconception }) => misconception === 'count.off-by-one');
    expect(early.length).toBeGreaterThan(10);
    for (const { text, wrong, right, numbers } of early) {
      expect(wrong - right, text).toBe(/adds/.test(text) ? 1 : -1);
      // Nobody counts more steps than that.
      expect(numbers[0], text).toBeLessThanOrEqual(20);
    }
  });

  it('writes into a gap of a pattern no number that stands in it', () => {
    const gaps = ['alg.step', 'alg.step.large']
      .flatMap(slipsOf)
      .filter(({ text }) => /is missing/.test(text));
    expect(gaps.length).toBeGreaterThan(50);
    for (const { text, wrong, numbers } of gaps) expect(numbers, text).not.toContain(wrong);
  });

  it('makes one quarter turn too many or too few, and not three', () => {
    const turns = slipsOf('shape.turn').filter(({ text }) => /right angles/.test(text));
    expect(turns.length).toBeGreaterThan(5);
    for (const { text, wrong, right } of turns) expect(Math.abs(wrong - right), text).toBe(1);
  });

  it('keeps a whole or a ten too many only where the known part is the larger', () => {
    const tens = slipsOf('alg.missing').filter(
      ({ misconception }) => misconception === 'complement.extra-ten',
    );
    expect(tens.length).toBeGreaterThan(5);
    for (const { text, numbers } of tens) {
      const [low = 0, high = 0] = [Math.min(...numbers), Math.max(...numbers)];
      expect(high % 10, text).toBeLessThan(low % 10);
    }
  });

  it('mixes up mean, median, mode and range only with one of them', () => {
    const lists = ['data.mode', 'data.median', 'data.range', 'data.mean'].flatMap(slipsOf);
    // Lists of whole numbers only: those of decimals and money are not read here.
    const mixed = lists.filter(
      ({ misconception, text }) => misconception === 'data.measures-mixed-up' && !/[.$£¢/]|\d[cp]/.test(text),
    );
    expect(mixed.length).toBeGreaterThan(20);
    for (const { text, wrong, numbers } of mixed) {
      const order = numbers.toSorted((a, b) => a - b);
      const middle = order.length % 2 === 1 ? [order[(order.length - 1) / 2]] : [];
      expect([...middle, (order.at(-1) ?? 0) - (order[0] ?? 0)], `${text} ${wrong}`).toContain(wrong);
    }
  });

  it('reads a column or a point that stands beside the one asked for', () => {
    const read = SAMPLES.filter(({ skill }) => skill.id === 'data.columns').flatMap(({ question }) => {
      const slip = question.slips.find(({ misconception }) => misconception === 'data.other-bar');
      const bars = question.figure?.kind === 'bar-chart' ? question.figure.bars : [];
      const at = bars.findIndex(({ label }) => question.text.includes(label));
      return slip ? [{ wrong: Number(slip.text), beside: [bars[at - 1]?.value, bars[at + 1]?.value] }] : [];
    });
    expect(read.length).toBeGreaterThan(5);
    for (const { wrong, beside } of read) expect(beside).toContain(wrong);
  });
});
