// Judges timed forms from their JSON alone: knows contracts and arithmetic, nothing of the composer.
import { evaluate, fraction } from 'mathjs';

export interface TimedQuestion {
  readonly text: string;
  readonly answer: { readonly text: string; readonly value: string | null };
  readonly expression: string | null;
  readonly difficulty: number;
  readonly year: number;
  readonly strategy: readonly string[];
  readonly slips: readonly { readonly text: string; readonly value: string | null }[];
}

export interface TimedForm {
  readonly form: string;
  readonly questions: readonly TimedQuestion[];
  readonly meanDifficulty: number;
  readonly digits: number;
}

export interface TimedJson {
  readonly kind: string;
  readonly seed: number;
  readonly level: number | null;
  readonly title: string;
  readonly minutes: number;
  readonly forms: readonly TimedForm[];
  readonly proof: { readonly space: number };
}

/** Everything that breaks a promise of equal forms, as sentences; none when all hold. */
export function timedProblems(timed: TimedJson, wish: { forms: number; questions: number }): string[] {
  const problems: string[] = [];
  const say = (text: string) => problems.push(text);
  if (timed.kind !== 'timed') say(`kind ${timed.kind}`);
  if (timed.forms.length !== wish.forms) say(`${timed.forms.length} forms`);
  if (timed.minutes < 2 || timed.minutes > 5) say(`${timed.minutes} minutes`);
  if (new Set(timed.forms.map(({ form }) => form)).size !== timed.forms.length) say('two forms of one name');
  const asked = new Map<string, number>();
  for (const form of timed.forms) problems.push(...formProblems(form, wish.questions, timed.proof.space));
  for (const { questions } of timed.forms)
    for (const { text } of questions) asked.set(text, (asked.get(text) ?? 0) + 1);
  if (asked.size > timed.proof.space)
    say(`${asked.size} different questions in a space of ${timed.proof.space}`);
  const counts = [...asked.values(), ...(asked.size < timed.proof.space ? [0] : [])];
  if (Math.max(...counts) - Math.min(...counts) > 1)
    say(`asked ${Math.min(...counts)} to ${Math.max(...counts)} times`);
  const means = timed.forms.map(({ questions }) => mean(questions.map(({ difficulty }) => difficulty)));
  if (spread(means) > 0.05) say(`mean difficulties ${spread(means)} apart`);
  const years = timed.forms.map(({ questions }) => mean(questions.map(({ year }) => year)));
  if (spread(years) > 0.05 + 1e-9) say(`mean years ${spread(years)} apart`);
  const digits = timed.forms.map(({ questions }) => digitsOf(questions));
  if (Math.max(...digits) / Math.min(...digits) > 1.03)
    say(`digits ${Math.min(...digits)} to ${Math.max(...digits)}`);
  return problems;
}

function formProblems(form: TimedForm, size: number, space: number): string[] {
  const problems: string[] = [];
  const say = (text: string) => problems.push(`form ${form.form}: ${text}`);
  if (form.questions.length !== size) say(`${form.questions.length} questions`);
  if (digitsOf(form.questions) !== form.digits) say(`says ${form.digits} digits`);
  const real = mean(form.questions.map(({ difficulty }) => difficulty));
  if (Math.abs(real - form.meanDifficulty) > 0.0006)
    say(`says mean difficulty ${form.meanDifficulty}, has ${real}`);
  // In reading order no question comes the (k+1)th time before every one came k times.
  for (let start = 0; start < form.questions.length; start += space) {
    const pass = form.questions.slice(start, start + space).map(({ text }) => text);
    if (new Set(pass).size !== pass.length) say('a fact again before all were asked');
  }
  for (const question of form.questions) {
    const right = question.answer.value;
    if (question.expression === null || right === null) say(`${question.text} has no value`);
    else if (
      !fraction(evaluate(question.expression.replace(/(\d+)/g, 'fraction($1)'))).equals(fraction(right))
    )
      say(`${question.text} is not ${right}`);
    if (question.slips.some((slip) => slip.value === right)) say(`${question.text} has its answer as a slip`);
  }
  return problems;
}

function digitsOf(questions: readonly TimedQuestion[]): number {
  return questions.reduce((total, { answer }) => total + answer.text.replaceAll(/\D/g, '').length, 0);
}

function mean(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0) / values.length;
}

function spread(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
