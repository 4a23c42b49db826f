// Reading a clock face and writing its time. Times are minutes on a 12-hour dial: 0 is 12:00, 719 is 11:59.
import { countOf } from '../story.js';
import { formatClock } from '../../numbers/format.js';
import { clockToWords } from '../../numbers/time-words.js';
import { clockAnswer } from '../../questions/answer.js';
import type { Draft, DraftSlip, TemplateContext } from '../../questions/draft.js';
import { handsSwapped, minuteNumberRead, nearestHourRead, onDial } from '../../questions/slips/clock.js';
import { using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { TO_THE_MINUTE, hourOf } from './dial.js';

/** The spoken time with digits, as classes write it: "25 past 3", "quarter to 8", "half past 2", "7 o’clock". */
function spoken(time: number): string {
  const hour = ((hourOf(time) + 11) % 12) + 1;
  const next = (hour % 12) + 1;
  const minute = time % 60;
  if (minute === 0) return `${hour} o’clock`;
  if (minute === 30) return `half past ${hour}`;
  if (minute === 15) return `quarter past ${hour}`;
  if (minute === 45) return `quarter to ${next}`;
  const count = minute < 30 ? minute : 60 - minute;
  const unit = count % 5 === 0 ? '' : count === 1 ? ' minute' : ' minutes';
  return minute < 30 ? `${count}${unit} past ${hour}` : `${count}${unit} to ${next}`;
}

function readSlips(time: number): DraftSlip[] {
  return [
    { misconception: 'time.hands-swapped', answer: clockAnswer(handsSwapped(time)) },
    { misconception: 'time.hour-ahead', answer: clockAnswer(nearestHourRead(time)) },
    { misconception: 'time.minute-number', answer: clockAnswer(minuteNumberRead(time)) },
    ...(time % 60 > 30
      ? [
          {
            misconception: 'time.past-to-swapped' as const,
            answer: clockAnswer(onDial(hourOf(time) * 60 + 120 - (time % 60))),
          },
        ]
      : []),
  ];
}

function readClockFace(time: number, { locale }: TemplateContext): Draft {
  const hour = hourOf(time);
  const minute = time % 60;
  return {
    text: 'What time does the clock show?',
    answer: clockAnswer(time),
    accepts: [spoken(time), clockToWords(time, locale)],
    expression: `${hour} * 60 + ${minute}`,
    features: {
      drawn: true,
      size: minute === 0 ? 0 : minute > 30 ? 1.5 : 0.5,
      extraSteps: minute % 5 === 0 ? 0 : 1,
      adjust: minute === 0 ? -0.8 : 0,
    },
    strategy:
      minute === 0
        ? [`The long hand is at 12, the short hand at ${hour === 0 ? 12 : hour}`]
        : [
            `The short hand has passed ${hour === 0 ? 12 : hour}`,
            minute === 30
              ? 'The long hand is at 6, halfway around: 30 minutes'
              : minute % 5 === 0
                ? `The long hand is at ${minute / 5}: ${minute / 5} × 5 = ${minute} minutes`
                : `The long hand is ${minute % 5} past the ${Math.floor(minute / 5) === 0 ? 12 : Math.floor(minute / 5)}: ${Math.floor(minute / 5)} × 5 + ${minute % 5} = ${minute} ${minute === 1 ? 'minute' : 'minutes'}`,
          ],
    slips: readSlips(time),
    figure: { kind: 'clock', minutes: time },
  };
}

function laterByHalves(time: number, halves: number): Draft {
  const after = onDial(time + 30 * halves);
  const name =
    halves === 1
      ? 'half an hour'
      : halves === 2
        ? '1 hour'
        : halves === 3
          ? 'one and a half hours'
          : '2 hours';
  const wraps = time + 30 * halves >= 720;
  return {
    text: `What time is it ${name} after ${spoken(time)}?`,
    answer: clockAnswer(after),
    accepts: [spoken(after)],
    expression: wraps ? `mod(${time} + ${30 * halves}, 720)` : `${time} + ${30 * halves}`,
    features: { size: halves - 1, adjust: halves % 2 === 0 ? -0.5 : 0, carries: wraps ? 1 : 0, drawn: true },
    strategy: [
      (
        [
          'The long hand goes halfway around for half an hour',
          'The long hand goes all the way around, so only the hour changes',
          'The long hand goes once around and then halfway',
          'The long hand goes around twice, so only the hour changes',
        ] as const
      )[halves - 1] ?? '',
      `${spoken(time)} → ${spoken(after)}`,
    ],
    slips: [
      { misconception: 'time.hour-not-moved', answer: clockAnswer(onDial(hourOf(time) * 60 + (after % 60))) },
      {
        misconception: halves === 1 ? 'time.hour-ahead' : 'time.hour-too-many',
        answer: clockAnswer(onDial(after + 60)),
      },
      { misconception: 'time.wrong-way', answer: clockAnswer(onDial(time - 30 * halves)) },
    ],
    figure: { kind: 'clock', minutes: time },
  };
}

function toDigital(time: number): Draft {
  const minute = time % 60;
  const isTo = minute > 30;
  return {
    text: `What does a digital clock show at ${spoken(time)}?`,
    answer: clockAnswer(time),
    expression: isTo ? `${hourOf(time) + 1} * 60 - ${60 - minute}` : `${hourOf(time)} * 60 + ${minute}`,
    features: {
      size: isTo ? 1 : 0,
      extraSteps: minute % 15 === 0 ? 0 : isTo ? 1 : 0,
      carries: minute % 5 === 0 ? 0 : 1,
    },
    strategy: isTo
      ? [`60 − ${60 - minute} = ${minute}`, `It is not yet the next hour, so ${formatClock(time)}`]
      : [`${minute} minutes past, so ${formatClock(time)}`],
    slips: [
      {
        misconception: 'time.past-to-swapped',
        answer: clockAnswer(onDial(isTo ? (hourOf(time) + 1) * 60 + 60 - minute : time - 2 * minute)),
      },
      { misconception: 'time.hour-ahead', answer: clockAnswer(onDial(time + 60)) },
    ],
  };
}

function minutesPast(time: number, how: string): Draft {
  const minute = time % 60;
  const hour = ((hourOf(time) + 11) % 12) + 1;
  return {
    text: `What does a digital clock show ${how} ${hour} o’clock?`,
    answer: clockAnswer(time),
    expression: `${hourOf(time)} * 60 + ${minute}`,
    features: { size: minute > 30 ? 0.5 : 0, rule: true, unlike: how.includes('/') },
    strategy: [
      ...(how.includes('/') ? [`An hour is 60 minutes, so that is ${minute} minutes`] : []),
      `${minute} minutes past ${hour} is ${formatClock(time)}`,
    ],
    slips: [
      { misconception: 'time.past-to-swapped', answer: clockAnswer(onDial(hourOf(time) * 60 - minute)) },
      { misconception: 'time.hour-ahead', answer: clockAnswer(onDial(time + 60)) },
    ],
  };
}

export const CLOCK_SKILLS: readonly Skill[] = [
  {
    id: 'time.clock.half',
    title: 'Tell o’clock and half past',
    year: 1,
    fluentYear: 2,
    strand: 'time',
    prerequisites: ['place.next.20'],
    codes: { ac9: ['AC9M2M04'], england: ['NC-Y1-measure-6'], ccss: ['1.MD.B.3'] },
    templates: [
      { id: 'face', ask: (context) => readClockFace(context.rng.int(1, 23) * 30, context) },
      {
        id: 'later',
        ask: ({ rng }) => laterByHalves(rng.int(1, 11) * 60, rng.int(1, 2)),
        dayKinds: ['whole'],
        askOn: (day, { rng }) => {
          const hour = wholeOn(day, 1, 12);
          return hour === null
            ? null
            : using(laterByHalves((hour % 12) * 60, rng.int(1, 4)), `moves on from ${hour} o’clock`);
        },
      },
    ],
  },
  {
    id: 'time.clock.five',
    title: 'Tell the time to five minutes',
    year: 2,
    fluentYear: 3,
    strand: 'time',
    prerequisites: ['time.clock.half', 'mult.table.5'],
    codes: { ac9: ['AC9M2M04'], england: ['NC-Y2-measure-7'], ccss: ['2.MD.C.7'] },
    templates: [
      { id: 'face', ask: (context) => readClockFace(context.rng.int(1, 143) * 5, context) },
      {
        id: 'digital',
        ask: ({ rng }) =>
          toDigital(rng.int(0, 11) * 60 + rng.pick([15, 30, 45, 5, 10, 20, 25, 35, 40, 50, 55])),
        dayKinds: ['whole'],
        askOn: (day, { rng }) => {
          const hour = wholeOn(day, 1, 12);
          if (hour === null) return null;
          const minute = rng.pick([15, 30, 5, 10, 20, 25, -15, -5, -10, -20, -25]);
          return using(toDigital(onDial(hour * 60 + minute)), `writes a time before or after ${hour}`);
        },
      },
    ],
  },
  {
    id: 'time.clock.minute',
    title: 'Tell the time to the minute',
    year: 3,
    fluentYear: 4,
    strand: 'time',
    prerequisites: ['time.clock.five'],
    codes: TO_THE_MINUTE,
    templates: [
      {
        id: 'face',
        ask: (context) => readClockFace(context.rng.int(0, 11) * 60 + context.rng.int(1, 59), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const minute = wholeOn(day, 1, 59);
          return minute === null
            ? null
            : using(
                readClockFace(context.rng.int(1, 11) * 60 + minute, context),
                `shows ${countOf(day.value.n, 'minutes', day.text)} past an hour`,
              );
        },
      },
      {
        id: 'past',
        ask: ({ rng }) => {
          const minute = rng.int(2, 58);
          return minutesPast(rng.int(1, 11) * 60 + minute, `${minute} minutes after`);
        },
        dayKinds: ['whole', 'fraction'],
        askOn: (day, { rng }) => {
          const hour = rng.int(1, 11);
          const minute = wholeOn(day, 2, 59);
          if (minute !== null) {
            return using(
              minutesPast(hour * 60 + minute, `${minute} minutes after`),
              `counts ${minute} minutes from a full hour`,
            );
          }
          if (day.kind !== 'fraction' || day.value.n >= day.value.d || 60 % day.value.d !== 0) return null;
          const part = (60 / day.value.d) * day.value.n;
          return using(
            minutesPast(hour * 60 + part, `${day.text} of an hour after`),
            `takes ${day.text} of an hour`,
          );
        },
      },
    ],
  },
];
