// Old units beside metric ones.
import { rational } from '../../numbers/rational.js';
import { unitAnswer } from '../../questions/answer.js';
import { operand, quantity } from '../measuring/quantity.js';
import { onWhole, templateOf } from '../template-of.js';

interface Rough {
  readonly many: string;
  readonly metric: string;
  /** Half a metric unit: one of the old ones is half as many units as this. */
  readonly half: number;
  /** What belongs to another pair of units, or to this pair the other way round. */
  readonly wrongHalf: number;
  readonly wrong: 'measure.rough-wrong-unit' | 'meas.reversed';
}

/** Rough equivalents that primary classes use. Common practice. Halves keep everything whole: 5 halves are 2.5. */
const ROUGH: readonly Rough[] = [
  { many: 'inches', metric: 'cm', half: 5, wrongHalf: 60, wrong: 'measure.rough-wrong-unit' },
  { many: 'feet', metric: 'cm', half: 60, wrongHalf: 5, wrong: 'measure.rough-wrong-unit' },
  { many: 'pints', metric: 'mL', half: 1140, wrongHalf: 900, wrong: 'measure.rough-wrong-unit' },
  { many: 'pounds', metric: 'g', half: 900, wrongHalf: 2000, wrong: 'measure.rough-wrong-unit' },
];

/** An American pint is less than an imperial one, and near enough half a litre. */
const AMERICAN_PINTS: Rough = { many: 'pints', metric: 'L', half: 1, wrongHalf: 4, wrong: 'meas.reversed' };

export const ROUGHLY = templateOf<readonly [pair: Rough, count: number]>({
  id: 'rough',
  free: (rng) => [rng.pick(ROUGH), 2 * rng.int(1, 5)],
  on: onWhole(2, 40, (n, rng) => [rng.pick(ROUGH), n]),
  draft: ([pair, count], { locale }) => {
    const isAmerican = pair.many === 'pints' && locale.id === 'en-US';
    const { many, metric, half, wrongHalf, wrong } = isAmerican ? AMERICAN_PINTS : pair;
    const one = { inches: '1 inch', feet: '1 foot', pints: '1 pint', pounds: '1 pound' }[many] ?? '';
    const { metre, litre } = locale.spelling;
    const spelt = { cm: `centi${metre}s`, mL: `milli${litre}s`, L: `${litre}s`, g: 'grams' }[metric];
    const each = rational(half, 2);
    const shown = (value: number) => quantity(rational(value, 2), locale).text;
    return {
      text: `${one} is about ${shown(half)} ${metric}. About how many ${spelt} are ${count} ${many}?`,
      answer: unitAnswer(rational(half * count, 2), metric, locale),
      expression: `${operand(each)} * ${count}`,
      features: { size: Math.min(2, count / 8), unlike: half % 2 === 1, extraSteps: 0.5 },
      strategy: [`${count} × ${shown(half)} = ${shown(half * count)}`],
      slips: [
        {
          misconception: wrong,
          answer: unitAnswer(rational(wrongHalf * count, 2), metric, locale),
        },
        { misconception: 'ratio.adds', answer: unitAnswer(rational(half + 2 * count, 2), metric, locale) },
      ],
      usesNumber: `turns ${count}\u00a0${many} into ${spelt}`,
    };
  },
});

export const MILES = templateOf<readonly [groups: number, toKm: boolean]>({
  id: 'miles',
  free: (rng) => [rng.int(2, 12), rng.chance(0.6)],
  on: onWhole(5, 800, (n) => (n % 5 === 0 ? [n / 5, true] : n % 8 === 0 ? [n / 8, false] : null)),
  draft: ([groups, toKm], { locale }) => {
    const [from, to] = toKm ? [5, 8] : [8, 5];
    const [a, b] = toKm ? ['miles', 'km'] : ['km', 'miles'];
    const answer = (count: number) => unitAnswer(count, count === 1 ? b.replace(/s$/, '') : b, locale);
    return {
      text: `5 miles are about 8 km. About how many ${b} are ${from * groups} ${a}?`,
      answer: answer(to * groups),
      expression: `${from * groups} / ${from} * ${to}`,
      features: { extraSteps: 1, size: Math.min(2, groups / 10) },
      strategy: [`${from * groups} ÷ ${from} = ${groups}`, `${groups} × ${to} = ${to * groups}`],
      slips: [
        {
          misconception: 'ratio.adds',
          answer: answer(Math.abs(from * groups + to - from)),
        },
        { misconception: 'ratio.factor-given', answer: answer(groups) },
      ],
      usesNumber: `turns ${from * groups}\u00a0${a} into ${toKm ? `kilo${locale.spelling.metre}s` : b}`,
    };
  },
});
