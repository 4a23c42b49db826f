// What the print tests look at pages with: poppler and qpdf, as independent judges of the PDFs.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Board } from '#engine/activities/board/board.js';
import { createPrinter } from '#print/printer.js';
import type { PrintedBoard, PrintOptions, PrintRequest, RotaSheet } from '#print/request.js';

/** An invented board with every kind of rung: sums, fractions, money, a clock, a long story. */
export function fixtureBoard(side: 'front' | 'back'): Board {
  return JSON.parse(
    readFileSync(new URL(`../fixtures/board-47-${side}.json`, import.meta.url), 'utf8'),
  ) as Board;
}

export const OPTIONS: PrintOptions = { locale: 'en-AU', date: '2026-11-25', className: 'Class 4/5 W' };

/** A rota with everything that can stand on one: a long name, one away, a gap. */
export const ROTA: RotaSheet = {
  title: 'Who has which chain',
  rows: Array.from({ length: 27 }, (_, i) => ({
    name: i === 3 ? 'Bartholomew-Maximilian Q.' : `Child ${i + 1}`,
    isAway: i === 4,
    cells: [0, 1, 2, 3].map((turn) =>
      i === 6 && turn === 2
        ? null
        : { band: ['lower', 'middle', 'upper'][i % 3] ?? '', number: ((i + turn * 7) % 27) + 1, box: 1 },
    ),
  })),
};

export function request(
  document: PrintRequest['document'],
  changes: Partial<PrintRequest> = {},
): PrintRequest {
  return {
    document,
    boards: [fixtureBoard('front'), fixtureBoard('back')],
    paper: 'A4',
    options: OPTIONS,
    ...(document === 'rota' ? { rota: ROTA } : {}),
    ...changes,
  };
}

export const printer = createPrinter();

/** Prints, and throws what a person would read when it is refused. */
export async function print(wanted: PrintRequest): Promise<PrintedBoard> {
  const result = await printer.printBoard(wanted);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

/** Runs a tool on a PDF kept in a folder of its own for the while; the tool's standard output. */
export function inspect(pdf: Uint8Array, tool: string, args: readonly string[]): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'afterbell-print-'));
  try {
    const file = join(folder, 'a.pdf');
    writeFileSync(file, pdf);
    return execFileSync(
      tool,
      args.map((arg) => (arg === 'PDF' ? file : arg)),
      { maxBuffer: 1 << 28, stdio: ['ignore', 'pipe', 'pipe'] },
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}

export interface Word {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface PageWords {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly words: readonly Word[];
}

const MM_A_POINT = 25.4 / 72;

/** Every word of every page with its box in millimetres, as poppler sees it. */
export function wordsOf(pdf: Uint8Array): PageWords[] {
  const html = inspect(pdf, 'pdftotext', ['-bbox', 'PDF', '-']).toString('utf8');
  return [...html.matchAll(/<page width="([\d.]+)" height="([\d.]+)">([\s\S]*?)<\/page>/g)].map((page) => ({
    widthMm: Number(page[1]) * MM_A_POINT,
    heightMm: Number(page[2]) * MM_A_POINT,
    words: [
      ...(page[3] as string).matchAll(
        /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*?)<\/word>/g,
      ),
    ].map((word) => ({
      text: word[5] as string,
      left: Number(word[1]) * MM_A_POINT,
      top: Number(word[2]) * MM_A_POINT,
      right: Number(word[3]) * MM_A_POINT,
      bottom: Number(word[4]) * MM_A_POINT,
    })),
  }));
}

/** One page in grey, 0 black to 255 white. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly at: (x: number, y: number) => number;
}

export function rasterOf(pdf: Uint8Array, page: number, dpi: number): Raster {
  const pgm = inspect(pdf, 'pdftoppm', [
    '-r',
    String(dpi),
    '-gray',
    '-f',
    String(page),
    '-l',
    String(page),
    'PDF',
  ]);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 64).toString('latin1'));
  if (!head) throw new Error('pdftoppm gave no grey picture');
  const width = Number(head[1]);
  const start = head[0].length;
  return { width, height: Number(head[2]), at: (x, y) => pgm[start + y * width + x] as number };
}
