// Steps with mixed numbers: each begins at what the question prints and ends at what the answer prints.
import { floor, lcm, type Rational, rational } from '../../numbers/rational.js';
import type { Subject } from '../sketch.js';

/** "14/3", and "1,249/25" where the country groups its digits so. */
export function over(x: Subject, top: number, bottom: number): string {
  return `${x.t(top, 'whole')}/${bottom}`;
}

/** "4 2/3 = 14/3", for steps that go on with tops and bottoms; none below one, where the fraction stands there already. */
export function asImproper(x: Subject): string[] {
  return x.n > x.d ? [`${x.text} = ${over(x, x.n, x.d)}`] : [];
}

/** "14/6 = 2 1/3", where steps end at `top`/`bottom`; none where that is how the value is printed. */
export function asPrinted(x: Subject, top: number, bottom: number): string[] {
  const printed = x.t(rational(top, bottom));
  return `${top}/${bottom}` === printed ? [] : [`${over(x, top, bottom)} = ${printed}`];
}

/** The wholes and the part of the subject: 12 and 5 of 12 5/6. */
export function wholesAndTop(x: Subject): readonly [wholes: number, top: number] {
  return [floor(x.value), x.n % x.d];
}

/**
 * `times` groups: "3 × 12 = 36", "3 × 5/6 = 15/6", "15/6 = 2 1/2", "36 + 2 1/2 = 38 1/2"; below one only the part.
 */
export function timesSteps(x: Subject, times: number): string[] {
  const [wholes, top] = wholesAndTop(x);
  const part = rational(times * top, x.d);
  return [
    wholes > 0 ? `${times} × ${x.t(wholes)} = ${x.t(times * wholes)}` : `${times} × ${top} = ${times * top}`,
    `${times} × ${top}/${x.d} = ${times * top}/${x.d}`,
    ...asPrinted(x, times * top, x.d),
    ...(wholes > 0 ? [`${x.t(times * wholes)} + ${x.t(part)} = ${x.t(rational(times * x.n, x.d))}`] : []),
  ];
}

/**
 * The subject and a fraction below one, or the two apart: parts of one size first, the wholes last. Where the part alone is
 * too small to take from, one whole is broken up: "12 1/6 = 11 7/6".
 */
export function sumSteps(x: Subject, other: Rational, sign: 1 | -1): string[] {
  const [wholes, top] = wholesAndTop(x);
  const common = lcm(x.d, other.d);
  const [mine, theirs] = [(top * common) / x.d, (other.n * common) / other.d];
  const broken = sign === -1 && mine < theirs ? 1 : 0;
  const [kept, from] = [wholes - broken, mine + broken * common];
  const left = from + sign * theirs;
  const isLike = x.d === other.d && left > 0;
  const ofThese = (count: number) => `${count} ${x.parts(x.d, count)}`;
  const sum = `${from}/${common} ${sign === 1 ? '+' : '−'} ${theirs}/${common} =`;
  return [
    ...(x.d === common ? [] : [`${top}/${x.d} = ${mine}/${common}`]),
    ...(other.d === common ? [] : [`${other.n}/${other.d} = ${theirs}/${common}`]),
    ...(broken === 0
      ? []
      : [`${x.t(wholes)} ${mine}/${common} = ${kept > 0 ? `${x.t(kept)} ` : ''}${from}/${common}`]),
    ...(isLike
      ? [
          sign === 1
            ? `${ofThese(from)} and ${ofThese(theirs)} are ${ofThese(left)}`
            : `${ofThese(from)} take away ${ofThese(theirs)} leaves ${ofThese(left)}`,
        ]
      : []),
    ...(left === 0
      ? [`${sum} 0, so ${x.t(kept)} is left`]
      : [`${sum} ${left}/${common}`, ...asPrinted(x, left, common)]),
    ...(left > 0 && kept > 0
      ? [`${x.t(kept)} + ${x.t(rational(left, common))} = ${x.t(rational(kept * common + left, common))}`]
      : []),
  ];
}
