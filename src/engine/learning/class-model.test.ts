import { describe, expect, it } from 'vitest';
import { STRANDS } from '../curriculum/strands.js';
import { addDays, dayCount } from '../numbers/calendar.js';
import { Rng } from '../random/rng.js';
import {
  buildClassModel,
  type ChildRecord,
  foldAnswers,
  foldSteps,
  predictClass,
  typicalClass,
} from './class-model.js';
import { explainSkill } from './explain.js';
import { logistic } from './logistic.js';
import { GROWTH_PER_YEAR, type SkillNode, skillSpaceOf } from './prior.js';
import { abilityMean, abilityVariance, startState } from './state.js';
import { usualSchoolYear } from './school-year.js';
import { classSummary, skillSummaries } from './summary.js';
import { advance, afterAnswer, type Answered, chanceOf } from './update.js';

/** A map of its own, so that these tests do not move when skills are added: each strand a line through the years. */
const NODES: readonly SkillNode[] = Array.from({ length: 84 }, (_, i) => {
  const strand = STRANDS[i % STRANDS.length] as (typeof STRANDS)[number];
  const before = i - STRANDS.length;
  return {
    id: `skill.${i}`,
    title: `Skill ${i}`,
    year: Math.floor(i / 12),
    strand: strand.id,
    prerequisites: [...(before >= 0 ? [`skill.${before}`] : []), ...(i % 5 === 4 ? [`skill.${i - 3}`] : [])],
  };
});
const SPACE = skillSpaceOf(NODES);

function answer(skill: number, difficulty: number, right: boolean, on: string, id = `q${skill}`): Answered {
  return { skill: `skill.${skill}`, difficulty, right, on, questionId: id, slips: [] };
}

/** Smallest pivot of a Cholesky decomposition: positive only for positive definite matrices. */
function leastPivot(matrix: Float64Array, n: number): number {
  const l = new Float64Array(n * n);
  let least = Infinity;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j] as number;
      for (let k = 0; k < j; k++) sum -= (l[i * n + k] as number) * (l[j * n + k] as number);
      if (i === j) {
        least = Math.min(least, sum);
        if (sum <= 0) return sum;
        l[i * n + i] = Math.sqrt(sum);
      } else l[i * n + j] = sum / (l[j * n + j] as number);
    }
  }
  return least;
}

describe('prior', () => {
  it('is positive definite, and gives a typical child even odds at the end of the skill year', () => {
    expect(leastPivot(SPACE.covariance, NODES.length)).toBeGreaterThan(0.1);
    expect(abilityMean(startState(SPACE, 0, 3), 40)).toBe(0);
    expect(chanceOf(startState(SPACE, 0, 3), 40, 0)).toBeCloseTo(0.5, 6);
  });

  it('has the growth of the Sustaining Effects study to 0.2 logits a year', () => {
    // Mean Rasch maths scores by grade 0 to 4, data "egsingle" (r-cran-mlmrev 1.0-8).
    const means = [-2.157, -1.041, -0.334, 0.345, 1.249];
    const perYear = ((means[4] as number) - (means[0] as number)) / 4;
    expect(Math.abs(GROWTH_PER_YEAR - perYear)).toBeLessThan(0.2);
  });
});

describe('afterAnswer', () => {
  it('keeps the covariance symmetric and positive definite over hundreds of answers', () => {
    const rng = new Rng(5);
    let state = startState(SPACE, 0, 3.2);
    for (let i = 0; i < 300; i++) {
      state = afterAnswer(state, rng.int(0, NODES.length - 1), rng.unit() * 4 - 2, rng.chance(0.6));
      if (i % 12 === 11) state = advance(state, state.day + 3, state.position + 0.01);
    }
    const n = NODES.length;
    expect(leastPivot(state.covariance, n)).toBeGreaterThan(0);
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < i; j++) expect(state.covariance[i * n + j]).toBe(state.covariance[j * n + i]);
    }
  });

  it('moves the asked skill most, its neighbours more than strangers, and narrows them', () => {
    const before = startState(SPACE, 0, 3.2);
    const after = afterAnswer(before, 40, 0, true);
    const moved = (skill: number) => abilityMean(after, skill) - abilityMean(before, skill);
    expect(moved(40)).toBeGreaterThan(moved(26));
    expect(moved(26)).toBeGreaterThan(moved(1));
    expect(moved(1)).toBeGreaterThan(0);
    expect(abilityVariance(after, 40)).toBeLessThan(abilityVariance(before, 40));
    expect(before.lead.every((lead) => lead === 0)).toBe(true);
  });

  it('changes little with the order of one sitting', () => {
    const rng = new Rng(8);
    const sitting = Array.from(
      { length: 24 },
      () => [rng.int(20, 60), rng.unit() * 2 - 1, rng.chance(0.6)] as const,
    );
    const run = (order: typeof sitting) =>
      order.reduce(
        (state, [skill, difficulty, right]) => afterAnswer(state, skill, difficulty, right),
        startState(SPACE, 0, 3.2),
      );
    const forward = run(sitting);
    for (const other of [run([...sitting].reverse()), run(rng.shuffle(sitting))]) {
      const gaps = NODES.map((_, skill) => Math.abs(chanceOf(forward, skill, 0) - chanceOf(other, skill, 0)));
      expect(Math.max(...gaps)).toBeLessThan(0.03);
    }
  });
});

describe('advance', () => {
  it('lets practised skills fade and leaves the others with their growth', () => {
    const practised = afterAnswer(afterAnswer(startState(SPACE, 0, 3.2), 40, 0, true), 40, 1, true);
    const later = advance(practised, 60, 3.3);
    const fresh = abilityMean(practised, 40);
    expect(abilityMean(later, 40)).toBeLessThan(fresh);
    expect(abilityMean(later, 40)).toBeGreaterThan(fresh - 0.6);
    expect(abilityMean(later, 41)).toBeCloseTo(abilityMean(practised, 41) + 0.1, 9);
    expect(abilityVariance(later, 40) - abilityVariance(practised, 40)).toBeGreaterThan(0.05);
    expect(abilityMean(advance(practised, 600, 3.3), 40)).toBeLessThan(abilityMean(later, 40));
  });

  it('lets practice lift a faded skill again, even by more than the answer alone tells', () => {
    const faded = advance(afterAnswer(startState(SPACE, 0, 3.2), 40, 0, true), 60, 3.2);
    const lifted = afterAnswer(faded, 40, 0, true);
    expect(abilityMean(lifted, 40) - abilityMean(faded, 40)).toBeGreaterThan(
      0.2 + (lifted.lead[40] as number) - (faded.lead[40] as number) - 0.1,
    );
    expect(lifted.memories[40]?.stabilityDays ?? 0).toBeGreaterThan(
      faded.memories[40]?.stabilityDays ?? Infinity,
    );
  });

  it('gives the same in one step as in many', () => {
    const start = afterAnswer(startState(SPACE, 0, 3.2), 40, 0, true);
    let many = start;
    for (let day = 1; day <= 60; day++) many = advance(many, day, 3.2 + day / 600);
    const once = advance(start, 60, 3.3);
    expect(abilityMean(many, 40)).toBeCloseTo(abilityMean(once, 40), 9);
    expect(abilityVariance(many, 40)).toBeCloseTo(abilityVariance(once, 40), 9);
  });
});

describe('explainSkill', () => {
  it('traces every change: start and causes add up to the belief itself', () => {
    const answers = [
      answer(40, 0.2, true, '2026-03-02', 'a'),
      answer(26, -1, false, '2026-03-02', 'b'),
      answer(40, 0.8, false, '2026-04-20', 'c'),
    ];
    const child: ChildRecord = { id: 'x', year: 4, answers };
    const model = buildClassModel({ children: [child], on: '2026-06-01', skills: NODES });
    const explained = explainSkill(child, 'skill.40', '2026-06-01', NODES);
    const total = (explained?.changes ?? []).reduce(
      (sum, change) => sum + change.by,
      explained?.start ?? NaN,
    );
    const state = model.children[0]?.state;
    expect(state && abilityMean(state, 40)).toBeCloseTo(total, 9);
    expect(
      explained?.changes.filter((change) => change.questionId).map((change) => change.questionId),
    ).toEqual(['a', 'b', 'c']);
    expect(explained?.changes.find((change) => change.questionId === 'b')?.by).toBeLessThan(0);
  });
});

describe('buildClassModel', () => {
  it('leaves out unknown skills, impossible dates and answers of later days', () => {
    const known = answer(40, 0, true, '2026-03-02');
    const clean = buildClassModel({
      children: [{ id: 'x', year: 4, answers: [known] }],
      on: '2026-03-09',
      skills: NODES,
    });
    const messy = buildClassModel({
      children: [
        {
          id: 'x',
          year: 4,
          answers: [
            { ...known, skill: 'gone' },
            { ...known, on: '2026-02-30' },
            { ...known, on: '2026-03-10' },
            known,
          ],
        },
      ],
      on: '2026-03-09',
      skills: NODES,
    });
    expect(messy.children[0]?.state.lead).toEqual(clean.children[0]?.state.lead);
  });

  it('does not depend on the order in which the answers of a day are handed over', () => {
    const answers = Array.from({ length: 12 }, (_, i) => answer(30 + i, 0, i < 6, '2026-03-02'));
    const build = (list: readonly Answered[]) =>
      buildClassModel({ children: [{ id: 'x', year: 4, answers: list }], on: '2026-03-09', skills: NODES })
        .children[0]?.state.lead;
    expect(build([...answers].reverse())).toEqual(build(answers));
  });

  it('gives what advancing and answering one by one gives', () => {
    const answers = Array.from({ length: 30 }, (_, i) =>
      answer((i * 7) % 84, 0.3, i % 3 > 0, addDays('2026-03-02', 3 * (i >> 2)), `q${i}`),
    );
    const child: ChildRecord = { id: 'x', year: 4, answers };
    const schoolYear = usualSchoolYear('2026-06-01');
    const last = [...foldSteps(SPACE, child, dayCount('2026-06-01'), schoolYear)].at(-1)?.after;
    const folded = foldAnswers(SPACE, child, dayCount('2026-06-01'), schoolYear);
    if (!last) throw new Error('a fold has a last step');
    NODES.forEach((_, skill) => {
      expect(abilityMean(folded, skill)).toBeCloseTo(abilityMean(last, skill), 10);
      expect(abilityVariance(folded, skill)).toBeCloseTo(abilityVariance(last, skill), 10);
    });
    expect(folded.memories).toEqual(last.memories);
    expect(folded.answered).toEqual(last.answered);
  });

  it('starts from a placement', () => {
    const child = { id: 'x', year: 4, answers: [], placement: { shift: 1, deviation: 0.3 } };
    const model = buildClassModel({
      children: [child, { id: 'y', year: 4, answers: [] }],
      on: '2026-03-09',
      skills: NODES,
    });
    const [placed, unknown] = predictClass(model, 'skill.40', 0).perChild;
    expect(placed as number).toBeGreaterThan((unknown as number) + 0.15);
  });
});

describe('skillSummaries', () => {
  it('is "not yet sure" before evidence, and takes sides after it', () => {
    const evidence = (right: boolean) =>
      Array.from({ length: 10 }, (_, i) => answer(40, -0.8, right, addDays('2026-03-02', i), `q${i}`));
    const model = buildClassModel({
      children: [
        { id: 'new', year: 4, answers: [] },
        { id: 'strong', year: 4, answers: evidence(true) },
        { id: 'stuck', year: 4, answers: evidence(false) },
      ],
      on: '2026-03-12',
      skills: NODES,
    });
    const standing = (id: string) => skillSummaries(model, id)[40]?.standing;
    expect(standing('new')).toBe('not yet sure');
    expect(standing('strong')).toBe('secure');
    expect(standing('stuck')).toBe('needs teaching');
    for (const { low, chance, high } of skillSummaries(model, 'stuck')) {
      expect(low).toBeLessThanOrEqual(chance);
      expect(high).toBeGreaterThanOrEqual(chance);
    }
    expect(skillSummaries(model, 'nobody')).toEqual([]);
  });
});

describe('classSummary', () => {
  it('counts every child once per skill and lists those who need teaching, surest first', () => {
    const fails = (count: number) =>
      Array.from({ length: count }, (_, i) => answer(40, -0.8, false, addDays('2026-03-02', i), `q${i}`));
    const children = [
      { id: 'new', year: 4, answers: [] },
      { id: 'some', year: 4, answers: fails(8) },
      { id: 'many', year: 4, answers: fails(12) },
    ];
    const model = buildClassModel({ children, on: '2026-03-14', skills: NODES });
    const summaries = classSummary(model);
    for (const { counts } of summaries)
      expect(Object.values(counts).reduce((sum, count) => sum + count, 0)).toBe(3);
    expect(summaries[40]?.needTeaching).toEqual(['many', 'some']);
    expect(summaries[40]?.chance).toBeCloseTo(predictClass(model, 'skill.40', -1).mean, 12);
  });
});

describe('typicalClass', () => {
  it('has the asked size, all years, a wide spread, and depends on the seed alone', () => {
    const model = typicalClass([4, 5], 27, 3, NODES);
    expect(model.children).toHaveLength(27);
    expect(new Set(model.children.map((child) => child.year))).toEqual(new Set([4, 5]));
    const { perChild, mean } = predictClass(model, 'skill.50', 0);
    expect(Math.max(...perChild) - Math.min(...perChild)).toBeGreaterThan(0.5);
    expect(mean).toBeCloseTo(perChild.reduce((sum, one) => sum + one, 0) / 27, 12);
    expect(predictClass(typicalClass([4, 5], 27, 3, NODES), 'skill.50', 0)).toEqual({ perChild, mean });
  });
});

/**
 * A class that does not follow the model: abilities with heavy tails, some children who lag in one strand, learning in
 * one step per skill instead of steady growth, a lucky-guess rate, slopes that differ between questions, exponential
 * forgetting. Twelve answers a week for 20 weeks.
 */
function simulateClass(
  seed: number,
  year: number,
): readonly { readonly week: number; readonly answer: Answered }[][] {
  const rng = new Rng(seed);
  const normal = () => Array.from({ length: 12 }, () => rng.unit()).reduce((sum, u) => sum + u, -6);
  return Array.from({ length: 27 }, () => {
    const general = normal() * (rng.chance(0.15) ? 1.7 : 0.85);
    const weak = rng.chance(0.3) ? rng.pick(STRANDS).id : null;
    const own = NODES.map(() => 0.6 * normal());
    const lastMet = NODES.map(() => -1);
    const answers: { week: number; answer: Answered }[] = [];
    for (let week = 0; week < 20; week++) {
      for (let i = 0; i < 12; i++) {
        const skill = rng.int(Math.max(0, (year - 3) * 12), Math.min(NODES.length, (year + 2) * 12) - 1);
        const node = NODES[skill] as SkillNode;
        const difficulty = rng.unit() * 2.4 - 1.6;
        const learnt = week > 6 + (skill % 9) ? 0.4 : -0.05;
        const away = lastMet[skill] === -1 ? 0 : week - (lastMet[skill] as number);
        const lag = (weak === node.strand ? 1 : 0) + 0.3 * (1 - Math.exp(-away / 6));
        const ability = 0.9 * (year - 0.75 - node.year) + general + (own[skill] as number) + learnt - lag;
        const right = rng.chance(0.02 + 0.97 * logistic((0.8 + 0.4 * rng.unit()) * (ability - difficulty)));
        lastMet[skill] = week;
        answers.push({ week, answer: answer(skill, difficulty, right, weekDay(week), `${week}.${i}`) });
      }
    }
    return answers;
  });
}

function weekDay(week: number): string {
  return addDays('2026-02-06', 7 * week);
}

describe('calibration', () => {
  it('has an expected calibration error of at most 0.03 on answers it has not seen, for classes unlike its assumptions', () => {
    const bins = Array.from({ length: 10 }, () => ({ count: 0, predicted: 0, right: 0 }));
    let [squared, squaredOfYear, count] = [0, 0, 0];
    for (const [seed, year] of [1, 2, 3, 4, 5, 6].map((seed) => [seed, 2 + (seed % 4)] as const)) {
      // Week after week: predict the whole slip first, then learn from it. The first four weeks are not judged.
      for (const answers of simulateClass(seed, year)) {
        let state = startState(SPACE, 0, year - 1);
        const knowsYear = state;
        for (let week = 0; week < 20; week++) {
          state = advance(state, 7 * week, year - 1 + week / 46);
          const slip = answers.filter((one) => one.week === week).map((one) => one.answer);
          for (const given of week < 4 ? [] : slip) {
            const skill = SPACE.indexOf.get(given.skill) as number;
            const chance = chanceOf(state, skill, given.difficulty);
            const plain = chanceOf({ ...knowsYear, position: state.position }, skill, given.difficulty);
            const bin = bins[Math.min(9, Math.floor(chance * 10))] as (typeof bins)[number];
            bin.count++;
            bin.predicted += chance;
            bin.right += given.right ? 1 : 0;
            squared += (chance - (given.right ? 1 : 0)) ** 2;
            squaredOfYear += (plain - (given.right ? 1 : 0)) ** 2;
            count++;
          }
          for (const given of slip) {
            state = afterAnswer(
              state,
              SPACE.indexOf.get(given.skill) as number,
              given.difficulty,
              given.right,
            );
          }
        }
      }
    }
    const error = bins.reduce((sum, bin) => sum + Math.abs(bin.predicted - bin.right), 0) / count;
    expect(error).toBeLessThan(0.03);
    // The answers must have taught it something: clearly better than knowing the class year alone.
    expect(squared).toBeLessThan(0.9 * squaredOfYear);
  });
});
