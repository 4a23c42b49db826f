// Putting questions into an order in which no slip leads forward: the heart of the level "at once".
import type { SuppliedQuestion, SupplyOrder } from '../supply.js';

/** How two questions bear on one another, each known by its place in the pool. */
export interface Hits {
  /** True when their right answers could be taken for one another, so that both cannot stand in one chain. */
  readonly clash: (a: number, b: number) => boolean;
  /** True when a slip of `from` could be taken for the answer of `to`. */
  readonly leads: (from: number, to: number) => boolean;
}

/** A pool that grows while questions are drawn, with the marks by which they bear on one another. */
export class QuestionPool implements Hits {
  readonly questions: SuppliedQuestion[] = [];
  readonly #clashes: Set<number>[] = [];
  readonly #leads: Set<number>[] = [];
  readonly #byRight = new Map<string, number[]>();
  readonly #bySlip = new Map<string, number[]>();

  /** Adds a question and answers with its place. */
  add(question: SuppliedQuestion): number {
    const at = this.questions.push(question) - 1;
    const clashes = new Set<number>();
    const leads = new Set<number>();
    for (const mark of question.rightMarks) {
      for (const other of this.#byRight.get(mark) ?? []) {
        clashes.add(other);
        this.#clashes[other]?.add(at);
      }
      for (const other of this.#bySlip.get(mark) ?? []) this.#leads[other]?.add(at);
    }
    const slipMarks = new Set(question.slipMarks.flat());
    for (const mark of slipMarks) for (const other of this.#byRight.get(mark) ?? []) leads.add(other);
    this.#clashes.push(clashes);
    this.#leads.push(leads);
    for (const mark of question.rightMarks) push(this.#byRight, mark, at);
    for (const mark of slipMarks) push(this.#bySlip, mark, at);
    return at;
  }

  clash(a: number, b: number): boolean {
    return this.#clashes[a]?.has(b) ?? false;
  }

  leads(from: number, to: number): boolean {
    return this.#leads[from]?.has(to) ?? false;
  }

  /** How many others a question cannot stand beside, or leads to or from: easy ones to place have few. */
  burden(at: number): number {
    return (this.#clashes[at]?.size ?? 0) + (this.#leads[at]?.size ?? 0);
  }
}

function push(index: Map<string, number[]>, mark: string, at: number): void {
  const places = index.get(mark);
  if (places) places.push(at);
  else index.set(mark, [at]);
}

/**
 * The places, from `low` to `high`, at which a question may be put into a sequence so that no slip leads forward:
 * whatever it leads to must come before it, whatever leads to it after it. In a graded sequence its difficulty narrows
 * them further. Null when there is none.
 */
export function placesFor(
  pool: QuestionPool,
  sequence: readonly number[],
  at: number,
  order: SupplyOrder,
): { readonly low: number; readonly high: number } | null {
  const common = commonOf(pool, at);
  let low = 0;
  let high = sequence.length;
  for (let i = 0; i < sequence.length; i++) {
    const other = sequence[i] as number;
    if (pool.clash(at, other)) return null;
    if (pool.leads(at, other)) low = i + 1;
    if (pool.leads(other, at)) high = Math.min(high, i);
    if (order === 'graded') {
      const otherCommon = commonOf(pool, other);
      if (otherCommon < common) low = Math.max(low, i + 1);
      else if (otherCommon > common) high = Math.min(high, i);
    }
  }
  return low <= high ? { low, high } : null;
}

function commonOf(pool: QuestionPool, at: number): number {
  return pool.questions[at]?.common ?? 0;
}
