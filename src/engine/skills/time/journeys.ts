// Minutes between two times, and arrivals on a 24-hour timetable.
import { countOf } from '../story.js';
import { formatClock, formatDuration } from '../../numbers/format.js';
import { clockAnswer, unitAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { differenceInHundreds, hourByHour, impossibleTime } from '../../questions/slips/clock.js';
import { using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { ELAPSED, crossings, stepsForward } from './steps.js';

function between(start: number, minutes: number, { locale, rng }: TemplateContext): Draft {
  const end = start + minutes;
  const crosses = crossings(start, minutes);
  const text = rng.chance(0.5)
    ? `How many minutes is it from ${formatClock(start)} to ${formatClock(end)}?`
    : `A show runs from ${formatClock(start)} to ${formatClock(end)}. How many minutes is that?`;
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
      `Altogether ${minutes}\u00a0min`,
    ],
    slips: [
      {
        misconception: 'time.hundred-minutes',
        answer: unitAnswer(differenceInHundreds(start, end), 'min', locale),
      },
      ...(crosses
        ? [
            {
              misconception: 'time.larger-less-smaller' as const,
              answer: unitAnswer(hourByHour(start, end), 'min', locale),
            },
          ]
        : [
            { misconception: 'time.hour-too-many' as const, answer: unitAnswer(minutes + 60, 'min', locale) },
          ]),
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
  // From 10:00 to 12:59 both clocks read the same, so such trips start seven hours later.
  const isUnclear = (time: number) => time % 1440 >= 600 && time % 1440 < 780;
  const start = isUnclear(leaving) || isUnclear(leaving + minutes + wait + second) ? leaving + 420 : leaving;
  const end = (start + minutes + wait + second) % 1440;
  const vehicle = rng.pick(minutes > 140 ? ['bus', 'train', 'ferry'] : ['bus', 'train', 'ferry', 'tram']);
  const parts = wait > 0;
  const total = minutes + wait + second;
  // What a child writes who adds the minutes as if an hour had a hundred of them.
  const hundredRead = (start % 60) + total;
  return {
    text: parts
      ? `A ${vehicle} leaves at ${show(start)}, goes ${minutes}\u00a0min, waits ${wait}\u00a0min, then goes ${second}\u00a0min more. When does it arrive?`
      : `A ${vehicle} leaves at ${show(start)} and takes ${minutes}\u00a0minutes. When does it arrive?`,
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
        ? [`${total} = ${Math.floor(total / 60)} × 60 + ${total % 60}, so ${formatDuration(total)}`]
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
              misconception: 'time.hour-overlooked' as const,
              answer: clockAnswer((end - 60 + 1440) % 1440, 24),
            },
          ]
        : []),
      { misconception: 'time.wrong-way', answer: clockAnswer((start - total + 2880) % 1440, 24) },
      hundredRead >= 60 && hundredRead < 100
        ? {
            misconception: 'time.hundred-minutes',
            answer: impossibleTime(Math.floor(start / 60), hundredRead, 24),
          }
        : { misconception: 'time.hour-too-many', answer: clockAnswer((end + 60) % 1440, 24) },
    ],
  };
}

export const JOURNEY_SKILLS: readonly Skill[] = [
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
          return using(
            between(start, length, context),
            `starts at ${countOf(minute, 'minutes')} past an hour`,
          );
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
          return rng.chance(0.5)
            ? using(arrival(start, minutes, 0, 0, context), `makes a trip of ${day.text} minutes`)
            : using(
                arrival(start, minutes, rng.int(5, 20), rng.int(10, 50), context),
                `first goes ${day.text} minutes`,
              );
        },
      },
    ],
  },
];
