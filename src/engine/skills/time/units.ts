// Units of time: seconds, minutes, hours, days, weeks, months and years.
import { DAY_NAMES } from '../../numbers/calendar.js';
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { multiply, rational, toNumber } from '../../numbers/rational.js';
import { unitAnswer, wholeAnswer, wordAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { pointReadAsUnits } from '../../questions/slips/measuring.js';
import { type Quantity, quantity, quantityOn, sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

interface UnitPair {
  readonly large: readonly [one: string, many: string];
  readonly small: string;
  readonly smallUnit: string;
  readonly factor: number;
  /** Another number of the calendar that is easily taken for the factor. */
  readonly confused: number;
}

const HOURS: UnitPair = {
  large: ['hour', 'hours'],
  small: 'minutes',
  smallUnit: 'min',
  factor: 60,
  confused: 24,
};
const MINUTES: UnitPair = {
  large: ['minute', 'minutes'],
  small: 'seconds',
  smallUnit: 's',
  factor: 60,
  confused: 24,
};
const DAYS: UnitPair = { large: ['day', 'days'], small: 'hours', smallUnit: 'h', factor: 24, confused: 60 };
const WEEKS: UnitPair = {
  large: ['week', 'weeks'],
  small: 'days',
  smallUnit: 'days',
  factor: 7,
  confused: 5,
};
const YEARS: UnitPair = {
  large: ['year', 'years'],
  small: 'months',
  smallUnit: 'months',
  factor: 12,
  confused: 52,
};

function article(word: string): string {
  return word === 'hour' ? 'an' : 'a';
}

/** "3/4 of an hour", "3.6 hours", "1 hour". */
function largeText(amount: Quantity, pair: UnitPair): string {
  if (amount.style === 'fraction' && toNumber(amount.value) < 1)
    return `${amount.text} of ${article(pair.large[0])} ${pair.large[0]}`;
  return `${amount.text}\u00a0${amount.text === '1' ? pair.large[0] : pair.large[1]}`;
}

function toSmall(amount: Quantity, pair: UnitPair, { locale }: TemplateContext): Draft {
  const total = multiply(amount.value, rational(pair.factor)).n;
  const { n, d } = amount.value;
  const whole = Math.floor(n / d);
  const isFraction = amount.style === 'fraction';
  const units = pointReadAsUnits(amount.value, pair.factor);
  const answer = (value: number) => unitAnswer(value, pair.smallUnit, locale);
  const part = total - whole * pair.factor;
  const strategy =
    d === 1 || whole === 0
      ? isFraction && d > 1
        ? [
            `${pair.factor} ÷ ${d} = ${pair.factor / d}`,
            ...(n > 1 ? [`${n} × ${pair.factor / d} = ${total}`] : []),
          ]
        : [`${amount.text} × ${pair.factor} = ${formatWhole(total, locale)}`]
      : [
          `${whole} × ${pair.factor} = ${formatWhole(whole * pair.factor, locale)}`,
          `${quantity(rational(n - whole * d, d), locale, amount.style).text} × ${pair.factor} = ${part}`,
          `${formatWhole(whole * pair.factor, locale)} + ${part} = ${formatWhole(total, locale)}`,
        ];
  return {
    text: `How many ${pair.small} are in ${largeText(amount, pair)}?`,
    answer: answer(total),
    expression: `${amount.expression} * ${pair.factor}`,
    features: {
      size: d === 1 ? sizeOf(n) * 0.7 : whole > 0 ? 1 : 0.5,
      extraSteps:
        (d === 1 || d === 2 ? 0 : isFraction && n % d === 1 ? 0.5 : 1) + (whole > 0 && d > 1 ? 1 : 0),
      rule: d === 1 && (n === 1 || n === 10),
      unlike: !isFraction && d > 1,
      adjust: d === 2 && whole === 0 ? -0.8 : -0.2,
    },
    strategy: [`1\u00a0${pair.large[0]} = ${pair.factor}\u00a0${pair.small}`, ...strategy],
    slips: [
      ...(units !== null && d > 1 && !isFraction
        ? [{ misconception: 'time.point-as-units' as const, answer: answer(toNumber(units)) }]
        : []),
      ...(isFraction && n === 1
        ? [{ misconception: 'part.bottom-as-amount' as const, answer: answer(d) }]
        : []),
      ...(isFraction && n % d > 1
        ? [{ misconception: 'part.one-only' as const, answer: answer(whole * pair.factor + pair.factor / d) }]
        : []),
      ...((100 * n) % d === 0 && pair.factor === 60
        ? [{ misconception: 'time.hundred-minutes' as const, answer: answer((100 * n) / d) }]
        : (10 * n) % d === 0
          ? [{ misconception: 'time.ten-in-group' as const, answer: answer((10 * n) / d) }]
          : []),
      ...((pair.confused * n) % d === 0
        ? [
            {
              misconception:
                pair.factor === 7 ? ('time.week-of-five' as const) : ('time.wrong-sixty' as const),
              answer: answer((pair.confused * n) / d),
            },
          ]
        : []),
    ],
  };
}

function split(total: number, pair: UnitPair, { locale }: TemplateContext): Draft {
  const large = Math.floor(total / pair.factor);
  const rest = total % pair.factor;
  const totalText = `${formatWhole(total, locale)}\u00a0${pair.small}`;
  const largeWord = `${large}\u00a0${large === 1 ? pair.large[0] : pair.large[1]}`;
  const wrong = total - large * pair.confused;
  return {
    text: `${totalText} is ${largeWord} and how many ${pair.small}?`,
    answer: unitAnswer(rest, pair.smallUnit, locale),
    expression: `${total} - ${large} * ${pair.factor}`,
    features: {
      size: sizeOf(large) + (total > 100 ? 0.7 : 0),
      carries: total % 10 < (large * pair.factor) % 10 ? 1 : 0,
      adjust: large === 1 ? -0.6 : 0,
    },
    strategy: [
      `${large} × ${pair.factor} = ${formatWhole(large * pair.factor, locale)}`,
      `${formatWhole(total, locale)} − ${formatWhole(large * pair.factor, locale)} = ${rest}`,
    ],
    slips: [
      ...(pair.factor === 60
        ? [
            {
              misconception: 'time.hundred-minutes' as const,
              answer: unitAnswer(total % 100, pair.smallUnit, locale),
            },
          ]
        : [
            {
              misconception: 'time.ten-in-group' as const,
              answer: unitAnswer(total % 10, pair.smallUnit, locale),
            },
          ]),
      ...(wrong > 0
        ? [
            {
              misconception:
                pair.factor === 7 ? ('time.week-of-five' as const) : ('time.wrong-sixty' as const),
              answer: unitAnswer(wrong, pair.smallUnit, locale),
            },
          ]
        : []),
      { misconception: 'group.left-over-given', answer: unitAnswer(large, pair.smallUnit, locale) },
      { misconception: 'part.rest-given', answer: unitAnswer(pair.factor - rest, pair.smallUnit, locale) },
    ],
  };
}

/** How many full large units: "How many full weeks are in 47 days?" */
function fullOnes(total: number, pair: UnitPair, { locale }: TemplateContext): Draft {
  const large = Math.floor(total / pair.factor);
  const rest = total % pair.factor;
  return {
    text: `How many full ${pair.large[1]} are in ${formatWhole(total, locale)}\u00a0${pair.small}?`,
    answer: wholeAnswer(large, locale),
    expression: `floor(${total} / ${pair.factor})`,
    features: { size: sizeOf(large) + (total > 100 ? 0.7 : 0), extraSteps: rest === 0 ? 0 : 0.5 },
    strategy: [
      `${large} × ${pair.factor} = ${formatWhole(large * pair.factor, locale)}`,
      ...(rest === 0 ? [] : [`${rest} left over, too few for another one.`]),
    ],
    slips: [
      { misconception: 'group.rounds-up', answer: wholeAnswer(large + 1, locale) },
      {
        misconception: pair.factor === 60 ? 'time.hundred-minutes' : 'time.ten-in-group',
        answer: wholeAnswer(Math.floor(total / (pair.factor === 60 ? 100 : 10)), locale),
      },
      ...(rest > 0
        ? [{ misconception: 'group.left-over-given' as const, answer: wholeAnswer(rest, locale) }]
        : []),
    ],
  };
}

function dayName(index: number): string {
  return DAY_NAMES[((index % 7) + 7) % 7] ?? 'Monday';
}

function nextDay(start: number, step: 1 | 2 | -1, isDayNumber: boolean): Draft {
  const words =
    step === 1
      ? 'comes straight after'
      : step === -1
        ? 'comes just before'
        : isDayNumber
          ? 'is 2 days after'
          : 'is two days after';
  return {
    text: `Which day of the week ${words} ${dayName(start)}?`,
    answer: wordAnswer(dayName(start + step)),
    expression: null,
    features: { size: step === 1 ? 0 : 1, adjust: step === 1 ? -0.6 : 0 },
    strategy: [
      step > 0
        ? `Say the days on: ${Array.from({ length: step + 1 }, (_, i) => dayName(start + i)).join(', ')}.`
        : `Say the days: ${dayName(start - 1)}, ${dayName(start)}.`,
    ],
    slips: [
      { misconception: 'time.wrong-way', answer: wordAnswer(dayName(start - step)) },
      {
        misconception: 'time.day-counted-twice',
        answer: wordAnswer(dayName(start + (step > 0 ? step - 1 : step - 1))),
      },
    ],
  };
}

function weekday(days: number, start: number, isAgo: boolean, { locale }: TemplateContext): Draft {
  const rest = days % 7;
  const weeks = Math.floor(days / 7);
  const sign = isAgo ? -1 : 1;
  const end = start + sign * days;
  const many = `${formatWhole(days, locale)}\u00a0${days === 1 ? 'day' : 'days'}`;
  return {
    text: isAgo
      ? `Today is ${dayName(start)}. Which day of the week was it ${many} ago?`
      : `Today is ${dayName(start)}. Which day of the week will it be in ${many}?`,
    answer: wordAnswer(dayName(end)),
    expression: null,
    features: {
      size: weeks === 0 ? (days > 3 ? 0.5 : 0) : sizeOf(weeks) + 1,
      extraSteps: weeks === 0 || rest === 0 ? 0 : 1,
      adjust: (isAgo ? 0.4 : 0) - 0.4,
    },
    strategy: [
      ...(weeks > 0
        ? [`${weeks} × 7 = ${formatWhole(weeks * 7, locale)}, full weeks bring back ${dayName(start)}.`]
        : []),
      ...(rest > 0
        ? [
            ...(weeks > 0
              ? [`${formatWhole(days, locale)} − ${formatWhole(weeks * 7, locale)} = ${rest}`]
              : []),
            `${rest} ${rest === 1 ? 'day' : 'days'} ${isAgo ? 'back' : 'on'} is ${dayName(end)}.`,
          ]
        : []),
    ],
    slips: [
      { misconception: 'time.day-counted-twice', answer: wordAnswer(dayName(end - sign)) },
      { misconception: 'time.wrong-way', answer: wordAnswer(dayName(start - sign * days)) },
      { misconception: 'time.week-of-five', answer: wordAnswer(dayName(start + sign * (days % 5))) },
    ],
  };
}

/** The day's number as an amount of a large unit whose small units come out whole, or null. */
function largeOn(
  day: Parameters<typeof quantityOn>[0],
  locale: Locale,
  pair: UnitPair,
  high: number,
): Quantity | null {
  const amount = quantityOn(day, locale, 0.01, high, 2);
  return amount !== null && pair.factor % amount.value.d === 0 && day.kind !== 'money' ? amount : null;
}

const PARTS = [
  rational(1, 2),
  rational(1, 4),
  rational(3, 4),
  rational(1, 3),
  rational(2, 3),
  rational(3, 2),
];

export const TIME_UNIT_SKILLS: readonly Skill[] = [
  {
    id: 'time.days.order',
    title: 'Say the days of the week in order',
    year: 0,
    fluentYear: 1,
    strand: 'time',
    prerequisites: ['place.next.20'],
    codes: { ac9: ['AC9MFM02'], england: ['NC-Y1-measure-5'], ccss: [] },
    templates: [
      {
        id: 'next',
        ask: ({ rng }) => nextDay(rng.int(0, 6), rng.pick([1, 1, 2, -1]), false),
        dayKinds: ['whole'],
        askOn: (day, { rng }) => {
          const step = wholeOn(day, 1, 2);
          return step === null
            ? null
            : using(nextDay(rng.int(0, 6), step === 1 ? 1 : 2, true), `goes on ${step} in the week`);
        },
      },
    ],
  },
  {
    id: 'time.weekday',
    title: 'Find the weekday some days from now',
    year: 3,
    fluentYear: 5,
    strand: 'time',
    prerequisites: ['time.days.order', 'time.weeks'],
    codes: { ac9: ['AC9M2M03'], england: ['NC-Y1-measure-5', 'NC-Y4-measure-6'], ccss: [] },
    templates: [
      {
        id: 'weekday',
        ask: (context) =>
          weekday(context.rng.int(2, 22), context.rng.int(0, 6), context.rng.chance(0.25), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const days = wholeOn(day, 1, 400);
          if (days === null) return null;
          const isAgo = context.rng.chance(0.25);
          return using(
            weekday(days, context.rng.int(0, 6), isAgo, context),
            `goes ${day.text} days ${isAgo ? 'back' : 'on'} in the week`,
          );
        },
      },
    ],
  },
  {
    id: 'time.weeks',
    title: 'Change between weeks and days',
    year: 3,
    fluentYear: 4,
    strand: 'time',
    prerequisites: ['time.days.order', 'mult.groups'],
    codes: { ac9: ['AC9M2M03', 'AC9M3M03'], england: ['NC-Y4-measure-6'], ccss: ['4.MD.A.1'] },
    templates: [
      {
        id: 'days-in',
        ask: (context) => toSmall(quantity(context.rng.int(2, 9), context.locale), WEEKS, context),
        dayKinds: ['whole', 'fraction'],
        askOn: (day, context) => {
          const weeks = largeOn(day, context.locale, WEEKS, 120);
          return weeks === null
            ? null
            : using(toSmall(weeks, WEEKS, context), `changes ${day.text} weeks to days`);
        },
      },
      {
        id: 'weeks-and-days',
        ask: (context) => split(context.rng.int(1, 6) * 7 + context.rng.int(1, 6), WEEKS, context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const days = wholeOn(day, 8, 400);
          if (days === null) return null;
          const draft =
            days % 7 !== 0 && context.rng.chance(0.6)
              ? split(days, WEEKS, context)
              : fullOnes(days, WEEKS, context);
          return using(draft, `sorts ${day.text} days into weeks`);
        },
      },
    ],
  },
  {
    id: 'time.hours',
    title: 'Change between hours and minutes',
    year: 4,
    fluentYear: 5,
    strand: 'time',
    prerequisites: ['time.next-hour', 'mult.tens'],
    codes: {
      ac9: ['AC9M4M03', 'AC9M3M03'],
      england: ['NC-Y2-measure-8', 'NC-Y4-measure-1', 'NC-Y5-measure-6'],
      ccss: ['4.MD.A.1', '5.MD.A.1'],
    },
    templates: [
      {
        id: 'minutes-in',
        ask: (context) =>
          toSmall(
            context.rng.chance(0.5)
              ? quantity(context.rng.int(2, 9), context.locale)
              : quantity(context.rng.pick(PARTS), context.locale, 'fraction'),
            HOURS,
            context,
          ),
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const hours = largeOn(day, context.locale, HOURS, 60);
          return hours === null
            ? null
            : using(toSmall(hours, HOURS, context), `changes ${largeText(hours, HOURS)} to minutes`);
        },
      },
      {
        id: 'hours-and-minutes',
        ask: (context) => split(context.rng.int(1, 4) * 60 + context.rng.int(1, 11) * 5, HOURS, context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const minutes = wholeOn(day, 61, 1400);
          if (minutes === null) return null;
          const draft =
            minutes % 60 !== 0 && context.rng.chance(0.6)
              ? split(minutes, HOURS, context)
              : fullOnes(minutes, HOURS, context);
          return using(draft, `sorts ${day.text} minutes into hours`);
        },
      },
    ],
  },
  {
    id: 'time.seconds',
    title: 'Change between minutes and seconds',
    year: 4,
    fluentYear: 5,
    strand: 'time',
    prerequisites: ['time.hours'],
    codes: {
      ac9: ['AC9M3M03', 'AC9M4M03'],
      england: ['NC-Y3-measure-6', 'NC-Y4-measure-6'],
      ccss: ['4.MD.A.1'],
    },
    templates: [
      {
        id: 'seconds-in',
        ask: (context) => toSmall(quantity(context.rng.int(2, 12), context.locale), MINUTES, context),
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const minutes = largeOn(day, context.locale, MINUTES, 60);
          return minutes === null
            ? null
            : using(toSmall(minutes, MINUTES, context), `changes ${largeText(minutes, MINUTES)} to seconds`);
        },
      },
      {
        id: 'minutes-and-seconds',
        ask: (context) => split(context.rng.int(65, 290), MINUTES, context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const seconds = wholeOn(day, 61, 1400);
          return seconds === null || seconds % 60 === 0
            ? null
            : using(split(seconds, MINUTES, context), `sorts ${day.text} seconds into minutes`);
        },
      },
    ],
  },
  {
    id: 'time.days',
    title: 'Change between days and hours',
    year: 5,
    fluentYear: 6,
    strand: 'time',
    prerequisites: ['time.hours'],
    codes: {
      ac9: ['AC9M4M03'],
      england: ['NC-Y2-measure-8', 'NC-Y5-measure-6', 'NC-Y6-measure-2'],
      ccss: ['4.MD.A.1', '5.MD.A.1'],
    },
    templates: [
      {
        id: 'hours-in',
        ask: (context) =>
          toSmall(
            context.rng.chance(0.5)
              ? quantity(context.rng.int(2, 10), context.locale)
              : quantity(context.rng.pick(PARTS), context.locale, 'fraction'),
            DAYS,
            context,
          ),
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const days = largeOn(day, context.locale, DAYS, 50);
          return days === null
            ? null
            : using(toSmall(days, DAYS, context), `changes ${largeText(days, DAYS)} to hours`);
        },
      },
      {
        id: 'days-and-hours',
        ask: (context) => split(context.rng.int(1, 4) * 24 + context.rng.int(1, 23), DAYS, context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const hours = wholeOn(day, 25, 500);
          return hours === null || hours % 24 === 0
            ? null
            : using(split(hours, DAYS, context), `sorts ${day.text} hours into days`);
        },
      },
    ],
  },
  {
    id: 'time.months',
    title: 'Change between years and months',
    year: 4,
    fluentYear: 5,
    strand: 'time',
    prerequisites: ['time.weeks'],
    codes: { ac9: ['AC9M4M03'], england: ['NC-Y4-measure-6'], ccss: [] },
    templates: [
      {
        id: 'months-in',
        ask: (context) =>
          toSmall(
            context.rng.chance(0.6)
              ? quantity(context.rng.int(2, 10), context.locale)
              : quantity(context.rng.pick(PARTS), context.locale, 'fraction'),
            YEARS,
            context,
          ),
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const years = largeOn(day, context.locale, YEARS, 100);
          return years === null
            ? null
            : using(toSmall(years, YEARS, context), `changes ${largeText(years, YEARS)} to months`);
        },
      },
      {
        id: 'years-and-months',
        ask: (context) => split(context.rng.int(1, 5) * 12 + context.rng.int(1, 11), YEARS, context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const months = wholeOn(day, 13, 400);
          if (months === null) return null;
          const draft =
            months % 12 !== 0 && context.rng.chance(0.6)
              ? split(months, YEARS, context)
              : fullOnes(months, YEARS, context);
          return using(draft, `sorts ${day.text} months into years`);
        },
      },
    ],
  },
];
