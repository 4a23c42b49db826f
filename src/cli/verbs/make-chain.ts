// afterbell make chain
import type { Chain } from '#engine/activities/chain/chain.js';
import type { ChainRequest } from '#engine/activities/chain/chain-request.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { labelLine } from '#engine/activities/chain/labels.js';
import { PITCHES, SUPPLY_ORDERS } from '#engine/activities/supply.js';
import { type MadeOptions, printMade } from '../made.js';
import { readLocale, readNames, readWhole, readWord, readYears } from '../options.js';
import { readOwnSource } from '../own-list.js';
import { printText } from '../output.js';

interface Options extends MadeOptions {
  readonly years: string;
  readonly skills?: string;
  readonly own?: string;
  readonly number?: string;
  readonly cards: string;
  readonly pitch: string;
  readonly order: string;
  readonly locale: string;
}

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
  printMade(options, {
    stream: 'chains',
    most: 10_000,
    compose: (seed) => composeChain({ ...base, seed }),
    show: printChain,
  });
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
