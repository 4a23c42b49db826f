// How many ways a skill is asked: a bare question and a story, more and less, the unknown here or there.
import { describe, expect, it } from 'vitest';
import { LOCALES, localeOf } from '../numbers/locale.js';
import { parseDayNumber } from '../numbers/day-number.js';
import { generateQuestions } from '../questions/generate.js';
import type { Question } from '../questions/question.js';
import { Rng } from '../random/rng.js';
import { SKILLS } from './map.js';

const QUESTIONS = new Map(
  SKILLS.map((skill) => [skill.id, generateQuestions(skill, 80, 5, localeOf('en-AU'))]),
);

/** A question without its numbers. */
const formOf = ({ text }: Question) => text.replace(/\d[\d\u00a0.,/]*/g, '#');

/** Skills that are asked in one way, and why. Common practice. */
const ONE_FORM: Readonly<Record<string, string>> = {
  'place.halfway': 'the picture is the question',
  'place.digit-sum': 'there is one way to say it',
  'div.estimate': 'the kind of rounding has to be said each time',
  'div.one-self': 'a fact to know, without a story that makes sense of dividing by one',
  'money.coins.like': 'counting in the step of one coin has one way to say it',
  'money.calculator': 'there is one way to say it',
  'time.next-hour': 'the picture is the question',
  'meas.area.squares': 'the picture is the question',
  'meas.area.from-perimeter': 'two steps that have to be told in full',
  'meas.area.split': 'the picture is the question',
  'shape.name': 'the picture is the question',
  'shape.turn.degrees': 'there is one way to say it',
  'shape.angle.estimate': 'the picture is the question',
  'alg.skip': 'the picture is the question',
  'alg.procedure': 'the rule has to be told in full',
  'alg.procedure.multiples': 'the rule has to be told in full',
};

describe('the forms of questions', () => {
  it('are two or more, except where the trade has one', () => {
    const single = SKILLS.filter(({ id }) => new Set(QUESTIONS.get(id)?.map(formOf)).size === 1);
    expect(single.map(({ id }) => id).sort()).toEqual(Object.keys(ONE_FORM).sort());
  });

  it('tell the sum of a story by the numbers in it, and in whole sentences', () => {
    const stories = SKILLS.filter(({ templates }) => templates.some(({ id }) => id.endsWith('.story')));
    expect(stories.length).toBeGreaterThan(15);
    for (const locale of LOCALES)
      for (const { id, templates } of stories) {
        const told = templates.filter((template) => template.id.endsWith('.story'));
        const rng = new Rng(7).fork(id);
        for (let i = 0; i < 40; i++)
          for (const template of told) {
            const draft = template.ask({ rng, locale: localeOf(locale) });
            expect(draft.text, id).toMatch(/^[\p{Lu}\d$£].*\?$/u);
            expect(draft.text, id).not.toMatch(/undefined|NaN| [+−×÷] /);
            expect(draft.features.story).toBe(true);
            expect(draft.text.length, draft.text).toBeLessThanOrEqual(120);
          }
      }
  });

  it('are about the day’s number where a story can be', () => {
    const day = parseDayNumber('48', localeOf('en-AU'));
    if (!day.ok) throw new Error(day.error.message);
    const asked = SKILLS.flatMap(({ templates }) => templates).flatMap((template) => {
      if (!template.id.endsWith('.story')) return [];
      const draft = template.askOn?.(day.value, { rng: new Rng(3), locale: localeOf('en-AU') });
      return draft ? [draft] : [];
    });
    expect(asked.length).toBeGreaterThan(4);
    for (const { text, usesNumber } of asked) {
      expect(text).toMatch(/\b48\b/);
      expect(usesNumber).toMatch(/\b48\b/);
    }
  });
});
