// The flat shapes of the shape strand: names, sides, lines of symmetry and what each is taken for.
/** A flat shape with what a child may be asked about it. */
export interface Flat {
  readonly shape:
    | 'triangle'
    | 'square'
    | 'rectangle'
    | 'pentagon'
    | 'hexagon'
    | 'octagon'
    | 'circle'
    | 'rhombus'
    | 'kite';
  readonly name: string;
  readonly many: string;
  readonly sides: number;
  readonly mirrors: number;
  readonly wrongMirrors: number;
  readonly lookalike: string;
}

/** The flat shapes that classes name. Line counts are those of the regular shape, or of a rectangle, rhombus or kite that is no square. */
export const FLATS: readonly Flat[] = [
  {
    shape: 'triangle',
    name: 'triangle',
    many: 'triangles',
    sides: 3,
    mirrors: 3,
    wrongMirrors: 1,
    lookalike: 'pyramid',
  },
  {
    shape: 'square',
    name: 'square',
    many: 'squares',
    sides: 4,
    mirrors: 4,
    wrongMirrors: 2,
    lookalike: 'cube',
  },
  {
    shape: 'rectangle',
    name: 'rectangle',
    many: 'rectangles',
    sides: 4,
    mirrors: 2,
    wrongMirrors: 4,
    lookalike: 'square',
  },
  {
    shape: 'pentagon',
    name: 'pentagon',
    many: 'pentagons',
    sides: 5,
    mirrors: 5,
    wrongMirrors: 1,
    lookalike: 'hexagon',
  },
  {
    shape: 'hexagon',
    name: 'hexagon',
    many: 'hexagons',
    sides: 6,
    mirrors: 6,
    wrongMirrors: 2,
    lookalike: 'pentagon',
  },
  {
    shape: 'octagon',
    name: 'octagon',
    many: 'octagons',
    sides: 8,
    mirrors: 8,
    wrongMirrors: 2,
    lookalike: 'hexagon',
  },
  {
    shape: 'circle',
    name: 'circle',
    many: 'circles',
    sides: 0,
    mirrors: 0,
    wrongMirrors: 0,
    lookalike: 'ball',
  },
  {
    shape: 'rhombus',
    name: 'rhombus',
    many: 'rhombuses',
    sides: 4,
    mirrors: 2,
    wrongMirrors: 4,
    lookalike: 'square',
  },
  { shape: 'kite', name: 'kite', many: 'kites', sides: 4, mirrors: 1, wrongMirrors: 2, lookalike: 'rhombus' },
];
