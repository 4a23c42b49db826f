// The placement check: one sitting's answers -> how far a child stands above or below a typical child of the class year.
import { logistic } from './logistic.js';
import { priorMean, VARIANCES } from './prior.js';
import type { Placement } from './state.js';

/** One answer to an item whose difficulty is on the same scale as the ability sought, in logits. */
export interface ScaledAnswer {
  readonly difficulty: number;
  readonly right: boolean;
}

export interface AbilityEstimate {
  /** The most probable ability, in logits. */
  readonly ability: number;
  /** Standard deviation from the curvature there, in logits. */
  readonly deviation: number;
}

/**
 * The most probable ability given answers and a Gaussian prior (Rasch model, Newton steps on the log posterior). With
 * an infinite prior variance it is the maximum-likelihood ability; null when that is infinite (all right or all wrong).
 */
export function estimateAbility(
  answers: readonly ScaledAnswer[],
  prior: { readonly mean: number; readonly variance: number },
): AbilityEstimate | null {
  const rights = answers.filter((answer) => answer.right).length;
  const pull = 1 / prior.variance;
  if (pull === 0 && (rights === 0 || rights === answers.length)) return null;
  let ability = Number.isFinite(prior.mean) ? prior.mean : 0;
  let curvature = pull;
  for (let i = 0; i < 100; i++) {
    let slope = pull === 0 ? 0 : (prior.mean - ability) * pull;
    curvature = pull;
    for (const { difficulty, right } of answers) {
      const chance = logistic(ability - difficulty);
      slope += (right ? 1 : 0) - chance;
      curvature += chance * (1 - chance);
    }
    const step = Math.max(-1, Math.min(1, slope / Math.max(curvature, 1e-9)));
    ability += step;
    if (Math.abs(step) < 1e-9) break;
  }
  return { ability, deviation: 1 / Math.sqrt(curvature) };
}

/** One answer of a placement check. */
export interface PlacementAnswer {
  /** Year of the question's skill. */
  readonly year: number;
  /** Logits relative to that year. */
  readonly difficulty: number;
  readonly right: boolean;
}

/**
 * Where a child starts, from one sitting of questions over many skills. `position` is class year - 1 + share of the
 * year done. The variances of strand and single skill are averaged out of each answer, so one lucky answer says little.
 */
export function placeChild(answers: readonly PlacementAnswer[], position: number): Placement {
  const apart = VARIANCES.strand + VARIANCES.neighbours + VARIANCES.own;
  // Averaging a logistic over a Gaussian of this variance flattens it by about this factor (MacKay 1992, from memory).
  const flatten = 1 / Math.sqrt(1 + (Math.PI * apart) / 8);
  const scaled = answers.map(({ year, difficulty, right }) => ({
    difficulty: (difficulty - priorMean(year, position)) * flatten,
    right,
  }));
  const prior = { mean: 0, variance: VARIANCES.general * flatten * flatten };
  const estimate = estimateAbility(scaled, prior);
  return estimate
    ? { shift: estimate.ability / flatten, deviation: estimate.deviation / flatten }
    : { shift: 0, deviation: Math.sqrt(VARIANCES.general) };
}
