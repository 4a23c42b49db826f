// Position: places in a row, directions on a plan, grid squares, coordinates in one quadrant and in four.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { inSentence, worded } from '../offered.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';

type Place = readonly [x: number, y: number];

const IN_ROW = ['circle', 'square', 'triangle', 'star', 'heart', 'diamond'] as const;
const ORDINALS = ['first', 'second', 'third', 'fourth'] as const;

const besideInRow = templateOf<readonly [row: readonly string[], at: number, right: boolean]>({
  id: 'beside',
  free: (rng) => [rng.shuffle([...IN_ROW]).slice(0, 4), rng.int(1, 2), rng.chance(0.5)],
  draft: ([row, at, right]) => {
    const way = right ? 1 : -1;
    return worded({
      text: `In the row ${inSentence(row, 'and')}, what is just to the ${right ? 'right' : 'left'} of the ${row[at]}?`,
      right: row[at + way] ?? '',
      wrong: [['position.wrong-way', row[at - way] ?? '']],
      features: { drawn: true },
      strategy: [`Find the ${row[at]}, then go one place to the ${right ? 'right' : 'left'}`],
      figure: { kind: 'pattern', items: row },
    });
  },
});

const numberedInRow = templateOf<readonly [row: readonly string[], at: number, fromRight: boolean]>({
  id: 'numbered',
  free: (rng) => [rng.shuffle([...IN_ROW]).slice(0, 5), rng.int(1, 3), rng.chance(0.3)],
  draft: ([row, at, fromRight]) => {
    const counted = fromRight ? [...row].reverse() : row;
    return worded({
      text: `In the row ${inSentence(row, 'and')}, what is ${ORDINALS[at]} from the ${fromRight ? 'right' : 'left'}?`,
      right: counted[at] ?? '',
      wrong: [
        ['position.wrong-way', [...counted].reverse()[at] ?? ''],
        ['shape.one-short', counted[at - 1] ?? ''],
      ],
      features: { drawn: true, size: at / 3, extraSteps: fromRight ? 1 : 0 },
      strategy: [`Count from the ${fromRight ? 'right' : 'left'}: ${counted.slice(0, at + 1).join(', ')}`],
      figure: { kind: 'pattern', items: row },
    });
  },
});

const right = (n: number) => `${n} ${n < 0 ? 'left' : 'right'}`.replace('-', '');
const up = (n: number) => `${n} ${n < 0 ? 'down' : 'up'}`.replace('-', '');

interface Walk {
  readonly start: Place;
  readonly across: number;
  readonly along: number;
  /** The letter at the end, at the end of the swapped steps, and at the end of the steps the other way. */
  readonly letters: readonly [string, string, string];
}

function walk(rng: Rng): Walk {
  const across = rng.pick([-3, -2, -1, 1, 2, 3]);
  const along = rng.pick([-3, -2, -1, 1, 2, 3].filter((n) => Math.abs(n) !== Math.abs(across)));
  return {
    start: [3, 3],
    across,
    along,
    letters: rng.pick([
      ['B', 'C', 'D'],
      ['C', 'D', 'B'],
      ['D', 'B', 'C'],
    ]),
  };
}

const followSteps = templateOf<Walk>({
  id: 'follow',
  free: walk,
  draft: ({ start: [x, y], across, along, letters: [end, swapped, otherWay] }) =>
    worded({
      text: `Start at A on the plan. Go ${right(across)} and ${up(along)}. Where are you?`,
      right: end,
      wrong: [
        ['position.swapped', swapped],
        ['position.wrong-way', otherWay],
      ],
      features: { drawn: true, size: (Math.abs(across) + Math.abs(along)) / 4 },
      strategy: [`From A go ${right(across)}`, `Then go ${up(along)}: there is ${end}`],
      figure: {
        kind: 'coordinates',
        from: 0,
        to: 6,
        points: [
          { name: 'A', x, y },
          { name: end, x: x + across, y: y + along },
          // Who swaps the two counts still goes the ways that are named: 2 left and 1 up becomes 1 left and 2 up.
          {
            name: swapped,
            x: x + Math.sign(across) * Math.abs(along),
            y: y + Math.sign(along) * Math.abs(across),
          },
          { name: otherWay, x: x - across, y: y + along },
        ].sort((a, b) => a.name.localeCompare(b.name)),
      },
    }),
});

const stepsBetween = templateOf<readonly [walk: Walk, askUp: boolean]>({
  id: 'how-far',
  free: (rng) => [walk(rng), rng.chance(0.5)],
  draft: (
    [
      {
        start: [x, y],
        across,
        along,
      },
      askUp,
    ],
    { locale },
  ) => {
    const asked = Math.abs(askUp ? along : across);
    const known = askUp ? right(across) : up(along);
    const way = askUp ? (along < 0 ? 'down' : 'up') : across < 0 ? 'left' : 'right';
    return {
      text: `From A to B you go ${known} and how many ${way}?`,
      answer: wholeAnswer(asked, locale),
      expression: askUp ? `abs(${y + along} - ${y})` : `abs(${x + across} - ${x})`,
      features: { drawn: true, size: asked / 4 },
      strategy: [`Count the steps ${way} from A until level with B: ${asked}`],
      slips: wholeSlips(
        [
          ['part.rest-given', Math.abs(askUp ? across : along)],
          ['count.off-by-one', asked + 1],
        ],
        locale,
      ),
      figure: {
        kind: 'coordinates',
        from: 0,
        to: 6,
        points: [
          { name: 'A', x, y },
          { name: 'B', x: x + across, y: y + along },
        ],
      },
    };
  },
});

const THINGS = ['pond', 'oak', 'shed', 'well', 'barn', 'gate'] as const;
const COLUMNS = ['A', 'B', 'C', 'D'] as const;

interface Plan {
  readonly thing: string;
  readonly others: readonly string[];
  readonly column: number;
  readonly row: number;
}

function plan(rng: Rng): Plan {
  const [thing = 'pond', ...others] = rng.shuffle([...THINGS]);
  const column = rng.int(0, 3);
  const row = rng.pick([0, 1, 2, 3].filter((n) => n !== column));
  return { thing, others, column, row };
}

/** The column to the right; to the left at the end. */
const beside = (column: number) => (column === 3 ? 2 : column + 1);

/** A plan with columns A to D and rows 1 to 4: the thing asked for, one at the swapped place, one beside it. */
function planFigure({ thing, others, column, row }: Plan) {
  const cells = Array.from({ length: 4 }, () => Array.from({ length: 4 }, () => ''));
  const put = (r: number, c: number, name: string) => {
    const line = cells[r];
    if (line && line[c] === '') line[c] = name;
  };
  put(row, column, thing);
  put(column, row, others[0] ?? 'oak');
  put(row, beside(column), others[1] ?? 'shed');
  return {
    kind: 'table' as const,
    heads: 'both' as const,
    rows: [['', ...COLUMNS], ...cells.map((line, i) => [String(i + 1), ...line])],
  };
}

const whichSquare = templateOf<Plan>({
  id: 'square-of',
  free: plan,
  draft: (here) => {
    const square = `${COLUMNS[here.column]}${here.row + 1}`;
    return worded({
      text: `In which square of the plan is the ${here.thing}?`,
      right: square,
      accepts: [`${here.row + 1}${COLUMNS[here.column]}`],
      wrong: [
        ['position.swapped', `${COLUMNS[here.row]}${here.column + 1}`],
        ['graph.other-point', `${COLUMNS[beside(here.column)]}${here.row + 1}`],
      ],
      features: { drawn: true, size: here.row / 6 },
      strategy: [`Up to the letter: ${COLUMNS[here.column]}`, `Across to the number: ${here.row + 1}`],
      figure: planFigure(here),
    });
  },
});

const whatIsIn = templateOf<Plan>({
  id: 'in-square',
  free: plan,
  draft: (here) =>
    worded({
      text: `What is in square ${COLUMNS[here.column]}${here.row + 1} of the plan?`,
      right: here.thing,
      wrong: [
        ['position.swapped', here.others[0] ?? ''],
        ['graph.other-point', here.others[1] ?? ''],
      ],
      features: { drawn: true },
      strategy: [`Go down column ${COLUMNS[here.column]} to row ${here.row + 1}: ${here.thing}`],
      figure: planFigure(here),
    }),
});

const pair = (x: number, y: number) => `(${formatSigned(x)}, ${formatSigned(y)})`;
const formatSigned = (n: number) => String(n).replace('-', '−');
const typed = (x: number, y: number) => [`(${x},${y})`, `(${x}, ${y})`, `${x}, ${y}`, `${x},${y}`];

/** True where a dot would cover one of the numbers that stand just left of and just below the axes, at every even step. */
const onNumber = (x: number, y: number) => (x === -1 && y % 2 === 0) || (y === -1 && x % 2 === 0);

/** A point off both axes and off the diagonal, so that swapped numbers name another point. */
function point(rng: Rng, low: number, high: number): Place {
  const numbers = Array.from({ length: high - low + 1 }, (_, i) => low + i).filter((n) => n !== 0);
  const x = rng.pick(numbers);
  return [x, rng.pick(numbers.filter((n) => Math.abs(n) !== Math.abs(x) && !onNumber(x, n)))];
}

function readPoint(low: number, high: number) {
  return templateOf<Place>({
    id: 'read',
    // A step from the edges, where letters would run into the numbers of the axes.
    free: (rng) => point(rng, low < 0 ? low + 1 : 1, high - 1),
    draft: ([x, y]) =>
      worded({
        text: 'What are the coordinates of point A?',
        right: pair(x, y),
        accepts: typed(x, y),
        wrong: [
          ['position.swapped', pair(y, x)],
          low < 0
            ? ['position.sign-lost', pair(Math.abs(x), Math.abs(y))]
            : ['position.one-out', pair(x + 1, y + 1)],
          // Only a point left of zero has a minus sign there to leave out.
          ...(low < 0 ? [[x < 0 ? 'position.sign-lost' : 'position.wrong-way', pair(-x, y)] as const] : []),
        ],
        features: { drawn: true, extraSteps: (x < 0 ? 1 : 0) + (y < 0 ? 0.5 : 0) },
        strategy: [
          `From zero go ${right(x)}: the first number is ${formatSigned(x)}`,
          `Then go ${up(y)}: the second is ${formatSigned(y)}`,
        ],
        figure: { kind: 'coordinates', from: low, to: high, points: [{ name: 'A', x, y }] },
      }),
  });
}

const whichPoint = templateOf<readonly [place: Place, letters: readonly string[]]>({
  id: 'which',
  free: (rng) => [point(rng, 2, 5), rng.shuffle(['A', 'B', 'C'])],
  // Who counts zero as one comes out one short both ways.
  draft: ([[x, y], [here = 'A', swapped = 'B', short = 'C']]) =>
    worded({
      text: `Which point is at ${pair(x, y)}: A, B or C?`,
      right: here,
      wrong: [
        ['position.swapped', swapped],
        ['position.one-out', short],
      ],
      features: { drawn: true, fewChoices: true },
      strategy: [`From zero go ${right(x)}, then ${up(y)}: there is ${here}`],
      figure: {
        kind: 'coordinates',
        from: 0,
        to: 6,
        points: [
          { name: here, x, y },
          { name: swapped, x: y, y: x },
          { name: short, x: x - 1, y: y - 1 },
        ].sort((a, b) => a.name.localeCompare(b.name)),
      },
    }),
});

interface Move {
  readonly place: Place;
  readonly across: number;
  readonly along: number;
}

function move(low: number, high: number) {
  return templateOf<Move>({
    id: 'move',
    free: (rng) => ({
      place: point(rng, low, high),
      across: rng.pick([-4, -3, -2, 2, 3, 4]),
      along: rng.pick([-1, 1]),
    }),
    draft: ({ place: [x, y], across: a, along }) => {
      // In the first quadrant a point stays there.
      const across = low > 0 && x + a < 0 ? -a : a;
      return worded({
        text: `Point ${pair(x, y)} moves ${right(across)} and ${up(along)}. Where is it now?`,
        right: pair(x + across, y + along),
        accepts: typed(x + across, y + along),
        // Where no minus signs are known yet, a wrong point is one that the grid has.
        wrong: (
          [
            ['position.swapped', x + along, y + across],
            ['position.wrong-way', x - across, y - along],
          ] as const
        )
          .filter(([, left, height]) => low < 0 || Math.min(left, height) >= 0)
          .map(([misconception, left, height]) => [misconception, pair(left, height)] as const),
        features: { extraSteps: 1 + (x < 0 !== x + across < 0 ? 1 : 0), size: across < 0 ? 0.4 : 0 },
        strategy: [
          `Sideways changes the first number: ${formatSigned(x)} becomes ${formatSigned(x + across)}`,
          `Up or down changes the second: ${formatSigned(y)} becomes ${formatSigned(y + along)}`,
        ],
      });
    },
  });
}

const howFarMoved = templateOf<readonly [place: Place, change: number, upright: boolean]>({
  id: 'how-far-moved',
  free: (rng) => [point(rng, 1, 6), rng.int(2, 5), rng.chance(0.5)],
  draft: ([[x, y], change, upright], { locale }) => ({
    text: `A point moves from ${pair(x, y)} to ${upright ? pair(x, y + change) : pair(x + change, y)}. How many steps ${upright ? 'up' : 'right'} is that?`,
    answer: wholeAnswer(change, locale),
    expression: upright ? `${y + change} - ${y}` : `${x + change} - ${x}`,
    features: { size: change / 6, adjust: -0.2 },
    strategy: [
      `Only the ${upright ? 'second' : 'first'} number changes`,
      upright ? `${y + change} − ${y} = ${change}` : `${x + change} − ${x} = ${change}`,
    ],
    slips: wholeSlips(
      [
        ['graph.value-not-change', upright ? y + change : x + change],
        ['count.off-by-one', change + 1],
      ],
      locale,
    ),
  }),
});

const reflected = templateOf<readonly [place: Place, inX: boolean]>({
  id: 'reflect',
  free: (rng) => [point(rng, -4, 4), rng.chance(0.5)],
  draft: ([[x, y], inX]) => {
    const image = inX ? pair(x, -y) : pair(-x, y);
    const kept = inX ? x : y;
    return worded({
      text: `Point ${pair(x, y)} is reflected in the ${inX ? 'x' : 'y'}-axis. Where is its image?`,
      right: image,
      accepts: inX ? typed(x, -y) : typed(-x, y),
      wrong: [
        ['position.other-axis', inX ? pair(-x, y) : pair(x, -y)],
        ['position.swapped', inX ? pair(-y, x) : pair(y, -x)],
      ],
      features: { extraSteps: 1, drawn: true },
      strategy: [
        `The ${inX ? 'first' : 'second'} number stays: ${formatSigned(kept)}`,
        `The ${inX ? 'second' : 'first'} changes its sign: ${image}`,
      ],
      figure: { kind: 'coordinates', from: -5, to: 5, points: [{ name: 'A', x, y }] },
    });
  },
});

const apart = templateOf<readonly [shared: number, low: number, high: number, upright: boolean]>({
  id: 'apart',
  free: (rng) => [rng.int(-5, 5), -rng.int(1, 6), rng.int(1, 6), rng.chance(0.5)],
  draft: ([shared, low, high, upright], { locale }) => {
    const at = (n: number) => (upright ? pair(shared, n) : pair(n, shared));
    return {
      // A pair is not parted at the end of a line.
      text: `How far apart are the points ${at(low)} and ${at(high)}?`.replaceAll(', ', ',\u00a0'),
      answer: wholeAnswer(high - low, locale),
      expression: `${high} - (${low})`,
      features: { extraSteps: 1, size: (high - low) / 8 },
      strategy: [
        `The ${upright ? 'first' : 'second'} numbers are the same`,
        `From ${formatSigned(low)} to 0: ${-low}; from 0 to ${high}: ${high}`,
        `${-low} + ${high} = ${formatWhole(high - low, locale)}`,
      ],
      slips: wholeSlips(
        [
          ['position.sign-lost', high + low === 0 ? null : Math.abs(high + low)],
          ['negative.zero-counted', high - low + 1],
        ],
        locale,
      ),
    };
  },
});

export const POSITION_SKILLS: readonly Skill[] = [
  {
    id: 'shape.position.row',
    title: 'Say where something is in a row',
    year: 0,
    fluentYear: 1,
    strand: 'shape',
    prerequisites: ['shape.name'],
    codes: { ac9: ['AC9MFSP02'], england: ['NC-Y1-position-1'], ccss: ['K.G.A.1'] },
    templates: [besideInRow, numberedInRow],
  },
  {
    id: 'shape.position.plan',
    title: 'Follow a path on a plan',
    year: 2,
    fluentYear: 3,
    strand: 'shape',
    prerequisites: ['shape.position.row', 'place.ten-more'],
    codes: { ac9: ['AC9M2SP02'], england: ['NC-Y2-position-2'], ccss: [] },
    templates: [followSteps, stepsBetween],
  },
  {
    id: 'shape.position.square',
    title: 'Name a square of a grid',
    year: 4,
    fluentYear: 4,
    strand: 'shape',
    prerequisites: ['shape.position.plan'],
    codes: { ac9: ['AC9M4SP02'], england: [], ccss: [] },
    templates: [whichSquare, whatIsIn],
  },
  {
    id: 'shape.position.coordinates',
    title: 'Read coordinates',
    year: 4,
    fluentYear: 5,
    strand: 'shape',
    prerequisites: ['shape.position.plan'],
    codes: { ac9: ['AC9M5SP02'], england: ['NC-Y4-position-1', '4G-1'], ccss: ['5.G.A.1', '5.G.A.2'] },
    templates: [readPoint(0, 6), whichPoint],
  },
  {
    id: 'shape.position.move',
    title: 'Move a point on a grid',
    year: 5,
    fluentYear: 6,
    strand: 'shape',
    prerequisites: ['shape.position.coordinates'],
    codes: {
      ac9: ['AC9M5SP02'],
      england: ['NC-Y4-position-2', 'NC-Y5-position-1', '4G-1'],
      ccss: ['5.G.A.2'],
    },
    templates: [move(1, 6), howFarMoved],
  },
  {
    id: 'shape.position.four',
    title: 'Use coordinates in all four quarters',
    year: 6,
    fluentYear: 6,
    strand: 'shape',
    prerequisites: ['shape.position.move', 'place.negative.order'],
    codes: {
      ac9: ['AC9M6SP02'],
      england: ['NC-Y6-position-1'],
      ccss: ['6.NS.C.6b', '6.NS.C.6c', '6.NS.C.8'],
    },
    templates: [readPoint(-5, 5), move(-5, 5), reflected, apart],
  },
];
