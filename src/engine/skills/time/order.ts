// Order in time: what lasts longest, yesterday and tomorrow, months of the year, a month on a calendar.
import { DAY_NAMES, dayAndMonth, daysInMonth, monthName } from '../../numbers/calendar.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { offered, worded } from '../offered.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

const UNITS = ['second', 'minute', 'hour', 'day', 'week', 'month', 'year'] as const;

const many = (n: number, unit: string) => `${n} ${unit}${n === 1 ? '' : 's'}`;

const longest = templateOf<readonly [units: readonly number[], counts: readonly number[], shortest: boolean]>(
  {
    id: 'longest',
    free: (rng) => {
      const start = rng.int(0, 4);
      const count = rng.int(2, 3);
      return [
        rng.shuffle([start, start + 1, start + 2]),
        rng.pick([
          [count, count, count],
          [count + 1, count, 2],
        ]),
        rng.chance(0.3),
      ];
    },
    draft: ([units, counts, shortest]) => {
      const texts = units.map((unit, i) => many(counts[i] ?? 2, UNITS[unit] ?? 'day'));
      const rank = [0, 1, 2].sort((a, b) => (units[a] ?? 0) - (units[b] ?? 0));
      const at = shortest ? (rank[0] ?? 0) : (rank[2] ?? 0);
      const other = shortest ? (rank[2] ?? 0) : (rank[0] ?? 0);
      // The numbers alone point to one of the three only where no two share the largest or the smallest.
      const extreme = shortest ? Math.min(...counts) : Math.max(...counts);
      const byNumber =
        counts.filter((count) => count === extreme).length === 1 ? counts.indexOf(extreme) : null;
      return offered({
        text: `Which is the ${shortest ? 'shortest' : 'longest'}: ${texts[0]}, ${texts[1]} or ${texts[2]}?`,
        right: texts[at] ?? '',
        wrong: [
          ...(byNumber === null ? [] : [['time.order-by-number', texts[byNumber] ?? ''] as const]),
          ['compare.reversed', texts[other] ?? ''],
        ],
        features: { size: Math.min(...units) / 4 },
        strategy: [`From short to long: ${rank.map((i) => UNITS[units[i] ?? 0]).join(', ')}`],
      });
    },
  },
);

const AROUND = [
  ['Yesterday was', -1],
  ['Tomorrow is', 1],
] as const;

const dayName = (index: number) => DAY_NAMES[((index % 7) + 7) % 7] ?? 'Monday';

const aroundToday = templateOf<
  readonly [known: (typeof AROUND)[number], day: number, ask: 'today' | 'other']
>({
  id: 'around-today',
  free: (rng) => [rng.pick(AROUND), rng.int(0, 6), rng.pick(['today', 'other'] as const)],
  draft: ([[words, offset], day, ask]) => {
    const today = day - offset;
    const asked = ask === 'today' ? today : today - offset;
    const name = ask === 'today' ? 'today' : offset < 0 ? 'tomorrow' : 'yesterday';
    const was = ask === 'other' && offset > 0;
    return worded({
      text: `${words} ${dayName(day)}. Which day ${was ? 'was' : 'is'} ${name}?`,
      right: dayName(asked),
      wrong: [
        ['time.wrong-way', dayName(day + (day - asked))],
        ['time.day-counted-twice', dayName(ask === 'today' ? day : today)],
      ],
      features: { extraSteps: ask === 'other' ? 1 : 0 },
      strategy: [
        `Today is ${dayName(today)}`,
        ...(ask === 'other' ? [`So ${name} ${was ? 'was' : 'is'} ${dayName(asked)}`] : []),
      ],
    });
  },
});

/** Any year without a leap day. */
const COMMON_YEAR = 2025;

/** The month's name and its days, for any whole number of months counted from January as 0. */
function monthAt(index: number): readonly [name: string, days: number] {
  const month = (((index % 12) + 12) % 12) + 1;
  return [monthName(month), daysInMonth(COMMON_YEAR, month)];
}

const nameAt = (index: number) => monthAt(index)[0];

const nextMonth = templateOf<readonly [month: number, step: number]>({
  id: 'next-month',
  free: (rng) => [rng.int(0, 11), rng.pick([1, 1, -1, 2])],
  draft: ([month, step]) =>
    worded({
      text: `Which month ${step === 1 ? 'comes just after' : step === 2 ? 'is two months after' : 'comes just before'} ${nameAt(month)}?`,
      right: nameAt(month + step),
      wrong: [
        ['time.wrong-way', nameAt(month - step)],
        ['time.day-counted-twice', nameAt(month + (step === 2 ? 1 : 0))],
      ],
      features: {
        size: Math.abs(step) - 1 + (step < 0 ? 0.5 : 0),
        adjust: month === 11 || month + step < 0 ? 0.3 : 0,
      },
      strategy: [
        `Say the months: ${(step < 0 ? [month - 1, month] : Array.from({ length: step + 1 }, (_, i) => month + i)).map(nameAt).join(', ')}`,
      ],
    }),
});

const monthLength = templateOf<readonly [month: number, year: 'ordinary' | 'leap']>({
  id: 'days-in-month',
  free: (rng) => [rng.int(0, 11), rng.pick(['ordinary', 'leap'] as const)],
  draft: ([month, year], { locale }) => {
    const [name, usual] = monthAt(month);
    const days = month === 1 && year === 'leap' ? 29 : usual;
    return {
      text:
        month === 1
          ? `How many days does February have in ${year === 'leap' ? 'a leap' : 'an ordinary'} year?`
          : `How many days does ${name} have?`,
      answer: wholeAnswer(days, locale),
      expression: null,
      features: { adjust: 0.2, extraSteps: month === 1 ? 0.5 : 0 },
      strategy: [
        month === 1
          ? 'February has 28 days, and one more in a leap year'
          : `On the knuckles ${name} is a ${days === 31 ? 'knuckle: 31' : 'gap: 30'}`,
      ],
      slips: wholeSlips(
        [
          ['time.month-length', days === 30 ? 31 : 30],
          ['time.month-length', month === 1 ? 57 - days : null],
        ],
        locale,
      ),
    };
  },
});

interface Page {
  readonly month: number;
  readonly first: number;
  readonly date: number;
}

const page = ({ month, first, date }: Page, sundayFirst: boolean, ring: boolean) => ({
  kind: 'calendar' as const,
  month: nameAt(month),
  days: monthAt(month)[1],
  firstWeekday: first,
  ...(sundayFirst ? { sundayFirst } : {}),
  ...(ring ? { ringed: [date] } : {}),
});

const weekdayOf = (first: number, date: number) => dayName((first + date - 2) % 7);

/** The dates that stand beside this one in its week. */
function besideInWeek(first: number, date: number, sundayFirst: boolean): number[] {
  const column = (first + date - (sundayFirst ? 1 : 2)) % 7;
  return [...(column < 6 ? [date + 1] : []), ...(column > 0 && date > 1 ? [date - 1] : [])];
}

const whichWeekday = templateOf<Page>({
  id: 'weekday-of',
  free: (rng) => ({ month: rng.int(0, 11), first: rng.int(1, 7), date: rng.int(2, 28) }),
  on: onWhole(1, 28, (n, rng) => ({ month: rng.int(0, 11), first: rng.int(1, 7), date: n })),
  draft: (on, { locale }) => ({
    ...worded({
      text: `On which day of the week is ${dayAndMonth(on.date, nameAt(on.month), locale.id)} on the calendar?`,
      right: weekdayOf(on.first, on.date),
      wrong: besideInWeek(on.first, on.date, locale.id === 'en-US').map(
        (date) => ['graph.other-point', weekdayOf(on.first, date)] as const,
      ),
      features: { drawn: true, size: on.date > 14 ? 0.3 : 0 },
      strategy: [`Find ${on.date}, then look up to the head of its column: ${weekdayOf(on.first, on.date)}`],
      figure: page(on, locale.id === 'en-US', false),
    }),
    usesNumber: `finds day ${on.date} of a month`,
  }),
});

const daysLater = templateOf<readonly [page: Page, gap: number]>({
  id: 'days-later',
  free: (rng) => [{ month: rng.int(0, 11), first: rng.int(1, 7), date: rng.int(1, 14) }, rng.int(3, 14)],
  draft: ([on, gap], { locale }) => ({
    text: `How many days is it from ${dayAndMonth(on.date, nameAt(on.month), locale.id)} to ${dayAndMonth(on.date + gap, nameAt(on.month), locale.id)}?`,
    answer: wholeAnswer(gap, locale),
    expression: `${on.date + gap} - ${on.date}`,
    features: { drawn: true, size: gap / 10, carries: (on.date + gap) % 10 < on.date % 10 ? 1 : 0 },
    strategy: [`${on.date} + ${gap} = ${on.date + gap}`],
    slips: wholeSlips(
      [
        ['time.day-counted-twice', gap + 1],
        ['difference.adds', 2 * on.date + gap],
      ],
      locale,
    ),
    figure: page(on, locale.id === 'en-US', true),
  }),
});

const weekLater = templateOf<readonly [page: Page, weeks: number, back: boolean]>({
  id: 'weeks-later',
  free: (rng) => {
    const back = rng.chance(0.3);
    return [
      { month: rng.int(0, 11), first: rng.int(1, 7), date: back ? rng.int(15, 28) : rng.int(1, 14) },
      rng.int(1, 2),
      back,
    ];
  },
  draft: ([on, weeks, back], { locale }) => {
    const way = back ? -1 : 1;
    const to = on.date + way * 7 * weeks;
    const slips = [
      ['time.week-of-five', on.date + way * 5 * weeks],
      ['time.day-counted-twice', to - way],
    ] as const;
    return {
      text: `It is ${dayAndMonth(on.date, nameAt(on.month), locale.id)}. What date ${back ? 'was' : 'is'} it ${many(weeks, 'week')} ${back ? 'ago' : 'from now'}?`,
      answer: { kind: 'word', text: dayAndMonth(to, nameAt(on.month), locale.id), value: null },
      accepts: [String(to), `${to} ${nameAt(on.month)}`],
      expression: null,
      features: { drawn: true, extraSteps: weeks - 1, adjust: back ? 0.3 : 0 },
      strategy: [
        `${many(weeks, 'week')} ${weeks === 1 ? 'is' : 'are'} ${7 * weeks} days: ${on.date} ${back ? '−' : '+'} ${7 * weeks} = ${to}`,
      ],
      slips: slips.map(([misconception, date]) => ({
        misconception,
        answer: { kind: 'word' as const, text: dayAndMonth(date, nameAt(on.month), locale.id), value: null },
      })),
      figure: page(on, locale.id === 'en-US', true),
    };
  },
});

export const TIME_ORDER_SKILLS: readonly Skill[] = [
  {
    id: 'time.longest',
    title: 'Order lengths of time',
    year: 1,
    fluentYear: 2,
    strand: 'time',
    prerequisites: ['time.days.order'],
    codes: {
      ac9: ['AC9M1M03', 'AC9M3M03'],
      england: ['NC-Y1-measure-1d', 'NC-Y2-measure-6', 'NC-Y1-measure-5'],
      ccss: [],
    },
    templates: [longest],
  },
  {
    id: 'time.around-today',
    title: 'Yesterday, today and tomorrow',
    year: 1,
    fluentYear: 1,
    strand: 'time',
    prerequisites: ['time.days.order'],
    codes: { ac9: ['AC9MFM02'], england: ['NC-Y1-measure-4'], ccss: [] },
    templates: [aroundToday],
  },
  {
    id: 'time.months.order',
    title: 'Months of the year and their days',
    year: 2,
    fluentYear: 3,
    strand: 'time',
    prerequisites: ['time.days.order'],
    codes: { ac9: ['AC9M2M03'], england: ['NC-Y1-measure-5', 'NC-Y3-measure-6'], ccss: [] },
    templates: [nextMonth, monthLength],
  },
  {
    id: 'time.calendar',
    title: 'Read a calendar',
    year: 2,
    fluentYear: 3,
    strand: 'time',
    prerequisites: ['time.months.order', 'place.ten-more'],
    codes: { ac9: ['AC9M2M03'], england: ['NC-Y1-measure-5'], ccss: [] },
    templates: [whichWeekday, daysLater, weekLater],
  },
];
