// Cells, places and rows as words, for sentences and for screen readers.
import { drawFigure } from '../../figures/draw.js';
import type { LocaleId } from '../../numbers/locale.js';
import type { Jigsaw, JigsawCell, Place, RowRule } from './jigsaw.js';

const SHAPE_NAMES: Readonly<Record<string, string>> = {
  '\u25cf': 'circle',
  '\u25b2': 'triangle',
  '\u25a0': 'square',
  '\u2605': 'star',
  '\u25c6': 'diamond',
  '\u2b22': 'hexagon',
  '\u2191': 'arrow up',
  '\u2197': 'arrow up and right',
  '\u2192': 'arrow right',
  '\u2198': 'arrow down and right',
  '\u2193': 'arrow down',
  '\u2190': 'arrow left',
};

/** The cell at a place. */
export function cellAt(
  { cells, columns }: Pick<Jigsaw, 'cells' | 'columns'>,
  [row, column]: Place,
): JigsawCell {
  return cells[row * columns + column] as JigsawCell;
}

/** What stands in a cell, as it is read aloud; "blank" where nothing does. */
export function spokenCell(cell: JigsawCell, locale: LocaleId): string {
  if (cell.figure) return drawFigure(cell.figure, { locale }).alt.replace(/\.$/, '');
  return cell.text === '' ? 'blank' : (SHAPE_NAMES[cell.text] ?? cell.text);
}

/** "row 2, column 3", counted from 1. */
export function spokenPlace([row, column]: Place): string {
  return `row ${row + 1}, column ${column + 1}`;
}

/** The cells of a row as a sentence reads them: "3 + 4 = 7", or with commas where no signs stand between. */
export function spokenRow(cells: readonly JigsawCell[], rule: RowRule, locale: LocaleId): string {
  if (rule !== 'sentences') return cells.map((cell) => spokenCell(cell, locale)).join(', ');
  return cells
    .map((cell) => (cell.text === '' ? '|' : cell.figure ? `[${cell.text}]` : cell.text))
    .join(' ')
    .replace(/^\| | \|$/g, '')
    .replaceAll(' | ', ' and ');
}

/** "A", "A and B", "A, B and C"; or with "or". */
export function listed(names: readonly string[], joint: 'and' | 'or'): string {
  return names.length < 2 ? names.join() : `${names.slice(0, -1).join(', ')} ${joint} ${names.at(-1)}`;
}
