// Reading bus timetables: arrivals and how long a ride takes.
import type { FigureSpec } from '../../figures/figure.js';
import { formatClock } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { clockAnswer, durationAnswer, unitAnswer } from '../../questions/answer.js';
import type { Answer } from '../../questions/question.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';
import { neighbour } from './neighbour.js';

interface Bus {
  readonly leaves: readonly number[];
  readonly legs: readonly [number, number];
  readonly bus: number;
}

function bus(rng: Rng): Bus {
  const first = 60 * rng.int(8, 15) + 5 * rng.int(0, 11);
  const gap = 5 * rng.int(5, 8);
  return {
    leaves: [first, first + gap, first + 2 * gap],
    legs: [5 * rng.int(2, 5), rng.int(11, 28)],
    bus: rng.int(0, 2),
  };
}

const STOPS = ['Bridge', 'Market', 'Hill'] as const;

const NOON = 720;

/** A time of day as buses keep it: by 12 hours in American classrooms, by 24 elsewhere. Common practice. */
const busTime = (minutes: number, locale: Locale): Answer =>
  locale.id === 'en-US' ? clockAnswer(minutes, 12, minutes < NOON ? 'am' : 'pm') : clockAnswer(minutes, 24);

/** What the table is called in this country. Common practice. */
const tableName = (locale: Locale) => (locale.id === 'en-US' ? 'bus schedule' : 'timetable');

const timetable = ({ leaves, legs }: Bus, locale: Locale): FigureSpec => ({
  kind: 'table',
  heads: 'column',
  rows: STOPS.map((stop, i) => [
    stop,
    ...leaves.map((start) => busTime(start + (i > 0 ? legs[0] : 0) + (i > 1 ? legs[1] : 0), locale).text),
  ]),
});

const whenThere = templateOf<Bus>({
  id: 'when',
  free: bus,
  draft: (line, { locale }) => {
    const say = (minutes: number) => busTime(minutes, locale).text;
    const start = line.leaves[line.bus] ?? 0;
    const arrive = start + line.legs[0] + line.legs[1];
    const other = (line.leaves[neighbour(line.bus)] ?? 0) + line.legs[0] + line.legs[1];
    return {
      text: `In the ${tableName(locale)}, when does the ${say(start)} bus from ${STOPS[0]} reach ${STOPS[2]}?`,
      answer: busTime(arrive, locale),
      // The table leaves no doubt which half of the day is meant.
      ...(locale.id === 'en-US' ? { accepts: [formatClock(arrive)] } : {}),
      expression: `${start} + ${line.legs[0]} + ${line.legs[1]}`,
      features: { drawn: true, adjust: -0.3 },
      strategy: [`Find ${say(start)}, then go down its column to ${STOPS[2]}: ${say(arrive)}`],
      slips: [
        { misconception: 'table.other-line', answer: busTime(start + line.legs[0], locale) },
        { misconception: 'graph.other-point', answer: busTime(other, locale) },
      ],
      figure: timetable(line, locale),
    };
  },
});

const howLong = templateOf<Bus>({
  id: 'how-long',
  free: bus,
  draft: (line, { locale }) => {
    const say = (minutes: number) => busTime(minutes, locale).text;
    const start = line.leaves[line.bus] ?? 0;
    const [one, two] = line.legs;
    const arrive = start + one + two;
    const untilHour = 60 - (start % 60);
    const crosses = Math.floor(start / 60) < Math.floor(arrive / 60) && start % 60 > 0 && arrive % 60 > 0;
    return {
      text: `In the ${tableName(locale)}, how long does the ${say(start)} bus take from ${STOPS[0]} to ${STOPS[2]}?`,
      answer: durationAnswer(one + two),
      expression: `${arrive} - ${start}`,
      features: { drawn: true, extraSteps: 1, carries: crosses ? 1 : 0 },
      strategy: crosses
        ? [
            `To the full hour: ${untilHour} min, then ${arrive % 60} min more`,
            `${untilHour} + ${arrive % 60} = ${one + two}`,
          ]
        : [`From ${say(start)} to ${say(arrive)} it is ${one + two} min`],
      slips: [
        { misconception: 'table.other-line', answer: durationAnswer(one) },
        ...(crosses
          ? [
              {
                misconception: 'time.hundred-minutes' as const,
                answer: unitAnswer(one + two + 40, 'min', locale),
              },
            ]
          : []),
        { misconception: 'graph.other-point', answer: durationAnswer(two) },
      ],
      figure: timetable(line, locale),
    };
  },
});

export const TIMETABLE_SKILLS: readonly Skill[] = [
  {
    id: 'data.timetable',
    title: 'Read a timetable',
    year: 5,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.table', 'time.between'],
    codes: { ac9: ['AC9M6M03'], england: ['NC-Y5-stats-2'], ccss: [] },
    templates: [whenThere, howLong],
  },
];
