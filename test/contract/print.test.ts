// print: boards from make, piped, as every document on every paper; judged by poppler.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { afterbell, printed, refusal, statusWithLateInput } from './command.js';

const folder = mkdtempSync(join(tmpdir(), 'afterbell prïnt '));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const BOARD = ['make', 'board', '--number', '47', '--years', '4-5', '--json'];

/** Width x height in points, by ISO 216 and ANSI. */
const SIZES = { A4: [595.28, 841.89], A3: [841.89, 1190.55], Letter: [612, 792] } as const;

interface Info {
  readonly pages: number;
  readonly size: readonly number[];
}

function infoOf(path: string): Info {
  const told = execFileSync('pdfinfo', [path], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  const size = /Page size: +([\d.]+) x ([\d.]+)/.exec(told)?.slice(1).map(Number) ?? [];
  return { pages: Number(/Pages: +(\d+)/.exec(told)?.[1]), size: [...size].sort((a, b) => a - b) };
}

/** Prints what `make` gave through a pipe; the PDF's path. */
function print(input: string, name: string, ...options: readonly string[]): string {
  const path = join(folder, `${name}.pdf`);
  const { status, stdout, stderr } = afterbell(['print', '-', '--out', path, ...options], { input });
  expect({ status, stdout }, stderr).toEqual({ status: 0, stdout: '' });
  expect(stderr).toMatch(/\d+ pages?/);
  expect(readFileSync(path).subarray(0, 5).toString('latin1')).toBe('%PDF-');
  return path;
}

const textOf = (path: string) => execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' });

describe('print', () => {
  const board = printed(BOARD);

  it.each([
    ['A4', ['board', 'pupil', 'slips', 'key', 'relief', 'practice']],
    ['A3', ['board', 'key']],
    ['Letter', ['board', 'slips']],
  ] as const)('prints on %s', (paper, documents) => {
    const [width, height] = SIZES[paper];
    for (const document of documents) {
      const { pages, size } = infoOf(print(board, document, '--document', document, '--paper', paper));
      expect(pages, document).toBeGreaterThanOrEqual(1);
      expect(Math.abs((size[0] ?? 0) - width), `${document} ${size}`).toBeLessThan(0.5);
      expect(Math.abs((size[1] ?? 0) - height), `${document} ${size}`).toBeLessThan(0.5);
    }
  });

  it('prints the whole kit when no document is named, the same bytes every time', () => {
    const kit = print(board, 'kit');
    const again = print(board, 'kit-again');
    expect(readFileSync(kit).equals(readFileSync(again))).toBe(true);
    expect(infoOf(kit).pages).toBeGreaterThanOrEqual(4);
    expect(textOf(kit)).toContain('47');
  });

  it('prints several boards and loose questions', () => {
    const two = printed([...BOARD, '--count', '2']);
    const one = infoOf(print(board, 'one', '--document', 'key')).pages;
    expect(infoOf(print(two, 'two', '--document', 'key')).pages).toBeGreaterThan(one);
    const questions = printed(['questions', '--skill', 'sub.2d2d', '--count', '30', '--json']);
    expect(textOf(print(questions, 'questions'))).toMatch(/\d+ − \d+/);
    expect(
      refusal(['print', '-', '--document', 'slips', '--out', join(folder, 'x.pdf')], { input: questions }),
    ).toMatch(/practice/);
  });

  it('prints the slips asked for, six or eight to a page', () => {
    for (const perPage of [6, 8]) {
      const path = print(
        board,
        'slips',
        '--document',
        'slips',
        '--per-page',
        String(perPage),
        '--copies',
        '24',
      );
      expect(infoOf(path).pages).toBe(24 / perPage);
    }
  });

  it('prints chains as numbered sets: strips, labels, keys, sheets to cut, or all of it', () => {
    const chains = printed(['make', 'chain', '--years', '3-4', '--count', '10', '--json']);
    const first = ['--first-set', '11', '--label', 'Blue box'];
    const cards = print(chains, 'cards', '--document', 'cards', ...first);
    expect(infoOf(cards).pages).toBe(20);
    for (const set of ['set 11', 'set 20', 'Blue box']) expect(textOf(cards)).toContain(set);
    expect(infoOf(print(chains, 'fronts', '--document', 'cards', '--no-backs', '--by-stack')).pages).toBe(10);
    expect(textOf(print(chains, 'labels', '--document', 'labels', '--names', 'Ari, Bea'))).toMatch(
      /Ari[^]*Bea/,
    );
    const kit = textOf(print(printed(['make', 'chain', '--years', '1-2', '--json']), 'chain-kit'));
    for (const word of ['Start', 'Finish', 'check letters', 'Cut out the strips'])
      expect(kit).toContain(word);
    const wrong = ['print', '-', '--document', 'tiles', '--out', join(folder, 'x.pdf')];
    expect(refusal(wrong, { input: chains })).toMatch(/cards, labels, pupil, key, kit/);
  });

  it('prints trails as numbered sets: board and tiles, labels, keys, sheets to cut, or all of it', () => {
    const trails = printed(['make', 'trail', '--years', '3-4', '--count', '2', '--json']);
    const tiles = print(trails, 'tiles', '--document', 'tiles', '--first-set', '11', '--label', 'Blue box');
    expect(infoOf(tiles).pages).toBe(8);
    for (const words of ['Trail 11', 'Trail 12', 'Blue box']) expect(textOf(tiles)).toContain(words);
    const kit = textOf(print(trails, 'trail-kit'));
    for (const words of ['16 tiles', 'arrowhead up', 'Cut out the tiles', 'the mats laid'])
      expect(kit).toContain(words);
    const wrong = ['print', '-', '--document', 'cards', '--out', join(folder, 'x.pdf')];
    expect(refusal(wrong, { input: trails })).toMatch(/tiles, labels, pupil, key, kit/);
  });

  it('waits for standard input that comes late', async () => {
    const chain = printed(['make', 'chain', '--years', '3', '--cards', '6', '--json']);
    const args = ['print', '-', '--document', 'key', '--out', join(folder, 'late.pdf')];
    expect(await statusWithLateInput(args, chain, 3000)).toBe(0);
  });

  it('leaves no half-written file behind', () => {
    expect(readdirSync(folder).filter((name) => !name.endsWith('.pdf'))).toEqual([]);
  });
});
