// The response curve and its averages over a Gaussian ability.

/** Probability of success at ability minus difficulty = `gap` logits (Rasch 1960). */
export function logistic(gap: number): number {
  return gap >= 0 ? 1 / (1 + Math.exp(-gap)) : Math.exp(gap) / (1 + Math.exp(gap));
}

/** logistic(x) is within 0.00005 of the sum of weight * Phi(scale * x) over these; fitted here by least maximum error,
 * the form is that of Monahan & Stefanski 1992 (from memory). */
const PROBIT_MIXTURE = [
  { weight: 0.16235313, scale: 0.36398242 },
  { weight: 0.58483937, scale: 0.57755709 },
  { weight: 0.2528075, scale: 0.90749889 },
] as const;

/**
 * Probability of success averaged over a Gaussian gap with the given mean and variance: the average of each Phi in the
 * mixture is again a Phi, so no sum over abilities is needed. Within 0.0001 of numeric integration.
 */
export function averagedLogistic(mean: number, variance: number): number {
  let sum = 0;
  for (const { weight, scale } of PROBIT_MIXTURE) {
    sum += weight * normalBelow((scale * mean) / Math.sqrt(1 + scale * scale * variance));
  }
  return sum;
}

/** Share of a standard normal below x; Abramowitz & Stegun 26.2.17, error below 7.5e-8. */
export function normalBelow(x: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const tail =
    0.3989422804014327 *
    Math.exp((-x * x) / 2) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return x >= 0 ? 1 - tail : tail;
}

export interface Moments {
  /** Probability of what was seen, before it was seen. */
  readonly probability: number;
  readonly mean: number;
  readonly variance: number;
}

/** Steps of the sum over abilities: from -6 to 6 standard deviations in quarters of one. */
const STEPS = 48;

/**
 * Mean and variance of ability after one answer, for a Gaussian before it: the exact moments of logistic x Gaussian by
 * the trapezium rule over 6 standard deviations each way (errors below 1e-6 for variances up to 4).
 */
export function momentsAfterAnswer(
  mean: number,
  variance: number,
  difficulty: number,
  right: boolean,
): Moments {
  const deviation = Math.sqrt(variance);
  let total = 0;
  let first = 0;
  let second = 0;
  let plain = 0;
  for (let i = 0; i <= STEPS; i++) {
    const z = (i * 12) / STEPS - 6;
    const density = Math.exp((-z * z) / 2);
    const gap = mean + z * deviation - difficulty;
    const weight = density * logistic(right ? gap : -gap);
    plain += density;
    total += weight;
    first += weight * z;
    second += weight * z * z;
  }
  const shift = first / total;
  return {
    probability: total / plain,
    mean: mean + shift * deviation,
    variance: variance * (second / total - shift * shift),
  };
}
