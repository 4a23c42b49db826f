// afterbell make chain
import type { Chain } from '#engine/activities/chain/chain.js';
import type { ChainRequest } from '#engine/activities/chain/chain-request.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { labelLine } from '#engine/activities/chain/labels.js';
import { PITCHES, SUPPLY_ORDERS } from '#engine/activities/supply.js';
import { Rng } from '#engine/random/rng.js';
import { valueOf } from '../failure.js';
import { readLocale, readNames, readWhole, readWord, readYears } from '../options.js';
import { readOwnSource } from '../own-list.js';
import { printJson, printText } from '../output.js';

interface Options {
  readonly years: string;
  readonly skills?: string;
  readonly own?: string;
  readonly number?: string;
  readonly cards: string;
  readonly pitch: string;
  readonly order: string;
  readonly count?: string;
  readonly seed: string;
  readonly locale: string;
  readonly json?: boolean;
}

const LARGEST_SEED = 2_147_483_647;

export function makeChain(options: Options): void {
  const locale = readLocale(options.locale);
  const base: Omit<ChainRequest, 'seed'> = {
    years: readYears('--years', options.years),
    locale: locale.id,
    cards: readWhole('--cards', options.cards, 6, 16),
    pitch: readWord('--pitch', options.pitch, PITCHES),
    order: readWord('--order', options.order, SUPPLY_ORDERS),
    ...(options.skills === undefined ? {} : { skills: readNames('--skills', options.skills) }),
    ...readOwnSource(options, locale),
  };
  const seed = readWhole('--seed', options.seed, 0, LARGEST_SEED);
  if (options.count === undefined) {
    const chain = valueOf(composeChain({ ...base, seed }));
    if (options.json) printJson(chain);
    else printChain(chain);
    return;
  }
  const count = readWhole('--count', options.count, 1, 10_000);
  const rng = new Rng(seed).fork('chains');
  const items = Array.from({ length: count }, () =>
    valueOf(composeChain({ ...base, seed: rng.int(0, LARGEST_SEED) })),
  );
  if (options.json) printJson({ items });
  else for (const chain of items) printChain(chain);
}

function printChain({ cards, seed, proof }: Chain): void {
  const width = Math.max(6, ...cards.map(({ answer }) => answer?.text.length ?? 0));
  const lines = cards.map(
    ({ label, answer, question }) =>
      `  ${label}  ${(answer?.text ?? 'start').padStart(width)}  |  ${question?.text ?? 'finish'}`,
  );
  const shown =
    proof.level === 'at once'
      ? `each of the ${proof.slips} typical slips shows at once`
      : `each of the ${proof.slips} typical slips shows, ${proof.shownAtOnce} of them at once and the others by strips left over`;
  const letters = labelLine(cards.map(({ label }) => label));
  printText(
    [
      `A chain of ${cards.length} strips (seed ${seed}): ${shown}.`,
      ...lines,
      `  Letters in order: ${letters}`,
      '',
    ].join('\n'),
  );
}
