// Figure specifications: what to draw, never a picture. draw.ts turns one into SVG for screen and print alike.

/** One drawable thing; `kind` names the file that draws it. Every field is plain JSON. */
export type FigureSpec =
  | { readonly kind: 'number-line'; readonly from: number; readonly to: number; readonly step: number; readonly labels?: readonly number[]; readonly mark?: number; readonly jumps?: readonly { readonly from: number; readonly to: number; readonly label: string }[] }
  | { readonly kind: 'ten-frame'; readonly filled: number; readonly frames?: number; readonly second?: number }
  | { readonly kind: 'base-ten'; readonly hundreds: number; readonly tens: number; readonly ones: number }
  | { readonly kind: 'array'; readonly rows: number; readonly columns: number; readonly splitAfterColumn?: number }
  | { readonly kind: 'clock'; readonly minutes: number }
  | { readonly kind: 'digital-clock'; readonly text: string }
  | { readonly kind: 'money'; readonly currency: 'AUD' | 'GBP' | 'USD'; readonly coins: readonly number[]; readonly notes: readonly number[] }
  | { readonly kind: 'fraction-bar'; readonly parts: number; readonly shaded: number; readonly bars?: number }
  | { readonly kind: 'fraction-circle'; readonly parts: number; readonly shaded: number }
  | { readonly kind: 'fraction-set'; readonly total: number; readonly shaded: number; readonly groups?: number }
  | { readonly kind: 'shape'; readonly shape: 'triangle' | 'right-triangle' | 'square' | 'rectangle' | 'rhombus' | 'parallelogram' | 'trapezium' | 'kite' | 'pentagon' | 'hexagon' | 'octagon' | 'circle' | 'oval'; readonly labels?: readonly string[]; readonly mirrorLine?: 'vertical' | 'horizontal' | 'diagonal' }
  | { readonly kind: 'solid'; readonly solid: 'cube' | 'cuboid' | 'cylinder' | 'cone' | 'sphere' | 'square-pyramid' | 'triangular-prism' }
  | { readonly kind: 'grid-rectangle'; readonly rows: number; readonly columns: number; readonly labelRows?: string; readonly labelColumns?: string }
  | { readonly kind: 'angle'; readonly degrees: number; readonly label?: string; readonly turn?: number }
  | { readonly kind: 'tally'; readonly rows: readonly { readonly label: string; readonly count: number }[] }
  | { readonly kind: 'bar-chart'; readonly title: string; readonly unit: string; readonly bars: readonly { readonly label: string; readonly value: number }[]; readonly step: number }
  | { readonly kind: 'pictograph'; readonly title: string; readonly each: number; readonly rows: readonly { readonly label: string; readonly value: number }[] }
  | { readonly kind: 'spinner'; readonly sectors: readonly string[] }
  | { readonly kind: 'pattern'; readonly items: readonly string[] }
  | { readonly kind: 'ruler'; readonly lengthCm: number; readonly objectFrom: number; readonly objectTo: number; readonly object: string }
  | { readonly kind: 'scale'; readonly form: 'dial' | 'jug' | 'thermometer' | 'balance'; readonly from: number; readonly to: number; readonly step: number; readonly labelEvery: number; readonly value: number; readonly unit: string }
  | { readonly kind: 'bar-model'; readonly whole: string; readonly parts: readonly string[] }
  | { readonly kind: 'part-whole'; readonly whole: string; readonly parts: readonly string[] };

export type FigureKind = FigureSpec['kind'];

/** A drawn figure. The viewBox is in millimetres (1 unit = 1 mm); `alt` tells a screen reader what is seen, never the answer. */
export interface Figure {
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly alt: string;
}
