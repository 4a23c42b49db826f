// Figure specifications to try: fixed samples for golden pictures, and generators of valid ones.
import fc from 'fast-check';
import type { FigureKind, FigureSpec } from '#engine/figures/figure.js';

/** One or two telling specifications of every kind; the key names the golden picture. */
export const SAMPLES: Readonly<Record<string, FigureSpec>> = {
  'number-line-marked': { kind: 'number-line', from: 0, to: 20, step: 1, labels: [0, 10, 20], mark: 14 },
  'number-line-fractions': { kind: 'number-line', from: 0, to: 2, step: 0.25, denominator: 4 },
  'number-line-jumps': {
    kind: 'number-line',
    from: 47,
    to: 85,
    step: 0,
    labels: [47, 77, 85],
    jumps: [
      { from: 47, to: 77, label: '+30' },
      { from: 77, to: 85, label: '+8' },
    ],
  },
  'number-line-back': {
    kind: 'number-line',
    from: 89,
    to: 129,
    step: 0,
    labels: [89, 128, 129],
    jumps: [
      { from: 89, to: 129, label: '+40' },
      { from: 129, to: 128, label: '\u22121' },
    ],
  },
  'ten-frame': { kind: 'ten-frame', filled: 8, second: 5 },
  'base-ten': { kind: 'base-ten', hundreds: 2, tens: 3, ones: 4 },
  'base-ten-ones': { kind: 'base-ten', hundreds: 0, tens: 0, ones: 8 },
  array: { kind: 'array', rows: 7, columns: 8, splitAfterColumn: 5 },
  'clock-7-45': { kind: 'clock', minutes: 465 },
  'clock-10-17': { kind: 'clock', minutes: 617 },
  'digital-clock': { kind: 'digital-clock', text: '19:05' },
  'money-aud': { kind: 'money', currency: 'AUD', coins: [5, 20, 20, 50, 100, 200], notes: [5, 10, 20] },
  'money-gbp': { kind: 'money', currency: 'GBP', coins: [1, 2, 50, 200], notes: [] },
  'fraction-bar': { kind: 'fraction-bar', parts: 3, shaded: 5 },
  'fraction-circle': { kind: 'fraction-circle', parts: 8, shaded: 3 },
  'fraction-set': { kind: 'fraction-set', total: 12, shaded: 4, groups: 3 },
  'shape-triangle': { kind: 'shape', shape: 'triangle', labels: ['6 cm', '5 cm', '?'] },
  'shape-mirror': { kind: 'shape', shape: 'rectangle', mirrorLine: 'diagonal' },
  'shape-angles': { kind: 'shape', shape: 'triangle', corners: ['79°', '58°', '?'] },
  'solid-prism': { kind: 'solid', solid: 'triangular-prism' },
  'solid-cylinder': { kind: 'solid', solid: 'cylinder' },
  'grid-rectangle': { kind: 'grid-rectangle', rows: 4, columns: 9, labelRows: '4 cm', labelColumns: '9 cm' },
  'angle-narrow': { kind: 'angle', degrees: 25, label: '25°', turn: 40 },
  'angle-square': { kind: 'angle', degrees: 90 },
  tally: {
    kind: 'tally',
    rows: [
      { label: 'Cats', count: 13 },
      { label: 'Guinea pigs', count: 4 },
      { label: 'Fish', count: 0 },
    ],
  },
  'bar-chart': {
    kind: 'bar-chart',
    title: 'Books read',
    unit: 'books',
    bars: [
      { label: 'Mon', value: 20 },
      { label: 'Tue', value: 35 },
      { label: 'Wed', value: 0 },
    ],
    step: 10,
  },
  pictograph: {
    kind: 'pictograph',
    title: 'Apples picked',
    each: 4,
    rows: [
      { label: 'Ana', value: 14 },
      { label: 'Ben', value: 8 },
      { label: 'Chi', value: 5 },
    ],
  },
  spinner: { kind: 'spinner', sectors: ['red', 'red', 'blue', 'green'] },
  'spinner-eight': {
    kind: 'spinner',
    sectors: ['yellow', 'red', 'yellow', 'blue', 'green', 'yellow', 'red', 'blue'],
  },
  'pattern-shapes': {
    kind: 'pattern',
    items: ['big black triangle', 'small white star', 'grey heart', 'arrow left', '?'],
  },
  'pattern-numbers': { kind: 'pattern', items: ['1/4', '1/2', '3/4', '1', '?'] },
  'ruler-pencil': { kind: 'ruler', lengthCm: 8, objectFrom: 0, objectTo: 6, object: 'pencil' },
  'ruler-tenths': { kind: 'ruler', lengthCm: 6, objectFrom: 1, objectTo: 4.3, object: 'eraser' },
  'scale-dial': {
    kind: 'scale',
    form: 'dial',
    from: 0,
    to: 1000,
    step: 50,
    labelEvery: 100,
    value: 350,
    unit: 'g',
  },
  'scale-jug': {
    kind: 'scale',
    form: 'jug',
    from: 0,
    to: 500,
    step: 50,
    labelEvery: 100,
    value: 400,
    unit: 'mL',
  },
  'scale-thermometer': {
    kind: 'scale',
    form: 'thermometer',
    from: -10,
    to: 40,
    step: 2,
    labelEvery: 10,
    value: 16,
    unit: '°C',
  },
  'scale-balance': {
    kind: 'scale',
    form: 'balance',
    from: 0,
    to: 10,
    step: 1,
    labelEvery: 2,
    value: 7,
    unit: 'kg',
  },
  'bar-model': { kind: 'bar-model', whole: '20', parts: ['5', '5', '5', '5'], shaded: 3 },
  'bar-model-unknown': { kind: 'bar-model', whole: '63', parts: ['29', '?'] },
  'part-whole': { kind: 'part-whole', whole: '?', parts: ['350', '125', '25'] },
  'dots-dice': { kind: 'dots', groups: [5, 3], layout: 'dice' },
  'dots-row': { kind: 'dots', groups: [4], layout: 'row' },
  'table-buses': {
    kind: 'table',
    heads: 'both',
    rows: [
      ['Stop', 'Bus 1', 'Bus 2'],
      ['School', '8:05', '8:35'],
      ['Library', '8:17', '8:47'],
    ],
  },
  'coordinates-first': {
    kind: 'coordinates',
    from: 0,
    to: 8,
    points: [
      { name: 'A', x: 3, y: 5 },
      { name: 'B', x: 6, y: 2 },
    ],
  },
  'coordinates-four': { kind: 'coordinates', from: -5, to: 5, points: [{ name: 'A', x: -3, y: 2 }] },
  'line-graph': {
    kind: 'line-graph',
    title: 'Temperature',
    unit: '°C',
    from: 0,
    step: 5,
    points: [
      { label: '8 am', value: 5 },
      { label: '10 am', value: 15 },
      { label: 'noon', value: 20 },
      { label: '2 pm', value: 10 },
    ],
  },
  'pie-chart': {
    kind: 'pie-chart',
    title: 'Ways to school',
    slices: [
      { label: 'walk', parts: 4 },
      { label: 'bus', parts: 2 },
      { label: 'bike', parts: 1 },
      { label: 'car', parts: 1 },
    ],
  },
  calendar: { kind: 'calendar', month: 'June', days: 30, firstWeekday: 4, ringed: [9] },
  'hundred-square': { kind: 'hundred-square', from: 34, rows: 3, columns: 4, hidden: [46] },
  'area-model': { kind: 'area-model', across: [20, 7], down: [4], cells: ['80', '?'] },
  'net-cube': { kind: 'net', net: 'cube' },
  'net-pyramid': { kind: 'net', net: 'square-pyramid' },
  'net-cylinder': { kind: 'net', net: 'cylinder' },
  'net-prism': { kind: 'net', net: 'triangular-prism' },
  'line-pair': { kind: 'line-pair', relation: 'perpendicular' },
  'symmetry-grid': {
    kind: 'symmetry-grid',
    columns: 6,
    rows: 4,
    filled: [
      [2, 0],
      [1, 1],
      [2, 2],
    ],
  },
};

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
