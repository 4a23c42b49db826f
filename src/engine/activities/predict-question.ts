// How many of a class will manage a question, whether it comes from the skill map or from a teacher's own list.
import { type ClassModel, predictClass } from '../learning/class-model.js';
import type { Question } from '../questions/question.js';

/** Of questions outside the map: the skills that tell most about them, per model, strand and year. */
const AKIN = new WeakMap<ClassModel, Map<string, readonly string[]>>();

/**
 * Predicted share of the class that succeeds, 0 to 1, when the question is made harder by `shift` logits. A question of no
 * skill of the map, such as a teacher's own, is taken for one of the same strand and year: the mean over those skills.
 */
export function predictQuestion(model: ClassModel, question: Question, shift = 0): number {
  const difficulty = question.difficulty + shift;
  if (model.space.indexOf.has(question.skill)) return predictClass(model, question.skill, difficulty).mean;
  const skills = akinTo(model, question);
  const sum = skills.reduce((total, skill) => total + predictClass(model, skill, difficulty).mean, 0);
  return sum / Math.max(1, skills.length);
}

function akinTo(model: ClassModel, { strand, year }: Question): readonly string[] {
  const known = AKIN.get(model) ?? new Map<string, readonly string[]>();
  AKIN.set(model, known);
  const key = `${strand} ${year}`;
  let found = known.get(key);
  if (!found) {
    const { skills } = model.space;
    const near = Math.min(...skills.map((skill) => Math.abs(skill.year - year)));
    const ofYear = skills.filter((skill) => Math.abs(skill.year - year) === near);
    const ofStrand = ofYear.filter((skill) => skill.strand === strand);
    known.set(key, (found = (ofStrand.length > 0 ? ofStrand : ofYear).map(({ id }) => id)));
  }
  return found;
}
