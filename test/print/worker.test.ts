// The built printer works in a thread of its own: the caller stays free, and the bytes are those of the sources.
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createHash } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { OPTIONS, print, printer, request } from './pdf-tools.js';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const BUILT = join(ROOT, 'dist/print/printer.js');

const SHEETS = request('sheet', { options: { ...OPTIONS, copies: 60 } });
const BROKEN = { ...request('poster'), boards: [{ ...request('poster').boards[0], rungs: null }] };

/** Runs in a process of its own, as the server does: a test runner's threads resolve modules in their own way. */
const PROGRAM = `
import { createHash } from 'node:crypto';
const { createPrinter } = await import(process.argv[1]);
const { sheets, first, broken } = JSON.parse(process.argv[2]);
const printer = createPrinter();
await printer.printBoard(first);
let turns = 0;
const ticking = setInterval(() => turns++, 1);
const printed = await printer.printBoard(sheets);
clearInterval(ticking);
const hash = createHash('sha256').update(printed.value.pdf).digest('hex');
const order = [];
await Promise.all(['poster', 'card', 'key'].map(async (document) => order.push([document, (await printer.printBoard({ ...first, document })).ok])));
const fault = await printer.printBoard(broken).then(() => 'none', (error) => error.name);
const after = (await printer.previewBoard(first)).ok;
await printer.close();
const closed = await printer.printBoard(first).then(() => 'none', (error) => error.message);
console.log(JSON.stringify({ turns, hash, order, fault, after, closed }));
`;

let told: Record<string, unknown>;

beforeAll(() => {
  // `npm test` has built everything; alone, this file builds what it needs.
  const compiler = join(ROOT, 'node_modules/typescript/bin/tsc');
  const built = spawnSync(process.execPath, [compiler, '-b', 'src/print'], { cwd: ROOT, encoding: 'utf8' });
  if (!existsSync(BUILT) || built.stdout.includes('src/print/')) throw new Error(built.stdout);
  cpSync(join(ROOT, 'src/print/templates'), join(ROOT, 'dist/print/templates'), { recursive: true });
  const jobs = JSON.stringify({ sheets: SHEETS, first: request('poster'), broken: BROKEN });
  const run = spawnSync(
    process.execPath,
    ['--input-type=module', '-e', PROGRAM, new URL(`file://${BUILT}`).href, jobs],
    {
      encoding: 'utf8',
      env: { ...process.env, NODE_OPTIONS: '' },
    },
  );
  if (run.status !== 0) throw new Error(run.stderr);
  told = JSON.parse(run.stdout) as Record<string, unknown>;
});

afterAll(() => printer.close());

it('prints in a thread: same bytes, and the caller is never held up', async () => {
  expect(told['turns']).toBeGreaterThan(20);
  const hash = createHash('sha256')
    .update((await print(SHEETS)).pdf)
    .digest('hex');
  expect(told['hash']).toBe(hash);
});

it('answers jobs in the order they came, also after one that cannot be printed', () => {
  expect(told['order']).toEqual([
    ['poster', true],
    ['card', false],
    ['key', true],
  ]);
});

it('survives a fault, and refuses jobs once closed', () => {
  expect(told).toMatchObject({ fault: 'Error', after: true, closed: 'the printer was closed' });
});
