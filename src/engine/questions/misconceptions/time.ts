// Clocks, lengths of time and the calendar.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

export const TIME_MISCONCEPTIONS = {
  'time.hands-swapped': {
    does: 'takes the long hand for the hours and the short hand for the minutes',
    help: 'Cover the long hand: the short hand alone already tells roughly what time it is.',
    source: 'Massaro 1991 (difficulties in telling time); common practice',
  },
  'time.hour-ahead': {
    does: 'takes the hour that is coming, not the one that has passed',
    help: 'Like a birthday: it is not 8 until the hand gets to 8.',
    source: COMMON,
  },
  'time.minute-number': {
    does: 'reads the number at the long hand as minutes',
    help: 'Count around the clock by fives to where the long hand points.',
    source: COMMON,
  },
  'time.past-to-swapped': {
    does: 'mixes up minutes past the hour and minutes to the hour',
    help: 'Ask whether the long hand is going down from 12 (past) or climbing back to it (to).',
    source: COMMON,
  },
  'time.hundred-minutes': {
    does: 'works as if an hour had a hundred minutes',
    help: 'Stop at the next full hour and go on from there, on a number line of hours.',
    source: COMMON,
  },
  'time.hundred-seconds': {
    does: 'works as if a minute had a hundred seconds',
    help: 'Watch the second hand go around once: 60 seconds, then a new minute begins.',
    source: COMMON,
  },
  'time.hour-not-moved': {
    does: 'finds the minutes but leaves the hour as it was',
    help: 'Say the full hour when it is passed, then count on.',
    source: COMMON,
  },
  'time.hour-overlooked': {
    does: 'overlooks a full hour that is passed on the way',
    help: 'Stop at each full hour on the way and say it aloud.',
    source: COMMON,
  },
  'time.hour-too-many': {
    does: 'counts one hour too many',
    help: 'Put up a finger only when a full hour has gone by.',
    source: COMMON,
  },
  'time.larger-less-smaller': {
    does: 'takes the smaller number from the larger in the hours and in the minutes, whichever comes first',
    help: 'Count up from the earlier time: to the next full hour first, then on.',
    source: 'Brown & VanLehn 1980 (smaller from larger), seen here in times',
  },
  'time.wrong-way': {
    does: 'moves in the wrong direction: later instead of earlier, or the other way around',
    help: 'Draw a time line and mark where now is before moving.',
    source: COMMON,
  },
  'time.ten-for-twelve': {
    does: 'adds or takes 10 hours instead of 12 between the two kinds of clock',
    help: 'After 12 noon go on counting: 13 is 1 pm, 14 is 2 pm.',
    source: COMMON,
  },
  'time.twelve-left-out': {
    does: 'does not move between the 12-hour and the 24-hour clock in the afternoon',
    help: 'Ask: morning or after noon? After noon the 24-hour clock goes on from 12.',
    source: COMMON,
  },
  'time.am-as-pm': {
    does: 'takes a time before noon for one after noon',
    help: 'Draw one line from midnight to midnight with noon in the middle: am lies before noon, pm after it.',
    source: COMMON,
  },
  'time.week-of-five': {
    does: 'counts a week as five school days',
    help: 'Say all the days of a week aloud and count them on fingers: seven.',
    source: COMMON,
  },
  'time.day-counted-twice': {
    does: 'counts the starting day or month as the first step',
    help: 'Put a finger on the start and count only the jumps.',
    source: COMMON,
  },
  'time.month-length': {
    does: 'mixes up how many days the months have',
    help: 'Say the months along the knuckles: a knuckle has 31 days, a gap has fewer.',
    source: COMMON,
  },
  'time.ten-in-group': {
    does: 'groups the smaller units in tens instead of the number that fits this unit',
    help: 'Keep a strip of the facts in sight: 7 days, 12 months, 24 hours, 60 minutes.',
    source: COMMON,
  },
  'time.wrong-sixty': {
    does: 'uses the number that belongs to another pair of units',
    help: 'Keep a strip of the facts in sight: 7 days, 12 months, 24 hours, 60 minutes.',
    source: COMMON,
  },
  'time.point-as-units': {
    does: 'reads the digits after the point as minutes, or as another small unit',
    help: 'Half an hour is 0.5 of an hour and 30 minutes: compare the two.',
    source: COMMON,
  },
  'time.wait-left-out': {
    does: 'leaves one part of the journey out',
    help: 'Draw the journey as a line with every stop and every wait.',
    source: COMMON,
  },
  'time.order-by-number': {
    does: 'compares the numbers and overlooks the units of time',
    help: 'Change both to the smaller unit first.',
    source: COMMON,
  },
} as const satisfies Record<string, Misconception>;
