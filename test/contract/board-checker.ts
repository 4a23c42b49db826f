// Judges a board from its JSON alone, by what docs and the command's contract promise. Shares no code with the program:
// shapes are checked by hand and arithmetic is done by mathjs with exact fractions.
import { all, create, type Fraction } from 'mathjs';

const math = create(all ?? {}, { number: 'Fraction' });
/** Roots are not defined on fractions; those asked of children are whole. */
const plainMath = create(all ?? {});

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
type JsonObject = { [key: string]: Json };

const ANSWER_KINDS = new Set(['number', 'fraction', 'decimal', 'money', 'time', 'word', 'choice', 'list']);
const MISS_ALLOWED = 0.08;
const STRANDS_LEAST = 4;

const isText = (value: Json | undefined): value is string => typeof value === 'string' && value !== '';
const isNumber = (value: Json | undefined): value is number =>
  typeof value === 'number' && Number.isFinite(value);
const isShare = (value: Json | undefined) => isNumber(value) && value >= 0 && value <= 1;
const isValue = (value: Json | undefined) =>
  value === null || (typeof value === 'string' && /^-?\d+(\/\d+)?$/.test(value));
const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const fold = (text: string) => text.trim().toLowerCase().replace(/\s+/g, ' ');

function isLowestTerms(value: string): boolean {
  const [n = '', d] = value.split('/');
  if (d === undefined) return true;
  let [a, b] = [Math.abs(Number(n)), Number(d)];
  while (b > 0) [a, b] = [b, a % b];
  return a === 1 && Number(d) > 1;
}

/** The exact value of an expression as "n" or "n/d"; null when it gives no number. */
export function evaluate(expression: string): string | null {
  let value: unknown = (expression.includes('sqrt') ? plainMath : math).evaluate(expression);
  // Counting functions answer with a plain number.
  if (typeof value === 'number' && Number.isSafeInteger(value)) value = math.fraction(value);
  if (!math.isFraction(value)) return null;
  const { s, n, d } = value as Fraction & { s: bigint; n: bigint; d: bigint };
  return `${s < 0n ? '-' : ''}${n}${d === 1n ? '' : `/${d}`}`;
}

/** Every broken promise of one question. */
export function questionProblems(question: Json | undefined): string[] {
  if (!isObject(question)) return ['is no object'];
  const problems: string[] = [];
  const claim = (holds: boolean, problem: string) => void (holds || problems.push(problem));
  for (const key of ['id', 'skill', 'strand', 'text']) claim(isText(question[key]), `has no ${key}`);
  claim(!/\n/.test(String(question['text'])), 'has a text of several lines');
  claim(Number.isInteger(question['year']), 'has no year');
  claim(isNumber(question['difficulty']), 'has no difficulty');
  const { figure, answer, accepts, expression, slips, strategy } = question;
  claim(figure === null || (isObject(figure) && isText(figure['kind'])), 'has a figure of no kind');
  if (!isObject(answer) || !Array.isArray(accepts) || !Array.isArray(slips) || !Array.isArray(strategy))
    return [...problems, 'lacks answer, accepts, slips or strategy'];
  claim(ANSWER_KINDS.has(String(answer['kind'])), `has an answer of kind ${String(answer['kind'])}`);
  claim(isText(answer['text']) && isValue(answer['value']), 'has no answer text or value');
  claim(
    answer['value'] === null || isLowestTerms(String(answer['value'])),
    'has a value not in lowest terms',
  );
  claim(accepts.every(isText), 'accepts what is no text');
  claim(strategy.length > 0 && strategy.every(isText), 'has no strategy');
  claim(expression === null || isText(expression), 'has an empty expression');
  if (isText(expression)) {
    const value = evaluate(expression);
    claim(
      value !== null && value === answer['value'],
      `says ${String(answer['value'])}, but ${expression} is ${value}`,
    );
  }
  const right = new Set([answer['text'], ...accepts].map((text) => fold(String(text))));
  for (const slip of slips) {
    if (
      !isObject(slip) ||
      !isText(slip['misconception']) ||
      !isText(slip['text']) ||
      !isValue(slip['value'])
    ) {
      problems.push('has a slip without misconception, text or value');
      continue;
    }
    claim(!right.has(fold(slip['text'])), `has the slip ${slip['text']}, which reads as the answer`);
    claim(
      slip['value'] === null || slip['value'] !== answer['value'],
      `has the slip ${slip['text']}, which equals the answer`,
    );
  }
  return problems;
}

/** Every broken promise of a board, one sentence each; empty when all hold. */
export function boardProblems(
  board: Json,
  wanted: { number: string; years: number[]; rungs?: number },
): string[] {
  if (!isObject(board)) return ['The board is no object.'];
  const problems: string[] = [];
  const claim = (holds: boolean, problem: string) => void (holds || problems.push(problem));
  const { kind, seed, number, years, side, rungs } = board;
  claim(kind === 'board' && Number.isInteger(seed), 'It is no board with a seed.');
  claim(number === wanted.number, `It is a board of ${String(number)}.`);
  claim(JSON.stringify(years) === JSON.stringify(wanted.years), 'It is for other years.');
  claim(side === 'front' || side === 'back', 'It has no side.');
  if (!Array.isArray(rungs)) return [...problems, 'It has no rungs.'];
  claim(rungs.length === (wanted.rungs ?? 12), `It has ${rungs.length} rungs.`);
  const proof = isObject(board['proof']) ? board['proof'] : {};
  const listedMisses = Array.isArray(proof['missedRungs']) ? proof['missedRungs'] : [];
  const texts = new Set<string>();
  const strands = new Set<string>();
  let last = { difficulty: Number.NEGATIVE_INFINITY, predicted: 1, target: 1 };
  rungs.forEach((rung, at) => {
    const place = `Rung ${at + 1}`;
    if (!isObject(rung) || !isObject(rung['question']))
      return void problems.push(`${place} has no question.`);
    const { question, target, predicted, why } = rung;
    claim(rung['rung'] === at + 1, `${place} is numbered ${String(rung['rung'])}.`);
    problems.push(...questionProblems(question).map((problem) => `${place} ${problem}.`));
    claim(isShare(target) && isShare(predicted), `${place} has no target or prediction.`);
    claim(isText(why) && /^\p{Lu}.*\.$/u.test(why), `${place} does not say why in a sentence.`);
    const here = {
      difficulty: Math.round(100 * (Number(question['year']) + Number(question['difficulty']))),
      predicted: Number(predicted),
      target: Number(target),
    };
    claim(here.difficulty >= last.difficulty, `${place} is easier than the one before.`);
    claim(here.predicted <= last.predicted, `${place} is predicted easier than the one before.`);
    claim(here.target < last.target, `${place} is aimed at no fewer children than the one before.`);
    claim(
      Math.abs(here.predicted - here.target) <= MISS_ALLOWED + 1e-9 || listedMisses.includes(at + 1),
      `${place} misses its target and does not say so.`,
    );
    last = here;
    const text = fold(String(question['text']));
    claim(!texts.has(text), `${place} repeats a question.`);
    texts.add(text);
    strands.add(String(question['strand']));
    claim(
      usesNumber(question, wanted.number) || String(why).includes(wanted.number),
      `${place} does not use ${wanted.number} and does not say why.`,
    );
  });
  claim(strands.size >= STRANDS_LEAST, `It has ${strands.size} strands.`);
  return problems;
}

/** True when the number can be found in the question: as printed, or, named by the question's own account, in its parts. */
function usesNumber(question: JsonObject, number: string): boolean {
  const account = String(question['usesNumber'] ?? '');
  if (account === '' || account === 'null') return false;
  const told = JSON.stringify([
    question['text'],
    question['answer'],
    question['figure'],
    question['expression'],
  ]);
  return told.includes(number) || account.includes(number);
}
