// A fraction and another added or taken apart: steps and the usual wrong methods.
import { add, compare, floor, type Rational, rational, subtract } from '../../numbers/rational.js';
import {
  addOverLargerBottom,
  addTopsAndBottoms,
  subtractTopsAndBottoms,
  type Written,
  writtenValue,
} from '../../questions/slips/fraction-operations.js';
import type { Sketch, SketchSlip, Subject } from '../sketch.js';
import { sumSteps, wholesAndTop } from './mixed-steps.js';

/** a ± b with its steps over the common bottom, and the usual wrong methods. */
export function addOrTake(x: Subject, other: Rational, sign: 1 | -1, features: Sketch['features']): Sketch {
  const answer = sign === 1 ? add(x.value, other) : subtract(x.value, other);
  const op = sign === 1 ? '+' : '−';
  return {
    text: `${x.text} ${op} ${x.t(other)}`,
    value: answer,
    expression: `${x.expr} ${sign === 1 ? '+' : '-'} ${x.e(other)}`,
    features,
    strategy: other.d === 1 ? addWholeSteps(x, other.n, answer) : sumSteps(x, other, sign),
    slips: [
      ...(sign === 1 ? slipsOfAdding(x, other) : slipsOfTaking(x, other)),
      [
        'fractions.whole-ignored',
        floor(answer) > 0 && answer.d > 1 ? rational(answer.n % answer.d, answer.d) : null,
      ],
      [
        'operation.swapped',
        sign === -1 ? add(x.value, other) : compare(x.value, other) > 0 ? subtract(x.value, other) : null,
      ],
    ],
    uses: sign === 1 ? `adds ${x.t(other)} to ${x.text}` : `takes ${x.t(other)} from ${x.text}`,
  };
}

/** "1 + 2 = 3", "3 + 3/4 = 3 3/4": only the wholes change. */
function addWholeSteps(x: Subject, other: number, answer: Rational): string[] {
  const [wholes, top] = wholesAndTop(x);
  return [
    ...(wholes > 0 ? [`${x.t(wholes)} + ${other} = ${x.t(wholes + other)}`] : []),
    `${x.t(wholes + other)} + ${top}/${x.d} = ${x.t(answer)}`,
  ];
}

/** The part of the subject beside another fraction as children write them; its wholes stay as they are. */
function partsOf(x: Subject, other: Rational): readonly [whole: number, mine: Written, theirs: Written] {
  const [wholes, top] = wholesAndTop(x);
  return [wholes, { top, bottom: x.d }, { top: other.n, bottom: other.d }];
}

function slipsOfAdding(x: Subject, other: Rational): SketchSlip[] {
  const [whole, mine, theirs] = partsOf(x, other);
  // Whole and whole of a mixed number are added right.
  const isWholesOnly = other.d === 1 && whole > 0;
  return [
    ['fractions.add-tops-bottoms', isWholesOnly ? null : { whole, ...addTopsAndBottoms(mine, theirs) }],
    [
      other.d === 1 ? 'fractions.whole-as-one-part' : 'fractions.not-renamed',
      x.d === other.d ? null : { whole, ...addOverLargerBottom(mine, theirs) },
    ],
  ];
}

function slipsOfTaking(x: Subject, other: Rational): SketchSlip[] {
  const [whole, mine, theirs] = partsOf(x, other);
  // Where the second top is the larger, taking tops apart would turn the question round.
  if (mine.top < theirs.top) return [];
  const top = mine.top - theirs.top;
  if (x.d === other.d) return [['fractions.parts-as-number', whole > 0 ? null : top]];
  const apart = subtractTopsAndBottoms(mine, theirs);
  const blind = apart && { whole, ...apart };
  return [
    // Taking a part away from a mixed number leaves no more than there was.
    [
      'fractions.subtract-tops-bottoms',
      blind && whole > 0 && compare(writtenValue(blind), x.value) > 0 ? null : blind,
    ],
    ['fractions.not-renamed', { whole, top, bottom: Math.max(x.d, other.d) }],
  ];
}
