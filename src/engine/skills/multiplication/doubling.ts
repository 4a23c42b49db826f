// Doubling a number of any kind, for the skills of all years.
import { add, multiply, type Rational, rational } from '../../numbers/rational.js';
import { writtenOne } from '../parts.js';
import type { Sketch, Subject } from '../sketch.js';

const TWO = rational(2);

/** Doubling any quantity; wholes of two or more digits are split into tens and ones. Classes in Year 1 know no × yet. */
export function double(x: Subject, features: Sketch['features'], knowsTimes = true): Sketch {
  const answer = multiply(x.value, TWO);
  const asked = x.pick(['double', 'times', 'plus'] as const);
  const texts = {
    double: `Double ${x.text}`,
    times: knowsTimes ? `2 × ${x.text}` : `What is twice ${x.text}?`,
    plus: `${x.text} + ${x.text}`,
  };
  const doubled = (part: Rational) => {
    const written = x.t(part);
    return `${knowsTimes ? `2 × ${written}` : `${written} + ${written}`} = ${x.t(multiply(part, TWO))}`;
  };
  const leading = x.d === 1 ? 10 ** (String(x.n).length - 1) : 1;
  const big = x.d === 1 ? x.n - (x.n % leading) : Math.floor(x.n / x.d);
  const small = add(x.value, rational(-big));
  const splits = big > 0 && small.n > 0;
  return {
    text: texts[asked],
    value: answer,
    expression: `2 * ${x.expr}`,
    features,
    strategy: splits
      ? [
          doubled(rational(big)),
          doubled(small),
          `${x.t(2 * big)} + ${x.t(multiply(small, TWO))} = ${x.t(answer)}`,
        ]
      : x.form === 'whole' && x.n > 5 && x.n < 10
        ? [`5 + 5 = 10`, `${x.n - 5} + ${x.n - 5} = ${2 * x.n - 10}`, `10 + ${2 * x.n - 10} = ${2 * x.n}`]
        : [`${x.text} + ${x.text} = ${x.t(answer)}`],
    slips: [
      ['times.adds-two', asked === 'plus' ? null : add(x.value, multiply(writtenOne(x.value, x.form), TWO))],
      [
        x.d > 1 ? 'decimals.whole-part-only' : leading === 10 ? 'times.tens-only' : 'times.largest-only',
        splits ? add(rational(2 * big), small) : null,
      ],
      [
        'times.carry-forgotten',
        splits && x.d === 1 && small.n * 2 >= leading ? 2 * big + ((2 * small.n) % leading) : null,
      ],
      ['times.neighbour', splits ? null : multiply(x.value, rational(3))],
    ],
    uses: `doubles ${x.text}`,
  };
}

/** Places after the first whose digit makes ten or more when it is doubled. */
export function carriesWhenDoubled(n: number): number {
  return [...String(n)].slice(1).filter((digit) => Number(digit) >= 5).length;
}
