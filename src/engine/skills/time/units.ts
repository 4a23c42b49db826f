// Changing hours, minutes, seconds and days.
import { quantity, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { DAYS, HOURS, MINUTES, PARTS, fullOnes, largeOn, largeText, split, toSmall } from './unit-pairs.js';

export const TIME_UNIT_SKILLS: readonly Skill[] = [
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
        ask: (context) => split(context.rng.int(1, 4) * 60 + context.rng.int(5, 50), MINUTES, context),
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
];
