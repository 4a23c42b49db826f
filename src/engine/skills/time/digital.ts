// Digital clocks: minutes left in the hour, 12-hour and 24-hour time.
import { countOf } from '../story.js';
import { formatClock } from '../../numbers/format.js';
import { clockAnswer, unitAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { onDial } from '../../questions/slips/clock.js';
import type { Rng } from '../../random/rng.js';
import { using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { TO_THE_MINUTE, hourOf } from './dial.js';

function toNextHour(time: number, { locale }: TemplateContext): Draft {
  const minute = time % 60;
  const left = 60 - minute;
  const next = ((((hourOf(time) + 11) % 12) + 1) % 12) + 1;
  const ones = (10 - (minute % 10)) % 10;
  return {
    text: `It is ${formatClock(time)}. How many minutes until ${next} o’clock?`,
    answer: unitAnswer(left, 'min', locale),
    expression: `60 - ${minute}`,
    features: {
      unknownInside: true,
      size: minute % 5 === 0 ? 0 : 0.7,
      carries: minute % 10 === 0 ? 0 : 1,
      adjust: -0.6,
    },
    strategy:
      ones === 0 || left < 10
        ? [`${minute} + ${left} = 60`]
        : [
            `${minute} + ${ones} = ${minute + ones}`,
            `${minute + ones} + ${left - ones} = 60`,
            `${ones} + ${left - ones} = ${left}`,
          ],
    slips: [
      { misconception: 'time.hundred-minutes', answer: unitAnswer(100 - minute, 'min', locale) },
      { misconception: 'meas.complement-ten', answer: unitAnswer(left + 10, 'min', locale) },
      { misconception: 'time.past-to-swapped', answer: unitAnswer(minute, 'min', locale) },
    ],
    figure: { kind: 'digital-clock', text: formatClock(time) },
  };
}

/** An hour whose 24-hour form cannot be read as a 12-hour time: 13 to 23, or 00 to 09. */
function hourFor24(isPm: boolean, rng: Rng): number {
  return isPm ? rng.int(1, 11) : rng.int(0, 9);
}

function to24(time: number, isPm: boolean): Draft {
  const on24 = isPm ? time + 720 : time;
  const hour = hourOf(time);
  return {
    text: `How is ${formatClock(time)}\u00a0${isPm ? 'pm' : 'am'} written on a 24-hour clock?`,
    answer: clockAnswer(on24, 24),
    expression: isPm ? `(${hour} + 12) * 60 + ${time % 60}` : `${hour} * 60 + ${time % 60}`,
    features: { size: isPm ? 0.5 : 0, rule: !isPm, adjust: hour === 0 ? 0.8 : -0.3 },
    strategy: isPm
      ? [`After noon add 12 to the hour: ${hour} + 12 = ${hour + 12}`, `So ${formatClock(on24, 24)}`]
      : [
          hour === 0 ? 'The day starts at 00:00' : 'Before noon the hour stays the same',
          `So ${formatClock(on24, 24)}`,
        ],
    slips: isPm
      ? [
          { misconception: 'time.ten-for-twelve', answer: clockAnswer(time + 600, 24) },
          { misconception: 'time.twelve-left-out', answer: clockAnswer(time, 24) },
        ]
      : [{ misconception: 'time.am-as-pm', answer: clockAnswer(time + 720, 24) }],
  };
}

function to12(time: number): Draft {
  const hour = hourOf(time);
  return {
    text: `A 24-hour clock shows ${formatClock(time + 720, 24)}. What is this as a pm time?`,
    answer: clockAnswer(time + 720, 12, 'pm'),
    accepts: [formatClock(time)],
    expression: `${hour + 12} * 60 + ${time % 60}`,
    features: { size: 0.5, adjust: hour >= 8 ? 0.2 : 0 },
    strategy: [`${hour + 12} − 12 = ${hour}`, `So ${formatClock(time)}\u00a0pm`],
    slips: [
      // Ten from 23 leaves 13, which nobody writes as a pm hour.
      ...(hour === 11
        ? []
        : [
            {
              misconception: 'time.ten-for-twelve' as const,
              answer: clockAnswer(onDial(time + 120) + 720, 12, 'pm'),
            },
          ]),
      { misconception: 'fact.one-out', answer: clockAnswer(onDial(time + 60) + 720, 12, 'pm') },
    ],
    figure: { kind: 'digital-clock', text: formatClock(time + 720, 24) },
  };
}

export const DIGITAL_CLOCK_SKILLS: readonly Skill[] = [
  {
    id: 'time.next-hour',
    title: 'Find the minutes left in the hour',
    year: 3,
    fluentYear: 4,
    strand: 'time',
    prerequisites: ['time.clock.five', 'add.to100'],
    codes: TO_THE_MINUTE,
    templates: [
      {
        id: 'left',
        ask: (context) => toNextHour(context.rng.int(1, 11) * 60 + context.rng.int(3, 57), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const minute = wholeOn(day, 1, 59);
          return minute === null
            ? null
            : using(
                toNextHour(context.rng.int(1, 11) * 60 + minute, context),
                `fills ${countOf(minute, 'minutes')} up to an hour`,
              );
        },
      },
    ],
  },
  {
    id: 'time.24hour',
    title: 'Change between 12-hour and 24-hour time',
    year: 5,
    fluentYear: 6,
    strand: 'time',
    prerequisites: ['time.clock.minute'],
    codes: { ac9: ['AC9M5M03'], england: ['NC-Y3-measure-4', 'NC-Y4-measure-5'], ccss: [] },
    templates: [
      {
        id: 'to-24',
        ask: ({ rng }) => {
          const isPm = rng.chance(0.75);
          return to24(hourFor24(isPm, rng) * 60 + rng.int(0, 11) * 5, isPm);
        },
        dayKinds: ['whole'],
        askOn: (day, { rng }) => {
          const minute = wholeOn(day, 1, 59);
          if (minute === null) return null;
          const isPm = rng.chance(0.7);
          return using(
            to24(hourFor24(isPm, rng) * 60 + minute, isPm),
            `writes ${countOf(minute, 'minutes')} past an hour on another clock`,
          );
        },
      },
      {
        id: 'to-12',
        ask: ({ rng }) => to12(rng.int(1, 11) * 60 + rng.int(0, 11) * 5),
        dayKinds: ['whole'],
        askOn: (day, { rng }) => {
          const minute = wholeOn(day, 1, 59);
          return minute === null
            ? null
            : using(
                to12(rng.int(1, 11) * 60 + minute),
                `reads ${countOf(minute, 'minutes')} past an hour on another clock`,
              );
        },
      },
    ],
  },
];
