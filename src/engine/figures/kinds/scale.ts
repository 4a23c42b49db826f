// Measuring scales to be read: a dial, a jug, a thermometer and a spring balance.
import type { Locale } from '../../numbers/locale.js';
import type { FigureSpec } from '../figure.js';
import { fitSize } from '../label.js';
import { labelledValues, markedValues, tellPlace } from '../reading.js';
import {
  BOLD_MM,
  circle,
  FINE_MM,
  INK,
  LINE_MM,
  line,
  type Mark,
  PALE,
  path,
  polar,
  type Point,
  polygon,
  rect,
  SHADE,
  type Sketch,
  text,
} from '../svg.js';
import { countOf, listOf, numberText, withUnit } from '../words.js';

type ScaleSpec = Extract<FigureSpec, { kind: 'scale' }>;
interface Reading {
  readonly spec: ScaleSpec;
  readonly marked: readonly number[];
  readonly labelled: readonly number[];
  readonly name: (value: number) => string;
  /** Where a value lies between the scale's ends, 0 to 1. */
  readonly share: (value: number) => number;
}

export function drawScale(spec: ScaleSpec, locale: Locale): Sketch {
  const name = (value: number) => numberText(value, locale);
  const reading: Reading = {
    spec,
    marked: markedValues(spec),
    labelled: labelledValues(spec),
    name,
    share: (value) => (value - spec.from) / (spec.to - spec.from),
  };
  const draw = { dial: drawDial, jug: drawJug, thermometer: drawThermometer, balance: drawBalance }[
    spec.form
  ];
  const { opening, shows } = WORDS[spec.form];
  const steps = countOf(reading.marked.length - 1, 'equal step');
  const alt =
    `${opening}. Its scale runs from ${name(spec.from)} to ${withUnit(name(spec.to), spec.unit)} in ${steps}; ` +
    `${reading.labelled.length === 1 ? 'the number' : 'the numbers'} ${listOf(reading.labelled.map(name))} ${reading.labelled.length === 1 ? 'is' : 'are'} written. ` +
    `${shows} ${tellPlace(spec.value, spec, name)}.`;
  return { marks: draw(reading), alt };
}

const WORDS = {
  dial: { opening: 'A dial', shows: 'The pointer is at' },
  jug: { opening: 'A measuring jug', shows: 'The liquid reaches up to' },
  thermometer: { opening: 'A thermometer', shows: 'The dark column reaches up to' },
  balance: { opening: 'A spring balance with a bag on its hook', shows: 'The pointer is at' },
} as const;

function drawDial({ spec, marked, labelled, name, share }: Reading): Mark[] {
  const centre: Point = [0, 0];
  const turn = (value: number) => -140 + 280 * share(value);
  const marks: Mark[] = [circle(centre, 20, { fill: '#ffffff', widthMm: BOLD_MM, part: 'rim' })];
  if (/^k?g$/.test(spec.unit)) {
    marks.unshift(
      path(
        [
          { to: [-15, -25] },
          {
            curve: [
              [-12, -19],
              [12, -19],
            ],
            to: [15, -25],
          },
        ],
        { fill: PALE, widthMm: BOLD_MM },
        true,
      ),
    );
  }
  for (const value of marked) {
    marks.push(
      line(polar(centre, 17.4, turn(value)), polar(centre, 18.9, turn(value)), {
        widthMm: FINE_MM,
        part: 'tick',
      }),
    );
  }
  const size = Math.min(
    ...labelled.map((value) => fitSize(name(value), 6.6, 4, 2.8)),
    labelled.length > 12 ? 3 : 4,
  );
  for (const value of labelled) {
    marks.push(
      line(polar(centre, 16.4, turn(value)), polar(centre, 18.9, turn(value)), {
        widthMm: BOLD_MM,
        part: 'labelled-tick',
      }),
    );
    marks.push(text(name(value), polar(centre, 13.1, turn(value)), size));
  }
  marks.push(text(spec.unit, [0, 9.6], 4));
  const angle = turn(spec.value);
  marks.push(
    line(polar(centre, -3, angle), polar(centre, 16.4, angle), {
      widthMm: 0.8,
      roundCap: true,
      part: 'pointer',
    }),
  );
  marks.push(circle(centre, 1.5, { fill: INK, stroke: 'none' }));
  return marks;
}

function drawJug({ spec, marked, labelled, name, share }: Reading): Mark[] {
  const [base, top, width] = [37, 5, 27];
  const level = (value: number) => base - (base - top) * share(value);
  const marks: Mark[] = [];
  const surface = level(spec.value);
  if (surface < base) {
    marks.push(rect(0, surface, width, base - surface, { fill: '#cfcfcf', stroke: 'none', part: 'liquid' }));
    marks.push(line([0, surface], [width, surface], { widthMm: BOLD_MM, part: 'level' }));
  }
  for (const value of marked) {
    marks.push(line([width - 3, level(value)], [width, level(value)], { widthMm: FINE_MM, part: 'tick' }));
  }
  const size = verticalSize(labelled, level);
  for (const value of labelled) {
    marks.push(
      line([width - 5, level(value)], [width, level(value)], { widthMm: LINE_MM, part: 'labelled-tick' }),
    );
    // The lowest number stands a little above its mark, clear of the jug's floor.
    const lift = value === spec.from ? -size * 0.25 : 0;
    marks.push(text(name(value), [width - 6, level(value) + lift], size, 'end'));
  }
  marks.push(text(spec.unit, [6, top + 1], 4));
  marks.push(
    path(
      [{ to: [width, 0] }, { to: [width, base] }, { to: [0, base] }, { to: [0, 3.5] }, { to: [-3.5, 0] }],
      { widthMm: BOLD_MM },
      true,
    ),
    path(
      [
        { to: [width, 8] },
        {
          curve: [
            [width + 10, 8],
            [width + 10, 28],
          ],
          to: [width, 28],
        },
      ],
      { widthMm: BOLD_MM },
    ),
    path(
      [
        { to: [width, 11] },
        {
          curve: [
            [width + 6, 11],
            [width + 6, 25],
          ],
          to: [width, 25],
        },
      ],
      { widthMm: FINE_MM },
    ),
  );
  return marks;
}

function drawThermometer({ spec, marked, labelled, name, share }: Reading): Mark[] {
  const [low, high] = [34, 2];
  const level = (value: number) => low - (low - high) * share(value);
  const dark = '#4a4a4a';
  const marks: Mark[] = [
    path([{ to: [-2, 37] }, { centre: [0, -1], radius: 2, from: -90, until: 90 }, { to: [2, 37] }], {
      fill: '#ffffff',
      widthMm: LINE_MM,
    }),
    circle([0, 39.5], 3.8, { fill: dark, widthMm: LINE_MM }),
    rect(-1.2, level(spec.value), 2.4, 38 - level(spec.value), {
      fill: dark,
      stroke: 'none',
      part: 'column',
    }),
  ];
  for (const value of marked) {
    marks.push(line([3, level(value)], [5, level(value)], { widthMm: FINE_MM, part: 'tick' }));
  }
  const size = verticalSize(labelled, level);
  for (const value of labelled) {
    marks.push(line([3, level(value)], [6.5, level(value)], { widthMm: LINE_MM, part: 'labelled-tick' }));
    marks.push(text(name(value), [7.6, level(value)], size, 'start'));
  }
  marks.push(text(spec.unit, [-4.2, 2], 4, 'end'));
  return marks;
}

function drawBalance({ spec, marked, labelled, name, share }: Reading): Mark[] {
  const [first, last] = [4, 26];
  const level = (value: number) => first + (last - first) * share(value);
  const marks: Mark[] = [
    circle([0, -2.4], 2.4, { widthMm: BOLD_MM }),
    rect(-12, 0, 24, 30, { fill: '#ffffff', widthMm: BOLD_MM }, 2),
    line([-6.5, first - 1.5], [-6.5, last + 1.5], { widthMm: FINE_MM }),
  ];
  for (const value of marked) {
    marks.push(line([-3.5, level(value)], [-1.5, level(value)], { widthMm: FINE_MM, part: 'tick' }));
  }
  const size = Math.min(
    verticalSize(labelled, level),
    ...labelled.map((value) => fitSize(name(value), 9.5, 4, 2.6)),
  );
  for (const value of labelled) {
    marks.push(line([-3.5, level(value)], [0, level(value)], { widthMm: LINE_MM, part: 'labelled-tick' }));
    marks.push(text(name(value), [1, level(value)], size, 'start'));
  }
  const at = level(spec.value);
  marks.push(
    polygon(
      [
        [-3.7, at],
        [-8.5, at - 1.7],
        [-8.5, at + 1.7],
      ],
      { fill: INK, stroke: 'none', part: 'pointer' },
    ),
  );
  marks.push(text(spec.unit, [13.6, 4], 4, 'start'));
  marks.push(
    path(
      [
        { to: [0, 30] },
        { to: [0, 32] },
        {
          curve: [
            [3.4, 32],
            [3.4, 36.4],
          ],
          to: [0, 36.4],
        },
      ],
      { widthMm: BOLD_MM },
    ),
    path([{ to: [-5, 38.2] }, { to: [0, 35.4] }, { to: [5, 38.2] }], { widthMm: FINE_MM }),
    path(
      [
        { to: [-5, 38.2] },
        { to: [5, 38.2] },
        {
          curve: [
            [8, 45],
            [6, 45],
          ],
          to: [4, 45],
        },
        { to: [-4, 45] },
        {
          curve: [
            [-6, 45],
            [-8, 45],
          ],
          to: [-5, 38.2],
        },
      ],
      { fill: SHADE, widthMm: LINE_MM },
      true,
    ),
  );
  return marks;
}

/** A letter size at which numbers one above another keep clear of each other. */
function verticalSize(labelled: readonly number[], level: (value: number) => number): number {
  const [first = 0, second] = labelled;
  const pitch = second === undefined ? 10 : Math.abs(level(second) - level(first));
  return Math.max(2.2, Math.min(4, pitch * 1.05));
}
