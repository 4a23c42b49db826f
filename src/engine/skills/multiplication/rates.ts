// Rates and scale: so much for each, speed, enlargements and maps.
import { formatMoney, formatWhole } from '../../numbers/format.js';
import { rational } from '../../numbers/rational.js';
import { moneyAnswer, unitAnswer, wholeAnswer } from '../../questions/answer.js';
import { unitSlips, wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

const speed = templateOf<readonly [perHour: number, hours: number, ask: 'distance' | 'rate']>({
  id: 'per-hour',
  free: (rng) => [
    rng.pick([4, 5, 6, 12, 15, 20, 40, 50, 60, 80]),
    rng.int(2, 5),
    rng.pick(['distance', 'rate']),
  ],
  on: onWhole(4, 120, (n, rng) => [n, rng.int(2, 5), 'distance']),
  draft: ([perHour, hours, ask], { locale }) => {
    const total = perHour * hours;
    const unit = locale.id === 'en-AU' || locale.id === 'en-NZ' ? 'km' : 'miles';
    const inFull = unit === 'km' ? 'kilometres' : unit;
    // The same numbers are faster in miles: nobody walks 5 miles every hour, and no car may go 80.
    const mostOnFoot = unit === 'km' ? 6 : 4;
    const who =
      perHour <= mostOnFoot
        ? 'A walker'
        : perHour < 10
          ? 'A boat'
          : perHour < 26
            ? 'A cyclist'
            : perHour <= 60
              ? 'A car'
              : 'A train';
    return {
      text:
        ask === 'rate'
          ? `${who} goes ${total} ${unit} in ${hours} hours at a steady speed. How many ${inFull} is that in one hour?`
          : `${who} goes ${perHour} ${unit} every hour. How many ${inFull} is that in ${hours} hours?`,
      answer: unitAnswer(ask === 'rate' ? perHour : total, unit, locale),
      expression: ask === 'rate' ? `${total} / ${hours}` : `${hours} * ${perHour}`,
      features: { story: true, size: Math.min(2, total / 120), unknownInside: ask === 'rate' },
      strategy: [ask === 'rate' ? `${total} ÷ ${hours} = ${perHour}` : `${hours} × ${perHour} = ${total}`],
      slips: unitSlips(
        [
          ['ratio.adds', ask === 'rate' ? total - hours : perHour + hours],
          ['times.neighbour', ask === 'rate' ? null : perHour * (hours - 1)],
          ['divide.as-times', ask === 'rate' ? total * hours : null],
        ],
        unit,
        locale,
      ),
      usesNumber: `goes ${perHour}\u00a0${unit} every hour`,
    };
  },
});

const perItem = templateOf<readonly [each: number, count: number, wanted: number]>({
  id: 'per-item',
  free: (rng) => [rng.int(2, 9) * 50, rng.int(2, 6), rng.int(3, 9)],
  draft: ([each, count, asked], { locale }) => {
    const wanted = asked === count ? asked + 1 : asked;
    const money = (cents: number) => formatMoney(rational(cents, 100), locale);
    return {
      text: `${count} pens cost ${money(each * count)}. What do ${wanted} of these pens cost?`,
      answer: moneyAnswer(rational(each * wanted, 100), locale),
      expression: `${each * count} / 100 / ${count} * ${wanted}`,
      features: { story: true, size: Math.min(2, wanted / 5), extraSteps: 1 },
      strategy: [
        `One pen: ${money(each * count)} ÷ ${count} = ${money(each)}`,
        `${wanted} pens: ${wanted} × ${money(each)} = ${money(each * wanted)}`,
      ],
      slips: [
        { misconception: 'ratio.one-group', answer: moneyAnswer(rational(each, 100), locale) },
        {
          misconception: 'ratio.adds',
          answer: moneyAnswer(rational(Math.max(5, each * count + 100 * (wanted - count)), 100), locale),
        },
      ],
    };
  },
});

const enlarge = templateOf<readonly [side: number, factor: number, ask: 'side' | 'factor']>({
  id: 'scale',
  free: (rng) => [rng.int(2, 12), rng.int(2, 6), rng.pick(['side', 'factor'])],
  on: onWhole(2, 200, (n, rng) => [n, rng.int(2, 6), 'side']),
  draft: ([side, factor, ask], { locale }) => ({
    text:
      ask === 'side'
        ? `A drawing is enlarged by scale factor ${factor}. A side was ${side} cm. How long is it now?`
        : `A side of ${side} cm becomes ${side * factor} cm when a drawing is enlarged. What is the scale factor?`,
    answer: ask === 'side' ? unitAnswer(side * factor, 'cm', locale) : wholeAnswer(factor, locale),
    expression: ask === 'side' ? `${side} * ${factor}` : `${side * factor} / ${side}`,
    features: { size: Math.min(2, (side * factor) / 40), unknownInside: ask === 'factor' },
    strategy: [
      // How many times the side fits is asked, so the side is what the steps repeat.
      ask === 'side'
        ? `${side} × ${factor} = ${formatWhole(side * factor, locale)}`
        : `${factor} × ${side} = ${formatWhole(side * factor, locale)}`,
    ],
    slips:
      ask === 'side'
        ? unitSlips(
            [
              ['ratio.adds', side + factor],
              ['times.neighbour', side * (factor + 1)],
            ],
            'cm',
            locale,
          )
        : wholeSlips(
            [
              ['ratio.adds', side * factor - side],
              ['times.neighbour', factor + 1],
            ],
            locale,
          ),
    usesNumber: `enlarges a side of ${side}\u00a0cm`,
  }),
});

const onMap = templateOf<readonly [cm: number, each: number]>({
  id: 'map',
  free: (rng) => [rng.int(2, 12), rng.pick([2, 5, 10, 20, 50, 100])],
  on: onWhole(2, 60, (n, rng) => [n, rng.pick([2, 5, 10])]),
  draft: ([cm, each], { locale }) => ({
    text: `On a map 1 cm stands for ${each} km. How many kilometres are ${cm} cm on the map?`.replace(
      'kilometres',
      locale.id === 'en-US' ? 'kilometers' : 'kilometres',
    ),
    answer: unitAnswer(cm * each, 'km', locale),
    expression: `${cm} * ${each}`,
    features: { size: Math.min(2, cm / 10), fives: each % 5 === 0 },
    strategy: [`${cm} × ${each} = ${formatWhole(cm * each, locale)}`],
    slips: unitSlips(
      [
        ['ratio.adds', cm + each],
        ['times.zero-count', each >= 10 ? (cm * each) / 10 : null],
      ],
      'km',
      locale,
    ),
    usesNumber: `measures ${cm}\u00a0cm on a map`,
  }),
});

export const RATE_SKILLS: readonly Skill[] = [
  {
    id: 'ratio.rate',
    title: 'Amounts for one: rates and speed',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['ratio.missing', 'money.several'],
    codes: {
      ac9: ['AC9M6N09'],
      england: ['NC-Y5-multdiv-11', 'NC-Y6-ratio-1'],
      ccss: ['6.RP.A.2', '6.RP.A.3b'],
    },
    templates: [speed, perItem],
  },
  {
    id: 'ratio.scale',
    title: 'Scale factors and maps',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['ratio.times-as-many'],
    codes: { ac9: [], england: ['NC-Y6-ratio-3'], ccss: ['6.RP.A.3'] },
    templates: [enlarge, onMap],
  },
];
