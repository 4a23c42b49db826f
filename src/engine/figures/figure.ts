// Figure specifications: what to draw, never a picture. draw.ts turns one into SVG for screen and print alike.
import type { CurrencyCode } from '../numbers/locale.js';

/** One drawable thing; `kind` names the file that draws it. Every field is plain JSON. */
export type FigureSpec =
  | {
      readonly kind: 'number-line';
      readonly from: number;
      readonly to: number;
      readonly step: number;
      readonly labels?: readonly number[];
      readonly mark?: number;
      readonly denominator?: number;
      readonly jumps?: readonly { readonly from: number; readonly to: number; readonly label: string }[];
    }
  | {
      readonly kind: 'ten-frame';
      readonly filled: number;
      readonly frames?: number;
      readonly second?: number;
    }
  | { readonly kind: 'base-ten'; readonly hundreds: number; readonly tens: number; readonly ones: number }
  | {
      readonly kind: 'array';
      readonly rows: number;
      readonly columns: number;
      readonly splitAfterColumn?: number;
    }
  | { readonly kind: 'clock'; readonly minutes: number }
  | { readonly kind: 'digital-clock'; readonly text: string }
  | {
      readonly kind: 'money';
      readonly currency: CurrencyCode;
      readonly coins: readonly number[];
      readonly notes: readonly number[];
    }
  | { readonly kind: 'fraction-bar'; readonly parts: number; readonly shaded: number; readonly bars?: number }
  | { readonly kind: 'fraction-circle'; readonly parts: number; readonly shaded: number }
  | {
      readonly kind: 'fraction-set';
      readonly total: number;
      readonly shaded: number;
      readonly groups?: number;
    }
  | {
      readonly kind: 'shape';
      readonly shape:
        | 'triangle'
        | 'right-triangle'
        | 'square'
        | 'rectangle'
        | 'rhombus'
        | 'parallelogram'
        | 'trapezium'
        | 'kite'
        | 'pentagon'
        | 'hexagon'
        | 'octagon'
        | 'circle'
        | 'oval';
      readonly labels?: readonly string[];
      readonly corners?: readonly string[];
      readonly mirrorLine?: 'vertical' | 'horizontal' | 'diagonal';
    }
  | {
      readonly kind: 'solid';
      readonly solid:
        | 'cube'
        | 'cuboid'
        | 'cylinder'
        | 'cone'
        | 'sphere'
        | 'square-pyramid'
        | 'triangular-prism';
    }
  | {
      readonly kind: 'grid-rectangle';
      readonly rows: number;
      readonly columns: number;
      readonly labelRows?: string;
      readonly labelColumns?: string;
    }
  | {
      readonly kind: 'angle';
      readonly degrees: number;
      readonly label?: string;
      readonly turn?: number;
      /** An arc for a right angle too, where its square would give the answer away. */
      readonly plainArc?: boolean;
    }
  | { readonly kind: 'tally'; readonly rows: readonly { readonly label: string; readonly count: number }[] }
  | {
      readonly kind: 'bar-chart';
      readonly title: string;
      readonly unit: string;
      readonly bars: readonly { readonly label: string; readonly value: number }[];
      readonly step: number;
    }
  | {
      readonly kind: 'pictograph';
      readonly title: string;
      readonly each: number;
      readonly rows: readonly { readonly label: string; readonly value: number }[];
    }
  | { readonly kind: 'spinner'; readonly sectors: readonly string[] }
  | { readonly kind: 'pattern'; readonly items: readonly string[] }
  | {
      readonly kind: 'ruler';
      readonly lengthCm: number;
      readonly objectFrom: number;
      readonly objectTo: number;
      readonly object: string;
    }
  | {
      readonly kind: 'scale';
      readonly form: 'dial' | 'jug' | 'thermometer' | 'balance';
      readonly from: number;
      readonly to: number;
      readonly step: number;
      readonly labelEvery: number;
      readonly value: number;
      readonly unit: string;
    }
  | {
      readonly kind: 'bar-model';
      readonly whole: string;
      readonly parts: readonly string[];
      readonly shaded?: number;
    }
  | { readonly kind: 'part-whole'; readonly whole: string; readonly parts: readonly string[] }
  | { readonly kind: 'dots'; readonly groups: readonly number[]; readonly layout: 'dice' | 'row' }
  | {
      readonly kind: 'table';
      readonly rows: readonly (readonly string[])[];
      readonly heads: 'row' | 'column' | 'both';
    }
  | {
      readonly kind: 'coordinates';
      readonly from: number;
      readonly to: number;
      readonly points: readonly { readonly name: string; readonly x: number; readonly y: number }[];
    }
  | {
      readonly kind: 'line-graph';
      readonly title: string;
      readonly unit: string;
      readonly from: number;
      readonly step: number;
      readonly points: readonly { readonly label: string; readonly value: number }[];
    }
  | {
      readonly kind: 'pie-chart';
      readonly title: string;
      readonly slices: readonly { readonly label: string; readonly parts: number }[];
    }
  | {
      readonly kind: 'calendar';
      readonly month: string;
      readonly days: number;
      readonly firstWeekday: number;
      readonly sundayFirst?: boolean;
      readonly ringed?: readonly number[];
    }
  | {
      readonly kind: 'hundred-square';
      readonly from: number;
      readonly rows: number;
      readonly columns: number;
      readonly hidden: readonly number[];
    }
  | {
      readonly kind: 'area-model';
      readonly across: readonly number[];
      readonly down: readonly number[];
      readonly cells: readonly string[];
    }
  | {
      readonly kind: 'net';
      readonly net:
        | 'cube'
        | 'cube-steps'
        | 'not-cube-row'
        | 'not-cube-block'
        | 'open-box'
        | 'cuboid'
        | 'cylinder'
        | 'square-pyramid'
        | 'triangular-prism';
    }
  | {
      readonly kind: 'line-pair';
      readonly relation: 'parallel' | 'perpendicular' | 'slanted';
      readonly turn?: number;
    }
  | {
      readonly kind: 'symmetry-grid';
      readonly columns: number;
      readonly rows: number;
      readonly filled: readonly (readonly [column: number, row: number])[];
    };

// What the fields mean where the name alone does not say:
// number-line  step 0: an open line, drawn with only its labels, marks and jump ends, not to scale; denominator: labels
//              are written as fractions over it; labels left out: as many as fit; a jump's label is text such as "+30"
// ten-frame    second: counters of another sort after the filled ones; frames left out: as many as are needed
// array        splitAfterColumn: a dashed line after that many columns, the dots beyond it light
// clock        minutes after midnight or noon
// money        coins in minor units (cents), notes in main units (dollars)
// fraction-*   shaded may exceed parts: further bars or circles are drawn; a set's groups are equal and ringed
// shape        labels: one for each side, clockwise from the top side (or the upper right one), "" for none; a circle's
//              first label is its radius, an oval takes none; corners: labels inside the corners, from the highest (or top
//              left) one clockwise: two angles of a triangle ("79°", "58°", "?") make it true to them
// grid-rectangle labelRows stands at the left (the height), labelColumns below (the width)
// angle        anticlockwise from an arm at `turn` degrees anticlockwise from pointing right; up to 360
// spinner      equal sectors, clockwise from the top
// pattern      an item is a shape's name (see SHAPE_ITEMS in kinds/pattern.ts), optionally after black, grey or white and
//              after big or small ("small black circle"); "?" is an empty place; anything else is printed as it stands
// ruler        starts at 0; object is a singular noun: "pencil"
// scale        labelEvery in the scale's own units: a number stands at from, from + labelEvery, ...
// table        heads: which cells stand on grey
// coordinates  grid lines at every whole number from `from` (0 or below) to `to` on both axes
// line-graph   from: the value at the foot of the scale; the points are joined in order
// pie-chart    parts: counts out of their sum, clockwise from the top
// calendar     firstWeekday: 1 (Monday) to 7 (Sunday) of the 1st; ringed: days on grey
// hundred-square from: the number at the top left; each row is ten further on
// area-model   cells row by row
// line-pair    turn: degrees anticlockwise from level
// symmetry-grid an even number of columns; filled: squares from the top left, counted from 0
// bar-model    whole above the bar, parts inside, "?" for the unknown; shaded: the first so many parts are grey

export type FigureKind = FigureSpec['kind'];

/** A drawn figure. The viewBox is in millimetres (1 unit = 1 mm); `alt` tells a screen reader what is seen, never the answer. */
export interface Figure {
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Scaled down below this width, in mm, its smallest letters fall under 6 points; never more than widthMm. */
  readonly leastWidthMm: number;
  readonly alt: string;
}
