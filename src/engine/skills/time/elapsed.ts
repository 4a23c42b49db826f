// Time that passes: later, earlier, between, and journeys on a 24-hour timetable.
import { formatClock, formatDuration } from '../../numbers/format.js';
import { toNumber } from '../../numbers/rational.js';
import { clockAnswer, unitAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import {
  addedInHundreds,
  differenceInHundreds,
  impossibleTime,
  onDial,
} from '../../questions/slips/clock.js';
import { storyName } from '../story.js';
import { quantityOn, using, wholeOn } from '../measuring/quantity.js';
import type { DayNumber } from '../../numbers/day-number.js';
import type { Skill } from '../skill.js';

/** A length of time: whole minutes, and how the question says it. */
interface Span {
  readonly minutes: number;
  readonly text: string;
}

const minutesSpan = (minutes: number): Span => ({
  minutes,
  text: `${minutes}\u00a0minute${minutes === 1 ? '' : 's'}`,
});

/** Steps by full hours first, then to the next full hour, then on. */
function stepsForward(start: number, minutes: number, show: (time: number) => string): string[] {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  const steps: string[] = [];
  let now = start;
  if (hours > 0) {
    steps.push(`${show(now)} + ${hours}\u00a0h = ${show(now + hours * 60)}`);
    now += hours * 60;
  }
  if (rest > 0) {
    const toHour = 60 - (now % 60);
    if (rest > toHour) {
      steps.push(`${show(now)} + ${toHour}\u00a0min = ${show(now + toHour)}`);
      steps.push(`${show(now + toHour)} + ${rest - toHour}\u00a0min = ${show(now + rest)}`);
    } else steps.push(`${show(now)} + ${rest}\u00a0min = ${show(now + rest)}`);
  }
  return steps;
}

function crossings(start: number, minutes: number): number {
  return (start % 60) + (minutes % 60) >= 60 ? 1 : 0;
}

function later(start: number, span: Span, { rng }: TemplateContext): Draft {
  const end = onDial(start + span.minutes);
  const wraps = start + span.minutes >= 720;
  const wrong = addedInHundreds(start, span.minutes);
  const wrongAnswer =
    wrong.minute >= 60
      ? impossibleTime(wrong.hour, wrong.minute)
      : clockAnswer((wrong.hour % 12) * 60 + wrong.minute);
  const crosses = crossings(start, span.minutes);
  const text = rng.pick([
    `What time is it ${span.text} after ${formatClock(start)}?`,
    `A game starts at ${formatClock(start)} and lasts ${span.text}. When does it end?`,
    `${storyName(rng)} leaves at ${formatClock(start)} and is back ${span.text} later. What time is it then?`,
  ]);
  return {
    text,
    answer: clockAnswer(end),
    expression: wraps ? `mod(${start} + ${span.minutes}, 720)` : `${start} + ${span.minutes}`,
    features: {
      size:
        (span.minutes > 120 ? 1.5 : span.minutes > 60 ? 1 : 0) +
        (start % 5 === 0 && span.minutes % 5 === 0 ? 0 : 0.5),
      carries: crosses + (wraps ? 1 : 0),
      extraSteps: span.minutes > 60 ? 1 : 0,
      unlike: span.text.includes('/') || span.text.includes('.'),
      story: !text.startsWith('What'),
      adjust: -0.4,
    },
    strategy: [
      ...(span.text.includes('minute') ? [] : [`${span.text} is ${formatDuration(span.minutes)}.`]),
      ...stepsForward(start, span.minutes, (time) => formatClock(time)),
    ],
    slips: [
      ...(crosses ? [{ misconception: 'time.hundred-minutes' as const, answer: wrongAnswer }] : []),
      ...(crosses || span.minutes >= 60
        ? [
            {
              misconception: 'time.hour-not-moved' as const,
              answer: clockAnswer(onDial(Math.floor(start / 60) * 60 + (end % 60))),
            },
          ]
        : [{ misconception: 'time.hour-ahead' as const, answer: clockAnswer(onDial(end + 60)) }]),
      { misconception: 'time.wrong-way', answer: clockAnswer(onDial(start - span.minutes)) },
    ],
    figure: { kind: 'clock', minutes: start },
  };
}

function earlier(end: number, span: Span): Draft {
  const start = onDial(end - span.minutes);
  const wraps = end - span.minutes < 0;
  const borrows = end % 60 < span.minutes % 60 ? 1 : 0;
  const hours = Math.floor(span.minutes / 60);
  const rest = span.minutes % 60;
  const afterHours = onDial(end - hours * 60);
  const toHour = afterHours % 60;
  return {
    text: `A lesson of ${span.text} ends at ${formatClock(end)}. When did it start?`,
    answer: clockAnswer(start),
    expression: wraps ? `mod(${end} - ${span.minutes}, 720)` : `${end} - ${span.minutes}`,
    features: {
      size: (span.minutes > 60 ? 1 : 0) + (end % 5 === 0 && span.minutes % 5 === 0 ? 0 : 0.5),
      carries: borrows + (wraps ? 1 : 0),
      unknownInside: true,
      extraSteps: span.minutes > 60 ? 1 : 0,
      story: true,
      unlike: span.text.includes('/') || span.text.includes('.'),
      adjust: -0.3,
    },
    strategy: [
      ...(span.text.includes('minute') ? [] : [`${span.text} is ${formatDuration(span.minutes)}.`]),
      ...(hours > 0 ? [`${formatClock(end)} − ${hours}\u00a0h = ${formatClock(afterHours)}`] : []),
      ...(rest === 0
        ? []
        : rest > toHour && toHour > 0
          ? [
              `${formatClock(afterHours)} − ${toHour}\u00a0min = ${formatClock(afterHours - toHour)}`,
              `${formatClock(afterHours - toHour)} − ${rest - toHour}\u00a0min = ${formatClock(start)}`,
            ]
          : [`${formatClock(afterHours)} − ${rest}\u00a0min = ${formatClock(start)}`]),
    ],
    slips: [
      { misconception: 'time.wrong-way', answer: clockAnswer(onDial(end + span.minutes)) },
      ...(borrows
        ? [
            {
              misconception: 'time.hundred-minutes' as const,
              answer:
                (end % 60) + 100 - rest >= 60
                  ? impossibleTime(((Math.floor(afterHours / 60) + 10) % 12) + 1, (end % 60) + 100 - rest)
                  : clockAnswer(onDial(start + 40)),
            },
            { misconception: 'time.hour-not-moved' as const, answer: clockAnswer(onDial(start + 60)) },
          ]
        : [{ misconception: 'time.hour-ahead' as const, answer: clockAnswer(onDial(start + 60)) }]),
    ],
  };
}

function between(start: number, minutes: number, { locale, rng }: TemplateContext): Draft {
  const end = start + minutes;
  const crosses = crossings(start, minutes);
  const text = rng.chance(0.5)
    ? `How many minutes is it from ${formatClock(start)} to ${formatClock(end)}?`
    : `A film starts at ${formatClock(start)} and ends at ${formatClock(end)}. How many minutes long is it?`;
  return {
    text,
    answer: unitAnswer(minutes, 'min', locale),
    expression: `(${Math.floor(end / 60)} * 60 + ${end % 60}) - (${Math.floor(start / 60)} * 60 + ${start % 60})`,
    features: {
      size: (minutes > 60 ? 1 : 0) + (minutes % 5 === 0 ? 0 : 0.5),
      carries: crosses,
      extraSteps: minutes > 60 ? 1 : 0,
      story: text.startsWith('A'),
    },
    strategy: [
      ...stepsForward(start, minutes, (time) => formatClock(time)),
      `Altogether ${minutes}\u00a0min.`,
    ],
    slips: [
      {
        misconception: 'time.hundred-minutes',
        answer: unitAnswer(differenceInHundreds(start, end), 'min', locale),
      },
      ...(crosses
        ? [
            {
              misconception: 'time.hour-not-moved' as const,
              answer: unitAnswer(Math.abs((end % 60) - (start % 60)), 'min', locale),
            },
          ]
        : [{ misconception: 'time.hour-ahead' as const, answer: unitAnswer(minutes + 60, 'min', locale) }]),
    ],
  };
}

/** "14:35": a time of day on a 24-hour clock. */
function show(time: number): string {
  return formatClock(time, 24);
}

function arrival(
  leaving: number,
  minutes: number,
  wait: number,
  second: number,
  { rng }: TemplateContext,
): Draft {
  // Arrivals from 10:00 to 12:59 would read the same on a 12-hour clock, so such trips start three hours later.
  const planned = Math.floor(((leaving + minutes + wait + second) % 1440) / 60);
  const start = planned >= 10 && planned <= 12 ? leaving + 180 : leaving;
  const end = (start + minutes + wait + second) % 1440;
  const vehicle = rng.pick(['bus', 'train', 'ferry', 'tram']);
  const parts = wait > 0;
  const total = minutes + wait + second;
  return {
    text: parts
      ? `A ${vehicle} leaves at ${show(start)}, travels ${minutes}\u00a0minutes, waits ${wait}\u00a0minutes and travels ${second}\u00a0minutes more. When does it arrive on a 24-hour clock?`
      : `A ${vehicle} leaves at ${show(start)} and the trip takes ${minutes}\u00a0minutes. When does it arrive on a 24-hour clock?`,
    answer: clockAnswer(end, 24),
    expression:
      start + total >= 1440
        ? `mod(${start} + ${total}, 1440)`
        : `${start} + ${parts ? `${minutes} + ${wait} + ${second}` : minutes}`,
    features: {
      size: minutes > 60 ? 1 : 0,
      carries: crossings(start, total),
      extraSteps: (parts ? 2 : 0) + (minutes > 120 ? 1 : 0),
      story: true,
      adjust: -0.3,
    },
    strategy: [
      ...(parts ? [`${minutes} + ${wait} + ${second} = ${total}`] : []),
      ...(total > 60 && total % 60 > 0
        ? [`${total} = ${Math.floor(total / 60)} × 60 + ${total % 60}, so ${formatDuration(total)}.`]
        : []),
      ...stepsForward(start, total, show),
    ],
    slips: [
      ...(parts
        ? [
            {
              misconception: 'time.wait-left-out' as const,
              answer: clockAnswer((end - wait + 1440) % 1440, 24),
            },
          ]
        : []),
      ...((start % 60) + (total % 60) >= 60
        ? [
            {
              misconception: 'time.hour-not-moved' as const,
              answer: clockAnswer((end - 60 + 1440) % 1440, 24),
            },
          ]
        : []),
      { misconception: 'time.wrong-way', answer: clockAnswer((start - total + 2880) % 1440, 24) },
    ],
  };
}

/** The day's number as a length of time of at most five hours, or null. */
function spanOn(day: DayNumber, context: TemplateContext): Span | null {
  const minutes = wholeOn(day, 2, 300);
  if (minutes !== null) return minutesSpan(minutes);
  const hours = day.kind === 'whole' ? null : quantityOn(day, context.locale, 0.1, 5, 2);
  if (hours === null || 60 % hours.value.d !== 0) return null;
  const isPart = toNumber(hours.value) < 1 && hours.style === 'fraction';
  return {
    minutes: (60 / hours.value.d) * hours.value.n,
    text: isPart ? `${hours.text} of an hour` : `${hours.text}\u00a0hours`,
  };
}

const ELAPSED = { ac9: ['AC9M4M03'], england: ['NC-Y3-measure-7'], ccss: ['3.MD.A.1', '4.MD.A.2'] } as const;

export const ELAPSED_SKILLS: readonly Skill[] = [
  {
    id: 'time.later',
    title: 'Find a time some minutes later',
    year: 4,
    fluentYear: 5,
    strand: 'time',
    prerequisites: ['time.next-hour', 'time.clock.minute'],
    codes: ELAPSED,
    templates: [
      {
        id: 'later',
        ask: (context) =>
          later(context.rng.int(12, 130) * 5, minutesSpan(context.rng.int(3, 17) * 5), context),
        dayKinds: ['whole', 'fraction', 'decimal'],
        askOn: (day, context) => {
          const span = spanOn(day, context);
          if (span === null) return null;
          const { rng } = context;
          const hour = rng.int(1, 8);
          const start = hour * 60 + rng.pick([0, 0, 5, 10, 15, 25, 30, 35, 40, 48, 12]);
          return using(later(start, span, context), `moves a clock on by ${span.text}`);
        },
      },
    ],
  },
  {
    id: 'time.earlier',
    title: 'Find a time some minutes earlier',
    year: 4,
    fluentYear: 5,
    strand: 'time',
    prerequisites: ['time.later'],
    codes: ELAPSED,
    templates: [
      {
        id: 'earlier',
        ask: (context) => earlier(context.rng.int(20, 140) * 5, minutesSpan(context.rng.int(4, 17) * 5)),
        dayKinds: ['whole', 'fraction', 'decimal'],
        askOn: (day, context) => {
          const span = spanOn(day, context);
          if (span === null || span.minutes > 240) return null;
          const end = context.rng.int(2, 11) * 60 + context.rng.pick([0, 5, 10, 15, 20, 30, 50]);
          return using(earlier(end, span), `goes back by ${span.text}`);
        },
      },
    ],
  },
  {
    id: 'time.between',
    title: 'Find the minutes between two times',
    year: 4,
    fluentYear: 5,
    strand: 'time',
    prerequisites: ['time.next-hour'],
    codes: ELAPSED,
    templates: [
      {
        id: 'between',
        ask: (context) => between(context.rng.int(12, 120) * 5, context.rng.int(4, 23) * 5, context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const minute = wholeOn(day, 1, 59);
          if (minute === null) return null;
          const start = context.rng.int(1, 9) * 60 + minute;
          const length = 60 - minute + context.rng.int(1, 10) * 5;
          return using(between(start, length, context), `starts at ${minute} minutes past an hour`);
        },
      },
    ],
  },
  {
    id: 'time.journey',
    title: 'Work out arrival times from a timetable',
    year: 6,
    fluentYear: 6,
    strand: 'time',
    prerequisites: ['time.24hour', 'time.later'],
    codes: { ac9: ['AC9M6M03'], england: ['NC-Y5-stats-2'], ccss: [] },
    templates: [
      {
        id: 'journey',
        ask: (context) => {
          const { rng } = context;
          const start = rng.int(72, 240) * 5;
          return rng.chance(0.5)
            ? arrival(start, rng.int(25, 140), 0, 0, context)
            : arrival(start, rng.int(15, 60), rng.int(5, 20), rng.int(10, 50), context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const minutes = wholeOn(day, 5, 400);
          if (minutes === null) return null;
          const { rng } = context;
          const start = rng.int(72, 200) * 5 + rng.int(0, 4);
          return using(
            rng.chance(0.5)
              ? arrival(start, minutes, 0, 0, context)
              : arrival(start, minutes, rng.int(5, 20), rng.int(10, 50), context),
            `makes a trip of ${day.text} minutes`,
          );
        },
      },
    ],
  },
];
