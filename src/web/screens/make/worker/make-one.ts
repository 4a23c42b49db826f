// One set from a wish, and one set with another question in it. Runs in the maker's thread, with the whole engine at hand.
import type { ChainRequest } from '#engine/activities/chain/chain-request.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { replaceQuestion } from '#engine/activities/chain/replace-question.js';
import { composeJigsaw } from '#engine/activities/jigsaw/compose.js';
import { explainJigsaw } from '#engine/activities/jigsaw/explain.js';
import type { JigsawRequest } from '#engine/activities/jigsaw/request.js';
import { composeTrail, type TrailRequest } from '#engine/activities/trail/compose.js';
import type { SupplyRequest } from '#engine/activities/supply.js';
import { replaceTrailQuestion } from '#engine/activities/trail/replace-question.js';
import { ownQuestionsIn } from '#engine/own-questions/own-lines.js';
import type { OwnSource } from '#engine/own-questions/own-supply.js';
import { hashText } from '#engine/random/rng.js';
import type { MadeSet, MakeOrder, Refusal } from './messages.js';
import { type ComposerError, refusalOf } from './mends-of.js';
import { picturesOf } from './pictures-of.js';

export type Made =
  | { readonly ok: true; readonly value: MadeSet }
  | { readonly ok: false; readonly error: Refusal };

/** The set with number `at` (from 0) of a wish; the same wish always gives the same one. */
export function makeOne(order: MakeOrder, at: number): Made {
  switch (order.wish.activity) {
    case 'chain':
      return drawn(order, composeChain(chainRequest(order, at)));
    case 'trail':
      return drawn(order, composeTrail(trailRequest(order, at)));
    case 'jigsaw':
      return drawn(order, composeJigsaw(jigsawRequest(order, at)));
  }
}

/** The set with another question at `place`. */
export function swapOne(order: MakeOrder, set: MadeSet, at: number, place: number, turn: number): Made {
  const { activity } = set;
  if (activity.kind === 'chain')
    return drawn(order, replaceQuestion(activity, place, chainRequest(order, at), turn));
  if (activity.kind === 'trail')
    return drawn(order, replaceTrailQuestion(activity, place, trailRequest(order, at), turn));
  return {
    ok: false,
    error: { message: 'Here no single question can be swapped.', hint: 'Make another one.' },
  };
}

/** The first set has the wish's own seed, every other one a seed that follows from it. */
export function seedOfSet(seed: number, at: number): number {
  return at === 0 ? seed : hashText(`${seed}/${at + 1}`) >>> 1;
}

function supplyOf(order: MakeOrder, at: number): SupplyRequest {
  const { wish, due, locale } = order;
  return {
    years: wish.years,
    pitch: wish.pitch,
    seed: seedOfSet(wish.seed, at),
    locale,
    ...(wish.source === 'chosen' ? { skills: wish.skills } : {}),
    ...(wish.source === 'due' ? { due } : {}),
    ...ownOf(order),
  };
}

function chainRequest(order: MakeOrder, at: number): ChainRequest {
  return { ...supplyOf(order, at), cards: order.wish.cards, order: order.wish.order };
}

function trailRequest(order: MakeOrder, at: number): TrailRequest {
  const { rows, columns, theme } = order.wish;
  return { ...supplyOf(order, at), rows, columns, ...(theme === 'any' ? {} : { theme }) };
}

function jigsawRequest(order: MakeOrder, at: number): JigsawRequest {
  const { wish, locale } = order;
  const { years, rows, columns, level, rowKind, seed } = wish;
  return {
    years,
    rows,
    columns,
    level,
    rowKind,
    locale,
    seed: seedOfSet(seed, at),
    ...(wish.source === 'chosen' ? { skills: wish.skills } : {}),
    ...ownOf(order),
  };
}

/** The teacher's own questions where they are wished for. */
function ownOf({ wish, own }: MakeOrder): { readonly own?: OwnSource } {
  return wish.source === 'own' ? { own: { questions: ownQuestionsIn(own) } } : {};
}

function drawn(
  { wish }: MakeOrder,
  result:
    | { readonly ok: true; readonly value: MadeSet['activity'] }
    | { readonly ok: false; readonly error: ComposerError },
): Made {
  if (!result.ok) return { ok: false, error: refusalOf(result.error, wish) };
  const activity = result.value;
  const steps = activity.kind === 'jigsaw' ? explainJigsaw(activity).map(({ text }) => text) : [];
  return { ok: true, value: { activity, pictures: picturesOf(activity), steps } };
}
