// Generators of valid figure specifications, for properties that must hold of every picture.
import fc from 'fast-check';
import type { FigureKind, FigureSpec } from '#engine/figures/figure.js';

const natural = (max: number, min = 0) => fc.integer({ min, max });
const word = fc.constantFrom('cat', 'Guinea pigs', 'J & Q', 'yes', 'June', 'a < b', '12', '"odd"');
const mark = fc.constantFrom('?', '7', '350', '1 3/4', '2/5', '12.5', '$4.85', '', '100 cm', '84\u00a0500');
const shapes = fc.constantFrom(
  'triangle',
  'right-triangle',
  'square',
  'rectangle',
  'rhombus',
  'parallelogram',
  'trapezium',
  'kite',
  'pentagon',
  'hexagon',
  'octagon',
  'circle',
  'oval',
);
const item = fc.constantFrom(
  'circle',
  'small grey star',
  'big black heart',
  'hexagon',
  'diamond',
  'arrow right',
  'square',
  'triangle',
  '?',
  '12',
  '3/8',
  '2500',
  'do',
);
const money = fc.constantFrom(
  { currency: 'AUD' as const, coins: [5, 10, 20, 50, 100, 200], notes: [5, 10, 20, 50, 100] },
  { currency: 'GBP' as const, coins: [1, 2, 5, 10, 20, 50, 100, 200], notes: [5, 10, 20, 50] },
  { currency: 'NZD' as const, coins: [10, 20, 50, 100, 200], notes: [5, 10, 20, 50, 100] },
  { currency: 'USD' as const, coins: [1, 5, 10, 25], notes: [1, 5, 10, 20, 50, 100] },
);

const VALID: { readonly [K in FigureKind]: fc.Arbitrary<Extract<FigureSpec, { kind: K }>> } = {
  'number-line': fc.oneof(
    fc
      .record({
        from: fc.integer({ min: -1000, max: 1000 }),
        steps: natural(100, 1),
        step: fc.constantFrom(0.1, 0.25, 1, 2, 5, 10, 100),
        at: fc.double({ min: 0, max: 1, noNaN: true }),
      })
      .map(({ from, steps, step, at }) => ({
        kind: 'number-line' as const,
        from,
        to: from + steps * step,
        step,
        mark: from + at * steps * step,
      })),
    fc.uniqueArray(natural(999), { minLength: 2, maxLength: 6 }).map((stops) => ({
      kind: 'number-line' as const,
      from: Math.min(...stops),
      to: Math.max(...stops),
      step: 0,
      labels: stops,
      jumps: stops.slice(1).map((to, index) => ({
        from: stops[index] ?? 0,
        to,
        label: `+${Math.abs(to - (stops[index] ?? 0))}`,
      })),
    })),
  ),
  'ten-frame': fc.record({ kind: fc.constant('ten-frame'), filled: natural(30), second: natural(15) }),
  'base-ten': fc.record({
    kind: fc.constant('base-ten'),
    hundreds: natural(12),
    tens: natural(25),
    ones: natural(25),
  }),
  array: fc.record({
    kind: fc.constant('array'),
    rows: natural(15, 1),
    columns: natural(20, 1),
    splitAfterColumn: natural(20),
  }),
  clock: fc.record({ kind: fc.constant('clock'), minutes: natural(1439) }),
  'digital-clock': fc.record({
    kind: fc.constant('digital-clock'),
    text: fc.constantFrom('7:45', '00:00', '10:08\u00a0pm'),
  }),
  money: money.chain(({ currency, coins, notes }) =>
    fc.record({
      kind: fc.constant('money'),
      currency: fc.constant(currency),
      coins: fc.array(fc.constantFrom(...coins), { maxLength: 12 }),
      notes: fc.array(fc.constantFrom(...notes), { maxLength: 5 }),
    }),
  ),
  'fraction-bar': fc.record({
    kind: fc.constant('fraction-bar'),
    parts: natural(12, 1),
    shaded: natural(30),
  }),
  'fraction-circle': fc.record({
    kind: fc.constant('fraction-circle'),
    parts: natural(12, 1),
    shaded: natural(30),
  }),
  'fraction-set': fc
    .record({ each: natural(12, 1), groups: natural(8, 1), shaded: natural(12) })
    .map(({ each, groups, shaded }) => ({
      kind: 'fraction-set' as const,
      total: each * groups,
      shaded: Math.min(shaded, each * groups),
      groups,
    })),
  shape: fc.record({
    kind: fc.constant('shape'),
    shape: shapes,
    labels: fc.array(mark, { maxLength: 8 }),
    corners: fc.oneof(
      fc.array(mark, { maxLength: 8 }),
      fc.tuple(natural(120, 1), natural(55, 1)).map(([one, other]) => [`${one}°`, `${other}°`, '?']),
    ),
    mirrorLine: fc.constantFrom('vertical', 'horizontal', 'diagonal'),
  }),
  solid: fc.record({
    kind: fc.constant('solid'),
    solid: fc.constantFrom(
      'cube',
      'cuboid',
      'cylinder',
      'cone',
      'sphere',
      'square-pyramid',
      'triangular-prism',
    ),
  }),
  'grid-rectangle': fc.record({
    kind: fc.constant('grid-rectangle'),
    rows: natural(20, 1),
    columns: natural(20, 1),
    labelRows: mark,
    labelColumns: mark,
  }),
  angle: fc.record({ kind: fc.constant('angle'), degrees: natural(359, 5), turn: natural(359), label: mark }),
  tally: fc.record({
    kind: fc.constant('tally'),
    rows: fc.array(fc.record({ label: word, count: natural(40) }), { minLength: 1, maxLength: 5 }),
  }),
  'bar-chart': fc.record({
    kind: fc.constant('bar-chart'),
    title: word,
    unit: word,
    bars: fc.array(fc.record({ label: word, value: natural(60) }), { minLength: 1, maxLength: 6 }),
    step: fc.constantFrom(1, 2, 5, 10),
  }),
  pictograph: fc.record({
    kind: fc.constant('pictograph'),
    title: word,
    each: fc.constantFrom(1, 2, 3, 4, 5, 10),
    rows: fc.array(fc.record({ label: word, value: natural(30) }), { minLength: 1, maxLength: 5 }),
  }),
  spinner: fc.record({
    kind: fc.constant('spinner'),
    sectors: fc.array(fc.constantFrom('red', 'yellow', '1', '1/2', 'Q', 'win'), {
      minLength: 1,
      maxLength: 12,
    }),
  }),
  pattern: fc.record({
    kind: fc.constant('pattern'),
    items: fc.array(item, { minLength: 1, maxLength: 14 }),
  }),
  ruler: fc
    .record({
      lengthCm: natural(30, 4),
      from: natural(20),
      length: natural(100, 5),
      object: fc.constantFrom('pencil', 'ribbon', 'eraser', 'caterpillar'),
    })
    .map(({ lengthCm, from, length, object }) => ({
      kind: 'ruler' as const,
      lengthCm,
      objectFrom: from / 10,
      objectTo: Math.min(lengthCm, (from + length) / 10),
      object,
    })),
  scale: fc
    .record({
      form: fc.constantFrom('dial' as const, 'jug' as const, 'thermometer' as const, 'balance' as const),
      from: fc.constantFrom(0, -20),
      step: fc.constantFrom(0.5, 1, 2, 50),
      every: fc.constantFrom(1, 2, 5),
      labels: natural(10, 1),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      unit: fc.constantFrom('kg', 'g', 'mL', '°C'),
    })
    .map(({ form, from, step, every, labels, at, unit }) => {
      const span = step * every * labels;
      return {
        kind: 'scale' as const,
        form,
        from,
        to: from + span,
        step,
        labelEvery: step * every,
        value: from + Math.round(at * every * labels * 2) * (step / 2),
        unit,
      };
    }),
  'bar-model': fc.record({
    kind: fc.constant('bar-model'),
    whole: mark,
    parts: fc.array(mark, { minLength: 1, maxLength: 8 }),
    shaded: natural(8),
  }),
  'part-whole': fc.record({
    kind: fc.constant('part-whole'),
    whole: mark,
    parts: fc.array(mark, { minLength: 1, maxLength: 4 }),
  }),
  dots: fc.record({
    kind: fc.constant('dots'),
    groups: fc.array(natural(9), { minLength: 1, maxLength: 3 }),
    layout: fc.constantFrom('dice', 'row'),
  }),
  table: fc.record({
    kind: fc.constant('table'),
    rows: fc.tuple(natural(6, 1), natural(6, 1)).chain(([columns, rows]) =>
      fc.array(fc.array(mark, { minLength: columns, maxLength: columns }), {
        minLength: rows,
        maxLength: rows,
      }),
    ),
    heads: fc.constantFrom('row', 'column', 'both'),
  }),
  coordinates: fc
    .tuple(fc.constantFrom([0, 8] as const, [0, 10] as const, [-5, 5] as const, [-8, 8] as const), natural(3))
    .chain(([[from, to], count]) =>
      fc.record({
        kind: fc.constant('coordinates' as const),
        from: fc.constant(from),
        to: fc.constant(to),
        points: fc.array(
          fc.record({ name: fc.constantFrom('A', 'B', 'P'), x: natural(to, from), y: natural(to, from) }),
          { maxLength: count },
        ),
      }),
    ),
  'line-graph': fc.record({
    kind: fc.constant('line-graph'),
    title: word,
    unit: word,
    from: fc.constantFrom(0, 10),
    step: fc.constantFrom(1, 2, 5, 10),
    points: fc.array(fc.record({ label: word, value: natural(60, 10) }), { minLength: 1, maxLength: 6 }),
  }),
  'pie-chart': fc.record({
    kind: fc.constant('pie-chart'),
    title: word,
    slices: fc.array(fc.record({ label: word, parts: natural(9, 1) }), { minLength: 1, maxLength: 6 }),
  }),
  calendar: fc.record({
    kind: fc.constant('calendar'),
    month: fc.constantFrom('June', 'September'),
    days: natural(31, 28),
    firstWeekday: natural(7, 1),
    sundayFirst: fc.boolean(),
    ringed: fc.array(natural(28, 1), { maxLength: 3 }),
  }),
  'hundred-square': fc.record({
    kind: fc.constant('hundred-square'),
    from: natural(60, 1),
    rows: natural(4, 1),
    columns: natural(5, 1),
    hidden: fc.array(natural(99, 1), { maxLength: 4 }),
  }),
  'area-model': fc
    .tuple(
      fc.array(natural(90, 1), { minLength: 1, maxLength: 3 }),
      fc.array(natural(90, 1), { minLength: 1, maxLength: 2 }),
    )
    .chain(([across, down]) =>
      fc
        .array(mark, { minLength: across.length * down.length, maxLength: across.length * down.length })
        .map((cells) => ({ kind: 'area-model' as const, across, down, cells })),
    ),
  net: fc.record({
    kind: fc.constant('net'),
    net: fc.constantFrom(
      'cube',
      'cube-steps',
      'not-cube-row',
      'not-cube-block',
      'open-box',
      'cuboid',
      'cylinder',
      'square-pyramid',
      'triangular-prism',
    ),
  }),
  'line-pair': fc.record({
    kind: fc.constant('line-pair'),
    relation: fc.constantFrom('parallel', 'perpendicular', 'slanted'),
    turn: fc.constantFrom(0, 30, 90, 115),
  }),
  'symmetry-grid': fc.record({
    kind: fc.constant('symmetry-grid'),
    columns: fc.constantFrom(4, 6, 8),
    rows: natural(6, 1),
    filled: fc.array(fc.tuple(natural(3), natural(0)), { maxLength: 5 }),
  }),
};

/** A generator of valid specifications of the kind. */
export function validSpecs<K extends FigureKind>(kind: K): fc.Arbitrary<Extract<FigureSpec, { kind: K }>> {
  return VALID[kind];
}
