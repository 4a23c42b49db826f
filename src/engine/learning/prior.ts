// What is believed about a child before any answer: a mean from the class year and one covariance from the skill graph.
import type { Skill } from '../skills/skill.js';

/** The parts of a skill that the learner model needs, so that any list of skills will do. */
export type SkillNode = Pick<Skill, 'id' | 'title' | 'year' | 'strand' | 'prerequisites'>;

/**
 * Logits that a typical pupil gains in one school year. In the US Sustaining Effects study (1721 pupils, five yearly
 * tests, data "egsingle") the mean rose by 0.85 logits a grade; rounded to 1 so that years and logits share a scale.
 */
export const GROWTH_PER_YEAR = 1;

/**
 * Variances of ability about the mean of the child's year, in squared logits. `general` from the same study (within-grade
 * standard deviations 0.97 to 1.18); how the rest is shared between strand, neighbouring skills and single skill is
 * common practice.
 */
export const VARIANCES = { general: 1, strand: 0.15, neighbours: 0.35, own: 0.2 } as const;

/** How strongly a prerequisite ties two skills together in the graph kernel; 0 would make every skill an island. */
const GRAPH_COUPLING = 1;

/** A list of skills made ready for the model. Made once per list by {@link skillSpaceOf}. */
export interface SkillSpace {
  readonly skills: readonly SkillNode[];
  readonly indexOf: ReadonlyMap<string, number>;
  /** Prior covariance, row by row (n x n), of ability about the mean of the child's year. */
  readonly covariance: Float64Array;
}

const SPACES = new WeakMap<readonly SkillNode[], SkillSpace>();

/** The skill space of a list; the same list gives the same object. Prerequisites outside the list are ignored. */
export function skillSpaceOf(skills: readonly SkillNode[]): SkillSpace {
  const known = SPACES.get(skills);
  if (known) return known;
  const indexOf = new Map(skills.map((skill, index) => [skill.id, index]));
  const space = { skills, indexOf, covariance: priorCovariance(skills, indexOf) };
  SPACES.set(skills, space);
  return space;
}

/**
 * Mean ability at a skill, relative to the skill's year: 0 for a typical pupil at the end of that year. `position` is
 * the child's place in schooling: class year - 1 + share of the school year done (so 4 is the end of Year 4).
 */
export function priorMean(skillYear: number, position: number): number {
  return GROWTH_PER_YEAR * (position - skillYear);
}

function priorCovariance(skills: readonly SkillNode[], indexOf: ReadonlyMap<string, number>): Float64Array {
  const n = skills.length;
  const kernel = graphKernel(skills, indexOf);
  const out = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const sameStrand = skills[i]?.strand === skills[j]?.strand;
      out[i * n + j] =
        VARIANCES.general +
        (sameStrand ? VARIANCES.strand : 0) +
        VARIANCES.neighbours * (kernel[i * n + j] as number) +
        (i === j ? VARIANCES.own : 0);
    }
  }
  return out;
}

/**
 * Regularised-Laplacian kernel (I + coupling * L)^-1 of the prerequisite graph, scaled to a unit diagonal: positive
 * definite for any graph (Smola & Kondor 2003, "Kernels and regularization on graphs"; from memory).
 */
function graphKernel(skills: readonly SkillNode[], indexOf: ReadonlyMap<string, number>): Float64Array {
  const n = skills.length;
  const matrix = new Float64Array(n * n);
  for (let i = 0; i < n; i++) matrix[i * n + i] = 1;
  const tie = (row: number, column: number, by: number) => {
    matrix[row * n + column] = (matrix[row * n + column] as number) + by;
  };
  skills.forEach((skill, i) => {
    for (const id of new Set(skill.prerequisites)) {
      const j = indexOf.get(id);
      if (j === undefined || j === i) continue;
      tie(i, i, GRAPH_COUPLING);
      tie(j, j, GRAPH_COUPLING);
      tie(i, j, -GRAPH_COUPLING);
      tie(j, i, -GRAPH_COUPLING);
    }
  });
  const inverse = invertPositiveDefinite(matrix, n);
  const scale = Float64Array.from({ length: n }, (_, i) => 1 / Math.sqrt(inverse[i * n + i] as number));
  // The two scales are multiplied first, so that both halves round alike and the kernel is exactly symmetric.
  return inverse.map(
    (value, at) => value * ((scale[Math.floor(at / n)] as number) * (scale[at % n] as number)),
  );
}

/** Inverse of a symmetric positive definite matrix by Gauss-Jordan sweeps, which need no pivoting there. */
function invertPositiveDefinite(matrix: Float64Array, n: number): Float64Array {
  const a = Float64Array.from(matrix);
  for (let k = 0; k < n; k++) {
    const pivot = a[k * n + k] as number;
    a[k * n + k] = 1;
    for (let j = 0; j < n; j++) a[k * n + j] = (a[k * n + j] as number) / pivot;
    for (let i = 0; i < n; i++) {
      const factor = a[i * n + k] as number;
      if (i === k || factor === 0) continue;
      a[i * n + k] = 0;
      for (let j = 0; j < n; j++) a[i * n + j] = (a[i * n + j] as number) - factor * (a[k * n + j] as number);
    }
  }
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) {
      const mean = ((a[i * n + j] as number) + (a[j * n + i] as number)) / 2;
      a[i * n + j] = mean;
      a[j * n + i] = mean;
    }
  }
  return a;
}
