// Chance in words: from impossible to certain.
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { choiceAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { countOf } from '../story.js';
import { COLOURS, spinner } from './spinners.js';

const WORDS = ['impossible', 'unlikely', 'likely', 'certain'] as const;

function wordFor(wanted: number, all: number): (typeof WORDS)[number] {
  if (wanted === 0) return 'impossible';
  if (wanted === all) return 'certain';
  return wanted * 2 < all ? 'unlikely' : 'likely';
}

/** The nearest count that nobody would call even: at most a third, or at least two thirds. */
function clearOf(wanted: number, all: number): number {
  return wanted * 2 <= all
    ? Math.min(wanted, Math.floor(all / 3))
    : Math.max(wanted, Math.ceil((2 * all) / 3));
}

/** Whether it is fewer or more than half: by half of the total, or by twice the part where the total has no whole half. */
function besideHalf(wanted: number, all: number, colour: string, locale: Locale): string {
  const say = (n: number) => formatWhole(n, locale);
  const isLess = wanted * 2 < all;
  return all % 2 === 0
    ? `Half of ${say(all)} would be ${say(all / 2)}: ${say(wanted)} is ${isLess ? 'less' : 'more'}`
    : `${say(wanted)} + ${say(wanted)} = ${say(2 * wanted)}, ${isLess ? 'less' : 'more'} than ${say(all)}, so ${isLess ? 'fewer' : 'more'} than half are ${colour}`;
}

function chanceWord(wanted: number, all: number, { rng, locale }: TemplateContext): Draft {
  const [colour, other] = rng.shuffle(COLOURS);
  const right = wordFor(wanted, all);
  const index = WORDS.indexOf(right);
  const near = WORDS[index === 0 ? 1 : index === 3 ? 2 : index === 1 ? 0 : 3] ?? 'likely';
  const far = WORDS[3 - index] ?? 'likely';
  return {
    text:
      all <= 12
        ? `A spinner has ${all} equal parts, ${wanted === 0 ? 'none' : wanted === all ? 'all' : wanted} ${colour}. You spin once. Is ${colour} impossible, unlikely, likely or certain?`
        : `A bag has ${formatWhole(all, locale)} counters, ${wanted === all ? 'all' : formatWhole(wanted, locale)} ${colour}. You take one without looking. Is ${colour} impossible, unlikely, likely or certain?`,
    answer: choiceAnswer(right),
    expression: null,
    features: {
      fewChoices: true,
      drawn: all <= 12,
      size: Math.abs(wanted * 2 - all) <= 2 ? 1 : 0,
      adjust: index === 0 || index === 3 ? -0.3 : 0,
    },
    strategy: [
      wanted === 0
        ? 'It cannot happen'
        : wanted === all
          ? 'It must happen'
          : besideHalf(wanted, all, colour ?? 'red', locale),
      `So it is ${right}`,
    ],
    slips: [
      { misconception: 'data.certain-likely', answer: choiceAnswer(near) },
      { misconception: 'data.other-event', answer: choiceAnswer(far) },
    ],
    ...(all <= 12 ? { figure: spinner(wanted, all, colour ?? 'red', other ?? 'blue') } : {}),
  };
}

export const CHANCE_WORD_SKILLS: readonly Skill[] = [
  {
    id: 'data.chance.words',
    title: 'Describe a chance in words',
    year: 3,
    fluentYear: 4,
    strand: 'data',
    prerequisites: ['data.tally'],
    codes: { ac9: ['AC9M3P01', 'AC9M4P01'], england: [], ccss: [] },
    templates: [
      {
        id: 'spinner',
        ask: (context) => {
          const all = context.rng.pick([5, 6, 8, 10]);
          const wanted = context.rng.int(0, all);
          return chanceWord(clearOf(wanted, all), all, context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const wanted = wholeOn(day, 1, 100);
          if (wanted === null) return null;
          const all =
            wanted <= 6
              ? // One part alone would be no spinner.
                context.rng.pick([wanted > 1 ? wanted : 8, 8, 10, 12])
              : wanted + context.rng.pick([0, 1, 3, wanted * 2, wanted * 3]);
          return using(
            chanceWord(wanted, all < 2 * wanted ? all : Math.max(all, 3 * wanted), context),
            `names a chance with ${countOf(wanted, 'wanted outcomes', day.text)}`,
          );
        },
      },
    ],
  },
];
