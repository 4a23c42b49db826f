// Reading tables of measured lengths, as a line plot has them.
import type { FigureSpec } from '../../figures/figure.js';
import { formatMixed } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { add, rational, subtract } from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { quantity, quantityAnswer } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';

interface Plot {
  readonly d: number;
  readonly counts: readonly [number, number, number, number];
}

const plotRows = ({ d, counts }: Plot, locale: Locale): FigureSpec => ({
  kind: 'table',
  heads: 'column',
  rows: [
    ['Length in m', ...counts.map((_, i) => formatMixed(rational(i + 1, d), locale))],
    ['How many', ...counts.map(String)],
  ],
});

const plot = (rng: Rng): Plot => ({
  d: rng.pick([4, 8]),
  counts: [rng.int(2, 6), rng.int(2, 6), rng.int(2, 6), rng.int(2, 6)],
});

const observations = templateOf<Plot>({
  id: 'observations',
  free: plot,
  draft: (shown, { locale }) => {
    const [a, b, c, d] = shown.counts;
    return {
      text: 'In the table, how many ribbons were measured?',
      answer: wholeAnswer(a + b + c + d, locale),
      expression: `${a} + ${b} + ${c} + ${d}`,
      features: { drawn: true, extraSteps: 1 },
      strategy: [`${a} + ${b} + ${c} + ${d} = ${a + b + c + d}`],
      slips: wholeSlips(
        [
          ['table.headings-counted', 4],
          ['table.one-cell', Math.max(a, b, c, d)],
        ],
        locale,
      ),
      figure: plotRows(shown, locale),
    };
  },
});

const totalOf = templateOf<readonly [plot: Plot, at: number]>({
  id: 'total-length',
  free: (rng) => [plot(rng), rng.int(0, 2)],
  draft: ([shown, at], { locale }) => {
    const each = rational(at + 1, shown.d);
    const count = shown.counts[at] ?? 2;
    const total = rational((at + 1) * count, shown.d);
    const say = (value: typeof each) => quantity(value, locale, 'fraction').text;
    return {
      text: `In the table, how many metres long are all the ${say(each)} m ribbons together?`.replace(
        'metres',
        `${locale.spelling.metre}s`,
      ),
      answer: quantityAnswer(total, 'fraction', locale, 'm'),
      // Not "4 * (1/4)", which would be drawn as a quarter of 4: the ribbons are 4 quarters.
      expression: `${count} * ${at + 1} / ${shown.d}`,
      features: { drawn: true, extraSteps: 1, unlike: total.d > 1 },
      strategy: [`There are ${count} of them: ${count} × ${say(each)} = ${say(total)}`],
      slips: [
        { misconception: 'ratio.one-group', answer: quantityAnswer(each, 'fraction', locale, 'm') },
        {
          misconception: 'graph.other-point',
          answer: quantityAnswer(
            rational((at + 1) * (shown.counts[(at + 1) % 4] ?? 1), shown.d),
            'fraction',
            locale,
            'm',
          ),
        },
      ],
      figure: plotRows(shown, locale),
    };
  },
});

const spread = templateOf<Plot>({
  id: 'longest-shortest',
  free: (rng) => {
    const shown = plot(rng);
    const [a, b, c, d] = shown.counts;
    return rng.chance(0.5) ? { ...shown, counts: [0, b, c, d] } : { ...shown, counts: [a, b, c, 0] };
  },
  draft: (shown, { locale }) => {
    const low = shown.counts[0] === 0 ? 2 : 1;
    const high = shown.counts[3] === 0 ? 3 : 4;
    const [from, to] = [rational(low, shown.d), rational(high, shown.d)];
    const gap = subtract(to, from);
    const say = (value: typeof gap) => quantity(value, locale, 'fraction').text;
    const answer = (value: typeof gap) => quantityAnswer(value, 'fraction', locale, 'm');
    return {
      text: 'In the table, how much longer is the longest ribbon than the shortest?',
      answer: answer(gap),
      expression: `(${high}/${shown.d}) - (${low}/${shown.d})`,
      features: { drawn: true, extraSteps: 1, unlike: true },
      strategy: [`${say(to)} − ${say(from)} = ${say(gap)}`],
      slips: [
        { misconception: 'graph.value-not-change', answer: answer(to) },
        { misconception: 'difference.adds', answer: answer(add(to, from)) },
      ],
      figure: plotRows(shown, locale),
    };
  },
});

export const MEASURED_SKILLS: readonly Skill[] = [
  {
    id: 'data.measured',
    title: 'Read a table of measured lengths',
    year: 5,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.table', 'frac.times-whole'],
    codes: { ac9: [], england: [], ccss: ['4.MD.B.4', '5.MD.B.2', '6.SP.B.5a'] },
    templates: [observations, totalOf, spread],
  },
];
