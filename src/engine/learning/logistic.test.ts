import { describe, expect, it } from 'vitest';
import { averagedLogistic, logistic, momentsAfterAnswer, normalBelow } from './logistic.js';

/** Gaussian x f integrated by Simpson's rule over 9 standard deviations in fine steps: the independent judge here. */
function integrate(mean: number, variance: number, f: (x: number) => number): number {
  const deviation = Math.sqrt(variance);
  const steps = 4000;
  const h = 18 / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const z = -9 + i * h;
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * Math.exp((-z * z) / 2) * f(mean + z * deviation);
  }
  return (sum * h) / 3 / Math.sqrt(2 * Math.PI);
}

describe('averagedLogistic', () => {
  it('agrees with numeric integration to 0.0001 over the range that occurs', () => {
    let worst = 0;
    for (let mean = -8; mean <= 8; mean += 0.5) {
      for (const variance of [0.01, 0.1, 0.5, 1, 1.7, 3, 4]) {
        worst = Math.max(
          worst,
          Math.abs(averagedLogistic(mean, variance) - integrate(mean, variance, logistic)),
        );
      }
    }
    expect(worst).toBeLessThan(1e-4);
  });
});

describe('momentsAfterAnswer', () => {
  it.each([true, false])('agrees with numeric integration (right: %s)', (right) => {
    for (const mean of [-4, -1, 0, 2, 5]) {
      for (const variance of [0.05, 0.6, 1.7, 4]) {
        const likelihood = (x: number) => logistic(right ? x - 0.7 : 0.7 - x);
        const total = integrate(mean, variance, likelihood);
        const first = integrate(mean, variance, (x) => x * likelihood(x)) / total;
        const second = integrate(mean, variance, (x) => (x - first) ** 2 * likelihood(x)) / total;
        const moments = momentsAfterAnswer(mean, variance, 0.7, right);
        expect(moments.probability).toBeCloseTo(total, 6);
        expect(moments.mean).toBeCloseTo(first, 5);
        expect(moments.variance).toBeCloseTo(second, 5);
      }
    }
  });
});

describe('normalBelow', () => {
  it('gives tabled values of the standard normal', () => {
    // Any printed table: 0.8413 at 1, 0.9750 at 1.96, 0.0228 at -2.
    expect(normalBelow(1)).toBeCloseTo(0.84134475, 6);
    expect(normalBelow(1.96)).toBeCloseTo(0.9750021, 6);
    expect(normalBelow(-2)).toBeCloseTo(0.02275013, 6);
  });
});
