// What the kit tests print with, and how they find cuts on a rendered sheet.
import { readFileSync } from 'node:fs';
import type { Chain } from '#engine/activities/chain/chain.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { composeJigsaw } from '#engine/activities/jigsaw/compose.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import type { JigsawRequest } from '#engine/activities/jigsaw/request.js';
import type { KitOptions, KitRequest, KitSet } from '#print/kit-request.js';
import type { PaperId, PrintedBoard } from '#print/request.js';
import { printer, type Raster } from './pdf-tools.js';

/** An invented chain of ten strips without pictures, kept so that its pages have the same bytes for ever. */
export function fixtureChain(): Chain {
  return JSON.parse(readFileSync(new URL('../fixtures/chain-10.json', import.meta.url), 'utf8')) as Chain;
}

/** Chains of these years, pictures and all, numbered from 1. */
export function chainSets(count: number, years: readonly number[], cards = 10): KitSet<Chain>[] {
  return Array.from({ length: count }, (_, at) => {
    const made = composeChain({ years, cards, seed: at + 1, locale: 'en-AU' });
    if (!made.ok) throw new Error(made.error.message);
    return { number: at + 1, activity: made.value };
  });
}

export function chainRequest(
  document: KitRequest['document'],
  sets: readonly KitSet<Chain>[],
  paper: PaperId = 'A4',
  options: Partial<KitOptions> = {},
): KitRequest {
  return { activity: 'chain', document, sets, paper, options: { locale: 'en-AU', ...options } };
}

/** Prints, and throws what a person would read when it is refused. */
export async function printKit(wanted: KitRequest): Promise<PrintedBoard> {
  const result = await printer.printKit(wanted);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

/** An invented jigsaw of 5 x 7 sums, kept for the same reason. */
export function fixtureJigsaw(): Jigsaw {
  return JSON.parse(readFileSync(new URL('../fixtures/jigsaw-5x7.json', import.meta.url), 'utf8')) as Jigsaw;
}

/** Jigsaws of these years, numbered from 1. */
export function jigsawSets(count: number, wish: Omit<JigsawRequest, 'seed' | 'locale'>): KitSet<Jigsaw>[] {
  return Array.from({ length: count }, (_, at) => {
    const made = composeJigsaw({ ...wish, seed: at + 1, locale: 'en-AU' });
    if (!made.ok) throw new Error(made.error.message);
    return { number: at + 1, activity: made.value };
  });
}

export function jigsawRequest(
  document: KitRequest['document'],
  sets: readonly KitSet<Jigsaw>[],
  paper: PaperId = 'A4',
  options: Partial<KitOptions> = {},
): KitRequest {
  return { activity: 'jigsaw', document, sets, paper, options: { locale: 'en-AU', ...options } };
}

const DPI = 300;
const toPixels = (mm: number) => Math.round((mm / 25.4) * DPI);
const toMm = (pixels: number) => (pixels / DPI) * 25.4;

/** Centres of the dark stretches that a straight look across the page meets, in millimetres. */
function darkCentres(length: number, isDark: (at: number) => boolean): number[] {
  const centres: number[] = [];
  for (let at = 0, from = -1; at <= length; at++) {
    if (at < length && isDark(at)) {
      if (from < 0) from = at;
    } else if (from >= 0) {
      centres.push(toMm((from + at) / 2));
      from = -1;
    }
  }
  return centres;
}

/** Where upright cuts cross a level line, in millimetres from the left edge. */
export function cutsAcross(page: Raster, yMm: number): number[] {
  const y = toPixels(yMm);
  return darkCentres(page.width, (x) => page.at(x, y) < 200);
}

/** Where level cuts cross an upright line, in millimetres from the top edge. */
export function cutsDown(page: Raster, xMm: number): number[] {
  const x = toPixels(xMm);
  return darkCentres(page.height, (y) => page.at(x, y) < 200);
}

export interface Rectangle {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The smallest rectangle around all ink within a rectangle, in millimetres; null where there is none. */
export function inkWithin(page: Raster, { left, top, right, bottom }: Rectangle): Rectangle | null {
  let found: [number, number, number, number] | null = null;
  for (let y = toPixels(top); y < toPixels(bottom); y++)
    for (let x = toPixels(left); x < toPixels(right); x++) {
      if (page.at(x, y) > 225) continue;
      found = found
        ? [Math.min(found[0], x), Math.min(found[1], y), Math.max(found[2], x), Math.max(found[3], y)]
        : [x, y, x, y];
    }
  return (
    found && {
      left: toMm(found[0]),
      top: toMm(found[1]),
      right: toMm(found[2] + 1),
      bottom: toMm(found[3] + 1),
    }
  );
}
