// make chain: many seeds for each age, judged from the JSON alone; other solvers and a simulated child work them too.
import process from 'node:process';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../support/seeded-random.js';
import { arrowsOf, type Chain, type Card, chainProblems, countRuns } from './chain-checker.js';
import {
  catalogueMethod,
  DECIMAL_RULES,
  type Ending,
  PRINTED_METHODS,
  SUBTRACTION_RULES,
  type WrongMethod,
  work,
} from './chain-child.js';
import { countRunsByMinisat } from './chain-runs-minisat.js';
import { json, printed, refusal } from './command.js';

const AGES = ['1-2', '3-4', '5-6'] as const;
const SEEDS = Number(process.env['AFTERBELL_SEEDS'] ?? 40);

const made = new Map<string, readonly Chain[]>();
function chainsOf(years: string, cards = 10, order = 'graded', count = SEEDS): readonly Chain[] {
  const key = `${years} ${cards} ${order} ${count}`;
  const known = made.get(key);
  if (known) return known;
  const args = ['make', 'chain', '--years', years, '--cards', String(cards), '--order', order];
  const { items } = json<{ items: Chain[] }>([...args, '--count', String(count), '--seed', '1']);
  made.set(key, items);
  return items;
}

describe('make chain', () => {
  it.each(AGES)(`keeps every promise in ${SEEDS} chains for years %s`, (years) => {
    for (const [cards, order] of [
      [10, 'graded'],
      [8, 'mixed'],
    ] as const) {
      const chains = chainsOf(years, cards, order);
      expect(chains).toHaveLength(SEEDS);
      expect(
        chains.flatMap((chain) =>
          chainProblems(chain, { cards, order }).map((one) => `seed ${chain.seed}: ${one}`),
        ),
      ).toEqual([]);
      expect(new Set(chains.map((chain) => JSON.stringify(chain.cards))).size).toBe(SEEDS);
    }
  });

  it('serves 6 and 16 strips, each pitch and chosen skills', () => {
    for (const [cards, more] of [
      [6, ['--pitch', 'lower']],
      [16, ['--pitch', 'upper', '--order', 'mixed']],
      [12, ['--skills', 'time.clock.half,mult.table.7,meas.scale']],
    ] as const) {
      const chain = json<Chain>(['make', 'chain', '--years', '3-4', '--cards', String(cards), ...more]);
      const order = more.includes('mixed' as never) ? 'mixed' : 'graded';
      expect(chainProblems(chain, { cards, order })).toEqual([]);
    }
  });

  it('prints the same bytes for the same arguments, and others for another seed', () => {
    const args = ['make', 'chain', '--years', '3-4', '--count', '3', '--json'];
    expect(printed(args)).toBe(printed(args));
    expect(printed(args)).not.toBe(printed([...args, '--seed', '2']));
  });

  it('tells a person what a chain is and how its letters run', () => {
    const text = printed(['make', 'chain', '--years', '2']);
    expect(text).toMatch(/^A chain of 10 strips \(seed 1\): each of the \d+ typical slips shows/);
    expect(text).toMatch(/Letters in order: [A-Z]{3} [A-Z]{3} [A-Z]{3} [A-Z]/);
  });

  it.each([
    [['--cards', '5'], '--cards 5'],
    [['--skills', 'no.such'], '“no.such”'],
    [['--skills', ','], '--skills'],
    [['--order', 'wild'], '--order wild'],
    [['--skills', 'add.bonds10', '--cards', '16'], 'Choose 10 strips, or add a skill such as'],
  ])('refuses %j in one sentence', (more, part) => {
    expect(refusal(['make', 'chain', '--years', '2', ...more])).toContain(part);
  });
});

describe('runs through a chain', () => {
  it('are as many by MiniSat as by counting, also where slips open some', () => {
    const random = randomFrom(5);
    const counts: number[] = [];
    for (const chain of AGES.flatMap((years) => chainsOf(years).slice(0, 6))) {
      const arrows = arrowsOf(chain.cards);
      expect(countRunsByMinisat(arrows, 2)).toBe(1);
      const denser = arrows.map((to, from) =>
        from === arrows.length - 1 ? [] : [...new Set([...to, 1 + random(8), 1 + random(8)])],
      );
      counts.push(countRuns(denser));
      expect(countRunsByMinisat(denser, 500)).toBe(countRuns(denser));
    }
    expect(Math.max(...counts)).toBeGreaterThan(1);
  });
});

describe('a child with wrong methods', () => {
  it('subtracts and compares as the published examples do', () => {
    const examples: readonly (readonly [rule: string, a: number, b: number, gives: number])[] = [
      ['smaller-from-larger', 63, 29, 46],
      ['smaller-from-larger', 143, 24, 121],
      ['borrow-no-decrement', 143, 28, 125],
      ['borrow-no-decrement', 62, 44, 28],
      ['borrow-from-zero', 1300, 522, 878],
      ['borrow-from-zero', 4002, 5, 4097],
      ['borrow-across-zero', 305, 9, 206],
      ['borrow-across-zero', 4002, 5, 3007],
      ['borrow-across-zero + zero-minus-n-is-n', 602, 327, 225],
      ['borrow-across-zero + zero-minus-n-is-zero', 804, 456, 308],
      ['stops-borrow-at-zero + zero-minus-n-is-n', 703, 678, 175],
      ['zero-minus-n-is-n', 709, 352, 457],
      ['zero-minus-n-is-zero', 804, 462, 402],
    ];
    for (const [rule, a, b, gives] of examples)
      expect(SUBTRACTION_RULES[rule]?.(a, b), `${rule}: ${a} - ${b}`).toBe(gives);
    const larger = (rule: string, a: string, b: string) => {
      const seems = DECIMAL_RULES[rule] ?? Number;
      return seems(a) > seems(b) ? a : b;
    };
    expect(larger('whole-number', '4.8', '4.63')).toBe('4.63');
    expect(larger('longer-is-larger', '2.65', '2.6498')).toBe('2.6498');
    expect(larger('shorter-is-larger', '3.8', '3.214')).toBe('3.8');
    expect(larger('zero', '4.8', '4.63')).toBe('4.63');
  });

  it.each(AGES)('never finishes unnoticed in years %s, and is nearly always stopped at once', (years) => {
    const random = randomFrom(9);
    const endings: Record<Ending, number> = { right: 0, 'at once': 0, late: 0, unnoticed: 0 };
    // Four chains for each seed, in five shapes, each worked by one of four kinds of children in turn.
    const shapes = [
      [10, 'graded'],
      [8, 'mixed'],
      [6, 'mixed'],
      [12, 'graded'],
      [16, 'mixed'],
    ] as const;
    for (const [cards, order] of shapes)
      chainsOf(years, cards, order, (4 * SEEDS) / shapes.length).forEach((chain, at) => {
        const methods = childAt(at, chain.cards, random);
        endings[work(chain.cards, methods, (count) => random(count - 1))]++;
      });
    const wrong = endings['at once'] + endings.late + endings.unnoticed;
    expect(endings.unnoticed).toBe(0);
    expect(wrong).toBeGreaterThan(SEEDS);
    expect(endings['at once'] / wrong, JSON.stringify(endings)).toBeGreaterThanOrEqual(0.95);
    if (process.env['AFTERBELL_SEEDS']) process.stdout.write(`years ${years}: ${JSON.stringify(endings)}\n`);
  });

  it('would finish unnoticed where three slips exchange two stretches', () => {
    const card = (at: number, slipsTo?: number): Card => ({
      label: String(at),
      answer: at === 0 ? null : { kind: 'number', text: String(at), value: String(at) },
      question:
        at === 6
          ? null
          : {
              text: `${at} + 1`,
              year: 1,
              difficulty: 0,
              figure: null,
              answer: { kind: 'number', text: String(at + 1), value: String(at + 1) },
              slips:
                slipsTo === undefined
                  ? []
                  : [{ misconception: 'm', text: String(slipsTo), value: String(slipsTo) }],
            },
    });
    const strips = [card(0, 3), card(1), card(2, 5), card(3), card(4, 1), card(5), card(6)];
    expect(work(strips, [catalogueMethod('m')], () => 0)).toBe('unnoticed');
    expect(countRuns(arrowsOf(strips))).toBe(2);
  });
});

/** A child: every published method at once, one misconception of the catalogue, three, or all there are. */
function childAt(at: number, strips: readonly Card[], random: (most: number) => number): WrongMethod[] {
  const slips = strips.flatMap(({ question }) => question?.slips ?? []);
  const known = [...new Set(slips.map(({ misconception }) => misconception))];
  const one = () => catalogueMethod(known[random(known.length - 1)] ?? '');
  if (at % 4 === 0) return [...PRINTED_METHODS];
  if (at % 4 === 1) return [one()];
  return at % 4 === 2 ? [one(), one(), one()] : [...PRINTED_METHODS, ...known.map(catalogueMethod)];
}
