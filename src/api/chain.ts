// A composed chain on the wire: what `make chain --json` prints and `print` reads.
import { CHAIN_LEVELS, type Chain as EngineChain } from '#engine/activities/chain/chain.js';
import { FEWEST_CARDS, MOST_CARDS } from '#engine/activities/chain/chain-request.js';
import { PITCHES, SUPPLY_ORDERS } from '#engine/activities/pitch.js';
import { LOCALES } from '#engine/numbers/locale.js';
import { z } from 'zod';
import { Answer, Question } from './question.js';

const place = z
  .number()
  .int()
  .min(0)
  .max(MOST_CARDS - 1);

export const ChainCard = z.object({
  label: z.string().min(1).max(3),
  answer: Answer.nullable(),
  question: Question.nullable(),
  predicted: z.number().min(0).max(1).nullable(),
});

export const Chain: z.ZodType<EngineChain> = z
  .object({
    kind: z.literal('chain'),
    seed: z.number().int(),
    years: z.array(z.number().int().min(0).max(12)).min(1),
    pitch: z.enum(PITCHES),
    locale: z.enum(LOCALES),
    order: z.enum(SUPPLY_ORDERS),
    cards: z.array(ChainCard).min(FEWEST_CARDS).max(MOST_CARDS),
    printOrder: z.array(place),
    proof: z.object({
      fullRuns: z.number().int(),
      slips: z.number().int(),
      shownAtOnce: z.number().int(),
      level: z.enum(CHAIN_LEVELS),
      landings: z.array(z.object({ from: place, misconception: z.string(), to: place })),
      foundByForm: z.number().int(),
    }),
  })
  .refine(({ cards }) => cards.every((card, at) => (card.answer === null) === (at === 0)), {
    message: 'every strip but the first carries an answer',
    path: ['cards'],
  })
  .refine(({ cards }) => cards.every((card, at) => (card.question === null) === (at === cards.length - 1)), {
    message: 'every strip but the last carries a question',
    path: ['cards'],
  })
  .refine(
    ({ cards, printOrder }) =>
      new Set(printOrder).size === cards.length && printOrder.length === cards.length,
    {
      message: 'names each strip once',
      path: ['printOrder'],
    },
  ) as unknown as z.ZodType<EngineChain>;
