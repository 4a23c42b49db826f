// Changing weeks to days and years to months, and back.
import { quantity, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { PARTS, WEEKS, YEARS, fullOnes, largeOn, largeText, split, toSmall } from './unit-pairs.js';

export const WEEK_AND_MONTH_SKILLS: readonly Skill[] = [
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
            : using(toSmall(weeks, WEEKS, context), `changes ${largeText(weeks, WEEKS)} to days`);
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
