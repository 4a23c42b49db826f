// Times some minutes later and earlier.
import { formatClock, formatDuration } from '../../numbers/format.js';
import { toNumber } from '../../numbers/rational.js';
import { clockAnswer } from '../../questions/answer.js';
import type { Draft, DraftSlip, TemplateContext } from '../../questions/draft.js';
import { addedInHundreds, impossibleTime, onDial } from '../../questions/slips/clock.js';
import { quantityOn, using, wholeOn } from '../measuring/quantity.js';
import type { DayNumber } from '../../numbers/day-number.js';
import type { Skill } from '../skill.js';
import { ELAPSED, crossings, stepsForward } from './steps.js';
import { agoStory, withStory } from '../retold.js';

/** A length of time: whole minutes, and how the question says it. */
interface Span {
  readonly minutes: number;
  readonly text: string;
}

const minutesSpan = (minutes: number): Span => ({
  minutes,
  text: `${minutes}\u00a0minute${minutes === 1 ? '' : 's'}`,
});

function later(start: number, span: Span, { rng }: TemplateContext): Draft {
  const end = onDial(start + span.minutes);
  const wraps = start + span.minutes >= 720;
  // Hours that are told are moved on rightly; only the minutes beyond them are taken for hundredths.
  const moved = span.text.includes('minute') ? 0 : span.minutes - (span.minutes % 60);
  const wrong = addedInHundreds(onDial(start + moved), span.minutes - moved);
  const wrongAnswer =
    wrong.minute >= 60
      ? impossibleTime(wrong.hour, wrong.minute)
      : clockAnswer((wrong.hour % 12) * 60 + wrong.minute);
  const crosses = crossings(start, span.minutes);
  const text = rng.pick([
    `What time is it ${span.text} after ${formatClock(start)}?`,
    `A game starts at ${formatClock(start)} and lasts ${span.text}. When does it end?`,
    `It is ${formatClock(start)}. What time will it be in ${span.text}?`,
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
      story: text.startsWith('A'),
      adjust: -0.4,
    },
    strategy: [
      ...(span.text.includes('minute') ? [] : [`${span.text} is ${formatDuration(span.minutes)}`]),
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
        : [{ misconception: 'time.hour-too-many' as const, answer: clockAnswer(onDial(end + 60)) }]),
      { misconception: 'time.wrong-way', answer: clockAnswer(onDial(start - span.minutes)) },
    ],
    figure: { kind: 'clock', minutes: start },
  };
}

/** A wrong start by one hour, where no full hour is passed by the minutes alone: an hour left out, or taken for nothing. */
function hourMissed(hours: number, start: number): DraftSlip {
  if (hours === 0) return { misconception: 'time.hour-too-many', answer: clockAnswer(onDial(start - 60)) };
  return {
    misconception: hours === 1 ? 'time.hour-not-moved' : 'time.hour-overlooked',
    answer: clockAnswer(onDial(start + 60)),
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
    text: `A trip takes ${span.text} and ends at ${formatClock(end)}. When did it start?`,
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
      ...(span.text.includes('minute') ? [] : [`${span.text} is ${formatDuration(span.minutes)}`]),
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
            {
              misconception: hours > 0 ? ('time.hour-overlooked' as const) : ('time.hour-not-moved' as const),
              answer: clockAnswer(onDial(start + 60)),
            },
          ]
        : [hourMissed(hours, start)]),
    ],
  };
}

/** The day's number as a length of time of at most five hours, or null. */
function spanOn(day: DayNumber, context: TemplateContext): Span | null {
  const minutes = wholeOn(day, 2, 300);
  if (minutes !== null) return minutesSpan(minutes);
  const hours = day.kind === 'whole' ? null : quantityOn(day, context.locale, 0.1, 5, 2);
  if (hours === null || 60 % hours.value.d !== 0) return null;
  // Nobody says 3.6 hours of a trip.
  if (hours.style === 'decimal' && 4 % hours.value.d !== 0) return null;
  const isPart = toNumber(hours.value) < 1 && hours.style === 'fraction';
  return {
    minutes: (60 / hours.value.d) * hours.value.n,
    text: isPart ? `${hours.text} of an hour` : `${hours.text}\u00a0hours`,
  };
}

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
    templates: withStory(agoStory, [
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
    ]),
  },
];
