// Days of the week.
import { countOf } from '../story.js';
import { DAY_NAMES } from '../../numbers/calendar.js';
import { formatWhole } from '../../numbers/format.js';
import { wordAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

function dayName(index: number): string {
  return DAY_NAMES[((index % 7) + 7) % 7] ?? 'Monday';
}

function nextDay(start: number, step: 1 | 2 | -1, isDayNumber: boolean): Draft {
  const words =
    step === 1
      ? 'comes just after'
      : step === -1
        ? 'comes just before'
        : isDayNumber
          ? 'is 2 days after'
          : 'is two days after';
  return {
    text: `Which day ${words} ${dayName(start)}?`,
    answer: wordAnswer(dayName(start + step)),
    expression: null,
    features: { size: step === 1 ? 0 : 1, adjust: step === 1 ? -0.6 : 0 },
    strategy: [
      step > 0
        ? `Say the days on: ${Array.from({ length: step + 1 }, (_, i) => dayName(start + i)).join(', ')}`
        : `Say the days: ${dayName(start - 1)}, ${dayName(start)}`,
    ],
    slips: [
      { misconception: 'time.wrong-way', answer: wordAnswer(dayName(start - step)) },
      {
        misconception: 'time.day-counted-twice',
        answer: wordAnswer(dayName(start + Math.max(0, step - 1))),
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
      ? `Today is ${dayName(start)}. Which day was it ${many} ago?`
      : `Today is ${dayName(start)}. Which day will it be in ${many}?`,
    answer: wordAnswer(dayName(end)),
    expression: null,
    features: {
      size: weeks === 0 ? (days > 3 ? 0.5 : 0) : sizeOf(weeks) + 1,
      extraSteps: weeks === 0 || rest === 0 ? 0 : 1,
      adjust: (isAgo ? 0.4 : 0) - 0.4,
    },
    strategy: [
      ...(weeks > 0
        ? [`${weeks} × 7 = ${formatWhole(weeks * 7, locale)}, full weeks bring back ${dayName(start)}`]
        : []),
      ...(rest > 0
        ? [
            ...(weeks > 0
              ? [`${formatWhole(days, locale)} − ${formatWhole(weeks * 7, locale)} = ${rest}`]
              : []),
            `Say ${rest} ${rest === 1 ? 'day' : 'days'} ${isAgo ? 'back' : 'on'} from ${dayName(start)}: ${Array.from({ length: rest }, (_, i) => dayName(start + sign * (i + 1))).join(', ')}`,
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

export const CALENDAR_SKILLS: readonly Skill[] = [
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
            : using(nextDay(rng.int(0, 6), step === 1 ? 1 : 2, true), `goes on ${countOf(step, 'days')}`);
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
            `goes ${isAgo ? 'back' : 'on'} ${countOf(days, 'days', day.text)}`,
          );
        },
      },
    ],
  },
];
