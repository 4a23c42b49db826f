// All rows of a jigsaw: which lengths of sentence stand side by side, and enough rows that differ.
import { BLANK_CELL } from '../cells.js';
import { type JigsawCell, type JigsawLevel, MOST_COLUMNS, type RowKind, type RowRule } from '../jigsaw.js';
import { isRowPlainlyTrue, sentenceParts } from '../row-truth.js';
import type { RowContext } from './band.js';
import { equivalentOf } from './equivalent.js';
import { familyOf } from './family.js';
import { repeatsOf, sharedStep, stepsOf } from './pattern.js';
import { sentenceOf } from './sentence.js';
import { dealtSentence } from './skill-pool.js';

/** The rule by which rows of a kind are judged. */
export function ruleOf(kind: RowKind): RowRule {
  return kind === 'steps' || kind === 'repeats' ? kind : 'sentences';
}

/** Lengths of the sentences of a row, 0 for a blank edge. A blank cell stands between two of them. */
const LAYOUTS: Readonly<Record<number, readonly (readonly number[])[]>> = {
  5: [[5]],
  6: [[5, 0]],
  7: [[7], [3, 3]],
  8: [
    [7, 0],
    [3, 3, 0],
  ],
  9: [[5, 3], [3, 5], [9]],
  10: [
    [5, 3, 0],
    [3, 5, 0],
    [9, 0],
  ],
};

/** The layouts that rows of a kind can have in so many columns. */
export function layoutsFor(kind: RowKind, columns: number): readonly (readonly number[])[] {
  const all = LAYOUTS[columns] as readonly (readonly number[])[];
  if (kind === 'families') return all.filter((layout) => layout[0] !== 3 || layout[1] === 5);
  if (kind === 'equivalents') return all.filter((layout) => !layout.some((length) => length > 7));
  if (kind === 'sentences' || kind === 'missing')
    return all.filter((layout) => !(layout.length > 1 && layout.every((l) => l === 3 || l === 0)));
  return all;
}

/** Long sentences ask for more trying: easy leaves them out, hard the short ones; ten columns are hard enough without. */
function layoutsOfLevel(kind: RowKind, columns: number, level: JigsawLevel): readonly (readonly number[])[] {
  const all = layoutsFor(kind, columns);
  if (columns < 8 || (level === 'middle' && columns < MOST_COLUMNS)) return all;
  const isLong = (layout: readonly number[]) => layout.some((length) => length > 5);
  const chosen = all.filter((layout) => isLong(layout) === (level === 'hard' && columns < MOST_COLUMNS));
  return chosen.length > 0 ? chosen : all;
}

const ATTEMPTS_A_ROW = 40;

/** So many rows that all differ and are plainly true, or null when the years' numbers do not give them. */
export function fillRows(
  kind: RowKind,
  rows: number,
  columns: number,
  context: RowContext,
): JigsawCell[][] | null {
  const { rng, years } = context;
  const rule = ruleOf(kind);
  const layouts = rule === 'sentences' ? layoutsOfLevel(kind, columns, context.level) : [[]];
  const possible = layouts.filter((layout) => canDeal(kind, layout, context));
  if (possible.length === 0) return null;
  const layout = rng.pick(possible);
  const shared = kind === 'steps' && context.level !== 'easy' ? sharedStep(context) : null;
  const found: JigsawCell[][] = [];
  const seen = new Set<string>();
  const parts = new Set<string>();
  for (let attempt = 0; found.length < rows && attempt < rows * ATTEMPTS_A_ROW; attempt++) {
    const year = rng.pick(years);
    const made =
      kind === 'families'
        ? familyRows(layout, Math.min(rows - found.length, rng.int(2, 4)), year, context)
        : kind === 'steps'
          ? [stepsOf(columns, year, context, shared)]
          : [rowOf(kind, layout, columns, year, context)];
    for (const row of made ?? []) {
      if (row === null) continue;
      // Rows with the same numbers and signs in another order could be exchanged; families are such rows by nature.
      const key = row.map((cell) => cell.text);
      const name = (kind === 'families' || shared !== null ? key : key.toSorted()).join(' ');
      if (seen.has(name) || !isRowPlainlyTrue(row, rule)) continue;
      const said = rule === 'sentences' ? sentenceParts(row).map(nameOfPart) : [];
      if (new Set(said).size < said.length || said.some((part) => parts.has(part))) continue;
      // Small ranges may not do for saying every value and every calculation once only.
      const again =
        rule === 'sentences' ? [...valuesSaid(row), ...(context.pool ? calculationsOf(row) : [])] : [];
      const isOften = new Set(again).size < again.length || again.some((one) => parts.has(one));
      if (attempt < (rows * ATTEMPTS_A_ROW) / 2 && isOften) continue;
      for (const part of [...said, ...again]) parts.add(part);
      seen.add(name);
      found.push(row);
    }
  }
  return found.length < rows ? null : rng.shuffle(found);
}

/** Whether chosen skills give sentences of these lengths. */
function canDeal(kind: RowKind, layout: readonly number[], { pool, rng }: RowContext): boolean {
  if (pool === null) return true;
  const lengths = layout.filter((length) => length > 0);
  return lengths.every((length) =>
    kind === 'families' ? length === 5 : dealtSentence(length, pool, rng, kind === 'missing') !== null,
  );
}

function rowOf(
  kind: RowKind,
  layout: readonly number[],
  columns: number,
  year: number,
  context: RowContext,
): JigsawCell[] | null {
  if (kind === 'repeats') return repeatsOf(columns, year, context);
  const parts: JigsawCell[][] = [];
  for (const length of layout) {
    const part = length === 0 ? [] : partOf(kind, length, year, columns, context);
    if (part === null) return null;
    parts.push(part);
  }
  return joinParts(parts);
}

function partOf(
  kind: RowKind,
  length: number,
  year: number,
  columns: number,
  context: RowContext,
): JigsawCell[] | null {
  const { rng, pool } = context;
  if (pool !== null) return dealtSentence(length, pool, rng, kind === 'missing');
  if (kind === 'equivalents') return equivalentOf(length, year, columns, context);
  if (kind === 'sentences' || kind === 'missing')
    return sentenceOf(length, year, context, kind === 'missing');
  // Mixed: short parts are mostly equivalents, since a lone comparison says little.
  const chance = rng.unit();
  if (chance < (length === 3 ? 0.75 : 0.35)) {
    const equivalent = equivalentOf(length, year, columns, context);
    if (equivalent) return equivalent;
  }
  if (chance < 0.55 && length > 3) {
    const [member] = familyOf(length, 1, year, context) ?? [];
    if (member) return member;
  }
  return sentenceOf(length, year, context);
}

function familyRows(
  layout: readonly number[],
  count: number,
  year: number,
  context: RowContext,
): JigsawCell[][] | null {
  const long = Math.max(...layout);
  const members = familyOf(long, count, year, context);
  if (members === null) return null;
  const rows: JigsawCell[][] = [];
  for (const member of members) {
    const parts = layout.map((length) =>
      length === long ? member : length === 0 ? [] : partOf('mixed', length, year, MOST_COLUMNS, context),
    );
    if (!parts.includes(null)) rows.push(joinParts(parts as JigsawCell[][]));
  }
  return rows;
}

/** The values of which a row shows several forms. */
function valuesSaid(row: readonly JigsawCell[]): string[] {
  return sentenceParts(row)
    .filter((part) => part.every((cell, i) => i % 2 === 0 || cell.expression === '=='))
    .map(([cell]) => `of ${cell?.expression}`);
}

/** The sides of a row that calculate, as texts. */
function calculationsOf(row: readonly JigsawCell[]): string[] {
  const text = row.map((cell) => cell.text).join(' ');
  return text.split(/ [=<>] |  /).filter((side) => / [+\u2212\u00d7\u00f7] /.test(side));
}

/** The same for a sentence with its sides exchanged. */
function nameOfPart(part: readonly JigsawCell[]): string {
  const text = part.map((cell) => cell.text).join(' ');
  const exchanged = text.split(' = ').toReversed().join(' = ');
  return text < exchanged ? text : exchanged;
}

function joinParts(parts: readonly (readonly JigsawCell[])[]): JigsawCell[] {
  return parts.flatMap((part, i) => (i === 0 ? [...part] : [BLANK_CELL, ...part]));
}
