// Printed sets and the rota by command alone.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { afterbell, json, printed, refusal } from './command.js';

interface Shelf {
  readonly sets: readonly {
    kind: string;
    band: string;
    number: number;
    steps: string[];
    heldBy: string | null;
  }[];
}
interface Rota {
  readonly children: readonly {
    holds: { band: string; number: number } | null;
  }[];
}

const folder = mkdtempSync(join(tmpdir(), 'afterbell sëts '));
const env = { AFTERBELL_DATA: join(folder, 'data'), AFTERBELL_TODAY: '2026-05-08' };
afterAll(() => rmSync(folder, { recursive: true, force: true }));
beforeAll(() => {
  printed(['class', 'import', '-', '--name', 'Wattle', '--years', '3-4'], {
    input: 'Amara\nNoah\nPriya, Year 3\n',
    env,
  });
});

const names = ({ sets }: Shelf) => sets.map(({ kind, band, number }) => `${kind}-${band}-${number}`);
const held = ({ children }: Rota) => children.map(({ holds }) => holds && `${holds.band} ${holds.number}`);

const make = ['sets', 'make', '--kind', 'chain', '--band', 'middle'];

describe('sets', () => {
  it('are made, ticked several at once, and listed', () => {
    expect(names(json<Shelf>([...make, '--count', '3', '--seed', '3'], { env }))).toEqual(
      [1, 2, 3].map((number) => `chain-middle-${number}`),
    );
    const ticked = json<Shelf>(['sets', 'tick', 'chain-middle-1..3', '--step', 'boxed'], { env });
    expect(ticked.sets.map(({ steps }) => steps)).toEqual([['boxed'], ['boxed'], ['boxed']]);
  });

  it('that were made before are kept once their proof holds, and shown as they were made', () => {
    const made = printed(['make', 'trail', '--years', '1-2', '--rows', '3', '--columns', '3', '--json']);
    const keep = ['sets', 'keep', '-', '--band', 'lower'];
    expect(names(json<Shelf>(keep, { env, input: made }))).toEqual(['trail-lower-1']);
    expect(JSON.parse(printed(['sets', 'show', 'trail-lower-1'], { env }))).toEqual(JSON.parse(made));
    const twins = JSON.parse(made) as { tiles: unknown[] };
    twins.tiles[1] = twins.tiles[0];
    expect(refusal(keep, { env, input: JSON.stringify(twins) })).toMatch(/finished with a mistake/);
    expect(refusal(keep, { env, input: '{"kind":"board"}' })).toMatch(/no chain, trail or jigsaw/);
    expect(printed(['sets', 'remove', 'trail-lower-1'], { env })).toMatch(/off the shelf/);
  });

  it('are refused in one sentence when there are none such', () => {
    expect(refusal(['sets', 'show', 'chain-middle-99'], { env })).toMatch(/no set chain-middle-99/);
    expect(refusal(['sets', 'make', '--kind', 'kite', '--band', 'middle'])).toMatch(/--kind/);
    expect(refusal([...make, '--cards', '4.5'])).toMatch(/--cards/);
  });
});

describe('rota', () => {
  it('leaves out who is away, hands out, moves on, and takes back', () => {
    printed(['rota', 'away', 'Priya'], { env });
    const [amara, noah, priya] = held(json<Rota>(['rota', 'hand-out'], { env }));
    expect(new Set([amara, noah]).size).toBe(2);
    expect(priya).toBeNull();
    const later = held(json<Rota>(['rota', 'finished', 'amara'], { env }));
    expect(later[0]).toMatch(/^middle [123]$/);
    expect([amara, noah]).not.toContain(later[0]);
    expect(held(json<Rota>(['rota', 'undo'], { env }))).toEqual([amara, noah, null]);
  });

  it('gives by hand and goes to paper', () => {
    const tomorrow = { env: { ...env, AFTERBELL_TODAY: '2026-05-09' } };
    const shelf = json<Shelf>(['sets', 'list'], tomorrow);
    const free = shelf.sets.find(({ heldBy }) => heldBy === null)?.number;
    const given = json<Rota>(['rota', 'give', 'Priya', `chain-middle-${free}`], tomorrow);
    expect(held(given)[2]).toBe(`middle ${free}`);
    const out = join(folder, 'rota.pdf');
    expect(afterbell(['rota', 'print', '--out', out], tomorrow)).toMatchObject({ status: 0, stdout: '' });
    expect(readFileSync(out).subarray(0, 5).toString()).toBe('%PDF-');
    expect(refusal(['rota', 'finished', 'Nobody'], tomorrow)).toMatch(/No child is shown as “Nobody”/);
  });
});
