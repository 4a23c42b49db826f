// Judges a chain from its JSON alone, by what the command's contract promises. Shares no code with the program: answers are
// compared here by own rules, and runs are counted over sets of strips, from the finish backwards.
import { questionProblems } from './board-checker.js';

export interface Answer {
  readonly kind: string;
  readonly text: string;
  readonly value: string | null;
}

export interface Question {
  readonly text: string;
  readonly year: number;
  readonly difficulty: number;
  readonly figure: object | null;
  readonly answer: Answer;
  readonly slips: readonly {
    readonly misconception: string;
    readonly text: string;
    readonly value: string | null;
  }[];
}

export interface Card {
  readonly label: string;
  readonly answer: Answer | null;
  readonly question: Question | null;
}

export interface Chain {
  readonly kind: string;
  readonly seed: number;
  readonly order: string;
  readonly cards: readonly Card[];
  readonly printOrder: readonly number[];
  readonly proof: {
    readonly fullRuns: number;
    readonly slips: number;
    readonly shownAtOnce: number;
    readonly level: string;
  };
}

const fold = (text: string) => text.normalize('NFKC').trim().toLowerCase().replace(/\s+/g, ' ');

/** Equal by the contract: equal values, or for words equal case-folded texts. */
export function isSame(a: Pick<Answer, 'text' | 'value'>, b: Pick<Answer, 'text' | 'value'>): boolean {
  if (a.value !== null && b.value !== null) return a.value === b.value;
  return fold(a.text) === fold(b.text);
}

/** Metric lengths in mm, masses in g, capacities in mL, durations in s: the units that children convert between. */
const UNITS: Readonly<Record<string, readonly [quantity: string, size: number]>> = {
  mm: ['length', 1],
  cm: ['length', 10],
  m: ['length', 1000],
  km: ['length', 1_000_000],
  g: ['mass', 1],
  kg: ['mass', 1000],
  ml: ['capacity', 1],
  l: ['capacity', 1000],
  s: ['duration', 1],
  min: ['duration', 60],
  h: ['duration', 3600],
};

/** What a measure comes to in its smallest unit, "length 1200" for "1.2 m" or "1 m 20 cm"; null for anything else. */
function measureOf(text: string): string | null {
  const parts = [...fold(text).matchAll(/(\d+(?:\.\d+)?) ?([a-z]+)(?: |$)/g)];
  if (parts.length === 0 || parts.map(([whole]) => whole).join('') !== fold(text)) return null;
  const units = parts.map(([, , unit]) => UNITS[unit as string]);
  const quantity = units[0]?.[0];
  if (quantity === undefined || units.some((unit) => unit?.[0] !== quantity)) return null;
  // Thousandths keep decimals whole.
  const total = parts.reduce(
    (sum, [, size], i) => sum + Math.round(Number(size) * 1000) * (units[i]?.[1] ?? 0),
    0,
  );
  return `${quantity} ${total}`;
}

/** Equal to a child who reads, too: 60 min and 1 h, 7:45 and 19:45, 50% and 1/2, a circle and Circle. */
export function looksSame(a: Pick<Answer, 'text' | 'value'>, b: Pick<Answer, 'text' | 'value'>): boolean {
  if (isSame(a, b) || plain(a.text) === plain(b.text)) return true;
  const [one, other] = [measureOf(a.text), measureOf(b.text)];
  if (one !== null && one === other) return true;
  const [dial, otherDial] = [dialOf(a.text), dialOf(b.text)];
  if (dial !== null && dial === otherDial) return true;
  const [share, otherShare] = [hundredths(a), hundredths(b)];
  return (
    (a.text.endsWith('%') || b.text.endsWith('%')) &&
    share !== null &&
    otherShare !== null &&
    Math.abs(share - otherShare) < 1e-9
  );
}

function hundredths({ text, value }: Pick<Answer, 'text' | 'value'>): number | null {
  const percent = /^(\d+(?:\.\d+)?) ?%$/.exec(fold(text));
  if (percent) return Number(percent[1]);
  if (value === null) return null;
  const [n = '0', d = '1'] = value.split('/');
  return (100 * Number(n)) / Number(d);
}

/** Minutes on a 12-hour dial; null for what no clock shows, such as a child’s 9:80. */
function dialOf(text: string): number | null {
  const clock = /^(\d{1,2}):([0-5]\d)(?: ?(?:am|pm))?$/.exec(fold(text));
  return clock ? (Number(clock[1]) % 12) * 60 + Number(clock[2]) : null;
}

const plain = (text: string) =>
  fold(text)
    .replace(/^(?:an?|the) /, '')
    .replace(/[-,]/g, ' ')
    .replace(/ +/g, ' ');

/** Strips that the answer leads to. */
export function stripsWith(cards: readonly Card[], answer: Pick<Answer, 'text' | 'value'>): number[] {
  return cards.flatMap((card, at) => (card.answer && looksSame(card.answer, answer) ? [at] : []));
}

/** Where each strip's question may lead: by the right answer and by every slip. */
export function arrowsOf(cards: readonly Card[]): number[][] {
  return cards.map(({ question }) =>
    question
      ? [...new Set([question.answer, ...question.slips].flatMap((one) => stripsWith(cards, one)))]
      : [],
  );
}

/** Runs from the first strip to the last over every strip: paths that end at the finish, grown backwards set by set. */
export function countRuns(arrows: readonly (readonly number[])[]): number {
  const size = arrows.length;
  const width = 2 ** size;
  const runs = new Float64Array(width * size);
  runs[2 ** (size - 1) * size + size - 1] = 1;
  for (let set = 1; set < width; set++)
    for (let first = 0; first < size; first++) {
      if (first === size - 1 || !(set & (1 << first))) continue;
      const rest = set ^ (1 << first);
      let sum = 0;
      for (const next of arrows[first] as readonly number[])
        if (rest & (1 << next)) sum += runs[rest * size + next] as number;
      runs[set * size + first] = sum;
    }
  return runs[(width - 1) * size] as number;
}

/** Every broken promise of a chain, one sentence each; empty when all hold. */
export function chainProblems(
  chain: Chain,
  wanted: { readonly cards: number; readonly order: string },
): string[] {
  const problems: string[] = [];
  const claim = (holds: boolean, problem: string) => void (holds || problems.push(problem));
  const { kind, seed, cards, order, printOrder, proof } = chain;
  claim(kind === 'chain' && Number.isInteger(seed), 'It is no chain with a seed.');
  claim(cards.length === wanted.cards, `It has ${cards.length} strips.`);
  claim(order === wanted.order, `It is ${order}.`);
  claim(
    cards[0]?.answer === null && cards.at(-1)?.question === null,
    'Start or finish is not where it belongs.',
  );
  claim(new Set(cards.map(({ label }) => label)).size === cards.length, 'Two strips have one label.');
  const labels = cards.map(({ label }) => label);
  claim(labels.join() !== labels.toSorted().join(), 'The labels give the order away.');
  claim(
    printOrder.toSorted((a, b) => a - b).join() === cards.map((_, at) => at).join() &&
      printOrder.join() !== printOrder.toSorted((a, b) => a - b).join(),
    'The printed order leaves strips out or gives the order away.',
  );
  const questions = cards.flatMap(({ question }) => question ?? []);
  claim(questions.length === cards.length - 1, 'A strip in the middle has no question.');
  const keys = new Set<string>();
  questions.forEach((question, at) => {
    problems.push(
      ...questionProblems(JSON.parse(JSON.stringify(question))).map((one) => `Question ${at + 1} ${one}.`),
    );
    const key = fold(question.text) + (question.figure ? JSON.stringify(question.figure) : '');
    claim(!keys.has(key), `Question ${at + 1} comes twice.`);
    keys.add(key);
    const next = cards[at + 1]?.answer;
    claim(
      next?.text === question.answer.text && next.value === question.answer.value,
      `Strip ${at + 2} carries another answer.`,
    );
    claim(
      stripsWith(cards, question.answer).join() === String(at + 1),
      `The answer to ${question.text} stands on several strips.`,
    );
    const [ease, before] = [question, questions[at - 1]].map((one) =>
      Math.round(100 * ((one?.year ?? -99) + (one?.difficulty ?? 0))),
    );
    claim(
      order !== 'graded' || (before as number) <= (ease as number),
      `Question ${at + 1} is easier than the one before.`,
    );
  });
  const slips = questions.flatMap((question, from) => question.slips.map((slip) => ({ slip, from })));
  const atOnce = slips.filter(({ slip, from }) => stripsWith(cards, slip).every((to) => to <= from)).length;
  const runs = countRuns(arrowsOf(cards));
  claim(runs === 1, `${runs} runs use every strip.`);
  claim(proof.fullRuns === 1 && proof.slips === slips.length, 'The proof counts other runs or slips.');
  claim(
    proof.shownAtOnce <= atOnce,
    `The proof says that ${proof.shownAtOnce} slips show at once; ${atOnce} do.`,
  );
  claim(proof.level === 'at once' || proof.level === 'single run', `The level is ${proof.level}.`);
  claim(
    proof.level !== 'at once' || (atOnce === slips.length && proof.shownAtOnce === slips.length),
    'Not all slips show at once.',
  );
  return problems;
}
