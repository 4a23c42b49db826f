// Prints the same boards with the print room and with a browser, and tells the time, the rate and the memory each needs.
// Run after a build: node bench/print.mjs [pages]. Figures are in docs/decisions/002-print.md.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const PRINTER = new URL('../dist/print/printer.js', import.meta.url).href;
const BROWSER = process.env.AFTERBELL_BROWSER ?? '/usr/bin/chromium';
const BROWSER_PAGES = 60;
const FLAGS =
  '--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync --no-pdf-header-footer'.split(
    ' ',
  );

const boards = ['front', 'back'].map((side) =>
  JSON.parse(readFileSync(join(ROOT, `test/fixtures/board-47-${side}.json`), 'utf8')),
);

function request(document, pages) {
  const slips = Array.from({ length: pages * 8 }, (_, i) => ({
    id: `B${String(i).padStart(9, '0')}`,
    name: `Child ${i + 1}`,
    board: i % 2,
  }));
  const groups = Array.from({ length: pages / 2 }, (_, i) => ({
    title: `Group ${i + 1}`,
    names: [`Child ${i + 1}`],
  }));
  const more = document === 'slips' ? { slips } : document === 'sheet' ? { groups } : {};
  return { document, boards, paper: 'A4', options: { locale: 'en-AU', date: '2026-11-25', ...more } };
}

/** Runs one case in a process of its own, since peak memory is told of a whole process. */
function measure(task, document, pages) {
  const child = spawnSync(
    process.execPath,
    [fileURLToPath(import.meta.url), '--case', task, document, String(pages)],
    { encoding: 'utf8', maxBuffer: 1 << 26 },
  );
  if (child.status !== 0) throw new Error(child.stderr);
  return JSON.parse(child.stdout);
}

async function printCase(document, pages) {
  const start = process.hrtime.bigint();
  const { createPrinter } = await import(PRINTER);
  const printer = createPrinter();
  const result = await printer.printBoard(request(document, pages));
  await printer.close();
  if (!result.ok) throw new Error(result.error.message);
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  const { user, system } = process.cpuUsage();
  return {
    pages: result.value.pages,
    seconds,
    cpuSeconds: (user + system) / 1e6,
    fromStart: process.uptime(),
    peakMb: process.resourceUsage().maxRSS / 1024,
    bytes: result.value.pdf.length,
  };
}

/** The same boards as a plain web page: the same words, boxes, figures and codes, laid out by the browser. */
async function browserHtml(document, pages) {
  const { drawFigure } = await import('../dist/engine/figures/draw.js');
  const { qrSvg } = await import('../dist/print/qr.js');
  const face = pathToFileURL(join(ROOT, 'node_modules/@expo-google-fonts/andika/Andika_400Regular.ttf')).href;
  const rung = ({ rung, question }) =>
    `<tr><td>${rung}<td>${question.text}<td>${question.figure ? drawFigure(question.figure).svg : ''}<td><i></i></tr>`;
  const sheet = (board, i) =>
    `<section><h1>${board.number}</h1><p>Group ${i}, Child ${i}</p><table>${board.rungs.map(rung).join('')}</table></section>`;
  const slip = (board, i) =>
    `<div>${qrSvg(`B${String(i).padStart(9, '0')}`)}<b>Child ${i}</b><br>${board.number} 25 November 2026<ol>${'<li><i></i></li>'.repeat(12)}</ol></div>`;
  const body = Array.from({ length: pages }, (_, page) =>
    document === 'sheet'
      ? sheet(boards[page % 2], page)
      : `<section class="slips">${Array.from({ length: 8 }, (_, k) => slip(boards[k % 2], page * 8 + k)).join('')}</section>`,
  );
  return `<!doctype html><style>@page{size:A4;margin:0}@font-face{font-family:Andika;src:url(${face})}body{margin:0;font:16pt Andika}
section{height:273mm;padding:12mm;break-after:page;overflow:hidden}table{width:100%}td{height:17mm;border-bottom:.3mm solid #999}i{display:block;width:50mm;height:11mm;border:.3mm solid}
.slips{display:grid;grid-template-columns:1fr 1fr;height:297mm;padding:0}.slips div{position:relative;border:.2mm dashed;padding:5mm;font-size:9pt}.slips svg{position:absolute;right:5mm;width:15mm;height:15mm}
ol{display:grid;grid-template-columns:1fr 1fr 1fr}.slips i{width:22mm;height:9mm}</style>${body.join('')}`;
}

async function browserCase(document, pages) {
  const folder = mkdtempSync(join(tmpdir(), 'afterbell-bench-'));
  const page = join(folder, 'pages.html');
  writeFileSync(page, await browserHtml(document, pages));
  const out = join(folder, 'out.pdf');
  const profile = `--user-data-dir=${join(folder, 'profile')}`;
  const start = process.hrtime.bigint();
  const run = spawnSync(BROWSER, [...FLAGS, profile, `--print-to-pdf=${out}`, pathToFileURL(page).href], {
    encoding: 'utf8',
  });
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  if (run.status !== 0 || !existsSync(out)) throw new Error(run.stderr);
  const bytes = readFileSync(out).length;
  rmSync(folder, { recursive: true, force: true });
  return { pages, seconds, cpuSeconds: null, fromStart: null, peakMb: null, bytes };
}

function row(name, { pages, seconds, cpuSeconds, fromStart, peakMb, bytes }) {
  const cell = (value, places) => (value === null ? '-' : value.toFixed(places));
  const rate = cpuSeconds === null ? null : pages / cpuSeconds;
  const cells = [
    name,
    pages,
    cell(seconds, 2),
    cell(pages / seconds, 0),
    cell(rate, 0),
    cell(fromStart, 2),
    cell(peakMb, 0),
    cell(bytes / pages / 1000, 1),
  ];
  console.log(`| ${cells.join(' | ')} |`);
}

if (process.argv[2] === '--case') {
  const [task, document, pages] = process.argv.slice(3);
  console.log(JSON.stringify(await (task === 'print' ? printCase : browserCase)(document, Number(pages))));
} else {
  const many = Number(process.argv[2] ?? 2000);
  console.log(
    '| case | pages | seconds | pages/s | pages a processor second | from process start, s | peak MB | kB a page |\n| --- | --- | --- | --- | --- | --- | --- | --- |',
  );
  for (const document of ['poster', 'key', 'relief']) row(document, measure('print', document, 1));
  for (const document of ['sheet', 'slips']) {
    for (const pages of [2, BROWSER_PAGES, many]) row(document, measure('print', document, pages));
    if (existsSync(BROWSER)) row(`${document}, by a browser`, measure('browser', document, BROWSER_PAGES));
  }
}
