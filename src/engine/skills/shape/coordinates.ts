// Coordinates in one quadrant and in four: reading, moving, reflecting and how far apart.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { worded } from '../offered.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';
import { type Place, right, up } from './steps.js';

/** "(3, −2)"; a pair is not parted at the end of a line. */
const pair = (x: number, y: number) => `(${formatSigned(x)},\u00a0${formatSigned(y)})`;
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
      // Counted up, as the point moves.
      upright ? `${y} + ${change} = ${y + change}` : `${x} + ${change} = ${x + change}`,
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
      text: `How far apart are the points ${at(low)} and ${at(high)}?`,
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

export const COORDINATE_SKILLS: readonly Skill[] = [
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
