// A bar for the whole, cut into its parts; the whole is written above a bracket.
import type { Locale } from '../../numbers/locale.js';
import type { FigureSpec } from '../figure.js';
import { label, labelHeight, labelWidth } from '../label.js';
import { BOLD_MM, FINE_MM, LABEL_MM, line, type Mark, path, rect, SHADE, type Sketch } from '../svg.js';
import { countOf, listOf, spoken, withGroupedDigits } from '../words.js';

type BarModelSpec = Extract<FigureSpec, { kind: 'bar-model' }>;

const WIDTH_MM = 70;
const HEIGHT_MM = 11;

export function drawBarModel(given: BarModelSpec, locale: Locale): Sketch {
  const spec = {
    ...given,
    whole: withGroupedDigits(given.whole, locale),
    parts: given.parts.map((part) => withGroupedDigits(part, locale)),
  };
  const letter = LABEL_MM + 0.4;
  const widths = shareOut(spec, letter);
  const width = widths.reduce((sum, part) => sum + part, 0);
  const marks: Mark[] = [];
  let left = 0;
  spec.parts.forEach((part, index) => {
    const share = widths[index] ?? 0;
    const isShaded = index < (spec.shaded ?? 0);
    marks.push(
      rect(left, 0, share, HEIGHT_MM, {
        fill: isShaded ? SHADE : '#ffffff',
        stroke: 'none',
        part: isShaded ? 'shaded' : 'part',
      }),
    );
    if (index > 0) marks.push(line([left, 0], [left, HEIGHT_MM]));
    marks.push(...label(part, [left + share / 2, HEIGHT_MM / 2], letter));
    left += share;
  });
  marks.push(rect(0, 0, width, HEIGHT_MM, { widthMm: BOLD_MM, part: 'bar' }));
  marks.push(
    bracket(width),
    ...label(spec.whole, [width / 2, -6 - labelHeight(spec.whole, letter) / 2], letter),
  );
  const shaded = spec.shaded ?? 0;
  const isEven = spec.parts.length > 1 && new Set(spec.parts).size === 1;
  const each = spec.parts[0] ?? '';
  // Parts of which some are shaded are not told as empty as well.
  const mark = each.trim() === '' && shaded > 0 ? '' : `, each ${marked(each)}`;
  const cut = isEven
    ? `${countOf(spec.parts.length, 'equal part')}${mark}`
    : `${countOf(spec.parts.length, 'part')}: ${listOf(tellParts(spec.parts))}`;
  const told =
    shaded === 0
      ? ''
      : shaded === 1
        ? ' The first part is shaded.'
        : ` The first ${shaded} parts are shaded.`;
  return {
    marks,
    alt: `A bar. The mark for its whole length is ${spoken(spec.whole)}. It has ${cut}.${told}`,
  };
}

/** Parts in order: one by one, or counted where neighbours bear the same mark ("3 marked with a question mark"). */
function tellParts(parts: readonly string[]): string[] {
  const runs: { words: string; count: number }[] = [];
  for (const words of parts) {
    const last = runs.at(-1);
    if (last?.words === words) last.count += 1;
    else runs.push({ words, count: 1 });
  }
  if (runs.every((run) => run.count === 1)) return parts.map(spoken);
  return runs.map((run) => `${run.count} ${marked(run.words)}`);
}

function marked(words: string): string {
  if (words.trim() === '') return 'empty';
  return words === '?' ? 'marked with a question mark' : `marked ${words}`;
}

function bracket(width: number): Mark {
  const y = -1.6;
  const up = y - 1.8;
  const middle = width / 2;
  return path(
    [
      { to: [0, y] },
      {
        curve: [
          [0, up],
          [0.6, up],
        ],
        to: [2.4, up],
      },
      { to: [middle - 2, up] },
      {
        curve: [
          [middle - 0.6, up],
          [middle, up],
        ],
        to: [middle, up - 1.4],
      },
      {
        curve: [
          [middle, up],
          [middle + 0.6, up],
        ],
        to: [middle + 2, up],
      },
      { to: [width - 2.4, up] },
      {
        curve: [
          [width - 0.6, up],
          [width, up],
        ],
        to: [width, y],
      },
    ],
    { widthMm: FINE_MM },
  );
}

/** Widths of the parts: by value where all values are known or follow, else equal, but never too narrow for the label. */
function shareOut(spec: BarModelSpec, letter: number): number[] {
  const least = spec.parts.map((part) => Math.max(6, labelWidth(part, letter) + 3));
  const spare = Math.max(0, WIDTH_MM - least.reduce((sum, part) => sum + part, 0));
  const values = sizes(spec);
  const total = values.reduce((sum, value) => sum + value, 0);
  if (new Set(spec.parts).size === 1) {
    return least.map(() => Math.max(WIDTH_MM / spec.parts.length, ...least));
  }
  return least.map((part, index) => part + (spare * (values[index] ?? 0)) / total);
}

/** The number in a label such as "3 200", "3,200", "$4.50" or "61 cm"; null where there is none. */
function numberIn(words: string): number | null {
  const plain = words.replace(/(?<=\d)[\s\u00a0\u2009\u202f,](?=\d{3})/g, '');
  const found = /^[$£]?(\d+(?:\.\d+)?)(?:[\s\u00a0]?[a-z]+)?$/i.exec(plain);
  return found === null ? null : Number(found[1]);
}

function sizes(spec: BarModelSpec): number[] {
  const values = spec.parts.map(numberIn);
  const known = values.reduce<number>((sum, value) => sum + (value ?? 0), 0);
  const unknown = values.filter((value) => value === null).length;
  const whole = numberIn(spec.whole);
  if (unknown > 0 && (whole === null || whole <= known)) return spec.parts.map(() => 1);
  const rest = whole === null || unknown === 0 ? 0 : (whole - known) / unknown;
  const shares = values.map((value) => value ?? rest);
  return shares.some((share) => share > 0) ? shares : spec.parts.map(() => 1);
}
