// Position on a plan: places in a row, directions from place to place, and the squares of a grid.
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { inSentence, worded } from '../offered.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';
import { type Place, right, up } from './steps.js';

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
      strategy: [
        `Count the steps ${way} from A until ${askUp ? 'level with B' : `straight ${along < 0 ? 'above' : 'below'} B`}: ${asked}`,
      ],
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

export const PLAN_SKILLS: readonly Skill[] = [
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
];
