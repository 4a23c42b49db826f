// Printing: from the command's start to a finished PDF, for each document; then pages a second and memory in bulk, with all
// post-processing. Beside it a browser that prints the same content.
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { inFolder, medianRun, ROOT, runProgram } from './support/measure.mjs';
import { count, ms, tell } from './support/tell.mjs';

const FIRST_PAGE_TARGET_MS = 1000;
const RATE_TARGET = 120;
const MEMORY_TARGET_MB = 600;
const FEW_PAGES = 60;
const MANY_PAGES = 2000;
const RUNS = 3;
/** Documents by the names of the command line. */
const DOCUMENTS = ['board', 'pupil', 'slips', 'key', 'relief', 'practice'];

const boards = ['front', 'back'].map((side) =>
  JSON.parse(readFileSync(join(ROOT, `test/fixtures/board-47-${side}.json`), 'utf8')),
);

function bulkRequest(document, pages) {
  const slips = Array.from({ length: pages * 8 }, (_, i) => ({
    id: `B${String(i).padStart(9, '0')}`,
    name: `Child ${i + 1}`,
    board: i % 2,
  }));
  const groups = Array.from({ length: pages / 2 }, (_, i) => ({
    title: `Group ${i + 1}`,
    names: [`Child ${i + 1}`],
  }));
  const more = document === 'slips' ? { slips } : { groups };
  return { document, boards, paper: 'A4', options: { locale: 'en-AU', date: '2026-11-25', ...more } };
}

/** One bulk print in this process, told on standard output. */
async function bulkCase(document, pages) {
  const { createPrinter } = await import('#print/printer.js');
  const printer = createPrinter();
  const start = process.hrtime.bigint();
  const result = await printer.printBoard(bulkRequest(document, pages));
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  await printer.close();
  if (!result.ok) throw new Error(result.error.message);
  const { user, system } = process.cpuUsage();
  console.log(
    JSON.stringify({
      pages: result.value.pages,
      seconds,
      cpuSeconds: (user + system) / 1e6,
      peakMb: process.resourceUsage().maxRSS / 1024,
      bytes: result.value.pdf.length,
    }),
  );
}

/** The same in a process of its own, since peak memory is told of a whole process; the middle one of `runs` by time. */
function bulk(document, pages, runs) {
  const all = Array.from({ length: runs }, () => {
    const args = [fileURLToPath(import.meta.url), '--case', document, String(pages)];
    const child = spawnSync(process.execPath, args, { encoding: 'utf8', maxBuffer: 1 << 26 });
    if (child.status !== 0) throw new Error(child.stderr);
    return JSON.parse(child.stdout);
  });
  return all.sort((a, b) => a.seconds - b.seconds)[Math.floor((runs - 1) / 2)];
}

async function firstPages(folder, browser) {
  const file = join(folder, 'board.json');
  writeFileSync(file, JSON.stringify(boards[0]));
  const command = (name) => ['print', file, '--document', name, '--out', join(folder, `${name}.pdf`)];
  for (const name of DOCUMENTS) {
    const own = await medianRun(RUNS, () =>
      runProgram(process.execPath, [join(ROOT, 'scripts/afterbell.mjs'), ...command(name)]),
    );
    tell({
      what: `afterbell print --document ${name}, from its start to the finished file`,
      measured: ms(1000 * own.seconds),
      target: name === 'board' ? ms(FIRST_PAGE_TARGET_MS) : '',
      met: name === 'board' ? 1000 * own.seconds <= FIRST_PAGE_TARGET_MS : null,
      beside: browser && name === 'pupil' ? `browser, one page: ${ms(1000 * browser.seconds)}` : '',
    });
  }
  const throughNpx = await medianRun(RUNS, () => runProgram('npx', ['afterbell', ...command('board')]));
  tell({ what: 'the poster again, through npx', measured: ms(1000 * throughNpx.seconds) });
}

function bulkRows(document, peer) {
  const few = bulk(document, FEW_PAGES, RUNS);
  const many = bulk(document, MANY_PAGES, 1);
  const rate = ({ pages, seconds }) => pages / seconds;
  const words = (one) =>
    `${count(rate(one))} pages a second (${count(one.pages / one.cpuSeconds)} a processor second), ${count(one.peakMb)} MB at most, ${(one.bytes / one.pages / 1000).toFixed(1)} kB a page`;
  tell({
    what: `${document}: ${FEW_PAGES} pages`,
    measured: words(few),
    beside: peer
      ? `browser: ${count(rate(peer))} pages a second, ${peer.peakMb === null ? 'memory not told here' : `${count(peer.peakMb)} MB`}`
      : 'no browser here',
  });
  tell({
    what: `${document}: ${count(many.pages)} pages, tagged, with fixed date, viewer settings and codes`,
    measured: words(many),
    target: `${RATE_TARGET} pages a second, under ${MEMORY_TARGET_MB} MB`,
    met: rate(many) >= RATE_TARGET && many.peakMb < MEMORY_TARGET_MB,
  });
}

async function everything(folder) {
  const { BROWSER, printWithBrowser } = await import('./support/browser-pages.mjs');
  const peer = (document, pages) =>
    BROWSER ? medianRun(RUNS, () => printWithBrowser(folder, document, boards, pages)) : null;
  await firstPages(folder, await peer('sheet', 1));
  for (const document of ['sheet', 'slips']) bulkRows(document, await peer(document, FEW_PAGES));
}

if (process.argv[2] === '--case') {
  const [document, pages] = process.argv.slice(3);
  await bulkCase(document, Number(pages));
} else {
  await inFolder(everything);
}
