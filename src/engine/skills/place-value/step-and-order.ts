// One step more or less, and which number is the greatest or the least.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Features } from '../../questions/difficulty.js';
import type { Template } from '../../questions/draft.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { onWhole, templateOf } from '../template-of.js';
import { type NumberRange, placeCount } from './place-templates.js';

/** "What is 10 more than 47?": steps of the given places, up or down. */
export function moreOrLess(range: NumberRange, steps: readonly number[], features: Features = {}): Template {
  type Chosen = readonly [n: number, step: number];
  const choose = (n: number, rng: Rng): Chosen => {
    const signed = steps.flatMap((step) => (n >= step ? [step, -step] : [step]));
    return [n, rng.pick(signed)];
  };
  return templateOf<Chosen>({
    id: `step-${steps.join('-')}`,
    free: (rng) => choose(range.free(rng), rng),
    on: onWhole(range.from, range.to, choose),
    draft: ([n, step], { locale, rng }) => {
      const say = (value: number) => formatWhole(value, locale);
      const size = Math.abs(step);
      const up = step > 0;
      const digit = Math.floor(n / size) % 10;
      const crosses = digit === (up ? 9 : 0) && n >= size;
      const spreads = crosses && Math.floor(n / (10 * size)) % 10 === (up ? 9 : 0) && n >= 100 * size;
      const oneAway = up ? 'What number comes just after' : 'What number comes just before';
      const wrongPlace = size === 1 ? 10 : size / 10;
      return {
        text:
          size === 1 && rng.chance(0.5)
            ? `${oneAway} ${say(n)}?`
            : `What is ${say(size)} ${up ? 'more' : 'less'} than ${say(n)}?`,
        answer: wholeAnswer(n + step, locale),
        expression: `${n} ${up ? '+' : '-'} ${size}`,
        features: {
          ...features,
          rule: size === 1,
          carries: crosses ? 1.5 : 0,
          size: (up ? 0 : 0.5) + (features.size ?? 0),
          adjust: (features.adjust ?? 0) + (size > 10 ? 0.2 : 0),
        },
        strategy: crosses
          ? [
              `The ${placeCount(2, size).slice(2)} digit is ${up ? '9 already' : '0'}, so ${spreads ? 'several places change' : 'the next place changes too'}`,
              `${say(n)} ${up ? '+' : '−'} ${say(size)} = ${say(n + step)}`,
            ]
          : [
              `Only the ${placeCount(2, size).slice(2)} change: ${say(n)} ${up ? '+' : '−'} ${say(size)} = ${say(n + step)}`,
            ],
        slips: wholeSlips(
          [
            ['place.no-rename', crosses && up ? n - digit * size : null],
            ['count.wrong-way', n - step],
            ['place.wrong-step', up ? n + wrongPlace : n - wrongPlace],
            ['count.too-far', size === 1 ? n + 2 * step : null],
          ],
          locale,
        ),
        ...(n <= 20 && size === 1
          ? {
              figure: {
                kind: 'number-line' as const,
                from: 0,
                to: 21,
                step: 1,
                labels: [0, 5, 10, 15, 20],
                mark: n,
              },
            }
          : {}),
        usesNumber: `finds ${say(size)} ${up ? 'more' : 'less'} than ${say(n)}`,
      };
    },
  });
}

/** Numbers easily mistaken for n: digits swapped, a place changed, neighbours; all positive, none equal to n. */
function lookalikes(n: number, limit: number): number[] {
  const digits = String(n).split('');
  const out = new Set<number>();
  for (let i = 0; i + 1 < digits.length; i++) {
    const swapped = [...digits];
    [swapped[i], swapped[i + 1]] = [swapped[i + 1] as string, swapped[i] as string];
    out.add(Number(swapped.join('')));
  }
  out.add(Number([...digits].reverse().join('')));
  const top = 10 ** (digits.length - 1);
  for (const change of [1, top, Math.max(1, top / 10), 2]) {
    out.add(n + change);
    out.add(n - change);
  }
  return [...out].filter((m) => m !== n && m > 0 && m <= limit && String(m).length === digits.length);
}

/** The digits of a number from its end: 305 -> 503. Numbers are compared by it when only their last digits are looked at. */
function backwards(n: number): number {
  return Number([...String(n)].reverse().join(''));
}

/** "Which is the greatest: 305, 350 or 503?" */
export function greatestOrLeast(range: NumberRange, limit: number): Template {
  type Chosen = readonly [numbers: readonly number[], greatest: boolean, n: number];
  const choose = (n: number, rng: Rng): Chosen | null => {
    const others = rng.shuffle(lookalikes(n, limit)).slice(0, rng.chance(0.3) ? 1 : 2);
    return others.length === 0 ? null : [rng.shuffle([n, ...others]), rng.chance(0.6), n];
  };
  return templateOf<Chosen>({
    id: 'order',
    free: (rng) => choose(range.free(rng), rng) ?? [[3, 8, 5], true, 5],
    on: onWhole(range.from, range.to, choose),
    draft: ([numbers, greatest, n], { locale }) => {
      const say = (value: number) => formatWhole(value, locale);
      const sorted = [...numbers].sort((a, b) => a - b);
      const low = sorted[0] ?? 0;
      const high = sorted.at(-1) ?? 0;
      const answer = greatest ? high : low;
      const byLast =
        [...numbers].sort((a, b) =>
          greatest ? backwards(b) - backwards(a) : backwards(a) - backwards(b),
        )[0] ?? answer;
      // Where the last digits are the same, they lead nobody away from the answer.
      const lastMisleads = byLast % 10 !== answer % 10;
      const listed = numbers.map(say);
      const two = numbers.length === 2;
      return {
        text: `Which is ${greatest ? (two ? 'greater' : 'the greatest') : two ? 'less' : 'the least'}: ${listed.slice(0, -1).join(', ')} or ${listed.at(-1) ?? ''}?`,
        answer: wholeAnswer(answer, locale),
        expression: `${greatest ? 'max' : 'min'}(${numbers.join(', ')})`,
        features: { fewChoices: true, size: two ? 0 : 0.7, adjust: greatest ? 0 : 0.1 },
        strategy: [
          high > 20
            ? 'Compare the largest places first, then the next'
            : 'On the number line, greater numbers come later',
          `In order, least first: ${sorted.map(say).join(', ')}`,
        ],
        slips: wholeSlips(
          [
            ['compare.last-digit', lastMisleads ? byLast : null],
            ['compare.reversed', greatest ? low : high],
          ],
          locale,
        ),
        usesNumber: `compares ${say(n)} with ${two ? 'another number' : 'others'}`,
      };
    },
  });
}
