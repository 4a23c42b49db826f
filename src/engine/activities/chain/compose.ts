// The chain composer: request -> chain with its proof. Every search is bounded, so a wish that cannot be met is answered
// as fast as one that can.
import { type Locale, localeOf } from '../../numbers/locale.js';
import { Rng } from '../../random/rng.js';
import {
  drawQuestions,
  planSupply,
  sourceName,
  type SupplyOrder,
  type SupplyPlan,
  type SupplyMend,
  type SupplyRequest,
  wideningHint,
  wideningMend,
} from '../supply.js';
import type { Chain, ChainCard, ChainProof } from './chain.js';
import {
  type ChainError,
  type ChainRequest,
  type ChainResult,
  FEWEST_CARDS,
  problemWithCards,
  USUAL_CARDS,
} from './chain-request.js';
import { chainLabels } from './labels.js';
import { answerForm, proveChain } from './proof.js';
import { placesFor, QuestionPool } from './sequence.js';
import { fitsStrip } from './strip-room.js';

/** Draws before the pool is taken as all there is. */
const MOST_DRAWS = 300;
/** Fresh starts over a pool that did not give a chain at the first go. */
const RESTARTS = 24;
/** Orders whose runs are counted when no order shows every slip at once. */
const COUNTED_ORDERS = 24;

interface Found {
  readonly pool: QuestionPool;
  readonly sequence: readonly number[];
  readonly proof: ChainProof;
}

/**
 * A chain in which no combination of typical slips passes unseen, at the level "at once" where the questions allow it and
 * "single run" otherwise (`proof.level` says which); or what to change.
 */
export function composeChain(request: ChainRequest): ChainResult {
  const size = request.cards ?? USUAL_CARDS;
  const problem = problemWithCards(size);
  if (problem) return { ok: false, error: problem };
  const wish = withUsualSuccess(request);
  const plan = planSupply(stripsOnly(wish, size));
  if (!plan.ok) return plan;
  const order = request.order ?? 'graded';
  const found = findChain(plan.value, size, order);
  return found ? finish(request, order, found) : { ok: false, error: refusal(wish, plan.value, size, order) };
}

/** A child must get every question right to finish alone, so none of the map's hardest come unless they were chosen. */
const LEAST_SUCCESS = 0.5;

/** The request with the success that a chain asks for unless it was said otherwise. */
export function withUsualSuccess(request: ChainRequest): ChainRequest {
  return request.success || request.skills?.length ? request : { ...request, success: [LEAST_SUCCESS, 1] };
}

/** The request without questions whose pictures a strip is too small for. */
export function stripsOnly(request: ChainRequest, cards: number): SupplyRequest {
  return { ...request, suits: (question) => fitsStrip(question, cards, request.locale) };
}

function findChain(plan: SupplyPlan, size: number, order: SupplyOrder): Found | null {
  const rng = new Rng(plan.request.seed).fork('chain').fork(size);
  const locale = localeOf(plan.request.locale);
  // First without repeated texts; a skill whose questions differ only in their figures needs the second round.
  const pools: QuestionPool[] = [];
  for (const repeatTexts of [false, true]) {
    const pool = new QuestionPool();
    const sequence =
      drawSequence(plan, pool, size - 1, order, repeatTexts, rng) ?? restart(pool, size - 1, order, rng);
    if (sequence) return proved(pool, sequence, locale);
    pools.push(pool);
  }
  for (const pool of pools) {
    const found = countedSequence(pool, size - 1, order, rng, locale);
    if (found) return found;
  }
  return null;
}

/** Takes each question as it is drawn if it fits; null when the draws end before the sequence is full. */
function drawSequence(
  plan: SupplyPlan,
  pool: QuestionPool,
  count: number,
  order: SupplyOrder,
  repeatTexts: boolean,
  rng: Rng,
): readonly number[] | null {
  const sequence: number[] = [];
  const forms = new FormGuard(pool, count);
  for (const question of drawQuestions(plan, MOST_DRAWS, repeatTexts)) {
    const at = pool.add(question);
    if (!forms.welcomes(at)) continue;
    if (!insert(pool, sequence, at, order, rng)) continue;
    forms.take(at);
    if (sequence.length === count) return sequence;
  }
  return null;
}

/**
 * Keeps down the number of strips that a child could find by the look of the answer alone, such as the only amount of
 * money: an answer of a form of its own is welcome only while such strips are few.
 */
class FormGuard {
  readonly #pool: QuestionPool;
  readonly #most: number;
  readonly #counts = new Map<string, number>();

  constructor(pool: QuestionPool, count: number) {
    this.#pool = pool;
    this.#most = Math.max(1, Math.floor(count / 5));
  }

  welcomes(at: number): boolean {
    const form = this.#form(at);
    if (form === '#' || this.#counts.has(form)) return true;
    return [...this.#counts.values()].filter((count) => count === 1).length < this.#most;
  }

  take(at: number): void {
    const form = this.#form(at);
    if (form !== '#') this.#counts.set(form, (this.#counts.get(form) ?? 0) + 1);
  }

  #form(at: number): string {
    const supplied = this.#pool.questions[at];
    return supplied ? answerForm(supplied.question.answer) : '#';
  }
}

function insert(pool: QuestionPool, sequence: number[], at: number, order: SupplyOrder, rng: Rng): boolean {
  const places = placesFor(pool, sequence, at, order);
  if (!places) return false;
  sequence.splice(rng.int(places.low, places.high), 0, at);
  return true;
}

/** Goes over the whole pool again and again, questions that get in others' way last. */
function restart(pool: QuestionPool, count: number, order: SupplyOrder, rng: Rng): readonly number[] | null {
  for (let time = 0; time < RESTARTS; time++) {
    const sequence: number[] = [];
    for (const at of willing(pool, rng)) {
      insert(pool, sequence, at, order, rng);
      if (sequence.length === count) return sequence;
    }
  }
  return null;
}

function willing(pool: QuestionPool, rng: Rng): number[] {
  return pool.questions
    .map((_, at) => ({ at, weight: (pool.burden(at) + 1) * (0.25 + rng.unit()) }))
    .sort((a, b) => a.weight - b.weight)
    .map(({ at }) => at);
}

/** The first of some orders of unlike answers that allows one run only, or shows every slip at once. */
function countedSequence(
  pool: QuestionPool,
  count: number,
  order: SupplyOrder,
  rng: Rng,
  locale: Locale,
): Found | null {
  for (let time = 0; time < COUNTED_ORDERS; time++) {
    const sequence: number[] = [];
    for (const at of willing(pool, rng)) {
      if (sequence.some((other) => pool.clash(at, other))) continue;
      sequence.push(at);
      if (sequence.length === count) break;
    }
    if (sequence.length < count) continue;
    if (order === 'graded') sequence.sort((a, b) => commonAt(pool, a) - commonAt(pool, b));
    const found = proved(pool, sequence, locale);
    if (found.proof.level !== 'open') return found;
  }
  return null;
}

function commonAt(pool: QuestionPool, at: number): number {
  return pool.questions[at]?.common ?? 0;
}

function proved(pool: QuestionPool, sequence: readonly number[], locale: Locale): Found {
  return { pool, sequence, proof: proveChain(cardsOf(pool, sequence), locale) };
}

/** The strips without their letters. */
function cardsOf(pool: QuestionPool, sequence: readonly number[]): ChainCard[] {
  const supplied = sequence.flatMap((at) => pool.questions[at] ?? []);
  return [null, ...supplied].map((before, at) => ({
    label: '',
    answer: before?.question.answer ?? null,
    question: supplied[at]?.question ?? null,
    predicted: supplied[at]?.predicted ?? null,
  }));
}

function finish(request: ChainRequest, order: SupplyOrder, found: Found): ChainResult {
  if (found.proof.level === 'open')
    throw new Error(`seed ${request.seed}: the order found does not hold its promise`);
  const cards = cardsOf(found.pool, found.sequence);
  // by what the strips say, not by the seed alone: two classes' sets of one seed would else share one order of letters
  const rng = new Rng(request.seed)
    .fork('strips')
    .fork(cards.map(({ question }) => question?.text).join('/'));
  const labels = chainLabels(cards.length, rng.fork('labels'));
  const chain: Chain = {
    kind: 'chain',
    seed: request.seed,
    years: request.years,
    pitch: request.pitch ?? 'middle',
    locale: request.locale,
    order,
    cards: cards.map((card, at) => ({ ...card, label: labels[at] ?? '' })),
    printOrder: rng.fork('print').shuffle(cards.map((_, at) => at)),
    proof: found.proof,
  };
  return { ok: true, value: chain };
}

/** Says how many strips these questions do give: found by making such a chain, whose strips may be larger too. */
function refusal(wish: ChainRequest, plan: SupplyPlan, size: number, order: SupplyOrder): ChainError {
  const anyPicture = planSupply(wish);
  const isRoom = anyPicture.ok && findChain(anyPicture.value, size, order) !== null;
  for (let smaller = size - 1; smaller >= FEWEST_CARDS; smaller--) {
    const other = planSupply(stripsOnly(wish, smaller));
    if (other.ok && findChain(other.value, smaller, order))
      return refusalWith(plan, size, isRoom, `Choose ${smaller} strips`, { cards: smaller });
  }
  return refusalWith(plan, size, isRoom, 'Choose other skills');
}

function refusalWith(
  plan: SupplyPlan,
  size: number,
  isRoom: boolean,
  instead: string,
  mend: SupplyMend = {},
): ChainError {
  const message = isRoom
    ? `Too few questions of ${sourceName(plan)} fit the strips of a chain of ${size}: their pictures would be too small to read.`
    : `A chain of ${size} strips is too long for ${sourceName(plan)}: too few answers differ, or typical mistakes would pass unseen.`;
  return {
    code: isRoom ? 'chain.room' : 'chain.few',
    message,
    hint: `${instead}, or ${wideningHint(plan)}.`,
    mend: { ...mend, ...wideningMend(plan) },
  };
}
