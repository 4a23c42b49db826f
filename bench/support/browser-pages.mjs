// The peer of the print benchmark: the same boards as a plain web page, with the same words, boxes, figures and codes, laid
// out and printed by a browser.
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { drawFigure } from '#engine/figures/draw.js';
import { qrSvg } from '#print/qr.js';
import { ROOT, runProgram } from './measure.mjs';

const PLACES = [process.env.AFTERBELL_BROWSER, '/usr/bin/chromium', '/usr/bin/google-chrome'];
/** The browser's program, or null when there is none here. */
export const BROWSER = PLACES.find((place) => place && existsSync(place)) ?? null;

const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-pdf-header-footer',
];

const FACE = pathToFileURL(join(ROOT, 'node_modules/@expo-google-fonts/andika/Andika_400Regular.ttf')).href;
const STYLE = `@page{size:A4;margin:0}@font-face{font-family:Andika;src:url(${FACE})}body{margin:0;font:16pt Andika}
section{height:273mm;padding:12mm;break-after:page;overflow:hidden}table{width:100%}td{height:17mm;border-bottom:.3mm solid #999}
td svg{max-height:15mm}i{display:block;width:50mm;height:11mm;border:.3mm solid}
.slips{display:grid;grid-template-columns:1fr 1fr;height:297mm;padding:0}
.slips div{position:relative;border:.2mm dashed;padding:5mm;font-size:9pt}.slips svg{position:absolute;right:5mm;width:15mm;height:15mm}
ol{display:grid;grid-template-columns:1fr 1fr 1fr}.slips i{width:22mm;height:9mm}`;

function rung({ rung: place, question }) {
  const figure = question.figure ? drawFigure(question.figure).svg : '';
  return `<tr><td>${place}<td>${question.text}<td>${figure}<td><i></i></tr>`;
}

function sheet(board, place) {
  return `<section><h1>${board.number}</h1><p>Group ${place}, Child ${place}</p><table>${board.rungs.map(rung).join('')}</table></section>`;
}

function slip(board, place) {
  return `<div>${qrSvg(`B${String(place).padStart(9, '0')}`)}<b>Child ${place}</b><br>${board.number} 25 November 2026<ol>${'<li><i></i></li>'.repeat(12)}</ol></div>`;
}

function pageOf(document, boards, page) {
  if (document === 'sheet') return sheet(boards[page % 2], page);
  const slips = Array.from({ length: 8 }, (_, k) => slip(boards[k % 2], page * 8 + k));
  return `<section class="slips">${slips.join('')}</section>`;
}

/** Prints so many pages with the browser: seconds from its start to its end, and the greatest memory of all its processes. */
export async function printWithBrowser(folder, document, boards, pages) {
  const body = Array.from({ length: pages }, (_, page) => pageOf(document, boards, page)).join('');
  const html = join(folder, 'pages.html');
  const out = join(folder, 'browser.pdf');
  writeFileSync(html, `<!doctype html><meta charset="utf-8"><style>${STYLE}</style>${body}`);
  const profile = `--user-data-dir=${join(folder, 'profile')}`;
  const args = [...FLAGS, profile, `--print-to-pdf=${out}`, pathToFileURL(html).href];
  const done = await runProgram(BROWSER, args, { withMemory: true });
  if (done.status !== 0 || !existsSync(out)) throw new Error(done.said);
  return { ...done, pages };
}
