// Money.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

export const MONEY_MISCONCEPTIONS = {
  'money.coins-counted': {
    does: 'counts how many pieces of money there are, whatever each one is worth',
    help: 'Touch each coin and say its value, then the running total: 20, 40, 50.',
    source: COMMON,
  },
  'money.piece-missed': {
    does: 'leaves one of the pieces out of the total',
    help: 'Sort from the one worth most to the one worth least and tick each piece off as it is added.',
    source: COMMON,
  },
  'money.small-pieces': {
    does: 'uses pieces worth less where one worth more fits',
    help: 'Ask each time: which coin or note worth the most still fits?',
    source: COMMON,
  },
  'money.unit-ignored': {
    does: 'compares or joins the numbers and overlooks the units they are in',
    help: 'Write both amounts in the same unit first.',
    source: COMMON,
  },
  'money.large-unit-wins': {
    does: 'takes the amount in the larger unit to be more, whatever the numbers say',
    help: 'Write both amounts in the small unit first.',
    source: COMMON,
  },
  'money.factor-ten': {
    does: 'moves between the small and the large unit by ten instead of a hundred',
    help: 'Count by tens of the small unit until it makes one whole: 10, 20, up to 100.',
    source: COMMON,
  },
  'money.tenths-as-cents': {
    does: 'reads one digit after the point as if it stood in the second place',
    help: 'Write a zero after it: money has two digits after the point.',
    source: 'Martinie 2007 (rules that children apply to decimals, one of them from money)',
  },
  'money.zero-dropped': {
    does: 'leaves out the zero that keeps the place of the tens',
    help: 'Say both places: no tens and five ones, so 05.',
    source: COMMON,
  },
  'money.change-apart': {
    does: 'counts the large and the small unit up separately and so gives one whole too much',
    help: 'Count up in one line: first to the next whole amount, then on to what was paid.',
    source: COMMON,
  },
  'money.change-larger-less-smaller': {
    does: 'takes the smaller from the larger in each part instead of exchanging a whole',
    help: 'Count up from the price instead of taking away.',
    source: 'Brown & VanLehn 1980 (smaller from larger), seen here in money',
  },
  'money.cost-not-change': {
    does: 'gives what is spent instead of what is left',
    help: 'Underline the question and ask: is this what goes to the shop, or what comes back?',
    source: COMMON,
  },
  'money.whole-not-carried': {
    does: 'does not carry the whole that the small units make together',
    help: 'Swap every hundred small units for one whole before writing the total.',
    source: COMMON,
  },
  'money.small-unit-unchanged': {
    does: 'multiplies or shares only the whole part and keeps the rest as it was',
    help: 'Work on both parts and put them together at the end.',
    source: COMMON,
  },
  'money.rest-dropped': {
    does: 'works with the whole units only and drops what is left of them',
    help: 'Change what is left into the small unit and work with that too.',
    source: COMMON,
  },
  'money.multiplied-not-shared': {
    does: 'multiplies where the amount has to be shared out',
    help: 'Ask first: will one share be more or less than all of it?',
    source: COMMON,
  },
  'money.added-not-multiplied': {
    does: 'adds the two numbers where one amount is needed several times',
    help: 'Draw one box for each item and write the price in every box.',
    source: COMMON,
  },
  'money.rounds-down': {
    does: 'always goes down to the whole below instead of to the nearest',
    help: 'Put the amount on a number line between the two wholes and see which is closer.',
    source: COMMON,
  },
  'money.rounds-up': {
    does: 'always goes up to the next whole instead of to the nearest',
    help: 'Put the amount on a number line between the two wholes and see which is closer.',
    source: COMMON,
  },
  'money.rounds-other-place': {
    does: 'rounds to another place than the one asked for',
    help: 'Underline the place in the question before rounding.',
    source: COMMON,
  },
  'money.price-only': {
    does: 'compares the prices and overlooks how much each one buys',
    help: 'Find what one item costs, or what the same number of items would cost in both shops.',
    source: COMMON,
  },
  'money.bigger-pack': {
    does: 'takes the bigger pack to be the better buy without working it out',
    help: 'Find what the same number of items costs in small packs, then compare.',
    source: COMMON,
  },
  'money.discount-is-price': {
    does: 'gives the amount taken off instead of the new price',
    help: 'Draw a bar for the old price and cut off the discount: what is left is the new price.',
    source: COMMON,
  },
  'money.percent-as-units': {
    does: 'takes the percentage as an amount of money',
    help: 'Say it aloud as “out of every hundred” and find that part first.',
    source: COMMON,
  },
} as const satisfies Record<string, Misconception>;
