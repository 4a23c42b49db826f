// A simulated child who works a chain with wrong methods: each rule answers a question from its text or its slips.
//
// Subtraction rules: Brown & Burton 1978 and VanLehn 1990 in the definitions checked by worked examples from public
// sources (Ben-Zeev citing VanLehn 1983, 1986; the production-system model of Brown & VanLehn 1980). Decimal rules:
// Sackur-Grisvard & Leonard 1985, Martinie 2007. Adding tops and bottoms: Young-Loveridge et al. 2006. Carrying rules: from
// memory (not verified).
import type { Card, Question } from './chain-checker.js';
import { stripsWith } from './chain-checker.js';

export interface WrongMethod {
  readonly name: string;
  /** The child's answers to a question, any of which it may give; empty when the method does not touch it. */
  readonly answers: (
    question: Question,
  ) => readonly { readonly text: string; readonly value: string | null }[];
}

/** Digits of a number, ones first. */
const digits = (n: number) => [...String(n)].reverse().map(Number);

type ColumnRule = (a: number, b: number) => number;

/** Subtracts column by column, ones first; `borrow` says what taking from the left does to the digits of the upper number. */
function columns(
  borrow: (top: number[], at: number) => void,
  special: (top: number, bottom: number) => number | null = () => null,
): ColumnRule {
  return (a, b) => {
    const top = digits(a);
    const bottom = digits(b);
    return top.reduce((sum, _, at) => {
      const t = top[at] as number;
      const u = bottom[at] ?? 0;
      let digit = special(t, u);
      if (digit === null) {
        digit = t - u;
        if (digit < 0) {
          digit += 10;
          borrow(top, at + 1);
        }
      }
      return sum + digit * 10 ** at;
    }, 0);
  };
}

const lower = (top: number[], at: number) => {
  if (top[at] !== undefined) top[at] = (top[at] as number) - 1;
};
const borrowRight = (top: number[], at: number): void => {
  if (top[at] === 0) {
    top[at] = 9;
    borrowRight(top, at + 1);
  } else lower(top, at);
};
const borrowFromZero = (top: number[], at: number): void => {
  if (top[at] === 0) top[at] = 9;
  else lower(top, at);
};
const borrowAcrossZero = (top: number[], at: number): void => {
  const next = top.findIndex((digit, i) => i >= at && digit !== 0);
  if (next >= 0) lower(top, next);
};
const stopAtZero = (top: number[], at: number): void => {
  if (top[at] !== 0) lower(top, at);
};
const zeroGives = (digit: (bottom: number) => number) => (top: number, bottom: number) =>
  top === 0 && bottom > 0 ? digit(bottom) : null;

/** The subtraction rules by their published names. */
export const SUBTRACTION_RULES: Readonly<Record<string, ColumnRule>> = {
  'smaller-from-larger': columns(borrowRight, (top, bottom) => Math.abs(top - bottom)),
  'borrow-no-decrement': columns(() => undefined),
  'borrow-from-zero': columns(borrowFromZero),
  'borrow-across-zero': columns(borrowAcrossZero),
  'borrow-across-zero + zero-minus-n-is-n': columns(
    borrowAcrossZero,
    zeroGives((n) => n),
  ),
  'borrow-across-zero + zero-minus-n-is-zero': columns(
    borrowAcrossZero,
    zeroGives(() => 0),
  ),
  'stops-borrow-at-zero + zero-minus-n-is-n': columns(
    stopAtZero,
    zeroGives((n) => n),
  ),
  'zero-minus-n-is-n': columns(
    borrowRight,
    zeroGives((n) => n),
  ),
  'zero-minus-n-is-zero': columns(
    borrowRight,
    zeroGives(() => 0),
  ),
};

const places = (text: string) => text.split('.')[1] ?? '';
const afterPoint = (text: string) => Number(places(text) || '0');

/** The decimal rules: how large a number seems among others with the same whole part. */
export const DECIMAL_RULES: Readonly<Record<string, (text: string) => number>> = {
  'whole-number': afterPoint,
  'longer-is-larger': (text) => places(text).length,
  'shorter-is-larger': (text) => -places(text).length,
  zero: (text) => (places(text).startsWith('0') ? -1 : afterPoint(text)),
};

const number = (text: string) => Number(text.replace(/[\s,]/g, ''));
const whole = (value: number) => ({ text: String(value), value: String(value) });

function wholeParts(question: Question, sign: string): readonly [number, number] | null {
  const match = new RegExp(String.raw`^(\d[\d\s,]*) ${sign} (\d[\d\s,]*?)(?: = \?)?$`).exec(question.text);
  return match ? [number(match[1] as string), number(match[2] as string)] : null;
}

function byColumns(name: string, sign: string, rule: ColumnRule): WrongMethod {
  return {
    name,
    answers: (question) => {
      const parts = wholeParts(question, sign);
      return parts && parts[0] >= 10 ? [whole(rule(...parts))] : [];
    },
  };
}

function bySize(name: string, seems: (text: string) => number): WrongMethod {
  return {
    name,
    answers: (question) => {
      const numbers = question.text.match(/\d+\.\d+/g) ?? [];
      const wants = /larg|great|big|most/i.test(question.text)
        ? 1
        : /small|least/i.test(question.text)
          ? -1
          : 0;
      if (numbers.length < 2 || wants === 0) return [];
      const chosen = numbers.toSorted((a, b) => wants * (seems(b) - seems(a)))[0] as string;
      return [{ text: chosen, value: null }];
    },
  };
}

const addTopsAndBottoms: WrongMethod = {
  name: 'add tops, add bottoms',
  answers: ({ text }) => {
    const match = /^(\d+)\/(\d+) \+ (\d+)\/(\d+)/.exec(text);
    if (!match) return [];
    const [n, d] = [Number(match[1]) + Number(match[3]), Number(match[2]) + Number(match[4])];
    let [a, b] = [n, d];
    while (b > 0) [a, b] = [b, a % b];
    return [{ text: `${n}/${d}`, value: d / a === 1 ? String(n / a) : `${n / a}/${d / a}` }];
  },
};

const dropCarry: ColumnRule = (a, b) => {
  const [one, other] = [digits(a), digits(b)];
  const length = Math.max(one.length, other.length);
  return Array.from({ length }, (_, i) => ((one[i] ?? 0) + (other[i] ?? 0)) % 10).reduce(
    (sum, d, i) => sum + d * 10 ** i,
    0,
  );
};
const writeCarry: ColumnRule = (a, b) => {
  const [one, other] = [digits(a), digits(b)];
  const length = Math.max(one.length, other.length);
  return Number(
    Array.from({ length }, (_, i) => String((one[i] ?? 0) + (other[i] ?? 0)))
      .reverse()
      .join(''),
  );
};

/** The methods described in print. */
export const PRINTED_METHODS: readonly WrongMethod[] = [
  ...Object.entries(SUBTRACTION_RULES).map(([name, rule]) => byColumns(name, '[−-]', rule)),
  ...Object.entries(DECIMAL_RULES).map(([name, seems]) => bySize(name, seems)),
  addTopsAndBottoms,
  byColumns('carry dropped', String.raw`\+`, dropCarry),
  byColumns('carry written whole', String.raw`\+`, writeCarry),
];

/** The method of a child who holds one misconception of the program's own catalogue, wherever a slip shows it. */
export function catalogueMethod(misconception: string): WrongMethod {
  return {
    name: misconception,
    answers: ({ slips }) => slips.filter((slip) => slip.misconception === misconception),
  };
}

export type Ending = 'right' | 'at once' | 'late' | 'unnoticed';

/**
 * How the child fares: it answers with its methods wherever one touches the question, else rightly, lays the strip with
 * that answer, and stops when there is none or it lies there already. `choose` picks one of several wrong answers.
 */
export function work(
  cards: readonly Card[],
  methods: readonly WrongMethod[],
  choose: (count: number) => number,
): Ending {
  const laid = new Set([0]);
  let at = 0;
  let slippedOn: number | null = null;
  for (;;) {
    const question = cards[at]?.question;
    if (!question) break;
    const wrong = methods.flatMap((method) => method.answers(question));
    const given = wrong.length > 0 ? wrong[choose(wrong.length)] : question.answer;
    const strips = stripsWith(cards, given ?? question.answer);
    if (slippedOn === null && !strips.includes(at + 1)) slippedOn = laid.size;
    const next = strips.find((to) => !laid.has(to));
    if (next === undefined) return slippedOn === laid.size ? 'at once' : 'late';
    laid.add(next);
    at = next;
  }
  if (laid.size < cards.length) return 'late';
  return slippedOn === null ? 'right' : 'unnoticed';
}
