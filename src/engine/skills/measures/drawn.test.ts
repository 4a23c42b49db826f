// Figures and numbers of measures: what is drawn may not tell the answer, nor belie the numbers beside it.
import { describe, expect, it } from 'vitest';
import { parseDayNumber } from '../../numbers/day-number.js';
import { localeOf } from '../../numbers/locale.js';
import { generateQuestions, questionsAbout } from '../../questions/generate.js';
import type { Question } from '../../questions/question.js';
import { Rng } from '../../random/rng.js';
import { skillById } from '../map.js';
import type { Skill } from '../skill.js';

const LOCALE = localeOf('en-AU');

function skillOf(id: string): Skill {
  const skill = skillById(id);
  if (skill === null) throw new Error(`no skill ${id}`);
  return skill;
}

function about(id: string, input: string): readonly Question[] {
  const day = parseDayNumber(input, LOCALE);
  if (!day.ok) throw new Error(input);
  return questionsAbout(skillOf(id), day.value, new Rng(3), LOCALE, 12);
}

const questionsOf = (id: string, count: number) => generateQuestions(skillOf(id), count, 3, LOCALE);

const offered = (text: string) => [...text.matchAll(/\d+(?:\.\d+)?/g)].map(Number);

describe('measures as drawn', () => {
  it('are read between the labels of a scale, about the number of the day too', () => {
    const scales = [
      ...questionsOf('meas.scale', 200),
      ...about('meas.scale', '30'),
      ...about('meas.scale', '36'),
    ];
    const figures = scales.flatMap(({ figure }) => (figure?.kind === 'scale' ? [figure] : []));
    expect(figures.length).toBeGreaterThan(200);
    expect(figures.filter(({ value = 0, labelEvery }) => value % labelEvery === 0)).toEqual([]);
    expect(about('meas.scale', '400')).toEqual([]);
  });

  it('have the longer side of a triangle where it is drawn longer', () => {
    const all = [...questionsOf('meas.area.triangle', 100), ...about('meas.area.triangle', '7')];
    const triangles = all.filter(({ figure }) => figure !== null);
    expect(triangles.length).toBeGreaterThan(30);
    for (const { text } of triangles) {
      const [base = 0, height = 0] = offered(text);
      expect(base, text).toBeGreaterThan(height);
    }
  });

  it('have a box beside them only where the edges make one like it', () => {
    const boxes = [...questionsOf('meas.volume', 200), ...about('meas.volume', '0.7')].filter(({ text }) =>
      text.includes('What is its volume'),
    );
    const [drawn, bare] = [boxes.filter(({ figure }) => figure), boxes.filter(({ figure }) => !figure)];
    const isBoxlike = ({ text }: Question) => {
      const edges = offered(text).slice(0, 3);
      return Math.min(...edges) >= 1 && Math.max(...edges) <= 4 * Math.min(...edges);
    };
    expect(drawn.length).toBeGreaterThan(20);
    expect(bare.length).toBeGreaterThan(5);
    expect(drawn.every(isBoxlike)).toBe(true);
    expect(bare.some(isBoxlike)).toBe(false);
  });

  it('are of a length that the things may well have', () => {
    const strips = about('meas.tape', '99.9');
    expect(strips.length).toBeGreaterThan(0);
    const tiny = strips.filter(({ answer }) => Number(answer.text.split('\u00a0')[0]) < 3);
    expect(tiny.map(({ text }) => text)).toEqual([]);
    const pairs = [...questionsOf('meas.blocks', 100), ...about('meas.blocks', '55')];
    const odd = pairs.filter(({ text }) => {
      const [long = 0, short = 0] = offered(text);
      return 2 * short < long;
    });
    expect(pairs.length).toBeGreaterThan(100);
    expect(odd.map(({ text }) => text)).toEqual([]);
  });
});
