import { describe, expect, it } from 'vitest';
import { Rng } from '../random/rng.js';
import { logistic, momentsAfterAnswer } from './logistic.js';
import { estimateAbility, placeChild } from './placement.js';

// Item difficulties and maximum-likelihood abilities by raw score, conditional ML in two R packages that agree
// (psychotools 0.7-2, eRm 1.0-2). LSAT6: Bock & Lieberman 1970. Numeracy: 876 pupils x 15 items.
const LSAT6 = {
  difficulties: [-1.2561, 0.4749, 1.236, 0.1684, -0.6232],
  abilities: [-1.6015, -0.4743, 0.4809, 1.5999],
};
const NUMERACY = {
  difficulties: [
    0.418, 0.6117, -1.6619, 0.511, -0.1845, 0.8864, 0.8098, 0.5914, 0.3387, -0.2964, -1.8672, 0.5444, 0.471,
    -0.7365, -0.436,
  ],
  abilities: [
    -2.982, -2.1343, -1.5765, -1.1378, -0.763, -0.4257, -0.1099, 0.1963, 0.5033, 0.8226, 1.1698, 1.5707,
    2.0803, 2.8697,
  ],
};

/** Answers with a given number right; which ones does not matter in the Rasch model. */
function withScore(difficulties: readonly number[], score: number) {
  return difficulties.map((difficulty, i) => ({ difficulty, right: i < score }));
}

describe('estimateAbility', () => {
  it.each([
    ['LSAT6', LSAT6],
    ['numeracy', NUMERACY],
  ])('gives the published Rasch abilities of %s with a flat prior', (_, set) => {
    set.abilities.forEach((published, i) => {
      const found = estimateAbility(withScore(set.difficulties, i + 1), { mean: 0, variance: Infinity });
      expect(Math.abs((found?.ability ?? NaN) - published)).toBeLessThan(0.001);
    });
  });

  it('has no finite estimate for all right or all wrong with a flat prior, and one with a proper prior', () => {
    const all = withScore(NUMERACY.difficulties, 15);
    expect(estimateAbility(all, { mean: 0, variance: Infinity })).toBeNull();
    expect(estimateAbility(all, { mean: 0, variance: 1 })?.ability).toBeGreaterThan(1);
  });
});

describe('one skill, answer by answer', () => {
  it('ends within 0.1 of the exact posterior mean in mixed orders, within 0.3 at the worst order', () => {
    for (const score of [2, 5, 8, 11, 13]) {
      const answers = withScore(NUMERACY.difficulties, score);
      let [total, first, second] = [0, 0, 0];
      for (let x = -8; x <= 8; x += 0.01) {
        const weight = answers.reduce(
          (p, { difficulty, right }) => p * logistic(right ? x - difficulty : difficulty - x),
          Math.exp((-x * x) / 4),
        );
        total += weight;
        first += weight * x;
        second += weight * x * x;
      }
      const exact = { mean: first / total, deviation: Math.sqrt(second / total - (first / total) ** 2) };
      const mixed = [1, 2, 3, 4, 5, 6].map((seed) => new Rng(seed).shuffle(answers));
      for (const order of [answers, [...answers].reverse(), ...mixed]) {
        const isSorted = order === answers || !mixed.includes(order);
        let [mean, variance] = [0, 2];
        for (const { difficulty, right } of order)
          ({ mean, variance } = momentsAfterAnswer(mean, variance, difficulty, right));
        expect(Math.abs(mean - exact.mean)).toBeLessThan(isSorted ? 0.3 : 0.1);
        expect(Math.abs(Math.sqrt(variance) / exact.deviation - 1)).toBeLessThan(0.17);
      }
    }
  });
});

describe('placeChild', () => {
  it('moves up for right answers above the class year, down for wrong ones below, and stays with none', () => {
    const sitting = (right: boolean, year: number) =>
      Array.from({ length: 12 }, () => ({ year, difficulty: 0, right }));
    expect(placeChild(sitting(true, 5), 3.5).shift).toBeGreaterThan(1);
    expect(placeChild(sitting(false, 2), 3.5).shift).toBeLessThan(-1);
    expect(placeChild([], 3.5)).toEqual({ shift: 0, deviation: 1 });
    expect(placeChild(sitting(true, 4), 3.5).deviation).toBeLessThan(0.9);
  });
});
