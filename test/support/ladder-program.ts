// Composing tasks for an outside judge: the same task as a mixed-integer program, for an exact solver.
import { type Candidate, gatherCandidates } from '#engine/activities/board/candidates.js';
import {
  ANSWER_KINDS_WANTED,
  dueWeight,
  type LadderTask,
  rungCost,
  STRANDS_WANTED,
  STRICT_RULES,
  WEIGHTS,
} from '#engine/activities/board/objective.js';
import { targetCurve } from '#engine/activities/board/target-curve.js';
import { typicalClass } from '#engine/learning/class-model.js';
import { parseDayNumber } from '#engine/numbers/day-number.js';
import { localeOf } from '#engine/numbers/locale.js';
import { Rng } from '#engine/random/rng.js';
import { SKILLS } from '#engine/skills/map.js';

function x(candidate: number, rung: number): string {
  return `x_${candidate}_${rung}`;
}

function term(factor: number, name: string): string {
  return `${factor < 0 ? '-' : '+'} ${Math.abs(factor).toFixed(9)} ${name}`;
}

/** The composing task as a mixed-integer program in LP format: x_c_r is 1 when candidate c stands on rung r. */
export function programOf(task: LadderTask): string {
  const { candidates, targets, rules } = task;
  const rungs = targets.map((_, r) => r);
  const groups = (key: (candidate: Candidate) => string) => {
    const map = new Map<string, number[]>();
    candidates.forEach((candidate, c) => map.set(key(candidate), [...(map.get(key(candidate)) ?? []), c]));
    return [...map.values()];
  };
  const sumOf = (members: readonly number[], sign = '+') =>
    members.flatMap((c) => rungs.map((r) => `${sign} ${x(c, r)}`)).join(' ');
  const at = (r: number, value: (candidate: Candidate) => number, sign: 1 | -1) =>
    candidates.map((candidate, c) => term(sign * value(candidate), x(c, r))).join(' ');
  const objective: string[] = [];
  const rows: string[] = [];
  const helpers: string[] = [];
  candidates.forEach((candidate, c) => {
    const due = task.due.indexOf(candidate.question.skill);
    for (const r of rungs) {
      objective.push(
        term(rungCost(candidate, targets[r] as number) - (due >= 0 ? dueWeight(due) : 0), x(c, r)),
      );
    }
  });
  for (const r of rungs) {
    rows.push(`${candidates.map((_, c) => `+ ${x(c, r)}`).join(' ')} = 1`);
    if (r === 0) continue;
    rows.push(
      `${at(r - 1, (candidate) => candidate.predicted, 1)} ${at(r, (candidate) => candidate.predicted, -1)} >= 0`,
    );
    rows.push(
      `${at(r, (candidate) => candidate.common, 1)} ${at(r - 1, (candidate) => candidate.common, -1)} >= 0`,
    );
    for (const same of [...groups((one) => one.answerText), ...groups((one) => one.answerValue)]) {
      if (same.length > 1) rows.push(`${same.map((c) => `+ ${x(c, r - 1)} + ${x(c, r)}`).join(' ')} <= 1`);
    }
  }
  for (const same of groups((candidate) => candidate.question.skill))
    rows.push(`${sumOf(same)} <= ${rules.mostPerSkill}`);
  const wanted = (name: string, members: readonly number[][], enough: number, weight: number) => {
    members.forEach((same, i) => {
      helpers.push(`0 <= ${name}${i} <= 1`);
      rows.push(`${name}${i} ${sumOf(same, '-')} <= 0`);
    });
    const seen = members.map((_, i) => `+ ${name}${i}`).join(' ');
    rows.push(`short${name} ${seen} >= ${enough}`);
    objective.push(term(weight, `short${name}`));
    return seen;
  };
  const strands = groups((candidate) => candidate.question.strand);
  rows.push(`${wanted('s', strands, STRANDS_WANTED, WEIGHTS.strand)} >= ${rules.leastStrands}`);
  for (const same of strands) rows.push(`${sumOf(same)} <= ${rules.mostPerStrand}`);
  wanted(
    'k',
    groups((candidate) => candidate.question.answer.kind),
    ANSWER_KINDS_WANTED,
    WEIGHTS.answerKind,
  );
  const drawn = candidates.flatMap((candidate, c) => (candidate.question.figure ? [c] : []));
  if (drawn.length > 0) wanted('f', [drawn], 1, WEIGHTS.figure);
  groups((candidate) => candidate.family).forEach((same, i) => {
    rows.push(`${sumOf(same)} - e${i} <= 1`);
    objective.push(term(WEIGHTS.family, `e${i}`));
  });
  const openings = groups((candidate) => candidate.opening).filter(
    (same) => same.length > 1 && candidates[same[0] as number]?.opening !== '',
  );
  openings.forEach((same, i) => {
    for (const r of rungs.slice(1)) {
      rows.push(`${same.map((c) => `+ ${x(c, r - 1)} + ${x(c, r)}`).join(' ')} - o${i}_${r} <= 1`);
      objective.push(term(WEIGHTS.opening, `o${i}_${r}`));
    }
  });
  const binaries = candidates.flatMap((_, c) => rungs.map((r) => x(c, r)));
  const body = rows.map((row, i) => ` r${i}: ${row}`).join('\n');
  return `Minimize\n obj: ${objective.join('\n ')}\nSubject To\n${body}\nBounds\n ${helpers.join('\n ')}\nBinary\n ${binaries.join('\n ')}\nEnd\n`;
}

/** Whole-ladder penalties that no choice of x can change: due skills not placed count in full until placed. */
export function constantOf(task: LadderTask): number {
  const hasDrawn = task.candidates.some((candidate) => candidate.question.figure);
  return task.due.reduce((sum, _, place) => sum + dueWeight(place), 0) + (hasDrawn ? 0 : WEIGHTS.figure);
}

/** A task small enough for the exact solver: the candidates nearest to each rung's target, the same for both. */
export function sampledTask(seed: number): LadderTask {
  const rng = new Rng(seed);
  const years = rng.pick([[3, 4], [4, 5], [2, 3], [5]]);
  const locale = localeOf('en-AU');
  const parsed = parseDayNumber(rng.pick(['24', '36', '47', '64', '96', '$4.85']), locale);
  if (!parsed.ok) throw new Error('a number of this test cannot be read');
  const classModel = typicalClass(years, 27, seed, SKILLS);
  const due = rng
    .shuffle(SKILLS.filter((skill) => skill.year < Math.max(...years)))
    .slice(0, 6)
    .map((skill) => skill.id);
  const all = gatherCandidates(
    {
      number: parsed.value,
      years,
      locale,
      skills: SKILLS,
      classModel,
      due: new Set(due),
      avoid: new Set(),
      free: new Set(),
    },
    rng,
  );
  const targets = targetCurve(rng.pick(['front', 'back'] as const), 12);
  const kept = new Set<Candidate>();
  for (const target of targets) {
    [...all]
      .sort((a, b) => rungCost(a, target) - rungCost(b, target))
      .slice(0, 8)
      .forEach((candidate) => kept.add(candidate));
  }
  const candidates = all.filter((candidate) => kept.has(candidate) || (candidate.isDue && kept.size < 80));
  const offered = new Set(candidates.map((candidate) => candidate.question.skill));
  return {
    candidates,
    targets,
    locked: targets.map(() => -1),
    due: due.filter((id) => offered.has(id)).slice(0, 4),
    rules: STRICT_RULES,
  };
}
