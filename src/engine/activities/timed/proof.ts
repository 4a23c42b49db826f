// What is promised of a set of forms, counted from the finished forms themselves.
import type { TimedForm, TimedProof } from './timed.js';

/** Most that two forms' mean difficulties may differ, in logits. */
export const MOST_DIFFICULTY_GAP = 0.05;
/** Most that two forms' mean school years may differ. */
export const MOST_YEAR_GAP = 0.05;
/** Most that two forms' digits may differ, as a share of the smaller. */
export const MOST_DIGITS_GAP = 0.03;

/** The figures of forms that come first to last from a space of `space` questions. */
export function proveForms(forms: readonly TimedForm[], space: number): TimedProof {
  const asked = new Map<string, number>();
  for (const { questions } of forms)
    for (const { text } of questions) asked.set(text, (asked.get(text) ?? 0) + 1);
  const counts = [...asked.values()];
  const years = forms.map(({ questions }) => mean(questions.map(({ year }) => year)));
  const difficulties = forms.map(({ questions }) => mean(questions.map(({ difficulty }) => difficulty)));
  const digits = forms.map((form) => form.digits);
  return {
    space,
    difficultyGap: rounded(Math.max(...difficulties) - Math.min(...difficulties)),
    yearGap: rounded(Math.max(...years) - Math.min(...years)),
    digitsGap: rounded(Math.max(...digits) / Math.min(...digits) - 1),
    fewestAsked: asked.size < space ? 0 : Math.min(...counts),
    mostAsked: Math.max(...counts),
  };
}

/** Whether the forms are equal as promised. */
export function areEven({ difficultyGap, yearGap, digitsGap }: TimedProof): boolean {
  return difficultyGap <= MOST_DIFFICULTY_GAP && yearGap <= MOST_YEAR_GAP && digitsGap <= MOST_DIGITS_GAP;
}

/** Arithmetic mean of a list that is not empty. */
export function mean(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0) / values.length;
}

function rounded(value: number): number {
  return Math.round(value * 10_000) / 10_000;
}
