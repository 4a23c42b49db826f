// make jigsaw: many seeds for each age, of every kind of rows, judged from the JSON alone; two solvers of other makers count
// the assemblies too.
import process from 'node:process';
import { describe, expect, it } from 'vitest';
import { json, printed, refusal } from './command.js';
import { jigsawProblems } from './jigsaw-checker.js';
import { isRowTrue, type Jigsaw } from './jigsaw-rows.js';
import { countAssemblies } from './jigsaw-search.js';
import { countByDancingLinks, countByMinisat } from './jigsaw-solvers.js';

const AGES = ['1-2', '3-4', '5-6'] as const;
const SEEDS = Number(process.env['AFTERBELL_SEEDS'] ?? 21);

interface Asked {
  readonly kind: string;
  readonly rows: number;
  readonly columns: number;
  readonly level: string;
}

/** Every kind, at a usual size first; a full run goes through all sizes, a lean one through the first few for each age. */
const ASKED: readonly Asked[] = [
  ['mixed', 5, 7, 'easy'],
  ['sentences', 4, 5, 'middle'],
  ['missing', 5, 7, 'easy'],
  ['equivalents', 5, 7, 'middle'],
  ['families', 5, 7, 'hard'],
  ['steps', 5, 7, 'middle'],
  ['repeats', 4, 6, 'hard'],
  ['sentences', 5, 7, 'hard'],
  ['mixed', 6, 8, 'middle'],
  ['missing', 6, 9, 'middle'],
  ['equivalents', 4, 8, 'easy'],
  ['families', 5, 9, 'easy'],
  ['steps', 6, 9, 'hard'],
  ['repeats', 6, 8, 'middle'],
  ['mixed', 3, 5, 'easy'],
  ['sentences', 6, 9, 'middle'],
  ['missing', 4, 6, 'easy'],
  ['equivalents', 8, 10, 'hard'],
  ['families', 4, 6, 'middle'],
  ['steps', 3, 5, 'easy'],
  ['repeats', 5, 7, 'easy'],
  ['mixed', 8, 10, 'hard'],
  ['sentences', 8, 10, 'easy'],
  ['families', 8, 10, 'middle'],
  ['steps', 8, 10, 'easy'],
].map(([kind, rows, columns, level]) => ({ kind, rows, columns, level }) as Asked);

/** Up to so many cells, assemblies with numbers and signs anywhere are counted too. */
const WHOLE_SEARCH = 48;

function jigsawsOf(years: string, { kind, rows, columns, level }: Asked, count: number): readonly Jigsaw[] {
  const size = ['--rows', String(rows), '--columns', String(columns)];
  const args = ['make', 'jigsaw', '--years', years, '--kind', kind, ...size, '--level', level];
  return json<{ items: Jigsaw[] }>([...args, '--count', String(count), '--seed', '1']).items;
}

const sample = new Map<string, readonly Jigsaw[]>();

describe('make jigsaw', () => {
  it.each(AGES)(`keeps every promise in ${SEEDS} jigsaws for years %s`, (years) => {
    const chosen = ASKED.slice(0, SEEDS < 100 ? 7 : ASKED.length);
    const each = Math.ceil(SEEDS / chosen.length);
    const problems: string[] = [];
    let made = 0;
    for (const asked of chosen) {
      const jigsaws = jigsawsOf(years, asked, each);
      sample.set(`${years} ${asked.kind}`, jigsaws);
      made += jigsaws.length;
      for (const jigsaw of jigsaws) {
        const isWhole = asked.rows * asked.columns <= WHOLE_SEARCH;
        for (const problem of jigsawProblems(jigsaw, asked, isWhole))
          problems.push(`${JSON.stringify(asked)} seed ${jigsaw.seed}: ${problem}`);
      }
    }
    expect(problems).toEqual([]);
    expect(made).toBeGreaterThanOrEqual(SEEDS);
  });

  it('has one assembly by MiniSat and by dancing links too', () => {
    const jigsaws = ['3-4 sentences', '1-2 equivalents', '5-6 steps', '3-4 repeats'].flatMap((key) =>
      (sample.get(key) ?? []).slice(0, 2),
    );
    expect(jigsaws).toHaveLength(8);
    for (const jigsaw of jigsaws) {
      expect(countByMinisat(jigsaw, 2), `seed ${jigsaw.seed}`).toBe(1);
      const { fits, assemblies } = countByDancingLinks(jigsaw, 100_000);
      expect(assemblies, `seed ${jigsaw.seed}`).toBeLessThanOrEqual(1);
      if (fits < 100_000) expect(assemblies, `seed ${jigsaw.seed}`).toBe(1);
    }
  });

  it('all counters agree on jigsaws with several assemblies', () => {
    let several = 0;
    for (const jigsaw of [...(sample.get('3-4 mixed') ?? []), ...(sample.get('1-2 missing') ?? [])]) {
      // With nothing but blanks printed, several assemblies are often true.
      const open: Jigsaw = {
        ...jigsaw,
        given: jigsaw.given.filter(
          ([row, column]) => jigsaw.cells[row * jigsaw.columns + column]?.text === '',
        ),
      };
      const count = countAssemblies(open, { most: 4, byKind: true });
      if (count > 1) several++;
      expect(countByMinisat(open, 4), `seed ${jigsaw.seed}`).toBe(count);
    }
    expect(several).toBeGreaterThan(1);
  });

  it('makes rows from chosen skills', () => {
    const args = ['make', 'jigsaw', '--years', '3-4', '--skills', 'add.2d2d,mult.table.5', '--columns', '5'];
    const { items } = json<{ items: Jigsaw[] }>([...args, '--count', '5']);
    for (const jigsaw of items) {
      expect(jigsawProblems(jigsaw, { rows: 5, columns: 5, level: 'easy' })).toEqual([]);
      const signs = new Set(
        jigsaw.cells.map(({ expression }) => expression).filter((one) => '+-*/'.includes(one)),
      );
      expect([...signs].filter((sign) => sign === '-')).toEqual([]);
    }
  });

  it('prints the same bytes for the same arguments, and others for another seed', () => {
    const args = ['make', 'jigsaw', '--years', '3-4', '--count', '2', '--json'];
    expect(printed(args)).toBe(printed(args));
    expect(printed(args)).not.toBe(printed([...args, '--seed', '2']));
  });

  it('tells a person the rows, the printed cells and how it comes together', () => {
    const text = printed(['make', 'jigsaw', '--years', '2', '--steps']);
    expect(text).toMatch(
      /^A jigsaw of \d+ pieces, 5 x 7, easy \(seed 1\): one assembly makes every row true/,
    );
    expect(text.match(/^ {2}\d+\. .*iece [A-Z].*\.$/gm)?.length).toBeGreaterThan(8);
  });

  it.each([
    [['--rows', '9'], '--rows 9'],
    [['--columns', '4'], '--columns 4'],
    [['--level', 'fierce'], '--level fierce'],
    [['--kind', 'riddles'], '--kind riddles'],
    [['--skills', 'no.such'], '“no.such”'],
    [['--skills', 'shape.name'], '(shape.name) makes no rows'],
    [['--skills', 'add.2d2d', '--kind', 'steps'], 'not made from skills'],
    [['--rows', '4', '--columns', '6', '--level', 'hard'], 'takes at least 30 cells'],
  ])('refuses %j in one sentence', (more, part) => {
    expect(refusal(['make', 'jigsaw', '--years', '2', ...more])).toContain(part);
  });

  it('judges rows as the contract says', () => {
    const row = (text: string) =>
      text
        .split(' ')
        .map((one) => (one === '_' ? { text: '', expression: '' } : { text: one, expression: one }));
    expect(isRowTrue(row('3 + 4 == 7 _ 1/2 < 0.75'), 'sentences')).toBe(true);
    expect(isRowTrue(row('3 + 4 == 7 == 8 - 1'), 'sentences')).toBe(true);
    expect(isRowTrue(row('3 + 4 == 7 _ 3 4 == 34'), 'sentences')).toBe(false);
    expect(isRowTrue(row('0.1 0.4 0.7 1'), 'steps')).toBe(true);
    expect(isRowTrue(row('1/3 2/3 1 4/3'), 'steps')).toBe(true);
    expect(isRowTrue(row('2 2 2 2'), 'steps')).toBe(false);
    expect(isRowTrue(row('A B B A B'), 'repeats')).toBe(true);
    expect(isRowTrue(row('A B C D A'), 'repeats')).toBe(false);
  });
});
