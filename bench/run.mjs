// npm run bench [name…] [--record]: runs the benchmarks on the built program, each in a process of its own, and prints one
// table. With --record it also writes what was measured into docs/benchmarks.md, between the markers there.
import { fork } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism, cpus, loadavg, release, totalmem, type } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { ensureDependencies } from '../scripts/setup/dependencies.mjs';
import { isBuilt } from '../scripts/setup/freshness.mjs';
import { ROOT, run } from '../scripts/setup/run.mjs';

const PAGE = join(ROOT, 'docs', 'benchmarks.md');
const NAMES = readdirSync(join(ROOT, 'bench'))
  .filter((file) => file.endsWith('.mjs') && file !== 'run.mjs')
  .map((file) => file.slice(0, -'.mjs'.length));

const isRecorded = process.argv.includes('--record');
const wanted = process.argv.slice(2).filter((word) => word !== '--record');
const unknown = wanted.filter((name) => !NAMES.includes(name));
if (unknown.length > 0) {
  console.error(`There is no benchmark ${unknown.join(', ')}. There are ${NAMES.join(', ')}.`);
  process.exit(2);
}

ensureDependencies();
if (!isBuilt() && run(process.execPath, ['scripts/build.mjs']) !== 0) process.exit(1);

function runBenchmark(name) {
  return new Promise((resolve) => {
    const rows = [];
    const child = fork(join(ROOT, 'bench', `${name}.mjs`), { stdio: ['ignore', 2, 2, 'ipc'] });
    child.on('message', (row) => rows.push(row));
    child.once('close', (status) => resolve({ rows, status }));
  });
}

const load = () => loadavg()[0].toFixed(1);
const cell = (text) => String(text).replaceAll('|', '\\|');

function tableOf({ rows, loadBefore }) {
  const verdict = ({ met }) => (met === null ? '' : met ? 'yes' : '**no**');
  const lines = rows.map(
    (row) => `| ${[row.what, row.measured, row.target, verdict(row), row.beside].map(cell).join(' | ')} |`,
  );
  return [
    '| what | measured | target | met | beside it |',
    '| --- | --- | --- | --- | --- |',
    ...lines,
    '',
    `Load of the machine when it began: ${loadBefore}.`,
  ].join('\n');
}

function machine() {
  const [processor] = cpus();
  const gigabytes = Math.round(totalmem() / 1024 ** 3);
  return [
    `${availableParallelism()} cores, ${processor?.model.trim() ?? 'unknown processor'}, ${gigabytes} GB of memory, ${type()} ${release()},`,
    `Node ${process.versions.node}, ${new Date().toISOString().slice(0, 10)}.`,
  ].join('\n');
}

/** The page with the text between two markers replaced. */
function withPart(page, name, text) {
  const [open, close] = [`<!-- measured: ${name} -->`, '<!-- end -->'];
  const from = page.indexOf(open);
  const to = page.indexOf(close, from);
  if (from < 0 || to < 0)
    throw new Error(`docs/benchmarks.md has no place for "${name}": add ${open} and ${close}.`);
  return `${page.slice(0, from + open.length)}\n${text}\n${page.slice(to)}`;
}

let page = readFileSync(PAGE, 'utf8');
let failed = false;
const missed = [];
console.log(`${machine()}\n`);
for (const name of wanted.length > 0 ? wanted : NAMES) {
  const loadBefore = load();
  const { rows, status } = await runBenchmark(name);
  if (status !== 0) {
    console.error(`The benchmark ${name} failed (exit status ${status}).`);
    failed = true;
    continue;
  }
  missed.push(...rows.filter((row) => row.met === false).map((row) => `${name}: ${row.what}`));
  const table = tableOf({ rows, loadBefore });
  console.log(`## ${name}\n\n${table}\n`);
  if (isRecorded) page = withPart(page, name, table);
}
for (const row of missed) console.log(`Not met: ${row}`);
if (isRecorded && !failed) writeFileSync(PAGE, withPart(page, 'machine', machine()));
process.exitCode = failed ? 1 : 0;
