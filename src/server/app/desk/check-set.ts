// Whether a set that someone hands in keeps its promise: its form is checked and its proof worked out again.
import { Chain } from '#api/chain.js';
import { Jigsaw } from '#api/jigsaw.js';
import { describeIssues, type Result } from '#api/problem.js';
import type { SetContent } from '#api/sets.js';
import { Trail } from '#api/trail.js';
import { proveChain } from '#engine/activities/chain/proof.js';
import { countTrueAssemblies, PROOF_NODE_LIMIT, proveJigsaw } from '#engine/activities/jigsaw/proof.js';
import { makePuzzle } from '#engine/activities/jigsaw/puzzle.js';
import { proveTrail } from '#engine/activities/trail/proof.js';
import { localeOf } from '#engine/numbers/locale.js';
import type { z } from 'zod';
import { refuse } from '../problems.js';

/** The content, unchanged, when all wrong ways show as its kind promises and its own proof says the same; a refusal otherwise. */
export function checkSet(content: SetContent): Result<SetContent> {
  switch (content.kind) {
    case 'chain':
      return checked(content, Chain, ({ cards, locale, proof }) => {
        const proved = proveChain(cards, localeOf(locale));
        return proved.fullRuns === 1 && proved.level !== 'open' && isSame(proved, proof);
      });
    case 'trail':
      return checked(content, Trail, ({ proof, ...trail }) => {
        // Tiles alike could change places unseen, and would make the proof endless.
        if (new Set(trail.tiles.map(({ edges }) => edges.join())).size < trail.tiles.length) return false;
        const proved = proveTrail(trail);
        return proved.arrangements === 1 && isSame(proved, proof);
      });
    case 'jigsaw':
      return checked(content, Jigsaw, ({ proof, ...jigsaw }) => {
        // A jigsaw that takes longer to prove than any that is made here is not one of ours.
        const count = countTrueAssemblies(makePuzzle(jigsaw), PROOF_NODE_LIMIT);
        return count.isComplete && count.found === 1 && isSame(proveJigsaw(jigsaw), proof);
      });
  }
}

function checked<T>(
  content: SetContent,
  schema: z.ZodType<T>,
  holds: (value: T) => boolean,
): Result<SetContent> {
  const parsed = schema.safeParse(content);
  if (!parsed.success)
    return refuse(
      'sets.form',
      `This is no whole ${content.kind}: ${describeIssues(parsed.error)}.`,
      'Make it again and keep it as it comes.',
    );
  if (!holds(parsed.data))
    return refuse(
      'sets.proof',
      `This ${content.kind} could be finished with a mistake in it, so it is not kept.`,
      'Make it again and keep it as it comes.',
    );
  return { ok: true, value: content };
}

/** Whether two proofs say the same, whatever the order of their fields. */
function isSame(proved: object, claimed: object): boolean {
  const plain = (proof: object) => JSON.stringify(Object.entries(proof).sort(([a], [b]) => (a < b ? -1 : 1)));
  return plain(proved) === plain(claimed);
}
