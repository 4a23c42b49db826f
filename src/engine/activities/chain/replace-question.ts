// Another question for one place of a chain, while all other strips and the chain's promise stay as they are.
import { localeOf } from '../../numbers/locale.js';
import { foldText } from '../../questions/equivalence.js';
import { commonDifficulty } from '../../questions/question.js';
import { hashText, Rng } from '../../random/rng.js';
import { drawQuestions, planSupply, type SuppliedQuestion } from '../supply.js';
import type { Chain, ChainCard } from './chain.js';
import type { ChainRequest, ChainResult } from './chain-request.js';
import { stripsOnly, withUsualSuccess } from './compose.js';
import { proveChain } from './proof.js';

/** Draws before the chain is said to have room for nothing else there. */
const MOST_DRAWS = 300;
/** How far, in logits, a question may stand out of the order from easy to hard when nothing fits it exactly. */
const SLACK = 0.35;

/**
 * The chain with another question on the strip at `place` (from 0), its answer on the next strip, and the proof made new.
 * The level of the proof never falls. `request` is the one the chain was composed from; `turn` counts the wishes, so that
 * asking again brings something else. Errors: a place without a question, nothing that fits there.
 */
export function replaceQuestion(
  chain: Chain,
  place: number,
  request: ChainRequest,
  turn: number,
): ChainResult {
  const old = chain.cards[place]?.question;
  if (!old) {
    return {
      ok: false,
      error: {
        code: 'chain.place',
        message: `Strip ${place + 1} of this chain has no question.`,
        hint: `Choose a strip from 1 to ${chain.cards.length - 1}.`,
      },
    };
  }
  const seed = hashText(`${request.seed}/${place}/${turn}`) | 0;
  const due = request.due ? { due: new Rng(seed).fork('due').shuffle(request.due) } : {};
  const plan = planSupply(stripsOnly(withUsualSuccess({ ...request, ...due, seed }), chain.cards.length));
  if (!plan.ok) return plan;
  const taken = new Set(chain.cards.flatMap(({ question }) => (question ? [foldText(question.text)] : [])));
  let near: Chain | null = null;
  for (const drawn of drawQuestions(plan.value, MOST_DRAWS)) {
    if (taken.has(foldText(drawn.question.text))) continue;
    const strays = chain.order === 'graded' ? strayFromOrder(chain, place, drawn.common) : 0;
    if (strays > SLACK || (strays > 0 && near)) continue;
    const made = withQuestion(chain, place, drawn);
    if (!made) continue;
    if (strays === 0) return { ok: true, value: made };
    near = made;
  }
  if (near) return { ok: true, value: near };
  return {
    ok: false,
    error: {
      code: 'chain.swap',
      message: 'Nothing else fits on this strip while the others stay.',
      hint: 'Swap another strip first, or make another chain.',
    },
  };
}

/** How far a difficulty lies outside its neighbours', in logits; 0 when it lies between them. */
function strayFromOrder(chain: Chain, place: number, common: number): number {
  const before = chain.cards[place - 1]?.question;
  const after = chain.cards[place + 1]?.question;
  return Math.max(
    0,
    before ? commonDifficulty(before) - common : 0,
    after ? common - commonDifficulty(after) : 0,
  );
}

/** The chain with that question, or null when it would not keep its promise. */
function withQuestion(chain: Chain, place: number, drawn: SuppliedQuestion): Chain | null {
  const { question, predicted } = drawn;
  const cards = chain.cards.map((card, at): ChainCard => {
    if (at === place) return { ...card, question, predicted };
    return at === place + 1 ? { ...card, answer: question.answer } : card;
  });
  const proof = proveChain(cards, localeOf(chain.locale));
  const isKept =
    proof.level === 'at once' || (proof.level === 'single run' && chain.proof.level !== 'at once');
  return isKept && proof.foundByForm <= Math.max(1, chain.proof.foundByForm)
    ? { ...chain, cards, proof }
    : null;
}
