// Whether the steps of a question lead to its answer in the way that they promise.
import { describe, expect, it } from 'vitest';
import { questionsOf, SAMPLES } from '../../../test/support/told-slips.js';
import { addSteps } from '../questions/strategies/adding.js';

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
    const asked = questionsOf('add.three', 200);
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
    const differences = questionsOf('sub.difference', 200);
    expect(differences.length).toBeGreaterThan(0);
    const back = differences.filter(({ strategy }) => strategy.some((step) => step.includes('−')));
    expect(back.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('says the number in words where words are asked for', () => {
    const astray = SAMPLES.map(({ question }) => question).filter(
      ({ text, answer, strategy }) =>
        /^How is .* written in words/.test(text) && strategy.at(-1)?.endsWith(answer.text) !== true,
    );
    expect(astray.map(({ text, strategy }) => `${text} ${strategy.join('; ')}`)).toEqual([]);
  });

  it('gives no number as its own reason', () => {
    const parity = questionsOf('place.odd-even', 200);
    expect(parity.some(({ text }) => /^Is \d odd or even\?$/.test(text))).toBe(true);
    const circles = parity.filter(({ strategy }) =>
      strategy.some((step) => /\b(\d+) is (odd|even), so \1 is \2\b/.test(step)),
    );
    expect(circles.map(({ text }) => text)).toEqual([]);
  });
});
